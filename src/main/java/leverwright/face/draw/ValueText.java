package leverwright.face.draw;

import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Working;
import leverwright.mechanics.working.WorkingText;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Quantity;
import org.jspecify.annotations.Nullable;

/** Values as people read them: number, unit, side and band. */
public final class ValueText {
    /** Significant digits of a value in print. */
    public static final int DIGITS = 4;

    private ValueText() {}

    /** Returns a value with its unit, for example {@code "123.0 N·m"}. */
    public static String value(Quantity quantity) {
        return quantity.unit().format(quantity.value(), DIGITS);
    }

    /** Returns a setting, in SI units, in few digits without trailing zeros, for example {@code "36.83°"}. */
    public static String setting(Unit unit, double si) {
        return unit.attach(NumberText.general(unit.fromSi(si), DIGITS));
    }

    /**
     * Returns a value as the last step of its hand calculation prints it, if that step is this very value in this very
     * unit; else as {@link #value(Quantity)} does.
     */
    public static String value(Quantity quantity, @Nullable Working working) {
        if (working != null && working.ending().isEmpty() && working.last().value() == quantity.value()) {
            String answer = WorkingText.answer(working);
            if (quantity.unit() == working.last().dimension().si() || quantity.unit() == Unit.DEGREE) {
                return answer;
            }
        }
        return value(quantity);
    }

    /** Returns a dial's setting in few digits, with the error typed with it, for example {@code "45° ± 5°"}. */
    public static String setting(Quantity quantity) {
        String text = quantity.unit().format(quantity.value());
        if (!quantity.hasBand()) {
            return text;
        }
        return text + " ± " + quantity.unit().format((quantity.high() - quantity.low()) / 2);
    }

    /** Returns a dial's range, for example {@code "10° to 80°"}. */
    public static String range(DialDeclared dial) {
        Unit unit = dial.setting().unit();
        return unit.format(dial.from()) + " to " + unit.format(dial.to());
    }

    /**
     * Returns the limits of a value's band with as many decimals as the value, rounded outwards, for example {@code "118.4 to
     * 127.1"}; empty when it has none.
     */
    public static String band(Quantity quantity) {
        return quantity.band(DIGITS);
    }

    /**
     * Returns value, side and band, for example {@code "123.0 N·m per side (118.4 to 127.1)"}; the value as its hand
     * calculation prints it.
     */
    public static String full(Quantity quantity, Sides sides, @Nullable Working working) {
        String text = value(quantity, working) + (sides.words().isEmpty() ? "" : " " + sides.words());
        return quantity.hasBand() ? text + " (" + band(quantity) + ")" : text;
    }
}
