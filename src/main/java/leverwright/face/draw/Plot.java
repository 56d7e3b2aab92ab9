package leverwright.face.draw;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * The plot of a chart, drawn by the chart library and kept as shapes: the library scales and draws the series, everything
 * around them (grid, words, marks) is ours. No font is touched.
 */
final class Plot {
    private static final Color CLEAR = new Color(0, 0, 0, 0);
    private static final BasicStroke THIN = new BasicStroke(1);
    /** Wider than any plot, so that the library computes no ticks of its own. */
    private static final int NO_TICKS = 1_000_000;
    /** Curves of up to so many settings are drawn closer on a scale by ratio, each stretch in so many parts. */
    private static final int FEW = 200;

    private static final int BETWEEN = 8;

    private final XYChart chart;
    private final Frame frame;
    private final Scale horizontal;
    private final Scale vertical;
    private final Map<Integer, Shape> lines = new TreeMap<>();
    private final Map<Integer, Shape> areas = new TreeMap<>();

    /** The rectangle of the plot in picture units, whole numbers. */
    record Frame(int left, int top, int width, int height) {
        int right() {
            return left + width;
        }

        int bottom() {
            return top + height;
        }
    }

    /**
     * Draws curves.
     *
     * @param frame where the plot lies
     * @param x the horizontal scale
     * @param y the vertical scale
     * @param curves the curves, in the units of the scales
     */
    Plot(Frame frame, Scale x, Scale y, List<PlotCurve> curves) {
        chart = new XYChart(frame.width(), frame.height());
        this.frame = frame;
        horizontal = x;
        vertical = y;
        AffineTransform shift = AffineTransform.getTranslateInstance(frame.left(), frame.top());
        style(chart.getStyler(), x, y);
        for (int i = 0; i < curves.size(); i++) {
            addBands(curves.get(i), i);
            add("line " + i, curves.get(i).x(), curves.get(i).y(), i, XYSeriesRenderStyle.Line);
        }
        PlotRecorder recorder = new PlotRecorder();
        chart.paint(recorder, frame.width(), frame.height());
        recorder.lines().forEach((index, path) -> lines.put(index, shift.createTransformedShape(path)));
        recorder.areas().forEach((index, path) -> areas.put(index, shift.createTransformedShape(path)));
    }

    private static void style(XYStyler style, Scale x, Scale y) {
        style.setChartBackgroundColor(CLEAR);
        style.setPlotBackgroundColor(CLEAR);
        style.setPlotBorderVisible(false);
        style.setPlotGridLinesVisible(false);
        style.setPlotTicksMarksVisible(false);
        style.setChartTitleVisible(false);
        style.setLegendVisible(false);
        style.setAxisTitlesVisible(false);
        style.setAxisTicksVisible(false);
        style.setXAxisTickMarkSpacingHint(NO_TICKS);
        style.setYAxisTickMarkSpacingHint(NO_TICKS);
        style.setChartPadding(0);
        style.setPlotMargin(0);
        style.setPlotContentSize(1);
        style.setXAxisMin(x.byRatio() ? 0 : x.from());
        style.setXAxisMax(x.byRatio() ? 1 : x.to());
        style.setYAxisMin(y.from());
        style.setYAxisMax(y.to());
    }

    private void add(String name, double[] x, double[] y, int index, XYSeriesRenderStyle look) {
        double[] settings = horizontal.byRatio() ? closer(x) : x;
        double[] values = horizontal.byRatio() ? closer(y) : y;
        double[] places = horizontal.byRatio()
                ? Arrays.stream(settings).map(horizontal::share).toArray()
                : settings;
        XYSeries series = chart.addSeries(name, places, values);
        series.setXYSeriesRenderStyle(look);
        series.setMarker(SeriesMarkers.NONE);
        series.setLineStyle(THIN);
        series.setLineColor(look == XYSeriesRenderStyle.Line ? PlotRecorder.series(index) : CLEAR);
        series.setFillColor(PlotRecorder.series(index));
    }

    /** Puts numbers evenly between neighbours, so that straight stretches between settings bend as a scale by ratio asks. */
    private static double[] closer(double[] numbers) {
        if (numbers.length < 2 || numbers.length > FEW) {
            return numbers;
        }
        double[] closer = new double[(numbers.length - 1) * BETWEEN + 1];
        for (int i = 0; i < closer.length; i++) {
            int before = i / BETWEEN;
            double share = (double) (i % BETWEEN) / BETWEEN;
            closer[i] =
                    share == 0 ? numbers[before] : numbers[before] + share * (numbers[before + 1] - numbers[before]);
        }
        return closer;
    }

    /** Adds the band of a curve as one polygon for every stretch without gaps: along its top and back along its foot. */
    private void addBands(PlotCurve curve, int index) {
        int start = 0;
        for (int i = 0; i <= curve.x().length; i++) {
            if (i == curve.x().length || Double.isNaN(curve.y()[i])) {
                if (curve.hasBand() && i - start > 1) {
                    addBand(curve, index, start, i);
                }
                start = i + 1;
            }
        }
    }

    private void addBand(PlotCurve curve, int index, int start, int end) {
        int count = end - start;
        double[] x = new double[2 * count];
        double[] y = new double[2 * count];
        for (int i = 0; i < count; i++) {
            x[i] = curve.x()[start + i];
            y[i] = curve.high()[start + i];
            x[2 * count - 1 - i] = x[i];
            y[2 * count - 1 - i] = curve.low()[start + i];
        }
        add("band " + index + " from " + start, x, y, index, XYSeriesRenderStyle.PolygonArea);
    }

    /** Returns where a value lies across the picture: the plot's width is the axis, without margins. */
    double across(double x) {
        return frame.left() + horizontal.share(x) * frame.width();
    }

    /** Returns whether a setting lies beyond the ends of the axis. */
    boolean isOutside(double x) {
        double little = 1e-9 * (horizontal.to() - horizontal.from());
        return x < horizontal.from() - little || x > horizontal.to() + little;
    }

    /** Returns where a value lies down the picture. */
    double down(double y) {
        return frame.bottom() - (y - vertical.from()) / (vertical.to() - vertical.from()) * frame.height();
    }

    /** Returns a curve's line; empty when all of it is a gap. */
    Shape line(int index) {
        return lines.getOrDefault(index, new Path2D.Double());
    }

    /** Returns a curve's band; empty when it has none. */
    Shape band(int index) {
        return areas.getOrDefault(index, new Path2D.Double());
    }
}
