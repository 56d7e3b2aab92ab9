package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.CellShown;
import leverwright.run.result.CellState;
import leverwright.workbook.session.Fault;
import leverwright.workbook.session.Span;

/** What is wrong with a script, in words, each with the way to its place. */
final class ProblemBox extends VBox {

    private static final int MOST = 6;

    private final Consumer<Span> go;

    ProblemBox(Consumer<Span> go) {
        this.go = go;
        getStyleClass().add("problem");
        setAccessibleRole(AccessibleRole.TEXT);
        managedProperty().bind(visibleProperty());
    }

    void show(CellShown shown) {
        boolean wrong = !shown.problem().isEmpty() && shown.state() != CellState.RUNNING;
        setVisible(wrong);
        if (!wrong) {
            return;
        }
        List<Node> lines = new ArrayList<>();
        if (shown.faults().isEmpty()) {
            lines.add(words(shown.problem()));
        }
        for (Fault fault : shown.faults().stream().limit(MOST).toList()) {
            lines.add(words(fault.message()));
            lines.add(place(fault.span()));
        }
        int left = shown.faults().size() - MOST;
        if (left > 0) {
            lines.add(quiet(left == 1 ? "One more place is marked." : left + " more places are marked."));
        }
        String what = advice(shown.state());
        if (!what.isEmpty()) {
            lines.add(quiet(what));
        }
        getChildren().setAll(lines);
        setAccessibleText(shown.state().words() + ": " + shown.problem() + " " + what);
        getStyleClass().remove("calm");
        if (shown.state() == CellState.NOT_RUN) {
            getStyleClass().add("calm");
        }
    }

    private static Label words(String said) {
        Label words = new Label(said);
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        words.getStyleClass().add("problem-words");
        return words;
    }

    private static Label quiet(String said) {
        Label quiet = words(said);
        quiet.getStyleClass().setAll("label", "quiet", "small");
        return quiet;
    }

    private Hyperlink place(Span span) {
        Hyperlink place = new Hyperlink("Go to line " + span.line());
        place.setOnAction(event -> go.accept(span));
        return place;
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
