package leverwright.mechanics.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.api.Test;

/** The table's sines against Taylor's series in decimal arithmetic, with π to 60 digits (OEIS A000796). */
class SineTableTest {
    private static final MathContext DIGITS = new MathContext(60);
    private static final BigDecimal PI =
            new BigDecimal("3.14159265358979323846264338327950288419716939937510582097494");

    @Test
    void isExactToAHundredBits() {
        for (int k = 0; k < SineTable.TURN + SineTable.QUARTER; k++) {
            BigDecimal angle = PI.multiply(BigDecimal.valueOf(k)).divide(BigDecimal.valueOf(64), DIGITS);
            BigDecimal held = new BigDecimal(SineTable.sine(k, 0)).add(new BigDecimal(SineTable.sine(k, 1)));
            double error = held.subtract(sine(angle)).abs().doubleValue();
            assertTrue(error < 0x1p-104, "entry " + k + " is off by " + error);
        }
    }

    @Test
    void splitsTheCosineIntoAWholeNumberAndTheRest() {
        for (int k = 0; k < SineTable.TURN; k++) {
            int at = SineTable.WIDTH * k;
            double cosine = SineTable.ENTRIES[at + SineTable.WIDTH * SineTable.QUARTER];
            assertEquals(cosine, SineTable.ENTRIES[at + 2] + SineTable.ENTRIES[at + 3], 0x1p-53);
            assertTrue(Math.abs(SineTable.ENTRIES[at + 3]) <= 0.5);
        }
    }

    private static BigDecimal sine(BigDecimal x) {
        BigDecimal square = x.multiply(x, DIGITS);
        BigDecimal term = x;
        BigDecimal sum = x;
        for (int n = 1; term.abs().compareTo(new BigDecimal("1e-50")) > 0; n += 2) {
            term = term.multiply(square, DIGITS)
                    .divide(BigDecimal.valueOf((long) (n + 1) * (n + 2)), DIGITS)
                    .negate();
            sum = sum.add(term, DIGITS);
        }
        return sum;
    }
}
