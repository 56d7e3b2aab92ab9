package leverwright.face.desk.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellShown;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.publish.TextReport;

/** The sheet of one workbook, from top to bottom. */
public final class SheetPane extends ScrollPane {

    private final DeskModel model;
    private final VBox column = new VBox();
    private final Map<String, Strip> strips = new LinkedHashMap<>();
    private final ObservableList<CellView> cells;
    private final ListChangeListener<CellView> follow = change -> take();

    /**
     * Shows a workbook.
     *
     * @param model the workbook
     */
    public SheetPane(DeskModel model) {
        this.model = model;
        cells = model.cells();
        column.getStyleClass().add("sheet");
        setContent(column);
        setFitToWidth(true);
        setAccessibleText("Sheet");
        cells.addListener(follow);
        take();
    }

    private void take() {
        Map<String, Strip> before = new LinkedHashMap<>(strips);
        strips.clear();
        for (CellView cell : cells) {
            Strip kept = before.get(cell.id());
            strips.put(cell.id(), kept != null && kept.cell == cell ? kept : new Strip(model, cell));
        }
        column.getChildren().setAll(strips.values());
    }

    /**
     * Brings a cell into view and gives it the focus.
     *
     * @param id the cell's id; an unknown one is passed over
     */
    public void reveal(String id) {
        Strip strip = strips.get(id);
        if (strip != null) {
            double free = column.getHeight() - getViewportBounds().getHeight();
            setVvalue(free <= 0 ? 0 : Math.min(1, strip.getBoundsInParent().getMinY() / free));
            strip.text.requestFocus();
        }
    }

    /** Stops following the workbook. */
    public void dispose() {
        cells.removeListener(follow);
    }

    private static final class Strip extends HBox {
        final CellView cell;
        final TextArea text = new TextArea();
        private final Label shown = new Label();
        private final InvalidationListener follow = changed -> refresh();

        Strip(DeskModel model, CellView cell) {
            this.cell = cell;
            getStyleClass().add("strip");
            text.getStyleClass().add("code");
            text.setAccessibleText(cell.isScript() ? "Script" : "Note");
            shown.getStyleClass().add("code");
            shown.setWrapText(true);
            shown.setPrefWidth(500);
            shown.setMinHeight(USE_PREF_SIZE);
            HBox.setHgrow(text, Priority.ALWAYS);
            getChildren().addAll(text, shown);
            cell.text().addListener(new WeakInvalidationListener(follow));
            cell.shown().addListener(new WeakInvalidationListener(follow));
            text.textProperty().addListener((property, before, now) -> {
                if (!now.equals(cell.text().get())) {
                    model.type(cell.id(), now, text.getCaretPosition());
                }
            });
            text.caretPositionProperty()
                    .addListener((property, before, now) -> model.caretAt(new Caret(cell.id(), now.intValue())));
            refresh();
        }

        private void refresh() {
            String now = cell.text().get();
            if (!now.equals(text.getText())) {
                text.setText(now);
            }
            text.setPrefRowCount((int) now.lines().count() + 1);
            CellShown result = cell.shown().get();
            shown.setText(
                    cell.isScript()
                            ? new TextReport(70, false, false, false)
                                    .cell(cell.title().get(), result.state(), result.problem(), result.results())
                            : "");
        }
    }
}
