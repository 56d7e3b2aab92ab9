package leverwright.face.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
        if (width < 240 || plotHeight < 160) {
            throw new IllegalArgumentException("a chart needs at least 240 by 160, not " + width + " by " + plotHeight);
        }
        Curves curves = result.curves();
        Map<Unit, List<Curves.Curve>> byUnit = new LinkedHashMap<>();
        for (Curves.Curve curve : curves.curves()) {
            byUnit.computeIfAbsent(curve.unit(), unused -> new ArrayList<>()).add(curve);
        }
        List<Mark> marks = new ArrayList<>();
        double top = 0;
        int ink = 0;
        for (Map.Entry<Unit, List<Curves.Curve>> group : byUnit.entrySet()) {
            Panel.PanelData data = data(curves, group.getKey(), group.getValue(), ink);
            Panel panel = new Panel(data, top, width, plotHeight);
            marks.addAll(panel.marks());
            top += panel.height();
            ink += group.getValue().size();
        }
        return new Picture(width, top, title(result), description(curves), marks);
    }

    private static String title(CurvesResult result) {
        return result.title().isEmpty() ? result.curves().title() : result.title();
    }

    private static Panel.PanelData data(Curves curves, Unit unit, List<Curves.Curve> group, int firstInk) {
        Unit axisUnit = curves.axis().unit();
        double[] x = new double[curves.axis().values().size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = axisUnit.fromSi(curves.axis().values().get(i));
        }
        List<PlotCurve> plotted = new ArrayList<>();
        for (Curves.Curve curve : group) {
            double[] y = shown(curve.values(), unit);
            boolean band = !curve.low().isEmpty();
            plotted.add(new PlotCurve(
                    name(curve), x, y, band ? shown(curve.low(), unit) : y, band ? shown(curve.high(), unit) : y));
        }
        Double current = curves.current();
        double present = current == null ? Double.NaN : axisUnit.fromSi(current);
        return new Panel.PanelData(curves.axis().name(), axisUnit, unit, plotted, firstInk, present);
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
