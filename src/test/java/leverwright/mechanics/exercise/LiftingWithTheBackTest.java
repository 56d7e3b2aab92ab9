package leverwright.mechanics.exercise;

import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.m;
import static org.junit.jupiter.api.Assertions.assertEquals;

import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.Sex;
import org.junit.jupiter.api.Test;

/**
 * OpenStax, College Physics, example 9.5, lifting with the back bent level: upper body 55.0 kg with its mass centre 0.350 m
 * ahead of the pivot, box 30.0 kg at 0.500 m, back muscles at 0.0800 m: 4.20 kN, 5.04 times the weight held up. The book takes
 * g = 9.80 m/s², and its pivot, low in the spine, is the hip here: what lies beyond it is the same.
 */
class LiftingWithTheBackTest {
    private static final double BOOK_G = 9.80;
    private static final double G = 9.80665;

    /** Arms of 60 g together hang at the shoulder, 0.500 m ahead; the trunk's centre makes up for them. */
    private static Lifter textbook() {
        Lifter legs = lifter("Textbook")
                .of(Sex.MALE, cm(175), kg(100))
                .mass(Segment.THIGH, kg(15))
                .mass(Segment.SHANK, kg(6))
                .mass(Segment.FOOT, kg(1.5));
        return legs.mass(Segment.UPPER_ARM, kg(0.01))
                .mass(Segment.FOREARM, kg(0.01))
                .mass(Segment.HAND, kg(0.01))
                .trunk(cm(50))
                .centre(Segment.TRUNK, m((55 * 0.35 - 0.06 * 0.5) / 54.94));
    }

    @Test
    void theBackMusclesPullFiveTimesTheWeight() {
        HeldPosture held = romanianDeadlift()
                .barbell(kg(30))
                .torsoLean(deg(90))
                .plumbArms()
                .by(textbook())
                .posture();
        assertEquals(85, held.load(HIP).value().si() / G, 1e-9);
        double muscle = 2 * held.moment(HIP).value().si() / G * BOOK_G / 0.0800;
        assertEquals(4195.6, muscle, 0.05);
        assertEquals(5.04, muscle / (85 * BOOK_G), 0.005);
    }
}
