package leverwright.mechanics.study;

import static leverwright.mechanics.body.Joint.ELBOW;
import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Exercises.dumbbellCurl;
import static leverwright.mechanics.exercise.Exercises.exercise;
import static leverwright.mechanics.exercise.Exercises.kneeExtension;
import static leverwright.mechanics.exercise.Exercises.pushUp;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.exercise.Knobs.ELBOW_FLEXION;
import static leverwright.mechanics.exercise.Knobs.KNEE_FLEXION;
import static leverwright.mechanics.exercise.Knobs.SHANK_LEAN;
import static leverwright.mechanics.exercise.Knobs.THIGH_ABOVE_LEVEL;
import static leverwright.mechanics.exercise.Knobs.TORSO_LEAN;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.seconds;
import static leverwright.mechanics.study.Studies.repetition;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.load.Band;
import leverwright.mechanics.load.LineLoad;
import leverwright.mechanics.load.Resistances;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.motion.Energies;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Place;
import leverwright.mechanics.working.Curves;
import org.junit.jupiter.api.Test;

class RepetitionTest {
    private static final Lifter INES = lifter("Ines").of(FEMALE, cm(178), kg(71));

    private static final Repetition SQUAT = repetition(
                    backSquat().barbell(kg(60)).torsoLean(deg(40)).by(INES))
            .through(THIGH_ABOVE_LEVEL, deg(70), deg(0))
            .tempo(seconds(2), seconds(1))
            .pause(seconds(0.5));

    private static final Repetition CURL = repetition(
                    dumbbellCurl().dumbbells(kg(12)).torsoLean(deg(0)).by(INES))
            .through(ELBOW_FLEXION, deg(10), deg(130))
            .tempo(seconds(1), seconds(2));

    private static final Repetition HINGE =
            repetition(romanianDeadlift().barbell(kg(50)).by(INES)).through(TORSO_LEAN, deg(15), deg(70));

    private static final List<Repetition> ALL = List.of(SQUAT, CURL, HINGE);

    @Test
    void theEnergyAccountClosesToAMillionth() {
        for (Repetition repetition : ALL) {
            Energies energies = repetition.energies();
            assertTrue(energies.residual() < 1e-6, repetition + ": " + energies);
        }
    }

    @Test
    void externalWorkOverAClosedRepetitionIsNothing() {
        for (Repetition repetition : ALL) {
            double lifting = repetition.liftingWork().value().si();
            double lowering = repetition.loweringWork().value().si();
            assertTrue(lifting > 0 && lowering < 0, repetition.toString());
            assertEquals(0, lifting + lowering, 1e-6 * lifting, repetition.toString());
        }
    }

    @Test
    void positiveJointWorkIsAtLeastTheEnergyGained() {
        for (Repetition repetition : ALL) {
            Energies energies = repetition.energies();
            assertTrue(energies.totalPositiveJointWork() >= energies.rise() - 1e-9, repetition.toString());
            assertTrue(energies.totalPositiveJointWork() >= energies.lifting() - 1e-6, repetition + ": " + energies);
        }
    }

    /** Lifting work by heights alone: masses times how far their centres rise, from two postures held still. */
    @Test
    void liftingWorkIsWeightTimesRise() {
        double low = heightMoment(deg(0).si());
        double high = heightMoment(deg(70).si());
        assertEquals((high - low) * 9.80665, SQUAT.liftingWork().value().si(), 1e-6 * high * 9.80665);
    }

    private static double heightMoment(double thigh) {
        var solved =
                SQUAT.performance().withSi(THIGH_ABOVE_LEVEL, thigh).posture().mechanism();
        var solution = solved.solved().solution();
        double mass = 71 + 60;
        return mass * solution.systemMassCentre().orElseThrow().y();
    }

    @Test
    void slowMotionIsTheSameAsHoldingStill() {
        Repetition slow = SQUAT.tempo(seconds(60), seconds(60));
        for (Joint joint : List.of(HIP, KNEE)) {
            assertTrue(Math.abs(slow.inertiaShare(joint).value().si()) < 0.002);
            assertTrue(Math.abs(SQUAT.inertiaShare(joint).value().si())
                    > Math.abs(slow.inertiaShare(joint).value().si()));
        }
        double held = SQUAT.performance()
                .withSi(THIGH_ABOVE_LEVEL, 0)
                .posture()
                .moment(KNEE)
                .value()
                .si();
        assertEquals(held, slow.peakMoment(KNEE).value().si(), 0.01 * held);
    }

    /** Inertia of one curl by hand: I·α about the elbow at minimum jerk's greatest acceleration, 5.7735·angle/T². */
    @Test
    void inertiaOfACurlIsWhatTheHandCalculationSays() {
        // every angle set, so that the body does not sway to keep its balance
        Repetition still = repetition(dumbbellCurl()
                        .dumbbells(kg(12))
                        .torsoLean(deg(0))
                        .with(SHANK_LEAN, deg(4))
                        .with(KNEE_FLEXION, deg(4))
                        .by(INES))
                .through(ELBOW_FLEXION, deg(10), deg(130))
                .tempo(seconds(1), seconds(2));
        var mechanism = still.performance().posture().mechanism();
        var forearm = mechanism.linkage().link(mechanism.linkage().indexOf("forearm"));
        var hand = mechanism.linkage().link(mechanism.linkage().indexOf("hand"));
        double grip = forearm.length() + mechanism.loads().get(0).at().along();
        double handCentre = forearm.length() + hand.centre().along();
        double inertia = forearm.inertia()
                + forearm.mass() * forearm.centre().along() * forearm.centre().along()
                + hand.inertia()
                + hand.mass() * handCentre * handCentre
                + 24 * grip * grip;
        double alpha = 10 / Math.sqrt(3) * deg(120).si();
        double expected = inertia * alpha / 2;
        Curves curves = still.moments(ELBOW);
        double greatest = 0;
        for (int k = 0; k < curves.axis().values().size(); k++) {
            Double moving = curves.curves().get(0).values().get(k);
            Double held = curves.curves().get(1).values().get(k);
            if (moving != null && held != null) {
                greatest = Math.max(greatest, Math.abs(moving - held));
            }
        }
        assertEquals(expected, greatest, 0.002 * expected);
    }

    /** OpenStax College Physics, section 9.6: 490 N, the mass centre rises 0.240 m of a push-up, 118 J. */
    @Test
    void pushUpTakesItsWeightTimesTheRiseOfItsMassCentre() {
        Lifter presser = lifter("As in the book").of(FEMALE, cm(165), kg(490 / 9.80665));
        Repetition press = repetition(pushUp().by(presser)).through(ELBOW_FLEXION, deg(0), deg(80));
        double work = press.liftingWork().value().si();
        var up = press.performance().withSi(ELBOW_FLEXION, 0).posture().mechanism();
        var down = press.performance()
                .withSi(ELBOW_FLEXION, deg(80).si())
                .posture()
                .mechanism();
        double rise = up.solved().solution().massCentre().orElseThrow().y()
                - down.solved().solution().massCentre().orElseThrow().y();
        assertEquals(118 / 0.240 * rise, work, 0.005 * work);
        assertTrue(press.energies().residual() < 1e-6, press.energies().toString());
    }

    /** A bar of 30 ± 2 kg: every result lies between those of 28 and 32 kg, which are its ends, since all grow with the bar. */
    @Test
    void bandsOfInputsAreCarriedIntoMotion() {
        Repetition unsure = squatWith(kg(30).plusOrMinus(kg(2)));
        Repetition light = squatWith(kg(28));
        Repetition heavy = squatWith(kg(32));
        assertEquals(
                light.peakMoment(HIP).value().si(), unsure.peakMoment(HIP).low().si(), 1e-9);
        assertEquals(
                heavy.peakMoment(HIP).value().si(),
                unsure.peakMoment(HIP).high().si(),
                1e-9);
        assertEquals(
                heavy.liftingWork().value().si(), unsure.liftingWork().high().si(), 1e-9);
        assertEquals(
                light.positiveJointWork().value().si(),
                unsure.positiveJointWork().low().si(),
                1e-9);
        Curves.Curve hip = unsure.moments(HIP).curves().get(0);
        Curves.Curve above = heavy.moments(HIP).curves().get(0);
        for (int k = 0; k < hip.values().size(); k++) {
            assertEquals(above.values().get(k), hip.high().get(k), 1e-9);
        }
    }

    private static Repetition squatWith(Mass bar) {
        return repetition(backSquat().barbell(bar).by(INES))
                .through(THIGH_ABOVE_LEVEL, deg(60), deg(20))
                .tempo(seconds(1), seconds(1));
    }

    @Test
    void waysThatAreNotThereAreToldInWords() {
        var of = repetition(backSquat().barbell(kg(60)).by(INES));
        assertTrue(
                message(() -> of.through(THIGH_ABOVE_LEVEL, deg(10), deg(10))).contains("two different"));
        assertTrue(
                message(() -> of.through(THIGH_ABOVE_LEVEL, deg(200), deg(10))).contains("allowed"));
        assertTrue(message(() -> SQUAT.tempo(seconds(0.01), seconds(1))).contains("0.1 s"));
        var upright = repetition(backSquat().barbell(kg(60)).torsoLean(deg(90)).by(INES))
                .through(THIGH_ABOVE_LEVEL, deg(90), deg(-40));
        assertTrue(message(upright::energies).contains("Thigh above level at"), message(upright::energies));
    }

    @Test
    void workingsAndTablesGoWithEveryNumber() {
        for (var answer : List.of(SQUAT.peakMoment(HIP), SQUAT.inertiaShare(HIP), SQUAT.negativeJointWork())) {
            assertEquals(answer.value().si(), answer.working().last().value());
            assertTrue(answer.notes().stream().anyMatch(note -> note.contains("holding costs energy")));
        }
        assertTrue(SQUAT.energyAccount().rows().size() > 5);
        assertEquals(2, SQUAT.powers(HIP, KNEE).curves().size());
        assertEquals(1, SQUAT.setting().curves().size());
    }

    private static String message(org.junit.jupiter.api.function.Executable what) {
        return String.valueOf(assertThrows(IllegalArgumentException.class, what).getMessage());
    }

    /** A stack's inertia about the knee: stack·wheel² besides the leg's own, minimum jerk's greatest acceleration. */
    @Test
    void aStackPullsWithItsOwnAcceleration() {
        Repetition heavy = repetition(
                        kneeExtension().stack(kg(60)).wheelArm(cm(15)).by(INES))
                .through(KNEE_FLEXION, deg(90), deg(10))
                .tempo(seconds(0.6), seconds(1.5));
        Repetition light = repetition(
                        kneeExtension().stack(kg(0)).wheelArm(cm(15)).by(INES))
                .through(KNEE_FLEXION, deg(90), deg(10))
                .tempo(seconds(0.6), seconds(1.5));
        double alpha = 10 / Math.sqrt(3) * deg(80).si() / (0.6 * 0.6);
        double expected = 60 * 0.15 * 0.15 * alpha / 2;
        assertEquals(expected, inertia(heavy) - inertia(light), 0.01 * expected);
        assertTrue(heavy.energies().residual() < 1e-6, heavy.energies().toString());
        // a stack of 60 kg is lifted by 15 cm times the turn
        double lifted = 60 * 9.80665 * 0.15 * deg(80).si();
        double both =
                heavy.liftingWork().value().si() - light.liftingWork().value().si();
        assertEquals(lifted, both, 0.002 * lifted);
    }

    private static double inertia(Repetition repetition) {
        Curves curves = repetition.moments(KNEE);
        double greatest = 0;
        for (int k = 0; k < curves.axis().values().size(); k++) {
            Double moving = curves.curves().get(0).values().get(k);
            Double held = curves.curves().get(1).values().get(k);
            if (moving != null && held != null) {
                greatest = Math.max(greatest, moving - held);
            }
        }
        return greatest;
    }

    /** A cell's own exercise with a load that depends on the way: a curl against a band with a return branch. */
    @Test
    void aBandTakesMoreWorkThanItGivesBack() {
        Band band = Resistances.band(cm(40))
                .stretched(cm(40), newtons(60))
                .stretched(cm(150), newtons(160))
                .returned(cm(40), newtons(52))
                .returned(cm(150), newtons(155));
        var curl = exercise("Band curl")
                .standing()
                .bend(ELBOW, ELBOW_FLEXION)
                .load(new LineLoad("hand", Place.along(0.08), new Vector(0.1, 0), band))
                .path(ELBOW_FLEXION, deg(20), deg(120));
        Repetition repetition = repetition(curl.by(INES))
                .through(ELBOW_FLEXION, deg(20), deg(120))
                .tempo(seconds(1), seconds(1));
        Energies energies = repetition.energies();
        assertTrue(energies.residual() < 1e-6, energies.toString());
        assertTrue(energies.heat() > 0.5, energies.toString());
        assertEquals(energies.heat(), energies.lifting() + energies.lowering(), 1e-6 * energies.lifting());
        assertTrue(repetition.energyAccount().notes().toString().contains("changes from one measured branch"));
    }
}
