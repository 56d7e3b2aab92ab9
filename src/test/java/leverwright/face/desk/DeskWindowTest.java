package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.Colours;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Permission;
import leverwright.run.result.CellState;
import leverwright.run.result.NumberResult;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import org.junit.jupiter.api.Test;

/** The three readers of a workbook at the window: student, coach, reviewer. */
class DeskWindowTest extends AtTheWindow {

    private static final String DIAL = "var lean = dial(\"Lean\", deg(45)).from(deg(10)).to(deg(80));";

    private void press(KeyCode... keys) {
        bench.robot.push(keys);
    }

    private DeskWindow only() throws Exception {
        return bench.at(() -> bench.desk.windows().get(0));
    }

    private Path workbook(String name, String... scripts) throws Exception {
        Workbook workbook = Workbook.empty("From elsewhere");
        for (int i = 0; i < scripts.length; i++) {
            workbook = workbook.withAdded(i, new ScriptCell("c" + (i + 1), scripts[i]));
        }
        Path file = folder.resolve(name + ".leverwright.json");
        WorkbookFiles.onDisk().saveNew(file, workbook);
        return file;
    }

    private void click(DeskWindow window, String words) throws Exception {
        Node button = bench.nodes(
                        window,
                        node -> node instanceof Button found && words.equals(found.getText()) && found.isVisible())
                .get(0);
        bench.doing(((Button) button)::fire);
    }

    @Test
    void aStudentOpensTurnsReadsAndResets() throws Exception {
        DeskWindow window = bench.open(bench.onShelf(WindowBench.demo()));
        DeskModel model = window.model();
        bench.untilFresh(model);
        press(KeyCode.CONTROL, KeyCode.DIGIT3);
        double before = bench.at(() -> model.dials().get(0).value().get());
        bench.doing(() -> model.turn("Torso lean", Math.toRadians(60)));
        bench.until(
                "the curve's mark follows",
                () -> model.dials().get(0).declared().get().setting().value() == Math.toRadians(60));
        bench.untilFresh(model);
        assertTrue(bench.words(window).contains("60 deg")
                || bench.at(() -> model.dials().get(0).setting().get().equals("60 deg")));
        press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.D);
        bench.until("reset", () -> model.dials().get(0).value().get() == before);
        bench.untilFresh(model);
        assertTrue(bench.at(model::wouldBeLost).isEmpty(), "a turned dial is no text to lose");
    }

    @Test
    void aCoachWritesMendsSavesAndOpensAgain() throws Exception {
        DeskWindow first = bench.open(workbook("other", "show(\"n\", 1)"));
        bench.doing(() -> first.stage().requestFocus());
        press(KeyCode.CONTROL, KeyCode.N);
        bench.until("a new window", () -> bench.desk.windows().size() == 2);
        DeskWindow window = bench.at(() -> bench.desk.windows().get(1));
        DeskModel model = window.model();
        CellView script = bench.at(() -> model.cells().get(0));
        bench.doing(() -> model.type(script.id(), "show(\"load\", kg(40).plu(kg(2)))", 10));
        bench.until("failed", () -> script.shown().get().state() == CellState.FAILED);
        assertTrue(bench.at(() -> script.shown().get().span() != null), "no place of the error");
        bench.doing(() -> model.type(script.id(), "show(\"load\", kg(40).plus(kg(2)))", 10));
        bench.untilFresh(model);
        bench.doing(() -> model.caretAt(new Caret(script.id(), 3)));
        bench.doing(() -> window.add(true));
        CellView chart = bench.at(() -> model.cells().get(1));
        bench.doing(() -> model.type(
                chart.id(),
                "chart(\"c\").over(\"bar\", List.of(kg(1), kg(2))).curve(\"y\", List.of(kg(1), kg(4)))",
                0));
        bench.untilFresh(model);
        Path file = folder.resolve("mine.leverwright.json");
        bench.answers.add(file);
        bench.doing(window::save);
        bench.until("saved", () -> !model.unsaved().get());
        bench.doing(() -> window.close(() -> {}));
        DeskWindow again = bench.open(file);
        bench.untilFresh(again.model());
        assertEquals(2, bench.at(() -> again.model().cells().size()));
    }

    @Test
    void aReviewerReadsAStrangersFileRunsItBehindTheGateAndRechecks() throws Exception {
        Path file = folder.resolve("stranger.leverwright.json");
        Files.copy(WindowBench.demo(), file);
        DeskWindow window = bench.open(file);
        DeskModel model = window.model();
        Thread.sleep(300);
        assertEquals(0, bench.at(() -> model.batch().get()), "something ran");
        assertEquals(Permission.ASLEEP, bench.at(() -> model.permission().get()));
        assertTrue(bench.words(window).contains("nothing in it has run"));
        assertTrue(bench.at(() -> model.cells().stream()
                .filter(CellView::isScript)
                .allMatch(cell -> cell.shown().get().state() == CellState.NOT_RUN)));
        click(window, "Compute behind the gate");
        bench.untilFresh(model);
        assertEquals(Permission.GATED, bench.at(() -> model.permission().get()));
        assertFalse(bench.words(window).contains("nothing in it has run"));
        bench.doing(window::recheck);
        bench.until("a verdict", () -> words(window).contains("same to the last bit"));
        assertTrue(words(window).contains("recorded: ✓ holds; now: ✓ holds"), words(window));
    }

    private static String words(DeskWindow window) {
        StringBuilder words = new StringBuilder();
        WindowThread.all(window.stage().getScene().getRoot())
                .filter(javafx.scene.text.Text.class::isInstance)
                .forEach(node ->
                        words.append(((javafx.scene.text.Text) node).getText()).append('\n'));
        return words.toString();
    }

    @Test
    void closingAsksOnlyWhenTextWouldBeLost() throws Exception {
        DeskWindow window = bench.open(workbook("asks", DIAL));
        bench.doing(() -> window.model().type("c1", DIAL + " ", 3));
        bench.doing(() -> window.close(() -> {}));
        bench.until("asked", () -> words(window).contains("Save before closing?"));
        press(KeyCode.ESCAPE);
        assertEquals(1, bench.at(() -> bench.desk.windows().size()), "Escape stays");
        bench.doing(window::undo);
        bench.doing(() -> window.close(() -> {}));
        assertEquals(0, bench.at(() -> bench.desk.windows().size()), "nothing was lost, and it asked");
    }

    @Test
    void savingOnTheWayOutSavesAndCloses() throws Exception {
        Path file = workbook("out", DIAL);
        DeskWindow window = bench.open(file);
        bench.doing(() -> window.model().type("c1", DIAL + " // end", 3));
        bench.doing(() -> window.close(() -> {}));
        click(window, "Save");
        bench.until("closed", () -> bench.desk.windows().isEmpty());
        assertTrue(Files.readString(file).contains("// end"));
    }

    @Test
    void textOfAWindowThatDiedIsOfferedAgain() throws Exception {
        Path file = workbook("died", DIAL);
        DeskModel gone = bench.at(() -> bench.home.open(file));
        bench.doing(() -> gone.type("c1", DIAL + " // typed", 3));
        Path journals = folder.resolve("user/state/journals");
        bench.until("journalled", () -> holdsText(journals, "// typed"));
        // What a crash leaves: the journal stays and the lock goes. Closing would forget the journal, so it is put
        // back.
        Path copy = folder.resolve("copy");
        copy(journals, copy);
        bench.doing(gone::close);
        Thread.sleep(200);
        copy(copy, journals);
        DeskWindow window = bench.open(file);
        bench.until("offered", () -> words(window).contains("never saved"));
        click(window, "Bring it back");
        assertTrue(bench.at(
                () -> window.model().cell("c1").orElseThrow().text().get().endsWith("// typed")));
        bench.doing(window::undo);
        assertEquals(
                DIAL,
                bench.at(() -> window.model().cell("c1").orElseThrow().text().get()));
    }

    private static void copy(Path from, Path to) throws Exception {
        Files.createDirectories(to);
        try (var files = Files.list(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(file.getFileName()), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private static boolean holdsText(Path journals, String text) {
        try (var files = Files.walk(journals)) {
            return files.filter(Files::isRegularFile).anyMatch(file -> {
                try {
                    return Files.readString(file).contains(text);
                } catch (java.io.IOException gone) {
                    return false;
                }
            });
        } catch (java.io.IOException none) {
            return false;
        }
    }

    @Test
    void coloursAndTextFollowInEveryWindowAndAreKept() throws Exception {
        DeskWindow one = bench.open(workbook("one", DIAL));
        DeskWindow two = bench.open(workbook("two", DIAL));
        double usual = bench.at(() -> fontSize(two));
        press(KeyCode.CONTROL, KeyCode.EQUALS);
        bench.until("larger", () -> fontSize(one) > usual && fontSize(two) > usual);
        bench.doing(() -> bench.home.show(bench.home.looks().get().in(Colours.DARK)));
        for (DeskWindow window : List.of(one, two)) {
            assertTrue(bench.at(
                    () -> window.stage().getScene().getRoot().getStyleClass().contains("dark")));
        }
        assertEquals("dark", bench.at(() -> bench.home.setting("colours", "")));
    }

    private static double fontSize(DeskWindow window) {
        return WindowThread.all(window.stage().getScene().getRoot())
                .filter(javafx.scene.control.Label.class::isInstance)
                .mapToDouble(
                        label -> ((javafx.scene.control.Label) label).getFont().getSize())
                .max()
                .orElse(0);
    }

    @Test
    void theKeyboardGoesRoundThePartsOfTheWindow() throws Exception {
        DeskWindow window = bench.open(bench.onShelf(WindowBench.demo()));
        bench.untilFresh(window.model());
        press(KeyCode.CONTROL, KeyCode.DIGIT1);
        for (Tour.Place place : List.of(Tour.Place.SHEET, Tour.Place.SIDE, Tour.Place.EDGE)) {
            press(KeyCode.F6);
            Node part = bench.at(() -> window.part(place));
            assertTrue(
                    bench.at(() -> {
                        for (Node at = window.stage().getScene().getFocusOwner(); at != null; at = at.getParent()) {
                            if (at == part) {
                                return true;
                            }
                        }
                        return false;
                    }),
                    () -> "F6 did not reach " + place);
        }
    }

    @Test
    void aPageIsWrittenWithItsCaution() throws Exception {
        DeskWindow window = bench.open(bench.onShelf(WindowBench.demo()));
        bench.untilFresh(window.model());
        Path page = folder.resolve("page.html");
        bench.answers.add(page);
        bench.doing(window::publish);
        bench.until("told", () -> words(window).contains("The page is in"));
        String html = Files.readString(page);
        assertTrue(html.contains("not medical or training advice"));
        assertTrue(html.contains("At 45 degrees, who carries the bar?"));
        click(window, "Show it");
        assertEquals(List.of(page.toUri().toString()), bench.browsed);
    }

    @Test
    void theFirstNumberOfASheetIsTheModels() throws Exception {
        DeskWindow window = bench.open(workbook("sleeping", "show(\"n\", kg(2))"));
        bench.doing(window.model()::computeFromTheTop);
        bench.untilFresh(window.model());
        NumberResult number = (NumberResult) bench.at(() ->
                only().model().cell("c1").orElseThrow().shown().get().results().get(0));
        assertEquals(2, number.quantity().value());
    }
}
