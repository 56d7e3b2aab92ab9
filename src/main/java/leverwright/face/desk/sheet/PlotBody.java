package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.StackPane;
import leverwright.run.result.Result;
import org.jspecify.annotations.Nullable;

/**
 * A chart or a map with what can be done with it.
 *
 * @param <R> the kind of result
 */
abstract class PlotBody<R extends Result> implements ResultBody {

    private final ResultHost host;
    private final Class<R> kind;
    private final ReadingPane<?> pane;
    private final StackPane all;
    private @Nullable R shown;

    /**
     * Makes an empty body.
     *
     * @param kind the kind of result that it takes
     * @param pane what draws it
     * @param wholeWords what the button says that shows all of it again
     */
    PlotBody(ResultHost host, Class<R> kind, ReadingPane<?> pane, String wholeWords) {
        this.host = host;
        this.kind = kind;
        this.pane = pane;
        Button whole = new Button(wholeWords);
        whole.getStyleClass().addAll("plain", "small");
        whole.setOnAction(event -> pane.showWhole());
        whole.visibleProperty().bind(pane.whole().not());
        StackPane.setAlignment(whole, Pos.TOP_RIGHT);
        all = new StackPane(pane, whole);
        all.getStyleClass().add("chart-result");
    }

    /** Returns what the result's data call it. */
    abstract String dataTitle(R now);

    /** Draws a result, and the one of before behind it. */
    abstract void draw(R now, @Nullable R before);

    @Override
    public final Node node() {
        return all;
    }

    @Override
    public final boolean takes(Result result) {
        return kind.isInstance(result);
    }

    @Override
    public final String title(Result now) {
        return now.title().isEmpty() ? dataTitle(kind.cast(now)) : now.title();
    }

    @Override
    public final void show(Result result, @Nullable Result before) {
        R now = kind.cast(result);
        shown = now;
        draw(now, kind.isInstance(before) ? kind.cast(before) : null);
    }

    @Override
    public final List<MenuItem> tools(Telling telling) {
        List<MenuItem> items = new ArrayList<>(PictureTools.items(host, all, () -> shown, telling));
        items.addAll(PictureTools.numbers(host, all, () -> shown, telling));
        return items;
    }

    @Override
    public final void dispose() {
        pane.dispose();
    }
}
