package leverwright.mechanics.exercise;

import static leverwright.mechanics.body.Joint.ANKLE;
import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.exercise.Exercises.kneeExtension;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import leverwright.mechanics.body.Landmark;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.SegmentTable;
import leverwright.mechanics.body.Sex;
import org.junit.jupiter.api.Test;

class KneeExtensionTest {
    private static final double G = 9.80665;

    /** Round numbers: shank 4 kg with its centre 20 cm below the knee, foot 1 kg with its centre 5 cm ahead of the ankle. */
    private static Lifter lifterOfRoundNumbers() {
        return lifter("Round")
                .of(Sex.MALE, cm(180), kg(80))
                .segments(SegmentTable.WINTER)
                .shank(cm(45))
                .mass(Segment.SHANK, kg(4))
                .centre(Segment.SHANK, cm(20))
                .mass(Segment.FOOT, kg(1))
                .centre(Segment.FOOT, cm(11))
                .ankleFromHeel(cm(6))
                .ankleHeight(cm(8))
                .place(Landmark.FOOT_CENTRE_HEIGHT, cm(3));
    }

    private static double knee(KneeExtension exercise) {
        return exercise.by(lifterOfRoundNumbers())
                .posture()
                .moment(KNEE)
                .value()
                .si();
    }

    /**
     * By hand, shank hanging: 40 kg on a wheel of 15 cm give 40 · g · 0.15 = 58.84 N·m at the axis for both legs, whatever the
     * pad's distance; the foot adds 1 kg · g · 5 cm a side.
     */
    @Test
    void hangingShankByHand() {
        double expected = 40 * G * 0.15 / 2 + 1 * G * 0.05;
        assertEquals(29.91, expected, 0.005);
        for (double pad : new double[] {20, 34, 45}) {
            KneeExtension exercise =
                    kneeExtension().stack(kg(40)).wheelArm(cm(15)).pad(cm(pad)).kneeFlexion(deg(90));
            assertEquals(expected, knee(exercise), 1e-12);
        }
    }

    /**
     * By hand, shank level (straight knee): the foot points up; its centre lies 45 + 8 − 3 = 50 cm ahead of the knee. A side:
     * 4 kg · 20 cm + 1 kg · 50 cm = 1.3 kg·m.
     */
    @Test
    void levelShankByHand() {
        KneeExtension exercise =
                kneeExtension().padForce(newtons(200)).pad(cm(30)).kneeFlexion(deg(0));
        assertEquals(200 * 0.30 / 2 + 1.3 * G, knee(exercise), 1e-12);
    }

    /** Without a load the weights alone: 30° above hanging, a side 4·0.20·sin 30° + 1·(0.50·sin 30° + 0.05·cos 30°). */
    @Test
    void weightsOfTheLegAloneByHand() {
        KneeExtension exercise = kneeExtension().stack(kg(0)).kneeFlexion(deg(60));
        assertEquals((0.8 * 0.5 + 0.5 * 0.5 + 0.05 * Math.sqrt(0.75)) * G, knee(exercise), 1e-12);
    }

    @Test
    void anAlmostEvenLoadThroughTheRangeIsTheMachinesDoing() {
        KneeExtension exercise = kneeExtension().stack(kg(40));
        double straight = knee(exercise.kneeFlexion(deg(5)));
        double bent = knee(exercise.kneeFlexion(deg(95)));
        assertTrue(straight > bent, straight + " " + bent);
    }

    @Test
    void theSeatTakesNoPartAtKneeAndAnkle() {
        HeldPosture held = kneeExtension()
                .stack(kg(40))
                .kneeFlexion(deg(30))
                .by(lifterOfRoundNumbers())
                .posture();
        assertEquals(Standing.SUPPORTED, held.standing());
        assertTrue(held.bothCuts().agree(), held.bothCuts().words());
        // the foot is turned up by 60°: its centre 5·cos 60° + 5·sin 60° cm ahead of the ankle, falling: plantarflexing
        double arm = 0.05 * 0.5 + 0.05 * Math.sqrt(0.75);
        assertEquals(-arm * G, held.moment(ANKLE).value().si(), 1e-12);
        assertTrue(assertThrows(IllegalArgumentException.class, () -> held.moment(HIP))
                .getMessage()
                .contains("seat and backrest"));
        assertTrue(held.sketch(KNEE).shapes().size() > 10);
    }

    @Test
    void theQuadricepsIsTheMuscleOfTheLever() {
        LeverView view = kneeExtension()
                .stack(kg(40))
                .kneeFlexion(deg(50))
                .by(lifterOfRoundNumbers())
                .posture()
                .leverView(KNEE);
        LeverView.Muscle muscle = view.muscle().orElseThrow();
        // effective quadriceps arm of men at 50°: 31.5 mm, PMC4662057
        assertEquals(0.0315, muscle.arm().value().si(), 1e-12);
        assertEquals(view.moment().value().si() / 0.0315, muscle.force().value().si(), 1e-9);
        assertEquals(Math.sin(Math.toRadians(40)), view.squareShare().value().si(), 1e-12);
    }

    @Test
    void contradictionsAndAbsurdSettingsAreRefused() {
        assertThrows(ImpossibleSetting.class, () -> knee(kneeExtension().pad(cm(55))));
        KneeExtension both = kneeExtension().stack(kg(40)).with(Knobs.PAD_FORCE, newtons(100));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> knee(both))
                .getMessage()
                .contains("both set"));
        assertTrue(assertThrows(
                        IllegalArgumentException.class, () -> kneeExtension().kneeFlexion(deg(400)))
                .getMessage()
                .contains("Knee flexion is 400"));
        assertThrows(IllegalArgumentException.class, () -> kneeExtension().stack(kg(-1)));
    }
}
