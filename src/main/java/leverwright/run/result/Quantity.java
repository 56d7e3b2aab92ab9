package leverwright.run.result;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Unit;

/**
 * A value with the band its typed errors give and the unit it is read in.
 *
 * @param value the value in SI units (radians for angles); finite
 * @param low the lower limit of the band in SI units; equals {@code value} when no error was typed
 * @param high the upper limit of the band in SI units; equals {@code value} when no error was typed
 * @param unit the unit in which people read the value
 */
public record Quantity(double value, double low, double high, Unit unit) {

    /**
     * Checks the numbers and turns negative zeros into zeros.
     *
     * @throws IllegalArgumentException when a number is not finite or the band does not hold the value
     */
    public Quantity {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a result must be a finite number, but this one is "
                    + (Double.isNaN(value) ? "not a number" : "infinite")
                    + "; look for a division by zero or an overflow before it");
        }
        if (!(Double.isFinite(low) && Double.isFinite(high))) {
            throw new IllegalArgumentException("the band of a result must be finite, but it goes from " + low + " to "
                    + high + " (SI); type smaller errors");
        }
        if (low > value || high < value) {
            throw new IllegalArgumentException(
                    "the band " + low + " to " + high + " (SI) does not hold its value " + value);
        }
        value += 0.0;
        low += 0.0;
        high += 0.0;
    }

    /**
     * Returns a value without a band.
     *
     * @param value the value in SI units
     * @param unit the unit in which people read the value
     */
    public static Quantity exact(double value, Unit unit) {
        return new Quantity(value, value, value, unit);
    }

    /** Returns whether a typed error gave this value a band of some width. */
    public boolean hasBand() {
        return low < high;
    }

    /**
     * Returns the limits of the band with as many decimals as the value, rounded outwards, for example {@code "118.4 to
     * 127.1"}; empty when there is none.
     *
     * @param digits significant digits of the value in print
     */
    public String band(int digits) {
        if (!hasBand()) {
            return "";
        }
        int decimals = NumberText.rounded(unit.fromSi(value == 0 ? high - low : value), digits)
                .scale();
        return limit(low, decimals, RoundingMode.FLOOR) + " to " + limit(high, decimals, RoundingMode.CEILING);
    }

    /**
     * A limit rounded outwards, so that the printed band never promises more than the computed one; what only the last bits of
     * a double say is left out before.
     */
    private String limit(double si, int decimals, RoundingMode outwards) {
        BigDecimal number = new BigDecimal(unit.fromSi(si))
                .round(new MathContext(12, RoundingMode.HALF_EVEN))
                .setScale(decimals, outwards);
        return NumberText.print(number.signum() == 0 ? BigDecimal.ZERO : number);
    }
}
