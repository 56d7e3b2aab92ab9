package leverwright.face.desk.editor;

import javafx.scene.AccessibleRole;
import javafx.scene.layout.StackPane;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;

/** The script of one cell, to be read and written. As tall as its text. */
public final class ScriptEditor extends StackPane {

    private final SourceArea area = new SourceArea();
    private final SourceFrame frame = new SourceFrame(area);
    private final CellText text;

    /**
     * Shows a script.
     *
     * @param model the workbook
     * @param cellId the script's id
     * @throws java.util.NoSuchElementException when the workbook has no such cell
     */
    public ScriptEditor(DeskModel model, String cellId) {
        CellView cell = model.cell(cellId).orElseThrow();
        getStyleClass().add("script-editor");
        setAccessibleRole(AccessibleRole.PARENT);
        area.setAccessibleText("Script");
        getChildren().add(frame);
        text = new CellText(model, cell, area);
    }

    /** Gives the focus to the text. */
    @Override
    public void requestFocus() {
        area.requestFocus();
    }

    /**
     * Gives the focus to the text at a place.
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
