package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.StackPane;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.Result;
import org.jspecify.annotations.Nullable;

/** A chart with what can be done with it. */
final class ChartBody implements ResultBody {

    private final ResultHost host;
    private final ChartPane chart;
    private final StackPane all;
    private @Nullable CurvesResult shown;

    ChartBody(ResultHost host) {
        this.host = host;
        chart = new ChartPane(host.model());
        Button whole = new Button("Whole chart");
        whole.getStyleClass().addAll("plain", "small");
        whole.setOnAction(event -> chart.showWhole());
        whole.visibleProperty().bind(chart.whole().not());
        StackPane.setAlignment(whole, Pos.TOP_RIGHT);
        all = new StackPane(chart, whole);
        all.getStyleClass().add("chart-result");
    }

    @Override
    public Node node() {
        return all;
    }

    @Override
    public boolean takes(Result result) {
        return result instanceof CurvesResult;
    }

    @Override
    public String title(Result now) {
        return now.title().isEmpty() ? ((CurvesResult) now).curves().title() : now.title();
    }

    @Override
    public void show(Result result, @Nullable Result before) {
        CurvesResult now = (CurvesResult) result;
        shown = now;
        Curves ghost = before instanceof CurvesResult old ? old.curves() : null;
        chart.show(now, ghost);
    }

    @Override
    public List<MenuItem> tools(Telling telling) {
        List<MenuItem> items = new ArrayList<>(PictureTools.items(host, all, () -> shown, telling));
        items.addAll(PictureTools.numbers(host, all, () -> shown, telling));
        return items;
    }

    @Override
    public void dispose() {
        chart.dispose();
    }
}
