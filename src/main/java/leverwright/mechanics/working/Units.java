package leverwright.mechanics.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Unit;

/** The one unit in which workings print each kind: SI, but degrees for angles, so that lines are consistent. */
final class Units {
    /** Whole numbers up to here are exact as doubles. */
    private static final double LARGEST_WHOLE = 0x1p53;

    private Units() {}

    static Unit printed(Dimension dimension) {
        return dimension == Dimension.ANGLE ? Unit.DEGREE : dimension.si();
    }

    /** The decimal with the fewest places in a unit that converts to the same double. */
    static BigDecimal shortest(double si, Unit unit) {
        double number = unit.fromSi(si);
        double power = 1;
        for (int places = 0; places <= 15 && Math.abs(number * power) < LARGEST_WHOLE; places++) {
            double whole = Math.rint(number * power);
            if (unit.toSi(whole / power) == si) {
                return BigDecimal.valueOf((long) whole, places);
            }
            power *= 10;
        }
        BigDecimal all = new BigDecimal(number)
                .round(new MathContext(17, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
        return all.scale() < 0 ? all.setScale(0) : all;
    }
}
