package leverwright.mechanics.study;

import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Exercises.kneeExtension;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.exercise.Knobs.KNEE_FLEXION;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtonMetres;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.ratio;
import static leverwright.mechanics.measure.Measures.seconds;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.load.Direction;
import leverwright.mechanics.load.Resistance;
import leverwright.mechanics.load.Resistances;
import leverwright.mechanics.load.Travel;
import leverwright.mechanics.muscle.Axis;
import leverwright.mechanics.muscle.Muscle;
import leverwright.mechanics.muscle.MuscleGroup;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Listing;
import leverwright.mechanics.working.PrintedWorkings;
import org.junit.jupiter.api.Test;

/** Every working of loads, spine, contact, motion and match holds as printed, evaluated from its text by another library. */
class PrintedStudiesTest {
    private static final long SEED = 20261126;
    private final RandomStream random = new RandomStream(SEED);

    private double between(double least, double most) {
        return random.nextBetween(least, most);
    }

    @Test
    void resistancesAtRandomStates() {
        for (int k = 0; k < 60; k++) {
            List<Resistance> all = List.of(
                    Resistances.cable(kg(between(1, 200)))
                            .ratio(between(0.5, 4))
                            .efficiency(ratio(between(0.6, 1))),
                    Resistances.band(cm(between(20, 80)))
                            .stretched(cm(between(10, 60)), newtons(between(5, 90)))
                            .stretched(cm(between(150, 300)), newtons(between(91, 300))),
                    Resistances.chains(kg(between(2, 40)), cm(between(60, 250))),
                    Resistances.sled(kg(between(10, 400)), deg(between(25, 80))).friction(ratio(between(0, 0.2))),
                    Resistances.measured()
                            .lifted(cm(0), newtons(between(10, 300)))
                            .lifted(cm(300), newtons(between(10, 300)))
                            .movingMass(kg(between(0, 30))));
            Travel travel = Travel.moving(between(0.3, 1.2), between(-1, 1), between(-2, 2), 9.80665);
            for (Resistance resistance : all) {
                check(resistance.at(travel));
                check(resistance.at(Travel.slowly(0.8, Direction.HELD)));
            }
            check(Resistances.lever(kg(between(5, 90)), cm(between(5, 30)))
                    .weight("lever", kg(between(0, 12)), cm(between(5, 60)))
                    .counterweight(kg(between(0, 12)), cm(between(5, 60)))
                    .padForce(deg(between(0, 90)), cm(between(20, 45)), Direction.LIFTED));
        }
    }

    @Test
    void spineAndContactAtRandomPostures() {
        for (int k = 0; k < 25; k++) {
            Lifter lifter = lifter("Somebody").of(FEMALE, cm(between(155, 188)), kg(between(50, 95)));
            HeldPosture squat = backSquat()
                    .barbell(kg(between(0, 120)))
                    .thighAboveLevel(deg(between(0, 50)))
                    .torsoLean(deg(between(25, 50)))
                    .by(lifter)
                    .posture();
            HeldPosture hinge = romanianDeadlift()
                    .barbell(kg(between(10, 120)))
                    .torsoLean(deg(between(15, 75)))
                    .by(lifter)
                    .posture();
            Spine spine = Spine.standard()
                    .extensorArm(cm(between(4, 8)))
                    .pelvisShare(ratio(between(0, 1)))
                    .coContraction(ratio(k % 2 == 0 ? 0 : between(0, 0.4)));
            checkAll(spine.of(squat));
            checkAll(spine.of(hinge));
            checkAll(Studies.contact(squat, Joint.KNEE));
            checkAll(Studies.contact(squat, Joint.ANKLE));
            checkAll(Studies.contact(hinge, Joint.HIP));
        }
    }

    @Test
    void motionMatchAndEnergyCost() {
        Lifter ines = lifter("Ines").of(FEMALE, cm(178), kg(71));
        var extend = kneeExtension().stack(kg(40)).by(ines);
        Repetition repetition = Studies.repetition(extend)
                .through(KNEE_FLEXION, deg(90), deg(20))
                .tempo(seconds(0.8), seconds(1.4));
        List<Answer<?>> answers = new ArrayList<>(List.of(
                repetition.peakMoment(Joint.KNEE),
                repetition.inertiaShare(Joint.KNEE),
                repetition.liftingWork(),
                repetition.loweringWork(),
                repetition.positiveJointWork(),
                repetition.negativeJointWork(),
                Studies.energyCostOfSquat(kg(52.5), cm(61.5)),
                Studies.energyCostOfBenchPress(kg(42.5), cm(37))));
        ResistanceCurve curve =
                Studies.resistance(extend, KNEE_FLEXION, deg(20), deg(90)).extension(Joint.KNEE);
        answers.add(curve.peakMoment());
        answers.add(curve.flatness());
        ResistanceCurve.Match match = curve.against(Studies.strength(Joint.KNEE)
                .at(deg(15), newtonMetres(95))
                .at(deg(55), newtonMetres(171))
                .at(deg(95), newtonMetres(128)));
        answers.add(match.match());
        answers.add(match.leastStrengthOverResistance());
        answers.forEach(PrintedStudiesTest::check);
        checkAll(Studies.turnedOut(backSquat().barbell(kg(60)).by(ines))
                .legs(deg(20))
                .check());
    }

    private static void checkAll(Listing listing) {
        int checked = 0;
        for (List<Object> row : listing.rows()) {
            for (Object entry : row) {
                if (entry instanceof Answer<?> answer) {
                    check(answer);
                    checked++;
                }
            }
        }
        assertTrue(checked > 0, listing.title());
    }

    @Test
    void musclesInRandomPostures() {
        MuscleModel strong = MuscleWords.muscles()
                .tested(Axis.KNEE, newtonMetres(400), deg(60))
                .tested(Axis.HIP, newtonMetres(500), deg(80))
                .tested(Axis.LOW_BACK, newtonMetres(900), deg(0));
        for (int k = 0; k < 12; k++) {
            Lifter lifter = lifter("Random").of(FEMALE, cm(between(155, 185)), kg(between(50, 85)));
            HeldPosture chair = kneeExtension()
                    .stack(kg(between(10, 60)))
                    .kneeFlexion(deg(between(15, 85)))
                    .by(lifter)
                    .posture();
            HeldPosture hinge = romanianDeadlift()
                    .barbell(kg(between(10, 50)))
                    .torsoLean(deg(between(20, 70)))
                    .by(lifter)
                    .posture();
            Shares here = MuscleWords.shares(chair, strong);
            Shares there = MuscleWords.shares(hinge, strong.coContraction(ratio(0.1)));
            check(here.capacityUsed(MuscleGroup.QUADRICEPS));
            check(here.force(MuscleGroup.VASTI));
            check(here.compression(Joint.KNEE));
            check(there.capacityUsed(MuscleGroup.HIP_EXTENSORS));
            check(there.length(Muscle.BICEPS_FEMORIS_LONG_HEAD));
            check(there.capacityUsed(Muscle.ERECTOR_SPINAE));
            check(MuscleWords.handEstimate(Joint.KNEE).force(chair));
            check(MuscleWords.handEstimate(Joint.HIP).bar(kg(between(0, 60))).moment(hinge));
        }
    }

    private static void check(Answer<?> answer) {
        PrintedWorkings.check(answer.working(), answer.value().si());
    }
}
