package leverwright.mechanics.muscle;

/**
 * Shares the moments of up to three joints among muscles by the least sum of cubed stresses, one problem after another without
 * making any object: minimise Σ (F/D)³ with Σ r·F = M for every joint and 0 ≤ F ≤ limit.
 *
 * <p><b>Method.</b> Written in stresses x = F/D, a muscle that neither rests nor is full has x = √s with s = Σ r·D·λ, one
 * unknown λ a joint; a resting muscle has s ≤ 0, a full one √s beyond its limit. What is left is to find the λ that make the
 * moments, the gradient of a convex function: Newton steps, of which one that overshoots is taken back, each muscle's curvature
 * then replaced by that of its secant. A muscle that has just switched on or off keeps 0.3 of its last curvature; without that
 * the steps jump to and fro over the kink where it switches. Muscles of one joint share its root √|λ|. Criterion: R. D.
 * Crowninshield and R. A. Brand, "A physiologically based criterion of muscle force prediction in locomotion", J Biomech 14
 * (1981) 793-801 (abstract read; the exponent 3 from memory).
 *
 * <p><b>Units.</b> Arms m, moments N·m, forces N; divisors m² (areas) or N (capacities). Not for several threads at once.
 */
public final class CubicSharing {
    /** Most joints of one problem. */
    public static final int MOST_JOINTS = 3;

    private static final double TOLERANCE = 1e-10;
    private static final double KEPT = 0.3;
    private static final double ENOUGH = 0.5;
    private static final double LEAST = 1e-280;
    private static final double IDLE = 5e-6;
    private static final double BEND = 1.9;
    private static final int BENT_STEPS = 4;
    private static final double SINGULAR = 1e-11;
    private static final int MOST_STEPS = 150;
    /** Group of the muscles that pull on several joints; those of one joint stand before it, by joint and direction. */
    private static final int SEVERAL = 2 * MOST_JOINTS;

    private final int muscles;
    private final double[] divisors;
    private final double[] limits;
    private final double[] arms;
    private final int[] groups;
    private final int[] slots;
    private final int[] starts = new int[SEVERAL + 2];
    private boolean regroup = true;

    // Muscles in the order of their groups: B = r·D of each joint, or |B| of its only one in b0; u the greatest stress.
    private final double[] b0;
    private final double[] b1;
    private final double[] b2;
    private final double[] root;
    private final double[] most;
    private final double[] stress;
    private final double[] lastStress;
    /** Curvature ½/x of muscles that pull on several joints. */
    private final double[] curvature;

    private final double[] drive;
    private final double[] lastDrive;

    // Muscles of one joint alone by group: Σ B·√B, the √|λ| up to which none is full, curvature; by 2·joint: what λ
    // gave.
    private final double[] total = new double[SEVERAL];
    private final double[] free = new double[SEVERAL];
    private final double[] curvatures = new double[SEVERAL];
    private final double[] half = new double[SEVERAL];
    private final double[] tangent = new double[SEVERAL];
    private final double[] pulls = new double[SEVERAL];
    private final double[] lastPulls = new double[SEVERAL];
    private final double[] lambdas = new double[SEVERAL];
    private final double[] lastLambdas = new double[SEVERAL];
    private final int[] calls = new int[SEVERAL];

    private double m0;
    private double m1;
    private double m2;
    private double l0;
    private double l1;
    private double l2;
    private double d0;
    private double d1;
    private double d2;
    private int steps;

    /**
     * Makes a solver for problems of a size.
     *
     * @param muscles at least 1
     */
    public CubicSharing(int muscles) {
        this.muscles = muscles;
        divisors = new double[muscles];
        limits = new double[muscles];
        arms = new double[MOST_JOINTS * muscles];
        groups = new int[muscles];
        slots = new int[muscles];
        b0 = new double[muscles];
        b1 = new double[muscles];
        b2 = new double[muscles];
        root = new double[muscles];
        most = new double[muscles];
        stress = new double[muscles];
        lastStress = new double[muscles];
        curvature = new double[muscles];
        drive = new double[muscles];
        lastDrive = new double[muscles];
    }

    /**
     * Sets one muscle.
     *
     * @param muscle its index
     * @param divisor what its force is divided by in the criterion, greater than 0
     * @param limit greatest force, N, not negative
     * @param arm0 arm about the first joint, m, positive where a pull makes a positive moment
     * @param arm1 arm about the second joint; 0 without one
     * @param arm2 arm about the third joint; 0 without one
     */
    public void muscle(int muscle, double divisor, double limit, double arm0, double arm1, double arm2) {
        divisors[muscle] = divisor;
        limits[muscle] = limit;
        int at = MOST_JOINTS * muscle;
        arms[at] = arm0;
        arms[at + 1] = arm1;
        arms[at + 2] = arm2;
        int group;
        if (arm1 == 0 && arm2 == 0) {
            group = arm0 < 0 ? 1 : 0;
        } else if (arm0 == 0 && arm2 == 0) {
            group = arm1 < 0 ? 3 : 2;
        } else if (arm0 == 0 && arm1 == 0) {
            group = arm2 < 0 ? 5 : 4;
        } else {
            group = SEVERAL;
        }
        regroup |= groups[muscle] != group;
        groups[muscle] = group;
    }

    /** Sets the moments to be made, N·m; 0 for a joint that is not there. */
    public void moments(double first, double second, double third) {
        m0 = first;
        m1 = second;
        m2 = third;
    }

    private void group() {
        int next = 0;
        for (int g = 0; g <= SEVERAL; g++) {
            starts[g] = next;
            for (int i = 0; i < muscles; i++) {
                if (groups[i] == g) {
                    slots[i] = next++;
                }
            }
        }
        starts[SEVERAL + 1] = next;
        regroup = false;
    }

    private void fill() {
        for (int g = 0; g < SEVERAL; g++) {
            total[g] = 0;
            free[g] = Double.MAX_VALUE;
            curvatures[g] = 0;
        }
        for (int i = 0; i < muscles; i++) {
            int k = slots[i];
            int at = MOST_JOINTS * i;
            double divisor = divisors[i];
            most[k] = limits[i] / divisor;
            int group = groups[i];
            if (group == SEVERAL) {
                b0[k] = arms[at] * divisor;
                b1[k] = arms[at + 1] * divisor;
                b2[k] = arms[at + 2] * divisor;
                curvature[k] = 1;
            } else {
                double b = Math.abs(arms[at + (group >> 1)] * divisor);
                double r = Math.sqrt(b);
                b0[k] = b;
                root[k] = r;
                total[group] += b * r;
                free[group] = Math.min(free[group], most[k] / r);
                curvatures[group] += b * b;
            }
        }
    }

    /**
     * Solves the problem that was set.
     *
     * @return whether the moments are met; if not, they may be beyond what the muscles can make, or the search did not settle
     */
    public boolean solve() {
        if (regroup) {
            group();
        }
        fill();
        double goal = TOLERANCE * Math.max(Math.abs(m0), Math.max(Math.abs(m1), Math.abs(m2)));
        start();
        double slope = 0;
        double g0 = -m0;
        double g1 = -m1;
        double g2 = -m2;
        for (steps = 1; steps <= MOST_STEPS; steps++) {
            double t0 = l0 + d0;
            double t1 = l1 + d1;
            double t2 = l2 + d2;
            double n0 = pull(0, t0) - m0;
            double n1 = pull(2, t1) - m1;
            double n2 = pull(4, t2) - m2;
            for (int i = starts[SEVERAL]; i < muscles; i++) {
                double s = b0[i] * t0 + b1[i] * t1 + b2[i] * t2;
                double x = s > 0 ? Math.min(Math.sqrt(s), most[i]) : 0;
                drive[i] = s;
                stress[i] = x;
                n0 += b0[i] * x;
                n1 += b1[i] * x;
                n2 += b2[i] * x;
            }
            if (Math.abs(n0) <= goal && Math.abs(n1) <= goal && Math.abs(n2) <= goal) {
                finish(0, t0);
                finish(2, t1);
                finish(4, t2);
                return true;
            }
            if (d0 * n0 + d1 * n1 + d2 * n2 <= ENOUGH * Math.abs(slope)) {
                l0 = t0;
                l1 = t1;
                l2 = t2;
                g0 = n0;
                g1 = n1;
                g2 = n2;
                accept();
            } else {
                reject();
            }
            step(g0, g1, g2);
            if (steps <= BENT_STEPS) {
                d0 = bent(l0, d0);
                d1 = bent(l1, d1);
                d2 = bent(l2, d2);
            }
            slope = d0 * g0 + d1 * g1 + d2 * g2;
        }
        return false;
    }

    /**
     * A step of a joint's λ taken along its root, in which the muscles of that joint pull in proportion: √|λ| changes by
     * step/(2·√|λ|).
     */
    private static double bent(double lambda, double step) {
        return Math.abs(step) < BEND * Math.abs(lambda) ? step + step * step / (4 * lambda) : step;
    }

    /** Returns the moment of the muscles of one joint alone, of the direction that its λ calls. */
    private double pull(int joint, double lambda) {
        int group = lambda > 0 ? joint : joint + 1;
        double own = Math.sqrt(Math.abs(lambda));
        double sum;
        double rising = total[group];
        if (own <= free[group]) {
            sum = rising * own;
        } else {
            sum = 0;
            rising = 0;
            for (int i = starts[group]; i < starts[group + 1]; i++) {
                double x = root[i] * own;
                if (x < most[i]) {
                    rising += b0[i] * root[i];
                    sum += b0[i] * x;
                } else {
                    sum += b0[i] * most[i];
                }
            }
        }
        half[joint] = 0.5 * own / Math.max(Math.abs(lambda), LEAST);
        tangent[joint] = rising;
        calls[joint] = group;
        double moment = lambda > 0 ? sum : -sum;
        pulls[joint] = moment;
        lambdas[joint] = lambda;
        return moment;
    }

    private void finish(int joint, double lambda) {
        int group = lambda > 0 ? joint : joint + 1;
        double own = Math.sqrt(Math.abs(lambda));
        for (int i = starts[joint]; i < starts[joint + 2]; i++) {
            stress[i] = 0;
        }
        for (int i = starts[group]; i < starts[group + 1]; i++) {
            stress[i] = Math.min(root[i] * own, most[i]);
        }
    }

    /** The directions of the least squares answer, scaled so that the muscles that pull meet the moments on the whole. */
    private void start() {
        step(-m0, -m1, -m2);
        double made = m0 * startOf(0, d0) + m1 * startOf(2, d1) + m2 * startOf(4, d2);
        for (int i = starts[SEVERAL]; i < muscles; i++) {
            double s = b0[i] * d0 + b1[i] * d1 + b2[i] * d2;
            if (s > 0) {
                made += Math.sqrt(s) * (b0[i] * m0 + b1[i] * m1 + b2[i] * m2);
            }
            curvature[i] = 0;
            lastDrive[i] = 0;
            lastStress[i] = 0;
        }
        double scale = made > 0 ? (m0 * m0 + m1 * m1 + m2 * m2) / made : 1;
        scale *= scale;
        l0 = d0 * scale;
        l1 = d1 * scale;
        l2 = d2 * scale;
        d0 = 0;
        d1 = 0;
        d2 = 0;
        for (int g = 0; g < SEVERAL; g++) {
            curvatures[g] = 0;
            lastPulls[g] = 0;
            lastLambdas[g] = 0;
        }
    }

    private double startOf(int group, double lambda) {
        double own = Math.sqrt(Math.abs(lambda));
        return lambda > 0 ? total[group] * own : -total[group + 1] * own;
    }

    /** Curvatures where the step is kept: the tangent's, or what is left of the last where the muscle rests or is full. */
    private void accept() {
        accept(0);
        accept(2);
        accept(4);
        for (int i = starts[SEVERAL]; i < muscles; i++) {
            double s = drive[i];
            double x = stress[i];
            lastDrive[i] = s;
            lastStress[i] = x;
            curvature[i] = s > 0 && x < most[i]
                    ? 0.5 * x / s
                    : Math.max(KEPT * curvature[i], IDLE / Math.sqrt(Math.max(Math.abs(s), LEAST)));
        }
    }

    private void accept(int joint) {
        int called = calls[joint];
        int resting = 2 * joint + 1 - called;
        double h = half[joint];
        double rising = tangent[joint];
        double kept = rising == total[called] ? 0 : KEPT * curvatures[called];
        curvatures[called] = Math.max(rising * h, kept);
        curvatures[resting] = Math.max(KEPT * curvatures[resting], 2 * IDLE * total[resting] * h);
        lastPulls[joint] = pulls[joint];
        lastLambdas[joint] = lambdas[joint];
    }

    /** Curvatures where the step is taken back: that of the secant to it, where larger. */
    private void reject() {
        reject(0);
        reject(2);
        reject(4);
        for (int i = starts[SEVERAL]; i < muscles; i++) {
            double run = drive[i] - lastDrive[i];
            if (Math.abs(run) > LEAST) {
                curvature[i] = Math.max((stress[i] - lastStress[i]) / run, curvature[i]);
            }
        }
    }

    private void reject(int joint) {
        double run = lambdas[joint] - lastLambdas[joint];
        if (Math.abs(run) > LEAST) {
            double secant = (pulls[joint] - lastPulls[joint]) / run;
            if (secant > curvatures[joint] + curvatures[joint + 1]) {
                int called = calls[joint];
                curvatures[called] = secant - curvatures[2 * joint + 1 - called];
            }
        }
    }

    /** Solves (Σ c·b·bᵀ + ε)·d = −g; ε keeps a joint that nothing moves in its place. */
    private void step(double g0, double g1, double g2) {
        double h00 = curvatures[0] + curvatures[1];
        double h01 = 0;
        double h02 = 0;
        double h11 = curvatures[2] + curvatures[3];
        double h12 = 0;
        double h22 = curvatures[4] + curvatures[5];
        for (int i = starts[SEVERAL]; i < muscles; i++) {
            double c = curvature[i];
            double c0 = c * b0[i];
            double c1 = c * b1[i];
            h00 += c0 * b0[i];
            h01 += c0 * b1[i];
            h02 += c0 * b2[i];
            h11 += c1 * b1[i];
            h12 += c1 * b2[i];
            h22 += c * b2[i] * b2[i];
        }
        double e = 1e-13 * (h00 + h11 + h22) + 1e-300;
        h00 += e;
        h11 += e;
        h22 += e;
        double c00 = h11 * h22 - h12 * h12;
        double c01 = h02 * h12 - h01 * h22;
        double c02 = h01 * h12 - h02 * h11;
        double det = h00 * c00 + h01 * c01 + h02 * c02;
        if (det > SINGULAR * (h00 * h11 * h22)) {
            double per = -1 / det;
            double c11 = h00 * h22 - h02 * h02;
            double c12 = h01 * h02 - h00 * h12;
            double c22 = h00 * h11 - h01 * h01;
            d0 = (c00 * g0 + c01 * g1 + c02 * g2) * per;
            d1 = (c01 * g0 + c11 * g1 + c12 * g2) * per;
            d2 = (c02 * g0 + c12 * g1 + c22 * g2) * per;
            return;
        }
        eliminate(h00, h01, h02, h11, h12, h22, e, g0, g1, g2);
    }

    /** The same by elimination with pivots held up, for joints that hardly anything tells apart. */
    private void eliminate(
            double h00,
            double h01,
            double h02,
            double h11,
            double h12,
            double h22,
            double e,
            double g0,
            double g1,
            double g2) {
        double i0 = 1 / h00;
        double u1 = h01 * i0;
        double u2 = h02 * i0;
        double p1 = 1 / Math.max(h11 - u1 * h01, e);
        double t = h12 - u1 * h02;
        double u3 = t * p1;
        double p2 = Math.max(h22 - u2 * h02 - u3 * t, e);
        double y1 = -g1 + u1 * g0;
        double y2 = -g2 + u2 * g0 - u3 * y1;
        d2 = y2 / p2;
        d1 = y1 * p1 - u3 * d2;
        d0 = -g0 * i0 - u1 * d1 - u2 * d2;
    }

    /** Returns the force of a muscle, N. */
    public double force(int muscle) {
        return divisors[muscle] * stress[slots[muscle]];
    }

    /** Returns the λ of a joint after {@link #solve}: what a newton metre more would cost, up to a factor; N²·m⁻¹·D⁻³. */
    double multiplier(int joint) {
        return lambdas[2 * joint];
    }

    /** Returns how many steps the last problem took. */
    public int steps() {
        return steps;
    }
}
