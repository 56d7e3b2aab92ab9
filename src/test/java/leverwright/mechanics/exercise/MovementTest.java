package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.posture.Place;
import leverwright.mechanics.working.PrintedWorkings;
import org.junit.jupiter.api.Test;

/** The words by which a cell makes an exercise of its own. */
class MovementTest {
    private static final double G = 9.80665;

    private final Lifter ines = Lifter.lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));

    private static Movement facePull() {
        return Exercises.exercise("Face pull")
                .standing()
                .lean(Segment.UPPER_ARM, deg(80))
                .bend(Joint.ELBOW, Knobs.ELBOW_FLEXION)
                .cableInHands(cm(120), cm(160))
                .path(Knobs.ELBOW_FLEXION, deg(10), deg(110))
                .drives(Joint.ELBOW)
                .trains("elbow flexors, shoulder extensors");
    }

    @Test
    void aFewLinesMakeAnExerciseWithAllReadings() {
        HeldPosture held = facePull().stack(kg(8)).by(ines).posture();
        assertEquals(Standing.BALANCED, held.standing());
        assertTrue(held.bothCuts().agree(), held.bothCuts().words());
        for (Joint joint : Joint.values()) {
            PrintedWorkings.check(
                    held.moment(joint).working(), held.moment(joint).value().si());
        }
        assertTrue(held.sketch(Joint.ELBOW).shapes().size() > 15);
    }

    /** By hand: tension times its arm about the elbow, and the weights of forearm and hand, all at their places. */
    @Test
    void theElbowBearsTheCableAndTheForearmsWeight() {
        HeldPosture held =
                facePull().stack(kg(20)).elbowFlexion(deg(90)).by(ines).posture();
        Layout layout = held.layout();
        double x = layout.gripX();
        double y = layout.gripY();
        double pull = 20 * G;
        double length = Math.hypot(1.2 - x, 1.6 - y);
        double forceX = pull * (1.2 - x) / length;
        double forceY = pull * (1.6 - y) / length;
        double elbowX = layout.jointX(Joint.ELBOW);
        double elbowY = layout.jointY(Joint.ELBOW);
        double moment = (x - elbowX) * forceY - (y - elbowY) * forceX;
        for (Segment segment : new Segment[] {Segment.FOREARM, Segment.HAND}) {
            moment -= layout.body().mass(segment) * G * (layout.centreX(segment) - elbowX);
        }
        // the upper arm holds against it; clockwise on the forearm counts as extension; per side
        assertEquals(moment / 2, held.moment(Joint.ELBOW).value().si(), 1e-9);
    }

    @Test
    void theDirectionOfPullTurnsAllTheWayRound() {
        Movement pressed =
                Exercises.exercise("Pressed").standing().forceOnHands().pull(newtons(200));
        double up = pressed.pullDirection(deg(90))
                .by(ines)
                .posture()
                .groundReaction()
                .value()
                .si();
        double down = pressed.pullDirection(deg(270))
                .by(ines)
                .posture()
                .groundReaction()
                .value()
                .si();
        assertEquals(400, down - up, 1e-9);
        assertEquals(71 * G, (up + down) / 2, 1e-9);
    }

    @Test
    void aKnobOfItsOwnWorksLikeAnyOther() {
        Knob<Length> box = Exercises.knob("Box", cm(0), cm(50), cm(20), "height of a box");
        Movement own = Exercises.exercise("Own").standing().knob(box);
        assertEquals(0.3, own.with(box, cm(30)).get(box).si(), 1e-12);
        String message = assertThrows(IllegalArgumentException.class, () -> own.with(box, cm(60)))
                .getMessage();
        assertTrue(message.contains("Box is 60 cm; allowed: 0 cm to 50 cm"), message);
    }

    @Test
    void aLoadOfTheLoadRoomSitsOnASegment() {
        Movement bare = Exercises.exercise("Held out").standing().lean(Segment.UPPER_ARM, deg(90));
        Movement loaded = bare.load(new MassLoad("hand", Place.along(0.08), 6));
        double more = loaded.by(ines)
                        .posture()
                        .flexionMoment(Joint.WRIST)
                        .value()
                        .si()
                - bare.by(ines).posture().flexionMoment(Joint.WRIST).value().si();
        assertEquals(6 * G * 0.08 / 2, more, 1e-9);
        String message = assertThrows(
                        IllegalArgumentException.class, () -> bare.load(new MassLoad("tail", Place.START, 1)))
                .getMessage();
        assertTrue(message.contains("allowed: foot, shank"), message);
    }

    @Test
    void wordsThatDoNotFitSayWhatToDo() {
        Movement stands = Exercises.exercise("Stands").standing();
        assertTrue(assertThrows(IllegalArgumentException.class, () -> stands.stack(kg(20)))
                .getMessage()
                .contains("no knob \"Stack\"; it has: "));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> stands.lean(Segment.SHANK, deg(5)))
                .getMessage()
                .contains("Shank lean"));
        assertTrue(assertThrows(
                        IllegalArgumentException.class, () -> stands.by(ines).otherSide())
                .getMessage()
                .contains("both sides are alike"));
        assertThrows(IllegalArgumentException.class, () -> stands.bend(Joint.NECK, deg(10)));
        assertThrows(IllegalArgumentException.class, () -> Exercises.exercise(" "));
    }

    @Test
    void exercisesWithOneNameButOtherLinesDiffer() {
        Movement one = Exercises.exercise("Same").standing().lean(Segment.UPPER_ARM, deg(80));
        Movement other = Exercises.exercise("Same").standing().lean(Segment.UPPER_ARM, deg(10));
        assertTrue(!one.equals(other));
        assertEquals(one, one.without(Knobs.PRESSURE));
    }

    @Test
    void seenFromTheFrontBothSidesCarryAlikeWhereTheyMirror() {
        HeldPosture held = Exercises.lateralRaise().dumbbells(kg(5)).by(ines).posture();
        HeldPosture other = held.otherSide();
        assertEquals(
                held.moment(Joint.SHOULDER).value().si(),
                other.moment(Joint.SHOULDER).value().si(),
                1e-12);
        assertEquals("shoulder abduction moment", held.moment(Joint.SHOULDER).label());
        assertEquals(
                "other shoulder abduction moment", other.moment(Joint.SHOULDER).label());
        assertEquals(0, held.moment(Joint.LOW_BACK).value().si(), 1e-9);
        // by hand, level arm: dumbbell at the grip, and each part's weight at its distance from the shoulder
        Skeleton body = new Skeleton(ines);
        double upper = body.length(Segment.UPPER_ARM);
        double fore = body.length(Segment.FOREARM);
        double moment = 5 * G * (upper + fore + body.gripAlong())
                + body.mass(Segment.UPPER_ARM) / 2 * G * body.centre(Segment.UPPER_ARM)
                + body.mass(Segment.FOREARM) / 2 * G * (upper + body.centre(Segment.FOREARM))
                + body.mass(Segment.HAND) / 2 * G * (upper + fore + body.centre(Segment.HAND));
        assertEquals(moment, held.moment(Joint.SHOULDER).value().si(), 1e-9);
    }
}
