package leverwright.workbook.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A value in a tree together with the way that leads to it. Every complaint names line, column and key path. */
public final class JsonCursor {

    private static final double LARGEST_WHOLE = 9007199254740991.0; // 2^53 - 1

    private final JsonValue value;
    private final @Nullable JsonCursor parent;
    private final @Nullable String key;
    private final int index;

    private JsonCursor(JsonValue value, @Nullable JsonCursor parent, @Nullable String key, int index) {
        this.value = value;
        this.parent = parent;
        this.key = key;
        this.index = index;
    }

    /**
     * Returns a cursor at the top of a tree.
     *
     * @param value the tree
     */
    public static JsonCursor at(JsonValue value) {
        return new JsonCursor(value, null, null, 0);
    }

    /** Returns the value here. */
    public JsonValue value() {
        return value;
    }

    /** Returns the key path, for example {@code sheet[2].note}; empty at the top. */
    public String path() {
        if (parent == null) {
            return "";
        }
        return KeyPath.join(parent.path(), key == null ? KeyPath.element(index) : KeyPath.member(key));
    }

    /**
     * Returns a problem at this place, to be thrown.
     *
     * @param complaint what is wrong, what is allowed and what to do, in one line
     */
    public JsonProblem problem(String complaint) {
        return new JsonProblem(value.position(), path(), complaint);
    }

    private JsonProblem wrongKind(String wanted) {
        return problem("expected " + wanted + ", but found " + value.kind());
    }

    /**
     * Returns the object here.
     *
     * @throws JsonProblem when the value is not an object
     */
    public JsonObject object() {
        if (value instanceof JsonObject object) {
            return object;
        }
        throw wrongKind("an object");
    }

    /**
     * Returns the array here.
     *
     * @throws JsonProblem when the value is not an array
     */
    public JsonArray array() {
        if (value instanceof JsonArray array) {
            return array;
        }
        throw wrongKind("an array");
    }

    /**
     * Returns the text here.
     *
     * @throws JsonProblem when the value is not a text
     */
    public String text() {
        if (value instanceof JsonText text) {
            return text.text();
        }
        throw wrongKind("text");
    }

    /**
     * Returns the number here; finite.
     *
     * @throws JsonProblem when the value is not a number
     */
    public double number() {
        if (value instanceof JsonNumber number) {
            return number.value();
        }
        throw wrongKind("a number");
    }

    /**
     * Returns the whole number here.
     *
     * @param least the least allowed value
     * @param greatest the greatest allowed value; at most 2^53 − 1
     * @throws JsonProblem when the value is not a whole number or lies outside the range
     */
    public long whole(long least, long greatest) {
        double number = number();
        if (number != Math.rint(number) || Math.abs(number) > LARGEST_WHOLE || number < least || number > greatest) {
            throw problem("expected a whole number from " + least + " to " + greatest + ", but found "
                    + CanonicalNumber.write(number));
        }
        return (long) number;
    }

    /**
     * Returns the truth value here.
     *
     * @throws JsonProblem when the value is neither true nor false
     */
    public boolean truth() {
        if (value instanceof JsonTruth truth) {
            return truth.value();
        }
        throw wrongKind("true or false");
    }

    /** Returns whether the value here is null. */
    public boolean isNothing() {
        return value instanceof JsonNothing;
    }

    /**
     * Returns a member that must be there.
     *
     * @param name the member's key
     * @throws JsonProblem when the value is not an object or has no such key
     */
    public JsonCursor member(String name) {
        return optional(name).orElseThrow(() -> problem("the key \"" + name + "\" is missing; add it"));
    }

    /**
     * Returns a member that may be absent.
     *
     * @param name the member's key
     * @throws JsonProblem when the value is not an object
     */
    public Optional<JsonCursor> optional(String name) {
        return object().get(name).map(found -> new JsonCursor(found, this, name, 0));
    }

    /**
     * Returns the members of the object here by key, in order.
     *
     * @throws JsonProblem when the value is not an object
     */
    public Map<String, JsonCursor> members() {
        Map<String, JsonCursor> members = new LinkedHashMap<>();
        object().members().forEach((name, member) -> members.put(name, new JsonCursor(member, this, name, 0)));
        return members;
    }

    /**
     * Returns the elements of the array here, in order.
     *
     * @throws JsonProblem when the value is not an array
     */
    public List<JsonCursor> elements() {
        List<JsonValue> elements = array().elements();
        List<JsonCursor> cursors = new ArrayList<>(elements.size());
        for (int place = 0; place < elements.size(); place++) {
            cursors.add(new JsonCursor(elements.get(place), this, null, place));
        }
        return cursors;
    }

    /**
     * Returns the texts of the array here, in order.
     *
     * @throws JsonProblem when the value is not an array of texts
     */
    public List<String> texts() {
        return elements().stream().map(JsonCursor::text).toList();
    }

    /**
     * Returns the numbers of the array here, in order.
     *
     * @throws JsonProblem when the value is not an array of numbers
     */
    public double[] numbers() {
        return elements().stream().mapToDouble(JsonCursor::number).toArray();
    }

    /**
     * Checks that the object here has no keys but those given. For files in which a misspelt key must not be ignored.
     *
     * @param allowed the keys that may be there
     * @throws JsonProblem when the value is not an object or has another key; the problem lies at that key's value
     */
    public void allowOnly(List<String> allowed) {
        for (Map.Entry<String, JsonCursor> member : members().entrySet()) {
            if (!allowed.contains(member.getKey())) {
                throw member.getValue()
                        .problem("this key is not known here; allowed are " + String.join(", ", allowed)
                                + "; correct its spelling or remove it");
            }
        }
    }
}
