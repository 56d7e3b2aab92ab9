package leverwright.workbook.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import leverwright.workbook.document.RecordShape.ValueType;
import leverwright.workbook.json.JsonArray;
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonNothing;
import leverwright.workbook.json.JsonNumber;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonText;
import leverwright.workbook.json.JsonTruth;
import leverwright.workbook.json.JsonValue;
import org.jspecify.annotations.Nullable;

/**
 * Writes and reads records of a closed set. A record is an object with one key a component; a member of a sealed family
 * says its kind first, under the key {@code type}; a constant is its name in small letters with spaces; an exact decimal is text; a component that
 * may be null is absent when it is, a null in a list is null. Only records of the set are ever made, and only from values of
 * exactly the declared types.
 */
final class RecordCodec {

    private static final String TYPE = "type";
    private static final long GREATEST_WHOLE = (1L << 53) - 1;
    private static final Pattern DECIMAL = Pattern.compile("-?[0-9]{1,400}(\\.[0-9]{1,400})?");

    private final Map<Class<?>, String> kinds;

    /** Made when first needed: most workbooks hold few kinds of record, and reflection is slow at a start. */
    private final Map<Class<?>, RecordShape> shapes = new ConcurrentHashMap<>();

    private final Map<Class<?>, Map<String, Class<?>>> families = new ConcurrentHashMap<>();

    /**
     * Makes a codec for a set of records.
     *
     * @param kinds every record that may be written or read, with the kind it says in its file within a sealed family
     */
    RecordCodec(Map<Class<?>, String> kinds) {
        this.kinds = Map.copyOf(kinds);
        kinds.keySet().forEach(type -> {
            if (Arrays.stream(type.getRecordComponents())
                    .anyMatch(part -> part.getName().equals(TYPE))) {
                throw new IllegalArgumentException(type.getName() + " has a component called " + TYPE
                        + ", which is the key that names the members of a family; call it otherwise");
            }
        });
    }

    /** Returns the records that may be written or read. */
    Map<Class<?>, String> kinds() {
        return kinds;
    }

    /** Returns a record as JSON, with its kind when the declared type is a sealed family. */
    JsonObject write(Object record, Class<?> declared) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        RecordShape shape = shape(record.getClass());
        if (declared.isSealed()) {
            members.put(TYPE, new JsonText(kind(record.getClass())));
        }
        for (RecordShape.Part part : shape.parts()) {
            Object value = RecordShape.value(part, record);
            if (value != null) {
                members.put(part.key(), writeValue(value, part.type()));
            }
        }
        return new JsonObject(members);
    }

    private JsonValue writeValue(@Nullable Object value, ValueType type) {
        if (value == null) {
            return new JsonNothing();
        } else if (value instanceof Double number) {
            return new JsonNumber(number);
        } else if (value instanceof Long || value instanceof Integer) {
            return whole(((Number) value).longValue());
        } else if (value instanceof String text) {
            return new JsonText(Lines.wellFormed(text));
        } else if (value instanceof Boolean truth) {
            return new JsonTruth(truth);
        } else if (value instanceof BigDecimal decimal) {
            return new JsonText(decimal.toPlainString());
        } else if (value instanceof Enum<?> constant) {
            return new JsonText(words(constant));
        } else if (value instanceof List<?> list && type.element() != null) {
            return writeList(list, type.element());
        }
        return write(value, type.type());
    }

    private JsonArray writeList(List<?> list, ValueType element) {
        List<JsonValue> elements = new ArrayList<>(list.size());
        for (Object each : list) {
            elements.add(writeValue(each, element));
        }
        return new JsonArray(elements);
    }

    private static JsonNumber whole(long value) {
        if (Math.abs(value) > GREATEST_WHOLE) {
            throw new IllegalArgumentException("the whole number " + value
                    + " cannot be recorded; allowed are magnitudes" + " up to " + GREATEST_WHOLE);
        }
        return new JsonNumber(value);
    }

    private RecordShape shape(Class<?> type) {
        if (!kinds.containsKey(type)) {
            throw new IllegalArgumentException(type.getName() + " is not a record that files hold");
        }
        return shapes.computeIfAbsent(type, RecordShape::new);
    }

    private String kind(Class<?> type) {
        return kinds.getOrDefault(type, "");
    }

    /**
     * Returns the record that JSON holds.
     *
     * @param cursor where the record stands
     * @param declared the record's class, or a sealed family whose member the JSON names
     * @throws leverwright.workbook.json.JsonProblem when anything in it is not of its declared type
     */
    Object read(JsonCursor cursor, Class<?> declared) {
        Class<?> type = declared.isSealed() ? readKind(cursor, declared) : declared;
        RecordShape shape = shape(type);
        List<@Nullable Object> values = new ArrayList<>();
        for (RecordShape.Part part : shape.parts()) {
            Optional<JsonCursor> found = cursor.optional(part.key());
            boolean absent = found.isEmpty() && part.type().nullable();
            values.add(absent ? null : readValue(cursor.member(part.key()), part.type()));
        }
        return shape.make(values, cursor);
    }

    private Object readValue(JsonCursor cursor, ValueType declared) {
        if (declared.element() != null) {
            return readList(cursor, declared.element());
        }
        Class<?> type = declared.type();
        if (type == double.class || type == Double.class) {
            return cursor.number();
        } else if (type == long.class) {
            return cursor.whole(-GREATEST_WHOLE, GREATEST_WHOLE);
        } else if (type == int.class) {
            return (int) cursor.whole(Integer.MIN_VALUE, Integer.MAX_VALUE);
        } else if (type == String.class) {
            return cursor.text();
        } else if (type == boolean.class) {
            return cursor.truth();
        } else if (type == BigDecimal.class) {
            return readDecimal(cursor);
        }
        return type.isEnum() ? readConstant(cursor, type) : read(cursor, type);
    }

    private List<@Nullable Object> readList(JsonCursor cursor, ValueType element) {
        List<@Nullable Object> values = new ArrayList<>();
        for (JsonCursor each : cursor.elements()) {
            values.add(element.nullable() && each.isNothing() ? null : readValue(each, element));
        }
        return values;
    }

    private static BigDecimal readDecimal(JsonCursor cursor) {
        String text = cursor.text();
        if (!DECIMAL.matcher(text).matches()) {
            throw cursor.problem(
                    "expected a decimal number as text such as \"9.80665\", but found \"" + shortened(text) + "\"");
        }
        return new BigDecimal(text);
    }

    private static Object readConstant(JsonCursor cursor, Class<?> type) {
        String text = cursor.text();
        List<String> allowed = new ArrayList<>();
        for (Object constant : type.getEnumConstants()) {
            String words = words((Enum<?>) constant);
            if (words.equals(text)) {
                return constant;
            }
            allowed.add(words);
        }
        throw notKnown(cursor, text, allowed);
    }

    private static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private Class<?> readKind(JsonCursor cursor, Class<?> family) {
        JsonCursor place = cursor.member(TYPE);
        String text = place.text();
        Map<String, Class<?>> members = families.computeIfAbsent(family, this::members);
        Class<?> member = members.get(text);
        if (member == null) {
            throw notKnown(place, text, List.copyOf(members.keySet()));
        }
        return member;
    }

    private Map<String, Class<?>> members(Class<?> family) {
        Map<String, Class<?>> members = new LinkedHashMap<>();
        for (Class<?> member : family.getPermittedSubclasses()) {
            members.put(kind(member), member);
        }
        return members;
    }

    private static IllegalArgumentException notKnown(JsonCursor place, String text, List<String> allowed) {
        return place.problem(
                "\"" + shortened(text) + "\" is not known here; allowed are " + String.join(", ", allowed));
    }

    private static String shortened(String text) {
        return text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }
}
