package leverwright.workbook.json;

import java.util.ArrayList;
import java.util.List;

/**
 * A JSON array.
 *
 * @param elements the elements in order
 * @param position where it was read
 */
public record JsonArray(List<JsonValue> elements, Position position) implements JsonValue {

    /** Copies the elements. */
    public JsonArray {
        elements = List.copyOf(elements);
    }

    /**
     * Makes an array that was not read from a file.
     *
     * @param elements the elements in order
     */
    public JsonArray(List<? extends JsonValue> elements) {
        this(List.copyOf(elements), Position.NOWHERE);
    }

    /**
     * Returns an array of texts.
     *
     * @param texts the texts in order
     */
    public static JsonArray ofTexts(List<String> texts) {
        return new JsonArray(texts.stream().map(JsonText::new).toList());
    }

    /**
     * Returns an array of numbers.
     *
     * @param numbers the numbers in order; finite
     * @throws IllegalArgumentException when a number is NaN or infinite
     */
    public static JsonArray ofNumbers(double... numbers) {
        List<JsonValue> values = new ArrayList<>(numbers.length);
        for (double number : numbers) {
            values.add(new JsonNumber(number));
        }
        return new JsonArray(values);
    }

    @Override
    public String kind() {
        return "an array";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JsonArray that && elements.equals(that.elements);
    }

    @Override
    public int hashCode() {
        return elements.hashCode();
    }
}
