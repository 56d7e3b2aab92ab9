package leverwright.face.desk.dials;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.CellShown;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Pin;
import leverwright.face.desk.sheet.ResultCard;
import leverwright.run.result.FigureResult;
import leverwright.run.result.Result;
import org.jspecify.annotations.Nullable;

/** The figure at the side, always in view: the first of the workbook, or another one that the reader chooses. */
final class NowFigure extends VBox {

    private final DeskModel model;
    private final HBox head = new HBox();
    private final Button other = new Button("Other figure");
    private final Label none = new Label("A script that ends in figure(…) shows its figure here.");
    private final InvalidationListener follow = changed -> show();
    private @Nullable ResultCard card;
    private @Nullable Pin shown;
    private int chosen;

    NowFigure(DeskModel model) {
        this.model = model;
        getStyleClass().add("now");
        Label heading = new Label("THE LIFTER NOW");
        heading.getStyleClass().add("heading");
        heading.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(heading, Priority.ALWAYS);
        other.getStyleClass().addAll("plain", "small");
        other.setAccessibleText("Show the next figure of the workbook here");
        other.setOnAction(event -> {
            chosen++;
            show();
        });
        other.managedProperty().bind(other.visibleProperty());
        head.getStyleClass().add("side-head");
        head.getChildren().addAll(heading, other);
        none.getStyleClass().add("quiet");
        none.setWrapText(true);
        model.batch().addListener(follow);
        model.cells().addListener(follow);
        model.held().addListener(follow);
        show();
    }

    /** A figure of the workbook and that of the held setting. */
    private record Found(
            Pin pin, FigureResult figure, @Nullable Result before) {}

    private List<Found> figures() {
        List<Found> found = new ArrayList<>();
        for (CellView cell : model.cells()) {
            List<Result> results = cell.shown().get().results();
            Optional<CellShown> held = cell.held().get();
            for (int i = 0; i < results.size(); i++) {
                if (results.get(i) instanceof FigureResult figure) {
                    int place = i;
                    Result before = held.map(CellShown::results)
                            .filter(old -> place < old.size())
                            .map(old -> old.get(place))
                            .orElse(null);
                    found.add(new Found(new Pin(cell.id(), i), figure, before));
                }
            }
        }
        return found;
    }

    private void show() {
        List<Found> figures = figures();
        other.setVisible(figures.size() > 1);
        if (figures.isEmpty()) {
            giveUp();
            set(List.of(head, none));
            return;
        }
        Found now = figures.get(chosen % figures.size());
        ResultCard used = card;
        if (used == null || !now.pin().equals(shown)) {
            giveUp();
            used = new ResultCard(model, now.pin());
            card = used;
            shown = now.pin();
            set(List.of(head, used));
        }
        used.show(now.figure(), now.before());
    }

    private void set(List<? extends Node> nodes) {
        if (!getChildren().equals(nodes)) {
            getChildren().setAll(nodes);
        }
    }

    private void giveUp() {
        ResultCard used = card;
        if (used != null) {
            used.dispose();
        }
        card = null;
        shown = null;
    }

    void dispose() {
        model.batch().removeListener(follow);
        model.cells().removeListener(follow);
        model.held().removeListener(follow);
        giveUp();
    }
}
