package leverwright.face.desk.sheet;

import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.CellShown;
import leverwright.run.result.CellState;
import leverwright.workbook.session.Span;
import org.jspecify.annotations.Nullable;

/** What went wrong with a script, in words, with the way to its place. */
final class ProblemBox extends VBox {

    private final Label words = new Label();
    private final Label advice = new Label();
    private final Hyperlink place = new Hyperlink();
    private @Nullable Span span;

    ProblemBox(Consumer<Span> go) {
        getStyleClass().add("problem");
        setAccessibleRole(AccessibleRole.TEXT);
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        words.getStyleClass().add("problem-words");
        advice.setWrapText(true);
        advice.setMinHeight(Region.USE_PREF_SIZE);
        advice.getStyleClass().addAll("quiet", "small");
        place.setOnAction(event -> {
            Span there = span;
            if (there != null) {
                go.accept(there);
            }
        });
        getChildren().addAll(words, place, advice);
        for (javafx.scene.Node each : getChildren()) {
            each.managedProperty().bind(each.visibleProperty());
        }
        managedProperty().bind(visibleProperty());
    }

    void show(CellShown shown) {
        boolean wrong = !shown.problem().isEmpty() && shown.state() != CellState.RUNNING;
        setVisible(wrong);
        if (!wrong) {
            return;
        }
        span = shown.span();
        words.setText(shown.problem());
        place.setVisible(span != null);
        place.setText(span == null ? "" : "Go to line " + span.line());
        String what = advice(shown.state());
        advice.setText(what);
        advice.setVisible(!what.isEmpty());
        setAccessibleText(shown.state().words() + ": " + shown.problem() + " " + what);
        getStyleClass().remove("calm");
        if (shown.state() == CellState.NOT_RUN) {
            getStyleClass().add("calm");
        }
    }

    private static String advice(CellState state) {
        return switch (state) {
            case REFUSED ->
                "Nothing of this script ran. Use what the message names instead; or, if you know who wrote"
                        + " the workbook, trust it in the Compute menu.";
            case FAILED -> "Change the script; it runs again by itself.";
            default -> "";
        };
    }
}
