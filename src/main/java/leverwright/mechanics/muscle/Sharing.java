package leverwright.mechanics.muscle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import leverwright.mechanics.numeric.Powers;
import org.jspecify.annotations.Nullable;

/**
 * Shares moments among muscles. Joints that no muscle joins are solved apart; three joints or fewer by the cubic rule take the
 * quick way of {@link CubicSharing}, everything else an interior path or a linear program. Every solution carries its check:
 * what the moments miss, and how far the conditions of optimality are from being met.
 */
public final class Sharing {
    private static final double FULL = 1 - 1e-12;
    private static final double GENTLE = 4;
    /** Slopes that far below the greatest are still told apart. */
    private static final double TOLD_APART = 1e-4;
    /** Where hardly anything is left to choose, at the end of what can be made, the answer a hair below stands for it. */
    private static final double[] NEARLY = {1, 1 - 1e-9, 1 - 1e-8, 1 - 1e-7};

    private Sharing() {}

    /** Returns how the muscles share the moments by a rule. */
    public static SharingSolution solve(SharingProblem problem, SharingRule rule) {
        int joints = problem.joints().size();
        int muscles = problem.muscles().size();
        double[] forces = new double[muscles];
        double[] lacks = new double[joints];
        double scale = Double.POSITIVE_INFINITY;
        double optimality = 0;
        for (Part part : parts(problem)) {
            SharingProblem own = part.problem;
            if (isAtRest(own)) {
                continue;
            }
            double most = SharingPrograms.greatestScale(own);
            scale = Math.min(scale, most);
            if (most < FULL) {
                double[] missing = SharingPrograms.lacks(own);
                for (int j = 0; j < part.joints.length; j++) {
                    lacks[part.joints[j]] = missing[j];
                }
            } else {
                Found found = share(own, rule);
                optimality = Math.max(optimality, found.optimality);
                for (int i = 0; i < part.muscles.length; i++) {
                    forces[part.muscles[i]] += found.forces[i];
                }
            }
        }
        return solution(problem, rule, forces, lacks, scale, optimality);
    }

    private static boolean isAtRest(SharingProblem problem) {
        for (int j = 0; j < problem.joints().size(); j++) {
            if (problem.moment(j) != 0) {
                return false;
            }
        }
        return true;
    }

    private static SharingSolution solution(
            SharingProblem problem,
            SharingRule rule,
            double[] forces,
            double[] lacks,
            double scale,
            double optimality) {
        boolean feasible = scale >= FULL;
        OptionalDouble greatest = scale == Double.POSITIVE_INFINITY ? OptionalDouble.empty() : OptionalDouble.of(scale);
        double residual = 0;
        for (int j = 0; feasible && j < lacks.length; j++) {
            double sum = -problem.moment(j);
            for (int i = 0; i < forces.length; i++) {
                sum += problem.arm(j, i) * forces[i];
            }
            residual = Math.max(residual, Math.abs(sum));
        }
        return new SharingSolution(
                problem,
                rule,
                feasible,
                feasible ? Arrays.stream(forces).boxed().toList() : List.of(),
                feasible ? cost(problem, rule, forces) : 0,
                greatest,
                Arrays.stream(lacks).boxed().toList(),
                residual,
                optimality);
    }

    private static double cost(SharingProblem problem, SharingRule rule, double[] forces) {
        double cost = 0;
        for (int i = 0; i < forces.length; i++) {
            double stress = forces[i] / problem.divisor(i);
            if (rule instanceof SharingRule.Power power) {
                cost += power.exponent() == 3 ? stress * stress * stress : Powers.power(stress, power.exponent());
            } else if (rule instanceof SharingRule.EqualShare) {
                cost = Math.max(cost, stress);
            } else {
                cost += stress;
            }
        }
        return cost;
    }

    /** Forces of a part and how far they are from the best. */
    private record Found(double[] forces, double optimality) {}

    private static Found share(SharingProblem problem, SharingRule rule) {
        if (rule instanceof SharingRule.Power power) {
            for (double part : NEARLY) {
                SharingProblem near = part == 1 ? problem : problem.scaled(part);
                Found quick = power.exponent() == 3 && problem.joints().size() <= CubicSharing.MOST_JOINTS
                        ? quick(near)
                        : null;
                Found found = quick != null ? quick : sure(near, power.exponent(), idle(near));
                if (found != null) {
                    return found;
                }
            }
            throw new IllegalArgumentException("the search for how " + String.join(", ", problem.muscles())
                    + " share the moments did not settle by the exponent " + power.exponent()
                    + "; take a smaller exponent or equalShare()");
        }
        SharingPrograms.Scaled scaled = SharingPrograms.Scaled.of(problem);
        double[] stress =
                rule instanceof SharingRule.EqualShare ? SharingPrograms.equal(scaled) : SharingPrograms.single(scaled);
        return new Found(forces(problem, stress, scaled.unit), 0);
    }

    private static double[] forces(SharingProblem problem, double[] stress, double unit) {
        double[] forces = new double[stress.length];
        for (int i = 0; i < forces.length; i++) {
            forces[i] = Math.max(0, Math.min(problem.limit(i), stress[i] * unit * problem.divisor(i)));
        }
        return forces;
    }

    private static @Nullable Found quick(SharingProblem problem) {
        int muscles = problem.muscles().size();
        int joints = problem.joints().size();
        CubicSharing solver = new CubicSharing(muscles);
        for (int i = 0; i < muscles; i++) {
            solver.muscle(
                    i,
                    problem.divisor(i),
                    problem.limit(i),
                    problem.arm(0, i),
                    joints > 1 ? problem.arm(1, i) : 0,
                    joints > 2 ? problem.arm(2, i) : 0);
        }
        solver.moments(problem.moment(0), joints > 1 ? problem.moment(1) : 0, joints > 2 ? problem.moment(2) : 0);
        if (!solver.solve()) {
            return null;
        }
        double[] forces = new double[muscles];
        double[] prices = new double[joints];
        for (int i = 0; i < muscles; i++) {
            forces[i] = solver.force(i);
        }
        for (int j = 0; j < joints; j++) {
            prices[j] = solver.multiplier(j);
        }
        return new Found(forces, optimality(problem, forces, prices, 3, 1));
    }

    /**
     * How far the conditions of optimality are from being met: (F/D)^(p−1) = Σ r·D·λ for a muscle between its bounds, not more
     * for one at its limit, not less for one at rest; over the greatest of these numbers.
     *
     * @param unit the stress that (F/D) is taken over before it is raised, so that steep powers stay numbers
     */
    static double optimality(SharingProblem problem, double[] forces, double[] prices, double exponent, double unit) {
        double worst = 0;
        double size = 1e-300;
        double greatest = 0;
        for (int i = 0; i < forces.length; i++) {
            greatest = Math.max(greatest, forces[i] / problem.divisor(i));
        }
        for (int i = 0; i < forces.length; i++) {
            double drive = 0;
            for (int j = 0; j < prices.length; j++) {
                drive += problem.arm(j, i) * problem.divisor(i) * prices[j];
            }
            double slope = Powers.power(forces[i] / problem.divisor(i) / unit, exponent - 1);
            size = Math.max(size, slope);
            double miss = slope - drive;
            boolean full = forces[i] >= problem.limit(i) * (1 - 1e-9);
            boolean idle = forces[i] <= 1e-9 * greatest * problem.divisor(i);
            worst = Math.max(
                    worst, full && idle ? 0 : full ? Math.max(0, miss) : idle ? Math.max(0, -miss) : Math.abs(miss));
        }
        return worst / size;
    }

    /** Muscles that must rest because nothing works against them about a joint without moment. */
    private static boolean[] idle(SharingProblem problem) {
        int muscles = problem.muscles().size();
        boolean[] idle = new boolean[muscles];
        for (int i = 0; i < muscles; i++) {
            idle[i] = problem.limit(i) == 0;
        }
        for (boolean again = true; again; ) {
            again = false;
            for (int j = 0; j < problem.joints().size(); j++) {
                boolean up = false;
                boolean down = false;
                for (int i = 0; i < muscles; i++) {
                    up |= !idle[i] && problem.arm(j, i) > 0;
                    down |= !idle[i] && problem.arm(j, i) < 0;
                }
                for (int i = 0; problem.moment(j) == 0 && up != down && i < muscles; i++) {
                    again |= !idle[i] && problem.arm(j, i) != 0;
                    idle[i] |= problem.arm(j, i) != 0;
                }
            }
        }
        return idle;
    }

    /** Searches from the answer of half the power, from the equal share, or from the middle. */
    private static @Nullable PowerSharing searched(SharingPrograms.Scaled scaled, double exponent) {
        double[] middle = new double[scaled.u.length];
        Arrays.fill(middle, 0.5);
        List<double[]> starts = new ArrayList<>(List.of(SharingPrograms.equal(scaled), middle));
        if (exponent > 4) {
            PowerSharing lower = searched(scaled, exponent / 2);
            if (lower != null) {
                starts.add(0, lower.x);
            }
        }
        for (double[] start : starts) {
            PowerSharing search = new PowerSharing(scaled.b, scaled.m, scaled.u, exponent, start);
            if (search.solve()) {
                return search;
            }
        }
        return null;
    }

    /**
     * Shares anew among the muscles of far smaller stress than the greatest, the others held: a steep power cannot tell in double
     * numbers what theirs cost beside the greatest, beside one another it can.
     */
    private static void below(SharingProblem problem, double exponent, double... forces) {
        double greatest = 0;
        for (int i = 0; i < forces.length; i++) {
            greatest = Math.max(greatest, forces[i] / problem.divisor(i));
        }
        double cut = greatest * Powers.power(TOLD_APART, 1 / (exponent - 1));
        int[] low = IntStream.range(0, forces.length)
                .filter(i -> forces[i] / problem.divisor(i) < cut && problem.limit(i) > 0)
                .toArray();
        int[] joints = IntStream.range(0, problem.joints().size())
                .filter(j -> Arrays.stream(low).anyMatch(i -> problem.arm(j, i) != 0))
                .toArray();
        if (low.length < 2 || low.length == forces.length || low.length <= joints.length) {
            return;
        }
        double[] moments = new double[joints.length];
        for (int j = 0; j < joints.length; j++) {
            for (int i : low) {
                moments[j] += problem.arm(joints[j], i) * forces[i];
            }
        }
        SharingProblem rest = problem.part(joints, low).moments(moments);
        Found found = sure(rest, exponent, idle(rest));
        for (int k = 0; found != null && k < low.length; k++) {
            forces[low[k]] = found.forces[k];
        }
    }

    private static @Nullable Found sure(SharingProblem problem, double exponent, boolean[] idle) {
        int muscles = problem.muscles().size();
        int[] some = IntStream.range(0, muscles).filter(i -> !idle[i]).toArray();
        int[] all = IntStream.range(0, problem.joints().size()).toArray();
        SharingProblem own = problem.part(all, some);
        SharingPrograms.Scaled rough = SharingPrograms.Scaled.of(own);
        double unit = rough.unit * Math.max(1e-12, SharingPrograms.leastGreatest(rough));
        SharingPrograms.Scaled scaled = new SharingPrograms.Scaled(own, unit);
        // In this unit equal share needs no stress above 1, so that the best ones' sum of powers is at most their
        // number, and
        // none is above its root: bounds far beyond change no answer, and are brought near for the search's sake.
        double beyond = 2 * Powers.power(some.length, 1 / exponent);
        for (int k = 0; k < some.length; k++) {
            scaled.u[k] = Math.min(scaled.u[k], beyond);
        }
        PowerSharing search = searched(scaled, exponent);
        if (search == null) {
            return null;
        }
        double[] part = forces(own, search.x, unit);
        if (exponent > GENTLE) {
            below(own, exponent, part);
        }
        double[] forces = new double[muscles];
        for (int k = 0; k < some.length; k++) {
            forces[some[k]] = part[k];
        }
        double[] prices = new double[all.length];
        for (int j = 0; j < all.length; j++) {
            prices[j] = search.y[j] / SharingPrograms.Scaled.row(own, j);
        }
        return new Found(forces, optimality(own, part, prices, exponent, unit * search.norm()));
    }

    /** Joints that muscles join, and those muscles. */
    private record Part(SharingProblem problem, int[] joints, int[] muscles) {}

    private static List<Part> parts(SharingProblem problem) {
        int joints = problem.joints().size();
        int muscles = problem.muscles().size();
        int[] group = IntStream.range(0, joints).toArray();
        for (int i = 0; i < muscles; i++) {
            int first = -1;
            for (int j = 0; j < joints; j++) {
                if (problem.arm(j, i) != 0) {
                    if (first < 0) {
                        first = j;
                    } else {
                        join(group, group[first], group[j]);
                    }
                }
            }
        }
        List<Part> parts = new ArrayList<>();
        for (int g = 0; g < joints; g++) {
            int wanted = g;
            int[] some =
                    IntStream.range(0, joints).filter(j -> group[j] == wanted).toArray();
            int[] theirs = IntStream.range(0, muscles)
                    .filter(i -> Arrays.stream(some).anyMatch(j -> problem.arm(j, i) != 0))
                    .toArray();
            if (some.length > 0) {
                parts.add(part(problem, some, theirs));
            }
        }
        return parts;
    }

    private static Part part(SharingProblem problem, int[] joints, int[] muscles) {
        if (muscles.length > 0) {
            return new Part(problem.part(joints, muscles), joints, muscles);
        }
        // A joint without muscles: a muscle without an arm stands for none.
        int[] any = {0};
        return new Part(problem.part(joints, any), joints, any);
    }

    private static void join(int[] group, int kept, int lost) {
        for (int j = 0; j < group.length; j++) {
            if (group[j] == lost) {
                group[j] = kept;
            }
        }
    }
}
