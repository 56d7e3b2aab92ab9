package leverwright.face.desk.editor;

import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.geometry.Bounds;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Match;
import org.jspecify.annotations.Nullable;

/**
 * The script of one cell, to be read and written; as tall as its text, up to a limit from which on it scrolls by itself. A
 * script far from what can be seen keeps only its place, so that a workbook of many scripts opens at once.
 */
public final class ScriptEditor extends Region {

    private final DeskModel model;
    private final CellView cell;
    private final SourceHeight measure = new SourceHeight();
    private final InvalidationListener place = changed -> lookRound();
    private final InvalidationListener grow = changed -> requestLayout();
    private final InvalidationListener sought = changed -> wakeForSearch();
    private final WeakInvalidationListener weakGrow = new WeakInvalidationListener(grow);
    private final WeakInvalidationListener weakSought = new WeakInvalidationListener(sought);
    private @Nullable OpenScript open;
    private boolean waking;
    private boolean disposed;

    /**
     * Shows a script.
     *
     * @param model the workbook
     * @param cellId the script's id
     * @throws java.util.NoSuchElementException when the workbook has no such cell
     */
    public ScriptEditor(DeskModel model, String cellId) {
        this.model = model;
        cell = model.cell(cellId).orElseThrow();
        getStyleClass().add("script-editor");
        setAccessibleRole(AccessibleRole.TEXT_AREA);
        setAccessibleText("Script");
        getChildren().add(measure);
        setFocusTraversable(true);
        focusedProperty().addListener((property, before, now) -> {
            if (now) {
                wake().area().requestFocus();
            }
        });
        localToSceneTransformProperty().addListener(place);
        sceneProperty().addListener(place);
        cell.text().addListener(weakGrow);
        model.finding().here().addListener(weakSought);
    }

    /** Makes it ready to be written in at once, whether it can be seen or not. */
    public void open() {
        wake();
    }

    private OpenScript wake() {
        OpenScript awake = open;
        if (awake == null) {
            awake = new OpenScript(model, cell);
            open = awake;
            setFocusTraversable(false);
            setAccessibleRole(AccessibleRole.PARENT);
            localToSceneTransformProperty().removeListener(place);
            sceneProperty().removeListener(place);
            getChildren().setAll(awake.frame());
        }
        return awake;
    }

    private void wakeForSearch() {
        Optional<Match> here = model.finding().here().get();
        if (open == null
                && !disposed
                && here.filter(match -> match.cell().equals(cell.id())).isPresent()) {
            wake();
        }
    }

    /** Wakes when less than the height of the window away from what can be seen. */
    private void lookRound() {
        localToSceneTransformProperty().get();
        Scene scene = sceneProperty().get();
        if (scene == null || waking || open != null || disposed) {
            return;
        }
        Bounds bounds = localToScene(getLayoutBounds());
        if (bounds.getMaxY() >= -scene.getHeight() && bounds.getMinY() <= 2 * scene.getHeight()) {
            waking = true;
            Waking.ask(() -> {
                waking = false;
                if (!disposed) {
                    wake();
                }
            });
        }
    }

    private double estimatedHeight(double width) {
        double text = measure.of(List.of(cell.text().get().split("\n", -1)), width, SourceFrame.MOST_LINES);
        return text + snappedTopInset() + snappedBottomInset();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        OpenScript awake = open;
        double wide = (width > 0 ? width : getWidth()) - snappedLeftInset() - snappedRightInset();
        return awake == null
                ? estimatedHeight(wide)
                : awake.frame().prefHeight(wide) + snappedTopInset() + snappedBottomInset();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        OpenScript awake = open;
        if (awake == null) {
            lookRound();
            return;
        }
        awake.frame()
                .resizeRelocate(
                        snappedLeftInset(),
                        snappedTopInset(),
                        getWidth() - snappedLeftInset() - snappedRightInset(),
                        getHeight() - snappedTopInset() - snappedBottomInset());
    }

    /** Gives the focus to the text. */
    @Override
    public void requestFocus() {
        if (getScene() == null) {
            super.requestFocus();
        } else {
            wake().area().requestFocus();
        }
    }

    /**
     * Gives the focus to the text at a place.
     *
     * @param caret the place; one beyond the text is its end
     */
    public void focusAt(Caret caret) {
        SourceArea area = wake().area();
        area.moveTo(Math.min(Math.max(0, caret.position()), area.getLength()));
        area.requestFocus();
        area.requestFollowCaret();
    }

    /** Stops following the workbook. */
    public void dispose() {
        disposed = true;
        localToSceneTransformProperty().removeListener(place);
        sceneProperty().removeListener(place);
        cell.text().removeListener(weakGrow);
        model.finding().here().removeListener(weakSought);
        if (open != null) {
            open.dispose();
        }
    }
}
