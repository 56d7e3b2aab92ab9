package leverwright.mechanics.numeric;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.hipparchus.random.SobolSequenceGenerator;
import org.jspecify.annotations.Nullable;

/** How the points of a spread are laid over the unit cube. Every point is known by its number, so that blocks may be drawn apart. */
public enum Sampling {
    /** Each point drawn for itself, evenly. */
    RANDOM("independent draws"),

    /**
     * One point in each of as many equal slices of every axis as there are points (M. D. McKay, R. J. Beckman and W. J. Conover,
     * Technometrics 21 (1979): from memory). The order of the slices is a permutation worked out point by point.
     */
    LATIN_HYPERCUBE("Latin hypercube"),

    /**
     * Sobol' points by Hipparchus's SobolSequenceGenerator with the direction numbers new-joe-kuo-6.21201 that it carries (S. Joe
     * and F. Y. Kuo, web.maths.unsw.edu.au/~fkuo/sobol), every axis shifted digit by digit by the seed, which keeps how evenly
     * they lie.
     */
    SOBOL("Sobol' sequence");

    /** Greatest number of points. */
    public static final int MOST_POINTS = 1 << 30;
    /** Greatest number of axes: that of the direction numbers. */
    public static final int MOST_AXES = 21_201;

    private static final double UNIT = 0x1.0p-52;
    private static final double HALF_STEP = 0x1.0p-54;
    private static final long MIX = 0x9E3779B97F4A7C15L;

    private final String words;

    Sampling(String words) {
        this.words = words;
    }

    /** Returns what it is called in print. */
    public String words() {
        return words;
    }

    /**
     * Returns points of the unit cube.
     *
     * @param axes 1 to {@value #MOST_AXES}
     * @param count how many points there will be, 1 to {@value #MOST_POINTS}; only the Latin hypercube depends on it
     * @param seed equal seeds give equal points
     */
    public Points points(int axes, int count, long seed) {
        Require.within(axes, 1, MOST_AXES, "number of inputs that are drawn", "");
        Require.within(count, 1, MOST_POINTS, "number of points that are drawn", "");
        return new Points(this, axes, count, seed);
    }

    /** Points of the unit cube by their number; safe for several threads. */
    public static final class Points {
        private final Sampling sampling;
        private final int axes;
        private final int count;
        private final long seed;
        private final long[] shifts;
        private final Queue<SobolSequenceGenerator> idle = new ConcurrentLinkedQueue<>();

        private Points(Sampling sampling, int axes, int count, long seed) {
            this.sampling = sampling;
            this.axes = axes;
            this.count = count;
            this.seed = seed;
            this.shifts = new long[axes];
            RandomStream stream = new RandomStream(seed);
            for (int j = 0; j < axes; j++) {
                shifts[j] = stream.nextLong();
            }
        }

        /** Returns how many axes there are. */
        public int axes() {
            return axes;
        }

        /**
         * Returns the points from one number up to another, a row each, with entries greater than 0 and less than 1.
         *
         * @param from the first number, from 0
         * @param to the number after the last
         */
        public double[][] rows(int from, int to) {
            double[][] rows = new double[to - from][];
            switch (sampling) {
                case RANDOM -> {
                    for (int i = from; i < to; i++) {
                        rows[i - from] = random(i);
                    }
                }
                case LATIN_HYPERCUBE -> {
                    for (int i = from; i < to; i++) {
                        rows[i - from] = latin(i);
                    }
                }
                case SOBOL -> sobol(from, rows);
            }
            return rows;
        }

        private double[] random(int i) {
            RandomStream stream = RandomStream.skipping(seed, (long) i * axes);
            double[] row = new double[axes];
            for (int j = 0; j < axes; j++) {
                row[j] = inside(stream.nextUnit());
            }
            return row;
        }

        private double[] latin(int i) {
            double[] row = random(i);
            for (int j = 0; j < axes; j++) {
                row[j] = inside((permuted(i, shifts[j]) + row[j]) / count);
            }
            return row;
        }

        /** Where a number stands in a permutation of all of them: four rounds of a Feistel network, walked until inside. */
        private long permuted(int i, long key) {
            int bits = Math.max(2, 32 - Integer.numberOfLeadingZeros(count - 1));
            int half = (bits + 1) / 2;
            long mask = (1L << half) - 1;
            long at = i;
            do {
                long left = at >>> half;
                long right = at & mask;
                for (int round = 0; round < 4; round++) {
                    long other = left ^ (mixed(right + key + round * MIX) & mask);
                    left = right;
                    right = other;
                }
                at = (left << half) | right;
            } while (at >= count);
            return at;
        }

        private static long mixed(long value) {
            return new RandomStream(value).nextLong();
        }

        private void sobol(int from, double[]... rows) {
            @Nullable SobolSequenceGenerator found = idle.poll();
            SobolSequenceGenerator generator = found == null ? new SobolSequenceGenerator(axes) : found;
            for (int i = 0; i < rows.length; i++) {
                double[] row = i == 0 ? generator.skipTo(from) : generator.nextVector();
                for (int j = 0; j < axes; j++) {
                    long digits = (long) (row[j] * 0x1.0p52) ^ (shifts[j] >>> 12);
                    row[j] = inside(digits * UNIT);
                }
                rows[i] = row;
            }
            idle.add(generator);
        }

        /** Off the very ends, where a normal distribution has no value. */
        private static double inside(double unit) {
            return Math.min(Math.max(unit, HALF_STEP), 1 - HALF_STEP);
        }
    }
}
