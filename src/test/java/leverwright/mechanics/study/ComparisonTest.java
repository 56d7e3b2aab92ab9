package leverwright.mechanics.study;

import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Joint.LOW_BACK;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Exercises.kneeExtension;
import static leverwright.mechanics.exercise.Exercises.legPress;
import static leverwright.mechanics.exercise.Exercises.pushUp;
import static leverwright.mechanics.exercise.Knobs.BAR;
import static leverwright.mechanics.exercise.Knobs.STACK;
import static leverwright.mechanics.exercise.Knobs.TORSO_LEAN;
import static leverwright.mechanics.exercise.Readings.moment;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.study.Studies.compression;
import static leverwright.mechanics.study.Uncertainty.withinLimits;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listing;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    private static final Lifter INES = lifter("Ines").of(FEMALE, cm(178), kg(71));
    private static final Lifter ODA = lifter("Oda").of(FEMALE, cm(169), kg(62));
    private static final Performance SQUAT = backSquat()
            .barbell(kg(30))
            .thighAboveLevel(deg(20))
            .torsoLean(deg(35))
            .by(INES);
    private static final Performance PRESS = legPress().plates(kg(60)).by(INES);
    private static final Performance EXTEND = kneeExtension().stack(kg(30)).by(INES);

    @Test
    void loadsThatMakeAReadingEqualDoSo() {
        Comparison equal = Comparison.of(List.of(SQUAT, PRESS, EXTEND)).equal(moment(KNEE));
        double wanted = moment(KNEE).si(SQUAT.posture());
        assertEquals(3, equal.performances().size());
        for (Performance each : equal.performances()) {
            assertEquals(wanted, moment(KNEE).si(each.posture()), 1e-6);
        }
        assertTrue(equal.table(moment(KNEE)).notes().get(0).startsWith("Equal: knee extension moment of"));
    }

    @Test
    void whatCannotBeMadeEqualIsLeftOutAndSaid() {
        Performance none = pushUp().by(INES);
        Comparison equal = Comparison.of(List.of(SQUAT, PRESS, none)).equal(moment(KNEE));
        assertEquals(2, equal.performances().size());
        assertTrue(equal.table(moment(KNEE)).notes().stream().anyMatch(note -> note.contains("Push-up is left out")));
    }

    @Test
    void namesTellApartWhatIsCompared() {
        assertEquals(
                List.of("Back squat, Bar 20.00 kg", "Back squat, Bar 40.00 kg"),
                Named.of(Comparison.each(SQUAT, BAR, List.of(kg(20), kg(40)))));
        assertEquals(List.of("Ines", "Oda"), Named.of(List.of(SQUAT, SQUAT.by(ODA))));
        assertEquals(List.of("Back squat", "Leg press"), Named.of(List.of(SQUAT, PRESS)));
        assertEquals(List.of("Back squat by Ines", "Leg press by Oda"), Named.of(List.of(SQUAT, PRESS.by(ODA))));
    }

    /** Two bars, one lean in common: the heavier bar asks more of the hip whatever the lean (the moment grows with the bar). */
    @Test
    void anOrderThatHoldsInEveryDrawIsSaidToHoldInAll() {
        Comparison bars = Comparison.of(Comparison.each(SQUAT, BAR, List.of(kg(20), kg(40))))
                .unsure(spread -> spread.vary(TORSO_LEAN, withinLimits(deg(5))).draws(100));
        Listing pairs = bars.pairs(Crew.alone(), moment(HIP));
        assertEquals(1, pairs.rows().size());
        assertTrue(pairs.rows().get(0).get(1).toString().startsWith("Back squat, Bar 40.00 kg more than"));
        assertEquals("this order holds in 100 of 100 draws", pairs.rows().get(0).get(2));
    }

    @Test
    void withoutAnUnsureInputNothingIsSaidOfSurety() {
        Listing pairs = Comparison.of(List.of(SQUAT, PRESS)).pairs(Crew.alone(), moment(KNEE));
        assertEquals("", pairs.rows().get(0).get(2));
        assertTrue(pairs.notes().stream().anyMatch(note -> note.startsWith("How surely is not said")));
    }

    /** By definition: on the front stands who has the most target among those that cost no more. */
    @Test
    void theFrontHoldsWhatNoOtherBeats() {
        Comparison bars = Comparison.of(List.of(
                SQUAT.with(BAR, kg(20)),
                SQUAT.with(BAR, kg(40)),
                SQUAT.with(BAR, kg(30)).with(TORSO_LEAN, deg(50))));
        Listing table = bars.frontTable(moment(KNEE), compression(LOW_BACK));
        assertEquals("beaten by none", table.rows().get(0).get(3));
        assertEquals("beaten by none", table.rows().get(1).get(3));
        assertTrue(table.rows().get(2).get(3).toString().startsWith("beaten by Back squat"));
        Curves front = bars.front(moment(KNEE), compression(LOW_BACK));
        assertEquals(4, front.curves().size());
        double before = 0;
        for (Double value : front.curves().get(0).values()) {
            assertTrue(value >= before);
            before = value;
        }
    }

    /** Equal to what a repetition and a greatest load say by themselves. */
    @Test
    void workAndGreatestLoadAreReadingsToo() {
        double work = Studies.liftingWork().si(EXTEND.posture());
        assertEquals(
                Studies.repetition(EXTEND).alongItsWay().liftingWork().value().si(), work, 0);
        double most = MuscleWords.greatestLoad(STACK).si(EXTEND.posture());
        assertEquals(MuscleWords.greatestLoad(EXTEND, STACK).load().value().si(), most, 0);
        Listing table = Comparison.of(List.of(EXTEND, EXTEND.with(STACK, kg(10))))
                .table(Studies.liftingWork(), MuscleWords.greatestLoad(STACK));
        assertEquals(3, table.headings().size());
    }

    @Test
    void badInputIsToldPlainly() {
        assertThrows(IllegalArgumentException.class, () -> Comparison.of(List.of(SQUAT)));
        assertThrows(
                IllegalArgumentException.class,
                () -> Comparison.of(List.of(SQUAT, SQUAT)).front(moment(KNEE), moment(HIP)));
    }

    @Test
    void twoThreadsSayTheSameOfEveryPair() {
        ExecutorService pool = Executors.newFixedThreadPool(2);
        try {
            Crew two = new Crew(pool, 2, () -> false, (done, all) -> {});
            Comparison pair = Comparison.of(List.of(EXTEND, EXTEND.with(STACK, kg(31))))
                    .unsure(spread ->
                            spread.vary(STACK, Uncertainty.normal(kg(2))).draws(300));
            assertEquals(
                    pair.pairs(Crew.alone(), moment(KNEE)).rows(),
                    pair.pairs(two, moment(KNEE)).rows());
        } finally {
            pool.shutdownNow();
        }
    }
}
