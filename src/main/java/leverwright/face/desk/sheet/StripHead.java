package leverwright.face.desk.sheet;

import javafx.geometry.Side;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import leverwright.face.desk.model.CellShown;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.style.Hint;
import leverwright.run.result.CellState;

/** The line over a cell: what it is called, how it stands, and what can be done with it. */
final class StripHead extends HBox {

    private final DeskModel model;
    private final CellView cell;
    private final StripDeeds deeds;
    private final TextField title = new TextField();
    private final StateLabel state = new StateLabel();
    private final Button stop = new Button("Stop");
    private final Region grip = new Region();

    StripHead(DeskModel model, CellView cell, StripDeeds deeds) {
        this.model = model;
        this.cell = cell;
        this.deeds = deeds;
        getStyleClass().add("strip-head");
        grip.getStyleClass().add("grip");
        grip.setAccessibleText("Drag to move the cell");
        Hint.on(grip, "Drag to move the cell");
        grip.setOnMousePressed(event -> event.consume());
        grip.setOnMouseDragged(event -> deeds.dragging(cell.id(), event.getSceneY()));
        grip.setOnMouseReleased(event -> deeds.dropped(cell.id(), event.getSceneY()));
        title.getStyleClass().add("cell-title");
        title.setPromptText("untitled");
        title.setAccessibleText("Title of the script");
        title.setPrefColumnCount(10);
        title.setOnAction(event -> commit());
        title.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                commit();
            }
        });
        title.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                title.setText(cell.title().get());
                event.consume();
            }
        });
        HBox.setHgrow(title, Priority.ALWAYS);
        stop.getStyleClass().addAll("plain", "small");
        stop.setAccessibleText("Stop the run");
        stop.setOnAction(event -> model.stop());
        stop.managedProperty().bind(stop.visibleProperty());
        stop.setMinWidth(USE_PREF_SIZE);
        Button more = new Button("…");
        more.getStyleClass().addAll("plain", "more");
        more.setMinWidth(USE_PREF_SIZE);
        more.setAccessibleText(
                cell.isScript() ? "What can be done with this script" : "What can be done with this note");
        more.setOnAction(event -> menu().show(more, Side.BOTTOM, 0, 0));
        if (cell.isScript()) {
            getChildren().addAll(grip, title, state, stop, more);
        } else {
            Region space = new Region();
            HBox.setHgrow(space, Priority.ALWAYS);
            getChildren().addAll(grip, space, more);
        }
    }

    private void commit() {
        String text = title.getText().strip();
        if (!text.equals(cell.title().get())) {
            model.retitle(cell.id(), text);
        }
    }

    void showTitle() {
        if (!title.getText().equals(cell.title().get())) {
            title.setText(cell.title().get());
        }
    }

    void showState(CellShown shown) {
        state.show(shown);
        stop.setVisible(shown.state() == CellState.RUNNING);
    }

    ContextMenu menu() {
        ContextMenu menu = new ContextMenu();
        int index = index();
        MenuItem up = ResultBody.item("Move up", () -> deeds.move(cell.id(), index - 1));
        MenuItem down = ResultBody.item("Move down", () -> deeds.move(cell.id(), index + 1));
        up.setDisable(index <= 0);
        down.setDisable(index >= model.cells().size() - 1);
        menu.getItems()
                .setAll(
                        ResultBody.item("New script below", () -> deeds.add(true, index + 1)),
                        ResultBody.item("New note below", () -> deeds.add(false, index + 1)),
                        ResultBody.item("New script above", () -> deeds.add(true, index)),
                        ResultBody.item("New note above", () -> deeds.add(false, index)),
                        new SeparatorMenuItem(),
                        up,
                        down,
                        new SeparatorMenuItem(),
                        ResultBody.item("Delete", () -> model.delete(cell.id())));
        return menu;
    }

    private int index() {
        for (int i = 0; i < model.cells().size(); i++) {
            if (model.cells().get(i).id().equals(cell.id())) {
                return i;
            }
        }
        return -1;
    }
}
