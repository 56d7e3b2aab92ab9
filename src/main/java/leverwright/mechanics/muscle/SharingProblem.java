package leverwright.mechanics.muscle;

import java.util.ArrayList;
import java.util.List;

/**
 * Moments of some joints, and the muscles that can make them: find F with Σ arm·F = moment for every joint and 0 ≤ F ≤ limit.
 * Immutable.
 */
public final class SharingProblem {
    /** Most joints of a problem. */
    public static final int MOST_JOINTS = 30;
    /** Most muscles of a problem. */
    public static final int MOST_MUSCLES = 200;
    /** Greatest arm, m. */
    public static final double GREATEST_ARM = 10;
    /** Greatest moment, N·m. */
    public static final double GREATEST_MOMENT = 1e7;
    /** Greatest divisor, m² or N. */
    public static final double GREATEST_DIVISOR = 1e7;
    /** Greatest limit of a force, N. */
    public static final double GREATEST_LIMIT = 1e9;

    private final List<String> joints;
    private final List<String> muscles;
    private final double[][] arms;
    private final double[] moments;
    private final double[] divisors;
    private final double[] limits;

    private SharingProblem(
            List<String> joints,
            List<String> muscles,
            double[][] arms,
            double[] moments,
            double[] divisors,
            double[] limits) {
        this.joints = List.copyOf(joints);
        this.muscles = List.copyOf(muscles);
        this.arms = new double[arms.length][];
        for (int j = 0; j < arms.length; j++) {
            this.arms[j] = arms[j].clone();
        }
        this.moments = moments.clone();
        this.divisors = divisors.clone();
        this.limits = limits.clone();
        check();
    }

    /**
     * Returns a problem.
     *
     * @param joints names of the joints, at least one
     * @param muscles names of the muscles, at least one
     * @param arms a row for each joint, in it an arm for each muscle, m
     * @param moments N·m, one for each joint
     * @param divisors what each force is divided by in the rule: areas in m², or capacities in N; greater than 0
     * @param limits greatest force of each muscle, N, not negative
     * @throws IllegalArgumentException if sizes differ or a number lies outside its range; the message names joint and muscle
     */
    public static SharingProblem of(
            List<String> joints,
            List<String> muscles,
            double[][] arms,
            double[] moments,
            double[] divisors,
            double[] limits) {
        return new SharingProblem(joints, muscles, arms, moments, divisors, limits);
    }

    private void check() {
        size("joints", joints.size(), MOST_JOINTS);
        size("muscles", muscles.size(), MOST_MUSCLES);
        length("rows of arms", arms.length, joints.size());
        length("moments", moments.length, joints.size());
        length("divisors", divisors.length, muscles.size());
        length("limits", limits.length, muscles.size());
        for (int j = 0; j < joints.size(); j++) {
            length("arms of the " + joints.get(j), arms[j].length, muscles.size());
            within(moments[j], "the moment of the " + joints.get(j), -GREATEST_MOMENT, GREATEST_MOMENT, "N·m");
            for (int i = 0; i < muscles.size(); i++) {
                within(
                        arms[j][i],
                        "the arm of the " + muscles.get(i) + " about the " + joints.get(j),
                        -GREATEST_ARM,
                        GREATEST_ARM,
                        "m");
            }
        }
        for (int i = 0; i < muscles.size(); i++) {
            String divisor = "the divisor (area or capacity) of the " + muscles.get(i);
            if (!(divisors[i] > 0 && divisors[i] <= GREATEST_DIVISOR)) {
                throw new IllegalArgumentException(
                        divisor + " is " + divisors[i] + "; allowed: greater than 0, at most " + GREATEST_DIVISOR);
            }
            within(limits[i], "the greatest force of the " + muscles.get(i), 0, GREATEST_LIMIT, "N");
        }
    }

    private static void size(String what, int count, int most) {
        if (count < 1 || count > most) {
            throw new IllegalArgumentException(
                    "a sharing problem has " + count + " " + what + "; allowed: 1 to " + most);
        }
    }

    private static void length(String what, int count, int wanted) {
        if (count != wanted) {
            throw new IllegalArgumentException(
                    "a sharing problem has " + count + " " + what + "; it needs " + wanted + ", as many as its names");
        }
    }

    private static void within(double value, String what, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    what + " is " + value + " " + unit + "; allowed: " + least + " to " + most + " " + unit);
        }
    }

    /** Returns the same muscles with all moments times a factor. */
    public SharingProblem scaled(double factor) {
        double[] more = moments.clone();
        for (int j = 0; j < more.length; j++) {
            more[j] *= factor;
        }
        return new SharingProblem(joints, muscles, arms, more, divisors, limits);
    }

    /** Returns the same muscles with other moments. */
    public SharingProblem moments(double[] others) {
        return new SharingProblem(joints, muscles, arms, others, divisors, limits);
    }

    /** Returns the names of the joints. */
    public List<String> joints() {
        return joints;
    }

    /** Returns the names of the muscles. */
    public List<String> muscles() {
        return muscles;
    }

    /** Returns a muscle's arm about a joint, m. */
    public double arm(int joint, int muscle) {
        return arms[joint][muscle];
    }

    /** Returns a joint's moment, N·m. */
    public double moment(int joint) {
        return moments[joint];
    }

    /** Returns what a muscle's force is divided by in the rule, m² or N. */
    public double divisor(int muscle) {
        return divisors[muscle];
    }

    /** Returns a muscle's greatest force, N. */
    public double limit(int muscle) {
        return limits[muscle];
    }

    /** The part of this problem with some of its joints and muscles. */
    SharingProblem part(int[] someJoints, int[] someMuscles) {
        double[][] a = new double[someJoints.length][someMuscles.length];
        double[] m = new double[someJoints.length];
        double[] d = new double[someMuscles.length];
        double[] u = new double[someMuscles.length];
        List<String> jointNames = new ArrayList<>();
        List<String> muscleNames = new ArrayList<>();
        for (int j = 0; j < someJoints.length; j++) {
            jointNames.add(joints.get(someJoints[j]));
            m[j] = moments[someJoints[j]];
            for (int i = 0; i < someMuscles.length; i++) {
                a[j][i] = arms[someJoints[j]][someMuscles[i]];
            }
        }
        for (int i = 0; i < someMuscles.length; i++) {
            muscleNames.add(muscles.get(someMuscles[i]));
            d[i] = divisors[someMuscles[i]];
            u[i] = limits[someMuscles[i]];
        }
        return new SharingProblem(jointNames, muscleNames, a, m, d, u);
    }
}
