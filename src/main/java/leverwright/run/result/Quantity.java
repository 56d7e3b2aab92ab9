package leverwright.run.result;

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
}
