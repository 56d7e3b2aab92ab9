package leverwright.face.desk.editor;

import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import leverwright.face.desk.model.DeskModel;

/** Finds and replaces in every script and note of a workbook. */
public final class FindBar extends HBox {

    private final TextField find = new TextField();

    /**
     * Makes the bar.
     *
     * @param model the workbook
     */
    public FindBar(DeskModel model) {
        getStyleClass().add("find-bar");
        find.setAccessibleText("Find");
        getChildren().addAll(new Label("Find"), find);
    }

    /** Gives the focus to the text that is sought. */
    @Override
    public void requestFocus() {
        find.requestFocus();
    }

    /** Stops following the workbook. */
    public void dispose() {}
}
