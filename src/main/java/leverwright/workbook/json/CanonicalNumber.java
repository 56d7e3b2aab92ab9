package leverwright.workbook.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The one way in which Leverwright writes a double as text: the fewest digits that read back as the same double, the closest
 * such number when there are several, laid out as RFC 8785, section 3.2.2.3, says (ECMAScript's Number::toString). The text
 * does not depend on the version of Java, which {@link Double#toString(double)} does.
 */
public final class CanonicalNumber {

    private static final double LARGEST_EXACT_WHOLE = 9007199254740992.0; // 2^53
    private static final double MILLION = 1e6;
    private static final double LARGEST_SHORT = 1e15; // two decimals of at most 15 digits are never one double
    private static final int MOST_DIGITS = 17;

    private CanonicalNumber() {}

    /**
     * Returns a number as text, for example {@code 0.1}, {@code 123}, {@code 1e+21} or {@code 5e-324}; both zeros are
     * {@code 0}.
     *
     * @param value the number; finite
     * @throws IllegalArgumentException when the number is NaN or infinite
     */
    public static String write(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a number that is written must be finite, but is " + value
                    + "; correct the calculation that gave it");
        }
        if (value == Math.rint(value) && Math.abs(value) < LARGEST_EXACT_WHOLE) {
            return Long.toString((long) value);
        }
        return value < 0 ? "-" + laidOut(shortest(-value)) : laidOut(shortest(value));
    }

    private static BigDecimal shortest(double value) {
        double millionths = Math.rint(value * MILLION);
        if (millionths < LARGEST_SHORT && millionths / MILLION == value) {
            return BigDecimal.valueOf((long) millionths, 6).stripTrailingZeros();
        }
        BigDecimal exact = new BigDecimal(value);
        BigDecimal best = new BigDecimal(Double.toString(value)).stripTrailingZeros();
        int digits = Math.min(best.precision(), MOST_DIGITS);
        best = closest(exact, value, digits, best);
        while (--digits > 0) {
            BigDecimal shorter = closest(exact, value, digits, BigDecimal.ZERO);
            if (shorter.signum() == 0) {
                break;
            }
            best = shorter;
        }
        return best.stripTrailingZeros();
    }

    /** Returns the decimal of some digits closest to a value among those that read back as it, or the other answer. */
    private static BigDecimal closest(BigDecimal exact, double value, int digits, BigDecimal otherwise) {
        BigDecimal near = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
        if (near.doubleValue() == value) {
            return near;
        }
        // Just above a power of two the gap below is half the gap above, so the farther neighbour may be the one
        // inside.
        BigDecimal below = exact.round(new MathContext(digits, RoundingMode.DOWN));
        BigDecimal far = near.equals(below) ? exact.round(new MathContext(digits, RoundingMode.UP)) : below;
        return far.doubleValue() == value ? far : otherwise;
    }

    /** Lays out a positive number: plain from 1e-6 to below 1e21, with an exponent outside. */
    private static String laidOut(BigDecimal number) {
        String digits = number.unscaledValue().toString();
        int point = digits.length() - number.scale();
        if (point > 21 || point < -5) {
            String fraction = digits.length() > 1 ? "." + digits.substring(1) : "";
            return digits.charAt(0) + fraction + "e" + (point > 0 ? "+" : "") + (point - 1);
        }
        if (point <= 0) {
            return "0." + "0".repeat(-point) + digits;
        }
        return point >= digits.length()
                ? digits + "0".repeat(point - digits.length())
                : digits.substring(0, point) + "." + digits.substring(point);
    }
}
