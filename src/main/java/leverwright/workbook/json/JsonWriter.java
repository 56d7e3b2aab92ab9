package leverwright.workbook.json;

import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Writes trees as text. Numbers take the one form of {@link CanonicalNumber}; strings are escaped as RFC 8785, section
 * 3.2.2.2 says: only the quote, the backslash and control characters, everything else as it is.
 */
public final class JsonWriter {

    private JsonWriter() {}

    /**
     * Returns a text laid out for people, ending with a line feed: one key a line, one string of an array a line, arrays of
     * numbers on one line, two spaces a level, keys in the order of the tree.
     *
     * @param value the tree
     */
    public static String laidOut(JsonValue value) {
        StringBuilder text = new StringBuilder();
        layOut(value, 0, text);
        return text.append('\n').toString();
    }

    /**
     * Returns a text without any white space, keys in the order of the tree.
     *
     * @param value the tree
     */
    public static String compact(JsonValue value) {
        StringBuilder text = new StringBuilder();
        write(value, false, text);
        return text.toString();
    }

    /**
     * Returns the canonical form of RFC 8785: no white space, keys sorted by their UTF-16 code units.
     *
     * @param value the tree
     */
    public static String canonical(JsonValue value) {
        StringBuilder text = new StringBuilder();
        write(value, true, text);
        return text.toString();
    }

    private static void write(JsonValue value, boolean sorted, StringBuilder text) {
        if (value instanceof JsonObject object) {
            writeObject(sorted ? new TreeMap<>(object.members()) : object.members(), sorted, text);
        } else if (value instanceof JsonArray array) {
            writeArray(array.elements(), sorted, text);
        } else {
            writeScalar(value, text);
        }
    }

    private static void writeObject(Map<String, JsonValue> members, boolean sorted, StringBuilder text) {
        text.append('{');
        boolean first = true;
        for (Map.Entry<String, JsonValue> member : members.entrySet()) {
            if (!first) {
                text.append(',');
            }
            first = false;
            quote(member.getKey(), text);
            text.append(':');
            write(member.getValue(), sorted, text);
        }
        text.append('}');
    }

    private static void writeArray(List<JsonValue> elements, boolean sorted, StringBuilder text) {
        text.append('[');
        for (int index = 0; index < elements.size(); index++) {
            if (index > 0) {
                text.append(',');
            }
            write(elements.get(index), sorted, text);
        }
        text.append(']');
    }

    private static void writeScalar(JsonValue value, StringBuilder text) {
        if (value instanceof JsonText string) {
            quote(string.text(), text);
        } else if (value instanceof JsonNumber number) {
            text.append(CanonicalNumber.write(number.value()));
        } else if (value instanceof JsonTruth truth) {
            text.append(truth.value());
        } else {
            text.append("null");
        }
    }

    private static void layOut(JsonValue value, int level, StringBuilder text) {
        if (value instanceof JsonObject object && !object.members().isEmpty()) {
            layOutObject(object, level, text);
        } else if (value instanceof JsonArray array && !array.elements().isEmpty()) {
            layOutArray(array, level, text);
        } else {
            write(value, false, text);
        }
    }

    private static void layOutObject(JsonObject object, int level, StringBuilder text) {
        text.append('{');
        Iterator<Map.Entry<String, JsonValue>> members =
                object.members().entrySet().iterator();
        while (members.hasNext()) {
            Map.Entry<String, JsonValue> member = members.next();
            startLine(level + 1, text);
            quote(member.getKey(), text);
            text.append(": ");
            layOut(member.getValue(), level + 1, text);
            text.append(members.hasNext() ? "," : "");
        }
        startLine(level, text);
        text.append('}');
    }

    private static void layOutArray(JsonArray array, int level, StringBuilder text) {
        boolean onOneLine = array.elements().stream().allMatch(JsonWriter::standsInLine);
        text.append('[');
        Iterator<JsonValue> elements = array.elements().iterator();
        while (elements.hasNext()) {
            if (!onOneLine) {
                startLine(level + 1, text);
            }
            layOut(elements.next(), level + 1, text);
            text.append(elements.hasNext() ? onOneLine ? ", " : "," : "");
        }
        if (!onOneLine) {
            startLine(level, text);
        }
        text.append(']');
    }

    private static boolean standsInLine(JsonValue value) {
        return value instanceof JsonNumber || value instanceof JsonTruth || value instanceof JsonNothing;
    }

    private static void startLine(int level, StringBuilder text) {
        text.append('\n').append("  ".repeat(level));
    }

    /**
     * Appends a string in quotes, escaped as RFC 8785 says. Half a surrogate pair, which UTF-8 cannot carry, becomes
     * U+FFFD.
     *
     * @param string the string
     * @param text what it is appended to
     */
    public static void quote(String string, StringBuilder text) {
        text.append('"');
        for (int index = 0; index < string.length(); index++) {
            char character = string.charAt(index);
            if (Character.isSurrogate(character)) {
                index += appendSurrogate(string, index, text);
            } else {
                appendCharacter(character, text);
            }
        }
        text.append('"');
    }

    private static int appendSurrogate(String string, int index, StringBuilder text) {
        int whole = string.codePointAt(index);
        if (Character.isSupplementaryCodePoint(whole)) {
            text.appendCodePoint(whole);
            return 1;
        }
        text.append('\uFFFD');
        return 0;
    }

    private static void appendCharacter(char character, StringBuilder text) {
        switch (character) {
            case '"' -> text.append("\\\"");
            case '\\' -> text.append("\\\\");
            case '\b' -> text.append("\\b");
            case '\f' -> text.append("\\f");
            case '\n' -> text.append("\\n");
            case '\r' -> text.append("\\r");
            case '\t' -> text.append("\\t");
            default -> {
                if (character < ' ') {
                    text.append("\\u00").append(Character.forDigit(character >> 4, 16));
                    text.append(Character.forDigit(character & 15, 16));
                } else {
                    text.append(character);
                }
            }
        }
    }
}
