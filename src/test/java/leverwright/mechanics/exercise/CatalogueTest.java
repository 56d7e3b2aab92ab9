package leverwright.mechanics.exercise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.SegmentTable;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.PrintedWorkings;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds for every exercise of the catalogue, at random settings and for random lifters. */
class CatalogueTest {
    private static final long SEED = 20261125L;
    private static final int SETTINGS = 25;
    /** Movements share their code, so that fewer settings of each go as far. */
    private static final int OF_A_MOVEMENT = 8;

    private static int settings(Exercise<?> exercise) {
        return exercise instanceof Movement ? OF_A_MOVEMENT : SETTINGS;
    }

    private final RandomStream random = new RandomStream(SEED);

    @Test
    @Tag("minute")
    void everyPrintedWorkingEvaluatesToTheNumberShown() {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            int lines = 0;
            for (HeldPosture held : randomPostures(exercise)) {
                for (Answer<?> answer : answers(held)) {
                    lines += PrintedWorkings.check(
                            answer.working(), answer.value().si());
                }
            }
            int least = exercise instanceof Movement ? 60 : 500;
            int seen = lines;
            assertTrue(seen >= least, () -> exercise + ": only " + seen + " lines, seed " + SEED);
        }
    }

    @Test
    void bothCutsOfEveryJointAgree() {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            for (HeldPosture held : randomPostures(exercise)) {
                if (held.bothCuts().made()) {
                    assertTrue(
                            held.bothCuts().agree(),
                            () -> exercise + ", seed " + SEED + ": "
                                    + held.bothCuts().words());
                }
            }
        }
    }

    @Test
    void solvingAgainGivesTheSameBits() {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            for (HeldPosture held : randomPostures(exercise)) {
                HeldPosture again = held.performance().posture();
                for (Joint joint : freeJoints(held)) {
                    assertEquals(
                            Double.doubleToRawLongBits(held.cut(joint).reported()),
                            Double.doubleToRawLongBits(again.cut(joint).reported()),
                            () -> exercise + ", " + joint);
                }
            }
        }
    }

    /** What was asked before must not show, or a cell computed alone would print other lines than a run from the top. */
    @Test
    void workingsDoNotDependOnWhatWasAskedBefore() {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            for (HeldPosture held : randomPostures(exercise)) {
                List<Joint> joints = freeJoints(held);
                for (int k = joints.size() - 1; k >= 0; k--) {
                    Joint joint = joints.get(k);
                    held.flexionMoment(joint);
                    HeldPosture fresh = held.performance().posture();
                    assertEquals(
                            fresh.moment(joint).working(), held.moment(joint).working());
                    assertEquals(
                            fresh.loadArm(joint).working(), held.loadArm(joint).working());
                }
            }
        }
    }

    @Test
    void everyKnobSaysWhatItMeansAndHoldsItsRange() {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            for (Knob<?> knob : exercise.knobs()) {
                assertFalse(knob.meaning().isBlank());
                assertFalse(knob.reason().isBlank());
                Performance performance = exercise.by(ines());
                double beyond = knob.most().si()
                        + 1e-3 * (knob.most().si() - knob.least().si());
                String message = assertThrows(IllegalArgumentException.class, () -> performance.withSi(knob, beyond))
                        .getMessage();
                assertTrue(message.contains(knob.name()) && message.contains(knob.range()), message);
                assertThrows(IllegalArgumentException.class, () -> performance.withSi(knob, Double.NaN));
            }
        }
    }

    @Test
    void everyExerciseSaysWhatFollowsWhatIsAssumedAndItsCautions() {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            assertFalse(exercise.follows().isBlank());
            assertFalse(exercise.assumptions().isEmpty());
            assertTrue(exercise.cautions().contains(Cautions.GENERAL));
            assertEquals(exercise, Catalogue.named(exercise.name()));
            assertFalse(exercise.by(ines()).posture().sketch().shapes().isEmpty());
        }
    }

    private static Lifter ines() {
        return Lifter.lifter("Ines").of(Sex.FEMALE, Measures.cm(178), Measures.kg(71));
    }

    private Lifter lifter() {
        Sex sex = random.nextIndex(2) == 0 ? Sex.FEMALE : Sex.MALE;
        SegmentTable table = random.nextIndex(2) == 0 ? SegmentTable.DE_LEVA : SegmentTable.WINTER;
        return Lifter.lifter("Random")
                .of(sex, Measures.m(random.nextBetween(1.5, 2)), Measures.kg(random.nextBetween(50, 110)))
                .segments(table);
    }

    private List<HeldPosture> randomPostures(Exercise<?> exercise) {
        List<HeldPosture> postures = new ArrayList<>();
        for (int k = 0; k < settings(exercise); k++) {
            Performance performance = exercise.by(lifter());
            for (Knob<?> knob : exercise.knobs()) {
                if (random.nextIndex(2) == 0 && !Stance.ANGLES.contains(knob)) {
                    performance = performance.withSi(
                            knob,
                            random.nextBetween(knob.least().si(), knob.most().si()));
                }
            }
            performance = withTwoAngles(performance);
            if (exercise.keepsSidesApart() && k % 2 == 1) {
                performance = performance.otherSide();
            }
            try {
                postures.add(performance.posture());
            } catch (IllegalArgumentException impossible) {
                assertFalse(String.valueOf(impossible.getMessage()).isBlank());
            }
        }
        assertTrue(
                postures.size() >= (exercise instanceof Movement ? 1 : 3),
                () -> exercise + ": " + postures.size() + " possible postures, seed " + SEED);
        return postures;
    }

    /** Sets two of the angles of legs and trunk at random, where the exercise has them. */
    private Performance withTwoAngles(Performance performance) {
        List<Knob<?>> angles = new ArrayList<>(Stance.ANGLES);
        angles.removeIf(knob -> !performance.exercise().knobs().contains(knob));
        Performance set = performance;
        for (int k = 0; k < 2 && !angles.isEmpty(); k++) {
            Knob<?> knob = angles.remove(random.nextIndex(angles.size()));
            set = set.withSi(
                    knob, random.nextBetween(knob.least().si(), knob.most().si()));
        }
        return set;
    }

    private static List<Joint> freeJoints(HeldPosture held) {
        List<Joint> free = new ArrayList<>();
        for (Joint joint : Joint.values()) {
            try {
                held.cut(joint);
                free.add(joint);
            } catch (IllegalArgumentException seated) {
                assertTrue(held.standing() == Standing.SUPPORTED);
            }
        }
        return free;
    }

    private static boolean seenFromTheFloor(HeldPosture held, Joint joint) {
        try {
            double below = held.floorMomentSi(joint);
            assertEquals(
                    held.cut(joint).reported(),
                    below,
                    1e-8 * (1 + held.bothCuts().scale()),
                    held + ", " + joint);
            return true;
        } catch (IllegalArgumentException notFromTheFloor) {
            return false;
        }
    }

    private static List<Answer<?>> answers(HeldPosture held) {
        List<Answer<?>> answers = new ArrayList<>();
        for (Joint joint : freeJoints(held)) {
            answers.add(held.moment(joint));
            answers.add(held.flexionMoment(joint));
            answers.add(held.load(joint));
            answers.add(held.loadArm(joint));
            LeverView view = held.leverView(joint);
            answers.add(view.squareShare());
            answers.add(view.squareShareByTilt());
            view.muscle().ifPresent(muscle -> {
                answers.add(muscle.arm());
                answers.add(muscle.leverRatio());
                answers.add(muscle.force());
            });
            if (joint != Joint.LOW_BACK && joint != Joint.NECK) {
                answers.add(held.flexion(joint));
                answers.add(held.ownWeight(joint));
                answers.add(held.fromOutside(joint));
            }
            if (seenFromTheFloor(held, joint)) {
                answers.add(held.fromTheFloor(joint));
                answers.add(held.floorArm(joint));
            }
        }
        for (Segment segment : Segment.values()) {
            answers.add(held.lean(segment));
            if (!held.layout().parting().armsAlone()) {
                answers.add(held.reach(segment));
            }
        }
        if (held.standing() != Standing.SUPPORTED) {
            answers.add(held.pressure());
            answers.add(held.groundReaction());
        }
        return answers;
    }
}
