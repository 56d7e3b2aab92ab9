package leverwright.mechanics.working;

import static leverwright.mechanics.measure.Measures.newtonMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import org.junit.jupiter.api.Test;

class AnswerTest {
    private final Answer<Moment> hip = answer("hip moment", 120, 110, 125, Sides.PER_SIDE);
    private final Answer<Moment> knee = answer("knee moment", -40, -50, -25, Sides.PER_SIDE);
    private final Answer<Moment> back = answer("low back moment", 200, 200, 200, Sides.TOTAL);

    private static Answer<Moment> answer(String label, double value, double low, double high, Sides sides) {
        Moment moment = newtonMetres(value);
        return Answer.of(label, moment, sides, Working.given(label, "M", moment, "measured"))
                .between(newtonMetres(low), newtonMetres(high))
                .noted("common note");
    }

    @Test
    void combinesValuesAndBands() {
        assertBand(80, 60, 100, hip.plus(knee));
        assertBand(160, 135, 175, hip.minus(knee));
        Answer<Ratio> ratio = hip.dividedBy(knee);
        assertEquals(-3.0, ratio.value().si());
        assertEquals(125.0 / -25, ratio.low().si());
        assertEquals(110.0 / -50, ratio.high().si());
        assertEquals(Sides.NOT_SIDED, ratio.sides());
        assertEquals("−3.000", ratio.shown());
        assertEquals(List.of("common note"), ratio.notes());
    }

    private static void assertBand(double value, double low, double high, Answer<Moment> answer) {
        assertEquals(newtonMetres(value), answer.value());
        assertEquals(newtonMetres(low), answer.low());
        assertEquals(newtonMetres(high), answer.high());
        assertEquals(Sides.PER_SIDE, answer.sides());
    }

    @Test
    void showsTheNumberOfItsWorkingWithItsSides() {
        assertEquals("120.0 N·m per side", hip.shown());
        assertEquals("200.0 N·m total", back.shown());
        assertTrue(hip.hasBand());
        assertFalse(back.hasBand());
    }

    @Test
    void derivesAWorkingThatStartsFromBothValues() {
        assertEquals(
                List.of(
                        "hip moment minus knee moment",
                        "a = 120 N·m [hip moment, with a working of its own]",
                        "b = −40 N·m [knee moment, with a working of its own]",
                        "d = a − b = 120.0 − (−40.00) = 160.0 N·m",
                        "end: The working ends here; what follows is the cell's own arithmetic."),
                WorkingText.plain(hip.minus(knee).working()));
    }

    @Test
    void refusesToMixSides() {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> hip.plus(back));
        assertEquals(
                "the hip moment (per side) cannot be added to the low back moment (total): bring both to the same sides"
                        + " first",
                refusal.getMessage());
        assertThrows(IllegalArgumentException.class, () -> hip.minus(back));
        assertThrows(IllegalArgumentException.class, () -> hip.dividedBy(back));
    }

    @Test
    void refusesToDivideByABandThatHoldsZero() {
        Answer<Moment> aroundZero = answer("ankle moment", 5, -1, 6, Sides.PER_SIDE);
        assertThrows(IllegalArgumentException.class, () -> hip.dividedBy(aroundZero));
    }

    @Test
    void refusesABandOrAWorkingThatIsNotItsOwn() {
        assertThrows(IllegalArgumentException.class, () -> hip.between(newtonMetres(121), newtonMetres(130)));
        assertThrows(IllegalArgumentException.class, () -> hip.between(newtonMetres(100), newtonMetres(119)));
        assertThrows(
                IllegalArgumentException.class,
                () -> Answer.of("hip", newtonMetres(120), Sides.PER_SIDE, back.working()));
    }

    @Test
    void keepsCurvesTheLengthOfTheirAxisWithGapsButWithoutNaN() {
        Curves.Axis axis = new Curves.Axis("Torso lean", Unit.DEGREE, List.of(0.1, 0.2, 0.3));
        Curves.Curve gapped =
                Curves.Curve.of("hip moment", Unit.NEWTON_METRE, Sides.PER_SIDE, Arrays.asList(100.0, null, -0.0));
        Curves curves = new Curves("Hip", axis, List.of(gapped), 0.2, List.of());
        assertEquals(Arrays.asList(100.0, null, 0.0), curves.curves().get(0).values());
        assertThrows(IllegalArgumentException.class, () -> new Curves.Axis("x", Unit.ONE, List.of(1.0, 1.0)));
        assertThrows(IllegalArgumentException.class, () -> new Curves("Hip", axis, List.of(), null, List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> Curves.Curve.of("x", Unit.ONE, Sides.NOT_SIDED, List.of(Double.NaN)));
        Curves.Curve shorter = Curves.Curve.of("x", Unit.ONE, Sides.NOT_SIDED, List.of(1.0));
        assertThrows(IllegalArgumentException.class, () -> new Curves("Hip", axis, List.of(shorter), null, List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Sketch.Point(Double.NaN, 0));
    }
}
