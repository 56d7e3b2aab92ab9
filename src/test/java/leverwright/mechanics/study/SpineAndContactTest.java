package leverwright.mechanics.study;

import static leverwright.mechanics.body.Joint.ANKLE;
import static leverwright.mechanics.body.Joint.ELBOW;
import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Joint.LOW_BACK;
import static leverwright.mechanics.body.Joint.NECK;
import static leverwright.mechanics.body.Joint.SHOULDER;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Segment.FOREARM;
import static leverwright.mechanics.body.Segment.HAND;
import static leverwright.mechanics.body.Segment.UPPER_ARM;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.body.Sex.MALE;
import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Exercises.dumbbellCurl;
import static leverwright.mechanics.exercise.Exercises.kneeExtension;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.exercise.Knobs.KNEE_FLEXION;
import static leverwright.mechanics.exercise.Knobs.SHANK_LEAN;
import static leverwright.mechanics.exercise.Knobs.TORSO_LEAN;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtonMetres;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.percent;
import static leverwright.mechanics.measure.Measures.ratio;
import static leverwright.mechanics.study.Studies.compression;
import static leverwright.mechanics.study.Studies.contact;
import static leverwright.mechanics.study.Studies.contactForce;
import static leverwright.mechanics.study.Studies.shear;
import static leverwright.mechanics.study.Studies.spine;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listing;
import org.junit.jupiter.api.Test;

class SpineAndContactTest {
    private static final Lifter INES = lifter("Ines").of(FEMALE, cm(178), kg(71));
    private static final HeldPosture HINGE =
            romanianDeadlift().barbell(kg(50)).torsoLean(deg(45)).by(INES).posture();
    private static final HeldPosture SQUAT =
            backSquat().barbell(kg(60)).by(INES).posture();

    private static double value(Listing listing, String label) {
        return listing.answer(label).value().si();
    }

    /** OpenStax College Physics 2e, example 9.5 (g = 9.80): F_B = 4.20e3 N, F_V = 4.66e3 N, 38.0° above level. */
    @Test
    void liftingWithTheBackAsInTheTextbook() {
        double moment = 9.8 * (55 * 0.35 + 30 * 0.5);
        Listing back = spine().extensorArm(cm(8))
                .inclination(deg(0))
                .discTilt(deg(0))
                .of(newtons(0), newtons(833), newtonMetres(moment), deg(61));
        assertEquals(4.20e3, value(back, "force of the back's extensors"), 5);
        double across = value(back, "compression");
        double along = value(back, "forward shear");
        assertEquals(4.66e3, Math.hypot(across, along), 5);
        // the disc's normal stands 29° above level; the force turns from it by its shear, backward on the trunk
        assertEquals(38.0, 29 + Math.toDegrees(Math.atan2(along, across)), 0.05);
    }

    /** A bent back as a rod, 350 N and 200 N at its end, muscle at two thirds and 12°: T = 2.71 kN, R_x = 2.65 kN (fornoob.com). */
    @Test
    void bentBackAsARodAsInTheWorkedExample() {
        double length = 0.4;
        Listing back = spine().extensorArm(cm(100 * length * 2 / 3 * Math.sin(Math.toRadians(12))))
                .inclination(deg(12))
                .discTilt(deg(0))
                .of(newtons(0), newtons(550), newtonMetres(350 * length / 2 + 200 * length), deg(90));
        assertEquals(2710, value(back, "force of the back's extensors"), 5);
        assertEquals(2650, value(back, "compression"), 5);
        // shear: what is left of 550 N after the muscle's part, 550 − T·sin 12°
        assertEquals(550 - 2705.5 * Math.sin(Math.toRadians(12)), value(back, "forward shear"), 0.1);
    }

    @Test
    void inputsAndTheCriterionsCautionStandWithEveryResult() {
        Listing back = contact(HINGE, LOW_BACK);
        String notes = back.notes().toString();
        assertTrue(notes.contains("neither a safe limit nor an injury threshold"), notes);
        assertTrue(notes.contains("abdominal pressure 0") && notes.contains("co-contraction 0"), notes);
        assertEquals(3400, value(back, "design criterion, NIOSH"));
        assertTrue(compression(LOW_BACK).of(HINGE).notes().toString().contains("static estimate"));
        Curves curves = spine().through(HINGE.performance(), TORSO_LEAN, deg(10), deg(80));
        assertTrue(curves.curves().get(2).name().contains("3400 N"));
        assertTrue(curves.notes().toString().contains("design criterion"));
    }

    @Test
    void compressionFollowsItsInputs() {
        double usual = compression(LOW_BACK).si(HINGE);
        assertTrue(spine().extensorArm(cm(5)).compression().si(HINGE) > usual * 1.15);
        double moment = HINGE.moment(LOW_BACK).value().si();
        double more = spine().coContraction(percent(20)).compression().si(HINGE);
        // by hand: a fifth of the moment more on both sides
        double expected = 0.2 * moment * (Math.cos(Math.toRadians(5)) / 0.06 + 1 / 0.098);
        assertEquals(expected, more - usual, 1e-6 * expected);
        assertTrue(spine().pelvisShare(ratio(0)).shear().si(HINGE)
                < shear(LOW_BACK).si(HINGE));
    }

    /**
     * Cappozzo 1985: half squats with 0.8 to 1.6 body weights compress L3–L4 by 6 to 10 body weights, measured on motions of
     * two women and two men. Here the squat is held still at L5/S1 with thighs 45° above level: the same size, within a third.
     */
    @Test
    void squatsCompressTheBackAsMuchAsPublished() {
        Lifter man = lifter("A man of 75 kg").of(MALE, cm(175), kg(75));
        for (double[] row : new double[][] {{0.8, 6}, {1.6, 10}}) {
            HeldPosture held = backSquat()
                    .barbell(kg(row[0] * 75))
                    .thighAboveLevel(deg(45))
                    .torsoLean(deg(35))
                    .by(man)
                    .posture();
            double weights = compression(LOW_BACK).si(held) / (75 * 9.80665);
            assertEquals(row[1], weights, row[1] / 3, "bar of " + row[0] + " body weights");
        }
    }

    /** Giancoli, Physics, 7th edition, chapter 9, problem 34 (g = 9.8): F_M = 250 N, F_J = 240 N (two digits printed). */
    @Test
    void deltoidAndShoulderAsInTheTextbook() {
        Lifter book = lifter("As in the book")
                .of(MALE, cm(175), kg(75))
                .upperArm(cm(28))
                .centre(UPPER_ARM, cm(14))
                .mass(UPPER_ARM, kg(2.1))
                .forearm(cm(20))
                .centre(FOREARM, cm(8))
                .mass(FOREARM, kg(0.9))
                .hand(cm(19))
                .centre(HAND, cm(10))
                .mass(HAND, kg(0.3));
        HeldPosture held = dumbbellCurl()
                .dumbbells(kg(0))
                .upperArmLean(deg(90))
                .elbowFlexion(deg(0))
                .torsoLean(deg(0))
                .by(book)
                .posture();
        assertEquals(250, held.muscleForce(SHOULDER).value().si(), 2.5);
        assertEquals(243.5, contactForce(SHOULDER).si(held), 2.5);
    }

    /** OpenStax College Physics 2e, section 9.6: with the forearm level the elbow bears muscle less weights, F_E = F_B − w. */
    @Test
    void elbowBearsMuscleLessWeights() {
        HeldPosture held = dumbbellCurl()
                .dumbbells(kg(8))
                .elbowFlexion(deg(90))
                .torsoLean(deg(0))
                .by(INES)
                .posture();
        double weights = held.load(ELBOW).value().si() / 2;
        double muscle = held.muscleForce(ELBOW).value().si();
        assertEquals(muscle - weights, contactForce(ELBOW).si(held), 1e-9);
        assertEquals(muscle - weights, compression(ELBOW).si(held), 1e-9);
    }

    /** The knee's two arms: PMC7547162 for the tendon, PMC4662057 for the muscle. */
    @Test
    void kneeUsesTheTendonsArmForContactAndTheEffectiveArmForTheMuscle() {
        HeldPosture held =
                kneeExtension().stack(kg(40)).kneeFlexion(deg(40)).by(INES).posture();
        double moment = held.moment(KNEE).value().si();
        Listing knee = contact(held, KNEE);
        assertEquals(moment / 0.03773, value(knee, "force of the patellar tendon"), 1e-6 * moment / 0.03773);
        double effective = 0.0455 + (0.0329 - 0.0455) * 30 / 40;
        assertEquals(moment / effective, held.muscleForce(KNEE).value().si(), 1e-6 * moment / effective);
        assertEquals(0.03618, Contact.tendonArm(Math.toRadians(90)), 1e-12);
        assertTrue(contact(SQUAT, KNEE).notes().toString().contains("extrapolation"));
    }

    /** Wilk 1996: the open knee extension near straight pushes the shank forward, the squat does not. Ordering only. */
    @Test
    void openKneeExtensionShearsForwardTheSquatBackward() {
        HeldPosture open =
                kneeExtension().stack(kg(30)).kneeFlexion(deg(15)).by(INES).posture();
        assertTrue(shear(KNEE).si(open) > 0);
        assertTrue(shear(KNEE).si(SQUAT) < shear(KNEE).si(open));
    }

    @Test
    void workingsEndInTheirValues() {
        for (Joint joint : List.of(ANKLE, KNEE, HIP, LOW_BACK)) {
            for (Answer<?> answer :
                    List.of(compression(joint).of(SQUAT), shear(joint).of(SQUAT))) {
                double printed = answer.working().last().expression().evaluate();
                assertEquals(answer.value().si(), printed, 1e-9 * (1 + Math.abs(printed)), answer.label());
            }
        }
        Answer<?> total = contactForce(HIP).of(SQUAT);
        assertEquals(total.value().si(), total.working().last().expression().evaluate(), 1e-6);
    }

    @Test
    void whatCannotBeEstimatedIsToldInWords() {
        assertTrue(message(() -> contact(SQUAT, NECK)).contains("no"));
        assertTrue(message(() -> spine().extensorArm(cm(1))).contains("allowed"));
        assertTrue(message(() -> spine().coContraction(ratio(2))).contains("allowed"));
        HeldPosture set = backSquat()
                .with(SHANK_LEAN, deg(0))
                .with(KNEE_FLEXION, deg(5))
                .torsoLean(deg(0))
                .by(INES)
                .posture();
        assertTrue(Double.isFinite(compression(LOW_BACK).si(set)));
    }

    private static String message(org.junit.jupiter.api.function.Executable what) {
        return String.valueOf(assertThrows(IllegalArgumentException.class, what).getMessage());
    }
}
