package leverwright.mechanics.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Unit;

/** The one unit in which workings print each kind: SI, but degrees for angles, so that lines are consistent. */
final class Units {
    private Units() {}

    static Unit printed(Dimension dimension) {
        return dimension == Dimension.ANGLE ? Unit.DEGREE : dimension.si();
    }

    /** The shortest decimal in a unit that converts to the same double. */
    static BigDecimal shortest(double si, Unit unit) {
        BigDecimal number = new BigDecimal(unit.fromSi(si));
        for (int digits = 1; digits < 17; digits++) {
            BigDecimal cut = number.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (unit.toSi(cut.doubleValue()) == si) {
                return plain(cut.stripTrailingZeros());
            }
        }
        return plain(number.round(new MathContext(17, RoundingMode.HALF_EVEN)).stripTrailingZeros());
    }

    private static BigDecimal plain(BigDecimal number) {
        return number.scale() < 0 ? number.setScale(0) : number;
    }
}
