package leverwright.mechanics.study;

import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Knobs.TORSO_LEAN;
import static leverwright.mechanics.exercise.Readings.moment;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.percent;
import static leverwright.mechanics.measure.Measures.ratio;
import static leverwright.mechanics.muscle.MuscleGroup.QUADRICEPS;
import static leverwright.mechanics.muscle.MuscleGroup.VASTI;
import static leverwright.mechanics.study.MuscleWords.capacityUsed;
import static leverwright.mechanics.study.MuscleWords.force;
import static leverwright.mechanics.study.MuscleWords.muscles;
import static leverwright.mechanics.study.Studies.search;
import static leverwright.mechanics.study.Studies.solveFor;
import static leverwright.mechanics.study.Variable.areaOf;
import static leverwright.mechanics.study.Variable.armOf;
import static leverwright.mechanics.study.Variable.coContraction;
import static leverwright.mechanics.study.Variable.optimumLengthOf;
import static leverwright.mechanics.study.Variable.partOfLengthFactor;
import static leverwright.mechanics.study.Variable.sharingExponent;
import static leverwright.mechanics.study.Variable.tensionOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.working.Curves;
import org.junit.jupiter.api.Test;

/** Numbers of the muscles as what a study turns: against the same numbers set in the model by hand, and by what must follow. */
class MuscleVariablesTest {
    private static final Lifter INES = lifter("Ines").of(FEMALE, cm(178), kg(71));
    private static final Performance SQUAT =
            backSquat().barbell(kg(30)).thighs(deg(20)).torsoLean(deg(40)).by(INES);

    private static HeldPosture with(Variable<Ratio> variable, double value) {
        return variable.in(SQUAT, ratio(value)).posture();
    }

    @Test
    void whatStandsOnFileGivesTheSameBits() {
        double usual = force(VASTI).si(SQUAT.posture());
        for (Variable<Ratio> same : List.of(areaOf(VASTI), tensionOf(VASTI), armOf(VASTI), optimumLengthOf(VASTI))) {
            assertEquals(1, same.present(SQUAT));
            assertEquals(usual, force(VASTI).si(with(same, 1)), 0, same.name());
        }
        assertEquals(usual, force(VASTI).si(with(sharingExponent(), 3)), 0);
        assertEquals(usual, force(VASTI).si(with(coContraction(), 0)), 0);
        assertEquals(usual, force(VASTI).si(with(partOfLengthFactor(), 1)), 0);
    }

    @Test
    void numbersOfTheModelAreThoseSetByHand() {
        MuscleModel fifth = muscles().power(5);
        assertEquals(force(VASTI, fifth).si(SQUAT.posture()), force(VASTI).si(with(sharingExponent(), 5)), 0);
        MuscleModel against = muscles().coContraction(ratio(0.1));
        assertEquals(force(VASTI, against).si(SQUAT.posture()), force(VASTI).si(with(coContraction(), 0.1)), 0);
        MuscleModel alike = muscles().areasAlone().withoutLengthFactor();
        assertEquals(
                capacityUsed(VASTI, alike).si(SQUAT.posture()),
                capacityUsed(VASTI, muscles().areasAlone()).si(with(partOfLengthFactor(), 0)),
                1e-9);
        MuscleModel equal = muscles().equalShare();
        assertEquals(
                force(VASTI, equal).si(SQUAT.posture()),
                force(VASTI, equal).si(with(sharingExponent(), 5)),
                0,
                "a rule without an exponent stays");
    }

    /** Divided by capacity, only the product of area and tension counts (the definition of capacity). */
    @Test
    void areaAndTensionAreOneWhereForcesAreDividedByCapacity() {
        MuscleModel model = muscles().dividedByCapacity();
        assertEquals(
                force(VASTI, model).si(with(areaOf(VASTI), 1.4)),
                force(VASTI, model).si(with(tensionOf(VASTI), 1.4)),
                1e-6);
        assertNotEquals(
                force(VASTI).si(with(areaOf(VASTI), 1.4)),
                force(VASTI).si(with(tensionOf(VASTI), 1.4)),
                1,
                "by area, a larger muscle takes more");
    }

    @Test
    void theMomentIsMadeWithTheArmThatIsSet() {
        double knee = moment(KNEE).si(SQUAT.posture());
        for (double part : new double[] {0.8, 1, 1.3}) {
            HeldPosture held = with(armOf(QUADRICEPS, KNEE), part);
            double made = 0;
            var shares = Shares.of(held, muscles(), VASTI);
            for (var state : shares.states()) {
                double arm = state.arms().getOrDefault(leverwright.mechanics.muscle.Axis.KNEE, 0.0);
                made += arm * shares.force(state.muscle());
            }
            assertEquals(knee, made, 1e-6 * knee);
        }
        assertTrue(force(VASTI).si(with(armOf(QUADRICEPS, KNEE), 1.3))
                < force(VASTI).si(SQUAT.posture()));
        assertEquals(
                force(VASTI).si(with(armOf(QUADRICEPS, HIP), 1)), force(VASTI).si(SQUAT.posture()), 0);
    }

    @Test
    void theQuickWayAndTheWayWithWordsAgree() {
        for (Variable<Ratio> each : List.of(areaOf(VASTI), tensionOf(VASTI), armOf(VASTI), optimumLengthOf(VASTI))) {
            HeldPosture held = with(each, 1.2);
            assertEquals(
                    Shares.of(held, muscles(), VASTI).force(VASTI), force(VASTI).si(held), 0, each.name());
            assertTrue(force(VASTI).of(held).notes().stream()
                    .anyMatch(note -> note.startsWith("Set for the muscles: " + each.name())));
        }
    }

    @Test
    void everyStudyTakesThem() {
        Curves curves = Sweep.sweep(tensionOf(VASTI))
                .from(percent(80))
                .to(percent(120))
                .points(5)
                .of(SQUAT)
                .family(TORSO_LEAN, deg(38), deg(40))
                .curves(capacityUsed(VASTI));
        assertEquals(1, curves.current());
        assertEquals(
                capacityUsed(VASTI).si(SQUAT.posture()),
                curves.curves().get(1).values().get(2),
                0);
        Ratio found = solveFor(tensionOf(VASTI))
                .between(percent(60), percent(200))
                .in(SQUAT)
                .gives(capacityUsed(VASTI), percent(40))
                .only()
                .value();
        assertEquals(0.4, capacityUsed(VASTI).si(with(tensionOf(VASTI), found.si())), 1e-9);
        BestSetting.Best best =
                search(SQUAT).turn(tensionOf(VASTI), percent(90), percent(110)).least(capacityUsed(VASTI));
        assertEquals(1.1, tensionOf(VASTI).present(best.performance()), 1e-9);
        SpreadResult drawn = Spread.of(SQUAT)
                .vary(tensionOf(VASTI), Uncertainty.withinLimits(percent(10)))
                .draws(64)
                .of(Crew.alone(), capacityUsed(VASTI));
        assertTrue(drawn.deviation(0) > 0.01);
    }

    @Test
    void valuesOutsideTheirRangeAreRefused() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> with(areaOf(VASTI), 0))
                .getMessage()
                .contains("allowed: 0.2 to 3"));
        assertThrows(IllegalArgumentException.class, () -> with(sharingExponent(), 1));
        assertThrows(IllegalArgumentException.class, () -> with(coContraction(), Double.NaN));
    }
}
