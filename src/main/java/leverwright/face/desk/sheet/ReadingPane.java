package leverwright.face.desk.sheet;

import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.draw.Picture;
import org.jspecify.annotations.Nullable;

/**
 * A drawing that answers: it reads out the computed point nearest to the mouse or, with the arrow keys, to a mark; a click sets
 * dials to that point; dragging across it shows a part alone. Places are in units of the window.
 *
 * @param <D> what a drawing gives beside its picture
 */
abstract class ReadingPane<D> extends PicturePane<D> {

    private static final int LEAST = 280;
    private static final double DRAG = 5;
    private static final double AIR = 12;

    private final Label readout = new Label();
    private final Region part = new Region();
    private final ReadOnlyBooleanWrapper whole = new ReadOnlyBooleanWrapper(true);
    private @Nullable Point2D pressed;
    private boolean dragging;
    private boolean byMouse;

    ReadingPane(DeskModel model, Function<D, Picture> picture) {
        super(model, picture, LEAST);
        getStyleClass().add("chart");
        setFocusTraversable(true);
        readout.getStyleClass().add("readout");
        part.getStyleClass().add("stretch");
        for (Region each : new Region[] {readout, part}) {
            each.setManaged(false);
            each.setVisible(false);
            each.setMouseTransparent(true);
        }
        over().getChildren().addAll(part, readout);
        over().setMouseTransparent(true);
        setOnMouseMoved(event -> follow(event.getX(), event.getY()));
        setOnMouseEntered(event -> follow(event.getX(), event.getY()));
        setOnMouseExited(event -> forget());
        setOnMousePressed(this::press);
        setOnMouseDragged(this::drag);
        setOnMouseReleased(this::release);
        setOnKeyPressed(this::key);
        focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                forget();
            }
        });
    }

    /** Returns whether a place lies within a plot that is drawn. */
    abstract boolean reaches(double x, double y);

    /** Marks the computed point nearest to a place and reads it out. */
    abstract void read(double x, double y);

    /** Returns the part of the plot that is dragged over. */
    abstract Bounds dragged(Point2D from, Point2D to);

    /** Shows the part that was dragged over alone, if a few computed points lie in it. */
    abstract void showDragged(Point2D from, Point2D to);

    /** Sets the dials behind the axes to the point that is read out. */
    abstract void setDials();

    abstract void key(KeyEvent event);

    abstract void showWhole();

    /** Returns whether all of the drawing is shown, and no part of it. */
    final ReadOnlyBooleanProperty whole() {
        return whole.getReadOnlyProperty();
    }

    final void setWhole(boolean isWhole) {
        whole.set(isWhole);
    }

    /** Returns whether the mouse marked the point that is read out, and no key. */
    final boolean isByMouse() {
        return byMouse;
    }

    final boolean isReadOut() {
        return readout.isVisible();
    }

    /** Tells that a key marks the point. */
    final void markedByKey() {
        byMouse = false;
    }

    /**
     * Reads words out beside a place.
     *
     * @param words one thing a line
     * @param x the place
     * @param top gives the upper edge for the height of the words
     */
    final void say(String words, double x, DoubleUnaryOperator top) {
        readout.setText(words);
        readout.setVisible(true);
        readout.autosize();
        double width = readout.prefWidth(-1);
        double height = readout.prefHeight(-1);
        double left = x + AIR + width > getWidth() ? x - AIR - width : x + AIR;
        readout.resizeRelocate(Math.max(0, left), Math.max(0, top.applyAsDouble(height)), width, height);
        setAccessibleText(words.replace('\n', ';'));
    }

    /** Hides what is read out and its marks. */
    void hide() {
        readout.setVisible(false);
    }

    /** Reads nothing out any more; keys begin at the present setting again. */
    void forget() {
        hide();
        byMouse = false;
    }

    private void follow(double x, double y) {
        if (drawn() == null) {
            return;
        }
        if (reaches(x, y)) {
            byMouse = true;
            read(x, y);
        } else {
            forget();
        }
    }

    private void press(MouseEvent event) {
        requestFocus();
        pressed = event.getButton() == MouseButton.PRIMARY ? new Point2D(event.getX(), event.getY()) : null;
        dragging = false;
    }

    private void drag(MouseEvent event) {
        Point2D from = pressed;
        if (from == null || drawn() == null) {
            return;
        }
        Point2D to = new Point2D(event.getX(), event.getY());
        dragging |= isFar(from, to);
        if (dragging) {
            hide();
            Bounds box = dragged(from, to);
            part.resizeRelocate(box.getMinX(), box.getMinY(), box.getWidth(), box.getHeight());
            part.setVisible(true);
        }
    }

    /** Returns whether the mouse went far enough to drag instead of click. */
    boolean isFar(Point2D from, Point2D to) {
        return from.distance(to) > DRAG;
    }

    private void release(MouseEvent event) {
        part.setVisible(false);
        Point2D from = pressed;
        pressed = null;
        if (from == null || drawn() == null) {
            return;
        }
        if (dragging) {
            showDragged(from, new Point2D(event.getX(), event.getY()));
        } else if (reaches(event.getX(), event.getY())) {
            follow(event.getX(), event.getY());
            setDials();
        }
    }

    /** Returns the box between two places, as far as it lies within another one. */
    static Bounds between(Point2D from, Point2D to, Bounds within) {
        double left = Math.max(Math.min(from.getX(), to.getX()), within.getMinX());
        double right = Math.min(Math.max(from.getX(), to.getX()), within.getMaxX());
        double top = Math.max(Math.min(from.getY(), to.getY()), within.getMinY());
        double bottom = Math.min(Math.max(from.getY(), to.getY()), within.getMaxY());
        return new BoundingBox(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
    }

    /** Returns the ends of half a stretch around a place in it. */
    static double[] half(double from, double to, double middle) {
        double quarter = (to - from) / 4;
        double at = Math.max(from + quarter, Math.min(to - quarter, middle));
        return new double[] {at - quarter, at + quarter};
    }

    /** Returns what is read out now; empty when nothing is. */
    final String readoutWords() {
        return readout.isVisible() ? readout.getText() : "";
    }
}
