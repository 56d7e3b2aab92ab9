package leverwright.mechanics.study;

import static leverwright.mechanics.body.Joint.ANKLE;
import static leverwright.mechanics.body.Joint.ELBOW;
import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Joint.LOW_BACK;
import static leverwright.mechanics.body.Joint.SHOULDER;
import static leverwright.mechanics.body.Joint.WRIST;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Segment.FOOT;
import static leverwright.mechanics.body.Segment.SHANK;
import static leverwright.mechanics.body.Segment.THIGH;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Exercises.dumbbellCurl;
import static leverwright.mechanics.exercise.Exercises.exercise;
import static leverwright.mechanics.exercise.Exercises.frontSquat;
import static leverwright.mechanics.exercise.Exercises.pullUp;
import static leverwright.mechanics.exercise.Knobs.ELBOW_FLEXION;
import static leverwright.mechanics.exercise.Knobs.THIGH_ABOVE_LEVEL;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.seconds;
import static leverwright.mechanics.study.Studies.repetition;
import static leverwright.mechanics.study.Studies.whichEndMoves;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.equilibrium.Solution;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Movement;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.working.Curves;
import org.junit.jupiter.api.Test;

/** Open and closed chain: the far end of a limb moves, or the body does. */
class WhichEndMovesTest {
    private static final double G = 9.80665;
    private static final Lifter INES = lifter("Ines").of(FEMALE, cm(178), kg(71));

    /** A nanogram a limb: what is left of its weight is far below rounding. */
    private static Lifter massless(Segment... segments) {
        Lifter lifter = INES;
        for (Segment segment : segments) {
            lifter = lifter.mass(segment, Mass.of(1e-12));
        }
        return lifter;
    }

    /** The leg of a standing posture on a lifter who lies, everything turned by a quarter circle and the lean of the torso. */
    private static HeldPosture lying(HeldPosture stands, Lifter lifter, double torsoLean) {
        return exercise("Lying leg push")
                .lyingOnTheBack()
                .heldAt(Segment.TRUNK)
                .bend(HIP, stands.flexion(HIP).value())
                .bend(KNEE, stands.flexion(KNEE).value())
                .bend(ANKLE, stands.flexion(ANKLE).value())
                .forceOn(FOOT, stands.pressure().value())
                .pull(stands.groundReaction().value())
                .pullDirection(deg(180 + torsoLean))
                .by(lifter)
                .posture();
    }

    private static double si(HeldPosture held, Joint joint) {
        return held.moment(joint).value().si();
    }

    @Test
    void masslessLegsDoNotTellWhichEndMoves() {
        Lifter light = massless(FOOT, SHANK, THIGH);
        for (int lean = 20; lean <= 60; lean += 20) {
            HeldPosture stands =
                    backSquat().barbell(kg(60)).torsoLean(deg(lean)).by(light).posture();
            HeldPosture lies = lying(stands, light, lean);
            for (Joint joint : List.of(ANKLE, KNEE, HIP)) {
                assertEquals(
                        si(stands, joint), si(lies, joint), 1e-9 * (1 + Math.abs(si(stands, joint))), joint.words());
            }
        }
    }

    @Test
    void realLegsDifferByTheirOwnWeightAlone() {
        HeldPosture stands =
                backSquat().barbell(kg(60)).torsoLean(deg(40)).by(INES).posture();
        HeldPosture lies = lying(stands, INES, 40);
        for (Joint joint : List.of(ANKLE, KNEE, HIP)) {
            double own = lies.ownWeight(joint).value().si()
                    - stands.ownWeight(joint).value().si();
            assertEquals(own, si(lies, joint) - si(stands, joint), 1e-9, joint.words());
            assertTrue(Math.abs(own) > (joint == ANKLE ? 0.3 : 3), joint + ": " + own);
            assertEquals(
                    stands.fromOutside(joint).value().si(),
                    lies.fromOutside(joint).value().si(),
                    1e-9);
        }
    }

    /** From the open chain to the closed one: what the floor gives is given as a force to a leg that hangs, in the same posture. */
    @Test
    void theSamePostureHasTheSameMomentsWhicheverEndIsFixed() {
        for (int depth = 80; depth >= -20; depth -= 20) {
            HeldPosture stands = frontSquat()
                    .barbell(kg(40))
                    .thighAboveLevel(deg(depth))
                    .by(INES)
                    .posture();
            Movement hangs = exercise("Leg pushed")
                    .seated()
                    .heldAt(Segment.TRUNK)
                    .lean(Segment.TRUNK, stands.lean(Segment.TRUNK).value())
                    .lean(THIGH, stands.lean(THIGH).value())
                    .lean(SHANK, stands.lean(SHANK).value())
                    .lean(FOOT, deg(0))
                    .forceOn(FOOT, stands.pressure().value())
                    .pull(stands.groundReaction().value())
                    .pullDirection(deg(90));
            HeldPosture open = hangs.by(INES).posture();
            for (Joint joint : List.of(ANKLE, KNEE, HIP)) {
                assertEquals(si(stands, joint), si(open, joint), 1e-9, joint + " at " + depth);
            }
        }
        HeldPosture hanging = pullUp().elbowFlexion(deg(70)).by(INES).posture();
        HeldPosture pulls = exercise("Bar pulled down")
                .seated()
                .lean(Segment.TRUNK, hanging.lean(Segment.TRUNK).value())
                .lean(Segment.UPPER_ARM, hanging.lean(Segment.UPPER_ARM).value())
                .bend(ELBOW, deg(70))
                .forceOnHands()
                .pull(kg(71).weight())
                .pullDirection(deg(90))
                .by(INES)
                .posture();
        for (Joint joint : List.of(SHOULDER, ELBOW, WRIST)) {
            assertEquals(si(hanging, joint), si(pulls, joint), 1e-9, joint.words());
        }
    }

    /**
     * By hand. Open: 300 N square to a level shank, 40 cm from the knee, turn it by 120 N·m, 60 a side. Closed: 300 N straight up
     * through mid-foot, 13 cm ahead of a heel whose ankle stands 6 cm ahead of it, under a shank of 40 cm that leans 30° and so
     * brings the knee 20 cm ahead of the ankle: 300 N × (6 + 20 − 13) cm = 39 N·m, 19.5 a side.
     */
    @Test
    void masslessLegsGiveTheNumbersOfAHandCalculation() {
        Lifter light = massless(FOOT, SHANK)
                .shank(cm(40))
                .foot(cm(26))
                .ankleFromHeel(cm(6))
                .thigh(cm(40));
        HeldPosture open = exercise("Level shank")
                .seated()
                .heldAt(Segment.TRUNK, THIGH)
                .lean(SHANK, deg(-90))
                .forceOn(SHANK, cm(40))
                .pull(newtons(300))
                .pullDirection(deg(270))
                .by(light)
                .posture();
        assertEquals(60, si(open, KNEE), 1e-8);
        HeldPosture foot = exercise("Foot on a plate")
                .seated()
                .heldAt(Segment.TRUNK, THIGH)
                .lean(SHANK, deg(30))
                .lean(FOOT, deg(0))
                .forceOn(FOOT, cm(13))
                .pull(newtons(300))
                .pullDirection(deg(90))
                .by(light)
                .posture();
        assertEquals(19.5, si(foot, KNEE), 1e-8);
        HeldPosture stands = backSquat()
                .barbell(kg(0))
                .shankLean(deg(30))
                .thighAboveLevel(deg(40))
                .by(light)
                .posture();
        // the whole body stands on its feet: 71 kg instead of 300 N, the same arm
        assertEquals(71 * G * 0.13 / 2, si(stands, KNEE), 1e-8);
    }

    /** From below and from above: the floor's force and the leg's weight give what trunk and bar give. */
    @Test
    void theFloorsSideGivesTheSameMoments() {
        for (int depth = 80; depth >= -20; depth -= 10) {
            for (int lean = 10; lean <= 60; lean += 25) {
                HeldPosture held = backSquat()
                        .barbell(kg(60))
                        .thighAboveLevel(deg(depth))
                        .torsoLean(deg(lean))
                        .by(INES)
                        .posture();
                for (Joint joint : List.of(ANKLE, KNEE, HIP)) {
                    assertEquals(
                            si(held, joint), held.fromTheFloor(joint).value().si(), 1e-9, joint + " at " + depth);
                }
                double folded = -held.reach(THIGH).value().si()
                        - (held.reach(SHANK).value().si()
                                - held.pressure().value().si()
                                + ankleAhead(held));
                assertEquals(folded, held.floorArm(HIP).value().si(), 1e-12);
            }
        }
        HeldPosture pulled = exercise("Squat against a cable")
                .standing(THIGH_ABOVE_LEVEL, leverwright.mechanics.exercise.Knobs.TORSO_LEAN)
                .cableInHands(cm(150), cm(60))
                .stack(kg(15))
                .by(INES)
                .posture();
        for (Joint joint : List.of(ANKLE, KNEE, HIP)) {
            assertEquals(si(pulled, joint), pulled.fromTheFloor(joint).value().si(), 1e-9, joint.words());
        }
        assertThrows(IllegalArgumentException.class, () -> pulled.fromTheFloor(ELBOW));
        assertThrows(
                IllegalArgumentException.class,
                () -> pullUp().by(INES).posture().fromTheFloor(KNEE));
    }

    private static double ankleAhead(HeldPosture held) {
        return held.performance()
                .lifter()
                .body()
                .place(leverwright.mechanics.body.Landmark.ANKLE_FROM_HEEL)
                .si();
    }

    /** In motion: what is left of the moment beside own weight and inertia is the floor's force at its arm. */
    @Test
    void inMotionTheRestIsTheFloorsForceAtItsArm() {
        Repetition quick = repetition(backSquat().barbell(kg(60)).by(INES))
                .through(THIGH_ABOVE_LEVEL, deg(70), deg(0))
                .tempo(seconds(0.8), seconds(0.8));
        for (Joint joint : List.of(ANKLE, KNEE, HIP)) {
            Curves curves = quick.whichEndMoves(joint);
            List<Double> outside = curves.curves().get(1).values();
            for (int k = 0; k < outside.size(); k += 20) {
                assertEquals(floorsMoment(quick, joint, k), outside.get(k), 1e-8, joint + " at " + k);
            }
        }
        Curves curl = repetition(dumbbellCurl().dumbbells(kg(12)).by(INES))
                .through(ELBOW_FLEXION, deg(20), deg(120))
                .tempo(seconds(0.6), seconds(1))
                .whichEndMoves(ELBOW);
        double most = curl.curves().get(2).values().stream()
                .mapToDouble(Math::abs)
                .max()
                .orElseThrow();
        assertTrue(most > 1 && most < 10, "forearm and hand of one side alone: " + most);
        assertThrows(IllegalArgumentException.class, () -> quick.whichEndMoves(LOW_BACK));
    }

    private static double floorsMoment(Repetition repetition, Joint joint, int instant) {
        var state = repetition.stateAt(repetition.tempo().total() * instant / 200);
        var mechanism = repetition
                .performance()
                .with(THIGH_ABOVE_LEVEL, deg(70))
                .posture()
                .mechanism();
        int link = mechanism.linkage().indexOf(mechanism.joint(joint).link());
        Solution.Reaction floor = state.solver().solution().reactions().get(0);
        double x = floor.at().x() - state.solver().startX(link);
        double y = floor.at().y() - state.solver().startY(link);
        double turning = x * floor.force().y() - y * floor.force().x() + floor.couple();
        return turning * mechanism.joint(joint).sense() / 2;
    }

    @Test
    void theComparisonTellsWhatDiffers() {
        HeldPosture stands =
                backSquat().barbell(kg(60)).torsoLean(deg(40)).by(INES).posture();
        var listing = whichEndMoves(stands, lying(stands, INES, 40), KNEE, HIP);
        assertEquals(6, listing.rows().size());
        assertEquals("Which end moves", listing.title());
        assertEquals(List.of("what", "1: back squat", "2: lying leg push", "2 less 1"), listing.headings());
        assertThrows(IllegalArgumentException.class, () -> whichEndMoves(stands, stands));
        assertThrows(IllegalArgumentException.class, () -> stands.ownWeight(LOW_BACK));
    }
}
