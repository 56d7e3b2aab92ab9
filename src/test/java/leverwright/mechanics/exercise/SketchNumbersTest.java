package leverwright.mechanics.exercise;

import static leverwright.mechanics.body.Joint.ANKLE;
import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Joint.SHOULDER;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import leverwright.mechanics.body.Landmark;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.SegmentTable;
import leverwright.mechanics.body.Sex;
import org.junit.jupiter.api.Test;

/**
 * A hinge computed beforehand by a separate short program in another language, with inputs of its own: a check of the code,
 * not of the model. Printed there with two decimals.
 */
class SketchNumbersTest {
    private static final double HALF_CENT = 0.005;

    static Lifter lifter() {
        double hand = 0.108 * 1.78;
        return Lifter.lifter("Sculler")
                .of(Sex.FEMALE, m(1.78), kg(71))
                .segments(SegmentTable.WINTER)
                .foot(cm(25))
                .ankleFromHeel(cm(5.5))
                .ankleHeight(cm(8))
                .centre(Segment.FOOT, cm(11))
                .place(Landmark.FOOT_CENTRE_HEIGHT, cm(3.5))
                .centre(Segment.HAND, m(0.506 * hand))
                .place(Landmark.GRIP_FROM_WRIST, m(0.5 * hand));
    }

    static RomanianDeadlift hinge() {
        return romanianDeadlift().barbell(kg(50)).shankLean(deg(4)).torsoLean(deg(45));
    }

    @Test
    void hingeWithTheBarAheadGivesTheNumbersOfTheSeparateProgram() {
        HeldPosture held = hinge().barAhead(cm(3)).by(lifter()).posture();
        assertEquals(-25.97, held.lean(Segment.THIGH).value().degrees(), HALF_CENT);
        assertEquals(-8.54, held.lean(Segment.UPPER_ARM).value().degrees(), HALF_CENT);
        assertEquals(123.04, held.moment(HIP).value().si(), HALF_CENT);
        assertEquals(-23.59, held.moment(KNEE).value().si(), HALF_CENT);
        assertEquals(40.98, held.moment(ANKLE).value().si(), HALF_CENT);
        assertEquals(-26.60, held.flexionMoment(SHOULDER).value().si(), HALF_CENT);
        assertEquals(Standing.BALANCED, held.standing());
        assertTrue(held.bothCuts().agree(), held.bothCuts().words());
    }

    @Test
    void plumbArmsRaiseTheHipMoment() {
        HeldPosture held = hinge().plumbArms().by(lifter()).posture();
        assertEquals(149.6, held.moment(HIP).value().si(), 0.05);
        assertEquals(0, held.moment(SHOULDER).value().si(), 1e-9);
    }
}
