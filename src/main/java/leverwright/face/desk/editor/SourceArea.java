package leverwright.face.desk.editor;

import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.IndexRange;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.model.TwoDimensional.Bias;
import org.fxmisc.richtext.util.UndoUtils;
import org.jspecify.annotations.Nullable;

/**
 * A text area for source: plain text in and out, without a history of its own, and with the role and attributes of a text
 * area for assistive technology.
 */
class SourceArea extends CodeArea {

    SourceArea() {
        setUndoManager(UndoUtils.noOpUndoManager());
        setAccessibleRole(AccessibleRole.TEXT_AREA);
        getStyleClass().add("source");
        textProperty().addListener(changed -> notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT));
        selectionProperty().addListener(changed -> {
            notifyAccessibleAttributeChanged(AccessibleAttribute.SELECTION_START);
            notifyAccessibleAttributeChanged(AccessibleAttribute.SELECTION_END);
        });
        caretPositionProperty()
                .addListener(changed -> notifyAccessibleAttributeChanged(AccessibleAttribute.CARET_OFFSET));
    }

    /** Puts in plain text only: line feeds between lines, whole characters. */
    @Override
    public void replaceText(int start, int end, String text) {
        super.replaceText(start, end, PlainSource.of(text));
    }

    @Override
    public void paste() {
        Clipboard clipboard = Clipboard.getSystemClipboard();
        if (clipboard.hasString()) {
            replaceSelection(clipboard.getString());
        }
    }

    @Override
    public void copy() {
        String selected = getSelectedText();
        if (!selected.isEmpty()) {
            ClipboardContent content = new ClipboardContent();
            content.putString(selected);
            Clipboard.getSystemClipboard().setContent(content);
        }
    }

    @Override
    public void cut() {
        copy();
        IndexRange selected = getSelection();
        deleteText(selected.getStart(), selected.getEnd());
    }

    @Override
    public @Nullable Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return switch (attribute) {
            case TEXT -> getText();
            case EDITABLE -> isEditable();
            case SELECTION_START -> getSelection().getStart();
            case SELECTION_END -> getSelection().getEnd();
            case CARET_OFFSET -> getCaretPosition();
            case LINE_FOR_OFFSET ->
                offsetToPosition((Integer) parameters[0], Bias.Backward).getMajor();
            case LINE_START -> getAbsolutePosition((Integer) parameters[0], 0);
            case LINE_END -> {
                int line = (Integer) parameters[0];
                yield getAbsolutePosition(line, getParagraphLength(line));
            }
            case OFFSET_AT_POINT -> {
                Point2D point = screenToLocal((Point2D) parameters[0]);
                yield point == null ? null : hit(point.getX(), point.getY()).getInsertionIndex();
            }
            case BOUNDS_FOR_RANGE -> {
                Bounds bounds = getCharacterBoundsOnScreen((Integer) parameters[0], (Integer) parameters[1])
                        .orElse(null);
                yield bounds == null ? null : new Bounds[] {bounds};
            }
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        switch (action) {
            case SET_TEXT -> replaceText(String.valueOf(parameters[0]));
            case SET_TEXT_SELECTION -> selectRange((Integer) parameters[0], (Integer) parameters[1]);
            case SHOW_TEXT_RANGE -> {
                moveTo((Integer) parameters[0]);
                requestFollowCaret();
            }
            default -> super.executeAccessibleAction(action, parameters);
        }
    }
}
