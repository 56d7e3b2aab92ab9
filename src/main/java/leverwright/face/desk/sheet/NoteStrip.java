package leverwright.face.desk.sheet;

import leverwright.face.desk.editor.NoteEditor;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;

/** A note as broad as a line can be read with ease. */
final class NoteStrip extends Strip {

    private final StripHead head;
    private final NoteEditor note;

    NoteStrip(DeskModel model, CellView cell, StripDeeds deeds) {
        super(cell);
        getStyleClass().add("note-strip");
        setAccessibleText("Note");
        head = new StripHead(model, cell, deeds);
        head.getStyleClass().add("over-note");
        note = new NoteEditor(model, cell.id());
        getChildren().addAll(note, head);
    }

    /** Gives the focus to the note as it reads. */
    void read() {
        note.requestFocus();
    }

    @Override
    void focusAt(Caret caret) {
        note.focusAt(caret);
    }

    private double inside(double width) {
        return Math.max(50, width - snappedLeftInset() - snappedRightInset());
    }

    @Override
    protected double computePrefHeight(double width) {
        double wide = width > 0 ? width : getWidth();
        return snappedTopInset() + snapSizeY(note.prefHeight(inside(wide))) + snappedBottomInset();
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        note.resizeRelocate(
                snappedLeftInset(),
                snappedTopInset(),
                inside(width),
                getHeight() - snappedTopInset() - snappedBottomInset());
        double high = head.prefHeight(-1);
        double broad = head.prefWidth(-1);
        head.resizeRelocate(width - broad - 4, 2, broad, high);
    }

    @Override
    void dispose() {
        note.dispose();
    }
}
