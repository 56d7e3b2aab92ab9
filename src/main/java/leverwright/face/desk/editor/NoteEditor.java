package leverwright.face.desk.editor;

import javafx.scene.AccessibleRole;
import javafx.scene.layout.StackPane;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;

/** One note, to be read and written. */
public final class NoteEditor extends StackPane {

    private final SourceArea area = new SourceArea();
    private final SourceFrame frame = new SourceFrame(area);
    private final CellText text;

    /**
     * Shows a note.
     *
     * @param model the workbook
     * @param cellId the note's id
     * @throws java.util.NoSuchElementException when the workbook has no such cell
     */
    public NoteEditor(DeskModel model, String cellId) {
        CellView cell = model.cell(cellId).orElseThrow();
        getStyleClass().add("note-editor");
        setAccessibleRole(AccessibleRole.PARENT);
        area.setAccessibleText("Note");
        area.setWrapText(true);
        getChildren().add(frame);
        text = new CellText(model, cell, area);
    }

    /** Gives the focus to the note. */
    @Override
    public void requestFocus() {
        area.requestFocus();
    }

    /**
     * Gives the focus to the note's source at a place.
     *
     * @param caret the place; one beyond the text is its end
     */
    public void focusAt(Caret caret) {
        area.moveTo(Math.min(Math.max(0, caret.position()), area.getLength()));
        area.requestFocus();
        area.requestFollowCaret();
    }

    /** Stops following the workbook. */
    public void dispose() {
        text.dispose();
        frame.dispose();
    }
}
