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

    private static final int ROW = SIZE + 6;

    private final double[] angles = row();
    private final double[] shifted = row();
    private final double[] rests = row();
    private final double[] tails = row();
    private final double[] bends = row();
    private final double[] dips = row();
    private final double[] tableSines = row();
    private final double[] tableCosines = row();
    private final double[] sinesLack = row();
    private final double[] cosinesLack = row();
    private final double[] large = row();
    private final double[] middle = row();
    private final int[] careful = new int[SIZE];
    private final Rotation one = new Rotation();

    /** Makes room for a block. */
    public RotationBlock() {}

    /**
     * Returns an array for a block's numbers, a little longer than a block: of arrays made one after another, all begin at the
     * same place in a cache line and none at the same place in a page, which vector loads and stores need to run at full speed.
     */
    public static double[] row() {
        return new double[ROW];
    }

    /**
     * Writes sine and cosine of {@code factor · angle + offset} for each angle, into the first places of two arrays.
     *
     * @param given angles, in any unit that the factor turns into rad
     * @param from the first angle's place
     * @param count how many, at most {@link #SIZE}
     */
    public void turn(
            double[] given, int from, double factor, double offset, int count, double[] sines, double[] cosines) {
        System.arraycopy(given, from, angles, 0, count);
        scale(angles, factor, offset, shifted, count);
        Trigonometry.reduce(angles, shifted, rests, tails, count);
        int special = lookUp(count);
        Trigonometry.series(rests, tails, bends, dips, count);
        bendSines(rests, bends, tableCosines, cosinesLack, large, middle, count);
        join(tableSines, sinesLack, dips, large, middle, sines, count);
        bendCosines(rests, bends, tableSines, sinesLack, large, middle, count);
        join(tableCosines, cosinesLack, dips, large, middle, cosines, count);
        for (int k = 0; k < special; k++) {
            int i = careful[k];
            one.turnTo(angles[i]);
            sines[i] = one.sine();
            cosines[i] = one.cosine();
        }
    }

    private static void scale(double[] angles, double factor, double offset, double[] shifted, int count) {
        for (int i = 0; i < count; i++) {
            double angle = factor * angles[i] + offset;
            angles[i] = angle;
            shifted[i] = angle * Trigonometry.STEPS_PER_RADIAN + Trigonometry.ROUNDER;
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
    private static void bendSines(
            double[] rests,
            double[] bends,
            double[] tableCosines,
            double[] cosinesLack,
            double[] large,
            double[] middle,
            int count) {
        for (int i = 0; i < count; i++) {
            double cosine = tableCosines[i];
            double whole = Math.rint(cosine);
            double part = (cosine - whole) + cosinesLack[i];
            large[i] = whole * rests[i];
            middle[i] = part * rests[i] + cosine * bends[i];
        }
    }

    /** The cosine a quarter of a turn on is the sine with the other sign. */
    private static void bendCosines(
            double[] rests,
            double[] bends,
            double[] tableSines,
            double[] sinesLack,
            double[] large,
            double[] middle,
            int count) {
        for (int i = 0; i < count; i++) {
            double sine = tableSines[i];
            double whole = Math.rint(-sine);
            double part = (-sine - whole) - sinesLack[i];
            large[i] = whole * rests[i];
            middle[i] = part * rests[i] - sine * bends[i];
        }
    }

    private static void join(
            double[] numbers,
            double[] lacks,
            double[] dips,
            double[] large,
            double[] middle,
            double[] joined,
            int count) {
        for (int i = 0; i < count; i++) {
            double number = numbers[i];
            joined[i] = number + (large[i] + (middle[i] + (number * dips[i] + lacks[i])));
        }
    }
}
