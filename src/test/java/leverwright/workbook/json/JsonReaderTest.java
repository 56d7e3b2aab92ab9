package leverwright.workbook.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 8259 (JSON) is the source of what is and is not JSON. */
class JsonReaderTest {

    private static final JsonLimits SMALL = new JsonLimits(1000, 4, 20, 12);

    private static JsonValue read(String text) {
        return JsonReader.read(text.getBytes(StandardCharsets.UTF_8), JsonLimits.STANDARD);
    }

    private static String complaint(String text) {
        return assertThrows(JsonProblem.class, () -> read(text)).getMessage();
    }

    private static String smallComplaint(String text) {
        return assertThrows(JsonProblem.class, () -> JsonReader.read(text.getBytes(StandardCharsets.UTF_8), SMALL))
                .getMessage();
    }

    @Test
    void everyKindOfValueKeepsItsContentOrderAndPlace() {
        JsonObject tree = (JsonObject) read("{\n  \"b\": [1, -2.5e3, true, false, null],\n  \"a\": \"x\\u00e9\\n\"\n}");
        assertEquals(List.of("b", "a"), List.copyOf(tree.members().keySet()));
        assertEquals(
                new JsonArray(List.of(
                        new JsonNumber(1),
                        new JsonNumber(-2500),
                        new JsonTruth(true),
                        new JsonTruth(false),
                        new JsonNothing())),
                tree.members().get("b"));
        assertEquals(new JsonText("xé\n"), tree.members().get("a"));
        assertEquals(new Position(1, 1), tree.position());
        assertEquals(new Position(2, 8), tree.get("b").orElseThrow().position());
        assertEquals(new Position(3, 8), tree.get("a").orElseThrow().position());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "{",
                "[",
                "[1",
                "[1,",
                "\"a",
                "{\"a\"",
                "{\"a\":",
                "{\"a\":1",
                "tru",
                "-",
                "1.",
                ".5",
                "+1",
                "01",
                "NaN",
                "Infinity",
                "-Infinity",
                "[1,]",
                "[,1]",
                "{\"a\":1,}",
                "{a:1}",
                "{'a':1}",
                "// x\n1",
                "/* x */1",
                "# x\n1",
                "\"\\x\"",
                "\"\t\"",
                "\"\n\"",
                "[1] 2",
                "1 2",
                "[1]]",
                "{}{}",
                "\u001e[1]",
                "\"\\ud800\"",
                "[\"\\udc00\"]",
                "{\"\\ud800\":1}",
                "nul",
                "undefined",
                "1e",
                "0x1"
            })
    void whatIsNotJsonIsRefusedWithItsPlace(String text) {
        String message = complaint(text);
        assertTrue(message.matches("(?s)line \\d+, column \\d+.*: .*"), message);
        assertTrue(message.lines().count() == 1, message);
    }

    @Test
    void theMessageNamesLineColumnAndKeyPath() {
        assertEquals(
                "line 3, column 16, sheet[0].note[0]: the text breaks off here before its end; fetch the whole file again or"
                        + " mend its end",
                complaint("{\n \"sheet\": [\n  {\"note\": [\"a\""));
        String message = complaint("{\n \"sheet\": [{}, {\"two words\": [1, nope]}]}");
        assertTrue(
                message.matches("line 2, column 3\\d, sheet\\[1]\\[\"two words\"]\\[1]: this is not JSON: .*"),
                message);
    }

    @Test
    void aKeyTwiceInOneObjectIsRefused() {
        assertEquals(
                "line 2, column 7, a.b: this key stands twice in one object; keep one of the two",
                complaint("{\"a\": {\"b\": 1,\n   \"b\": 1}}"));
        read("[{\"b\": 1}, {\"b\": 1}]");
    }

    @Test
    void aNumberThatADoubleCannotHoldIsRefused() {
        assertTrue(complaint("[1e400]").contains("the number 1e400 is too large"));
        assertTrue(complaint("[9007199254740993]").contains("9007199254740993 has more digits than are kept"));
        assertEquals(
                JsonArray.ofNumbers(9007199254740992.0, 9007199254740994.0),
                read("[9007199254740992, 9007199254740994]"));
        assertEquals(JsonArray.ofNumbers(Math.scalb(1.0, 55)), read("[36028797018963970]"));
        assertEquals(JsonArray.ofNumbers(0.1), read("[0.1000000000000000055511151231257827]"));
        assertEquals(JsonArray.ofNumbers(0), read("[-0.0]"));
        assertEquals(JsonArray.ofNumbers(Double.MIN_VALUE, Double.MAX_VALUE), read("[5e-324, 1.7976931348623157e308]"));
    }

    @Test
    void eachLimitHasItsMessage() {
        JsonReader.read("[[[[1]]]]".getBytes(StandardCharsets.UTF_8), SMALL);
        assertTrue(smallComplaint("[[[[[1]]]]]").contains("more than 4 deep"));
        assertTrue(smallComplaint("[1,1,1,1,1,1,1,1,1,1,1,1]").contains("more than 12 values"));
        assertTrue(smallComplaint("\"" + "x".repeat(21) + "\"").contains("longer than allowed (20 characters"));
        assertTrue(smallComplaint("[" + " ".repeat(1000) + "]").contains("1002 bytes; allowed are 1000"));
        assertTrue(complaint("[" + "1".repeat(1001) + "]").contains("longer than allowed"));
        assertTrue(complaint("[".repeat(100_000)).contains("more than 64 deep"));
        assertTrue(complaint("{\"a\":".repeat(100_000)).contains("more than 64 deep"));
    }

    @Test
    void aByteOrderMarkAndBytesThatAreNotUtf8AreNamed() {
        assertEquals(
                "line 1, column 1: the file begins with a byte order mark; save it as UTF-8 without byte order mark",
                complaint("\uFEFF{}"));
        byte[] latin = "{\n\"a\": \"caf\u00e9\"}".getBytes(StandardCharsets.ISO_8859_1);
        String message = assertThrows(JsonProblem.class, () -> JsonReader.read(latin, JsonLimits.STANDARD))
                .getMessage();
        assertEquals(
                "line 2, column 10: the bytes here are not UTF-8 text; save the file in the encoding UTF-8", message);
        byte[] wide = "{}".getBytes(StandardCharsets.UTF_16);
        assertThrows(JsonProblem.class, () -> JsonReader.read(wide, JsonLimits.STANDARD));
    }

    @Test
    void aCharacterCutInTheMiddleAtTheEndIsRefused() {
        byte[] whole = "\"é\"".getBytes(StandardCharsets.UTF_8);
        assertThrows(JsonProblem.class, () -> JsonReader.read(new byte[] {whole[0], whole[1]}, JsonLimits.STANDARD));
    }
}
