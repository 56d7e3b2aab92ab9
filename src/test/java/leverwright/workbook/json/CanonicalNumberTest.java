package leverwright.workbook.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CanonicalNumberTest {

    private static final long SEED = 20251125;

    /** RFC 8785, appendix B: IEEE 754 bits and the text they must give (from memory). */
    @ParameterizedTest
    @CsvSource({
        "0000000000000000,0",
        "8000000000000000,0",
        "0000000000000001,5e-324",
        "8000000000000001,-5e-324",
        "7fefffffffffffff,1.7976931348623157e+308",
        "ffefffffffffffff,-1.7976931348623157e+308",
        "4340000000000000,9007199254740992",
        "c340000000000000,-9007199254740992",
        "4430000000000000,295147905179352830000",
        "44b52d02c7e14af5,9.999999999999997e+22",
        "44b52d02c7e14af6,1e+23",
        "44b52d02c7e14af7,1.0000000000000001e+23",
        "444b1ae4d6e2ef4e,999999999999999700000",
        "444b1ae4d6e2ef4f,999999999999999900000",
        "444b1ae4d6e2ef50,1e+21",
        "3eb0c6f7a0b5ed8c,9.999999999999997e-7",
        "3eb0c6f7a0b5ed8d,0.000001",
        "41b3de4355555553,333333333.3333332",
        "41b3de4355555554,333333333.33333325",
        "41b3de4355555555,333333333.3333333",
        "41b3de4355555556,333333333.3333334",
        "41b3de4355555557,333333333.33333343",
        "becbf647612f3696,-0.0000033333333333333333",
        "43143ff3c1cb0959,1424953923781206.2"
    })
    void theSamplesOfTheStandardComeOutAsPrintedThere(String bits, String text) {
        assertEquals(text, CanonicalNumber.write(Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16))));
    }

    /** 2^-44 has 16 digits at the least; older Java writes 17. */
    @Test
    void theTextDoesNotDependOnTheVersionOfJava() {
        assertEquals("5.684341886080802e-14", CanonicalNumber.write(Math.scalb(1.0, -44)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNotFiniteIsRefused(double value) {
        assertThrows(IllegalArgumentException.class, () -> CanonicalNumber.write(value));
    }

    @Test
    void randomBitsReadBackAndNoShorterTextDoes() {
        Random random = new Random(SEED);
        for (int round = 0; round < 50_000; round++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value)) {
                check(value);
                check((value % 1000) * 0.001);
            }
        }
    }

    @Test
    void powersOfTwoAndTheirNeighboursReadBackAndNoShorterTextDoes() {
        for (int exponent = -1074; exponent < 1024; exponent++) {
            double power = Math.scalb(1.0, exponent);
            check(power);
            check(Math.nextUp(power));
            check(Math.nextDown(power));
            check(-power);
        }
    }

    @Test
    void shortDecimalsStayAsTheyAreTyped() {
        Random random = new Random(SEED);
        for (int round = 0; round < 50_000; round++) {
            BigDecimal typed = BigDecimal.valueOf(random.nextInt(1_000_000_000), random.nextInt(7))
                    .stripTrailingZeros();
            assertEquals(typed.toPlainString(), CanonicalNumber.write(typed.doubleValue()), "seed " + SEED);
        }
    }

    private static void check(double value) {
        String text = CanonicalNumber.write(value);
        double back = Double.parseDouble(text);
        assertEquals(
                Double.doubleToRawLongBits(value + 0.0), Double.doubleToRawLongBits(back), () -> value + " as " + text);
        if (value == 0) {
            return;
        }
        BigDecimal exact = new BigDecimal(value);
        BigDecimal written = new BigDecimal(text).stripTrailingZeros();
        int digits = written.precision();
        for (RoundingMode mode : new RoundingMode[] {RoundingMode.UP, RoundingMode.DOWN}) {
            if (digits > 1) {
                BigDecimal shorter = exact.round(new MathContext(digits - 1, mode));
                assertTrue(shorter.doubleValue() != value, () -> text + " could be " + shorter + ", seed " + SEED);
            }
            BigDecimal neighbour = exact.round(new MathContext(digits, mode));
            boolean closer = neighbour
                            .subtract(exact)
                            .abs()
                            .compareTo(written.subtract(exact).abs())
                    < 0;
            assertTrue(!closer || neighbour.doubleValue() != value, () -> text + " is farther than " + neighbour);
        }
    }
}
