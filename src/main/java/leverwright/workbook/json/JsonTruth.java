package leverwright.workbook.json;

/**
 * A JSON {@code true} or {@code false}.
 *
 * @param value which of the two
 * @param position where it was read
 */
public record JsonTruth(boolean value, Position position) implements JsonValue {

    /**
     * Makes a truth value that was not read from a file.
     *
     * @param value which of the two
     */
    public JsonTruth(boolean value) {
        this(value, Position.NOWHERE);
    }

    @Override
    public String kind() {
        return "true or false";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JsonTruth that && value == that.value;
    }

    @Override
    public int hashCode() {
        return Boolean.hashCode(value);
    }
}
