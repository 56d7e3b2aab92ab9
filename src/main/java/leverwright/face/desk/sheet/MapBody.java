package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.StackPane;
import leverwright.mechanics.working.ContourMap;
import leverwright.run.result.MapResult;
import leverwright.run.result.Result;
import org.jspecify.annotations.Nullable;

/** A map with what can be done with it. */
final class MapBody implements ResultBody {

    private final ResultHost host;
    private final MapPane map;
    private final StackPane all;
    private @Nullable MapResult shown;

    MapBody(ResultHost host) {
        this.host = host;
        map = new MapPane(host.model());
        Button whole = new Button("Whole map");
        whole.getStyleClass().addAll("plain", "small");
        whole.setOnAction(event -> map.showWhole());
        whole.visibleProperty().bind(map.whole().not());
        StackPane.setAlignment(whole, Pos.TOP_RIGHT);
        all = new StackPane(map, whole);
        all.getStyleClass().add("chart-result");
    }

    @Override
    public Node node() {
        return all;
    }

    @Override
    public boolean takes(Result result) {
        return result instanceof MapResult;
    }

    @Override
    public String title(Result now) {
        return now.title().isEmpty() ? ((MapResult) now).map().title() : now.title();
    }

    @Override
    public void show(Result result, @Nullable Result before) {
        MapResult now = (MapResult) result;
        shown = now;
        ContourMap ghost = before instanceof MapResult old ? old.map() : null;
        map.show(now, ghost);
    }

    @Override
    public List<MenuItem> tools(Telling telling) {
        List<MenuItem> items = new ArrayList<>(PictureTools.items(host, all, () -> shown, telling));
        items.addAll(PictureTools.numbers(host, all, () -> shown, telling));
        return items;
    }

    @Override
    public void dispose() {
        map.dispose();
    }
}
