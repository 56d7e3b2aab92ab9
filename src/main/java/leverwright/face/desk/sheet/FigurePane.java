package leverwright.face.desk.sheet;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.animation.AnimationTimer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Polyline;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DialView;
import leverwright.face.desk.style.Hint;
import leverwright.face.draw.DrawnFigure;
import leverwright.face.draw.FigureDrawing;
import leverwright.face.draw.FigureFrame;
import leverwright.face.draw.ValueText;
import leverwright.mechanics.working.Sketch;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.FigureResult;
import org.jspecify.annotations.Nullable;

/**
 * A figure whose points can be dragged where its record says which dial moves them and on which way. While a dial turns, the
 * figure keeps its size and place, and grows only when it would leave the frame.
 */
final class FigurePane extends PicturePane<DrawnFigure> {

    private static final int LEAST = 240;
    private static final double GROWN_TOO_FAR = 1.8;
    private static final double GRIP = 9;
    /** Seconds from one end of a dial's range to the other when a figure is played. */
    private static final double SWING_SECONDS = 2.5;

    private static final double SEEK_SECONDS = 0.02;

    private final double tallest;
    private final List<Grip> grips = new ArrayList<>();
    private final Polyline way = new Polyline();
    private final ReadOnlyBooleanWrapper playing = new ReadOnlyBooleanWrapper();
    private final AnimationTimer player = new AnimationTimer() {
        @Override
        public void handle(long now) {
            play(now);
        }
    };
    private @Nullable FigureResult result;
    private @Nullable Sketch ghost;
    private @Nullable FigureFrame steady;
    private @Nullable Grip dragged;
    private long playedSince;
    private double playedFrom;

    /**
     * Makes an empty pane.
     *
     * @param model the workbook
     * @param tallest the greatest height of the figure, in picture units
     */
    FigurePane(DeskModel model, double tallest) {
        super(model, DrawnFigure::picture, LEAST);
        this.tallest = tallest;
        getStyleClass().add("figure");
        way.getStyleClass().add("handle-way");
        way.setManaged(false);
        way.setVisible(false);
        over().getChildren().add(way);
        over().setPickOnBounds(false);
        setFocusTraversable(false);
    }

    /** Shows a figure, and that of before behind it. */
    void show(FigureResult now, @Nullable Sketch before) {
        if (now.equals(result) && Objects.equals(before, ghost)) {
            return;
        }
        result = now;
        ghost = before;
        redraw();
    }

    private FigureFrame frame(FigureResult now, @Nullable Sketch before) {
        FigureFrame kept = steady;
        FigureFrame own = FigureFrame.of(now.sketch());
        FigureFrame wanted = before == null ? own : own.with(FigureFrame.of(before));
        if (kept != null && dragged != null) {
            return kept;
        }
        FigureFrame grown = kept == null ? wanted : kept.with(wanted);
        FigureFrame next = grown.area() > GROWN_TOO_FAR * wanted.area() ? wanted : grown;
        steady = next;
        return next;
    }

    @Override
    @Nullable
    Supplier<DrawnFigure> drawing(int width) {
        FigureResult now = result;
        if (now == null) {
            return null;
        }
        Sketch before = ghost;
        FigureFrame frame = frame(now, before);
        return () -> FigureDrawing.draw(now, frame, width, tallest, before);
    }

    @Override
    double guess(int width) {
        return Math.min(tallest, width);
    }

    @Override
    void shown(DrawnFigure drawing) {
        FigureResult now = result;
        List<Sketch.Handle> handles = new ArrayList<>();
        List<DialView> dials = new ArrayList<>();
        if (now != null) {
            for (Sketch.Handle handle : now.sketch().handles()) {
                Optional<DialView> dial = DialMatch.of(model().dials(), handle);
                if (dial.isPresent() && handle.stops().size() > 1) {
                    handles.add(handle);
                    dials.add(dial.get());
                }
            }
        }
        while (grips.size() > handles.size()) {
            over().getChildren().remove(grips.remove(grips.size() - 1));
        }
        while (grips.size() < handles.size()) {
            Grip grip = new Grip();
            grips.add(grip);
            over().getChildren().add(grip);
        }
        for (int i = 0; i < handles.size(); i++) {
            grips.get(i).stand(handles.get(i), dials.get(i), drawing);
        }
    }

    /** Returns the dial that steps this figure through its range of motion; empty when there is none. */
    Optional<DialView> dial() {
        Optional<DialView> played = playedDial();
        FigureResult now = result;
        if (played.isPresent() || now == null) {
            return played;
        }
        for (Sketch.Handle handle : now.sketch().handles()) {
            Optional<DialView> dial = DialMatch.of(model().dials(), handle);
            if (dial.isPresent()) {
                return dial;
            }
        }
        return Optional.empty();
    }

    /** Returns the dial that the figure's repetition moves. */
    private Optional<DialView> playedDial() {
        FigureResult now = result;
        Sketch.Play times = now == null ? null : now.sketch().play();
        if (now == null || times == null) {
            return Optional.empty();
        }
        return now.sketch().handles().stream()
                .filter(handle -> handle.name().equals(times.name()))
                .flatMap(handle -> DialMatch.of(model().dials(), handle).stream())
                .findFirst();
    }

    /** Goes a share of the range of motion on. */
    void step(double share) {
        dial().ifPresent(dial -> {
            DialDeclared declared = dial.declared().get();
            model().turn(dial.name(), dial.value().get() + share * (declared.to() - declared.from()));
        });
    }

    ReadOnlyBooleanProperty playing() {
        return playing.getReadOnlyProperty();
    }

    void playOrPause() {
        if (playing.get()) {
            pause();
        } else if (dial().isPresent()) {
            playing.set(true);
            playedSince = 0;
            player.start();
        }
    }

    private void pause() {
        playing.set(false);
        player.stop();
    }

    /** Returns the times at which the figure is played; null when its record has none for this dial. */
    Sketch.@Nullable Play tempo() {
        FigureResult now = result;
        return now == null || playedDial().isEmpty() ? null : now.sketch().play();
    }

    private void play(long now) {
        DialView dial = dial().orElse(null);
        if (dial == null || getScene() == null) {
            pause();
            return;
        }
        Sketch.Play times = tempo();
        if (times != null) {
            playAtTempo(now, dial, times);
        } else {
            swing(now, dial);
        }
    }

    /** Turns the dial through one repetition after the other, as its record tells. */
    private void playAtTempo(long now, DialView dial, Sketch.Play times) {
        if (playedSince == 0) {
            playedSince = now;
            playedFrom = timeOf(times, dial.value().get());
        }
        double time = playedFrom + (now - playedSince) / 1e9;
        model().turn(dial.name(), times.setting(time % times.seconds()));
    }

    /** Returns the first time of a repetition at which a setting is passed, or that at which it is nearest. */
    static double timeOf(Sketch.Play times, double setting) {
        double best = 0;
        for (double time = 0; time <= times.seconds(); time += SEEK_SECONDS) {
            if (Math.abs(times.setting(time) - setting) < Math.abs(times.setting(best) - setting) - 1e-12) {
                best = time;
            }
        }
        return best;
    }

    /** Turns the dial to and fro through its range, slower at the ends. */
    private void swing(long now, DialView dial) {
        DialDeclared declared = dial.declared().get();
        double range = declared.to() - declared.from();
        if (playedSince == 0) {
            playedSince = now;
            double share = (dial.value().get() - declared.from()) / range;
            playedFrom = Math.acos(Math.max(-1, Math.min(1, 1 - 2 * share)));
        }
        double phase = playedFrom + (now - playedSince) / 1e9 / SWING_SECONDS * Math.PI;
        model().turn(dial.name(), declared.from() + range * (1 - Math.cos(phase)) / 2);
    }

    /** Returns where the first handle lies in the pane; for tests and tools. */
    Optional<javafx.geometry.Point2D> gripAt() {
        return grips.isEmpty()
                ? Optional.empty()
                : Optional.of(new javafx.geometry.Point2D(
                        grips.get(0).getLayoutX() + GRIP, grips.get(0).getLayoutY() + GRIP));
    }

    @Override
    void dispose() {
        pause();
        super.dispose();
    }

    /** A point of the figure that turns a dial. */
    private final class Grip extends Region {
        private Sketch.@Nullable Handle handle;
        private @Nullable DialView dial;
        private @Nullable DrawnFigure figure;

        Grip() {
            getStyleClass().add("figure-handle");
            setManaged(false);
            setFocusTraversable(true);
            setAccessibleRole(AccessibleRole.SLIDER);
            setOnMouseEntered(event -> showWay());
            setOnMouseExited(event -> hideWay());
            setOnMousePressed(this::press);
            setOnMouseDragged(this::drag);
            setOnMouseReleased(this::release);
            setOnKeyPressed(this::key);
            focusedProperty().addListener((property, before, now) -> {
                if (now) {
                    showWay();
                } else {
                    hideWay();
                }
            });
        }

        void stand(Sketch.Handle handle, DialView dial, DrawnFigure figure) {
            this.handle = handle;
            this.dial = dial;
            this.figure = figure;
            Point2D at = figure.place(handle.at());
            resizeRelocate(at.getX() * factor() - GRIP, at.getY() * factor() - GRIP, 2 * GRIP, 2 * GRIP);
            String text = dial.name() + " " + dial.setting().get();
            Hint.on(this, "Drag: " + text);
            setAccessibleText(text + ", drag or arrow keys");
            if (way.isVisible() && (isHover() || isFocused() || dragged == this)) {
                showWay();
            }
        }

        private void showWay() {
            Sketch.Handle shown = handle;
            DialView turned = dial;
            DrawnFigure drawing = figure;
            if (shown == null || turned == null || drawing == null) {
                return;
            }
            DialDeclared range = turned.declared().get();
            List<Double> points = new ArrayList<>();
            for (Sketch.Stop stop : shown.stops()) {
                if (stop.setting() >= range.from() - 1e-9 && stop.setting() <= range.to() + 1e-9) {
                    Point2D at = drawing.place(stop.at());
                    points.add(at.getX() * factor());
                    points.add(at.getY() * factor());
                }
            }
            way.getPoints().setAll(points);
            way.setVisible(true);
        }

        private void hideWay() {
            if (dragged == null) {
                way.setVisible(false);
            }
        }

        private void press(MouseEvent event) {
            requestFocus();
            dragged = this;
            event.consume();
        }

        private void drag(MouseEvent event) {
            Sketch.Handle moved = handle;
            DialView turned = dial;
            DrawnFigure drawing = drawn();
            if (moved == null || turned == null || drawing == null) {
                return;
            }
            javafx.geometry.Point2D at = localToParent(event.getX(), event.getY());
            double setting =
                    HandlePath.nearest(moved.stops(), drawing.point(at.getX() / factor(), at.getY() / factor()));
            if (!Double.isNaN(setting)) {
                model().turn(turned.name(), setting);
            }
            event.consume();
        }

        private void release(MouseEvent event) {
            dragged = null;
            if (!isHover()) {
                hideWay();
            }
            redraw();
            event.consume();
        }

        private void key(KeyEvent event) {
            DialView turned = dial;
            if (turned == null || event.isShortcutDown() || event.isAltDown()) {
                return;
            }
            double step = turned.declared().get().step();
            double by = switch (event.getCode()) {
                case RIGHT, UP -> step;
                case LEFT, DOWN -> -step;
                case PAGE_UP -> 10 * step;
                case PAGE_DOWN -> -10 * step;
                default -> 0;
            };
            if (by != 0) {
                model().turn(turned.name(), turned.value().get() + by);
                event.consume();
            }
        }
    }

    /** Returns the setting of the figure's dial in words; empty when it has none. */
    String setting() {
        return dial().map(dial -> ValueText.setting(dial.declared().get().setting()))
                .orElse("");
    }
}
