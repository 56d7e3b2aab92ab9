package leverwright.face.desk;

import javafx.beans.binding.StringBinding;
import leverwright.face.desk.model.DeskModel;

/** The title of a window: the workbook's, a dot when something is not saved, and the program. */
final class WindowTitle extends StringBinding {

    private final DeskModel model;

    WindowTitle(DeskModel model) {
        this.model = model;
        bind(model.workbook(), model.unsaved());
    }

    @Override
    protected String computeValue() {
        return TopBar.titleOf(model) + (model.unsaved().get() ? " • not saved" : "") + " – Leverwright";
    }
}
