package leverwright.mechanics.study;

import static leverwright.mechanics.body.Joint.ANKLE;
import static leverwright.mechanics.body.Joint.ELBOW;
import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Joint.SHOULDER;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Segment.THIGH;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Exercises.dumbbellCurl;
import static leverwright.mechanics.exercise.Exercises.exercise;
import static leverwright.mechanics.exercise.Exercises.kneeExtension;
import static leverwright.mechanics.exercise.Exercises.pushUp;
import static leverwright.mechanics.exercise.Knobs.ELBOW_FLEXION;
import static leverwright.mechanics.exercise.Knobs.KNEE_FLEXION;
import static leverwright.mechanics.exercise.Knobs.THIGH_ABOVE_LEVEL;
import static leverwright.mechanics.exercise.Knobs.TORSO_LEAN;
import static leverwright.mechanics.exercise.Readings.moment;
import static leverwright.mechanics.load.Resistances.vest;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtonMetres;
import static leverwright.mechanics.measure.Measures.seconds;
import static leverwright.mechanics.study.Studies.energyCostOfBenchPress;
import static leverwright.mechanics.study.Studies.energyCostOfSquat;
import static leverwright.mechanics.study.Studies.people;
import static leverwright.mechanics.study.Studies.population;
import static leverwright.mechanics.study.Studies.repetition;
import static leverwright.mechanics.study.Studies.resistance;
import static leverwright.mechanics.study.Studies.session;
import static leverwright.mechanics.study.Studies.strength;
import static leverwright.mechanics.study.Studies.turnedOut;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Duration;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Listing;
import org.junit.jupiter.api.Test;

class StudiesTest {
    private static final Lifter INES = lifter("Ines").of(FEMALE, cm(178), kg(71));
    private static final Performance EXTEND = kneeExtension().stack(kg(40)).by(INES);
    private static final StrengthCurve STRENGTH = strength(KNEE)
            .extension()
            .heldStill()
            .gravityCorrected(true)
            .neighbour("hip at 85°")
            .sample("invented for a test")
            .at(deg(20), newtonMetres(100))
            .at(deg(60), newtonMetres(170))
            .at(deg(90), newtonMetres(130));

    @Test
    void aResistanceCurveTellsItsPeakMeanAndFlatness() {
        ResistanceCurve curve =
                resistance(EXTEND, KNEE_FLEXION, deg(20), deg(90)).extension(KNEE);
        double greatest = 0;
        double sum = 0;
        for (Double value : curve.curves().curves().get(0).values()) {
            greatest = Math.max(greatest, value);
            sum += value;
        }
        assertEquals(greatest, curve.peakMoment().value().si());
        assertEquals(sum / 201, curve.meanMoment().value().si(), 1e-9);
        assertEquals(sum / 201 / greatest, curve.flatness().value().si(), 1e-12);
        // the limb's own weight asks for most when the knee is straightest
        assertEquals(deg(20).si(), curve.peakAt().value().si(), 1e-9);
        assertTrue(curve.flatness().value().si() > 0.85);
        assertEquals(4, curve.summary().rows().size());
    }

    @Test
    void aCurlPeaksWithTheForearmLevel() {
        Performance curl = dumbbellCurl()
                .dumbbells(kg(10))
                .torsoLean(deg(0))
                .upperArmLean(deg(0))
                .by(INES);
        ResistanceCurve curve =
                resistance(curl, ELBOW_FLEXION, deg(20), deg(140)).flexion(ELBOW);
        assertEquals(90, Math.toDegrees(curve.peakAt().value().si()), 0.5);
    }

    /** Match by hand: strength over resistance at each of the 201 settings, least over mean. */
    @Test
    void matchIsTheLeastOverTheMeanOfStrengthOverResistance() {
        ResistanceCurve curve =
                resistance(EXTEND, KNEE_FLEXION, deg(20), deg(90)).extension(KNEE);
        ResistanceCurve.Match match = curve.against(STRENGTH);
        double least = Double.MAX_VALUE;
        double sum = 0;
        for (int k = 0; k < 201; k++) {
            double degrees = 20 + 70.0 * k / 200;
            double able = degrees <= 60 ? 100 + 70 * (degrees - 20) / 40 : 170 - 40 * (degrees - 60) / 30;
            double asked = EXTEND.withSi(KNEE_FLEXION, Math.toRadians(degrees))
                    .posture()
                    .moment(KNEE)
                    .value()
                    .si();
            least = Math.min(least, able / asked);
            sum += able / asked;
        }
        assertEquals(least / (sum / 201), match.match().value().si(), 1e-9);
        assertEquals(least, match.leastStrengthOverResistance().value().si(), 1e-9);
        assertEquals(20, Math.toDegrees(match.runsOutAt().value().si()), 1e-9);
        assertEquals(2, match.curves().curves().size());
        assertTrue(match.summary().notes().toString().contains("hip at 85°"));
        assertTrue(match.summary().notes().toString().contains("not a load to attempt"));
    }

    @Test
    void strengthSaysWhatItIsAndNothingBeyondItsAngles() {
        assertTrue(message(() -> STRENGTH.si(Math.toRadians(95))).contains("within what was measured"));
        assertTrue(message(() -> STRENGTH.at(deg(80), newtonMetres(10))).contains("rise"));
        assertTrue(message(() -> strength(KNEE).si(1)).contains("at least 2"));
        assertEquals(50, STRENGTH.bothSides().si(deg(20).si()), 1e-12);
        var curve = resistance(EXTEND, KNEE_FLEXION, deg(10), deg(100)).extension(KNEE);
        assertTrue(curve.against(STRENGTH).match().notes().toString().contains("left out"));
        assertTrue(message(() -> curve.against(STRENGTH.flexion())).contains("another joint or action"));
        assertTrue(message(() -> resistance(EXTEND, KNEE_FLEXION, deg(50), deg(50)))
                .contains("smaller to a larger"));
    }

    /** The true leg, rebuilt from what the plane sees, has its own length again and points where the toes point. */
    @Test
    void turnedOutLegsAreSeenForeshortened() {
        Performance squat = backSquat().barbell(kg(60)).by(INES);
        HeldPosture seen = turnedOut(squat).legs(deg(30)).posture();
        double length = seen.performance().lifter().body().segment(THIGH).length();
        double lean = Readings.lean(THIGH).si(seen);
        double forward = length * Math.sin(lean);
        double up = length * Math.cos(lean);
        double sideways = forward * Math.tan(Math.toRadians(30));
        double whole = INES.body().segment(THIGH).length();
        assertEquals(whole, Math.sqrt(forward * forward + up * up + sideways * sideways), 1e-9);
        // level thighs: the whole of the shortening is cos 30°
        assertEquals(whole * Math.cos(Math.toRadians(30)), length, 1e-9);
        assertTrue(Math.abs(seen.moment(HIP).value().si())
                < Math.abs(squat.posture().moment(HIP).value().si()));
    }

    @Test
    void thePlaneIsRefusedWhereTheMomentOutOfItIsTheLarger() {
        Performance squat = backSquat().barbell(kg(60)).by(INES);
        OutOfPlane wide = turnedOut(squat).legs(deg(20)).stance(cm(150));
        assertTrue(message(wide::posture).contains("a planar model does not answer"));
        Listing check = wide.check();
        assertTrue(check.rows().toString().contains("no: out of the plane it is larger"));
        assertTrue(check.notes().toString().contains("foreshortened"));
        assertTrue(message(() -> turnedOut(squat).legs(deg(80))).contains("75"));
        assertTrue(turnedOut(squat).legs(deg(0)).posture().moment(KNEE).value().si()
                == squat.posture().moment(KNEE).value().si());
    }

    @Test
    void aLedgerSumsOverSetsRepetitionsAndTime() {
        Repetition extend =
                repetition(EXTEND).through(KNEE_FLEXION, deg(90), deg(20)).tempo(seconds(1), seconds(2));
        TrainingSession session = session("Tuesday").rest(seconds(60)).add(extend, 3, 10);
        assertEquals(3 * 10 * 3 + 2 * 60, session.time().si(), 1e-9);
        Listing ledger = session.ledger(KNEE, ANKLE);
        assertEquals(Duration.of(90), ledger.rows().get(0).get(1));
        double once = Double.parseDouble((String) ledger.rows().get(0).get(3));
        // by hand: a mean of the moment held still over evenly spaced instants; slow enough to compare within 1 %
        double mean = 0;
        Repetition slow = extend.tempo(seconds(30), seconds(30));
        for (Double value : slow.moments(KNEE).curves().get(1).values()) {
            mean += Math.abs(value) / 201;
        }
        assertEquals(mean * 90, once, 0.02 * once);
        Listing both = session.add(extend, 1, 5).ledger(KNEE);
        assertEquals(
                once * 35 / 30, Double.parseDouble((String) both.rows().get(2).get(3)), 1.5);
        assertEquals(
                once,
                Double.parseDouble(
                        (String) session.ledger(moment(KNEE)).rows().get(0).get(3)),
                0.02 * once);
        assertTrue(ledger.notes().toString().contains("outside this model"));
        assertTrue(message(() -> session("empty").ledger(KNEE)).contains("no exercises"));
        assertTrue(message(() -> session.add(extend, 0, 5)).contains("allowed"));
    }

    /** Robergs 2007, abstract: Y' = −1.424 + 0.022·kg + 0.035·cm and 0.132 + 0.031·kg + 0.01·cm, 5.05 kcal/L. */
    @Test
    void energyCostIsTheRegressionAndRefusesBeyondIt() {
        double squat = -1.424 + 0.022 * 50 + 0.035 * 60;
        assertEquals(
                squat * 5.05 * 4184 / 60,
                energyCostOfSquat(kg(50), cm(60)).value().si(),
                1e-9);
        double bench = 0.132 + 0.031 * 40 + 0.01 * 40;
        Answer<?> pressed = energyCostOfBenchPress(kg(40), cm(40));
        assertEquals(bench * 5.05 * 4184 / 60, pressed.value().si(), 1e-9);
        assertEquals(pressed.value().si(), pressed.working().last().expression().evaluate(), 1e-9);
        // Reis 2017: light leg and chest exercises at 12 to 24 % of a maximum cost 3 to 10 kcal/min
        double kilocalories = pressed.value().si() * 60 / 4184;
        assertTrue(kilocalories > 3 && kilocalories < 10, "kcal/min " + kilocalories);
        assertTrue(message(() -> energyCostOfSquat(kg(150), cm(60))).contains("outside the regression"));
        assertTrue(message(() -> energyCostOfSquat(kg(20), cm(30))).contains("at rest"));
    }

    @Test
    void twoPeopleAreComparedInBodyAndInExercise() {
        Lifter oda = population(FEMALE).limb(INES, Segment.THIGH, 90);
        Listing bodies = people(INES, oda);
        assertEquals(2 + 2 * Segment.values().length, bodies.rows().size());
        Listing squat = people(backSquat().barbell(kg(60)), INES, oda, moment(HIP), moment(KNEE));
        // the torso's lean is set, so that the hip carries the same from above; longer level thighs go to the knee
        assertEquals("1.000", squat.rows().get(0).get(3));
        assertTrue(Double.parseDouble((String) squat.rows().get(1).get(3)) > 1.1);
        assertEquals(List.of("what", "Ines", "Ines", "second over first"), squat.headings());
    }

    /** Identity for two legs held still: knee and hip extension together depend on the thigh alone. */
    @Test
    void kneeAndHipTogetherDependOnTheThighAlone() {
        double first = Double.NaN;
        for (double lean = 20; lean <= 55; lean += 5) {
            HeldPosture held = backSquat()
                    .barbell(kg(60))
                    .with(THIGH_ABOVE_LEVEL, deg(10))
                    .torsoLean(deg(lean))
                    .by(INES)
                    .posture();
            double sum =
                    held.moment(KNEE).value().si() + held.moment(HIP).value().si();
            first = Double.isNaN(first) ? sum : first;
            assertEquals(first, sum, 1e-9 * first);
        }
    }

    private static String message(org.junit.jupiter.api.function.Executable what) {
        return String.valueOf(assertThrows(IllegalArgumentException.class, what).getMessage());
    }

    /** A vest is a mass on the trunk: the hip's moment grows by weight times its arm, whatever else is held. */
    @Test
    void aVestHangsOnTheTrunk() {
        var bow = exercise("Bow").seated().lean(Segment.TRUNK, deg(30));
        double without = bow.by(INES).posture().moment(SHOULDER).value().si();
        HeldPosture held = bow.load(vest(kg(10), cm(30), cm(0))).by(INES).posture();
        assertEquals(without, held.moment(SHOULDER).value().si(), 1e-12);
        var standing = exercise("Good bow")
                .standing(TORSO_LEAN, KNEE_FLEXION)
                .knob(TORSO_LEAN)
                .knob(KNEE_FLEXION);
        double plain = at(standing);
        double loaded = at(standing.load(vest(kg(10), cm(30), cm(0))));
        double expected = 10 * 9.80665 * 0.30 * Math.sin(Math.toRadians(45)) / 2;
        assertEquals(expected, loaded - plain, 1e-9);
    }

    private static double at(leverwright.mechanics.exercise.Movement bow) {
        return bow.with(TORSO_LEAN, deg(45))
                .with(KNEE_FLEXION, deg(20))
                .by(INES)
                .posture()
                .moment(HIP)
                .value()
                .si();
    }

    @Test
    void turnedOutArmsAreSeenForeshortened() {
        Performance press = pushUp().elbowFlexion(deg(60)).by(INES);
        OutOfPlane out = turnedOut(press).arms(deg(5));
        HeldPosture seen = out.posture();
        double whole = INES.body().segment(Segment.UPPER_ARM).length();
        double length =
                seen.performance().lifter().body().segment(Segment.UPPER_ARM).length();
        double turn = Readings.lean(Segment.UPPER_ARM).si(seen)
                + Readings.lean(Segment.TRUNK).si(seen);
        double along = length * Math.cos(turn);
        double across = length * Math.sin(turn) / Math.cos(Math.toRadians(5));
        assertEquals(whole, Math.hypot(along, across), 1e-9);
        assertEquals(2, out.check().rows().size());
        // wide hands: most of the moment acts out of the plane
        assertTrue(message(turnedOut(press).arms(deg(30))::posture).contains("at the shoulder"));
    }
}
