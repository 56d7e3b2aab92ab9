package leverwright.workbook.json;

/**
 * A JSON number.
 *
 * @param value the number; finite, and never negative zero, which JSON's canonical form does not know
 * @param position where it was read
 */
public record JsonNumber(double value, Position position) implements JsonValue {

    /**
     * Turns negative zero into zero.
     *
     * @throws IllegalArgumentException when the number is NaN or infinite
     */
    public JsonNumber {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "a number in a file must be finite, but is " + value + "; correct the calculation that gave it");
        }
        value += 0.0;
    }

    /**
     * Makes a number that was not read from a file.
     *
     * @param value the number; finite
     * @throws IllegalArgumentException when the number is NaN or infinite
     */
    public JsonNumber(double value) {
        this(value, Position.NOWHERE);
    }

    @Override
    public String kind() {
        return "a number";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JsonNumber that
                && Double.doubleToRawLongBits(value) == Double.doubleToRawLongBits(that.value);
    }

    @Override
    public int hashCode() {
        return Double.hashCode(value);
    }
}
