package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javafx.geometry.Side;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Pin;
import leverwright.face.desk.style.Hint;
import leverwright.face.publish.Notes;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.FigureResult;
import leverwright.run.result.MapResult;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import leverwright.run.result.TextResult;
import org.jspecify.annotations.Nullable;

/** One result with its title, what can be done with it, and its notes. One card shows one result after another. */
public final class ResultCard extends VBox {

    private final ResultHost host;
    private final HBox head = new HBox();
    private final Label title = new Label();
    private final Label told = new Label();
    private final NotesBox notes = new NotesBox();
    private final Button more = new Button("…");
    private @Nullable ResultBody body;
    private @Nullable Result shown;
    private @Nullable Result held;

    /**
     * Makes an empty card.
     *
     * @param model the workbook
     * @param pin which result it shows
     */
    public ResultCard(DeskModel model, Pin pin) {
        this(new ResultHost(model, pin, SavePlace.ofSystem()));
    }

    ResultCard(ResultHost host) {
        this.host = host;
        getStyleClass().add("result");
        setAccessibleRole(AccessibleRole.PARENT);
        title.getStyleClass().add("result-title");
        title.setMinWidth(0);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        told.getStyleClass().addAll("quiet", "small");
        told.setMinWidth(0);
        more.getStyleClass().addAll("plain", "more");
        more.setMinWidth(Region.USE_PREF_SIZE);
        more.setOnAction(event -> menu().show(more, Side.BOTTOM, 0, 0));
        head.getStyleClass().add("result-head");
        head.getChildren().addAll(title, told, more);
        setOnContextMenuRequested(event -> {
            menu().show(this, event.getScreenX(), event.getScreenY());
            event.consume();
        });
    }

    /**
     * Shows a result without spelling out its notes: they unfold. A card that showed one of another kind begins anew.
     *
     * @param now the result
     * @param before what was shown at the held setting, or null when none is held
     */
    public void show(Result now, @Nullable Result before) {
        show(now, before, Set.copyOf(Notes.of(now)));
    }

    /**
     * Shows a result; a card that showed one of another kind begins anew.
     *
     * @param now the result
     * @param before what was shown at the held setting, or null when none is held
     * @param said notes that the reader has already seen above; they unfold
     */
    void show(Result now, @Nullable Result before, Set<String> said) {
        notes.show(Notes.of(now), said);
        if (now.equals(shown) && Objects.equals(before, held)) {
            return;
        }
        ResultBody used = body;
        if (used == null || !used.takes(now)) {
            if (used != null) {
                used.dispose();
            }
            used = bodyOf(now);
            body = used;
            getChildren().setAll(head, used.node(), notes);
        }
        Result comparable = before != null && used.takes(before) ? before : null;
        used.show(now, comparable);
        String name = used.title(now);
        if (!name.equals(title.getText())) {
            title.setText(name);
            Hint.on(title, name);
            more.setAccessibleText("What can be done with " + (name.isEmpty() ? "this text" : name));
        }
        shown = now;
        held = before;
    }

    private ResultBody bodyOf(Result result) {
        if (result instanceof NumberResult) {
            return new NumberBody(host);
        }
        if (result instanceof TableResult) {
            return new TableBody(host);
        }
        if (result instanceof CurvesResult) {
            return new ChartBody(host);
        }
        if (result instanceof MapResult) {
            return new MapBody(host);
        }
        if (result instanceof FigureResult) {
            return new FigureBody(host);
        }
        if (result instanceof ClaimResult) {
            return new ClaimBody(host);
        }
        if (result instanceof TextResult) {
            return new TextBody(host);
        }
        throw new IllegalStateException("a result of an unknown kind: " + result.getClass());
    }

    private ContextMenu menu() {
        ContextMenu menu = new ContextMenu();
        ResultBody used = body;
        List<MenuItem> items = new ArrayList<>(used == null ? List.of() : used.tools(told::setText));
        items.add(new SeparatorMenuItem());
        DeskModel model = host.model();
        boolean pinned = model.pins().contains(host.pin());
        items.add(
                pinned
                        ? ResultBody.item("No longer keep in view", () -> model.unpin(host.pin()))
                        : ResultBody.item("Keep in view at the side", () -> model.pin(host.pin())));
        menu.getItems().setAll(items);
        return menu;
    }

    /** Stops following the desk. */
    public void dispose() {
        ResultBody used = body;
        if (used != null) {
            used.dispose();
        }
    }
}
