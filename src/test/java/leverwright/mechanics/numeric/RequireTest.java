package leverwright.mechanics.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class RequireTest {
    private static String message(Runnable work) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, work::run).getMessage());
    }

    @Test
    void numbersAreWrittenAsPeopleWriteThem() {
        assertEquals("mass is -7 kg; allowed: 0 to 1000 kg", message(() -> Require.within(-7, 0, 1000, "mass", "kg")));
        assertEquals(
                "ratio is 1.23457; allowed: greater than 0, at most 1",
                message(() -> Require.positive(1.23456789, 1, "ratio", "")));
        assertEquals(
                "angle is NaN rad; allowed: any finite number",
                message(() -> Require.finite(Double.NaN, "angle", "rad")));
    }

    @Test
    void aNumberJustBeyondALimitKeepsTheDigitsThatShowIt() {
        assertEquals(
                "mass is 1000.00001 kg; allowed: 0 to 1000 kg",
                message(() -> Require.within(1000.00001, 0, 1000, "mass", "kg")));
    }
}
