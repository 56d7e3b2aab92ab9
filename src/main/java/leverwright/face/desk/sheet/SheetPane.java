package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.geometry.Bounds;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollBar;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.util.Duration;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import org.fxmisc.richtext.GenericStyledArea;
import org.jspecify.annotations.Nullable;

/**
 * The sheet of one workbook, from top to bottom. Only strips in and near the view are built, so that a workbook of several
 * hundred cells is as quick as one of ten; what stands in view stays there when strips above it change their height.
 */
public final class SheetPane extends Region implements StripDeeds {

    /** Strips are built as far beyond the view as this share of its height, and given up beyond the other. */
    private static final double AHEAD = 0.6;

    private static final double KEPT = 2.5;
    private static final double NEAR_SEAM = 9;
    private static final double AIR = 12;
    private static final int MOST_PASSES = 6;

    private final DeskModel model;
    private final SavePlace places;
    private final ObservableList<CellView> cells;
    private final Slots slots = new Slots();
    private final Ground view = new Ground();
    private final ScrollBar bar = new ScrollBar();
    private @Nullable Furniture furniture;
    private final ListChangeListener<CellView> follow = change -> take();
    private final ChangeListener<Node> focus = (property, before, now) -> focused(now);
    private @Nullable Scene scene;
    private Slots.@Nullable Slot anchor;
    private double anchorOffset;
    private int seam = -1;
    private boolean placing;

    /** Strips below the view are built one by one in pauses, each when this is over. */
    private final PauseTransition ahead = new PauseTransition(Duration.millis(40));

    private boolean mayBuildAhead;
    private boolean aheadAsked;

    /** While a window opens: the first script alone is built at first, and then one strip after each picture. */
    private boolean opening;

    private int mayBuild;

    /** What stands between and after the strips. */
    private final class Furniture {
        final AddBar atEnd = new AddBar(script -> add(script, slots.all().size()));
        final AddBar atSeam = new AddBar(SheetPane.this::addAtSeam);
        final Region drop = new Region();
        final Label empty = new Label("Nothing stands here yet. Begin with a script or a note.");

        Furniture() {
            drop.getStyleClass().add("drop-line");
            empty.getStyleClass().add("quiet");
            atSeam.getStyleClass().add("at-seam");
            for (Node each : List.of(drop, atSeam, empty)) {
                each.setManaged(false);
                each.setVisible(false);
            }
        }
    }

    /**
     * Shows a workbook.
     *
     * @param model the workbook
     */
    public SheetPane(DeskModel model) {
        this(model, SavePlace.ofSystem());
    }

    SheetPane(DeskModel model, SavePlace places) {
        this.model = model;
        this.places = places;
        cells = model.cells();
        getStyleClass().add("sheet");
        setAccessibleRole(AccessibleRole.PARENT);
        setAccessibleText("Sheet");
        bar.setOrientation(Orientation.VERTICAL);
        bar.setFocusTraversable(false);
        bar.setAccessibleText("Position in the sheet");
        getChildren().addAll(view, bar);
        bar.valueProperty().addListener((property, before, now) -> {
            if (!placing) {
                scrollTo(now.doubleValue());
            }
        });
        addEventHandler(ScrollEvent.SCROLL, this::wheel);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        addEventHandler(KeyEvent.KEY_TYPED, event -> Platform.runLater(this::showCaret));
        addEventFilter(MouseEvent.MOUSE_MOVED, event -> seamAt(event.getSceneX(), event.getSceneY()));
        setOnMouseExited(event -> hideSeam());
        sceneProperty().addListener((property, before, now) -> followFocus(now));
        cells.addListener(follow);
        ahead.setOnFinished(event -> buildAhead());
        opening = model.isOpening();
        if (!opening) {
            furniture = new Furniture();
        }
        take();
    }

    /** Builds one more of what was left out of the first picture, and asks to go on after the next. */
    public void begin() {
        if (opening) {
            model.afterFirstFrame(this::goOn);
        }
    }

    private void goOn() {
        if (!opening) {
            return;
        }
        if (!model.whole().isDone()) {
            // How high the strips are is guessed from their results.
            model.afterFirstFrame(this::goOn);
            return;
        }
        slots.guess();
        boolean completed = slots.all().stream().anyMatch(slot -> slot.strip != null && !slot.strip.isWhole());
        slots.all().stream().map(slot -> slot.strip).filter(Objects::nonNull).forEach(Strip::complete);
        mayBuild = completed ? 0 : 1;
        if (completed || isMissing()) {
            model.afterFirstFrame(this::goOn);
        } else {
            opening = false;
            furniture = new Furniture();
            view.getChildren().setAll(fixed());
        }
        requestLayout();
    }

    /** Whether something in view is still to be built. */
    private boolean isMissing() {
        return slots.all().stream().anyMatch(slot -> slot.strip == null && slot.top <= top() + getHeight());
    }

    private void followFocus(@Nullable Scene now) {
        Scene before = scene;
        if (before != null) {
            before.focusOwnerProperty().removeListener(focus);
        }
        scene = now;
        if (now != null) {
            now.focusOwnerProperty().addListener(focus);
        }
    }

    private void take() {
        for (Slots.Slot gone : slots.take(cells)) {
            giveUp(gone);
            if (gone == anchor) {
                anchor = null;
            }
        }
        hideSeam();
        view.getChildren().setAll(fixed());
        requestLayout();
    }

    /** The children of the view in the order in which the focus goes through them. */
    private List<Node> fixed() {
        List<Node> nodes = new ArrayList<>();
        for (Slots.Slot slot : slots.all()) {
            if (slot.strip != null) {
                nodes.add(slot.strip);
            }
        }
        Furniture rest = furniture;
        if (rest != null) {
            nodes.addAll(List.of(rest.empty, rest.atEnd, rest.atSeam, rest.drop));
        }
        return nodes;
    }

    private Strip build(CellView cell) {
        return cell.isScript()
                ? new ScriptStrip(model, cell, this, places, opening && mayBuild == 0)
                : new NoteStrip(model, cell, this);
    }

    private void giveUp(Slots.Slot slot) {
        Strip strip = slot.strip;
        if (strip != null) {
            slot.strip = null;
            view.getChildren().remove(strip);
            strip.dispose();
        }
    }

    @Override
    protected double computePrefWidth(double height) {
        return 400;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 220;
    }

    @Override
    protected double computePrefHeight(double width) {
        return 600;
    }

    @Override
    protected double computeMinHeight(double width) {
        return 120;
    }

    private double breadth() {
        return Math.max(0, getWidth() - bar.prefWidth(-1));
    }

    @Override
    protected void layoutChildren() {
        double height = getHeight();
        if (height <= 0 || getWidth() <= 0) {
            return;
        }
        for (int pass = 0; pass < MOST_PASSES && buildAndMeasure(height); pass++) {
            slots.place();
        }
        double top = top();
        double all = slots.place() + footer();
        double most = Math.max(0, all - height);
        top = Math.max(0, Math.min(most, top));
        hold(top);
        for (Slots.Slot slot : slots.all()) {
            Strip strip = slot.strip;
            if (strip != null) {
                strip.resizeRelocate(0, snapPositionY(slot.top - top), breadth(), slot.height);
            }
        }
        giveUpFar(top, height);
        placeRest(top, all - footer());
        placing = true;
        bar.setMax(Math.max(most, 1e-9));
        bar.setVisibleAmount(all <= 0 ? 1 : Math.max(most, 1e-9) * Math.min(1, height / all));
        bar.setValue(top);
        bar.setVisible(most > 0.5);
        bar.setUnitIncrement(40);
        bar.setBlockIncrement(height * 0.9);
        placing = false;
        bar.resizeRelocate(getWidth() - bar.prefWidth(-1), 0, bar.prefWidth(-1), height);
        view.resizeRelocate(0, 0, breadth(), height);
        Rectangle clip = view.getClip() instanceof Rectangle kept ? kept : new Rectangle();
        clip.setWidth(breadth());
        clip.setHeight(height);
        view.setClip(clip);
    }

    private double footer() {
        Furniture rest = furniture;
        return (rest == null ? 0 : rest.atEnd.prefHeight(-1)) + (slots.all().isEmpty() ? 80 : 40);
    }

    private void placeRest(double top, double end) {
        Furniture rest = furniture;
        if (rest == null) {
            return;
        }
        AddBar atEnd = rest.atEnd;
        Label empty = rest.empty;
        empty.setVisible(slots.all().isEmpty());
        empty.resizeRelocate(28, 28, Math.max(0, breadth() - 56), empty.prefHeight(-1));
        double y = (slots.all().isEmpty() ? 56 : end + AIR) - top;
        atEnd.resizeRelocate(20, snapPositionY(y), atEnd.prefWidth(-1), atEnd.prefHeight(-1));
    }

    /** Builds what is in or near the view and takes its height; returns whether a height changed. */
    private boolean buildAndMeasure(double height) {
        double top = top();
        int first = slots.at(top - AHEAD * height);
        boolean changed = false;
        boolean built = false;
        for (int i = Math.max(0, first); i < slots.all().size(); i++) {
            Slots.Slot slot = slots.all().get(i);
            if (slot.top > top + (1 + AHEAD) * height) {
                break;
            }
            if (slot.strip == null && opening && !mayBuildNow(slot)) {
                continue;
            }
            if (slot.strip == null && slot.top > top + height && !mayBuildAhead) {
                buildAheadLater();
                break;
            }
            if (slot.strip == null) {
                slot.strip = build(slot.cell);
                mayBuild = Math.max(0, mayBuild - 1);
                built = true;
                mayBuildAhead &= slot.top <= top + height;
            }
        }
        if (built) {
            view.getChildren().setAll(fixed());
            view.applyCss();
        }
        for (Slots.Slot slot : slots.all()) {
            Strip strip = slot.strip;
            if (strip != null) {
                strip.seen(slot.top < top + height && slot.top + slot.height > top);
                double now = snapSizeY(strip.prefHeight(breadth()));
                if (now != slot.height) {
                    slot.height = now;
                    changed = true;
                }
            }
        }
        return changed || built;
    }

    /** While a window opens: whether a strip is the next to be built, the first script before all others. */
    private boolean mayBuildNow(Slots.Slot slot) {
        return mayBuild > 0 || (slot.cell.isScript() && slots.all().stream().allMatch(other -> other.strip == null));
    }

    /** Builds one strip below the view once what is in view has been painted. */
    private void buildAheadLater() {
        if (!aheadAsked) {
            aheadAsked = true;
            ahead.playFromStart();
        }
    }

    private void buildAhead() {
        aheadAsked = false;
        mayBuildAhead = true;
        requestLayout();
    }

    /** Gives up strips far from the view, but none that holds the focus. */
    private void giveUpFar(double top, double height) {
        List<Slots.Slot> far = new ArrayList<>();
        for (Slots.Slot slot : slots.all()) {
            boolean away = slot.top + slot.height < top - KEPT * height || slot.top > top + (1 + KEPT) * height;
            if (slot.strip != null && away && !holdsFocus(slot.strip)) {
                far.add(slot);
            }
        }
        if (!far.isEmpty()) {
            Platform.runLater(() -> far.forEach(slot -> {
                if (slot.strip != null && !holdsFocus(slot.strip)) {
                    giveUp(slot);
                }
            }));
        }
    }

    private boolean holdsFocus(Node strip) {
        Scene shown = getScene();
        for (Node node = shown == null ? null : shown.getFocusOwner(); node != null; node = node.getParent()) {
            if (node == strip) {
                return true;
            }
        }
        return false;
    }

    private double top() {
        Slots.Slot held = anchor;
        return held == null ? 0 : held.top + anchorOffset;
    }

    /** Keeps what stands at the top of the view there, whatever grows above it. */
    private void hold(double top) {
        int at = slots.at(top);
        anchor = at < 0 ? null : slots.all().get(at);
        anchorOffset = anchor == null ? 0 : top - anchor.top;
    }

    private void scrollTo(double top) {
        double all = slots.place() + footer();
        hold(Math.max(0, Math.min(Math.max(0, all - getHeight()), top)));
        hideSeam();
        requestLayout();
    }

    private void wheel(ScrollEvent event) {
        if (event.getDeltaY() != 0 && !event.isShortcutDown()) {
            scrollTo(top() - event.getDeltaY());
            event.consume();
        }
    }

    private void key(KeyEvent event) {
        if (event.isAltDown()) {
            return;
        }
        switch (event.getCode()) {
            case PAGE_UP -> scrollTo(top() - getHeight() * 0.9);
            case PAGE_DOWN -> scrollTo(top() + getHeight() * 0.9);
            case HOME -> scrollTo(0);
            case END -> scrollTo(Double.MAX_VALUE);
            default -> {
                Platform.runLater(this::showCaret);
                return;
            }
        }
        event.consume();
    }

    private void focused(@Nullable Node node) {
        if (node == null) {
            return;
        }
        for (Node at = node; at != null; at = at.getParent()) {
            if (at instanceof Strip strip && at.getParent() == view) {
                if (!model.caret().cell().equals(strip.cell().id())) {
                    model.caretAt(new Caret(strip.cell().id(), 0));
                }
                Platform.runLater(() -> show(node));
                return;
            }
        }
    }

    /** Scrolls as little as needed to bring a control into view. */
    private void show(Node node) {
        if (node instanceof GenericStyledArea<?, ?, ?>) {
            showCaret();
        } else if (node.getScene() == getScene() && getScene() != null) {
            bring(sceneToLocal(node.localToScene(node.getLayoutBounds())));
        }
    }

    private void showCaret() {
        Scene shown = getScene();
        if (shown != null
                && shown.getFocusOwner() instanceof GenericStyledArea<?, ?, ?> area
                && holdsFocus(view)
                && area.getScene() == shown) {
            Optional<Bounds> caret = area.getCaretBounds();
            caret.map(this::screenToLocal).ifPresent(this::bring);
        }
    }

    private void bring(@Nullable Bounds bounds) {
        if (bounds == null || bounds.isEmpty()) {
            return;
        }
        double above = bounds.getMinY() - AIR;
        double below = bounds.getMaxY() + AIR - getHeight();
        if (above < 0) {
            scrollTo(top() + above);
        } else if (below > 0) {
            scrollTo(top() + Math.min(below, above));
        }
    }

    /**
     * Brings a cell into view and gives it the focus, at the caret where the model has one in it.
     *
     * @param id the cell's id; an unknown one is passed over
     */
    public void reveal(String id) {
        Strip strip = bringIntoView(id);
        if (strip != null) {
            Caret caret = model.caret();
            strip.focusAt(caret.cell().equals(id) ? caret : new Caret(id, 0));
        }
    }

    /**
     * Brings a cell into view and gives it the focus to be read: a note stays as it reads.
     *
     * @param id the cell's id; an unknown one is passed over
     */
    public void read(String id) {
        Strip strip = bringIntoView(id);
        if (strip instanceof NoteStrip note) {
            note.read();
        } else if (strip != null) {
            reveal(id);
        }
    }

    private @Nullable Strip bringIntoView(String id) {
        Slots.Slot slot = slots.find(id);
        if (slot == null) {
            return null;
        }
        double top = top();
        boolean inView = slot.strip != null && slot.top >= top && slot.top + slot.height <= top + getHeight();
        if (!inView) {
            scrollTo(slot.top);
        }
        applyCss();
        layout();
        return slot.strip;
    }

    @Override
    public void add(boolean script, int index) {
        reveal(script ? model.addScript(index, "") : model.addNote(index, ""));
    }

    @Override
    public void move(String cell, int index) {
        model.move(cell, index);
        reveal(cell);
    }

    @Override
    public void dragging(String cell, double sceneY) {
        double y = sceneToLocal(0, sceneY).getY();
        if (y < 24) {
            scrollTo(top() - 12);
        } else if (y > getHeight() - 24) {
            scrollTo(top() + 12);
        }
        int gap = slots.gap(y + top());
        Furniture rest = furniture;
        if (rest == null) {
            return;
        }
        Region drop = rest.drop;
        drop.resizeRelocate(0, snapPositionY(seamY(gap) - 1), breadth(), 3);
        drop.setVisible(true);
    }

    @Override
    public void dropped(String cell, double sceneY) {
        Furniture rest = furniture;
        if (rest != null) {
            rest.drop.setVisible(false);
        }
        int gap = slots.gap(sceneToLocal(0, sceneY).getY() + top());
        int now = 0;
        while (now < slots.all().size() && !slots.all().get(now).cell.id().equals(cell)) {
            now++;
        }
        int to = gap > now ? gap - 1 : gap;
        if (to != now && to >= 0 && to < slots.all().size()) {
            move(cell, to);
        }
    }

    private double seamY(int gap) {
        double y = gap < slots.all().size() ? slots.all().get(gap).top : slots.place();
        return y - top();
    }

    /** Offers to add a cell where the mouse is near the seam between two. */
    private void seamAt(double sceneX, double sceneY) {
        Furniture rest = furniture;
        if (rest == null) {
            return;
        }
        AddBar atSeam = rest.atSeam;
        double y = sceneToLocal(sceneX, sceneY).getY();
        double x = sceneToLocal(sceneX, sceneY).getX();
        if (atSeam.isVisible() && atSeam.getBoundsInParent().contains(x, y)) {
            return;
        }
        int near = -1;
        for (int gap = 0; gap < slots.all().size(); gap++) {
            if (Math.abs(seamY(gap) - y) < NEAR_SEAM && x < breadth() / 2) {
                near = gap;
            }
        }
        if (near < 0) {
            hideSeam();
        } else if (near != seam) {
            seam = near;
            double high = atSeam.prefHeight(-1);
            double at = Math.max(0, seamY(near) - high / 2);
            atSeam.resizeRelocate(20, snapPositionY(at), atSeam.prefWidth(-1), high);
            atSeam.setVisible(true);
        }
    }

    private void hideSeam() {
        seam = -1;
        Furniture rest = furniture;
        if (rest != null) {
            rest.atSeam.setVisible(false);
        }
    }

    private void addAtSeam(boolean script) {
        int gap = seam;
        hideSeam();
        if (gap >= 0) {
            add(script, gap);
        }
    }

    /** Stops following the workbook. */
    public void dispose() {
        ahead.stop();
        cells.removeListener(follow);
        followFocus(null);
        slots.all().forEach(this::giveUp);
    }
}
