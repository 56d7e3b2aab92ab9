package leverwright.mechanics.study;

import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.seconds;
import static leverwright.mechanics.study.Studies.repetition;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.exercise.Catalogue;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Mechanism;
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
}
