package leverwright.mechanics.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MeasureTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "135 lb | MASS | 61.23496995 | 0",
                "135lbs | MASS | 61.23496995 | 0",
                "50 kg | MASS | 50 | 0",
                "50 KG | MASS | 50 | 0",
                "71 kg ± 500 g | MASS | 71 | 0.5",
                "45 deg | ANGLE | 0.7853981633974483 | 0",
                "45° | ANGLE | 0.7853981633974483 | 0",
                "45 Degrees | ANGLE | 0.7853981633974483 | 0",
                "-45 deg | ANGLE | -0.7853981633974483 | 0",
                "−45 deg | ANGLE | -0.7853981633974483 | 0",
                "0.8 rad | ANGLE | 0.8 | 0",
                "45 ± 5 deg | ANGLE | 0.7853981633974483 | 0.08726646259971647",
                "45 +/- 5 deg | ANGLE | 0.7853981633974483 | 0.08726646259971647",
                "45 deg ± 5 | ANGLE | 0.7853981633974483 | 0.08726646259971647",
                "45 deg ± 5° | ANGLE | 0.7853981633974483 | 0.08726646259971647",
                "1.78 m | LENGTH | 1.78 | 0",
                "178 cm | LENGTH | 1.78 | 0",
                "178cm±1cm | LENGTH | 1.78 | 0.01",
                "34.5 cm | LENGTH | 0.345 | 0",
                "5 ft 10 in | LENGTH | 1.778 | 0",
                "5 ft 2 in | LENGTH | 1.5748 | 0",
                "5ft2in | LENGTH | 1.5748 | 0",
                "5'10\" | LENGTH | 1.778 | 0",
                "5'10 | LENGTH | 1.778 | 0",
                "5′ 10.5″ | LENGTH | 1.7907 | 0",
                "-0 ft 6 in | LENGTH | -0.1524 | 0",
                "12 in | LENGTH | 0.3048 | 0",
                "490 N | FORCE | 490 | 0",
                "1.5 kN | FORCE | 1500 | 0",
                "1 lbf | FORCE | 4.4482216152605 | 0",
                "123 N·m | MOMENT | 123 | 0",
                "123 Nm | MOMENT | 123 | 0",
                "123 N m | MOMENT | 123 | 0",
                "123 N.m | MOMENT | 123 | 0",
                "–45 deg | ANGLE | -0.7853981633974483 | 0",
                "123 N*m | MOMENT | 123 | 0",
                "12 % | RATIO | 0.12 | 0",
                "0.12 | RATIO | 0.12 | 0",
                "12 ± 1 % | RATIO | 0.12 | 0.01",
                "1e3 J | WORK | 1000 | 0",
                ".5 s | DURATION | 0.5 | 0",
                "2 m/s^2 | ACCELERATION | 2 | 0",
                "2 m/s2 | ACCELERATION | 2 | 0",
                "48 cm2 | AREA | 0.0048 | 0",
                "25 N/cm² | STRESS | 250000 | 0",
                "180 °/s | ANGULAR_VELOCITY | 3.141592653589793 | 0",
                "0.5 kg m2 | INERTIA | 0.5 | 0",
            })
    void readsWhatPeopleWrite(String text, Dimension dimension, double si, double error) {
        Measure<?> read = MeasureText.parse(text, dimension);
        assertEquals(dimension, read.dimension());
        assertEquals(si, read.si());
        assertEquals(error, read.error());
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void readsTheExamplesThatItsMessagesGive(Dimension dimension) {
        assertEquals(0, MeasureText.parse(dimension.example(), dimension).error());
        assertTrue(MeasureText.parse(dimension.exampleWithError(), dimension).error() > 0);
    }

    @Test
    void refusesLongTextsAndControlCharactersWithoutRepeatingThem() {
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class, () -> MeasureText.parse("4".repeat(100_000), Dimension.MASS));
        assertTrue(String.valueOf(refusal.getMessage()).length() < 200, refusal.getMessage());
        assertTrue(String.valueOf(assertThrows(
                                IllegalArgumentException.class, () -> MeasureText.parse("4 k\u0007g", Dimension.MASS))
                        .getMessage())
                .contains("“4 k?g”"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`` | LENGTH | a length is needed and nothing was typed; write it like “1.78 m”",
                "`   ` | ANGLE | an angle is needed and nothing was typed; write it like “45 deg”",
                "NaN kg | MASS | “NaN kg” is not a finite number",
                "-infinity | MASS | “-infinity” is not a finite number",
                "∞ m | LENGTH | “∞ m” is not a finite number",
                "1e400 kg | MASS | “1e400 kg” holds a number too large",
                "1e308 kN | FORCE | “1e308 kN” holds a number too large",
                "1,78 m | LENGTH | has a comma between digits; write the decimal mark as a point, “1.78 m”",
                "45 | ANGLE | “45” has no unit; an angle is given in rad, deg",
                "45 furlong | LENGTH | “45 furlong” has the unknown unit “furlong”; a length is given in m, cm, mm, ft, in",
                "490 N | MASS | “490 N” is a force, but a mass is wanted, given in kg, g, lb",
                "50 kg | FORCE | “50 kg” is a mass, but a force is wanted",
                "heavy | MASS | “heavy” cannot be read as a number with a unit",
                "45 deg 3 deg | ANGLE | only feet and inches",
                "45 ± 5 ± 1 deg | ANGLE | more than one ±",
                "45 ± -5 deg | ANGLE | negative error",
                "45 ± deg | ANGLE | cannot be read",
                "± 5 deg | ANGLE | cannot be read",
                "5.5 ft 3 in | LENGTH | whole feet",
                "5 ft 12 in | LENGTH | less than 12 inches",
                "1 2 3 kg | MASS | more numbers",
                "1.2.3 kg | MASS | cannot be read",
                "5 ft -3 in | LENGTH | less than 12 inches",
                "3 mpa | STRESS | unknown unit",
            })
    void refusesWithOneMessageThatSaysWhatToWrite(String text, Dimension dimension, String part) {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> MeasureText.parse(text, dimension));
        assertTrue(String.valueOf(refusal.getMessage()).contains(part), refusal.getMessage());
    }
}
