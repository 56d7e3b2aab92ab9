package leverwright.face.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;

import leverwright.face.SampleResults;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.WorkingText;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Quantity;
import org.junit.jupiter.api.Test;

class ValueTextTest {
    @Test
    void valuesShowUnitSideAndBand() {
        Quantity moment = new Quantity(123.04, 118.41, 127.06, Unit.NEWTON_METRE);
        assertEquals("123.0 N·m per side (118.4 to 127.1)", ValueText.full(moment, Sides.PER_SIDE, null));
        assertEquals("962.4 N", ValueText.full(Quantity.exact(962.4, Unit.NEWTON), Sides.NOT_SIDED, null));
        assertEquals("25.56 cm", ValueText.value(Quantity.exact(0.2556, Unit.CENTIMETRE)));
        assertEquals("−23.59 N·m", ValueText.value(Quantity.exact(-23.59, Unit.NEWTON_METRE)));
        assertEquals("45.00°", ValueText.value(Quantity.exact(Math.PI / 4, Unit.DEGREE)));
    }

    @Test
    void bandsAreRoundedOutwardsToTheValuesDecimals() {
        assertEquals("1467 to 2936", ValueText.band(new Quantity(1957, 1467.7, 2935.5, Unit.NEWTON)));
        assertEquals("0.04000 to 0.08000", ValueText.band(new Quantity(0.06, 0.06 - 0.02, 0.06 + 0.02, Unit.METRE)));
        assertEquals("−1.001 to 1.001", ValueText.band(new Quantity(0, -1.0001, 1.0001, Unit.NEWTON)));
        assertEquals("", ValueText.band(Quantity.exact(1, Unit.NEWTON)));
    }

    @Test
    void aValueIsPrintedAsItsHandCalculationEnds() {
        double value = SampleResults.working().last().value();
        assertEquals(
                WorkingText.answer(SampleResults.working()),
                ValueText.value(Quantity.exact(value, Unit.NEWTON_METRE), SampleResults.working()));
        assertEquals("123.0 N·m", ValueText.value(Quantity.exact(123.04, Unit.NEWTON_METRE), SampleResults.working()));
    }

    @Test
    void dialsShowSettingErrorAndRange() {
        double degree = Math.PI / 180;
        Quantity setting = new Quantity(45 * degree, 40 * degree, 50 * degree, Unit.DEGREE);
        DialDeclared dial = new DialDeclared("Torso lean", setting, setting, 10 * degree, 80 * degree, degree);
        assertEquals("45° ± 5°", ValueText.setting(dial.setting()));
        assertEquals("10° to 80°", ValueText.range(dial));
    }
}
