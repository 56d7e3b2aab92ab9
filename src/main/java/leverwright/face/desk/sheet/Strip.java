package leverwright.face.desk.sheet;

import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellView;

/** A cell on the sheet. As broad as the sheet, as high as what it shows. */
abstract class Strip extends Region {

    private final CellView cell;

    Strip(CellView cell) {
        this.cell = cell;
        getStyleClass().add("strip");
        setAccessibleRole(AccessibleRole.PARENT);
    }

    final CellView cell() {
        return cell;
    }

    /** Gives the focus to the text of the cell at a place. */
    abstract void focusAt(Caret caret);

    /** Takes whether the strip is in view; one that is not need not follow every turn of a dial. */
    void seen(boolean inView) {}

    /** Returns whether nothing was left out of it. */
    boolean isWhole() {
        return true;
    }

    /** Builds what was left out of the first picture of the window. */
    void complete() {}

    /** Stops following the workbook. */
    abstract void dispose();

    @Override
    public final Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected final double computeMinHeight(double width) {
        return computePrefHeight(width);
    }
}
