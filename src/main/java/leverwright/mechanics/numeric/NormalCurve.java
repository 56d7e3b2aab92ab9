package leverwright.mechanics.numeric;

import org.hipparchus.special.Erf;

/** The normal distribution with mean 0 and standard deviation 1. */
public final class NormalCurve {
    private static final double ROOT_TWO = Math.sqrt(2);

    private NormalCurve() {}

    /** Returns which part of all draws lies below a value, 0 to 1. */
    public static double below(double value) {
        return 0.5 * (1 + Erf.erf(value / ROOT_TWO));
    }

    /**
     * Returns the value below which a part of all draws lies.
     *
     * @param part greater than 0, less than 1
     * @throws IllegalArgumentException if it is not
     */
    public static double at(double part) {
        if (!(part > 0 && part < 1)) {
            throw new IllegalArgumentException(
                    "a part of all draws is " + part + "; allowed: greater than 0 and less than 1");
        }
        return ROOT_TWO * Erf.erfInv(2 * part - 1);
    }
}
