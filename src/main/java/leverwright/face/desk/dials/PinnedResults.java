package leverwright.face.desk.dials;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.CellShown;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Pin;
import leverwright.face.desk.sheet.ResultCard;
import leverwright.run.result.Result;

/** The results that the reader keeps in view. */
final class PinnedResults extends VBox {

    private final DeskModel model;
    private final ObservableList<Pin> pins;
    private final Map<Pin, Pinned> shown = new LinkedHashMap<>();
    private final ListChangeListener<Pin> follow = change -> take();
    private final InvalidationListener refresh = changed -> refresh();

    /** A result that is kept in view, with the way to let it go. */
    private static final class Pinned extends VBox {
        private final ResultCard card;

        Pinned(DeskModel model, Pin pin) {
            card = new ResultCard(model, pin);
            Button away = new Button("No longer keep in view");
            away.getStyleClass().addAll("plain", "small");
            away.setOnAction(event -> model.unpin(pin));
            getStyleClass().add("pinned-result");
            getChildren().addAll(card, away);
        }
    }

    PinnedResults(DeskModel model) {
        this.model = model;
        pins = model.pins();
        getStyleClass().add("pinned");
        pins.addListener(follow);
        model.batch().addListener(refresh);
        model.held().addListener(refresh);
        managedProperty().bind(visibleProperty());
        take();
    }

    private void take() {
        Map<Pin, Pinned> kept = new LinkedHashMap<>(shown);
        shown.clear();
        List<Node> nodes = new ArrayList<>();
        Label heading = new Label("KEPT IN VIEW");
        heading.getStyleClass().add("heading");
        nodes.add(heading);
        for (Pin pin : pins) {
            Pinned before = kept.remove(pin);
            Pinned used = before != null ? before : new Pinned(model, pin);
            shown.put(pin, used);
            nodes.add(used);
        }
        kept.values().forEach(gone -> gone.card.dispose());
        getChildren().setAll(nodes);
        setVisible(!pins.isEmpty());
        refresh();
    }

    private void refresh() {
        shown.forEach((pin, pinned) -> {
            Optional<Result> result = model.pinned(pin);
            pinned.setVisible(result.isPresent());
            pinned.setManaged(result.isPresent());
            if (result.isPresent()) {
                Result before = model.cell(pin.cell())
                        .map(CellView::held)
                        .flatMap(held -> held.get())
                        .map(CellShown::results)
                        .filter(results -> pin.index() < results.size())
                        .map(results -> results.get(pin.index()))
                        .orElse(null);
                pinned.card.show(result.get(), before);
            }
        });
    }

    void dispose() {
        pins.removeListener(follow);
        model.batch().removeListener(refresh);
        model.held().removeListener(refresh);
        shown.values().forEach(pinned -> pinned.card.dispose());
    }
}
