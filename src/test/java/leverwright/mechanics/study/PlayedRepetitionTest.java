package leverwright.mechanics.study;

import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.exercise.Knobs.TORSO_LEAN;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.seconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.exercise.Exercises;
import leverwright.mechanics.working.Sketch;
import org.junit.jupiter.api.Test;

/** The times of a repetition as a figure carries them. */
class PlayedRepetitionTest {

    private static final Sketch.Play PLAY = Studies.repetition(Exercises.romanianDeadlift()
                    .barbell(kg(50))
                    .torsoLean(deg(45))
                    .by(Lifter.lifter("Ines").of(FEMALE, cm(178), kg(71))))
            .through(TORSO_LEAN, deg(20), deg(60))
            .tempo(seconds(2), seconds(1))
            .pause(seconds(0.5))
            .play();

    /**
     * The way done is 10·τ³ − 15·τ⁴ + 6·τ⁵ (Flash and Hogan 1985, from memory): at a quarter of the time 106/1024, at half of it
     * one half.
     */
    @Test
    void eachWayIsMinimumJerkWithRestInThePauses() {
        assertEquals("Torso lean", PLAY.name());
        assertEquals("2 s out, 0.5 s pause, 1 s back", PLAY.words());
        assertEquals(3.5, PLAY.seconds(), 1e-12);
        double[][] expected = {
            {0, 20}, {0.5, 20 + 40 * 106.0 / 1024}, {1, 40}, {2, 60}, {2.3, 60}, {2.5, 60}, {3, 40}, {3.5, 20}, {9, 20}
        };
        for (double[] pair : expected) {
            assertEquals(Math.toRadians(pair[1]), PLAY.setting(pair[0]), 1e-12, pair[0] + " s");
        }
    }

    @Test
    void timesThatGoBackAreRefused() {
        List<Sketch.Beat> beats = List.of(new Sketch.Beat(1, 0), new Sketch.Beat(0.5, 0));
        assertThrows(IllegalArgumentException.class, () -> new Sketch.Play("lean", "", beats));
        assertThrows(IllegalArgumentException.class, () -> new Sketch.Play("lean", "", beats.subList(0, 1)));
    }
}
