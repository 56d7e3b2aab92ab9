package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Window;
import leverwright.face.desk.model.Permission;
import leverwright.run.result.CellState;
import leverwright.workbook.document.CellRecord;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Seal;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import leverwright.workbook.document.WorkbookRecord;
import org.junit.jupiter.api.Test;

/** Student, coach and reviewer with nothing but mouse and keys: what they do is pressed, what they see is read off the window. */
class DeskReadersTest extends AtTheWindow {

    private void press(KeyCode... keys) {
        bench.robot.push(keys);
    }

    private void write(String text) {
        bench.robot.write(text, 0);
    }

    private Node see(Window window, String what, Predicate<Node> fits) throws Exception {
        Predicate<Node> seen = node -> fits.test(node) && WindowThread.isShown(node);
        until(what, () -> WindowThread.all(window.getScene().getRoot()).anyMatch(seen));
        return bench.at(() -> WindowThread.all(window.getScene().getRoot())
                .filter(seen)
                .findFirst()
                .orElseThrow());
    }

    private void until(String what, BooleanSupplier condition) throws Exception {
        bench.until(what, condition);
    }

    private static Predicate<Node> says(String words) {
        return node -> node instanceof Labeled labeled && words.equals(labeled.getText());
    }

    private void click(Window window, String words) throws Exception {
        bench.robot.clickOn(see(window, words, says(words)));
    }

    private static String words(Node under) {
        StringBuilder words = new StringBuilder();
        WindowThread.all(under)
                .filter(node -> node instanceof Text && WindowThread.isShown(node))
                .forEach(node -> words.append(((Text) node).getText()).append('\n'));
        return words.toString();
    }

    private static String words(DeskWindow window) {
        return words(window.stage().getScene().getRoot());
    }

    private DeskWindow window(int index) throws Exception {
        until("a window", () -> bench.desk.windows().size() > index);
        return bench.at(() -> bench.desk.windows().get(index));
    }

    private void setDial(DeskWindow window, String text) throws Exception {
        TextField typed = (TextField) see(
                window.stage(),
                "the dial",
                node -> node instanceof TextField
                        && String.valueOf(node.getAccessibleText()).startsWith("Torso lean"));
        bench.robot.clickOn(typed);
        press(KeyCode.CONTROL, KeyCode.A);
        write(text);
        press(KeyCode.ENTER);
    }

    private String hipInTable(DeskWindow window) throws Exception {
        bench.doing(() -> window.reveal("moments"));
        Node table = see(window.stage(), "a table", node -> node.getStyleClass().contains("grid-table"));
        String all = bench.at(() -> words(table));
        return all.substring(all.indexOf("\nhip\n") + 5)
                .lines()
                .filter(line -> Character.isDigit(line.charAt(0)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no number beside hip in\n" + all));
    }

    @Test
    void aStudentTypesASettingReadsTheTableAndResets() throws Exception {
        DeskWindow window = bench.open(bench.onShelf(WindowBench.demo()));
        bench.untilFresh(window.model());
        String before = hipInTable(window);
        // The demo claims 120 N·m a side at 45 degrees, and its record says that this holds.
        assertEquals(120, Double.parseDouble(before.split(" ")[0]), 5, before);
        setDial(window, "60 deg");
        bench.until(
                "taken", () -> Math.abs(window.model().dials().get(0).value().get() - Math.toRadians(60)) < 1e-9);
        bench.untilFresh(window.model());
        String[] turned = {before};
        for (int patience = 0; turned[0].equals(before) && patience < 200; patience++) {
            Thread.sleep(50);
            turned[0] = hipInTable(window);
        }
        assertFalse(turned[0].equals(before), "the table did not follow the dial");
        bench.robot.clickOn(see(window.stage(), "reset", node -> "Reset Torso lean".equals(node.getAccessibleText())));
        bench.until("reset", () -> !window.model().dials().get(0).byHand().get());
        bench.untilFresh(window.model());
        for (int patience = 0; !before.equals(hipInTable(window)) && patience < 200; patience++) {
            Thread.sleep(50);
        }
        assertEquals(before, hipInTable(window));
        press(KeyCode.CONTROL, KeyCode.W);
        until("closed without a question", () -> bench.desk.windows().isEmpty());
    }

    @Test
    void aCoachWritesMendsByTheMarkDrawsSavesAndOpensAgain() throws Exception {
        bench.doing(bench.desk::showStart);
        Window start = bench.at(() -> bench.desk.startWindow().orElseThrow().stage());
        bench.robot.clickOn(see(
                start,
                "a starter",
                node -> node instanceof Labeled labeled && labeled.getText().startsWith("Empty")));
        DeskWindow window = window(0);
        bench.robot.clickOn(
                see(window.stage(), "a script", node -> node.getStyleClass().contains("source")));
        write("show(\"load\", kg(40).plu(kg(2)))");
        until("marked", () -> window.model().cells().get(0).shown().get().state() == CellState.FAILED);
        press(KeyCode.ESCAPE);
        click(window.stage(), "Go to line 1");
        until(
                "at the mark",
                () -> window.model().caret().position() == "show(\"load\", kg(40)".length()
                        || window.model().caret().position() == "show(\"load\", kg(40).".length());
        int at = bench.at(() -> window.model().caret().position());
        for (int i = at; i < "show(\"load\", kg(40).plu".length(); i++) {
            press(KeyCode.RIGHT);
        }
        write("s");
        press(KeyCode.ESCAPE);
        bench.untilFresh(window.model());
        until("its result is painted", () -> words(window).contains("42"));
        assertTrue(bench.at(() -> words(window)).contains("42"), bench.at(() -> words(window)));
        press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.N);
        until("a second script", () -> window.model().cells().size() == 2);
        String chart = "chart(\"c\").over(\"bar\", List.of(kg(1), kg(2))).curve(\"y\", List.of(kg(1), kg(4)))";
        write(chart);
        press(KeyCode.ESCAPE);
        bench.untilFresh(window.model());
        see(window.stage(), "a chart", node -> node.getStyleClass().contains("chart"));
        Path file = folder.resolve("mine.leverwright.json");
        bench.answers.add(file);
        press(KeyCode.CONTROL, KeyCode.S);
        until("saved", () -> !window.model().unsaved().get());
        press(KeyCode.CONTROL, KeyCode.W);
        until("closed without a question", () -> bench.desk.windows().isEmpty());
        DeskWindow again = bench.open(file);
        bench.untilFresh(again.model());
        assertEquals(chart, bench.at(() -> again.model().cells().get(1).text().get()));
        see(again.stage(), "the chart again", node -> node.getStyleClass().contains("chart"));
    }

    @Test
    void aReviewerOpensAStrangersFileWithoutRunningItRunsItBehindTheGateAndRechecks() throws Exception {
        Path file = folder.resolve("stranger.leverwright.json");
        Files.copy(WindowBench.demo(), file);
        DeskWindow window = bench.open(file);
        see(
                window.stage(),
                "told",
                node -> node instanceof Text text && text.getText().contains("nothing in it has run"));
        until("its state", () -> words(window).contains("not run"));
        assertEquals(0, bench.at(() -> window.model().batch().get()), "something ran");
        click(window.stage(), "Compute behind the gate");
        bench.untilFresh(window.model());
        assertEquals(
                Permission.GATED, bench.at(() -> window.model().permission().get()));
        assertFalse(bench.at(() -> words(window)).contains("nothing in it has run"));
        press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.R);
        until("a verdict", () -> words(window).contains("same to the last bit"));
        assertTrue(bench.at(() -> words(window)).contains("recorded: ✓ holds; now: ✓ holds"));
    }

    @Test
    void aRecheckTellsHowFarItIsAndStops() throws Exception {
        Workbook endless = Workbook.empty("Endless")
                .withAdded(0, new ScriptCell("c1", "show(\"n\", 1)"))
                .withAdded(1, new ScriptCell("c2", "while (true) { }"));
        Map<String, CellRecord> cells = new LinkedHashMap<>();
        for (String id : List.of("c1", "c2")) {
            cells.put(id, CellRecord.of(CellState.FRESH, "", List.of(), List.of()));
        }
        Path file = folder.resolve("endless.leverwright.json");
        WorkbookFiles.onDisk()
                .saveNew(file, Seal.seal(endless.withRecord(WorkbookRecord.of(endless, "1", "17", 1, cells))));
        DeskWindow window = bench.open(file);
        press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.R);
        until("half way", () -> words(window).contains("1 of 2 scripts done; now \"while (true) { }\""));
        bench.robot.clickOn(see(window.stage(), "stop", node -> "Stop the recheck".equals(node.getAccessibleText())));
        until("stopped", () -> words(window).contains("The recheck was stopped."));
        assertEquals(0, bench.at(() -> window.model().batch().get()), "the window's own scripts ran");
        press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.R);
        until("half way again", () -> words(window).contains("1 of 2 scripts done"));
        press(KeyCode.CONTROL, KeyCode.PERIOD);
        until("stopped by its key", () -> words(window).contains("The recheck was stopped."));
    }
}
