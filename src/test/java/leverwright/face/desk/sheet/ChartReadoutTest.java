package leverwright.face.desk.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import leverwright.face.SampleResults;
import leverwright.mechanics.working.Curves;
import org.junit.jupiter.api.Test;

class ChartReadoutTest {

    private final Curves curves = SampleResults.curves(71, false).curves();

    @Test
    void theNearestComputedPointIsReadAndNoPointBetween() {
        assertEquals(20, ChartReadout.nearest(curves, Math.toRadians(30.4), Double.NaN, Double.NaN));
        assertEquals(21, ChartReadout.nearest(curves, Math.toRadians(30.6), Double.NaN, Double.NaN));
        assertEquals(30, ChartReadout.nearest(curves, Math.toRadians(12), Math.toRadians(39.5), Math.toRadians(60)));
        assertEquals(35, ChartReadout.present(curves));
    }

    @Test
    void theWordsNameSettingCurvesUnitsAndSides() {
        String words = ChartReadout.words(curves, curves.curves(), 35);
        assertEquals(
                "torso lean 45.00°\nhip extension moment 122.8 N·m per side\ntilt rule (lean ÷ 90°) 84.00 N·m per side",
                words);
    }

    @Test
    void aGapIsSaidAsSuch() {
        Curves gaps = SampleResults.manyCurves().curves();
        assertTrue(ChartReadout.words(gaps, gaps.curves(), 60).contains("same with plumb arms no value"));
    }
}
