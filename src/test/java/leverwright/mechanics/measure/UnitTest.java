package leverwright.mechanics.measure;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.feetInches;
import static leverwright.mechanics.measure.Measures.inches;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.lb;
import static leverwright.mechanics.measure.Measures.m;
import static leverwright.mechanics.measure.Measures.newtonMetres;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.percent;
import static leverwright.mechanics.measure.Measures.poundsForce;
import static leverwright.mechanics.measure.Measures.squareCentimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {

    /**
     * The size of every unit. Pound, foot and inch: exact by the agreement of national laboratories of 1959 (Federal
     * Register 24 FR 5348). Pound-force: pound times the standard gravity of the 3rd CGPM (1901), and with feet the values
     * of NIST Special Publication 811 (2008), appendix B.8: 1 lbf = 4.448222 N, 1 lbf·ft = 1.355818 N·m. Degree and minute:
     * SI brochure, 9th edition, table 8. The rest are SI prefixes. Values from memory, checked by their products.
     */
    @ParameterizedTest
    @CsvSource({
        "RADIAN, 1",
        "DEGREE, 0.017453292519943295",
        "METRE, 1",
        "CENTIMETRE, 0.01",
        "MILLIMETRE, 0.001",
        "FOOT, 0.3048",
        "INCH, 0.0254",
        "KILOGRAM, 1",
        "GRAM, 0.001",
        "POUND, 0.45359237",
        "NEWTON, 1",
        "KILONEWTON, 1000",
        "POUND_FORCE, 4.4482216152605",
        "NEWTON_METRE, 1",
        "POUND_FORCE_FOOT, 1.3558179483314004",
        "JOULE, 1",
        "KILOJOULE, 1000",
        "PASCAL, 1",
        "KILOPASCAL, 1000",
        "MEGAPASCAL, 1000000",
        "NEWTON_PER_SQUARE_CENTIMETRE, 10000",
        "ONE, 1",
        "PERCENT, 0.01",
        "NEWTON_PER_METRE, 1",
        "NEWTON_PER_MILLIMETRE, 1000",
        "SECOND, 1",
        "MILLISECOND, 0.001",
        "MINUTE, 60",
        "RADIAN_PER_SECOND, 1",
        "DEGREE_PER_SECOND, 0.017453292519943295",
        "RADIAN_PER_SECOND_SQUARED, 1",
        "DEGREE_PER_SECOND_SQUARED, 0.017453292519943295",
        "METRE_PER_SECOND, 1",
        "CENTIMETRE_PER_SECOND, 0.01",
        "METRE_PER_SECOND_SQUARED, 1",
        "WATT, 1",
        "SQUARE_METRE, 1",
        "SQUARE_CENTIMETRE, 0.0001",
        "SQUARE_MILLIMETRE, 0.000001",
        "KILOGRAM_SQUARE_METRE, 1",
    })
    void hasItsPublishedSize(Unit unit, double size) {
        assertEquals(size, unit.inSi());
        assertEquals(size, unit.toSi(1));
        assertEquals(1, unit.fromSi(size));
    }

    @Test
    void listsEveryUnitInTheCheckOfSizes() throws NoSuchMethodException {
        int checked = UnitTest.class
                .getDeclaredMethod("hasItsPublishedSize", Unit.class, double.class)
                .getAnnotation(CsvSource.class)
                .value()
                .length;
        assertEquals(Unit.values().length, checked);
    }

    @Test
    void derivesPoundForceFromPoundAndStandardGravity() {
        assertEquals(9.80665, Measures.STANDARD_GRAVITY.si());
        assertEquals(4.4482216152605, lb(1).weight().si(), 1e-15);
        assertEquals(poundsForce(1).times(m(0.3048)).si(), Unit.POUND_FORCE_FOOT.inSi(), 1e-15);
    }

    @Test
    void convertsDecimalInputsToTheNearestDouble() {
        assertEquals(1.78, cm(178).si());
        assertEquals(0.345, cm(34.5).si());
        assertEquals(61.23496995, lb(135).si());
        assertEquals(1.778, feetInches(5, 10).si());
        assertEquals(0.0048, squareCentimetres(48).si());
        assertEquals(0.01, percent(1).si());
        assertEquals(Math.PI / 2, deg(90).si());
        assertEquals(Math.PI, deg(180).si());
        assertEquals(0.1524, inches(6).si());
    }

    @Test
    void printsSymbolsAsPeopleWriteThem() {
        assertEquals("1.78 m", cm(178).toString());
        assertEquals("45°", deg(45).toString());
        assertEquals("45 ± 5°", deg(45).plusOrMinus(deg(5)).toString());
        assertEquals("−23.5 N·m", newtonMetres(-23.5).toString());
        assertEquals("490.3 N", Unit.NEWTON.format(kg(50).weight().si(), 4));
        assertEquals("110.2 lb", Unit.POUND.format(50, 4));
        assertEquals("12.0 %", Unit.PERCENT.format(0.12, 3));
        assertEquals("0.12", percent(12).toString());
        assertEquals("71.0 ± 0.5 kg", MeasureText.print(kg(71).plusOrMinus(kg(0.5)), Unit.KILOGRAM, 3));
        assertEquals("0 N", newtons(-0.0).toString());
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void readsBackItsOwnPrintWithTheSameBits(Unit unit) {
        Random random = new Random(11);
        for (int i = 0; i < 300; i++) {
            double size = Math.exp(Math.log(1e-4) + random.nextDouble() * Math.log(1e9));
            double value = Math.rint(size * 1000) / 1000 * (random.nextBoolean() ? 1 : -1);
            Measure<?> typed = unit.dimension().of(unit.toSi(value), i % 3 == 0 ? unit.toSi(0.25) : 0);
            Measure<?> hard = unit.dimension().of(size, 0);
            for (Measure<?> measure : new Measure<?>[] {typed, hard}) {
                String text = MeasureText.exact(measure, unit);
                assertEquals(measure, MeasureText.parse(text, unit.dimension()), () -> "seed 11: " + text);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void isReadInEverySpellingItOffers(Unit unit) {
        for (String way : unit.ways()) {
            assertEquals(
                    unit.toSi(3),
                    MeasureText.parse("3 " + way, unit.dimension()).si(),
                    way);
            assertEquals(
                    unit.toSi(3), MeasureText.parse("3" + way, unit.dimension()).si(), way);
        }
        assertEquals(
                unit.toSi(3),
                MeasureText.parse(unit.attach("3"), unit.dimension()).si());
    }

    @Test
    void givesEveryKindAnSiUnitOfSizeOne() {
        for (Dimension dimension : Dimension.values()) {
            assertEquals(1, dimension.si().inSi());
            assertEquals(dimension, dimension.of(2, 0.5).dimension());
            assertTrue(dimension.units().contains(dimension.shown()));
        }
    }

    @Test
    void refusesAUnitOfAnotherKind() {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> kg(50).in(Unit.NEWTON));
        assertEquals("“N” is a unit of force; a mass is given in kg, g, lb", refusal.getMessage());
        assertThrows(IllegalArgumentException.class, () -> MeasureText.print(kg(50), Unit.METRE, 4));
        assertThrows(IllegalArgumentException.class, () -> feetInches(5, 12));
        assertThrows(IllegalArgumentException.class, () -> feetInches(-1, 2));
    }
}
