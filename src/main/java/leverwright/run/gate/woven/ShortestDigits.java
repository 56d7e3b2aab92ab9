package leverwright.run.gate.woven;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * Binary numbers with the fewest decimal digits that give them back, in the form {@link Double#toString(double)} has
 * promised since JDK 19. Older JDKs sometimes print a digit too many or a neighbour; here all print the same.
 */
final class ShortestDigits {

    private static final boolean TRUSTED = Runtime.version().feature() >= 19;

    private ShortestDigits() {}

    static String of(double value) {
        String plain = Double.toString(value);
        if (TRUSTED || plain.length() <= 5 || !Double.isFinite(value) || value == 0) {
            return plain;
        }
        return shortest(plain, new BigDecimal(value), text -> Double.parseDouble(text) == value);
    }

    static String of(float value) {
        String plain = Float.toString(value);
        if (TRUSTED || plain.length() <= 5 || !Float.isFinite(value) || value == 0) {
            return plain;
        }
        return shortest(plain, new BigDecimal(value), text -> Float.parseFloat(text) == value);
    }

    private interface GivesBack {
        boolean test(String text);
    }

    private static String shortest(String plain, BigDecimal exact, GivesBack test) {
        int digits = Math.max(2, new BigDecimal(plain).stripTrailingZeros().precision());
        BigDecimal best = nearest(exact, digits, test);
        BigDecimal shorter = best;
        while (shorter != null && digits > 2) {
            best = shorter;
            digits--;
            shorter = nearest(exact, digits, test);
        }
        BigDecimal chosen = shorter == null ? best : shorter;
        return chosen == null ? plain : javaForm(chosen);
    }

    /**
     * Returns the decimal of so many digits that is nearest of those that give the number back, or null when none does.
     * Next to a power of two it may be the farther neighbour, since the gap below is half as wide as the one above.
     */
    private static @Nullable BigDecimal nearest(BigDecimal exact, int digits, GivesBack test) {
        BigDecimal down = round(exact, digits, RoundingMode.DOWN);
        BigDecimal up = round(exact, digits, RoundingMode.UP);
        boolean downFits = test.test(down.toString());
        boolean upFits = test.test(up.toString());
        if (downFits && upFits) {
            return round(exact, digits, RoundingMode.HALF_EVEN);
        }
        return downFits ? down : upFits ? up : null;
    }

    private static BigDecimal round(BigDecimal exact, int digits, RoundingMode mode) {
        return exact.round(new MathContext(digits, mode));
    }

    private static String javaForm(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        String digits = stripped.unscaledValue().abs().toString();
        int exponent = digits.length() - 1 - stripped.scale();
        String sign = value.signum() < 0 ? "-" : "";
        if (exponent >= -3 && exponent < 7) {
            String text = stripped.abs().toPlainString();
            return sign + (text.indexOf('.') < 0 ? text + ".0" : text);
        }
        String fraction = digits.length() > 1 ? digits.substring(1) : "0";
        return sign + digits.charAt(0) + '.' + fraction + 'E' + exponent;
    }
}
