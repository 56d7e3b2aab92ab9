package leverwright.mechanics.numeric;

/**
 * A seeded stream of random numbers, the same on every JDK: SplitMix64 (G. L. Steele, D. Lea and C. H. Flood, "Fast
 * splittable pseudorandom number generators", OOPSLA 2014; constants from memory, checked by a test against
 * {@link java.util.SplittableRandom}, which documents that algorithm). Not for secrets.
 */
public final class RandomStream {
    private static final long STEP = 0x9E3779B97F4A7C15L;
    private static final double UNIT = 0x1.0p-53;

    private long state;

    /** Makes the stream that belongs to a seed; equal seeds give equal streams. */
    public RandomStream(long seed) {
        state = seed;
    }

    /** Returns the stream of a seed without its first numbers, as if so many 64 bits had been taken. */
    public static RandomStream skipping(long seed, long taken) {
        return new RandomStream(seed + taken * STEP);
    }

    /** Returns the next 64 random bits. */
    public long nextLong() {
        state += STEP;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** Returns the next number, evenly spread over [0, 1). */
    public double nextUnit() {
        return (nextLong() >>> 11) * UNIT;
    }

    /**
     * Returns the next number, evenly spread over [least, most).
     *
     * @throws IllegalArgumentException if a bound is not finite or {@code most} is below {@code least}
     */
    public double nextBetween(double least, double most) {
        Require.finite(least, "lower bound of a random number", "");
        Require.within(most, least, Double.MAX_VALUE, "upper bound of a random number", "");
        return least + (most - least) * nextUnit();
    }

    /**
     * Returns the next whole number from 0 to {@code count} − 1.
     *
     * @throws IllegalArgumentException if {@code count} is below 1
     */
    public int nextIndex(int count) {
        Require.within(count, 1, Integer.MAX_VALUE, "number of choices of a random index", "");
        return (int) (nextUnit() * count);
    }

    /**
     * Returns the next number of the normal distribution with mean 0 and standard deviation 1, by the polar method
     * (G. Marsaglia and T. A. Bray, "A convenient method for generating normal variables", SIAM Review 6 (1964): from
     * memory), one number per accepted pair.
     */
    public double nextNormal() {
        while (true) {
            double u = 2 * nextUnit() - 1;
            double v = 2 * nextUnit() - 1;
            double s = u * u + v * v;
            if (s > 0 && s < 1) {
                return u * Math.sqrt(-2 * StrictMath.log(s) / s);
            }
        }
    }

    /** Returns a new stream whose numbers are unrelated to the rest of this one; takes one number from this stream. */
    public RandomStream split() {
        return new RandomStream(nextLong());
    }
}
