package leverwright.mechanics.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberTextTest {

    @ParameterizedTest
    @CsvSource({
        "123.456, 4, 123.5",
        "-123.456, 4, −123.5",
        "50, 4, 50.00",
        "0.000123456, 4, 0.0001235",
        "123456.7, 4, 123457",
        "9.9996, 4, 10.00",
        "0.99996, 4, 1.000",
        "99999.6, 5, 100000",
        "0.001, 2, 0.0010",
        "0, 4, 0",
        "-0.0, 4, 0",
        "1e-17, 4, 0",
        "-1e-17, 4, 0",
        "4e-12, 4, 0.000000000004",
        "1e15, 4, 1000000000000000",
        "2.5, 1, 2",
        "3.5, 1, 4",
        "0.1, 17, 0.100000000000",
    })
    void printsSignificantDigitsInPlainDecimals(double value, int digits, String text) {
        assertEquals(text, NumberText.significant(value, digits));
    }

    @ParameterizedTest
    @CsvSource({
        "1.78, 1.78",
        "45.00000000000001, 45",
        "-0.5, −0.5",
        "-0.0, 0",
        "1234567, 1234570",
        "1e300, 1e+300",
        "1e-300, 1e−300",
        "0.00001, 0.00001",
    })
    void printsGeneralNumbersWithoutTrailingZeros(double value, String text) {
        assertEquals(text, NumberText.general(value, 6));
    }

    @Test
    void roundsQuicklyAsItRoundsExactly() {
        Random random = new Random(7);
        for (int i = 0; i < 60_000; i++) {
            double size = Math.exp(Math.log(1e-14) + random.nextDouble() * Math.log(1e27));
            int digits = 1 + random.nextInt(17);
            check(random.nextBoolean() ? size : -size, digits);
            BigDecimal half = new BigDecimal(random.nextInt(100_000) * 10 + 5).movePointLeft(random.nextInt(9));
            check(half.doubleValue(), digits);
            check(Math.nextUp(half.doubleValue()), digits);
            check(
                    Math.nextDown(
                            new BigDecimal(1).movePointLeft(random.nextInt(13)).doubleValue()),
                    digits);
        }
    }

    private static void check(double value, int digits) {
        BigDecimal exact = value == 0 ? BigDecimal.ZERO : NumberText.exactlyRounded(value, digits);
        BigDecimal expected = exact.signum() == 0 ? BigDecimal.ZERO : exact;
        assertEquals(expected, NumberText.rounded(value, digits), () -> "seed 7: " + value + " to " + digits);
    }

    @Test
    void refusesWhatIsNoNumberAndCountsOutsideTheirRange() {
        assertThrows(IllegalArgumentException.class, () -> NumberText.significant(Double.NaN, 4));
        assertThrows(IllegalArgumentException.class, () -> NumberText.significant(1, 0));
        assertThrows(IllegalArgumentException.class, () -> NumberText.significant(1, 18));
        assertThrows(IllegalArgumentException.class, () -> NumberText.general(Double.POSITIVE_INFINITY, 4));
    }
}
