package leverwright.mechanics.working;

import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Measure;
import org.jspecify.annotations.Nullable;

/**
 * One line of a hand calculation: a named value, how it follows from others, and where that rule comes from.
 *
 * @param symbol the name of the value, such as {@code M_hip}: letters, digits and underscores, a letter first
 * @param expression the formula; null if the value is given and not computed here
 * @param value what the mechanics computed, in the SI unit of its kind (radians for angles)
 * @param dimension the kind of the value
 * @param source where the formula, or the given value, comes from; may be empty
 * @param note a remark printed on a line of its own below; may be empty
 */
public record Step(
        String symbol, @Nullable Expression expression, double value, Dimension dimension, String source, String note) {

    /** Checks name, value and texts; minus zero becomes zero. */
    public Step {
        Names.check(symbol);
        Names.checkSource(source);
        Names.checkSource(note);
        value = dimension.of(value, 0).si();
    }

    /** Returns a step whose value was computed by the mechanics and follows from the formula to rounding. */
    public static Step of(String symbol, Expression expression, Measure<?> value, String source) {
        return new Step(symbol, expression, value.si(), value.dimension(), source, "");
    }

    /** Returns a step that states a value with its source and computes nothing. */
    public static Step given(String symbol, Measure<?> value, String source) {
        return new Step(symbol, null, value.si(), value.dimension(), source, "");
    }

    /** Returns the same step with a remark below it. */
    public Step noted(String remark) {
        return new Step(symbol, expression, value, dimension, source, remark);
    }

    /** Returns this step's value for use in later formulas. */
    public Expression.Symbol result() {
        return new Expression.Symbol(symbol, value, dimension, "");
    }
}
