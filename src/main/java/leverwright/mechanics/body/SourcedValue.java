package leverwright.mechanics.body;

import java.util.Locale;

/**
 * A number with what it is, its source and how it was read.
 *
 * @param name what the number is, as in "mass of one thigh"
 * @param value the number, in {@code unit}
 * @param unit an SI unit, or "1" for a pure ratio
 * @param source publication, table and row, or "from memory"
 * @param status how the number came to be known
 */
public record SourcedValue(String name, double value, String unit, String source, ReadingStatus status) {
    /**
     * Makes a sourced value.
     *
     * @throws IllegalArgumentException if the value is not a finite number, or a text is blank
     */
    public SourcedValue {
        if (name.isBlank() || source.isBlank() || unit.isBlank()) {
            throw new IllegalArgumentException("a number lacks its name, unit or source; give all three");
        }
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " is " + value + "; allowed: any finite number");
        }
    }

    /** Tells whether the number rests on memory, so that the result that uses it must say so. */
    public boolean fromMemory() {
        return status == ReadingStatus.FROM_MEMORY;
    }

    /** Returns a value made from this one: another name, number and unit; the source is prefixed, the status kept. */
    SourcedValue made(String newName, double newValue, String newUnit, String how) {
        return new SourcedValue(newName, newValue, newUnit, source + how, status);
    }

    @Override
    public String toString() {
        String number = "1".equals(unit) ? "%.4g" : "%.4g " + unit;
        return String.format(Locale.ROOT, "%s = " + number + " [%s; %s]", name, value, source, status.words());
    }
}
