package leverwright.mechanics.muscle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.numeric.RandomStream;
import org.junit.jupiter.api.Test;

/** The quick way gives the bits of the long one. */
class QuickForcesTest {
    private static final List<List<Axis>> PARTS = List.of(
            List.of(Axis.ANKLE, Axis.KNEE, Axis.HIP),
            List.of(Axis.LOW_BACK),
            List.of(Axis.SHOULDER, Axis.ELBOW, Axis.WRIST),
            List.of(Axis.SHOULDER_HORIZONTAL, Axis.ELBOW));

    @Test
    void quickForcesAreTheForcesOfTheLongWay() {
        long seed = 20261125;
        RandomStream random = new RandomStream(seed);
        int settled = 0;
        for (int run = 0; run < 300; run++) {
            Sex sex = random.nextUnit() < 0.5 ? Sex.FEMALE : Sex.MALE;
            Lifter lifter = Lifter.lifter("L")
                    .of(sex, Measures.cm(random.nextBetween(155, 195)), Measures.kg(random.nextBetween(50, 100)));
            MuscleModel model = MuscleModel.standard();
            if (run % 3 == 0) {
                model = model.tested(Axis.KNEE, Measures.newtonMetres(200), Measures.deg(60));
            }
            if (run % 2 == 0) {
                model = drawn(random, sex).apply(run % 4 == 0 ? model.dividedByCapacity() : model);
            }
            List<Axis> axes = PARTS.get(random.nextIndex(PARTS.size()));
            Map<Axis, Double> moments = new EnumMap<>(Axis.class);
            Map<Axis, Double> angles = new EnumMap<>(Axis.class);
            for (Axis axis : axes) {
                moments.put(axis, random.nextUnit() < 0.1 ? 0 : random.nextBetween(-15, 40));
                angles.put(axis, random.nextBetween(0, 1.7));
            }
            MuscleForces slow = model.share(lifter, moments, angles);
            QuickForces quick = model.quick(lifter, moments, angles).orElseThrow();
            String where = "seed " + seed + ", run " + run;
            if (!slow.feasible()) {
                continue;
            }
            settled += quick.isSettled() ? 1 : 0;
            for (MuscleState state : quick.isSettled() ? slow.states() : List.<MuscleState>of()) {
                assertTrue(quick.has(state.muscle()), where);
                assertEquals(slow.force(state.muscle()), quick.force(state.muscle()), 0, where);
                assertEquals(slow.capacityUsed(state.muscle()), quick.capacityUsed(state.muscle()), 0, where);
            }
            if (quick.isSettled() && quick.has(MuscleGroup.QUADRICEPS)) {
                assertEquals(slow.force(MuscleGroup.QUADRICEPS), quick.force(MuscleGroup.QUADRICEPS), 0, where);
            }
        }
        assertTrue(settled > 150, "settled " + settled);
    }

    private static MuscleInput.Drawn drawn(RandomStream random, Sex sex) {
        MuscleInput.Drawn drawn = new MuscleInput.Drawn();
        for (MuscleInput input :
                List.of(MuscleInput.MUSCLE_AREAS, MuscleInput.MUSCLE_ARMS, MuscleInput.SPECIFIC_TENSIONS)) {
            MuscleInput.Of of = input.of(MuscleData.standard(), sex);
            double[] unit = new double[of.axes()];
            for (int k = 0; k < unit.length; k++) {
                unit[k] = random.nextBetween(0.01, 0.99);
            }
            of.draw(drawn, unit, 0);
        }
        return drawn;
    }

    @Test
    void otherRulesAndCoContractionTakeTheLongWay() {
        Lifter lifter = Lifter.lifter("L").of(Sex.MALE, Measures.cm(175), Measures.kg(75));
        Map<Axis, Double> knee = new EnumMap<>(Map.of(Axis.KNEE, 20.0));
        Map<Axis, Double> bent = new EnumMap<>(Map.of(Axis.KNEE, 1.0));
        assertTrue(MuscleModel.standard().quick(lifter, knee, bent).isPresent());
        assertTrue(MuscleModel.standard().power(2).quick(lifter, knee, bent).isEmpty());
        assertTrue(MuscleModel.standard()
                .coContraction(Measures.percent(10))
                .quick(lifter, knee, bent)
                .isEmpty());
    }
}
