package leverwright.face.desk.editor;

import java.util.List;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.model.PlainTextChange;
import org.reactfx.Subscription;

/** Keeps the text of one cell and of an area the same: what is typed goes to the model, what the model says is shown. */
final class CellText {

    private final DeskModel model;
    private final CellView cell;
    private final CodeArea area;
    private final ChangeListener<String> follow = (property, before, now) -> take();
    private final WeakChangeListener<String> weakly = new WeakChangeListener<>(follow);
    private final Subscription typing;
    private final ChangeListener<Integer> caret;
    private final ChangeListener<Boolean> focus;
    private boolean taking;

    CellText(DeskModel model, CellView cell, CodeArea area) {
        this.model = model;
        this.cell = cell;
        this.area = area;
        area.replaceText(cell.text().get());
        area.moveTo(0);
        cell.text().addListener(weakly);
        typing = area.multiPlainChanges().subscribe(this::typed);
        caret = (property, before, now) -> tellCaret();
        area.caretPositionProperty().addListener(caret);
        focus = (property, before, now) -> {
            if (now) {
                tellCaret();
            } else {
                model.endTyping();
            }
        };
        area.focusedProperty().addListener(focus);
    }

    private void tellCaret() {
        if (!taking && area.isFocused()) {
            model.caretAt(new Caret(cell.id(), area.getCaretPosition()));
        }
    }

    private void typed(List<PlainTextChange> changes) {
        if (taking || changes.isEmpty()) {
            return;
        }
        PlainTextChange last = changes.get(changes.size() - 1);
        int after = last.getPosition() + last.getInserted().length();
        boolean typed = changes.size() == 1
                && last.getInserted().length() + last.getRemoved().length() <= 2;
        if (!typed) {
            model.endTyping();
        }
        model.type(cell.id(), area.getText(), after);
        if (!typed) {
            model.endTyping();
        }
        if (!cell.text().get().equals(area.getText())) {
            // The workbook keeps the text in another form; the area cannot be changed within its own change.
            Platform.runLater(this::take);
        }
    }

    private void take() {
        String was = area.getText();
        String now = cell.text().get();
        if (taking || was.equals(now)) {
            return;
        }
        TextDifference difference = TextDifference.between(was, now);
        taking = true;
        try {
            area.replaceText(
                    difference.start(),
                    difference.endBefore(),
                    now.substring(difference.start(), difference.endAfter()));
            area.moveTo(difference.endAfter());
        } finally {
            taking = false;
        }
    }

    /** Returns whether the area is taking what the model says. */
    boolean isTaking() {
        return taking;
    }

    void dispose() {
        cell.text().removeListener(weakly);
        typing.unsubscribe();
        area.caretPositionProperty().removeListener(caret);
        area.focusedProperty().removeListener(focus);
    }
}
