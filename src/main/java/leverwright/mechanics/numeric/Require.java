package leverwright.mechanics.numeric;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Checks of single numbers, each with one message that names the quantity, its value and what is allowed.
 */
public final class Require {
    private static final int DIGITS = 6;
    private static final double SMALLEST = 1e-6;
    private static final double LARGEST = 1e12;

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
            throw new IllegalArgumentException(quantity + " is " + refused(value, least, most) + withUnit(unit)
                    + "; allowed: " + text(least) + " to " + text(most) + withUnit(unit));
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
            throw new IllegalArgumentException(quantity + " is " + refused(value, Double.MIN_VALUE, most)
                    + withUnit(unit) + "; allowed: greater than 0, at most " + text(most) + withUnit(unit));
        }
        return value;
    }

    /** A refused number, in all its digits where fewer would read like an allowed one. */
    private static String refused(double value, double least, double most) {
        String text = text(value);
        double read = Double.parseDouble(text);
        return read >= least && read <= most ? Double.toString(value) : text;
    }

    /** The number as people write it, in six digits where it has more. */
    private static String text(double value) {
        double size = Math.abs(value);
        if (!(size == 0 || (size >= SMALLEST && size <= LARGEST))) {
            return Double.toString(value);
        }
        BigDecimal written = BigDecimal.valueOf(value);
        BigDecimal rounded = written.precision() > DIGITS ? written.round(new MathContext(DIGITS)) : written;
        return size == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String withUnit(String unit) {
        return unit.isEmpty() ? "" : " " + unit;
    }
}
