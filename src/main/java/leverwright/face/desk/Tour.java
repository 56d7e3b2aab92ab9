package leverwright.face.desk;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import leverwright.face.desk.style.Words;

/** A first look round on the demo, one step after the other; the part that a step speaks of is framed meanwhile. */
final class Tour extends VBox {

    /** A part of the window. */
    enum Place {
        SHEET,
        SIDE,
        MENUS,
        EDGE
    }

    private record Step(Place place, String title, String words) {}

    private static final List<Step> STEPS = List.of(
            new Step(
                    Place.SHEET,
                    "A sheet of strips",
                    "Every strip has a script, and on a warmer ground what it comes to: at its right, or below it where the"
                            + " sheet is narrow. Scripts compute by themselves when you stop typing; a word and a sign beside"
                            + " each tell how it stands."),
            new Step(
                    Place.SIDE,
                    "Turn a dial",
                    "Drag \"Torso lean\" to 45, or type \"60 deg\" and press Enter, or drag the hip of the figure. Figure,"
                            + " numbers and curves follow while you do."),
            new Step(
                    Place.SHEET,
                    "Where a number comes from",
                    "Every number opens its hand calculation, with its sources. Point at a curve to read its value there;"
                            + " click it to set the dial to that place."),
            new Step(
                    Place.SIDE,
                    "Before and after",
                    "Before / after holds what you see now, as a pale ghost beside what comes when you turn on."),
            new Step(
                    Place.SHEET,
                    "Write",
                    "Click into a script and change a number, say kg(50) to kg(60). Help, then \"What do you want to"
                            + " compute?\", puts a working line where the caret is. Undo takes everything back."),
            new Step(
                    Place.MENUS,
                    "Keep and show",
                    "Save keeps the text with its results; Publish writes one page to read, print and check. The results"
                            + " are a model's estimate, not medical or training advice."));

    private static final String FRAMED = "framed";

    private final DeskWindow window;
    private final Runnable end;
    private final Label title = new Label();
    private final Label words = Words.paragraph("");
    private final Label count = new Label();
    private final Button next = new Button("Next");
    private final Button back = new Button("Back");
    private int step;

    Tour(DeskWindow window, Runnable end) {
        this.window = window;
        this.end = end;
        getStyleClass().addAll("words", "tour");
        title.getStyleClass().add("term");
        title.setWrapText(true);
        count.getStyleClass().addAll("quiet", "small");
        Button skip = new Button("End");
        skip.setOnAction(event -> finish());
        next.getStyleClass().add("primary");
        next.setOnAction(event -> go(step + 1));
        back.setOnAction(event -> go(step - 1));
        FlowPane buttons = new FlowPane(8, 8, next, back, skip);
        for (Node button : buttons.getChildren()) {
            ((Region) button).setMinWidth(USE_PREF_SIZE);
        }
        getChildren().addAll(count, title, words, buttons);
        sceneProperty().addListener((property, before, now) -> {
            if (now == null) {
                unframe();
            }
        });
        go(0);
    }

    private void go(int wanted) {
        unframe();
        if (wanted >= STEPS.size()) {
            finish();
            return;
        }
        step = wanted;
        Step now = STEPS.get(step);
        count.setText((step + 1) + " of " + STEPS.size());
        title.setText(now.title());
        words.setText(now.words());
        back.setDisable(step == 0);
        next.setText(step == STEPS.size() - 1 ? "Done" : "Next");
        setAccessibleText(now.title() + ". " + now.words());
        window.part(now.place()).getStyleClass().add(FRAMED);
    }

    private void unframe() {
        for (Place place : Place.values()) {
            window.part(place).getStyleClass().removeAll(FRAMED);
        }
    }

    private void finish() {
        unframe();
        end.run();
    }

    @Override
    public void requestFocus() {
        next.requestFocus();
    }
}
