package leverwright.workbook.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leverwright.mechanics.muscle.Sharing;
import leverwright.mechanics.muscle.SharingProblem;
import leverwright.mechanics.muscle.SharingRule;
import leverwright.mechanics.muscle.SharingSolution;
import leverwright.mechanics.numeric.RandomStream;
import org.junit.jupiter.api.Test;

/**
 * Random scenarios of kind "sharing", among them degenerate ones: muscles without an arm, joints without a muscle, limits and
 * moments of 0, loads from a billionth to twice of what can be made. Each is answered so that moments and limits are kept, or
 * found not feasible with a scale below 1; numbers out of range are refused in words. Seeds stand in the messages.
 */
class RandomSharingTest {
    private static final double[] EXPONENTS = {1.05, 1.5, 2, 2.5, 3, 3, 3, 4, 5, 8, 12, 20};

    private double[][] arms;
    private double[] moments;
    private double[] areas;
    private double[] limits;
    private double exponent;

    private void draw(RandomStream random) {
        int joints = 1 + random.nextIndex(4);
        int muscles = 1 + random.nextIndex(14);
        exponent = EXPONENTS[random.nextIndex(EXPONENTS.length)];
        arms = new double[joints][muscles];
        moments = new double[joints];
        areas = new double[muscles];
        limits = new double[muscles];
        double load = new double[] {0, 1e-9, 1e-3, 0.3, 0.8, 1, 2}[random.nextIndex(7)];
        for (int i = 0; i < muscles; i++) {
            areas[i] = random.nextBetween(1e-5, 9e-3);
            limits[i] = random.nextUnit() < 0.05 ? 0 : areas[i] * random.nextBetween(1e5, 6e5);
            for (int j = 0; j < joints; j++) {
                arms[j][i] = random.nextUnit() < 0.5 ? 0 : random.nextBetween(-0.08, 0.08);
            }
            double force = limits[i] * random.nextUnit() * load;
            for (int j = 0; j < joints; j++) {
                moments[j] += arms[j][i] * force;
            }
        }
        if (random.nextUnit() < 0.1) {
            moments[0] = random.nextBetween(-500, 500);
        }
    }

    private String scenario() {
        List<String> rows = new ArrayList<>();
        for (double[] row : arms) {
            rows.add(list(row));
        }
        return "{\"format\": \"leverwright-scenario\", \"version\": 1, \"kind\": \"sharing\", \"momentArms\": ["
                + String.join(", ", rows)
                + "], \"moments\": " + list(moments) + ", \"areas\": " + list(areas) + ", \"limits\": " + list(limits)
                + ", \"exponent\": " + exponent + "}";
    }

    private static String list(double... values) {
        List<String> texts = new ArrayList<>();
        for (double value : values) {
            texts.add(Double.toString(value));
        }
        return "[" + String.join(", ", texts) + "]";
    }

    private SharingProblem problem() {
        List<String> joints = new ArrayList<>();
        List<String> muscles = new ArrayList<>();
        for (int j = 0; j < moments.length; j++) {
            joints.add("joint " + j);
        }
        for (int i = 0; i < areas.length; i++) {
            muscles.add("muscle " + i);
        }
        return SharingProblem.of(joints, muscles, arms, moments, areas, limits);
    }

    @Test
    void everyRandomProblemIsAnswered() {
        int feasible = 0;
        for (long seed = 1; seed <= 600; seed++) {
            draw(new RandomStream(81_000 + seed));
            String label = String.format(Locale.ROOT, "seed %d, exponent %s", 81_000 + seed, exponent);
            ScenarioAnswer answer = ScenarioSolver.solve("random.json", scenario());
            assertTrue(answer.solved(), label + ": " + answer.problem());
            SharingSolution solution = Sharing.solve(problem(), SharingRule.power(exponent));
            if (!solution.feasible()) {
                assertTrue(solution.greatestScale().orElse(1) < 1, label);
                assertFalse(solution.shortage().isEmpty(), label);
                continue;
            }
            feasible++;
            double greatest = 0;
            for (double moment : moments) {
                greatest = Math.max(greatest, Math.abs(moment));
            }
            assertTrue(solution.momentResidual() <= 1e-7 * greatest, label + ": " + solution.momentResidual());
            for (int i = 0; i < areas.length; i++) {
                assertTrue(solution.force(i) >= 0 && solution.force(i) <= limits[i] * (1 + 1e-12), label);
            }
        }
        assertTrue(feasible > 250, "feasible: " + feasible);
    }

    @Test
    void numbersOutOfRangeAreRefusedInWords() {
        draw(new RandomStream(4));
        double kept = areas[0];
        for (double bad : new double[] {0, -1e-4}) {
            areas[0] = bad;
            refused("areas");
        }
        areas[0] = kept;
        kept = limits[0];
        limits[0] = -5;
        refused("limits");
        limits[0] = kept;
        for (double bad : new double[] {1, 0.5, -2, 1000}) {
            exponent = bad;
            refused("exponent");
        }
    }

    private void refused(String member) {
        ScenarioAnswer answer = ScenarioSolver.solve("random.json", scenario());
        assertFalse(answer.solved(), member);
        assertTrue(answer.problem().contains(member) && answer.problem().contains("allowed"), answer.problem());
    }

    @Test
    void theSameProblemHasTheSameAnswer() {
        draw(new RandomStream(12));
        assertEquals(
                ScenarioSolver.solve("a.json", scenario()).line(),
                ScenarioSolver.solve("a.json", scenario()).line());
    }
}
