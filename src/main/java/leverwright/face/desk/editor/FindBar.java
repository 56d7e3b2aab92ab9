package leverwright.face.desk.editor;

import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Finding;
import leverwright.face.desk.model.Query;

/**
 * Finds and replaces in every script and note of a workbook. Enter goes to the next place, Shift+Enter to the one before;
 * Escape ends the search and asks to be closed.
 */
public final class FindBar extends FlowPane {

    private final Finding finding;
    private final TextField find = new TextField();
    private final TextField replacement = new TextField();
    private final CheckBox caseMatters = new CheckBox("Match case");
    private final CheckBox wholeWords = new CheckBox("Whole words");
    private final CheckBox expression = new CheckBox("Regular expression");
    private final Label words = new Label();
    private final InvalidationListener follow = changed -> refresh();
    private final WeakInvalidationListener weakly = new WeakInvalidationListener(follow);
    private Runnable whenDone = () -> {};

    /**
     * Makes the bar.
     *
     * @param model the workbook
     */
    public FindBar(DeskModel model) {
        finding = model.finding();
        getStyleClass().add("find-bar");
        setAccessibleText("Find and replace");
        find.setAccessibleText("Find");
        find.setPromptText("Find");
        replacement.setAccessibleText("Replace with");
        replacement.setPromptText("Replace with");
        words.getStyleClass().add("find-words");
        Button next = button("Next", finding::next);
        Button previous = button("Previous", finding::previous);
        Button replace = button("Replace", () -> finding.replace(replacement.getText()));
        Button all = button("Replace all", () -> finding.replaceAll(replacement.getText()));
        Button done = button("Close", this::finish);
        BooleanBinding nothing = find.textProperty().isEmpty();
        List.of(next, previous, replace, all)
                .forEach(each -> each.disableProperty().bind(nothing));
        getChildren()
                .addAll(
                        row(find, previous, next, words),
                        row(caseMatters, wholeWords, expression),
                        row(replacement, replace, all, done));
        find.textProperty().addListener(changed -> seek());
        for (CheckBox each : List.of(caseMatters, wholeWords, expression)) {
            each.selectedProperty().addListener(changed -> seek());
        }
        finding.words().addListener(weakly);
        finding.failed().addListener(weakly);
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    }

    private static HBox row(javafx.scene.Node... parts) {
        HBox row = new HBox(parts);
        row.getStyleClass().add("find-row");
        return row;
    }

    private static Button button(String text, Runnable action) {
        Button button = new Button(text);
        button.setOnAction(event -> action.run());
        return button;
    }

    private void key(KeyEvent key) {
        if (key.getCode() == KeyCode.ESCAPE) {
            key.consume();
            finish();
        } else if (key.getCode() == KeyCode.ENTER && key.getTarget() == find) {
            key.consume();
            if (key.isShiftDown()) {
                finding.previous();
            } else {
                finding.next();
            }
        } else if (key.getCode() == KeyCode.ENTER && key.getTarget() == replacement) {
            key.consume();
            finding.replace(replacement.getText());
        }
    }

    private void seek() {
        finding.seek(
                new Query(find.getText(), caseMatters.isSelected(), wholeWords.isSelected(), expression.isSelected()));
    }

    private void refresh() {
        boolean failed = finding.failed().get();
        words.setText((failed ? "✕ " : "") + finding.words().get());
        words.getStyleClass().remove("script-problem");
        if (failed) {
            words.getStyleClass().add("script-problem");
        }
    }

    private void finish() {
        finding.end();
        whenDone.run();
    }

    /**
     * Says what to do when the reader is done.
     *
     * @param action closes the bar and gives the focus elsewhere
     */
    public void onDone(Runnable action) {
        whenDone = action;
    }

    /** Seeks what stands in the field again and gives it the focus. */
    @Override
    public void requestFocus() {
        find.requestFocus();
        find.selectAll();
        seek();
    }

    /** Stops following the workbook and ends the search. */
    public void dispose() {
        finding.words().removeListener(weakly);
        finding.failed().removeListener(weakly);
        finding.end();
    }
}
