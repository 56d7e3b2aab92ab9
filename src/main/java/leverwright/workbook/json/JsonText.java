package leverwright.workbook.json;

/**
 * A JSON string.
 *
 * @param text the text without quotes and escapes
 * @param position where it was read
 */
public record JsonText(String text, Position position) implements JsonValue {

    /**
     * Makes a text that was not read from a file.
     *
     * @param text the text
     */
    public JsonText(String text) {
        this(text, Position.NOWHERE);
    }

    @Override
    public String kind() {
        return "text";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JsonText that && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }
}
