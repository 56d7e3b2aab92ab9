package leverwright.mechanics.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Reading and printing of quantities as people write them.
 *
 * <p>Read: {@code 135 lb}, {@code 45 deg}, {@code 45°}, {@code 178 cm}, {@code 5 ft 10 in}, {@code 5'10"},
 * {@code 45 ± 5 deg}, {@code 45 deg +/- 5 deg}, {@code 12 %}, {@code 123 N·m} (also {@code Nm}, {@code N m}). The minus
 * sign may be a hyphen or U+2212. The error after ± takes the unit of the value where it has none, and the other way
 * round. A number without a unit is read for ratios only.
 */
public final class MeasureText {
    private MeasureText() {}

    /**
     * Returns the quantity that a text says.
     *
     * @param text what a person typed, at most 100 characters
     * @param wanted the kind of quantity expected
     * @return a value of that kind, with its error
     * @throws IllegalArgumentException naming the text, the fault and what to write instead: empty text, no number, NaN,
     *     infinity or a number too large, a decimal comma, no unit, an unknown unit (with the units of that kind), a unit
     *     of another kind, a negative error
     */
    public static Measure<?> parse(String text, Dimension wanted) {
        return new MeasureReader(text, wanted).read();
    }

    /**
     * Returns a quantity printed in the unit that its kind is shown in, with at most six significant digits and its
     * error: "1.78 m", "45 ± 5°".
     */
    public static String print(Measure<?> measure) {
        Unit unit = measure.dimension().shown();
        String value = NumberText.general(unit.fromSi(measure.si()), 6);
        return withError(value, NumberText.general(unit.fromSi(measure.error()), 6), measure, unit);
    }

    /**
     * Returns a quantity printed in a unit with a number of significant digits, trailing zeros kept; the error is rounded
     * to the decimals of the value.
     *
     * @param significant how many digits, 1 to 17
     * @throws IllegalArgumentException if the unit is of another kind or the count is out of range
     */
    public static String print(Measure<?> measure, Unit unit, int significant) {
        Checks.unit(unit, measure.dimension());
        BigDecimal value = NumberText.rounded(unit.fromSi(measure.si()), significant);
        BigDecimal error = new BigDecimal(unit.fromSi(measure.error())).setScale(value.scale(), RoundingMode.CEILING);
        return withError(NumberText.print(value), NumberText.print(error), measure, unit);
    }

    /**
     * Returns a text in a unit that {@link #parse} reads back to the same bits, error included, with the fewest decimal
     * places; in the SI unit where the given unit has no such text.
     *
     * @throws IllegalArgumentException if the unit is of another kind
     */
    public static String exact(Measure<?> measure, Unit unit) {
        Checks.unit(unit, measure.dimension());
        boolean readsBack = readsBack(measure.si(), unit) && readsBack(measure.error(), unit);
        Unit used = readsBack ? unit : measure.dimension().si();
        return withError(
                NumberText.print(used.decimal(measure.si())),
                NumberText.print(used.decimal(measure.error())),
                measure,
                used);
    }

    private static boolean readsBack(double si, Unit unit) {
        return unit.toSi(unit.decimal(si).doubleValue()) == si;
    }

    private static String withError(String value, String error, Measure<?> measure, Unit unit) {
        return unit.attach(measure.error() == 0 ? value : value + " ± " + error);
    }

    /** The spellings of a unit as they are compared: no spaces, no dots, plain squares. */
    static String key(String way) {
        return way.replaceAll("[\\s·⋅*×]", "")
                .replace("²", "2")
                .replace("^", "")
                .replace('º', '°');
    }

    /** Returns the units, of any kind, that a spelling names. */
    static List<Unit> named(String way) {
        String key = key(way);
        return List.of(Unit.values()).stream()
                .filter(unit ->
                        unit.ways().stream().anyMatch(known -> key(known).equals(key)))
                .toList();
    }
}
