package leverwright.mechanics.numeric;

import java.util.function.DoubleUnaryOperator;

/**
 * The root of a function of an angle that is, or nearly is, a + b·sin + c·cos: what everything asks for about a pivot when a
 * part of a body swings. Three values give the three constants; a few secants then leave rounding only. Where they do not, the
 * bracketing search of {@link RootFinder} takes over.
 */
public final class Swing {
    /** Part of the values at both ends below which no step is worth its while. */
    private static final double EXACT = 1e-15;
    /** Part of them that counts as rounding where no step comes nearer. */
    private static final double ROUNDING = 2e-14;

    private static final int SECANTS = 6;

    private Swing() {}

    /**
     * Returns the angle at which a function vanishes.
     *
     * @param sought what a root means, for messages
     * @param function of the angle, rad
     * @param from one end, rad
     * @param to the other end, rad, greater, less than a whole turn further
     * @param low the function's value at the one end
     * @param high its value at the other end, of another sign
     * @param accuracy greatest error of the place, rad, where the bracketing search is needed
     * @throws RootFinder.NoRootException if the search does not settle
     */
    public static double root(
            String sought,
            DoubleUnaryOperator function,
            double from,
            double to,
            double low,
            double high,
            double accuracy) {
        if (low == 0) {
            return from;
        }
        if (high == 0) {
            return to;
        }
        double scale = Math.abs(low) + Math.abs(high);
        double middle = (from + to) / 2;
        double half = (to - from) / 2;
        double value = function.applyAsDouble(middle);
        double best = middle;
        double least = Math.abs(value);
        double before = middle;
        double valueBefore = value;
        double at = middle + fromMiddle(half, low, value, high);
        for (int k = 0; k < SECANTS && at >= from && at <= to; k++) {
            value = function.applyAsDouble(at);
            boolean nearer = Math.abs(value) < least;
            if (nearer) {
                best = at;
                least = Math.abs(value);
            }
            if (least <= EXACT * scale || (!nearer && least <= ROUNDING * scale)) {
                return best;
            }
            double slope = (value - valueBefore) / (at - before);
            before = at;
            valueBefore = value;
            at -= value / slope;
        }
        return least <= ROUNDING * scale
                ? best
                : RootFinder.between(sought, "", function, from, to, accuracy).at();
    }

    /** Where the sine curve through three values, at −half, 0 and half, crosses zero; not a number where it does not. */
    private static double fromMiddle(double half, double low, double middle, double high) {
        double b = (high - low) / (2 * Trigonometry.sine(half));
        double c = (middle - (high + low) / 2) / (1 - Trigonometry.cosine(half));
        double size = Math.sqrt(b * b + c * c);
        double share = (c - middle) / size;
        if (!(Math.abs(share) <= 1)) {
            return Double.NaN;
        }
        double top = Trigonometry.arcTangent(b, c);
        double aside = Trigonometry.arcCosine(share);
        double one = top + aside;
        return Math.abs(one) <= half ? one : top - aside;
    }
}
