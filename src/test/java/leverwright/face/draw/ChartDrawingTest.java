package leverwright.face.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leverwright.face.SampleResults;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.CurvesResult;
import org.junit.jupiter.api.Test;

class ChartDrawingTest {
    private static final Scale X = new Scale(0, 10, List.of(), false);
    private static final Scale Y = new Scale(-5, 5, List.of(), false);

    @Test
    void theLibraryPutsPointsWhereTheAxesSay() {
        double[] x = {0, 2.5, 10};
        double[] y = {-5, 1, 5};
        Plot plot = new Plot(new Plot.Frame(40, 30, 400, 200), X, Y, List.of(new PlotCurve("c", x, y, y, y)));
        List<Point2D> points = points(plot.line(0));
        assertEquals(3, points.size());
        for (int i = 0; i < 3; i++) {
            assertEquals(plot.across(x[i]), points.get(i).getX(), 1e-9);
            assertEquals(plot.down(y[i]), points.get(i).getY(), 1e-9);
        }
        assertEquals(40, plot.across(0), 1e-9);
        assertEquals(440, plot.across(10), 1e-9);
        assertEquals(230, plot.down(-5), 1e-9);
        assertEquals(30, plot.down(5), 1e-9);
    }

    @Test
    void settingsByEqualRatiosHaveAnAxisByRatio() {
        List<Double> settings = List.of(10.0, 20.0, 40.0, 80.0, 160.0);
        CurvesResult result = curves(settings, List.of(1.0, 2.0, 4.0, 8.0, 16.0));
        DrawnChart chart = ChartDrawing.draw(result, ChartWish.whole(600, 320));
        PlotArea plot = chart.plots().get(0);
        double quarter = (plot.right() - plot.left()) / 4;
        for (int i = 0; i < 5; i++) {
            assertEquals(plot.left() + i * quarter, plot.across(settings.get(i)), 1e-9);
            assertEquals(settings.get(i), plot.settingAt(plot.left() + i * quarter), 1e-9);
        }
        List<String> words = words(chart.picture());
        assertTrue(words.containsAll(List.of("10", "20", "50", "100")), words::toString);
        assertTrue(words.stream().anyMatch(word -> word.endsWith("by equal ratios")), words::toString);
        // What is straight between two settings bends on this scale: halfway from 80 to 160 the line is at 12.
        Shape line = curveLines(chart.picture()).get(0).shape();
        double across = plot.across(120);
        assertTrue(line.intersects(across - 1, plot.down(12) - 1, 2, 2));
    }

    @Test
    void otherSettingsHaveAnEvenAxis() {
        for (List<Double> settings : List.of(
                List.of(10.0, 20.0, 30.0, 40.0),
                List.of(10.0, 20.0, 40.0, 81.0),
                List.of(100.0, 110.0, 121.0, 133.1),
                List.of(10.0, 20.0, 40.0),
                List.of(0.0, 1.0, 2.0, 4.0))) {
            assertFalse(Scale.goByRatio(settings), settings::toString);
        }
        List<Double> even = new ArrayList<>();
        List<Double> ratio = new ArrayList<>();
        for (int i = 0; i < 3000; i++) {
            // Of each three neighbours one stands elsewhere, as where some of many settings are kept.
            even.add(10 + 0.03 * (i + (i % 3 == 1 ? 0.4 : 0)));
            ratio.add(10 * Math.pow(10, (i + (i % 3 == 1 ? 0.4 : 0)) / 3000));
        }
        assertFalse(Scale.goByRatio(even));
        assertTrue(Scale.goByRatio(ratio));
    }

    @Test
    void aCurveIsOneLineSoThatDashesDoNotBreak() {
        Picture chart = ChartDrawing.of(SampleResults.curves(200, false));
        List<Mark.Stroke> curves = curveLines(chart);
        assertEquals(2, curves.size());
        for (Mark.Stroke curve : curves) {
            assertEquals(1, pieces(curve.shape()));
            assertEquals(200, points(curve.shape()).size());
        }
    }

    @Test
    void curvesDifferInColourAndInDash() {
        for (int i = 0; i < 5; i++) {
            for (int other = 0; other < i; other++) {
                assertFalse(Panel.pen(i).ink() == Panel.pen(other).ink());
                assertFalse(Panel.pen(i).dash().equals(Panel.pen(other).dash()));
            }
        }
        for (int i = 0; i < 20; i++) {
            for (int other = 0; other < i; other++) {
                assertFalse(Panel.pen(i).equals(Panel.pen(other)), i + " looks like " + other);
            }
        }
    }

    @Test
    void aGapStaysAGap() {
        List<Mark.Stroke> curves = curveLines(ChartDrawing.of(SampleResults.manyCurves()));
        Mark.Stroke knee = curves.stream()
                .filter(curve -> curve.pen().ink() == Ink.CURVE_3)
                .findFirst()
                .orElseThrow();
        assertEquals(2, pieces(knee.shape()));
        assertEquals(61 - 9, points(knee.shape()).size());
    }

    @Test
    void aBandIsAClearArea() {
        Picture chart = ChartDrawing.of(SampleResults.curves(50, true));
        List<Mark.Fill> bands = chart.marks().stream()
                .filter(mark -> mark instanceof Mark.Fill fill && fill.opacity() < 1)
                .map(Mark.Fill.class::cast)
                .toList();
        assertEquals(1, bands.size());
        assertEquals(Ink.CURVE_1, bands.get(0).ink());
        Mark.Stroke hip = curveLines(chart).stream()
                .filter(curve -> curve.pen().ink() == Ink.CURVE_1)
                .findFirst()
                .orElseThrow();
        Rectangle2D line = hip.shape().getBounds2D();
        Rectangle2D band = bands.get(0).shape().getBounds2D();
        assertTrue(band.getMinY() < line.getMinY() && band.getMaxY() > line.getMaxY());
    }

    @Test
    void thePresentSettingIsMarkedWithItsValues() {
        List<String> words = words(ChartDrawing.of(SampleResults.curves(200, false)));
        assertTrue(words.contains("45°"), words.toString());
        assertTrue(words.contains("84.00 N·m"), words.toString());
    }

    @Test
    void everyUnitHasAPlotOfItsOwn() {
        Picture chart = ChartDrawing.of(SampleResults.manyCurves());
        assertTrue(words(chart).containsAll(List.of("N·m", "N")));
        assertEquals(640, chart.height(), 1);
    }

    @Test
    void wordsCoverNoOtherWords() {
        for (Picture chart : List.of(
                ChartDrawing.of(SampleResults.curves(200, true)),
                ChartDrawing.of(SampleResults.manyCurves()),
                ChartDrawing.of(SampleResults.manyCurves(), 360, 260))) {
            FigureDrawingTest.assertWordsApart(chart);
        }
    }

    @Test
    void oddCurvesAreDrawnToo() {
        for (List<Double> values : List.<List<Double>>of(
                Arrays.asList(null, null, null),
                Arrays.asList(7.0, 7.0, 7.0),
                Arrays.asList(0.0, 0.0, 0.0),
                Arrays.asList(1e-9, null, 1e12),
                Arrays.asList(-3.0, -2.0, null))) {
            Picture chart = ChartDrawing.of(curves(List.of(1.0, 2.0, 3.0), values));
            chart.marks().forEach(ChartDrawingTest::assertFinite);
        }
        ChartDrawing.of(curves(List.of(2.0), List.of(5.0))).marks().forEach(ChartDrawingTest::assertFinite);
    }

    private static void assertFinite(Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            Rectangle2D bounds = stroke.shape().getBounds2D();
            assertTrue(Double.isFinite(bounds.getX() + bounds.getY() + bounds.getWidth() + bounds.getHeight()));
        }
    }

    @Test
    void namesThatFindNoPlaceBesideThePlotStandBelow() {
        Curves.Curve wide = Curves.Curve.of(
                "Oberschenkelstreckermuskelkraftverlaufskurve and more", Unit.NEWTON, Sides.TOTAL, List.of(1.0, 2.0));
        Curves curves =
                new Curves("t", new Curves.Axis("a", Unit.METRE, List.of(0.0, 1.0)), List.of(wide), null, List.of());
        Picture chart = ChartDrawing.of(new CurvesResult("t", curves, List.of()), 300, 200);
        assertTrue(chart.height() > 200);
        assertTrue(words(chart).contains("Oberschenkelstreckermuskelkraftverlaufskurve and more, total"));
    }

    @Test
    void aSizeTooSmallIsRefused() {
        CurvesResult curves = SampleResults.curves(10, false);
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> ChartDrawing.of(curves, 100, 300));
        assertTrue(refused.getMessage().contains("240"));
    }

    @Test
    void aChartIsPaintedOnAnyGraphics() {
        BufferedImage light = paint(Palette.LIGHT);
        BufferedImage dark = paint(Palette.DARK);
        assertTrue(count(light, Palette.LIGHT.shade(Ink.CURVE_1).getRGB()) > 50);
        assertTrue(count(dark, Palette.DARK.shade(Ink.CURVE_1).getRGB()) > 50);
        assertEquals(0, count(dark, Palette.LIGHT.shade(Ink.CURVE_1).getRGB()));
    }

    private static BufferedImage paint(Palette palette) {
        BufferedImage image = new BufferedImage(1200, 640, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = image.createGraphics();
        graphics.scale(2, 2);
        ChartDrawing.of(SampleResults.curves(100, false)).paint(graphics, palette);
        graphics.dispose();
        return image;
    }

    private static int count(BufferedImage image, int colour) {
        int count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                count += image.getRGB(x, y) == colour ? 1 : 0;
            }
        }
        return count;
    }

    private static CurvesResult curves(List<Double> axis, List<Double> values) {
        Curves.Curve curve = Curves.Curve.of("c", Unit.NEWTON, Sides.NOT_SIDED, values);
        return new CurvesResult(
                "t",
                new Curves("t", new Curves.Axis("a", Unit.METRE, axis), List.of(curve), 2.0, List.of()),
                List.of());
    }

    private static List<Mark.Stroke> curveLines(Picture chart) {
        return chart.marks().stream()
                .filter(mark ->
                        mark instanceof Mark.Stroke stroke && stroke.pen().width() == 2)
                .map(Mark.Stroke.class::cast)
                .toList();
    }

    private static List<String> words(Picture picture) {
        return picture.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> ((Mark.Words) mark).text())
                .toList();
    }

    private static List<Point2D> points(java.awt.Shape shape) {
        List<Point2D> points = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator way = shape.getPathIterator(null); !way.isDone(); way.next()) {
            way.currentSegment(at);
            points.add(new Point2D.Double(at[0], at[1]));
        }
        return points;
    }

    private static int pieces(java.awt.Shape shape) {
        int pieces = 0;
        for (PathIterator way = shape.getPathIterator(null); !way.isDone(); way.next()) {
            pieces += way.currentSegment(new double[6]) == PathIterator.SEG_MOVETO ? 1 : 0;
        }
        return pieces;
    }
}
