package leverwright.mechanics.numeric;

/**
 * Checks of single numbers, each with one message that names the quantity, its value and what is allowed.
 */
public final class Require {
    private Require() {}

    /**
     * Returns the value if it is a finite number.
     *
     * @param quantity what the number is, as a reader would say it
     * @param unit its unit's symbol, or an empty string
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public static double finite(double value, String quantity, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    quantity + " is " + value + withUnit(unit) + "; allowed: any finite number");
        }
        return value;
    }

    /**
     * Returns the value if it lies from {@code least} to {@code most}, both included.
     *
     * @param quantity what the number is, as a reader would say it
     * @param unit its unit's symbol, or an empty string
     * @throws IllegalArgumentException if it lies outside or is NaN
     */
    public static double within(double value, double least, double most, String quantity, String unit) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(quantity + " is " + value + withUnit(unit) + "; allowed: " + least
                    + " to " + most + withUnit(unit));
        }
        return value;
    }

    /**
     * Returns the value if it is greater than 0 and at most {@code most}.
     *
     * @param quantity what the number is, as a reader would say it
     * @param unit its unit's symbol, or an empty string
     * @throws IllegalArgumentException if it is 0, negative, greater than {@code most} or NaN
     */
    public static double positive(double value, double most, String quantity, String unit) {
        if (!(value > 0 && value <= most)) {
            throw new IllegalArgumentException(quantity + " is " + value + withUnit(unit)
                    + "; allowed: greater than 0, at most " + most + withUnit(unit));
        }
        return value;
    }

    private static String withUnit(String unit) {
        return unit.isEmpty() ? "" : " " + unit;
    }
}
