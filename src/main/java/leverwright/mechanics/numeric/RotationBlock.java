package leverwright.mechanics.numeric;

/**
 * Sines and cosines of many angles at once: for every angle the same bits as {@link Rotation}, which does the same operations
 * in the same order.
 *
 * <p>The work is cut into small loops over a block that stays in the processor's nearest cache: compilers turn only short loop
 * bodies into vector instructions, and looking up {@link SineTable} in a loop of its own keeps the arithmetic free of it. Angles
 * that {@link Trigonometry} treats with more care are rare; they are done one at a time afterwards. Makes no object per block.
 * Not for use by several threads at once.
 */
public final class RotationBlock {
    /** Greatest number of angles in a block: three dozen arrays of this length fit the processor's first cache. */
    public static final int SIZE = 128;

    private final double[] angles = new double[SIZE];
    private final double[] shifted = new double[SIZE];
    private final double[] rests = new double[SIZE];
    private final double[] tails = new double[SIZE];
    private final double[] bends = new double[SIZE];
    private final double[] dips = new double[SIZE];
    private final double[] tableSines = new double[SIZE];
    private final double[] tableCosines = new double[SIZE];
    private final double[] sinesLack = new double[SIZE];
    private final double[] cosinesLack = new double[SIZE];
    private final int[] careful = new int[SIZE];
    private final Rotation one = new Rotation();

    /** Makes room for a block. */
    public RotationBlock() {}

    /**
     * Writes sine and cosine of {@code factor · angle + offset} for each angle, into the first places of two arrays.
     *
     * @param given angles, in any unit that the factor turns into rad
     * @param from the first angle's place
     * @param count how many, at most {@link #SIZE}
     */
    public void turn(
            double[] given, int from, double factor, double offset, int count, double[] sines, double[] cosines) {
        scale(given, from, factor, offset, angles, count);
        shift(angles, shifted, count);
        Trigonometry.reduce(angles, shifted, rests, tails, count);
        int special = lookUp(count);
        Trigonometry.series(rests, tails, bends, dips, count);
        joinSines(rests, bends, dips, tableSines, sinesLack, tableCosines, cosinesLack, sines, count);
        joinCosines(rests, bends, dips, tableSines, sinesLack, tableCosines, cosinesLack, cosines, count);
        for (int k = 0; k < special; k++) {
            int i = careful[k];
            one.turnTo(angles[i]);
            sines[i] = one.sine();
            cosines[i] = one.cosine();
        }
    }

    private static void scale(double[] given, int from, double factor, double offset, double[] angles, int count) {
        for (int i = 0; i < count; i++) {
            angles[i] = factor * given[from + i] + offset;
        }
    }

    private static void shift(double[] angles, double[] shifted, int count) {
        for (int i = 0; i < count; i++) {
            shifted[i] = angles[i] * Trigonometry.STEPS_PER_RADIAN + Trigonometry.ROUNDER;
        }
    }

    /** Fetches the table's entries, and notes the angles that need more care; returns how many. */
    private int lookUp(int count) {
        double[] table = SineTable.ENTRIES;
        int special = 0;
        for (int i = 0; i < count; i++) {
            int at = SineTable.WIDTH * ((int) Double.doubleToRawLongBits(shifted[i]) & (SineTable.TURN - 1));
            int next = at + SineTable.WIDTH * SineTable.QUARTER;
            tableSines[i] = table[at];
            sinesLack[i] = table[at + 1];
            tableCosines[i] = table[next];
            cosinesLack[i] = table[next + 1];
            if (!Trigonometry.isPlain(angles[i], rests[i])) {
                careful[special++] = i;
            }
        }
        return special;
    }

    /** {@code whole} and {@code part} are the third and fourth numbers of the table's entry, made anew instead of fetched. */
    private static void joinSines(
            double[] rests,
            double[] bends,
            double[] dips,
            double[] tableSines,
            double[] sinesLack,
            double[] tableCosines,
            double[] cosinesLack,
            double[] sines,
            int count) {
        for (int i = 0; i < count; i++) {
            double x = rests[i];
            double sine = tableSines[i];
            double cosine = tableCosines[i];
            double whole = Math.rint(cosine);
            double part = (cosine - whole) + cosinesLack[i];
            sines[i] = sine + (whole * x + ((part * x + cosine * bends[i]) + (sine * dips[i] + sinesLack[i])));
        }
    }

    /** The cosine a quarter of a turn on is the sine with the other sign. */
    private static void joinCosines(
            double[] rests,
            double[] bends,
            double[] dips,
            double[] tableSines,
            double[] sinesLack,
            double[] tableCosines,
            double[] cosinesLack,
            double[] cosines,
            int count) {
        for (int i = 0; i < count; i++) {
            double x = rests[i];
            double sine = tableSines[i];
            double cosine = tableCosines[i];
            double whole = Math.rint(-sine);
            double part = (-sine - whole) - sinesLack[i];
            cosines[i] = cosine + (whole * x + ((part * x - sine * bends[i]) + (cosine * dips[i] + cosinesLack[i])));
        }
    }
}
