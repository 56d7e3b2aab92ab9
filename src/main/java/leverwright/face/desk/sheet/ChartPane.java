package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
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
final class ChartPane extends PicturePane<DrawnChart> {

    private static final int LEAST = 280;
    private static final double HEIGHT_SHARE = 0.52;
    private static final int LOWEST = 220;
    private static final int HIGHEST = 340;
    private static final double DRAG = 5;
    private static final int FEWEST_IN_STRETCH = 3;

    private final Line crosshair = new Line();
    private final List<Circle> dots = new ArrayList<>();
    private final Label readout = new Label();
    private final Region stretch = new Region();
    private final ReadOnlyBooleanWrapper whole = new ReadOnlyBooleanWrapper(true);
    private @Nullable CurvesResult result;
    private @Nullable Curves ghost;
    private double from = Double.NaN;
    private double to = Double.NaN;
    private int at = -1;
    private boolean byMouse;
    private double pressed = Double.NaN;
    private boolean dragging;

    ChartPane(DeskModel model) {
        super(model, DrawnChart::picture, LEAST);
        getStyleClass().add("chart");
        setFocusTraversable(true);
        crosshair.getStyleClass().add("crosshair");
        readout.getStyleClass().add("readout");
        stretch.getStyleClass().add("stretch");
        for (Region each : new Region[] {readout, stretch}) {
            each.setManaged(false);
            each.setVisible(false);
            each.setMouseTransparent(true);
        }
        crosshair.setManaged(false);
        crosshair.setVisible(false);
        over().getChildren().addAll(stretch, crosshair, readout);
        over().setMouseTransparent(true);
        setOnMouseMoved(event -> read(event.getX()));
        setOnMouseEntered(event -> read(event.getX()));
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

    /** Shows curves, and those of before behind them. */
    void show(CurvesResult now, @Nullable Curves before) {
        if (now.equals(result) && Objects.equals(before, ghost)) {
            return;
        }
        CurvesResult last = result;
        if (last != null && !last.curves().axis().equals(now.curves().axis())) {
            from = Double.NaN;
            to = Double.NaN;
            whole.set(true);
            at = -1;
        }
        boolean moved = last != null
                && !Objects.equals(last.curves().current(), now.curves().current());
        result = now;
        ghost = before;
        if (moved && !byMouse && at != ChartReadout.present(now.curves())) {
            // The dial went elsewhere: the keys go on from there.
            forget();
        }
        redraw();
    }

    /** Returns whether the whole chart is shown, and no stretch of it. */
    ReadOnlyBooleanProperty whole() {
        return whole.getReadOnlyProperty();
    }

    void showWhole() {
        from = Double.NaN;
        to = Double.NaN;
        whole.set(true);
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
        if (at >= 0 && readout.isVisible()) {
            mark(at);
        }
    }

    private void read(double x) {
        DrawnChart chart = drawn();
        CurvesResult now = result;
        if (chart == null || now == null || chart.plots().isEmpty()) {
            return;
        }
        PlotArea plot = chart.plots().get(0);
        if (!plot.reaches(x / factor())) {
            forget();
            return;
        }
        byMouse = true;
        at = ChartReadout.nearest(now.curves(), plot.settingAt(x / factor()), from, to);
        mark(at);
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
        String words = ChartReadout.words(now.curves(), chart.curves(), index);
        readout.setText(words);
        readout.setVisible(true);
        readout.autosize();
        double width = readout.prefWidth(-1);
        double height = readout.prefHeight(-1);
        double left = across + 12 + width > getWidth() ? across - 12 - width : across + 12;
        readout.resizeRelocate(Math.max(0, left), first.top() * factor() + 4, width, height);
        setAccessibleText(words.replace('\n', ';'));
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

    private void hide() {
        crosshair.setVisible(false);
        readout.setVisible(false);
        dots.forEach(dot -> dot.setVisible(false));
    }

    /** Reads nothing out any more; keys begin at the present setting again. */
    private void forget() {
        hide();
        at = -1;
        byMouse = false;
    }

    private void press(MouseEvent event) {
        requestFocus();
        pressed = event.getButton() == MouseButton.PRIMARY ? event.getX() : Double.NaN;
        dragging = false;
    }

    private void drag(MouseEvent event) {
        if (Double.isNaN(pressed) || drawn() == null) {
            return;
        }
        dragging |= Math.abs(event.getX() - pressed) > DRAG;
        if (dragging) {
            hide();
            PlotArea plot = drawn().plots().get(0);
            PlotArea last = drawn().plots().get(drawn().plots().size() - 1);
            double left = Math.max(Math.min(pressed, event.getX()), plot.left() * factor());
            double right = Math.min(Math.max(pressed, event.getX()), plot.right() * factor());
            double top = plot.top() * factor();
            stretch.resizeRelocate(left, top, Math.max(0, right - left), last.bottom() * factor() - top);
            stretch.setVisible(true);
        }
    }

    private void release(MouseEvent event) {
        stretch.setVisible(false);
        DrawnChart chart = drawn();
        if (Double.isNaN(pressed) || chart == null) {
            return;
        }
        PlotArea plot = chart.plots().get(0);
        double one = plot.settingAt(pressed / factor());
        double two = plot.settingAt(event.getX() / factor());
        if (dragging) {
            showStretch(Math.min(one, two), Math.max(one, two));
        } else if (plot.reaches(event.getX() / factor())) {
            read(event.getX());
            setDial();
        }
        pressed = Double.NaN;
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
            whole.set(false);
            redraw();
        }
    }

    /** Returns the dial behind the axis. */
    Optional<DialView> dial() {
        CurvesResult now = result;
        return now == null ? Optional.empty() : DialMatch.of(model().dials(), now.curves());
    }

    private void setDial() {
        CurvesResult now = result;
        if (now != null && at >= 0) {
            double setting = now.curves().axis().values().get(at);
            dial().ifPresent(dial -> model().turn(dial.name(), setting));
        }
    }

    private void key(KeyEvent event) {
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
                setDial();
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
            byMouse = false;
            mark(at);
            event.consume();
        } else if (next == -2) {
            event.consume();
        }
    }

    private int escape(int start) {
        if (!whole.get()) {
            showWhole();
            return start;
        }
        boolean shown = readout.isVisible();
        forget();
        return shown ? -2 : -1;
    }

    /** Shows half of what is shown now, around a point. */
    private void zoomAround(Curves curves, int index) {
        List<Double> axis = curves.axis().values();
        double least = Double.isNaN(from) ? axis.get(0) : from;
        double greatest = Double.isNaN(to) ? axis.get(axis.size() - 1) : to;
        double quarter = (greatest - least) / 4;
        double middle = Math.max(least + quarter, Math.min(greatest - quarter, axis.get(index)));
        showStretch(middle - quarter, middle + quarter);
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

    /** Returns what is read out now; empty when nothing is. */
    String readoutWords() {
        return readout.isVisible() ? readout.getText() : "";
    }
}
