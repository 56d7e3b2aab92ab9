package leverwright.face.desk.sheet;

import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.stage.Window;
import leverwright.face.desk.model.Colours;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.draw.Palette;
import leverwright.face.draw.Picture;
import org.jspecify.annotations.Nullable;

/**
 * Shows a drawing as wide as the pane, in as many pixels as the screen has there, in the colours and the text size of the
 * desk. What lies over the drawing goes into {@link #over()}.
 *
 * @param <D> what a drawing gives beside its picture
 */
abstract class PicturePane<D> extends Region implements Painter.Receiver<D> {

    private final DeskModel model;
    private final Function<D, Picture> picture;
    private final int least;
    private final ImageView image = new ImageView();
    private final Pane over = new Pane();
    private final Label failed = new Label();
    private final Painter<D> painter;
    private final InvalidationListener redraw = changed -> redraw();
    private final WeakInvalidationListener weakly = new WeakInvalidationListener(redraw);
    private @Nullable Window window;
    private @Nullable D drawn;
    private double factor = 1;
    private double height;
    private double drawnWidth = -1;

    /**
     * Makes an empty pane.
     *
     * @param model gives colours and text size
     * @param picture the picture of a drawing
     * @param least the least width that a drawing can have, in picture units; a narrower pane shows it smaller
     */
    PicturePane(DeskModel model, Function<D, Picture> picture, int least) {
        this.model = model;
        this.picture = picture;
        this.least = least;
        painter = new Painter<>(picture, this);
        over.setManaged(false);
        image.setManaged(false);
        failed.setManaged(false);
        failed.setWrapText(true);
        getChildren().addAll(image, over, failed);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        model.looks().addListener(weakly);
        sceneProperty().addListener((property, before, now) -> follow(now));
    }

    /** Returns what makes the drawing, to be called on another thread; null when there is nothing to draw. */
    abstract @Nullable Supplier<D> drawing(int width);

    /** Returns how high the drawing will be about, in picture units. */
    abstract double guess(int width);

    /** Tells that another drawing is shown. */
    abstract void shown(D drawing);

    final DeskModel model() {
        return model;
    }

    final Pane over() {
        return over;
    }

    /** Returns what is shown; null before the first drawing. */
    final @Nullable D drawn() {
        return drawn;
    }

    /** Returns how many units of the window one picture unit takes. */
    final double factor() {
        return factor;
    }

    static Palette palette(Colours colours) {
        return switch (colours) {
            case LIGHT -> Palette.LIGHT;
            case DARK -> Palette.DARK;
            case CONTRAST -> Palette.CONTRAST;
        };
    }

    private void follow(@Nullable Scene scene) {
        Window before = window;
        if (before != null) {
            before.renderScaleXProperty().removeListener(weakly);
        }
        window = scene == null ? null : scene.getWindow();
        Window now = window;
        if (now != null) {
            now.renderScaleXProperty().addListener(weakly);
        }
        if (scene != null) {
            redraw();
        }
    }

    /** Orders the drawing anew, if anybody sees it. */
    final void redraw() {
        double width = getWidth();
        if (width < 10 || getScene() == null) {
            return;
        }
        double text = model.looks().get().textScale();
        int units = Math.max(least, (int) Math.round(width / text));
        Supplier<D> draw = drawing(units);
        if (draw != null) {
            Window shownIn = getScene().getWindow();
            double screen = shownIn == null ? 1 : shownIn.getRenderScaleX();
            painter.order(new Painter.Order<>(draw, palette(model.looks().get().colours()), width / units * screen));
            drawnWidth = width;
        }
    }

    @Override
    public final void drawn(D drawing, Painter.Order<D> order, WritableImage pixels) {
        Window shownIn = getScene() == null ? null : getScene().getWindow();
        double screen = shownIn == null ? 1 : shownIn.getRenderScaleX();
        drawn = drawing;
        factor = order.scale() / screen;
        image.setImage(pixels);
        image.setFitWidth(pixels.getWidth() / screen);
        image.setFitHeight(pixels.getHeight() / screen);
        failed.setText("");
        double now = Math.ceil(picture.apply(drawing).height() * factor);
        if (now != height) {
            height = now;
            requestLayout();
        }
        setAccessibleText(
                picture.apply(drawing).title() + ". " + picture.apply(drawing).description());
        shown(drawing);
    }

    @Override
    public final void failed(RuntimeException failure) {
        failed.setText("This could not be drawn: " + failure.getMessage());
    }

    @Override
    public final Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefWidth(double height) {
        return least;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 120;
    }

    @Override
    protected double computePrefHeight(double width) {
        Insets insets = getInsets();
        if (height > 0) {
            return height + insets.getTop() + insets.getBottom();
        }
        double text = model.looks().get().textScale();
        double wide = width > 0 ? width : least * text;
        int units = Math.max(least, (int) Math.round(wide / text));
        return Math.ceil(guess(units) * wide / units);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        image.relocate(0, 0);
        over.resizeRelocate(0, 0, getWidth(), getHeight());
        failed.resizeRelocate(0, 0, getWidth(), failed.prefHeight(getWidth()));
        if (getWidth() != drawnWidth) {
            redraw();
        }
    }

    /** Stops following the desk. */
    void dispose() {
        model.looks().removeListener(weakly);
        Window before = window;
        if (before != null) {
            before.renderScaleXProperty().removeListener(weakly);
        }
        painter.dispose();
        image.setImage(null);
    }
}
