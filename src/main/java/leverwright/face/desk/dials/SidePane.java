package leverwright.face.desk.dials;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.InvalidationListener;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DialView;

/** The side of the window: the lifter now, what muscles use of their capacity, the dials of what-if, and the results that the reader keeps in view. */
public final class SidePane extends ScrollPane {

    private final DeskModel model;
    private final ObservableList<DialView> dials;
    private final NowFigure now;
    private final NowShares shares;
    private final PinnedResults pinned;
    private final VBox controls = new VBox();
    private final Label none =
            new Label("No script declares a dial. Write, for example:\nvar lean = dial(\"Torso lean\", deg(45));");
    private final Button resetAll = new Button("Reset all");
    private final Label before = new Label();
    private final Map<DialView, DialControl> shown = new LinkedHashMap<>();
    private final ListChangeListener<DialView> follow = change -> take();
    private final InvalidationListener followHeld = changed -> showHeld();
    private final InvalidationListener followHand = changed -> showReset();

    /**
     * Shows the side of a workbook.
     *
     * @param model the workbook
     */
    public SidePane(DeskModel model) {
        this.model = model;
        dials = model.dials();
        getStyleClass().add("side");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        setAccessibleRole(AccessibleRole.PARENT);
        setAccessibleText("Figure and dials");
        now = new NowFigure(model);
        shares = new NowShares(model);
        pinned = new PinnedResults(model);
        controls.getStyleClass().add("dials");
        none.getStyleClass().addAll("quiet", "no-dials");
        none.setWrapText(true);
        before.getStyleClass().addAll("before", "small");
        before.setWrapText(true);
        before.setMinHeight(Region.USE_PREF_SIZE);
        resetAll.getStyleClass().addAll("plain", "small");
        resetAll.setAccessibleText("Put every dial back where its script puts it");
        resetAll.setOnAction(event -> model.resetDials());
        for (Node each : List.of(none, before, resetAll)) {
            each.managedProperty().bind(each.visibleProperty());
        }
        Label heading = new Label("WHAT IF");
        heading.getStyleClass().add("heading");
        heading.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(heading, Priority.ALWAYS);
        HBox head = new HBox(heading, resetAll);
        head.getStyleClass().add("side-head");
        VBox whatIf = new VBox(head, before, none, controls);
        whatIf.getStyleClass().add("what-if");
        VBox all = new VBox(now, shares, whatIf, pinned);
        all.getStyleClass().add("side-content");
        setContent(all);
        dials.addListener(follow);
        model.held().addListener(followHeld);
        model.workbook().addListener(followHand);
        take();
        showHeld();
        showReset();
    }

    private void take() {
        Map<DialView, DialControl> kept = new LinkedHashMap<>(shown);
        shown.clear();
        List<Node> nodes = new ArrayList<>();
        for (DialView dial : dials) {
            DialControl control = kept.remove(dial);
            DialControl used = control != null ? control : new DialControl(model, dial);
            shown.put(dial, used);
            nodes.add(used);
        }
        kept.values().forEach(DialControl::dispose);
        controls.getChildren().setAll(nodes);
        none.setVisible(nodes.isEmpty());
        showReset();
    }

    private void showReset() {
        resetAll.setVisible(!model.workbook().get().dials().isEmpty());
    }

    private void showHeld() {
        boolean held = model.held().get().isPresent();
        before.setVisible(held);
        before.setText(
                held
                        ? "Before is held: pale in figure and curves, and as changes in tables. Turn a dial to compare."
                        : "");
    }

    /** Stops following the workbook. */
    public void dispose() {
        dials.removeListener(follow);
        model.held().removeListener(followHeld);
        model.workbook().removeListener(followHand);
        shown.values().forEach(DialControl::dispose);
        now.dispose();
        shares.dispose();
        pinned.dispose();
    }
}
