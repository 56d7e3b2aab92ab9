package leverwright.face.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.CurvesResult;
import org.jspecify.annotations.Nullable;

/**
 * Draws curves as a chart: names at the curves' ends, bands as clear areas, gaps where the model has no value, the present
 * setting as a dotted line with a dot and a value on every curve. Curves of different units stand in plots of their own,
 * one above the other, over the same setting.
 */
public final class ChartDrawing {
    /** The width of a chart for a page. */
    public static final int PAGE_WIDTH = 600;

    private static final int PLOT_HEIGHT = 320;

    private ChartDrawing() {}

    /** Returns the chart in the size of a page. */
    public static Picture of(CurvesResult result) {
        return of(result, PAGE_WIDTH, PLOT_HEIGHT);
    }

    /**
     * Returns the chart in a size.
     *
     * @param result the curves
     * @param width in picture units, at least 240
     * @param plotHeight the height of each plot with its words, at least 160
     * @throws IllegalArgumentException when the size is too small to be read
     */
    public static Picture of(CurvesResult result, int width, int plotHeight) {
        return draw(result, ChartWish.whole(width, plotHeight)).picture();
    }

    /**
     * Returns the chart as a window shows it, with the places of its values.
     *
     * @param result the curves
     * @param wish the size, the stretch of settings, and the curves of before
     */
    public static DrawnChart draw(CurvesResult result, ChartWish wish) {
        Curves curves = result.curves();
        Map<Unit, List<Curves.Curve>> byUnit = new LinkedHashMap<>();
        for (Curves.Curve curve : curves.curves()) {
            byUnit.computeIfAbsent(curve.unit(), unused -> new ArrayList<>()).add(curve);
        }
        List<Mark> marks = new ArrayList<>();
        List<PlotArea> plots = new ArrayList<>();
        List<Curves.Curve> drawn = new ArrayList<>();
        double top = 0;
        for (Map.Entry<Unit, List<Curves.Curve>> group : byUnit.entrySet()) {
            Panel.PanelData data = data(curves, wish, group.getKey(), group.getValue(), drawn.size());
            Panel panel = new Panel(data, top, wish.width(), wish.plotHeight());
            marks.addAll(panel.marks());
            plots.add(panel.area());
            top += panel.height();
            drawn.addAll(group.getValue());
        }
        return new DrawnChart(new Picture(wish.width(), top, title(result), description(curves), marks), plots, drawn);
    }

    private static String title(CurvesResult result) {
        return result.title().isEmpty() ? result.curves().title() : result.title();
    }

    private static Panel.PanelData data(
            Curves curves, ChartWish wish, Unit unit, List<Curves.Curve> group, int firstInk) {
        Unit axisUnit = curves.axis().unit();
        List<PlotCurve> plotted = new ArrayList<>();
        List<Panel.Ghost> ghosts = new ArrayList<>();
        for (Curves.Curve curve : group) {
            PlotCurve plot = plotted(curves.axis(), curve, name(curve), wish);
            Curves before = wish.ghost();
            if (before != null) {
                before.curves().stream()
                        .filter(old -> old.name().equals(curve.name())
                                && old.unit() == unit
                                && before.axis().unit().dimension() == axisUnit.dimension()
                                && !isSame(before, old, curves, curve))
                        .findFirst()
                        .ifPresent(old -> ghosts.add(new Panel.Ghost(
                                plotted.size(),
                                plotted(curves.axis().unit(), before.axis(), old, "", wish),
                                present(before, axisUnit))));
            }
            plotted.add(plot);
        }
        return new Panel.PanelData(
                curves.axis().name(),
                axisUnit,
                Scale.goByRatio(curves.axis().values()),
                unit,
                plotted,
                firstInk,
                present(curves, axisUnit),
                ghosts);
    }

    private static boolean isSame(Curves before, Curves.Curve old, Curves now, Curves.Curve curve) {
        return old.values().equals(curve.values())
                && old.low().equals(curve.low())
                && old.high().equals(curve.high())
                && before.axis().equals(now.axis())
                && Objects.equals(before.current(), now.current());
    }

    private static double present(Curves curves, Unit axisUnit) {
        Double current = curves.current();
        return current == null ? Double.NaN : axisUnit.fromSi(current);
    }

    private static PlotCurve plotted(Curves.Axis axis, Curves.Curve curve, String name, ChartWish wish) {
        return plotted(axis.unit(), axis, curve, name, wish);
    }

    private static PlotCurve plotted(Unit axisUnit, Curves.Axis axis, Curves.Curve curve, String name, ChartWish wish) {
        double[] x = new double[axis.values().size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = axisUnit.fromSi(axis.values().get(i));
        }
        double[] y = shown(curve.values(), curve.unit());
        boolean band = !curve.low().isEmpty();
        PlotCurve whole = new PlotCurve(
                name, x, y, band ? shown(curve.low(), curve.unit()) : y, band ? shown(curve.high(), curve.unit()) : y);
        return Double.isNaN(wish.from()) && Double.isNaN(wish.to())
                ? whole
                : whole.between(axisUnit.fromSi(wish.from()), axisUnit.fromSi(wish.to()));
    }

    /** Returns a curve's name with its side, unless the name says it. */
    static String name(Curves.Curve curve) {
        String side = curve.sides().words();
        boolean said = curve.sides() == Sides.NOT_SIDED || curve.name().contains(side);
        return said ? curve.name() : curve.name() + ", " + side;
    }

    private static double[] shown(List<@Nullable Double> values, Unit unit) {
        double[] shown = new double[values.size()];
        for (int i = 0; i < shown.length; i++) {
            Double value = values.get(i);
            shown[i] = value == null ? Double.NaN : unit.fromSi(value);
        }
        return shown;
    }

    /** Returns the curves in words: where each begins and ends, its extremes, and its value at the present setting. */
    public static String description(Curves curves) {
        Unit axisUnit = curves.axis().unit();
        List<Double> axis = curves.axis().values();
        StringBuilder words = new StringBuilder();
        if (!axis.isEmpty()) {
            words.append(curves.axis().name() + " from " + axisUnit.format(axis.get(0)) + " to "
                    + axisUnit.format(axis.get(axis.size() - 1)) + ".");
        }
        for (Curves.Curve curve : curves.curves()) {
            words.append(' ').append(CurveWords.of(curves, curve));
        }
        return words.toString();
    }

    /** Returns one of the curves in words, as in {@link #description(Curves)}. */
    public static String description(Curves curves, Curves.Curve curve) {
        return CurveWords.of(curves, curve);
    }
}
