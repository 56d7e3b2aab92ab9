package leverwright.mechanics.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Decimal numbers as they are printed: no exponent, no grouping, U+2212 as the minus sign, never minus zero. */
public final class NumberText {
    /** The minus sign of print, U+2212. */
    public static final String MINUS = "−";

    private static final int MOST_DECIMALS = 12;

    private NumberText() {}

    /**
     * Returns a number with a count of significant digits, trailing zeros kept. Digits before the decimal point are never
     * rounded away, and there are never more than 12 decimals, so that noise near zero prints as 0.
     *
     * @param value a finite number
     * @param significant how many digits, 1 to 17
     * @throws IllegalArgumentException if the number is not finite or the count is out of range
     */
    public static String significant(double value, int significant) {
        return print(rounded(value, significant));
    }

    /**
     * Returns the decimal number that {@link #significant} prints; zero has scale 0.
     *
     * @throws IllegalArgumentException if the number is not finite or the count is out of range
     */
    public static BigDecimal rounded(double value, int significant) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("only finite numbers can be printed, not " + Checks.inWords(value));
        }
        if (significant < 1 || significant > 17) {
            throw new IllegalArgumentException("a number prints with 1 to 17 significant digits, not " + significant);
        }
        if (value == 0) {
            return BigDecimal.ZERO;
        }
        BigDecimal exact = new BigDecimal(value);
        BigDecimal cut = exact.round(new MathContext(significant, RoundingMode.HALF_EVEN));
        int exponent = cut.precision() - cut.scale() - 1;
        int decimals = Math.min(Math.max(significant - 1 - exponent, 0), MOST_DECIMALS);
        BigDecimal shown = exact.setScale(decimals, RoundingMode.HALF_EVEN);
        return shown.signum() == 0 ? BigDecimal.ZERO : shown;
    }

    /**
     * Returns a number rounded to at most so many significant digits, without trailing zeros: 1.78, 45, −0.5. Very large
     * and very small numbers are written with an exponent, such as 1e+300.
     */
    public static String general(double value, int most) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("only finite numbers can be printed, not " + Checks.inWords(value));
        }
        BigDecimal cut = new BigDecimal(value)
                .round(new MathContext(most, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
        if (cut.signum() == 0) {
            return "0";
        }
        int exponent = cut.precision() - cut.scale() - 1;
        if (exponent >= 15 || exponent < -9) {
            return (cut.toString().replace('E', 'e')).replace("-", MINUS);
        }
        return print(cut);
    }

    /** Returns a decimal number in plain notation with the minus sign of print. */
    public static String print(BigDecimal number) {
        String digits = number.abs().toPlainString();
        return number.signum() < 0 ? MINUS + digits : digits;
    }
}
