package leverwright.mechanics.muscle;

import leverwright.mechanics.numeric.LinearSystem;
import leverwright.mechanics.numeric.Powers;

/**
 * The least Σ xᵖ/p with B·x = m and 0 ≤ x ≤ u by an interior path: the conditions of optimality with every product of a bound
 * and its price held at a common size that is led to 0 (S. Mehrotra, "On the implementation of a primal-dual interior point
 * method", SIAM J. Optim. 2 (1992) 575-601, from memory, without its corrector). Sure, for any exponent above 1, and slower
 * than {@link CubicSharing}.
 */
final class PowerSharing {
    private static final double DONE = 1e-15;
    private static final double MET = 1e-13;
    private static final int MOST_STEPS = 300;
    private static final int STUCK = 100;
    private static final double BACK = 0.995;
    /** Most that (p − 1)·Δx/x grows in a step: a steeper power would jump past its answer. */
    private static final double STEEP = 4;

    private static final double GENTLE = 4;
    private static final double FLOOR = 1e-11;

    private final int n;
    private final int rows;
    private final double[][] b;
    private final double[] m;
    private final double[] u;
    private final double p;
    /** What a steep power is laid on, so that muscles far below the others have a place: a square so small beside it. */
    private final double floor;

    final double[] x;
    final double[] y;
    private final double[] w;
    private final double[] z;
    private final double[] v;
    private final double[] h;
    private final double[] weight;
    /** How far the slopes are from what the prices pay. */
    private double downhill = 1;

    /**
     * Makes a search.
     *
     * @param start stresses near the answer, such as the equal share's
     */
    PowerSharing(double[][] b, double[] m, double[] u, double p, double[] start) {
        this.n = u.length;
        this.rows = m.length;
        this.b = b;
        this.m = m;
        this.u = u;
        this.p = p;
        floor = p > GENTLE ? FLOOR : 0;
        x = new double[n];
        w = new double[n];
        z = new double[n];
        v = new double[n];
        h = new double[n];
        weight = new double[n];
        y = new double[rows];
        for (int i = 0; i < n; i++) {
            x[i] = Math.min(Math.max(start[i], 0.05), 0.9 * u[i]);
            w[i] = u[i] - x[i];
            z[i] = 0.1;
            v[i] = 0.1;
        }
    }

    /** Returns whether the search settled; then {@link #x} and {@link #y} hold stresses and prices; these for Σ (x/norm)ᵖ·norm/p. */
    boolean solve() {
        for (int step = 0; step < MOST_STEPS; step++) {
            double gap = 0;
            for (int i = 0; i < n; i++) {
                gap += x[i] * z[i] + w[i] * v[i];
            }
            gap /= 2 * n;
            if (gap < DONE && residual() < MET && downhill < MET) {
                return true;
            }
            if (step > STUCK && isNear(gap)) {
                return true;
            }
            if (!step(gap * (step < 2 ? 0.5 : 0.1))) {
                return isNear(gap);
            }
        }
        return false;
    }

    private boolean isNear(double gap) {
        return gap < 1e-12 && residual() < 1e-11 && downhill < 1e-9;
    }

    private double residual() {
        double worst = 0;
        for (int j = 0; j < rows; j++) {
            worst = Math.max(worst, Math.abs(unmet(j)));
        }
        return worst;
    }

    private double unmet(int j) {
        double sum = -m[j];
        for (int i = 0; i < n; i++) {
            sum += b[j][i] * x[i];
        }
        return sum;
    }

    private double pricesOf(double[] prices, int i) {
        double sum = 0;
        for (int j = 0; j < rows; j++) {
            sum += b[j][i] * prices[j];
        }
        return sum;
    }

    /** (Σ xᵖ)^(1/p): stresses are taken over it, so that slopes of steep powers keep their size on the way. */
    double norm() {
        double greatest = 0;
        for (double value : x) {
            greatest = Math.max(greatest, value);
        }
        double sum = 0;
        for (double value : x) {
            sum += Powers.power(value / greatest, p);
        }
        return greatest * Powers.power(sum, 1 / p);
    }

    private boolean step(double target) {
        double norm = norm();
        downhill = 0;
        for (int i = 0; i < n; i++) {
            double power = Powers.power(x[i] / norm, p - 1);
            double slope = power + floor * x[i] / norm;
            double bend = (p - 1) * power / x[i] + floor / norm;
            double down = slope - pricesOf(y, i) - z[i] + v[i];
            double out = x[i] + w[i] - u[i];
            weight[i] = 1 / (bend + z[i] / x[i] + v[i] / w[i]);
            downhill = Math.max(downhill, Math.abs(down));
            h[i] = -down + target / x[i] - z[i] - (target / w[i] - v[i]) - v[i] / w[i] * out;
        }
        double[] dy = prices();
        double longest = 1 / BACK;
        double longestPrice = 1 / BACK;
        double[] dx = new double[n];
        double[] dw = new double[n];
        double[] dz = new double[n];
        double[] dv = new double[n];
        for (int i = 0; i < n; i++) {
            dx[i] = weight[i] * (h[i] + pricesOf(dy, i));
            dw[i] = -(x[i] + w[i] - u[i]) - dx[i];
            dz[i] = target / x[i] - z[i] - z[i] / x[i] * dx[i];
            dv[i] = target / w[i] - v[i] - v[i] / w[i] * dw[i];
            longest = room(room(longest, x[i], dx[i]), w[i], dw[i]);
            double growth = (p - 1) * dx[i] / x[i];
            if (growth > STEEP) {
                longest = Math.min(longest, STEEP / growth);
            }
            longestPrice = room(room(longestPrice, z[i], dz[i]), v[i], dv[i]);
        }
        double part = BACK * Math.min(longest, longestPrice);
        if (!(part > 1e-12)) {
            return false;
        }
        for (int i = 0; i < n; i++) {
            x[i] += part * dx[i];
            w[i] += part * dw[i];
            z[i] += part * dz[i];
            v[i] += part * dv[i];
        }
        for (int j = 0; j < rows; j++) {
            y[j] += part * dy[j];
        }
        return true;
    }

    private static double room(double longest, double value, double change) {
        return change < 0 ? Math.min(longest, -value / change) : longest;
    }

    private double[] prices() {
        double[][] square = new double[rows][rows];
        double[] right = new double[rows];
        for (int j = 0; j < rows; j++) {
            right[j] = -unmet(j);
            for (int i = 0; i < n; i++) {
                double weighted = weight[i] * b[j][i];
                right[j] -= weighted * h[i];
                for (int k = 0; k < rows; k++) {
                    square[j][k] += weighted * b[k][i];
                }
            }
        }
        for (int j = 0; j < rows; j++) {
            square[j][j] += 1e-14 * square[j][j] + 1e-200;
        }
        return LinearSystem.solve(square, right);
    }
}
