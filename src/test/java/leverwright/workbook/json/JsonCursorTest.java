package leverwright.workbook.json;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class JsonCursorTest {

    private final JsonCursor root =
            JsonCursor.at(JsonReader.read("""
            {"text": "a", "number": 2.5, "whole": 7, "truth": true, "nothing": null,
             "texts": ["a", "b"], "numbers": [1, 2.5], "deep key": [{"x": [1, "two"]}]}
            """.getBytes(StandardCharsets.UTF_8), JsonLimits.STANDARD));

    private static String complaint(Executable action) {
        return assertThrows(JsonProblem.class, action).getMessage();
    }

    @Test
    void valuesComeOutInTheirTypes() {
        assertEquals("a", root.member("text").text());
        assertEquals(2.5, root.member("number").number());
        assertEquals(7, root.member("whole").whole(0, 10));
        assertEquals(true, root.member("truth").truth());
        assertEquals(true, root.member("nothing").isNothing());
        assertEquals(List.of("a", "b"), root.member("texts").texts());
        assertArrayEquals(new double[] {1, 2.5}, root.member("numbers").numbers());
        assertEquals(true, root.optional("absent").isEmpty());
    }

    @Test
    void aWrongTypeDeepInsideIsNamedWithItsPath() {
        JsonCursor deep = root.member("deep key").elements().get(0).member("x");
        assertEquals(
                "line 2, column 67, [\"deep key\"][0].x[1]: expected a number, but found text",
                complaint(deep::numbers));
        assertEquals(
                "line 1, column 10, text: expected an object, but found text",
                complaint(() -> root.member("text").member("a")));
        assertEquals(
                "line 1, column 25, number: expected text, but found a number",
                complaint(() -> root.member("number").text()));
        assertEquals(
                "line 1, column 68, nothing: expected true or false, but found null",
                complaint(() -> root.member("nothing").truth()));
    }

    @Test
    void aMissingKeyIsNamed() {
        assertEquals("line 1, column 1: the key \"mass\" is missing; add it", complaint(() -> root.member("mass")));
    }

    @Test
    void wholeNumbersKeepToTheirRange() {
        String wrong = "line 1, column 25, number: expected a whole number from 0 to 9, but found 2.5";
        assertEquals(wrong, complaint(() -> root.member("number").whole(0, 9)));
        assertEquals(
                "line 1, column 39, whole: expected a whole number from 8 to 9, but found 7",
                complaint(() -> root.member("whole").whole(8, 9)));
    }

    @Test
    void keysThatAreNotKnownCanBeRefused() {
        JsonCursor inner = root.member("deep key").elements().get(0);
        inner.allowOnly(List.of("x", "y"));
        assertEquals(
                "line 2, column 63, [\"deep key\"][0].x: this key is not known here; allowed are y, z; correct its spelling"
                        + " or remove it",
                complaint(() -> inner.allowOnly(List.of("y", "z"))));
    }

    @Test
    void theFileIsNamedFirst() {
        JsonProblem problem = new JsonProblem(new Position(3, 4), "a.b", "it is wrong");
        assertEquals(
                "hinge.json, line 3, column 4, a.b: it is wrong",
                problem.in("hinge.json").getMessage());
        assertEquals("it is wrong", new JsonProblem(Position.NOWHERE, "", "it is wrong").getMessage());
        assertEquals(
                "f: it is wrong",
                new JsonProblem(Position.NOWHERE, "", "it is wrong").in("f").getMessage());
    }

    @Test
    void whatAFileSaysCannotBreakTheLineOfItsMessage() {
        JsonProblem problem =
                new JsonProblem(new Position(1, 2), "a", "found \"x\n\u001b[31m" + "y".repeat(5000) + "\"");
        assertEquals(1, problem.getMessage().lines().count());
        assertEquals(-1, problem.getMessage().indexOf('\u001b'));
        assertEquals(
                "line 1, column 2, a: ".length() + 600, problem.getMessage().length());
    }
}
