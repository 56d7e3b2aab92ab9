package leverwright.workbook.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JsonWriterTest {

    private static JsonValue read(String text) {
        return JsonReader.read(text.getBytes(StandardCharsets.UTF_8), JsonLimits.STANDARD);
    }

    /** RFC 8785, section 3.2.2: the sample input and the canonical text that the standard gives for it. */
    @Test
    void theSampleOfTheStandardComesOutAsPrintedThere() {
        JsonValue sample = read("""
                {
                  "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
                  "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
                  "literals": [null, true, false]
                }
                """);
        assertEquals(
                "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
                        + "\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}",
                JsonWriter.canonical(sample));
    }

    /** RFC 8785, section 3.2.3: keys are sorted by their UTF-16 code units; the sample and its order stand there. */
    @Test
    void keysAreSortedAsTheStandardShows() {
        JsonValue sample = read("""
                {
                  "\\u20ac": "Euro Sign",
                  "\\r": "Carriage Return",
                  "\\ufb33": "Hebrew Letter Dalet With Dagesh",
                  "1": "One",
                  "\\ud83d\\ude00": "Emoji: Grinning Face",
                  "\\u0080": "Control",
                  "\\u00f6": "Latin Small Letter O With Diaeresis"
                }
                """);
        List<String> order = List.of(
                "Carriage Return",
                "One",
                "Control",
                "Latin Small Letter O With Diaeresis",
                "Euro Sign",
                "Emoji: Grinning Face",
                "Hebrew Letter Dalet With Dagesh");
        JsonObject sorted = (JsonObject) read(JsonWriter.canonical(sample));
        assertEquals(
                order,
                sorted.members().values().stream()
                        .map(value -> ((JsonText) value).text())
                        .toList());
    }

    @Test
    void theLayoutHasOneTextLineAnElementAndNumbersInLine() {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("note", JsonArray.ofTexts(List.of("one", "two")));
        members.put("points", JsonArray.ofNumbers(1, 2.5));
        members.put("rows", new JsonArray(List.of(JsonArray.ofNumbers(1), JsonArray.ofNumbers(2))));
        members.put("empty", new JsonArray(List.of()));
        members.put("object", JsonObject.EMPTY);
        assertEquals("""
                {
                  "note": [
                    "one",
                    "two"
                  ],
                  "points": [1, 2.5],
                  "rows": [
                    [1],
                    [2]
                  ],
                  "empty": [],
                  "object": {}
                }
                """, JsonWriter.laidOut(new JsonObject(members)));
    }

    @Test
    void whatIsWrittenReadsBackAsTheSameTree() {
        JsonValue tree = read("{\"b\":[1,{\"x\":[]},\"\\u0001\\u007f\\u2028é😀\"],\"a\":null,\"\":{}}");
        assertEquals(tree, read(JsonWriter.laidOut(tree)));
        assertEquals(tree, read(JsonWriter.compact(tree)));
    }

    @Test
    void halfACharacterBecomesTheReplacementCharacter() {
        assertEquals("\"a\uFFFDb\"", JsonWriter.compact(new JsonText("a\uD800b")));
        assertEquals("\"\uFFFD\"", JsonWriter.compact(new JsonText("\uDC00")));
    }
}
