package leverwright.face.desk;

import java.util.List;
import java.util.function.Consumer;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.StateSign;
import leverwright.run.result.CellState;
import org.jspecify.annotations.Nullable;

/** Every cell of the workbook by name, with its state in words; choosing one brings it into view. */
final class Outline extends ListView<CellView> {

    Outline(Consumer<String> reveal) {
        getStyleClass().add("outline");
        setAccessibleText("Cells of this workbook");
        setCellFactory(list -> new Entry());
        setOnMouseClicked(event -> go(reveal));
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
                go(reveal);
                event.consume();
            }
        });
    }

    /** Shows the cells of a workbook, and follows them. */
    void fill(DeskModel model) {
        setItems(model.cells());
    }

    private void go(Consumer<String> reveal) {
        CellView chosen = getSelectionModel().getSelectedItem();
        if (chosen != null) {
            reveal.accept(chosen.id());
        }
    }

    private static final class Entry extends ListCell<CellView> {
        private final Label title = new Label();
        private final Label state = new Label();
        private final VBox both = new VBox(title, state);
        private final InvalidationListener follow = changed -> refresh();
        private final WeakInvalidationListener weak = new WeakInvalidationListener(follow);
        private @Nullable CellView followed;

        Entry() {
            title.getStyleClass().add("title");
            both.setMinWidth(0);
            both.setPrefWidth(0);
        }

        @Override
        protected void updateItem(@Nullable CellView item, boolean empty) {
            super.updateItem(item, empty);
            CellView before = followed;
            if (before != null) {
                before.shown().removeListener(weak);
                before.title().removeListener(weak);
                before.text().removeListener(weak);
            }
            followed = empty ? null : item;
            CellView now = followed;
            setGraphic(now == null ? null : both);
            if (now != null) {
                now.shown().addListener(weak);
                now.title().addListener(weak);
                now.text().addListener(weak);
                refresh();
            }
        }

        private void refresh() {
            CellView cell = followed;
            if (cell == null) {
                return;
            }
            title.setText(CellTitle.of(cell));
            CellState now = cell.shown().get().state();
            List<String> classes =
                    cell.isScript() ? List.of("label", "state", StateSign.styleClass(now)) : List.of("label", "state");
            // Setting the same classes again would style the label anew with every turn of a dial.
            if (!state.getStyleClass().equals(classes)) {
                state.getStyleClass().setAll(classes);
            }
            state.setText(cell.isScript() ? StateSign.of(now) + " " + CellTitle.state(cell) : CellTitle.state(cell));
            setAccessibleText(CellTitle.of(cell) + ", " + CellTitle.state(cell));
        }
    }
}
