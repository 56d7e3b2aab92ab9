package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import leverwright.face.desk.model.CellView;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.FigureResult;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** An exercise is found in the catalogue, tried with its knobs, and put into the sheet, where it computes. */
class DeskCatalogueTest extends AtTheWindow {

    private DeskWindow window;

    @BeforeEach
    void open() throws Exception {
        window = bench.open(bench.onShelf(WindowBench.demo()));
        bench.untilFresh(window.model());
        bench.doing(window::showExercises);
        bench.until("the catalogue is there", () -> names().size() > 50);
    }

    private Node one(String accessibleText) {
        return WindowThread.all(window.stage().getScene().getRoot())
                .filter(node -> accessibleText.equals(node.getAccessibleText()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing is called " + accessibleText));
    }

    private ListView<?> list() {
        return (ListView<?>) one("Exercises");
    }

    private List<String> names() {
        return list().getItems().stream()
                .map(item -> String.valueOf(((leverwright.workbook.scenario.ExerciseShelf.Entry) item).name()))
                .toList();
    }

    private void seek(String words) throws Exception {
        bench.doing(() -> ((TextField) one("Search the exercises")).setText(words));
    }

    private void press(Node node, KeyCode key) throws Exception {
        bench.doing(() -> {
            node.requestFocus();
            node.fireEvent(new javafx.scene.input.KeyEvent(
                    javafx.scene.input.KeyEvent.KEY_PRESSED, "", "", key, false, false, false, false));
        });
    }

    private TextField knob(String name) {
        return knobs(name).findFirst().orElseThrow();
    }

    private Stream<TextField> knobs(String name) {
        return WindowThread.all(window.stage().getScene().getRoot())
                .filter(node -> node instanceof TextField
                        && String.valueOf(node.getAccessibleText()).startsWith(name + ", "))
                .map(TextField.class::cast);
    }

    private Button button(String words) {
        return WindowThread.all(window.stage().getScene().getRoot())
                .filter(node -> node instanceof Button each && words.equals(each.getText()))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + words));
    }

    private void untilSaid(String words) throws Exception {
        bench.until(
                words,
                () -> WindowThread.all(window.stage().getScene().getRoot())
                        .anyMatch(node -> node instanceof javafx.scene.control.Label label
                                && label.isVisible()
                                && String.valueOf(label.getText()).contains(words)));
    }

    private void type(String knob, String value) throws Exception {
        bench.until(
                "the knob " + knob + " is there", () -> knobs(knob).findAny().isPresent());
        bench.doing(() -> {
            TextField field = knob(knob);
            field.setText(value);
            field.fireEvent(new javafx.event.ActionEvent());
        });
    }

    @Test
    void exercisesAreFoundByNameTargetAndFamily() throws Exception {
        seek("front sqat");
        assertEquals("Front squat", WindowThread.at(() -> names().get(0)));
        seek("hamstrings curl");
        assertTrue(WindowThread.at(this::names).subList(0, 2).contains("Lying leg curl"));
        seek("zzzz");
        assertEquals(List.of(), WindowThread.at(this::names));
        seek("");
        assertEquals(56, WindowThread.at(this::names).size());
    }

    @Test
    void anExerciseIsTriedAndPutIntoTheSheet() throws Exception {
        seek("front squat");
        press(WindowThread.at(() -> one("Search the exercises")), KeyCode.ENTER);
        bench.until(
                "its figure is drawn",
                () -> WindowThread.all(window.stage().getScene().getRoot())
                        .anyMatch(
                                node -> String.valueOf(node.getAccessibleText()).startsWith("Front squat by Ines")));
        type("Bar", "1200");
        untilSaid("Bar goes from 0 kg to");
        type("Bar", "62.5");
        type("Torso lean", "20");
        bench.until("it can be put", () -> !button("Put it into the sheet").isDisabled());
        bench.doing(() -> button("Put it into the sheet").fire());
        bench.untilFresh(window.model());
        CellView cell = WindowThread.at(() -> window.model().cells().stream()
                .filter(each -> each.text().get().contains("frontSquat()"))
                .findFirst()
                .orElseThrow());
        String script = WindowThread.at(() -> cell.text().get());
        assertTrue(
                script.contains("var myFrontSquat = frontSquat().torsoLean(deg(20)).barbell(kg(62.5));"), () -> script);
        var results = WindowThread.at(() -> cell.shown().get().results());
        assertTrue(results.stream().anyMatch(FigureResult.class::isInstance), results.toString());
        assertTrue(results.stream().anyMatch(CurvesResult.class::isInstance), results.toString());
        bench.doing(() -> button("Put it into the sheet").fire());
        bench.until(
                "a second one has a name of its own",
                () -> window.model().cells().stream()
                        .anyMatch(each -> each.text().get().contains("myFrontSquat2 =")));
        bench.untilFresh(window.model());
    }

    @Test
    @SuppressWarnings("unchecked")
    void aLifterOfTheWorkbookTriesItWithAVestAndABand() throws Exception {
        seek("back squat");
        press(WindowThread.at(() -> one("Search the exercises")), KeyCode.ENTER);
        bench.until(
                "the lifters are there",
                () -> WindowThread.all(window.stage().getScene().getRoot())
                        .anyMatch(node -> "Lifter who tries it".equals(node.getAccessibleText())));
        bench.doing(() -> {
            ComboBox<Object> lifters = (ComboBox<Object>) one("Lifter who tries it");
            lifters.setValue(lifters.getItems().get(1));
        });
        bench.until(
                "Oda is drawn",
                () -> WindowThread.all(window.stage().getScene().getRoot())
                        .anyMatch(
                                node -> String.valueOf(node.getAccessibleText()).startsWith("Back squat by Oda")));
        type("Vest", "5 stone");
        untilSaid("stone");
        type("Vest", "5 kg");
        type("Band, stretched by and with", "30 cm 70 N, 120 cm 150 N");
        bench.until("it can be put", () -> !button("Put it into the sheet").isDisabled());
        bench.doing(() -> button("Put it into the sheet").fire());
        bench.untilFresh(window.model());
        CellView cell = WindowThread.at(() -> window.model().cells().stream()
                .filter(each -> each.text().get().contains("myBackSquat"))
                .findFirst()
                .orElseThrow());
        String script = WindowThread.at(() -> cell.text().get());
        assertTrue(script.contains(".vest(kg(5)).band(band(cm(60)).stretched(cm(30), newtons(70))"), script);
        assertTrue(script.contains(".by(oda)"), script);
        var results = WindowThread.at(() -> cell.shown().get().results());
        assertTrue(results.stream().anyMatch(FigureResult.class::isInstance), results.toString());
    }

    @Test
    void whatCannotBeIsSaidAndNotPut() throws Exception {
        seek("step-up");
        press(WindowThread.at(() -> one("Search the exercises")), KeyCode.ENTER);
        type("Step height", "80");
        bench.until("refused", () -> button("Put it into the sheet").isDisabled());
        untilSaid("the step is 0.8 m high");
        type("Step height", "40 cm");
        bench.until("possible again", () -> !button("Put it into the sheet").isDisabled());
        bench.doing(() -> button("All exercises").fire());
        assertEquals(WindowThread.at(() -> list()), WindowThread.at(() -> one("Exercises")));
    }
}
