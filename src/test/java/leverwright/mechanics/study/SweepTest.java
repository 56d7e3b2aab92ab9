package leverwright.mechanics.study;

import static leverwright.mechanics.body.Joint.ELBOW;
import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.exercise.Exercises.dumbbellCurl;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.exercise.Knobs.BAR;
import static leverwright.mechanics.exercise.Knobs.BAR_AHEAD;
import static leverwright.mechanics.exercise.Knobs.DUMBBELL;
import static leverwright.mechanics.exercise.Knobs.TORSO_LEAN;
import static leverwright.mechanics.exercise.Readings.flexionMoment;
import static leverwright.mechanics.exercise.Readings.moment;
import static leverwright.mechanics.exercise.Readings.tiltRule;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.rad;
import static leverwright.mechanics.study.Sweep.sweep;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.ImpossibleSetting;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.RomanianDeadlift;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class SweepTest {
    private static final Lifter INES = lifter("Ines").of(FEMALE, cm(178), kg(71));
    private static final RomanianDeadlift HINGE =
            romanianDeadlift().barbell(kg(50)).barAhead(cm(3)).torsoLean(deg(45));

    @Test
    void readsEveryPostureOnTheWayAndMarksThePresentSetting() {
        Curves curves =
                sweep(TORSO_LEAN).from(deg(10)).to(deg(80)).of(HINGE.by(INES)).curves(moment(HIP), tiltRule(HIP));
        assertEquals(200, curves.axis().values().size());
        assertEquals(deg(45).si(), curves.current());
        Curves.Curve hip = curves.curves().get(0);
        for (int k = 0; k < 200; k += 37) {
            double lean = curves.axis().values().get(k);
            double alone = HINGE.by(INES)
                    .with(TORSO_LEAN, deg(0).with(lean, 0))
                    .posture()
                    .moment(HIP)
                    .value()
                    .si();
            assertEquals(alone, hip.values().get(k), 0.0);
        }
    }

    @Test
    void leavesGapsWhereTheArmsCannotReachAndSaysWhy() {
        Curves curves = sweep(BAR_AHEAD)
                .from(cm(0))
                .to(cm(60))
                .points(61)
                .of(HINGE.torsoLean(deg(10)).by(INES))
                .curves(moment(KNEE));
        assertNotNull(curves.curves().get(0).values().get(0));
        assertNull(curves.curves().get(0).values().get(60));
        assertTrue(
                curves.notes().stream().anyMatch(note -> note.startsWith("No value within")),
                curves.notes().toString());
    }

    @Test
    void drawsBandsWhereAnotherInputCarriesAnError() {
        Curves.Curve hip = sweep(TORSO_LEAN)
                .points(3)
                .from(deg(30))
                .to(deg(60))
                .of(HINGE.barbell(kg(50).plusOrMinus(kg(2))).by(INES))
                .curves(moment(HIP))
                .curves()
                .get(0);
        double low = HINGE.barbell(kg(48))
                .torsoLean(deg(30))
                .by(INES)
                .posture()
                .moment(HIP)
                .value()
                .si();
        assertEquals(low, hip.low().get(0), 1e-9);
    }

    @Test
    void refusesEndsThatDoNotRiseOrLeaveTheRange() {
        assertThrows(
                IllegalArgumentException.class,
                () -> sweep(TORSO_LEAN).from(deg(80)).to(deg(10)).of(HINGE.by(INES)));
        assertThrows(
                IllegalArgumentException.class,
                () -> sweep(TORSO_LEAN).to(deg(400)).of(HINGE.by(INES)));
        assertThrows(IllegalArgumentException.class, () -> sweep(TORSO_LEAN).points(1));
    }

    @Test
    void turnsByStepsByListAndByEqualRatios() {
        List<Double> steps = sweep(TORSO_LEAN)
                .from(deg(10))
                .to(deg(32))
                .step(deg(5))
                .of(HINGE.by(INES))
                .curves(moment(HIP))
                .axis()
                .values();
        assertEquals(5, steps.size());
        assertEquals(deg(30).si(), steps.get(4), 1e-12);
        List<Double> listed = sweep(BAR)
                .at(kg(20), kg(45), kg(100))
                .of(HINGE.by(INES))
                .curves(moment(HIP))
                .axis()
                .values();
        assertEquals(List.of(20.0, 45.0, 100.0), listed);
        List<Double> ratios = sweep(BAR)
                .from(kg(5))
                .to(kg(80))
                .points(5)
                .logarithmic()
                .of(HINGE.by(INES))
                .curves(moment(HIP))
                .axis()
                .values();
        assertEquals(10, ratios.get(1), 1e-9);
        assertEquals(80, ratios.get(4), 0);
    }

    /** With its joints held still, a moment grows in proportion to the bar: an analytic sweep. */
    @Test
    void sweepsALoadAlongAStraightLine() {
        Curves.Curve elbow = sweep(DUMBBELL)
                .from(kg(2))
                .to(kg(30))
                .points(12_345)
                .of(dumbbellCurl().elbowFlexion(deg(90)).by(INES))
                .curves(flexionMoment(ELBOW))
                .curves()
                .get(0);
        double first = elbow.values().get(0);
        double last = elbow.values().get(elbow.values().size() - 1);
        Curves all = sweep(DUMBBELL)
                .from(kg(2))
                .to(kg(30))
                .points(12_345)
                .of(dumbbellCurl().elbowFlexion(deg(90)).by(INES))
                .curves(flexionMoment(ELBOW));
        for (int k = 0; k < elbow.values().size(); k++) {
            double part = (all.axis().values().get(k) - 2) / 28;
            assertEquals(first + part * (last - first), elbow.values().get(k), 1e-9);
        }
    }

    @Test
    void turnsALengthOfTheLifterAndAFamilyOverAnotherKnob() {
        Curves curves = sweep(Variable.lengthOf(Segment.THIGH))
                .from(cm(38))
                .to(cm(46))
                .points(5)
                .of(HINGE.by(INES))
                .family(BAR, kg(20), kg(60))
                .curves(moment(HIP), moment(KNEE));
        assertEquals(4, curves.curves().size());
        assertEquals("hip extension moment, Bar 60 kg", curves.curves().get(2).name());
        double alone = HINGE.barbell(kg(60))
                .by(INES.thigh(cm(38)))
                .posture()
                .moment(HIP)
                .value()
                .si();
        assertEquals(alone, curves.curves().get(2).values().get(0), 0);
        assertThrows(
                IllegalArgumentException.class,
                () -> sweep(BAR).of(HINGE.by(INES)).family(BAR, kg(20)));
    }

    @Test
    void keepsOfALongWayWhatItsChartWouldShow() {
        int count = 30_001;
        Curves kept = sweep(BAR_AHEAD)
                .from(cm(0))
                .to(cm(60))
                .points(count)
                .of(HINGE.torsoLean(deg(10)).by(INES))
                .curves(moment(KNEE), moment(HIP));
        List<Double> settings = kept.axis().values();
        assertTrue(settings.size() < 6_000, settings.size() + " settings");
        int at = 0;
        for (int part = 0; part < 1000; part++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            boolean gap = false;
            int from = (int) Math.ceil(part * (double) count / 1000);
            int to = (int) Math.ceil((part + 1) * (double) count / 1000);
            for (int k = from; k < to; k += 1) {
                double setting = k == count - 1 ? cm(60).si() : cm(60).si() * k / (count - 1);
                try {
                    HeldPosture held = HINGE.torsoLean(deg(10))
                            .by(INES)
                            .withSi(BAR_AHEAD, setting)
                            .posture();
                    double value = moment(KNEE).si(held);
                    boolean falls = held.standing().wouldFall();
                    gap |= falls;
                    low = falls ? low : Math.min(low, value);
                    high = falls ? high : Math.max(high, value);
                } catch (ImpossibleSetting nowhere) {
                    gap = true;
                }
            }
            double end = cm(60).si() * (to - 0.5) / (count - 1);
            double keptLow = Double.POSITIVE_INFINITY;
            double keptHigh = Double.NEGATIVE_INFINITY;
            boolean keptGap = false;
            while (at < settings.size() && settings.get(at) < end) {
                Double value = kept.curves().get(0).values().get(at);
                keptGap |= value == null;
                keptLow = value == null ? keptLow : Math.min(keptLow, value);
                keptHigh = value == null ? keptHigh : Math.max(keptHigh, value);
                at++;
            }
            assertEquals(low, keptLow, "part " + part);
            assertEquals(high, keptHigh, "part " + part);
            assertEquals(gap, keptGap, "part " + part);
        }
    }

    @Test
    void aLongWayHasTheBandsOfTheSettingsKept() {
        Performance unsure =
                HINGE.barbell(kg(50).plusOrMinus(kg(5))).torsoLean(deg(40)).by(INES);
        Curves kept = sweep(TORSO_LEAN)
                .from(deg(10))
                .to(deg(80))
                .points(12_000)
                .of(unsure)
                .curves(moment(HIP));
        Curves.Curve hip = kept.curves().get(0);
        assertEquals(hip.values().size(), hip.low().size());
        for (int k = 0; k < hip.values().size(); k += 97) {
            HeldPosture there =
                    unsure.withSi(TORSO_LEAN, kept.axis().values().get(k)).posture();
            assertEquals(there.span(moment(HIP)).low(), hip.low().get(k), 0);
            assertEquals(there.span(moment(HIP)).high(), hip.high().get(k), 0);
        }
        assertTrue(kept.notes().contains("Bands are those at the settings kept."));
    }

    @Test
    void givesTheSameCurvesWithTwoThreads() {
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            Crew two = new Crew(threads, 2, () -> false, (done, all) -> {});
            Swept long1 =
                    sweep(TORSO_LEAN).from(deg(11)).to(deg(79)).points(20_000).of(HINGE.by(INES));
            Swept long2 =
                    sweep(TORSO_LEAN).from(deg(11)).to(deg(79)).points(20_000).of(HINGE.by(other()));
            assertEquals(
                    long1.curves(two, moment(HIP)).curves(),
                    long2.curves(Crew.alone(), moment(HIP)).curves());
        } finally {
            threads.shutdown();
        }
    }

    /** The same lifter, but another object: what was kept for the first one is not taken. */
    private static Lifter other() {
        return lifter("Ines").of(FEMALE, cm(178), kg(71));
    }

    @Test
    void keepsWhatIsDoneWhenStopped() {
        long[] told = {0};
        Crew crew = new Crew(Runnable::run, 1, () -> told[0] >= 2048, (done, all) -> told[0] = done);
        Curves curves = sweep(TORSO_LEAN)
                .from(deg(12))
                .to(deg(78))
                .points(1_000_000)
                .of(HINGE.by(INES))
                .curves(crew, moment(HIP));
        double last = curves.axis().values().get(curves.axis().values().size() - 1);
        assertTrue(last < deg(13).si(), "ends at " + last);
        assertTrue(
                curves.notes().get(0).startsWith("Stopped: 2,048 of 1,000,000"),
                curves.notes().toString());
    }

    @Test
    void listsAShortWayWholeAndALongOneInPart() {
        Swept few = sweep(TORSO_LEAN).from(deg(10)).to(deg(80)).points(8).of(HINGE.by(INES));
        assertEquals(8, few.table(Crew.alone(), moment(HIP)).rows().size());
        Listing many = sweep(TORSO_LEAN)
                .from(deg(10))
                .to(deg(80))
                .points(15_000)
                .of(HINGE.by(INES))
                .table(Crew.alone(), moment(HIP));
        assertTrue(many.rows().size() <= 23, many.rows().size() + " rows");
        assertTrue(
                many.notes().get(0).startsWith("Of 15,000 settings"),
                many.notes().get(0));
    }

    @Test
    void refusesWhatNeverEndsWithAnEstimate() {
        refused("years", () -> sweep(TORSO_LEAN).points(1e15));
        refused("days", () -> sweep(TORSO_LEAN).points(1e12));
        refused("GB", () -> sweep(TORSO_LEAN).points(1e12));
        refused("minutes", () -> sweep(TORSO_LEAN).from(deg(10)).step(rad(1e-9)).of(HINGE.by(INES)));
        refused("more than zero", () -> sweep(TORSO_LEAN).step(deg(0)));
        refused("above zero", () -> sweep(BAR).from(kg(0)).logarithmic().of(HINGE.by(INES)));
        refused("rise", () -> sweep(BAR).at(kg(40), kg(20)));
        refused("2 or more", () -> sweep(BAR).at(kg(40)));
        refused("whole number", () -> sweep(BAR).points(10.5));
    }

    private static void refused(String words, Executable what) {
        String message = String.valueOf(
                assertThrows(IllegalArgumentException.class, what).getMessage());
        assertTrue(message.contains(words), message);
    }
}
