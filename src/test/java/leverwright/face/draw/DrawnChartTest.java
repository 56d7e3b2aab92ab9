package leverwright.face.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.util.List;
import leverwright.face.SampleResults;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Sketch;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.FigureResult;
import org.junit.jupiter.api.Test;

class DrawnChartTest {

    private static Curves at(Curves curves, double degrees) {
        return new Curves(curves.title(), curves.axis(), curves.curves(), Math.toRadians(degrees), curves.notes());
    }

    @Test
    void aPlaceAndItsSettingLeadToOneAnother() {
        DrawnChart chart = ChartDrawing.draw(SampleResults.curves(200, true), ChartWish.whole(600, 320));
        PlotArea plot = chart.plots().get(0);
        for (int degrees = 10; degrees <= 80; degrees += 7) {
            double setting = Math.toRadians(degrees);
            assertEquals(setting, plot.settingAt(plot.across(setting)), 1e-12);
        }
        assertEquals(Math.toRadians(10), plot.settingAt(-50), 1e-12);
        assertEquals(plot.left(), plot.across(Math.toRadians(10)), 1e-9);
        assertEquals(plot.right(), plot.across(Math.toRadians(80)), 1e-9);
    }

    @Test
    void theDotOfThePresentSettingLiesWhereThePlotSays() {
        CurvesResult result = SampleResults.curves(200, false);
        DrawnChart chart = ChartDrawing.draw(result, ChartWish.whole(600, 320));
        PlotArea plot = chart.plots().get(0);
        double across = plot.across(Math.toRadians(45));
        double down = plot.down(168 * Math.sin(Math.toRadians(45)) + 4);
        assertTrue(
                chart.picture().marks().stream()
                        .filter(Mark.Fill.class::isInstance)
                        .map(mark -> ((Mark.Fill) mark).shape())
                        .filter(Ellipse2D.class::isInstance)
                        .map(Ellipse2D.class::cast)
                        .anyMatch(dot ->
                                Math.abs(dot.getCenterX() - across) < 0.1 && Math.abs(dot.getCenterY() - down) < 0.1),
                "no dot at " + across + ", " + down);
    }

    @Test
    void curvesOfOtherUnitsCountOnInTheNextPlot() {
        DrawnChart chart = ChartDrawing.draw(SampleResults.manyCurves(), ChartWish.whole(600, 320));
        assertEquals(2, chart.plots().size());
        assertEquals(4, chart.plots().get(1).firstCurve());
        assertEquals(Unit.NEWTON, chart.plots().get(1).unit());
        assertEquals("low-back compression", chart.curves().get(4).name());
        assertTrue(chart.plots().get(1).top() > chart.plots().get(0).bottom());
    }

    @Test
    void aStretchShowsOnlyItself() {
        ChartWish wish = new ChartWish(600, 320, Math.toRadians(30), Math.toRadians(50), null);
        DrawnChart chart = ChartDrawing.draw(SampleResults.curves(200, true), wish);
        PlotArea plot = chart.plots().get(0);
        assertEquals(Math.toRadians(30), plot.settingAt(plot.left()), 1e-9);
        assertEquals(Math.toRadians(50), plot.settingAt(plot.right()), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> new ChartWish(600, 320, 2, 1, null));
    }

    private static long ghosts(DrawnChart chart) {
        return chart.picture().marks().stream()
                .filter(mark ->
                        (mark instanceof Mark.Stroke stroke && stroke.pen().ink() == Ink.GHOST)
                                || (mark instanceof Mark.Fill fill && fill.ink() == Ink.GHOST))
                .count();
    }

    @Test
    void whatStoodBeforeIsDrawnPaleUnlessItIsTheSame() {
        CurvesResult now = SampleResults.curves(200, false);
        Curves same = SampleResults.curves(200, false).curves();
        Curves moved = at(same, 30);
        assertEquals(0, ghosts(ChartDrawing.draw(now, new ChartWish(600, 320, Double.NaN, Double.NaN, same))));
        assertEquals(4, ghosts(ChartDrawing.draw(now, new ChartWish(600, 320, Double.NaN, Double.NaN, moved))));
    }

    @Test
    void theBandOfBeforeIsDrawnPaleToo() {
        CurvesResult plain = SampleResults.curves(200, false);
        Curves banded = SampleResults.curves(200, true).curves();
        ChartWish wish = new ChartWish(600, 320, Double.NaN, Double.NaN, banded);
        long bands = ChartDrawing.draw(plain, wish).picture().marks().stream()
                .filter(mark -> mark instanceof Mark.Fill fill && fill.ink() == Ink.GHOST && fill.opacity() < 1)
                .count();
        assertEquals(
                banded.curves().stream().filter(curve -> !curve.low().isEmpty()).count(), bands);
        assertTrue(bands > 0);
    }

    @Test
    void aFigureInASteadyFrameKeepsThePlaceOfItsFeet() {
        FigureResult figure = SampleResults.figure();
        Sketch taller = new Sketch(
                "taller",
                List.of(new Sketch.Bone("trunk", new Sketch.Point(0, 0), new Sketch.Point(0, 2.6))),
                List.of(),
                List.of());
        FigureFrame both = FigureFrame.of(figure.sketch()).with(FigureFrame.of(taller));
        DrawnFigure one = FigureDrawing.draw(figure, both, 400, 440, null);
        DrawnFigure two = FigureDrawing.draw(new FigureResult("", "t", taller, List.of()), both, 400, 440, null);
        Sketch.Point foot = new Sketch.Point(0.1, 0);
        assertEquals(one.place(foot), two.place(foot));
        assertFalse(one.picture().marks().equals(two.picture().marks()));
    }

    @Test
    void aPointOfTheFigureAndItsPlaceLeadToOneAnother() {
        FigureResult figure = SampleResults.figure();
        DrawnFigure drawn = FigureDrawing.draw(figure, FigureFrame.of(figure.sketch()), 400, 440, null);
        Sketch.Point point = new Sketch.Point(0.3, 1.1);
        Point2D place = drawn.place(point);
        assertEquals(point.x(), drawn.point(place.getX(), place.getY()).x(), 1e-12);
        assertEquals(point.y(), drawn.point(place.getX(), place.getY()).y(), 1e-12);
    }
}
