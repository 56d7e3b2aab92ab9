package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Button;
import javafx.scene.text.Text;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The process of a window is killed two seconds after the last key; the next window offers what was typed. */
class DeskKilledTest {

    private static final String SAVED = "show(\"n\", kg(2))";
    private static final String ADDED = " // not yet saved";
    private static final int PROMISE_SECONDS = 2;

    @TempDir
    private Path folder;

    @Test
    @Tag("minute")
    void whatWasTypedTwoSecondsBeforeAKillIsOfferedAgain() throws Exception {
        Path file = folder.resolve("killed.leverwright.json");
        WorkbookFiles.onDisk().saveNew(file, Workbook.empty("Killed").withAdded(0, new ScriptCell("c1", SAVED)));
        typeAndKill(file);
        assertTrue(!Files.readString(file).contains(ADDED.strip()), "it was saved, and not only kept beside");
        WindowBench bench = new WindowBench(folder);
        try {
            DeskWindow window = bench.open(file);
            bench.until("offered", () -> words(window).contains("never saved"));
            Button back = (Button) bench.nodes(
                            window, node -> node instanceof Button found && "Bring it back".equals(found.getText()))
                    .get(0);
            bench.robot.clickOn(back);
            bench.until("back", () -> window.model().cells().get(0).text().get().equals(SAVED + ADDED));
        } finally {
            bench.close();
        }
        assertEquals(List.of(), bench.failures);
    }

    private void typeAndKill(Path file) throws Exception {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                .filter(argument -> argument.matches("-D(glass|monocle|prism|testfx|java\\.awt)\\..*"))
                .forEach(command::add);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), DeskToKill.class.getName()));
        command.addAll(List.of(folder.toString(), file.toString(), ADDED));
        Process process = new ProcessBuilder(command)
                .redirectError(folder.resolve("errors.txt").toFile())
                .start();
        try (BufferedReader lines = process.inputReader()) {
            String line = lines.readLine();
            assertEquals(DeskToKill.TYPED, line, () -> "the window said nothing: " + errors());
            TimeUnit.SECONDS.sleep(PROMISE_SECONDS);
        } finally {
            process.destroyForcibly().waitFor();
        }
    }

    private String errors() {
        try {
            return Files.readString(folder.resolve("errors.txt"));
        } catch (java.io.IOException none) {
            return "";
        }
    }

    private static String words(DeskWindow window) {
        StringBuilder words = new StringBuilder();
        WindowThread.all(window.stage().getScene().getRoot())
                .filter(Text.class::isInstance)
                .forEach(node -> words.append(((Text) node).getText()).append('\n'));
        return words.toString();
    }
}
