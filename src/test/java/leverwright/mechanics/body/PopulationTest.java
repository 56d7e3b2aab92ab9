package leverwright.mechanics.body;

import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Population.population;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.percent;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import leverwright.mechanics.numeric.NormalCurve;
import org.junit.jupiter.api.Test;

/** Against ANSUR II 2012 and against surveys of other people, named beside each check. */
class PopulationTest {
    private static final long SEED = 20261125;
    private static final List<Lifter> MEN = population(Sex.MALE).random(SEED, 4000);
    private static final List<Lifter> WOMEN = population(Sex.FEMALE).random(SEED, 4000);

    @Test
    void percentilesAreThoseOfTheSurvey() {
        assertEquals(1.648, population(Sex.MALE).percentile(5).stature().si());
        assertEquals(1.626, population(Sex.FEMALE).percentile(50).stature().si());
        assertEquals(87.07, population(Sex.FEMALE).percentile(95).bodyMass().si());
        // R. L. Huston 2009, percentiles of US adults as a university handout prints them: 1.518, 1.618, 1.724 m and
        // 1.649, 1.759, 1.869 m; another sample, so within 2 cm
        assertEquals(1.869, population(Sex.MALE).percentile(95).stature().si(), 0.02);
        assertEquals(1.518, population(Sex.FEMALE).percentile(5).stature().si(), 0.02);
        assertEquals(50, population(Sex.MALE).percentileOf(cm(175.62)), 1e-9);
    }

    @Test
    void normalCurveIsTheOneOfTheTables() {
        assertEquals(1.6448536269514722, NormalCurve.at(0.95), 1e-9);
        assertEquals(0.975, NormalCurve.below(1.959963984540054), 1e-12);
    }

    /** The survey's own percentiles, which the normal draws do not use: half a centimetre for them, half for chance. */
    @Test
    void randomPeopleSpreadAsThoseMeasured() {
        assertEquals(1.648, quantile(MEN, l -> l.stature().si(), 0.05), 0.01);
        assertEquals(1.870, quantile(MEN, l -> l.stature().si(), 0.95), 0.01);
        assertEquals(51.3, quantile(WOMEN, l -> l.bodyMass().si(), 0.05), 2.5);
        assertEquals(87.07, quantile(WOMEN, l -> l.bodyMass().si(), 0.95), 2.5);
    }

    /** The shank is made from other dimensions here; its spread and its correlation with stature were measured apart. */
    @Test
    void shanksThatFollowSpreadAsThoseMeasured() {
        checkShanks(MEN, 0.0246 / 0.4188, 0.821);
        checkShanks(WOMEN, 0.0259 / 0.4032, 0.751);
    }

    private static void checkShanks(List<Lifter> people, double relativeSpread, double withStature) {
        ToDoubleFunction<Lifter> shank = l -> l.body().segment(Segment.SHANK).length();
        double mean = people.stream().mapToDouble(shank).average().orElseThrow();
        double spread = Math.sqrt(people.stream()
                .mapToDouble(l -> (shank.applyAsDouble(l) - mean) * (shank.applyAsDouble(l) - mean))
                .average()
                .orElseThrow());
        assertEquals(relativeSpread, spread / mean, 0.05 * relativeSpread);
        assertEquals(withStature, correlation(people, shank, l -> l.stature().si()), 0.03);
    }

    @Test
    void lengthsAndMassGoTogetherAsAmongThoseMeasured() {
        assertEquals(
                0.469, correlation(MEN, l -> l.stature().si(), l -> l.bodyMass().si()), 0.05);
        assertEquals(
                0.489,
                correlation(
                        WOMEN,
                        l -> l.body().segment(Segment.THIGH).length(),
                        l -> l.body().segment(Segment.SHANK).length()),
                0.06);
        // two dimensions of one arm, ANSUR II women: 0.731
        assertEquals(
                0.731,
                correlation(
                        WOMEN,
                        l -> l.body().segment(Segment.UPPER_ARM).length(),
                        l -> l.body().segment(Segment.FOREARM).length()),
                0.04);
    }

    @Test
    void everyRandomBodyHasItsMassAndEqualSeedsGiveEqualPeople() {
        for (Lifter man : MEN.subList(0, 200)) {
            assertEquals(man.bodyMass().si(), man.body().mass(), 1e-9);
        }
        assertEquals(
                MEN.get(3).toString(),
                population(Sex.MALE).random(SEED, 4).get(3).toString());
    }

    /** ANSUR II regression of trochanter less femoral epicondyle on stature, women: −0.0425 + 0.2591·H, residual 0.0174 m. */
    @Test
    void limbsAtAPercentileOfThatStature() {
        Lifter ines = lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));
        double usual = ines.body().segment(Segment.THIGH).length();
        double expected = 1 + 1.6448536 * 0.0174 / (-0.0425 + 0.2591 * 1.78);
        Lifter longer = population(Sex.FEMALE).limb(ines, Segment.THIGH, 95);
        assertEquals(expected, longer.body().segment(Segment.THIGH).length() / usual, 1e-6);
        assertFalse(longer.notes().toString().contains("95 of 100"));
        Lifter longest = population(Sex.FEMALE).limb(ines, Segment.THIGH, 96);
        assertTrue(longest.notes().toString().contains("longer than that of 95 of 100 women"));
        assertTrue(ines.thigh(cm(34)).notes().toString().contains("shorter than that of 95 of 100"));
    }

    @Test
    void limbProportionKeepsTheStature() {
        Lifter ines = lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));
        Lifter longer = ines.limbs(percent(105));
        double before = 0;
        double after = 0;
        for (Segment segment : List.of(Segment.SHANK, Segment.THIGH, Segment.TRUNK)) {
            before += ines.body().segment(segment).length();
            after += longer.body().segment(segment).length();
        }
        assertEquals(before, after, 1e-12);
        assertEquals(
                1.05 * ines.body().segment(Segment.FOREARM).length(),
                longer.body().segment(Segment.FOREARM).length(),
                1e-12);
    }

    @Test
    void badPercentilesAreToldInWords() {
        assertTrue(message(() -> population(Sex.MALE).percentile(0)).contains("greater than 0"));
        assertTrue(message(() -> population(Sex.MALE).percentile(100)).contains("less than 100"));
        Lifter ines = lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));
        assertTrue(message(() -> population(Sex.FEMALE).limb(ines, Segment.TRUNK, 50))
                .contains("trunk"));
        assertTrue(message(() -> ines.limbs(percent(150))).contains("1.25"));
        assertTrue(message(() -> population(Sex.MALE).random(1, 0)).contains("allowed: 1 to"));
    }

    private static double quantile(List<Lifter> people, ToDoubleFunction<Lifter> value, double part) {
        double[] sorted = people.stream().mapToDouble(value).sorted().toArray();
        return sorted[(int) (part * sorted.length)];
    }

    private static double correlation(
            List<Lifter> people, ToDoubleFunction<Lifter> one, ToDoubleFunction<Lifter> other) {
        double[] x = people.stream().mapToDouble(one).toArray();
        double[] y = people.stream().mapToDouble(other).toArray();
        double meanX = java.util.Arrays.stream(x).average().orElseThrow();
        double meanY = java.util.Arrays.stream(y).average().orElseThrow();
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int k = 0; k < x.length; k++) {
            xx += (x[k] - meanX) * (x[k] - meanX);
            yy += (y[k] - meanY) * (y[k] - meanY);
            xy += (x[k] - meanX) * (y[k] - meanY);
        }
        return xy / Math.sqrt(xx * yy);
    }

    private static String message(org.junit.jupiter.api.function.Executable what) {
        return String.valueOf(assertThrows(IllegalArgumentException.class, what).getMessage());
    }
}
