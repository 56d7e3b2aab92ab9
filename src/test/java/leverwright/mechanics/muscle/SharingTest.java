package leverwright.mechanics.muscle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import leverwright.bench.SharingProblems;
import leverwright.mechanics.numeric.RandomStream;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sharing against closed forms for one joint, the conditions of optimality on random problems (seeds in the messages), a
 * general-purpose simplex (Hipparchus), and forces found by an exact method in another language ({@code share_ref.bin}).
 */
class SharingTest {
    private static final double[] ARMS = {0.045, 0.030, 0.060};
    private static final double[] AREAS = {4.6e-4, 7.0e-4, 1.5e-4};

    private static SharingProblem oneJoint(double moment) {
        return SharingProblem.of(
                List.of("elbow"),
                List.of("biceps", "brachialis", "brachioradialis"),
                new double[][] {ARMS},
                new double[] {moment},
                AREAS,
                new double[] {1e5, 1e5, 1e5});
    }

    /**
     * Textbook problems with one muscle, g = 9.8 m/s². OpenStax College Physics 9.4: biceps at 4.00 cm, forearm 2.50 kg at
     * 16.0 cm, book 4.00 kg at 38.0 cm, 470 N. The same, 9.5: back at 8.00 cm, upper body 55.0 kg at 35.0 cm, box 30.0 kg at
     * 50.0 cm, 4.20 kN. OpenStax University Physics 12.4: 222.4 N at 13.0 over 1.5 in, 1927 N. The same, a push-up: 490 N on two
     * hands, triceps at 1.75 cm, hand at 20.0 cm, 1680 N. Giancoli 7th, 9-34: deltoid at 12 cm and 15°, arm 3.3 kg at 24 cm,
     * 250 N. Narici 1992: 746.0 N at the ankle over a mechanical advantage of 0.117, 6.367 kN (its own inputs give 6.376).
     */
    @ParameterizedTest
    @CsvSource({
        "0.0400, 24.5, 0.160, 39.2, 0.380, 470, 1",
        "0.0800, 539, 0.350, 294, 0.500, 4200, 5",
        "1.5, 222.4, 13.0, 0, 0, 1927, 1",
        "0.0175, 147, 0.200, 0, 0, 1680, 1",
        "0.0310583, 32.34, 0.24, 0, 0, 250, 1",
        "0.117, 746.0, 1, 0, 0, 6367, 10"
    })
    void oneMuscleOfATextbookPullsWhatItPrints(
            double arm, double one, double at, double other, double there, double printed, double within) {
        SharingSolution solution = Sharing.solve(
                SharingProblem.of(
                        List.of("joint"),
                        List.of("muscle"),
                        new double[][] {{arm}},
                        new double[] {one * at + other * there},
                        new double[] {10e-4},
                        new double[] {1e5}),
                SharingRule.cubic());
        assertEquals(printed, solution.force(0), within);
    }

    /** Closed form F = M·w/Σ(r·w), w = (r·Aᵖ)^(1/(p−1)); two decimals computed apart from this program. */
    @ParameterizedTest
    @CsvSource({"2, 200.36, 309.31, 28.41", "3, 192.52, 295.09, 41.40", "5, 187.43, 286.25, 49.63"})
    void oneJointFollowsTheClosedForm(double exponent, double first, double second, double third) {
        SharingSolution solution = Sharing.solve(oneJoint(20), SharingRule.power(exponent));
        assertEquals(first, solution.force(0), 0.005);
        assertEquals(second, solution.force(1), 0.005);
        assertEquals(third, solution.force(2), 0.005);
        double sum = 0;
        double[] w = new double[3];
        for (int i = 0; i < 3; i++) {
            w[i] = Math.pow(ARMS[i] * Math.pow(AREAS[i], exponent), 1 / (exponent - 1));
            sum += ARMS[i] * w[i];
        }
        for (int i = 0; i < 3; i++) {
            assertEquals(20 * w[i] / sum, solution.force(i), 1e-6);
        }
    }

    @Test
    void equalShareAndSingleMuscleFollowTheirClosedForms() {
        SharingSolution equal = Sharing.solve(oneJoint(20), SharingRule.equalShare());
        assertEquals(181.46, equal.force(0), 0.005);
        assertEquals(276.13, equal.force(1), 0.005);
        assertEquals(59.17, equal.force(2), 0.005);
        SharingSolution single = Sharing.solve(oneJoint(20), SharingRule.singleMuscle());
        assertEquals(0, single.force(0));
        assertEquals(20 / 0.030, single.force(1), 1e-9);
        assertEquals(0, single.force(2));
    }

    @Test
    void theProblemsOfThePeerAreAllSolvedWithoutMakingObjects() throws IOException {
        SharingProblems problems = new SharingProblems();
        CubicSharing solver = new CubicSharing(SharingProblems.MUSCLES);
        assertEquals(4096, problems.count());
        assertTrue(problems.known() >= 300);
        double worst = 0;
        for (int i = 0; i < problems.count(); i++) {
            problems.set(solver, i);
            assertTrue(solver.solve(), "problem " + i);
            assertTrue(problems.residual(solver, i) <= 1.0001e-10, "problem " + i);
            for (int m = 0; i < problems.known() && m < SharingProblems.MUSCLES; m++) {
                worst = Math.max(worst, Math.abs(solver.force(m) - problems.force(i, m)) / problems.largestLimit(i));
            }
        }
        assertTrue(worst < 1e-7, "worst difference of a force, of the largest limit: " + worst);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        for (int i = 0; i < problems.count(); i++) {
            problems.set(solver, i);
            solver.solve();
        }
        long bytes = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
        assertTrue(bytes < problems.count(), bytes + " bytes for " + problems.count() + " problems");
    }

    private static SharingProblem random(RandomStream random, int joints, int muscles, double load) {
        double[][] arms = new double[joints][muscles];
        double[] divisors = new double[muscles];
        double[] limits = new double[muscles];
        double[] moments = new double[joints];
        List<String> jointNames = new ArrayList<>();
        List<String> muscleNames = new ArrayList<>();
        for (int i = 0; i < muscles; i++) {
            muscleNames.add("muscle " + i);
            divisors[i] = random.nextBetween(3e-4, 60e-4);
            limits[i] = divisors[i] * random.nextBetween(2e5, 4e5);
            int first = random.nextIndex(joints);
            arms[first][i] = random.nextBetween(0.01, 0.06) * (random.nextUnit() < 0.35 ? -1 : 1);
            if (random.nextUnit() < 0.4 && first + 1 < joints) {
                arms[first + 1][i] = random.nextBetween(-0.05, 0.05);
            }
        }
        for (int i = 0; i < muscles; i++) {
            double force = limits[i] * random.nextUnit() * load;
            for (int j = 0; j < joints; j++) {
                moments[j] += arms[j][i] * force;
            }
        }
        for (int j = 0; j < joints; j++) {
            jointNames.add("joint " + j);
        }
        return SharingProblem.of(jointNames, muscleNames, arms, moments, divisors, limits);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.3, 2, 3, 5, 20, 100})
    void theConditionsOfOptimalityHoldOnRandomProblems(double exponent) {
        for (long seed = 1; seed <= 150; seed++) {
            RandomStream random = new RandomStream(seed);
            int joints = 1 + random.nextIndex(5);
            SharingProblem problem = random(random, joints, joints + 1 + random.nextIndex(10), 0.95);
            SharingSolution solution = Sharing.solve(problem, SharingRule.power(exponent));
            String label = "seed " + seed + ", exponent " + exponent;
            assertTrue(solution.feasible(), label);
            double greatest = 0;
            for (int j = 0; j < joints; j++) {
                greatest = Math.max(greatest, Math.abs(problem.moment(j)));
            }
            assertTrue(solution.momentResidual() <= 1e-8 * greatest, label + ": " + solution.momentResidual());
            assertTrue(solution.optimality() <= 1e-6, label + ": " + solution.optimality());
        }
    }

    /** Moments from a billionth of what can be made to nearly all of it. */
    @ParameterizedTest
    @ValueSource(doubles = {1.05, 4, 7, 10, 20, 50, 100})
    void everyPowerHasAnAnswerAtEveryScaleOfLoad(double exponent) {
        for (long seed = 1; seed <= 60; seed++) {
            RandomStream random = new RandomStream(7000 + seed);
            int joints = 1 + random.nextIndex(5);
            double load = new double[] {1e-9, 1e-6, 1e-3, 0.1, 0.6, 0.999}[random.nextIndex(6)];
            SharingProblem problem = random(random, joints, joints + 1 + random.nextIndex(10), load);
            String label = "seed " + (7000 + seed) + ", exponent " + exponent + ", load " + load;
            SharingSolution solution = Sharing.solve(problem, SharingRule.power(exponent));
            double greatest = 0;
            for (int j = 0; j < joints; j++) {
                greatest = Math.max(greatest, Math.abs(problem.moment(j)));
            }
            assertTrue(solution.momentResidual() <= 1e-8 * greatest, label + ": " + solution.momentResidual());
            assertTrue(solution.optimality() <= 1e-6, label + ": " + solution.optimality());
        }
    }

    @Test
    void theQuickWayAndTheInteriorPathAgree() {
        for (long seed = 1; seed <= 200; seed++) {
            RandomStream random = new RandomStream(1000 + seed);
            SharingProblem problem = random(random, 1 + random.nextIndex(3), 4 + random.nextIndex(8), 0.9);
            SharingSolution quick = Sharing.solve(problem, SharingRule.power(3));
            SharingSolution near = Sharing.solve(problem, SharingRule.power(3.0000000001));
            for (int i = 0; i < problem.muscles().size(); i++) {
                assertEquals(quick.force(i), near.force(i), 1e-4 * problem.limit(i), "seed " + (1000 + seed));
            }
        }
    }

    /** Greatest share of the moments by a general-purpose simplex. */
    private static double scaleBySimplex(SharingProblem problem) {
        int n = problem.muscles().size();
        List<LinearConstraint> rows = new ArrayList<>();
        for (int j = 0; j < problem.joints().size(); j++) {
            double[] row = new double[n + 1];
            for (int i = 0; i < n; i++) {
                row[i] = problem.arm(j, i) * problem.limit(i) / 100;
            }
            row[n] = -problem.moment(j) / 100;
            rows.add(new LinearConstraint(row, Relationship.EQ, 0));
        }
        for (int i = 0; i < n; i++) {
            double[] row = new double[n + 1];
            row[i] = 1;
            rows.add(new LinearConstraint(row, Relationship.LEQ, 1));
        }
        return lastVariable(rows, n + 1, GoalType.MAXIMIZE);
    }

    @Test
    void whatCanBeMadeAtAllAgreesWithAGeneralPurposeSimplex() {
        for (long seed = 1; seed <= 150; seed++) {
            RandomStream random = new RandomStream(2000 + seed);
            SharingProblem problem = random(random, 1 + random.nextIndex(4), 5 + random.nextIndex(8), 1.6);
            SharingSolution solution = Sharing.solve(problem, SharingRule.cubic());
            double wanted = scaleBySimplex(problem);
            double found = solution.greatestScale().orElseThrow();
            assertEquals(wanted, found, 1e-6 * wanted, "seed " + (2000 + seed));
            assertEquals(wanted >= 1, solution.feasible(), "seed " + (2000 + seed));
        }
    }

    /** The greatest or least value of the last variable, none of them negative, by a general-purpose simplex. */
    private static double lastVariable(List<LinearConstraint> rows, int variables, GoalType goal) {
        double[] weights = new double[variables];
        weights[variables - 1] = 1;
        return new SimplexSolver()
                .optimize(
                        new LinearObjectiveFunction(weights, 0),
                        new LinearConstraintSet(rows),
                        goal,
                        new NonNegativeConstraint(true))
                .getValue();
    }

    /** The least greatest stress by a general-purpose simplex, in units of 10⁵ Pa. */
    private static double levelBySimplex(SharingProblem problem) {
        int n = problem.muscles().size();
        List<LinearConstraint> rows = new ArrayList<>();
        for (int j = 0; j < problem.joints().size(); j++) {
            double[] row = new double[n + 1];
            for (int i = 0; i < n; i++) {
                row[i] = problem.arm(j, i) * problem.divisor(i) * 1e5 / 10;
            }
            rows.add(new LinearConstraint(row, Relationship.EQ, problem.moment(j) / 10));
        }
        for (int i = 0; i < n; i++) {
            double[] row = new double[n + 1];
            row[i] = 1;
            rows.add(new LinearConstraint(row.clone(), Relationship.LEQ, problem.limit(i) / problem.divisor(i) / 1e5));
            row[n] = -1;
            rows.add(new LinearConstraint(row, Relationship.LEQ, 0));
        }
        return lastVariable(rows, n + 1, GoalType.MINIMIZE);
    }

    @Test
    void equalShareAgreesWithASimplexAndWithALargeExponent() {
        for (long seed = 1; seed <= 100; seed++) {
            RandomStream random = new RandomStream(3000 + seed);
            SharingProblem problem = random(random, 1 + random.nextIndex(3), 5 + random.nextIndex(6), 0.5);
            SharingSolution equal = Sharing.solve(problem, SharingRule.equalShare());
            String label = "seed " + (3000 + seed);
            double least = levelBySimplex(problem) * 1e5;
            assertEquals(least, equal.cost(), 1e-6 * equal.cost(), label);
            // Σ xᵖ of the equal share is at most n·levelᵖ, so that no stress of the best is above level·n^(1/p)
            for (double power : new double[] {10, 20, 50, 100}) {
                SharingSolution large = Sharing.solve(problem, SharingRule.power(power));
                double highest = 0;
                for (int i = 0; i < problem.muscles().size(); i++) {
                    highest = Math.max(highest, large.force(i) / problem.divisor(i));
                }
                double most = least * Math.pow(problem.muscles().size(), 1 / power);
                assertTrue(highest >= least * (1 - 1e-6) && highest <= most * (1 + 1e-9), label + ", power " + power);
            }
        }
    }

    /**
     * Three muscles of two joints can exchange force without changing a moment; at the best no exchange is cheaper, also not among
     * muscles that work far below the others: what it saves vanishes beside what it moves.
     */
    @ParameterizedTest
    @ValueSource(doubles = {2, 3, 5, 10, 20, 50})
    void noExchangeOfForceIsCheaper(double power) {
        int seen = 0;
        for (long seed = 1; seed <= 60; seed++) {
            RandomStream random = new RandomStream(5000 + seed);
            SharingProblem problem = random(random, 2, 7, 0.4);
            SharingSolution solution = Sharing.solve(problem, SharingRule.power(power));
            double[] x = new double[7];
            double most = 0;
            for (int i = 0; i < 7; i++) {
                x[i] = solution.force(i) / problem.divisor(i);
                most = Math.max(most, x[i]);
            }
            for (int a = 0; a < 7; a++) {
                for (int b = a + 1; b < 7; b++) {
                    for (int c = b + 1; c < 7; c++) {
                        seen += isNoExchangeCheaper(problem, x, most, power, "seed " + (5000 + seed), a, b, c) ? 1 : 0;
                    }
                }
            }
        }
        assertTrue(seen > 100, "exchanges seen: " + seen);
    }

    private static boolean isNoExchangeCheaper(
            SharingProblem problem, double[] x, double most, double power, String label, int... some) {
        double[][] b = new double[2][3];
        double greatest = 0;
        for (int k = 0; k < 3; k++) {
            int i = some[k];
            if (x[i] < 1e-4 * most || solutionAtLimit(problem, x[i], i)) {
                return false;
            }
            greatest = Math.max(greatest, x[i]);
            b[0][k] = problem.arm(0, i) * problem.divisor(i);
            b[1][k] = problem.arm(1, i) * problem.divisor(i);
        }
        double saved = 0;
        double moved = 0;
        for (int k = 0; k < 3; k++) {
            int l = (k + 1) % 3;
            int m = (k + 2) % 3;
            double part = b[0][l] * b[1][m] - b[0][m] * b[1][l];
            double slope = Math.pow(x[some[k]] / greatest, power - 1) * part;
            saved += slope;
            moved += Math.abs(slope);
        }
        assertTrue(Math.abs(saved) <= 1e-4 * moved + 1e-18, label + ", power " + power + ": " + saved / moved);
        return moved > 0;
    }

    private static boolean solutionAtLimit(SharingProblem problem, double stress, int muscle) {
        return stress * problem.divisor(muscle) > 0.999 * problem.limit(muscle);
    }

    @Test
    void scaledAndMirroredProblemsGiveScaledAndMirroredForces() {
        RandomStream random = new RandomStream(77);
        SharingProblem problem = random(random, 3, 9, 0.3);
        SharingSolution whole = Sharing.solve(problem, SharingRule.cubic());
        int n = problem.muscles().size();
        double[][] turned = new double[3][n];
        double[] moments = new double[3];
        double[] divisors = new double[n];
        double[] limits = new double[n];
        for (int i = 0; i < n; i++) {
            divisors[i] = problem.divisor(n - 1 - i) * 7;
            limits[i] = problem.limit(n - 1 - i) * 2;
            for (int j = 0; j < 3; j++) {
                turned[2 - j][i] = -problem.arm(j, n - 1 - i);
                moments[2 - j] = -2 * problem.moment(j);
            }
        }
        SharingSolution other = Sharing.solve(
                SharingProblem.of(problem.joints(), problem.muscles(), turned, moments, divisors, limits),
                SharingRule.cubic());
        for (int i = 0; i < n; i++) {
            assertEquals(2 * whole.force(i), other.force(n - 1 - i), 1e-7 * problem.limit(i));
        }
    }

    @Test
    void twoAlikeMusclesShareAlike() {
        SharingProblem problem = SharingProblem.of(
                List.of("knee"),
                List.of("left", "right"),
                new double[][] {{0.04, 0.04}},
                new double[] {40},
                new double[] {3e-3, 3e-3},
                new double[] {900, 900});
        for (SharingRule rule :
                List.of(SharingRule.cubic(), SharingRule.power(1.5), SharingRule.power(17), SharingRule.equalShare())) {
            SharingSolution solution = Sharing.solve(problem, rule);
            assertEquals(500, solution.force(0), 1e-6, rule.words());
            assertEquals(500, solution.force(1), 1e-6, rule.words());
        }
    }

    @Test
    void sayWhichJointLacksHowMuch() {
        SharingProblem problem = SharingProblem.of(
                List.of("hip", "knee"),
                List.of("gluteus", "vasti"),
                new double[][] {{0.05, 0}, {0, 0.04}},
                new double[] {60, 50},
                new double[] {4e-3, 4e-3},
                new double[] {2000, 1000});
        SharingSolution solution = Sharing.solve(problem, SharingRule.cubic());
        assertFalse(solution.feasible());
        assertEquals(0.8, solution.greatestScale().orElseThrow(), 1e-12);
        assertEquals(
                List.of(0.0, 10.0),
                solution.lacks().stream()
                        .map(lack -> Math.rint(lack * 1e9) / 1e9)
                        .toList());
        IllegalArgumentException problemText = assertThrows(IllegalArgumentException.class, () -> solution.force(0));
        assertTrue(String.valueOf(problemText.getMessage()).contains("the knee lacks 10"), problemText.getMessage());
    }

    @Test
    void aMomentThatNoMuscleMakesIsNotFeasible() {
        SharingProblem problem = SharingProblem.of(
                List.of("hip", "ankle"),
                List.of("gluteus"),
                new double[][] {{0.05}, {0}},
                new double[] {0, 50},
                new double[] {4e-3},
                new double[] {2000});
        SharingSolution solution = Sharing.solve(problem, SharingRule.cubic());
        assertFalse(solution.feasible());
        assertEquals(0, solution.greatestScale().orElseThrow());
        assertTrue(solution.shortage().contains("the ankle lacks 50"), solution.shortage());
    }

    @Test
    void atTheVeryEndOfWhatCanBeMadeThereIsStillAnAnswer() {
        for (long seed = 1; seed <= 60; seed++) {
            RandomStream random = new RandomStream(4000 + seed);
            SharingProblem problem = random(random, 1 + random.nextIndex(3), 5 + random.nextIndex(6), 0.9);
            SharingProblem last = problem.scaled(
                    Sharing.solve(problem, SharingRule.cubic()).greatestScale().orElseThrow() * (1 - 1e-13));
            SharingSolution solution = Sharing.solve(last, SharingRule.cubic());
            double greatest = 0;
            for (int j = 0; j < last.joints().size(); j++) {
                greatest = Math.max(greatest, Math.abs(last.moment(j)));
            }
            assertTrue(solution.feasible(), "seed " + (4000 + seed));
            assertTrue(solution.momentResidual() <= 1.1e-7 * greatest, "seed " + (4000 + seed));
        }
    }

    @Test
    void nothingToDoNeedsNoForce() {
        SharingProblem problem = oneJoint(0);
        SharingSolution solution = Sharing.solve(problem, SharingRule.cubic());
        assertTrue(solution.feasible());
        assertTrue(solution.greatestScale().isEmpty());
        assertEquals(List.of(0.0, 0.0, 0.0), solution.forces());
    }

    @Test
    void badNumbersAreNamedWithJointAndMuscle() {
        String text = assertThrows(
                        IllegalArgumentException.class,
                        () -> SharingProblem.of(
                                List.of("knee"),
                                List.of("vasti"),
                                new double[][] {{0.04}},
                                new double[] {40},
                                new double[] {0},
                                new double[] {900}))
                .getMessage();
        assertTrue(String.valueOf(text).contains("vasti") && text.contains("greater than 0"), text);
        assertThrows(IllegalArgumentException.class, () -> SharingRule.power(1));
    }
}
