package leverwright.mechanics.numeric;

/**
 * The one sine and cosine of the project, and the other elementary functions, with the same bits everywhere.
 *
 * <p>Method of sine and cosine: the angle less the nearest multiple of π/64 is carried as a sum of two doubles, with π/64
 * split so that the multiple times the leading part is exact (W. J. Cody and W. Waite, <i>Software Manual for the Elementary
 * Functions</i>, 1980: the method, from memory). Sine and cosine of the multiple come from {@link SineTable}, those of the
 * rest from Taylor's series, and the addition theorems join them: small terms first, and a cosine near ±1 as ±1 and what it
 * lacks, so that the error stays below 0.8 ulp next to the zeros too.
 *
 * <p>Larger angles, and those next to a multiple, take the nearest multiple of π/2 with π/2 in more parts, and the polynomials
 * on [−π/4, π/4] of Sun's fdlibm 5.3 ({@code k_sin.c}, {@code k_cos.c}, freely distributable: coefficients as printed there);
 * the error is below 1 ulp. Beyond {@link #OWN_RANGE} rad, where no posture lies, {@link StrictMath} answers: its bits are
 * fixed by the Java specification.
 *
 * <p>The remaining functions go to {@link StrictMath} for the same reason; {@link Math} may differ between JDKs.
 */
public final class Trigonometry {
    /** Angles up to this size, rad, are reduced by this class itself; larger ones by {@link StrictMath}. */
    public static final double OWN_RANGE = 1.0e6;

    private static final double TWO_OVER_PI = 0.63661977236758134308;
    /** 1.5·2⁵²: adding it rounds to the nearest whole number, ties to even, and leaves that number in the low bits. */
    static final double ROUNDER = 6755399441055744.0;

    // π/2 = FIRST + SECOND + THIRD + THIRD_REST; FIRST to THIRD have 33 bits each.
    private static final double FIRST = 0x1.921fb544p+0;
    private static final double SECOND = 0x1.0b4611a6p-34;
    private static final double THIRD = 0x1.3198a2ep-69;
    private static final double THIRD_REST = 0x1.b839a252049c1p-104;
    /** π/2 − FIRST. */
    private static final double FIRST_REST = 0x1.0b4611a626331p-34;
    /**
     * Angles up to this size, rad, whose rest is at least {@link #SMALL_REST} take the short split: its error, at most
     * 1000·2⁻⁹² from STEP_REST and as much from rounding, then is below 2⁻¹² ulp of the rest.
     */
    private static final double SHORT_RANGE = 48;

    /** π/64 = STEP + STEP_REST. */
    private static final double STEP = FIRST / 32;

    private static final double STEP_REST = FIRST_REST / 32;
    static final double STEPS_PER_RADIAN = 32 * TWO_OVER_PI;

    // Taylor's series: with a rest of at most π/128 the next terms are below 2⁻⁵⁸.
    private static final double BEND_1 = -1.0 / 6;
    private static final double BEND_2 = 1.0 / 120;
    private static final double BEND_3 = -1.0 / 5040;
    private static final double DIP_1 = -1.0 / 2;
    private static final double DIP_2 = 1.0 / 24;
    private static final double DIP_3 = -1.0 / 720;

    private static final double SMALL_REST = 0x1.0p-16;

    private static final double S1 = -1.66666666666666324348e-01;
    private static final double S2 = 8.33333333332248946124e-03;
    private static final double S3 = -1.98412698298579493134e-04;
    private static final double S4 = 2.75573137070700676789e-06;
    private static final double S5 = -2.50507602534068634195e-08;
    private static final double S6 = 1.58969099521155010221e-10;
    private static final double C1 = 4.16666666666666019037e-02;
    private static final double C2 = -1.38888888888741095749e-03;
    private static final double C3 = 2.48015872894767294178e-05;
    private static final double C4 = -2.75573143513906633035e-07;
    private static final double C5 = 2.08757232129817482790e-09;
    private static final double C6 = -1.13596475577881948265e-11;

    private Trigonometry() {}

    /**
     * Returns the sine of an angle.
     *
     * @param angle rad; NaN and infinity give NaN
     */
    public static double sine(double angle) {
        return new Rotation().turnTo(angle).sine();
    }

    /**
     * Returns the cosine of an angle.
     *
     * @param angle rad; NaN and infinity give NaN
     */
    public static double cosine(double angle) {
        return new Rotation().turnTo(angle).cosine();
    }

    /**
     * Writes sine and cosine of an angle into two arrays at one index.
     *
     * @param angle rad; NaN and infinity give NaN
     */
    public static void sineAndCosine(double angle, double[] sines, double[] cosines, int index) {
        Rotation rotation = new Rotation().turnTo(angle);
        sines[index] = rotation.sine();
        cosines[index] = rotation.cosine();
    }

    /** Sets the sine and cosine of an angle: from the nearest multiple of π/64 and the small rest. */
    static void turn(Rotation rotation, double angle) {
        double shifted = angle * STEPS_PER_RADIAN + ROUNDER;
        double q = shifted - ROUNDER;
        double most = angle - q * STEP; // exact within the range of the short split
        double part = q * STEP_REST;
        double x = most - part;
        double z = x * x;
        if (!isPlain(angle, x)) {
            carefully(rotation, angle);
            return;
        }
        double tail = (most - x) - part;
        double bend = x * z * (BEND_1 + z * (BEND_2 + z * BEND_3)) + tail; // sine of the rest, less x
        double dip = z * (DIP_1 + z * (DIP_2 + z * DIP_3)); // cosine of the rest, less 1
        double[] table = SineTable.ENTRIES;
        int at = SineTable.WIDTH * ((int) Double.doubleToRawLongBits(shifted) & (SineTable.TURN - 1));
        int next = at + SineTable.WIDTH * SineTable.QUARTER;
        double sine = table[at];
        double cosine = table[next];
        rotation.set(
                sine + (table[at + 2] * x + ((table[at + 3] * x + cosine * bend) + (sine * dip + table[at + 1]))),
                cosine
                        + (table[next + 2] * x
                                + ((table[next + 3] * x - sine * bend) + (cosine * dip + table[next + 1]))));
    }

    /** Tells whether the short split is enough for an angle whose rest is given. */
    static boolean isPlain(double angle, double rest) {
        return rest * rest >= SMALL_REST * SMALL_REST && Math.abs(angle) <= SHORT_RANGE;
    }

    /** The first steps of {@link #turn} for many angles, already shifted: the rest and what it lacks. */
    static void reduce(double[] angles, double[] shifted, double[] rests, double[] tails, int count) {
        for (int i = 0; i < count; i++) {
            double q = shifted[i] - ROUNDER;
            double most = angles[i] - q * STEP;
            double part = q * STEP_REST;
            double x = most - part;
            rests[i] = x;
            tails[i] = (most - x) - part;
        }
    }

    /** The series of {@link #turn} for many rests. */
    static void series(double[] rests, double[] tails, double[] bends, double[] dips, int count) {
        for (int i = 0; i < count; i++) {
            double x = rests[i];
            double z = x * x;
            bends[i] = x * z * (BEND_1 + z * (BEND_2 + z * BEND_3)) + tails[i];
            dips[i] = z * (DIP_1 + z * (DIP_2 + z * DIP_3));
        }
    }

    /** Carries π/2 with more digits: for large angles and next to multiples of π/2. */
    private static void carefully(Rotation rotation, double angle) {
        if (!(Math.abs(angle) <= OWN_RANGE)) {
            rotation.set(StrictMath.sin(angle), StrictMath.cos(angle));
            return;
        }
        double shifted = angle * TWO_OVER_PI + ROUNDER;
        double q = shifted - ROUNDER;
        double most = angle - q * FIRST; // exact
        double second = q * SECOND; // exact
        double high = most - second;
        double turn = high - most;
        double rest = (most - (high - turn)) - (second + turn); // high + rest = most − second exactly
        double third = q * THIRD; // exact
        double higher = high - third;
        double back = higher - high;
        double rest2 = (high - (higher - back)) - (third + back);
        double last = (q * THIRD_REST - rest2) - rest;
        double x = higher - last;
        double tail = (higher - x) - last;
        finish(rotation, x, tail, Double.doubleToRawLongBits(shifted));
    }

    /** Sets sine and cosine of quadrant·π/2 + x + tail. */
    private static void finish(Rotation rotation, double x, double tail, long quadrant) {
        double z = x * x;
        double z2 = z * z;
        double z4 = z2 * z2;
        double odd = (S1 + z * S2) + z2 * (S3 + z * S4) + z4 * (S5 + z * S6);
        double even = (C1 + z * C2) + z2 * (C3 + z * C4) + z4 * (C5 + z * C6);
        long sine = Double.doubleToRawLongBits(x + (x * z * odd + tail));
        long cosine = Double.doubleToRawLongBits(1.0 - (0.5 * z - (z2 * even - x * tail)));
        long swap = (sine ^ cosine) & -(quadrant & 1);
        rotation.set(
                Double.longBitsToDouble(sine ^ swap ^ ((quadrant & 2) << 62)),
                Double.longBitsToDouble(cosine ^ swap ^ (((quadrant + 1) & 2) << 62)));
    }

    /** Returns the tangent of an angle in rad. */
    public static double tangent(double angle) {
        return StrictMath.tan(angle);
    }

    /** Returns the angle, in [−π/2, π/2] rad, whose sine is given; NaN outside [−1, 1]. */
    public static double arcSine(double sine) {
        return StrictMath.asin(sine);
    }

    /** Returns the angle, in [0, π] rad, whose cosine is given; NaN outside [−1, 1]. */
    public static double arcCosine(double cosine) {
        return StrictMath.acos(cosine);
    }

    /** Returns the angle, in (−π/2, π/2) rad, whose tangent is given. */
    public static double arcTangent(double tangent) {
        return StrictMath.atan(tangent);
    }

    /** Returns the angle of the point (x, y) counter-clockwise from +x, in (−π, π] rad (−π only for y = −0, x &lt; 0). */
    public static double arcTangent(double y, double x) {
        return StrictMath.atan2(y, x);
    }
}
