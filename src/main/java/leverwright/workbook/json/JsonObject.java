package leverwright.workbook.json;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A JSON object. Two objects are equal only when their keys also stand in the same order, since files keep that order.
 *
 * @param members the values by key, in the order of the text
 * @param position where it was read
 */
public record JsonObject(Map<String, JsonValue> members, Position position) implements JsonValue {

    /** The object without members. */
    public static final JsonObject EMPTY = new JsonObject(new LinkedHashMap<>());

    /** Copies the members and keeps their order. */
    public JsonObject {
        members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }

    /**
     * Makes an object that was not read from a file.
     *
     * @param members the values by key, in the order they are to be written
     */
    public JsonObject(Map<String, JsonValue> members) {
        this(members, Position.NOWHERE);
    }

    /**
     * Returns the value of a key; empty when the key is absent.
     *
     * @param key the key
     */
    public Optional<JsonValue> get(String key) {
        return Optional.ofNullable(members.get(key));
    }

    /**
     * Returns the members whose keys are not among those given, in their order.
     *
     * @param keys the keys to leave out
     */
    public JsonObject without(List<String> keys) {
        Map<String, JsonValue> rest = new LinkedHashMap<>(members);
        rest.keySet().removeAll(keys);
        return rest.isEmpty() ? EMPTY : new JsonObject(rest);
    }

    @Override
    public String kind() {
        return "an object";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JsonObject that
                && new ArrayList<>(members.entrySet()).equals(new ArrayList<>(that.members.entrySet()));
    }

    @Override
    public int hashCode() {
        return members.hashCode();
    }
}
