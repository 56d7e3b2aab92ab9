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
        return text(quantity.value(), error, unit);
    }

    private static String text(double value, double error, Unit unit) {
        String text = MeasureText.exact(unit.dimension().of(value, error), unit);
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

    /** Returns the half width of the band that a setting was typed with, SI; 0 for none, or where it cannot be read. */
    static double halfWidth(DialDeclared dial, String setting) {
        try {
            return MeasureText.parse(setting, dial.setting().unit().dimension()).error();
        } catch (IllegalArgumentException unreadable) {
            return 0;
        }
    }

    /**
     * Returns the setting for a turn by hand with a band: value and half width to the nearest whole step.
     *
     * @param halfWidth in SI units; at most half of the dial's range is taken
     */
    public static String turned(DialDeclared dial, double si, double halfWidth) {
        String value = turned(dial, si);
        Unit unit = dial.setting().unit();
        double most = Math.min(halfWidth, (dial.to() - dial.from()) / 2);
        BigDecimal step = unit.decimal(dial.step());
        BigDecimal steps = BigDecimal.valueOf(unit.fromSi(Math.max(0, most))).divide(step, 0, RoundingMode.HALF_UP);
        if (steps.signum() == 0) {
            return value;
        }
        double rounded = unit.toSi(steps.multiply(step).doubleValue());
        double centre = MeasureText.parse(value, unit.dimension()).si();
        return text(centre, rounded, unit);
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
