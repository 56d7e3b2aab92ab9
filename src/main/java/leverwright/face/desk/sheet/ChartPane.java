package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyEvent;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DialView;
import leverwright.face.draw.ChartDrawing;
import leverwright.face.draw.ChartWish;
import leverwright.face.draw.DrawnChart;
import leverwright.face.draw.PlotArea;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.CurvesResult;
import org.jspecify.annotations.Nullable;

/**
 * A chart that answers: it reads out the computed point nearest to the mouse or, with the arrow keys, to a mark; a click or
 * Enter sets the dial behind its axis to that point; dragging across it shows a stretch alone.
 */
final class ChartPane extends ReadingPane<DrawnChart> {

    private static final double HEIGHT_SHARE = 0.52;
    private static final int LOWEST = 220;
    private static final int HIGHEST = 340;
    private static final double DRAG = 5;
    private static final int FEWEST_IN_STRETCH = 3;

    private final Line crosshair = new Line();
    private final List<Circle> dots = new ArrayList<>();
    private @Nullable CurvesResult result;
    private @Nullable Curves ghost;
    private double from = Double.NaN;
    private double to = Double.NaN;
    private int at = -1;

    ChartPane(DeskModel model) {
        super(model, DrawnChart::picture);
        crosshair.getStyleClass().add("crosshair");
        crosshair.setManaged(false);
        crosshair.setVisible(false);
        over().getChildren().add(1, crosshair);
    }

    /** Shows curves, and those of before behind them. */
    void show(CurvesResult now, @Nullable Curves before) {
        if (now.equals(result) && Objects.equals(before, ghost)) {
            return;
        }
        CurvesResult last = result;
        if (last != null && !last.curves().axis().equals(now.curves().axis())) {
            from = Double.NaN;
            to = Double.NaN;
            setWhole(true);
            at = -1;
        }
        boolean moved = last != null
                && !Objects.equals(last.curves().current(), now.curves().current());
        result = now;
        ghost = before;
        if (moved && !isByMouse() && at != ChartReadout.present(now.curves())) {
            // The dial went elsewhere: the keys go on from there.
            forget();
        }
        redraw();
    }

    @Override
    void showWhole() {
        from = Double.NaN;
        to = Double.NaN;
        setWhole(true);
        redraw();
    }

    @Override
    @Nullable
    Supplier<DrawnChart> drawing(int width) {
        CurvesResult now = result;
        if (now == null) {
            return null;
        }
        ChartWish wish = new ChartWish(width, plotHeight(width), from, to, ghost);
        return () -> ChartDrawing.draw(now, wish);
    }

    private static int plotHeight(int width) {
        return Math.max(LOWEST, Math.min(HIGHEST, (int) (width * HEIGHT_SHARE)));
    }

    @Override
    double guess(int width) {
        CurvesResult now = result;
        long units = now == null
                ? 1
                : now.curves().curves().stream()
                        .map(Curves.Curve::unit)
                        .distinct()
                        .count();
        return units * plotHeight(width);
    }

    @Override
    void shown(DrawnChart drawing) {
        if (at >= 0 && isReadOut()) {
            mark(at);
        }
    }

    @Override
    boolean reaches(double x, double y) {
        DrawnChart chart = drawn();
        return chart != null
                && result != null
                && !chart.plots().isEmpty()
                && chart.plots().get(0).reaches(x / factor());
    }

    @Override
    void read(double x, double y) {
        DrawnChart chart = drawn();
        CurvesResult now = result;
        if (chart != null && now != null) {
            at = ChartReadout.nearest(now.curves(), chart.plots().get(0).settingAt(x / factor()), from, to);
            mark(at);
        }
    }

    private void mark(int index) {
        DrawnChart chart = drawn();
        CurvesResult now = result;
        if (chart == null
                || now == null
                || index >= now.curves().axis().values().size()) {
            return;
        }
        double setting = now.curves().axis().values().get(index);
        PlotArea first = chart.plots().get(0);
        PlotArea last = chart.plots().get(chart.plots().size() - 1);
        double across = first.across(setting) * factor();
        crosshair.setStartX(across);
        crosshair.setEndX(across);
        crosshair.setStartY(first.top() * factor());
        crosshair.setEndY(last.bottom() * factor());
        crosshair.setVisible(true);
        placeDots(chart, index, across);
        say(ChartReadout.words(now.curves(), chart.curves(), index), across, height -> first.top() * factor() + 4);
    }

    private void placeDots(DrawnChart chart, int index, double across) {
        while (dots.size() < chart.curves().size()) {
            Circle dot = new Circle(3.5);
            dot.getStyleClass().add("readout-dot");
            dot.setManaged(false);
            dots.add(dot);
            over().getChildren().add(2, dot);
        }
        dots.forEach(dot -> dot.setVisible(false));
        for (PlotArea plot : chart.plots()) {
            for (int i = plot.firstCurve(); i < plot.firstCurve() + plot.curves(); i++) {
                Double value = chart.curves().get(i).values().get(index);
                if (value != null) {
                    Circle dot = dots.get(i);
                    dot.setCenterX(across);
                    dot.setCenterY(plot.down(value) * factor());
                    dot.setVisible(true);
                }
            }
        }
    }

    @Override
    void hide() {
        super.hide();
        crosshair.setVisible(false);
        dots.forEach(dot -> dot.setVisible(false));
    }

    @Override
    void forget() {
        super.forget();
        at = -1;
    }

    /** Only the way across counts: a chart is dragged over from side to side. */
    @Override
    boolean isFar(Point2D pressed, Point2D now) {
        return Math.abs(now.getX() - pressed.getX()) > DRAG;
    }

    @Override
    Bounds dragged(Point2D pressed, Point2D now) {
        List<PlotArea> plots = Objects.requireNonNull(drawn()).plots();
        PlotArea first = plots.get(0);
        double top = first.top() * factor();
        double bottom = plots.get(plots.size() - 1).bottom() * factor();
        double left = first.left() * factor();
        return between(
                new Point2D(pressed.getX(), top),
                new Point2D(now.getX(), bottom),
                new BoundingBox(left, top, first.right() * factor() - left, bottom - top));
    }

    @Override
    void showDragged(Point2D pressed, Point2D now) {
        PlotArea plot = Objects.requireNonNull(drawn()).plots().get(0);
        double one = plot.settingAt(pressed.getX() / factor());
        double two = plot.settingAt(now.getX() / factor());
        showStretch(Math.min(one, two), Math.max(one, two));
    }

    /** Shows a stretch of settings alone, if a few computed points lie in it. */
    void showStretch(double least, double greatest) {
        CurvesResult now = result;
        if (now == null) {
            return;
        }
        long inside = now.curves().axis().values().stream()
                .filter(setting -> setting >= least && setting <= greatest)
                .count();
        if (inside >= FEWEST_IN_STRETCH) {
            from = least;
            to = greatest;
            setWhole(false);
            redraw();
        }
    }

    /** Returns the dial behind the axis. */
    Optional<DialView> dial() {
        CurvesResult now = result;
        return now == null ? Optional.empty() : DialMatch.of(model().dials(), now.curves());
    }

    @Override
    void setDials() {
        CurvesResult now = result;
        if (now != null && at >= 0) {
            double setting = now.curves().axis().values().get(at);
            dial().ifPresent(dial -> model().turn(dial.name(), setting));
        }
    }

    @Override
    void key(KeyEvent event) {
        CurvesResult now = result;
        if (now == null || event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        int last = now.curves().axis().values().size() - 1;
        int start = at >= 0 ? at : ChartReadout.present(now.curves());
        int next = switch (event.getCode()) {
            case LEFT -> at < 0 ? start : start - 1;
            case RIGHT -> at < 0 ? start : start + 1;
            case PAGE_UP -> start + Math.max(1, last / 10);
            case PAGE_DOWN -> start - Math.max(1, last / 10);
            case HOME -> 0;
            case END -> last;
            case ENTER, SPACE -> {
                setDials();
                yield start;
            }
            case PLUS, ADD, EQUALS -> {
                zoomAround(now.curves(), start);
                yield start;
            }
            case MINUS, SUBTRACT -> {
                showWhole();
                yield start;
            }
            case ESCAPE -> escape(start);
            default -> -1;
        };
        if (next >= 0 || event.getCode().isNavigationKey()) {
            at = ChartReadout.within(now.curves(), Math.max(0, Math.min(last, next)), from, to);
            markedByKey();
            mark(at);
            event.consume();
        } else if (next == -2) {
            event.consume();
        }
    }

    private int escape(int start) {
        if (!whole().get()) {
            showWhole();
            return start;
        }
        boolean shown = isReadOut();
        forget();
        return shown ? -2 : -1;
    }

    /** Shows half of what is shown now, around a point. */
    private void zoomAround(Curves curves, int index) {
        List<Double> axis = curves.axis().values();
        double least = Double.isNaN(from) ? axis.get(0) : from;
        double greatest = Double.isNaN(to) ? axis.get(axis.size() - 1) : to;
        double[] ends = half(least, greatest, axis.get(index));
        showStretch(ends[0], ends[1]);
    }

    /** Returns the point of the pane at which a computed point is read out; for tests and tools. */
    Optional<Point2D> placeOf(int index) {
        DrawnChart chart = drawn();
        CurvesResult now = result;
        if (chart == null || now == null) {
            return Optional.empty();
        }
        PlotArea plot = chart.plots().get(0);
        double across = plot.across(now.curves().axis().values().get(index)) * factor();
        return Optional.of(new Point2D(across, (plot.top() + plot.bottom()) / 2 * factor()));
    }
}
