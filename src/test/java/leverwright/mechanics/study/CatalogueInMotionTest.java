package leverwright.mechanics.study;

import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.ratio;
import static leverwright.mechanics.measure.Measures.seconds;
import static leverwright.mechanics.study.Studies.repetition;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.exercise.Catalogue;
import leverwright.mechanics.exercise.Course;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Mechanism;
import leverwright.mechanics.exercise.SetupKnobs;
import leverwright.mechanics.motion.Energies;
import org.junit.jupiter.api.Test;

/** Every exercise of the catalogue that tells its way can be moved along it, and its energy account closes. */
class CatalogueInMotionTest {
    private static final Lifter INES = lifter("Ines").of(FEMALE, cm(172), kg(68));

    @Test
    void everyWayOfTheCatalogueCanBeMovedAndClosesItsEnergy() {
        List<String> open = new ArrayList<>();
        int moved = 0;
        for (Exercise<?> exercise : Catalogue.exercises()) {
            if (exercise.course().isEmpty()) {
                continue;
            }
            Repetition repetition = repetition(exercise.by(INES)).alongItsWay().tempo(seconds(1.5), seconds(1.2));
            Energies energies = repetition.energies();
            moved++;
            if (!(energies.residual() < 1e-6)) {
                open.add(exercise.name() + ": " + energies);
            }
        }
        assertTrue(open.isEmpty(), String.join("\n", open));
        assertTrue(moved >= 2, "moved " + moved);
    }

    /** The linkage of a posture gives the moments that the posture reports, for every joint that has an answer. */
    @Test
    void theLinkageOfEveryExerciseReportsTheSameMoments() {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            HeldPosture held = exercise.by(INES).posture();
            Mechanism mechanism = held.mechanism();
            var solved = mechanism.solved();
            for (Joint joint : mechanism.joints().keySet()) {
                double reported = held.moment(joint).value().si();
                assertEquals(
                        reported,
                        mechanism.reported(joint, solved),
                        1e-9 * (1 + solved.scale()),
                        exercise.name() + ", " + joint);
            }
        }
    }

    /** In a leg press the sled accelerates, and its rail takes friction both ways: heat = 2·μ·m·g·cos(rail)·way. */
    @Test
    void theSledOfALegPressMovesAndRubs() {
        Exercise<?> press = Catalogue.named("Leg press").with(SetupKnobs.RAIL_FRICTION, ratio(0.1));
        Repetition repetition = repetition(press.by(INES)).alongItsWay().tempo(seconds(1), seconds(1));
        Energies energies = repetition.energies();
        double mass =
                press.get(SetupKnobs.SLED).si() + press.get(SetupKnobs.PLATES).si();
        double rail = press.get(SetupKnobs.RAIL).si();
        double friction = press.get(SetupKnobs.RAIL_FRICTION).si();
        assertTrue(friction > 0 && energies.heat() > 0);
        assertEquals(energies.heat(), energies.lifting() + energies.lowering(), 1e-6 * energies.lifting());
        double way = energies.heat() / (2 * friction * mass * 9.80665 * Math.cos(rail));
        Course course = press.course().orElseThrow();
        var first = press.by(INES)
                .withSi(course.knob(), course.from())
                .posture()
                .mechanism()
                .solved();
        var last = press.by(INES)
                .withSi(course.knob(), course.to())
                .posture()
                .mechanism()
                .solved();
        int shank = first.linkage().indexOf("shank");
        double x = last.startX(shank) - first.startX(shank);
        double y = last.startY(shank) - first.startY(shank);
        assertEquals(Math.sqrt(x * x + y * y), way, 1e-6);
    }

    /** A cable's stack takes part in the motion: its share of inertia grows with it, though the hand's path stays. */
    @Test
    void aCablesStackTakesPartInTheMotion() {
        Exercise<?> pull = Catalogue.named("Seated cable row");
        Repetition quick = repetition(pull.by(INES)).alongItsWay().tempo(seconds(0.8), seconds(0.8));
        // by hand: the stack's share is stack·a over stack·g, and minimum jerk's greatest acceleration is far from 0
        double motion = 0;
        double held = 0;
        var curves = quick.moments(Joint.SHOULDER).curves();
        for (int k = 0; k < curves.get(0).values().size(); k++) {
            Double now = curves.get(0).values().get(k);
            Double still = curves.get(1).values().get(k);
            if (now != null && still != null) {
                motion = Math.max(motion, Math.abs(now - still));
                held = Math.max(held, Math.abs(still));
            }
        }
        assertTrue(motion > 0.15 * held, motion + " of " + held);
        Repetition thrown = repetition(pull.by(INES)).alongItsWay().tempo(seconds(0.4), seconds(0.4));
        String slack = String.valueOf(
                assertThrows(IllegalArgumentException.class, thrown::energies).getMessage());
        assertTrue(slack.contains("goes slack"), slack);
    }
}
