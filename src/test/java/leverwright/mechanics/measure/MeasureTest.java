package leverwright.mechanics.measure;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.degPerSecond;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.m;
import static leverwright.mechanics.measure.Measures.metresPerSecondSquared;
import static leverwright.mechanics.measure.Measures.newtonMetres;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.newtonsPerMetre;
import static leverwright.mechanics.measure.Measures.ratio;
import static leverwright.mechanics.measure.Measures.seconds;
import static leverwright.mechanics.measure.Measures.squareCentimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeasureTest {

    @Test
    void multipliesKindsIntoKinds() {
        assertEquals(newtonMetres(125), newtons(500).times(cm(25)));
        assertEquals(newtonMetres(125), cm(25).times(newtons(500)));
        assertEquals(newtons(150), kg(50).times(metresPerSecondSquared(3)));
        assertEquals(newtons(250), newtonMetres(125).dividedBy(m(0.5)));
        assertEquals(m(0.25), newtonMetres(125).dividedBy(newtons(500)));
        assertEquals(newtonsPerMetre(400), newtons(100).dividedBy(m(0.25)));
        assertEquals(newtons(100), newtonsPerMetre(400).times(m(0.25)));
        assertEquals(25e4, newtons(1200).dividedBy(squareCentimetres(48)).si(), 1e-9);
        assertEquals(Work.of(500), newtons(1000).workOver(m(0.5)));
        assertEquals(Power.of(250), Work.of(500).dividedBy(seconds(2)));
        assertEquals(Math.PI * 50, newtonMetres(50).times(degPerSecond(180)).si(), 1e-12);
        assertEquals(Math.PI * 25, newtonMetres(50).times(deg(90)).si(), 1e-12);
        assertEquals(newtonMetres(6), Inertia.of(2).times(AngularAcceleration.of(3)));
        assertEquals(490.3325, kg(50).weight().si(), 1e-12);
        assertEquals(ratio(4), m(2).dividedBy(cm(50)));
        assertEquals(newtons(50), newtons(500).times(ratio(0.1)));
    }

    @Test
    void addsComparesAndTurnsWithinAKind() {
        assertEquals(kg(70), kg(50).plus(kg(20)));
        assertEquals(kg(-20), kg(50).minus(kg(70)));
        assertEquals(kg(100), kg(50).times(2));
        assertEquals(kg(25), kg(50).dividedBy(2));
        assertEquals(kg(-50), kg(50).negated());
        assertEquals(kg(50), kg(-50).abs());
        assertTrue(kg(50).compareTo(kg(51)) < 0);
        assertEquals(0, kg(50).compareTo(kg(50).plusOrMinus(kg(1))));
        assertEquals(110.23113, kg(50).in(Unit.POUND), 5e-6);
    }

    @Test
    void keepsTheErrorAsAHalfWidth() {
        Angle read = deg(45).plusOrMinus(deg(5));
        assertEquals(deg(5).si(), read.error());
        assertEquals(deg(40).si(), read.lowest().si(), 1e-15);
        assertEquals(deg(50).si(), read.highest().si(), 1e-15);
        assertEquals(deg(3).si(), read.plusOrMinus(deg(-3)).error());
        assertEquals(2 * deg(5).si(), read.minus(read).error());
        assertEquals(2 * deg(5).si(), read.times(-2).error());
    }

    /** Brute force: the largest distance from the nominal result over a grid and random points of both bands. */
    @Test
    void enclosesAllThatTheBandsAllowAndNoMore() {
        Random random = new Random(23);
        for (int i = 0; i < 400; i++) {
            Force force = newtons(signed(random, 500)).plusOrMinus(newtons(50 * random.nextDouble()));
            Length arm = m(signed(random, 0.5)).plusOrMinus(m(0.02 * random.nextDouble()));
            checkBand(force, arm, (a, b) -> a * b, force.times(arm).error());
            checkBand(force, arm, (a, b) -> a / b, force.dividedBy(arm).error());
            Force other = newtons(signed(random, 300)).plusOrMinus(newtons(20 * random.nextDouble()));
            checkBand(force, other, Double::sum, force.plus(other).error());
            checkBand(force, other, (a, b) -> a - b, force.minus(other).error());
            checkBand(force, other, (a, b) -> a / b, force.dividedBy(other).error());
            Ratio share = ratio(signed(random, 2)).plusOrMinus(ratio(0.1 * random.nextDouble()));
            checkBand(force, share, (a, b) -> a * b, force.times(share).error());
        }
    }

    private static double signed(Random random, double size) {
        return (random.nextBoolean() ? size : -size) * (0.1 + random.nextDouble());
    }

    private static void checkBand(Measure<?> a, Measure<?> b, DoubleBinaryOperator operation, double halfWidth) {
        double nominal = operation.applyAsDouble(a.si(), b.si());
        double farthest = 0;
        for (int i = -10; i <= 10; i++) {
            for (int j = -10; j <= 10; j++) {
                double sample = operation.applyAsDouble(a.si() + a.error() * i / 10, b.si() + b.error() * j / 10);
                farthest = Math.max(farthest, Math.abs(sample - nominal));
            }
        }
        assertEquals(farthest, halfWidth, 1e-9 * (1 + Math.abs(nominal)), () -> "seed 23: " + a + ", " + b);
    }

    @Test
    void refusesToDivideByWhatMayBeZero() {
        assertRefused(
                "cannot divide by 0 m; the divisor must stay away from zero",
                () -> newtonMetres(10).dividedBy(m(0)));
        assertRefused(
                "cannot divide by 0.01 ± 0.02 m, whose band holds zero; the divisor must stay away from zero",
                () -> newtonMetres(10).dividedBy(m(0.01).plusOrMinus(m(0.02))));
        assertRefused(
                "a value cannot be divided by zero; divide by a number other than zero", () -> kg(10).dividedBy(0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNoNumber(double value) {
        for (Dimension dimension : Dimension.values()) {
            IllegalArgumentException ofValue =
                    assertThrows(IllegalArgumentException.class, () -> dimension.of(value, 0));
            assertTrue(String.valueOf(ofValue.getMessage()).startsWith(dimension.withArticle()), ofValue.getMessage());
            assertThrows(IllegalArgumentException.class, () -> dimension.of(1, value));
        }
        assertThrows(IllegalArgumentException.class, () -> dimensionless(value));
    }

    private static Ratio dimensionless(double value) {
        return ratio(1).times(value);
    }

    @Test
    void namesTheValueAndTheRemedyInEveryRefusal() {
        assertRefused(
                "a mass must be a finite number of kg, not NaN (not a number); look for a division by zero or an "
                        + "overflow before it",
                () -> kg(Double.NaN));
        assertRefused(
                "the error of a mass must be a finite number of kg, zero or more, not −1", () -> new Mass(50, -1));
    }

    @Test
    void knowsNoMinusZero() {
        assertEquals(0, Double.compare(0.0, newtons(-0.0).si()));
        assertEquals(newtons(0), newtons(0).negated());
    }

    private static void assertRefused(String message, Executable action) {
        assertEquals(
                message, assertThrows(IllegalArgumentException.class, action).getMessage());
    }
}
