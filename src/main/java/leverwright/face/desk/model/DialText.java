package leverwright.face.desk.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Unit;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Quantity;

/** Settings of dials as people write them. */
public final class DialText {

    private DialText() {}

    /** Returns a quantity as a text that reads back to it, for example {@code "45 deg"} or {@code "45 ± 5 deg"}. */
    public static String of(Quantity quantity) {
        Unit unit = quantity.unit();
        double error = Math.max(quantity.high() - quantity.value(), quantity.value() - quantity.low());
        String text = MeasureText.exact(unit.dimension().of(quantity.value(), error), unit);
        String symbol = unit.symbol();
        return symbol.startsWith("°") && text.endsWith(symbol)
                ? text.substring(0, text.length() - symbol.length()) + " " + unit.plainWay()
                : text;
    }

    /** Returns the setting for a turn by hand: the nearest whole step of the dial within its range. */
    public static String turned(DialDeclared dial, double si) {
        Unit unit = dial.setting().unit();
        if (si <= dial.from() || si >= dial.to()) {
            return of(Quantity.exact(si <= dial.from() ? dial.from() : dial.to(), unit));
        }
        BigDecimal step = unit.decimal(dial.step());
        BigDecimal steps = BigDecimal.valueOf(unit.fromSi(si)).divide(step, 0, RoundingMode.HALF_UP);
        double rounded = unit.toSi(steps.multiply(step).doubleValue());
        double within = Math.min(dial.to(), Math.max(dial.from(), rounded));
        return of(Quantity.exact(within, unit));
    }

    /**
     * Checks what a reader typed for a dial; a number without a unit is read in the dial's unit.
     *
     * @return the setting to use
     * @throws IllegalArgumentException in words, when it cannot be read or lies outside the range
     */
    public static String typed(DialDeclared dial, String text) {
        Unit unit = dial.setting().unit();
        String setting = text.strip();
        if (!setting.isEmpty() && Character.isDigit(setting.charAt(setting.length() - 1)) && unit != Unit.ONE) {
            setting = setting + " " + unit.plainWay();
        }
        Measure<?> value = MeasureText.parse(setting, unit.dimension());
        if (value.si() < dial.from() || value.si() > dial.to()) {
            throw new IllegalArgumentException(dial.name() + " goes from " + unit.format(dial.from()) + " to "
                    + unit.format(dial.to()) + ", but " + setting + " was typed; choose a value in that range");
        }
        return setting;
    }
}
