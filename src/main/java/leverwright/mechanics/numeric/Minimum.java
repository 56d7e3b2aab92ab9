package leverwright.mechanics.numeric;

import java.util.function.DoubleUnaryOperator;

/** The least value of a function of one number that falls and then rises, by the golden section. */
public final class Minimum {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int STEPS = 80;

    private Minimum() {}

    /**
     * Returns where a function is least, as closely as its values tell: about the root of the rounding.
     *
     * @param function falls and then rises between the ends
     * @param least one end
     * @param most the other end, greater
     */
    public static double of(DoubleUnaryOperator function, double least, double most) {
        double low = least;
        double high = most;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = function.applyAsDouble(left);
        double atRight = function.applyAsDouble(right);
        for (int k = 0; k < STEPS && high - low > 1e-13 * (Math.abs(low) + Math.abs(high)); k++) {
            if (atLeft <= atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = function.applyAsDouble(left);
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = function.applyAsDouble(right);
            }
        }
        return atLeft <= atRight ? left : right;
    }
}
