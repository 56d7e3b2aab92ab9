package leverwright.mechanics.study;

import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.exercise.Knobs.BAR_AHEAD;
import static leverwright.mechanics.exercise.Knobs.TORSO_LEAN;
import static leverwright.mechanics.exercise.Readings.moment;
import static leverwright.mechanics.exercise.Readings.tiltRule;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.study.Sweep.sweep;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.exercise.RomanianDeadlift;
import leverwright.mechanics.working.Curves;
import org.junit.jupiter.api.Test;

class SweepTest {
    private static final Lifter INES = lifter("Ines").of(FEMALE, cm(178), kg(71));
    private static final RomanianDeadlift HINGE =
            romanianDeadlift().barbell(kg(50)).barAhead(cm(3)).torsoLean(deg(45));

    @Test
    void readsEveryPostureOnTheWayAndMarksThePresentSetting() {
        Curves curves =
                sweep(TORSO_LEAN).from(deg(10)).to(deg(80)).of(HINGE.by(INES)).curves(moment(HIP), tiltRule(HIP));
        assertEquals(200, curves.axis().values().size());
        assertEquals(deg(45).si(), curves.current());
        Curves.Curve hip = curves.curves().get(0);
        for (int k = 0; k < 200; k += 37) {
            double lean = curves.axis().values().get(k);
            double alone = HINGE.by(INES)
                    .with(TORSO_LEAN, deg(0).with(lean, 0))
                    .posture()
                    .moment(HIP)
                    .value()
                    .si();
            assertEquals(alone, hip.values().get(k), 0.0);
        }
    }

    @Test
    void leavesGapsWhereTheArmsCannotReachAndSaysWhy() {
        Curves curves = sweep(BAR_AHEAD)
                .from(cm(0))
                .to(cm(60))
                .points(61)
                .of(HINGE.torsoLean(deg(10)).by(INES))
                .curves(moment(KNEE));
        assertNotNull(curves.curves().get(0).values().get(0));
        assertNull(curves.curves().get(0).values().get(60));
        assertTrue(
                curves.notes().stream().anyMatch(note -> note.startsWith("No value within")),
                curves.notes().toString());
    }

    @Test
    void drawsBandsWhereAnotherInputCarriesAnError() {
        Curves.Curve hip = sweep(TORSO_LEAN)
                .points(3)
                .from(deg(30))
                .to(deg(60))
                .of(HINGE.barbell(kg(50).plusOrMinus(kg(2))).by(INES))
                .curves(moment(HIP))
                .curves()
                .get(0);
        double low = HINGE.barbell(kg(48))
                .torsoLean(deg(30))
                .by(INES)
                .posture()
                .moment(HIP)
                .value()
                .si();
        assertEquals(low, hip.low().get(0), 1e-9);
    }

    @Test
    void refusesEndsThatDoNotRiseOrLeaveTheRange() {
        assertThrows(
                IllegalArgumentException.class,
                () -> sweep(TORSO_LEAN).from(deg(80)).to(deg(10)).of(HINGE.by(INES)));
        assertThrows(
                IllegalArgumentException.class,
                () -> sweep(TORSO_LEAN).to(deg(400)).of(HINGE.by(INES)));
        assertThrows(IllegalArgumentException.class, () -> sweep(TORSO_LEAN).points(1));
    }
}
