package leverwright.workbook.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonLimits;
import leverwright.workbook.json.JsonReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Scenarios against the samples in {@code src/test/resources/scenario}: their expected solutions were made by an independent
 * program in another language.
 */
class ScenarioSolverTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "001-bodyweight-stand",
                "005-barbell",
                "009-dumbbells",
                "012-cable",
                "017-band",
                "021-off-balance",
                "028-slack-band",
                "030-lifted-off",
                "032-seated-pad",
                "037-seated-pad-vertical-shank",
                "038-dynamic",
                "045-dynamic"
            })
    void agreesWithTheSample(String name) throws IOException {
        ScenarioAnswer answer = ScenarioSolver.solve(name, text(name + ".scenario.json"));
        assertTrue(answer.solved(), answer.problem());
        JsonCursor found = parsed(answer.line());
        JsonCursor wanted = parsed(text(name + ".expected.json"));
        double scale = wanted.member("scale").number();
        compare(wanted, found, scale);
        List<String> keys = new ArrayList<>(wanted.members().keySet());
        keys.add("closure");
        assertEquals(keys, List.copyOf(found.members().keySet()));
        assertTrue(found.member("closure").number() < 1e-13, answer.line());
        assertFalse(answer.line().contains("\n"));
        assertFalse(answer.line().contains("-0,"));
    }

    private static void compare(JsonCursor wanted, JsonCursor found, double scale) {
        for (Map.Entry<String, JsonCursor> entry : wanted.members().entrySet()) {
            JsonCursor value = found.member(entry.getKey());
            switch (entry.getKey()) {
                case "joints" -> {
                    assertEquals(
                            entry.getValue().elements().size(), value.elements().size());
                    for (int k = 0; k < value.elements().size(); k++) {
                        compare(
                                entry.getValue().elements().get(k),
                                value.elements().get(k),
                                scale);
                    }
                }
                case "support" -> compare(entry.getValue(), value, scale);
                case "force" -> compareNumbers(entry.getValue(), value, forceTolerance(entry.getValue()));
                case "moment", "momentPerSide", "couple", "scale" ->
                    assertEquals(entry.getValue().number(), value.number(), 1e-9 * scale + 1e-9, value.path());
                case "position", "at", "massCentre", "systemMassCentre" ->
                    compareNumbers(entry.getValue(), value, 1e-9);
                case "centreOfPressure", "frictionNeeded" -> {
                    assertEquals(entry.getValue().isNothing(), value.isNothing(), value.path());
                    if (!value.isNothing()) {
                        assertEquals(entry.getValue().number(), value.number(), 1e-9, value.path());
                    }
                }
                default -> assertEquals(entry.getValue().value(), value.value(), value.path());
            }
        }
    }

    private static double forceTolerance(JsonCursor force) {
        double[] parts = force.numbers();
        return 1e-9 * (Math.hypot(parts[0], parts[1]) + 1);
    }

    private static void compareNumbers(JsonCursor wanted, JsonCursor found, double tolerance) {
        double[] expected = wanted.numbers();
        double[] actual = found.numbers();
        assertEquals(expected.length, actual.length);
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], actual[i], tolerance, found.path());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"053-share-one-joint", "057-share-saturated", "059-share-infeasible", "063-share-coupled-9x3"})
    void agreesWithTheSampleOfSharing(String name) throws IOException {
        String scenario = text(name + ".scenario.json");
        ScenarioAnswer answer = ScenarioSolver.solve(name, scenario);
        assertTrue(answer.solved(), answer.problem());
        JsonCursor found = parsed(answer.line());
        JsonCursor wanted = parsed(text(name + ".expected.json"));
        assertEquals(
                List.copyOf(wanted.members().keySet()),
                List.copyOf(found.members().keySet()));
        assertEquals(wanted.member("feasible").value(), found.member("feasible").value());
        double scale = wanted.member("greatestScale").number();
        assertEquals(scale, found.member("greatestScale").number(), 1e-9 * scale);
        assertEquals(wanted.member("forces").isNothing(), found.member("forces").isNothing());
        if (!wanted.member("forces").isNothing()) {
            double limit = Arrays.stream(parsed(scenario).member("limits").numbers())
                    .max()
                    .orElseThrow();
            compareNumbers(wanted.member("forces"), found.member("forces"), 1e-7 * limit);
            double cost = wanted.member("cost").number();
            assertEquals(cost, found.member("cost").number(), 1e-8 * cost);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "areas":[0.003| "areas":[0| areas[0]| greater than 0
            "areas":[0.003| "areas":[-0.003| areas[0]| greater than 0
            "limits":[800| "limits":[-1| limits[0]| 0 to 1000000000 N
            "exponent":3| "exponent":1| exponent| greater than 1
            "exponent":3| "exponent":0.5| exponent| greater than 1
            "moments":[30]| "moments":[30,20]| moments| allowed: 1
            "momentArms":[[0.04,0.03]]| "momentArms":[[0.04],[0.03]]| moments| allowed: 2
            "momentArms":[[0.04,0.03]]| "momentArms":[]| momentArms| rows
            "areas":[0.003| "area":[0.003| area| not known here
            """)
    void refusesASharingWithPlaceAndRange(String good, String bad, String path, String allowed) {
        String sharing = """
                {"format":"leverwright-scenario","version":1,"kind":"sharing","momentArms":[[0.04,0.03]],"moments":[30],
                "areas":[0.003,0.002],"limits":[800,700],"exponent":3}""";
        String text = sharing.replace(good, bad);
        assertFalse(text.equals(sharing), "the fault was not planted");
        ScenarioAnswer answer = ScenarioSolver.solve("small.json", text);
        assertFalse(answer.solved(), answer.line());
        assertTrue(answer.problem().contains(path + ": "), answer.problem());
        assertTrue(answer.problem().contains(allowed), answer.problem());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "mass":4| "mass":-4| segments[0].mass| 0 to 10000 kg
            "mass":4| "mass":"4"| segments[0].mass| expected a number, but found text
            "mass":4| "mass":1e999| segments[0].mass| too large
            "mass":4| "mass":NaN| segments[0].mass| not JSON
            "mass":4| "mass":4,"mass":5| segments[0].mass| twice
            "mass":4| "mas":4| segments[0].mas| allowed are name, sides, mass
            "mass":4,| | segments[0]| "mass" is missing
            "length":0.5| "length":0| segments[0].length| greater than 0, at most 100 m
            "sides":2| "sides":3| segments[0].sides| 1 or 2
            "direction":0.3| "direction":1e5| segments[0].direction| -1000 to 1000 rad
            "direction":0.3| "direction":null| segments[0].direction| found null
            "next":[0.5,0]| "next":[0.5]| segments[0].next| two
            "next":[0.5,0]| "next":[0.5,{"a":1}]| segments[0].next[1]| expected a number
            "gravity":9.8| "gravity":-9.8| gravity| 0 to 1000 m/s^2
            "version":1| "version":2| version| allowed: 1
            "kind":"linkage"| "kind":"other"| kind| "linkage"
            "segment":"arm","at"| "segment":"leg","at"| loads[0].segment| "arm", "hand"
            "kind":"mass"| "kind":"weight"| loads[0].kind| "mass", "force", "cable", "band", "pad"
            "kind":"mass"| "kind":"force"| loads[0].mass| allowed are kind, segment, at, couple, force
            "kind":"fixed"| "kind":"hung"| support.kind| "ground", "fixed"
            "origin":[0,0]| "origin":[0,1e6]| origin[1]| -10000 to 10000 m
            "name":"hand"| "name":"arm"| segments[1].name| like an earlier segment
            "loads":[| "title2":[| title2| not known here
            """)
    void refusesWithPlaceAndRange(String good, String bad, String path, String allowed) {
        String text = SMALL.replace(good, bad == null ? "" : bad);
        assertFalse(text.equals(SMALL), "the fault was not planted");
        ScenarioAnswer answer = ScenarioSolver.solve("small.json", text);
        assertFalse(answer.solved());
        assertTrue(answer.problem().startsWith("small.json"), answer.problem());
        assertTrue(answer.problem().contains(path + ": "), answer.problem());
        assertTrue(answer.problem().contains(allowed), answer.problem());
        assertTrue(answer.problem().contains("line "), answer.problem());
        assertTrue(
                answer.line().startsWith("{\"format\":\"leverwright-solution\",\"version\":1,\"error\":\"small.json"),
                answer.line());
    }

    private static final String SMALL = """
            {"format":"leverwright-scenario","version":1,"kind":"linkage","title":"small","gravity":9.8,
             "segments":[
              {"name":"arm","sides":2,"mass":4,"length":0.5,"centre":[0.2,0],"next":[0.5,0],"inertia":0.1,"direction":0.3},
              {"name":"hand","sides":2,"mass":1,"length":0.2,"centre":[0.1,0],"next":[0.2,0],"inertia":0.1,"direction":0.4}],
             "origin":[0,0],
             "loads":[{"kind":"mass","segment":"arm","at":[0.3,0.1],"mass":5}],
             "support":{"kind":"fixed","segment":"arm","at":[0,0]}}
            """;

    @Test
    void namesTheCableThatHasNoDirection() {
        String text = SMALL.replace(
                "\"loads\":[",
                "\"loads\":[{\"kind\":\"cable\",\"segment\":\"arm\",\"at\":[0,0],\"pulley\":[0,0],\"stack\":9,\"ratio\":1},");
        ScenarioAnswer answer = ScenarioSolver.solve("small.json", text);
        assertFalse(answer.solved());
        assertTrue(answer.problem().contains("loads[0].pulley: "), answer.problem());
        assertTrue(answer.problem().contains("0 m long"), answer.problem());
    }

    @Test
    void refusesEveryTruncationOfAFile() {
        String whole = SMALL.strip();
        for (int length = 0; length < whole.length(); length++) {
            ScenarioAnswer answer = ScenarioSolver.solve("cut.json", whole.substring(0, length));
            assertFalse(answer.solved(), "cut to " + length);
            assertFalse(answer.problem().contains("Exception"), answer.problem());
        }
        assertTrue(ScenarioSolver.solve("whole.json", whole).solved());
    }

    @Test
    void refusesWhatIsNoScenarioFile() throws IOException {
        Path large = folder.resolve("large.json");
        Files.write(large, new byte[ScenarioSolver.MOST_BYTES + 1]);
        assertTrue(ScenarioSolver.solve(large).problem().contains("is larger than"));
        assertTrue(ScenarioSolver.solve(folder).problem().contains("folder"));
        assertTrue(ScenarioSolver.solve(folder.resolve("none.json")).problem().contains("no such file"));
        Path latin = folder.resolve("latin.json");
        Files.write(latin, "{\"title\":\"é\"}".getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(ScenarioSolver.solve(latin).problem().contains("UTF-8"));
        assertTrue(
                ScenarioSolver.solve("deep.json", "[".repeat(100_000)).problem().contains("deep"));
    }

    @Test
    void saysWhetherAnyFileWasRefused() {
        ScenarioAnswer good = ScenarioSolver.solve("good.json", SMALL);
        ScenarioAnswer bad = ScenarioSolver.solve("bad.json", "{}");
        assertFalse(ScenarioSolver.anyRefused(List.of(good)));
        assertTrue(ScenarioSolver.anyRefused(List.of(good, bad)));
        assertTrue(good.pretty().lines().count() > 10);
    }

    @Test
    void solvesASingleSegmentAndNoGravity() {
        ScenarioAnswer answer = ScenarioSolver.solve("single.json", """
                {"format":"leverwright-scenario","version":1,"kind":"linkage","title":"","gravity":0,
                 "segments":[{"name":"rod","sides":1,"mass":0,"length":1,"centre":[0.5,0],"next":[1,0],"inertia":0,
                 "direction":0}],"origin":[1,2],
                 "loads":[{"kind":"force","segment":"rod","at":[1,0],"force":[0,3],"couple":2}],
                 "support":{"kind":"fixed","segment":"rod","at":[0,0]}}
                """);
        assertEquals(
                "{\"format\":\"leverwright-solution\",\"version\":1,\"kind\":\"linkage\",\"joints\":[],"
                        + "\"support\":{\"force\":[0,-3],\"couple\":-5,\"at\":[1,2]},"
                        + "\"massCentre\":null,\"systemMassCentre\":null,\"scale\":0,\"closure\":0}",
                answer.line());
    }

    private static JsonCursor parsed(String json) {
        return JsonCursor.at(JsonReader.read(json.getBytes(StandardCharsets.UTF_8), JsonLimits.STANDARD));
    }

    private static String text(String name) throws IOException {
        try (InputStream in = ScenarioSolverTest.class.getResourceAsStream("/scenario/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
