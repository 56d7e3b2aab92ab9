package leverwright.mechanics.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** Decimal numbers as they are printed: no exponent, no grouping, U+2212 as the minus sign, never minus zero. */
public final class NumberText {
    /** The minus sign of print, U+2212. */
    public static final String MINUS = "−";

    private static final int MOST_DECIMALS = 12;

    /** Powers of ten that are exact as doubles. */
    private static final double[] POWERS_OF_TEN = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

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
        BigDecimal quick = quicklyRounded(value, significant);
        BigDecimal shown = quick != null ? quick : exactlyRounded(value, significant);
        return shown.signum() == 0 ? BigDecimal.ZERO : shown;
    }

    static BigDecimal exactlyRounded(double value, int significant) {
        BigDecimal exact = new BigDecimal(value);
        BigDecimal cut = exact.round(new MathContext(significant, RoundingMode.HALF_EVEN));
        int exponent = cut.precision() - cut.scale() - 1;
        return exact.setScale(decimals(significant, exponent), RoundingMode.HALF_EVEN);
    }

    /** The same by one multiplication, where its rounding cannot matter; null elsewhere. */
    private static @Nullable BigDecimal quicklyRounded(double value, int significant) {
        double size = Math.abs(value);
        if (significant > 12 || size < 1e-13 || size >= 1e12) {
            return null;
        }
        int decimals = decimals(significant, exponent(size));
        double scaled = value * POWERS_OF_TEN[decimals];
        double whole = Math.rint(scaled);
        if (decimals > 0 && Math.abs(whole) == POWERS_OF_TEN[significant]) {
            decimals--;
            scaled = value * POWERS_OF_TEN[decimals];
            whole = Math.rint(scaled);
        }
        boolean nearTie = Math.abs(Math.abs(scaled - whole) - 0.5) <= 4 * Math.ulp(scaled);
        return nearTie ? null : BigDecimal.valueOf((long) whole, decimals);
    }

    private static int decimals(int significant, int exponent) {
        return Math.min(Math.max(significant - 1 - exponent, 0), MOST_DECIMALS);
    }

    /** The power of ten of the first digit; one too many only where the value is a rounding away from that power. */
    private static int exponent(double size) {
        int exponent = 0;
        if (size >= 1) {
            while (size >= POWERS_OF_TEN[exponent + 1]) {
                exponent++;
            }
            return exponent;
        }
        while (size * POWERS_OF_TEN[-exponent] < 1) {
            exponent--;
        }
        return exponent;
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
