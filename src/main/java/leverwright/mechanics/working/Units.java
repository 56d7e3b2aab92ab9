package leverwright.mechanics.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Unit;

/** The one unit in which workings print each kind: SI, but degrees for angles, so that lines are consistent. */
final class Units {
    /** Up to this count of digits small numbers stop at the decimals of {@link NumberText}; beyond it they do not. */
    private static final int ORDINARY_DIGITS = 9;

    private Units() {}

    static Unit printed(Dimension dimension) {
        return dimension == Dimension.ANGLE ? Unit.DEGREE : dimension.si();
    }

    /** The number that stands for a symbol in a line whose inputs have so many digits. */
    static BigDecimal number(Expression.Symbol symbol, int digits) {
        double value = printed(symbol.dimension()).fromSi(symbol.si());
        if (digits <= ORDINARY_DIGITS) {
            return NumberText.rounded(value, digits);
        }
        BigDecimal cut = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        return cut.scale() < 0 ? cut.setScale(0) : cut;
    }
}
