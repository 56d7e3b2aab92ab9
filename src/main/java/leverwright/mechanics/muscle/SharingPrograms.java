package leverwright.mechanics.muscle;

import java.util.Arrays;
import java.util.stream.IntStream;
import leverwright.mechanics.numeric.LinearProgram;
import leverwright.mechanics.numeric.LinearProgram.Optimum;

/** The linear programs of sharing: what can be made at all, what is lacking, equal shares, single muscles. */
final class SharingPrograms {
    private static final double NONE = Double.MAX_VALUE;

    private SharingPrograms() {}

    /** What each row is divided by: the most that its muscles could make, or 1 without any. */
    private static double[] rowScales(SharingProblem problem) {
        int joints = problem.joints().size();
        double[] scales = new double[joints];
        for (int j = 0; j < joints; j++) {
            for (int i = 0; i < problem.muscles().size(); i++) {
                scales[j] += Math.abs(problem.arm(j, i)) * problem.limit(i);
            }
            if (scales[j] == 0) {
                scales[j] = 1;
            }
        }
        return scales;
    }

    /** The greatest factor times the moments that can be made; not all moments may be 0. */
    static double greatestScale(SharingProblem problem) {
        int joints = problem.joints().size();
        int muscles = problem.muscles().size();
        double[] scales = rowScales(problem);
        double size = 0;
        for (int j = 0; j < joints; j++) {
            size = Math.max(size, Math.abs(problem.moment(j)) / scales[j]);
        }
        double[][] a = new double[joints][muscles + 1];
        double[] u = new double[muscles + 1];
        double[] c = new double[muscles + 1];
        for (int j = 0; j < joints; j++) {
            for (int i = 0; i < muscles; i++) {
                a[j][i] = problem.arm(j, i) * problem.limit(i) / scales[j];
            }
            a[j][muscles] = -problem.moment(j) / scales[j] / size;
        }
        for (int i = 0; i < muscles; i++) {
            u[i] = problem.limit(i) > 0 ? 1 : 0;
        }
        u[muscles] = NONE;
        c[muscles] = -1;
        return Math.abs(LinearProgram.minimise(c, a, new double[joints], u).value()) / size;
    }

    /** What each joint lacks, least in sum, N·m. */
    static double[] lacks(SharingProblem problem) {
        int joints = problem.joints().size();
        int muscles = problem.muscles().size();
        double size = 0;
        for (int j = 0; j < joints; j++) {
            size = Math.max(size, Math.abs(problem.moment(j)));
        }
        double[][] a = new double[joints][muscles + 2 * joints];
        double[] u = new double[muscles + 2 * joints];
        double[] c = new double[muscles + 2 * joints];
        double[] right = new double[joints];
        for (int j = 0; j < joints; j++) {
            for (int i = 0; i < muscles; i++) {
                a[j][i] = problem.arm(j, i) * problem.limit(i) / size;
                u[i] = problem.limit(i) > 0 ? 1 : 0;
            }
            a[j][muscles + 2 * j] = 1;
            a[j][muscles + 2 * j + 1] = -1;
            for (int k = muscles + 2 * j; k < muscles + 2 * j + 2; k++) {
                u[k] = NONE;
                c[k] = 1;
            }
            right[j] = problem.moment(j) / size;
        }
        double[] x = LinearProgram.minimise(c, a, right, u).x();
        double[] lacks = new double[joints];
        for (int j = 0; j < joints; j++) {
            lacks[j] = size * (x[muscles + 2 * j] - x[muscles + 2 * j + 1]);
        }
        return lacks;
    }

    /** Stresses in a unit that makes them of size 1, and rows of size 1. */
    static final class Scaled {
        final double[][] b;
        final double[] m;
        final double[] u;
        /** Force over divisor of one unit of stress. */
        final double unit;

        Scaled(SharingProblem problem, double unit) {
            int joints = problem.joints().size();
            int muscles = problem.muscles().size();
            this.unit = unit;
            b = new double[joints][muscles];
            m = new double[joints];
            u = new double[muscles];
            for (int j = 0; j < joints; j++) {
                double row = row(problem, j);
                for (int i = 0; i < muscles; i++) {
                    b[j][i] = problem.arm(j, i) * problem.divisor(i) / row;
                }
                m[j] = problem.moment(j) / row / unit;
            }
            for (int i = 0; i < muscles; i++) {
                u[i] = problem.limit(i) / problem.divisor(i) / unit;
            }
        }

        static double row(SharingProblem problem, int joint) {
            double sum = 0;
            for (int i = 0; i < problem.muscles().size(); i++) {
                sum += Math.abs(problem.arm(joint, i)) * problem.divisor(i);
            }
            return sum == 0 ? 1 : sum;
        }

        static Scaled of(SharingProblem problem) {
            double unit = 0;
            for (int j = 0; j < problem.joints().size(); j++) {
                unit = Math.max(unit, Math.abs(problem.moment(j)) / row(problem, j));
            }
            return new Scaled(problem, unit == 0 ? 1 : unit);
        }
    }

    /** Stresses by the single-muscle rule, in units of the scaled problem. */
    static double[] single(Scaled problem) {
        double[] c = new double[problem.u.length];
        Arrays.fill(c, 1);
        return LinearProgram.minimise(c, problem.b, problem.m, problem.u).x();
    }

    /** The least greatest stress, in units of the scaled problem; {@code most} holds bounds and is not changed. */
    private static Optimum level(Scaled problem, double[] most, boolean[] settled) {
        int joints = problem.m.length;
        int n = most.length;
        int[] open = IntStream.range(0, n).filter(i -> !settled[i]).toArray();
        double[][] a = new double[joints + open.length][n + open.length + 1];
        double[] right = new double[joints + open.length];
        double[] u = new double[n + open.length + 1];
        double[] c = new double[n + open.length + 1];
        for (int j = 0; j < joints; j++) {
            System.arraycopy(problem.b[j], 0, a[j], 0, n);
            right[j] = problem.m[j];
        }
        System.arraycopy(most, 0, u, 0, n);
        for (int k = 0; k < open.length; k++) {
            a[joints + k][open[k]] = 1;
            a[joints + k][n + k] = 1;
            a[joints + k][n + open.length] = -1;
            u[n + k] = NONE;
        }
        u[n + open.length] = NONE;
        c[n + open.length] = 1;
        return LinearProgram.minimise(c, a, right, u);
    }

    /** The least greatest stress that the moments leave, in units of the scaled problem. */
    static double leastGreatest(Scaled problem) {
        return level(problem, problem.u, new boolean[problem.u.length]).value();
    }

    /** Stresses by the equal-share rule, in units of the scaled problem. */
    static double[] equal(Scaled problem) {
        int n = problem.u.length;
        double[] most = problem.u.clone();
        boolean[] settled = new boolean[n];
        double[] x = new double[n];
        for (int round = 0; round < n; round++) {
            Optimum best = level(problem, most, settled);
            if (!best.feasible()) {
                return x;
            }
            System.arraycopy(best.x(), 0, x, 0, n);
            double highest = best.value();
            int row = problem.m.length;
            boolean any = false;
            for (int i = 0; i < n; i++) {
                if (!settled[i]) {
                    if (Math.abs(best.y()[row]) > 1e-9) {
                        most[i] = Math.min(most[i], highest * (1 + 1e-12));
                        settled[i] = true;
                        any = true;
                    }
                    row++;
                }
            }
            if (!any || highest < 1e-12) {
                return x;
            }
        }
        return x;
    }
}
