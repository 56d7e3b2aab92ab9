package leverwright.workbook.json;

/**
 * A JSON {@code null}.
 *
 * @param position where it was read
 */
public record JsonNothing(Position position) implements JsonValue {

    /** Makes a null that was not read from a file. */
    public JsonNothing() {
        this(Position.NOWHERE);
    }

    @Override
    public String kind() {
        return "null";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JsonNothing;
    }

    @Override
    public int hashCode() {
        return 0;
    }
}
