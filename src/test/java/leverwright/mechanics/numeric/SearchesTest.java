package leverwright.mechanics.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.analysis.solvers.LaguerreSolver;
import org.hipparchus.complex.Complex;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.junit.jupiter.api.Test;

/** Roots, minima and searches against Hipparchus's solvers, which work in other ways, and against known minima. */
class SearchesTest {

    /** All roots of random polynomials against Hipparchus's LaguerreSolver. */
    @Test
    void allRootsOfPolynomialsAreThoseOfTheLibrary() {
        RandomStream random = new RandomStream(20261125);
        for (int run = 0; run < 50; run++) {
            double[] coefficients = new double[6];
            for (int k = 0; k < coefficients.length; k++) {
                coefficients[k] = random.nextBetween(-1, 1);
            }
            coefficients[5] += coefficients[5] < 0 ? -0.2 : 0.2;
            PolynomialFunction polynomial = new PolynomialFunction(coefficients);
            Complex[] all = new LaguerreSolver().solveAllComplex(coefficients, 0.1);
            List<Double> expected = Arrays.stream(all)
                    .filter(root -> Math.abs(root.getImaginary()) < 1e-9 && Math.abs(root.getReal()) < 3)
                    .map(Complex::getReal)
                    .sorted()
                    .toList();
            List<Double> found = Crossings.of(polynomial::value, -3, 3).roots();
            assertEquals(expected.size(), found.size(), "run " + run + ": " + expected + " against " + found);
            for (int k = 0; k < found.size(); k++) {
                assertEquals(expected.get(k), found.get(k), 1e-7);
            }
        }
    }

    @Test
    void rootsThatOnlyTouchJumpsAndGapsAreToldApart() {
        assertEquals(1, Crossings.of(x -> (x - 0.3) * (x - 0.3), 0, 1).roots().size());
        assertEquals(0.3, Crossings.of(x -> (x - 0.3) * (x - 0.3), 0, 1).roots().get(0), 1e-6);
        assertEquals(
                2, Crossings.of(x -> (x - 0.3) * (x - 0.3) - 1e-7, 0, 1).roots().size());
        Crossings jump = Crossings.of(x -> x < 0.4 ? -1 : 1, 0, 1);
        assertEquals(List.of(), jump.roots());
        assertEquals(0.4, jump.jumps().get(0), 1e-9);
        Crossings gap = Crossings.of(x -> x < 0.7001 ? Double.NaN : x - 0.7002, 0, 1);
        assertEquals(0.7002, gap.roots().get(0), 1e-9);
        Crossings never = Crossings.of(x -> 1 + (x - 0.25) * (x - 0.25), 0, 1);
        assertEquals(List.of(), never.roots());
        assertEquals(0.25, never.nearest(), 1e-6);
        assertTrue(!Crossings.of(x -> Double.NaN, 0, 1).hasValues());
        assertThrows(IllegalArgumentException.class, () -> Crossings.of(x -> x, 1, 1));
    }

    /** Two and three roots much closer than a step, anywhere between the ends: known by how the function is made. */
    @Test
    void rootsCloserThanAStepAreFound() {
        RandomStream random = new RandomStream(20251);
        for (int run = 0; run < 300; run++) {
            double width = run % 2 == 0 ? 1e-3 : 1e-4;
            double a = run < 10 ? 1e-6 * run : random.nextBetween(0, 1 - 3 * width);
            double b = a + width * random.nextBetween(0.2, 1);
            double slant = random.nextBetween(-0.5, 0.5);
            List<Double> two =
                    Crossings.of(x -> (x - a) * (x - b) * (1 + slant * x), 0, 1).roots();
            assertEquals(2, two.size(), "run " + run + ": " + a + " and " + b + " against " + two);
            assertEquals(a, two.get(0), 1e-9);
            assertEquals(b, two.get(1), 1e-9);
        }
        for (int run = 0; run < 100; run++) {
            double a = random.nextBetween(0, 0.99);
            double b = a + 1e-3 * random.nextBetween(0.3, 1);
            double c = b + 1e-3 * random.nextBetween(0.3, 1);
            List<Double> three =
                    Crossings.of(x -> (x - a) * (x - b) * (x - c), 0, 1).roots();
            assertEquals(3, three.size(), "run " + run + ": " + a + ", " + b + ", " + c + " against " + three);
        }
    }

    @Test
    void twoThreadsGiveTheSameBitsAndAStopKeepsWhatIsDone() {
        ExecutorService pool = Executors.newFixedThreadPool(2);
        try {
            Crew two = new Crew(pool, 2, () -> false, (done, all) -> {});
            DoubleUnaryOperator wave = x -> Math.abs(x - 0.31) < 0.02 ? Double.NaN : x * (x - 0.5) * (x - 0.501);
            assertEquals(
                    Crossings.of(wave, -1, 1).roots(),
                    Crossings.of(two, wave, -1, 1).roots());
            BoxSearch.Goal goal = point -> new BoxSearch.Score(
                    Math.max(0, point[0] - 0.7), Math.abs(point[0] - 0.8) + Math.abs(point[1] * point[2] - 0.3));
            assertEquals(BoxSearch.of(goal, 3), BoxSearch.of(two, goal, 3));
        } finally {
            pool.shutdown();
        }
        long[] told = {0};
        Crew stopped = new Crew(Runnable::run, 1, () -> told[0] >= 100, (done, all) -> told[0] = done);
        Crossings part = Crossings.of(stopped, x -> (x - 0.2) * (x - 0.9), 0, 1);
        assertTrue(part.isPartial() && part.reached() > 0.2 && part.reached() < 0.9);
        assertEquals(0.2, part.roots().get(0), 1e-12);
        told[0] = 0;
        BoxSearch.Best best = BoxSearch.of(stopped, point -> new BoxSearch.Score(0, Math.abs(point[0] - 0.4)), 1);
        assertTrue(best.partial() && best.evaluations() < 600 && best.score().value() < 0.1);
        told[0] = 1000;
        assertThrows(
                IllegalArgumentException.class,
                () -> BoxSearch.of(stopped, point -> new BoxSearch.Score(0, point[0]), 1));
    }

    /** The golden section against Hipparchus's BrentOptimizer. */
    @Test
    void minimaOfOneNumberAreThoseOfTheLibrary() {
        RandomStream random = new RandomStream(7);
        for (int run = 0; run < 20; run++) {
            double a = random.nextBetween(0.2, 0.8);
            double b = random.nextBetween(0.1, 3);
            org.hipparchus.analysis.UnivariateFunction function = x -> b * (x - a) * (x - a) + Math.pow(x - a, 4);
            double library = new BrentOptimizer(1e-10, 1e-14)
                    .optimize(
                            new MaxEval(500),
                            new UnivariateObjectiveFunction(function),
                            GoalType.MINIMIZE,
                            new SearchInterval(0, 1))
                    .getPoint();
            assertEquals(library, Minimum.of(function::value, 0, 1), 1e-6);
        }
    }

    /** Linear programs over a box with two limits: against Hipparchus's SimplexSolver. */
    @Test
    void linearProgramsGiveTheValueOfTheSimplex() {
        RandomStream random = new RandomStream(5);
        for (int run = 0; run < 10; run++) {
            double[] cost = {random.nextBetween(0.2, 1), random.nextBetween(0.2, 1), random.nextBetween(0.2, 1)};
            double[] first = {random.nextBetween(0.2, 1), random.nextBetween(0.2, 1), random.nextBetween(0.2, 1)};
            double[] second = {random.nextBetween(0.2, 1), random.nextBetween(-1, 0), random.nextBetween(0.2, 1)};
            List<LinearConstraint> limits = new ArrayList<>();
            limits.add(new LinearConstraint(first, Relationship.LEQ, 0.6));
            limits.add(new LinearConstraint(second, Relationship.LEQ, 0.3));
            for (int j = 0; j < 3; j++) {
                double[] one = new double[3];
                one[j] = 1;
                limits.add(new LinearConstraint(one, Relationship.LEQ, 1));
            }
            double simplex = new SimplexSolver()
                    .optimize(
                            new LinearObjectiveFunction(cost, 0),
                            new LinearConstraintSet(limits),
                            GoalType.MAXIMIZE,
                            new NonNegativeConstraint(true))
                    .getValue();
            BoxSearch.Best best = BoxSearch.of(
                    point -> new BoxSearch.Score(
                            Math.max(0, dot(first, point) - 0.6) + Math.max(0, dot(second, point) - 0.3),
                            -dot(cost, point)),
                    3);
            assertEquals(0, best.score().breach());
            assertEquals(simplex, -best.score().value(), 0.01 * simplex, "run " + run);
        }
    }

    private static double dot(double[] a, double... b) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }

    /** H. H. Rosenbrock's valley, least at (1, 1) (1960: from memory), put into the unit box. */
    @Test
    void theCurvedValleyIsFollowedToItsEnd() {
        BoxSearch.Best best = BoxSearch.of(
                point -> {
                    double x = 4 * point[0] - 2;
                    double y = 4 * point[1] - 2;
                    return new BoxSearch.Score(0, 100 * (y - x * x) * (y - x * x) + (1 - x) * (1 - x));
                },
                2);
        assertTrue(best.score().value() < 1e-3, () -> "value " + best.score().value());
        assertEquals(1, 4 * best.point().get(0) - 2, 0.05);
    }

    /** The point of a disc that lies nearest to one outside it lies on the line between (analytic). */
    @Test
    void anActiveCurvedLimitIsMet() {
        BoxSearch.Best best = BoxSearch.of(
                point -> {
                    double x = point[0] - 0.3;
                    double y = point[1] - 0.3;
                    double outside = Math.sqrt(x * x + y * y) - 0.25;
                    double far = (point[0] - 0.9) * (point[0] - 0.9) + (point[1] - 0.7) * (point[1] - 0.7);
                    return new BoxSearch.Score(Math.max(0, outside), far);
                },
                2);
        double distance = Math.sqrt(0.6 * 0.6 + 0.4 * 0.4) - 0.25;
        assertEquals(distance, Math.sqrt(best.score().value()), 2e-4);
    }

    @Test
    void theSameSearchGivesTheSameBits() {
        BoxSearch.Goal goal = point -> new BoxSearch.Score(0, Math.abs(point[0] - 0.123) + Math.abs(point[1] - 0.9));
        assertEquals(BoxSearch.of(goal, 2), BoxSearch.of(goal, 2));
        assertThrows(IllegalArgumentException.class, () -> BoxSearch.of(goal, 7));
    }
}
