package leverwright.mechanics.exercise;

import static leverwright.mechanics.body.Joint.ELBOW;
import static leverwright.mechanics.body.Joint.SHOULDER;
import static leverwright.mechanics.body.Joint.WRIST;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.exercise.Exercises.dumbbellCurl;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.grams;
import static leverwright.mechanics.measure.Measures.inches;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.lb;
import static leverwright.mechanics.measure.Measures.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import leverwright.mechanics.body.Landmark;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.SegmentTable;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.working.PrintedWorkings;
import leverwright.mechanics.working.Sketch;
import org.junit.jupiter.api.Test;

class DumbbellCurlTest {
    private static final double G = 9.80665;

    /** A lifter whose forearm with hand has a given mass and centre a side, and whose grip lies a given way from the elbow. */
    private static Lifter withForearm(Mass mass, Length centre, Length grip) {
        double hand = Math.min(0.001, mass.si() / 10);
        double forearm = mass.si() - hand;
        double length = grip.si() - 0.05;
        double handCentre = 0.05;
        double forearmCentre = (mass.si() * centre.si() - hand * (length + handCentre)) / forearm;
        return lifter("Textbook")
                .of(Sex.MALE, cm(175), kg(75))
                .segments(SegmentTable.WINTER)
                .forearm(m(length))
                .mass(Segment.FOREARM, kg(forearm))
                .centre(Segment.FOREARM, m(forearmCentre))
                .mass(Segment.HAND, kg(hand))
                .centre(Segment.HAND, m(handCentre))
                .place(Landmark.GRIP_FROM_WRIST, m(0.05));
    }

    private static double flexion(DumbbellCurl curl, Lifter lifter) {
        return curl.by(lifter).posture().flexionMoment(ELBOW).value().si();
    }

    /**
     * OpenStax, College Physics, example 9.4: forearm with hand 2.50 kg at 16.0 cm, book 4.00 kg at 38.0 cm, biceps at 4.00 cm:
     * 470 N, 7.38 times the weight held up, and 407 N down on the elbow. The book takes g = 9.80 m/s².
     */
    @Test
    void openStaxArmHoldingABook() {
        Lifter lifter = withForearm(kg(2.5), cm(16), cm(38));
        double moment = flexion(dumbbellCurl().dumbbells(kg(4)).elbowFlexion(deg(90)), lifter) * 9.80 / G;
        double biceps = moment / 0.0400;
        assertEquals(470, biceps, 0.5);
        assertEquals(7.38, biceps / (6.5 * 9.80), 0.005);
        assertEquals(407, biceps - 6.5 * 9.80, 0.5);
    }

    /**
     * OpenStax, University Physics 1, example 12.4: 50.0 lb at 13.0 in, forearm at 60° to the upper arm and without weight,
     * vertical biceps at 1.5 in along the forearm: 433.3 lb up, 383.3 lb down on the elbow. Both arms shrink by the same sine.
     */
    @Test
    void universityPhysicsForearm() {
        Lifter lifter = withForearm(grams(1e-6), inches(6), inches(13));
        double moment = flexion(dumbbellCurl().dumbbells(lb(50)).elbowFlexion(deg(120)), lifter);
        double bicepsArm = inches(1.5).si() * Math.sin(Math.toRadians(60));
        double pounds = moment / bicepsArm / (0.45359237 * G);
        assertEquals(433.3, pounds, 0.05);
        assertEquals(383.3, pounds - 50, 0.05);
    }

    /**
     * The same, check your understanding 12.4: a forearm of 8.896 N with its centre at 6.0 in gives 1963 N and 1732 N at
     * 4.448 N to the pound.
     */
    @Test
    void universityPhysicsForearmWithWeight() {
        double held = 50 * 4.448 / G;
        double arm = 8.896 / G;
        Lifter lifter = withForearm(kg(arm), inches(6), inches(13));
        double moment = flexion(dumbbellCurl().dumbbells(kg(held)).elbowFlexion(deg(120)), lifter);
        double biceps = moment / (inches(1.5).si() * Math.sin(Math.toRadians(60)));
        assertEquals(1963, biceps, 0.5);
        assertEquals(1732, biceps - 50 * 4.448 - 8.896, 0.5);
    }

    /** By hand, upper arm 30° ahead, elbow at 60°, so that the forearm is level: wrist, elbow, shoulder a side. */
    @Test
    void armByHand() {
        Lifter lifter = withForearm(kg(2), cm(15), cm(35))
                .upperArm(cm(30))
                .mass(Segment.UPPER_ARM, kg(2.5))
                .centre(Segment.UPPER_ARM, cm(13));
        HeldPosture held = dumbbellCurl()
                .dumbbells(kg(10))
                .upperArmLean(deg(30))
                .elbowFlexion(deg(60))
                .by(lifter)
                .posture();
        double elbow = (2 * 0.15 + 10 * 0.35) * G;
        assertEquals(elbow, held.flexionMoment(ELBOW).value().si(), 1e-9);
        double shoulder = elbow + (12 * 0.30 * 0.5 + 2.5 * 0.13 * 0.5) * G;
        assertEquals(shoulder, held.flexionMoment(SHOULDER).value().si(), 1e-9);
        assertEquals(
                (10 * 0.05 + 0.001 * 0.05) * G,
                held.flexionMoment(WRIST).value().si(),
                1e-9);
        assertTrue(held.bothCuts().agree(), held.bothCuts().words());
    }

    @Test
    void theStraightLegsLeanUntilThePressureIsAtMidFoot() {
        Lifter lifter = lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));
        HeldPosture light = dumbbellCurl().dumbbells(kg(0)).by(lifter).posture();
        HeldPosture heavy = dumbbellCurl().dumbbells(kg(15)).by(lifter).posture();
        double foot = lifter.body().segment(Segment.FOOT).length();
        assertEquals(Standing.BALANCED, heavy.standing());
        assertEquals(foot / 2, heavy.pressure().value().si(), 1e-9);
        assertTrue(heavy.lean(Segment.SHANK).value().si()
                < light.lean(Segment.SHANK).value().si());
        assertEquals(
                heavy.lean(Segment.SHANK).value().si(),
                heavy.lean(Segment.THIGH).value().si(),
                1e-12);
        assertTrue(heavy.sketch(ELBOW).shapes().size() > 10);
    }

    @Test
    void theLeverAndTheFigureGiveTheArmOfTheCurlWithoutASign() {
        Lifter lifter = lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));
        HeldPosture held = dumbbellCurl()
                .dumbbells(kg(10))
                .elbowFlexion(deg(90))
                .by(lifter)
                .posture();
        LeverView view = held.leverView(ELBOW);
        assertEquals("elbow flexion", view.action());
        assertEquals(-held.loadArm(ELBOW).value().si(), view.loadArm().value().si());
        assertEquals(-held.moment(ELBOW).value().si(), view.moment().value().si());
        assertTrue(view.moment().value().si() > 0);
        assertEquals("elbow flexion moment", view.moment().label());
        PrintedWorkings.check(view.loadArm().working(), view.loadArm().value().si());
        PrintedWorkings.check(view.moment().working(), view.moment().value().si());
        assertTrue(held.sketch(ELBOW).shapes().stream()
                .filter(Sketch.LoadArm.class::isInstance)
                .map(shape -> ((Sketch.LoadArm) shape).label())
                .allMatch(label -> label.matches("elbow \\d+\\.\\d+ cm")));
    }

    /** The polynomial of the biceps' arm, read at 90°: 4.71 cm (table of its values). */
    @Test
    void theBicepsIsTheMuscleOfTheLever() {
        LeverView view = dumbbellCurl()
                .dumbbells(kg(10))
                .by(lifter("Ines").of(Sex.FEMALE, cm(178), kg(71)))
                .posture()
                .leverView(ELBOW);
        LeverView.Muscle muscle = view.muscle().orElseThrow();
        assertEquals("biceps", muscle.name());
        assertEquals(0.0471, muscle.arm().value().si(), 0.00005);
        assertEquals(
                view.moment().value().si() / muscle.arm().value().si(),
                muscle.force().value().si(),
                1e-9);
    }
}
