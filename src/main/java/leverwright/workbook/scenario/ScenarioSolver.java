package leverwright.workbook.scenario;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.equilibrium.Solution;
import leverwright.mechanics.load.CableLoad;
import leverwright.mechanics.load.Load;
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonLimits;
import leverwright.workbook.json.JsonNumber;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonProblem;
import leverwright.workbook.json.JsonReader;
import leverwright.workbook.json.JsonText;
import leverwright.workbook.json.JsonValue;

/** Solves scenario files. A bad one never throws: its answer says what is wrong, where, and what is allowed. */
public final class ScenarioSolver {
    /** Largest scenario file, bytes. */
    public static final int MOST_BYTES = 16 << 20;

    static final String SCENARIO_FORMAT = "leverwright-scenario";
    static final String SOLUTION_FORMAT = "leverwright-solution";
    static final int VERSION = 1;

    private static final JsonLimits LIMITS = new JsonLimits(MOST_BYTES, 16, 10_000, 500_000);

    private ScenarioSolver() {}

    /** Returns the answer to the scenario in a file. */
    public static ScenarioAnswer solve(Path file) {
        String name = file.toString();
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        } catch (IOException e) {
            return refused(name + ": cannot be read (" + reason(file, e) + "); name a scenario file that can");
        }
        if (bytes.length > MOST_BYTES) {
            return refused(name + ": is larger than " + MOST_BYTES + " bytes; allowed: 1 to " + MOST_BYTES
                    + " bytes; is it a scenario?");
        }
        return solve(name, bytes);
    }

    private static String reason(Path file, IOException e) {
        if (Files.isDirectory(file)) {
            return "it is a folder";
        }
        return Files.exists(file) ? "no permission, or " + e.getClass().getSimpleName() : "there is no such file";
    }

    /**
     * Returns the answer to a scenario.
     *
     * @param name what to call it in messages
     * @param json its text
     */
    public static ScenarioAnswer solve(String name, String json) {
        return solve(name, json.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Returns the answer to a scenario.
     *
     * @param name what to call it in messages
     * @param json its text in UTF-8
     */
    public static ScenarioAnswer solve(String name, byte[] json) {
        try {
            return new ScenarioAnswer(solved(JsonCursor.at(JsonReader.read(json, LIMITS))), "");
        } catch (JsonProblem problem) {
            return refused(String.valueOf(problem.in(name).getMessage()));
        } catch (IllegalArgumentException problem) {
            return refused(name + ": " + problem.getMessage());
        }
    }

    private static JsonValue solved(JsonCursor root) {
        String kind = ScenarioReader.kind(root);
        if (kind.equals("sharing")) {
            return SharingScenario.solved(root);
        }
        if (kind.equals("exercise")) {
            return ExerciseScenario.solved(root);
        }
        LinkageScenario scenario = ScenarioReader.read(root);
        for (int l = 0; l < scenario.loads().size(); l++) {
            if (scenario.loads().get(l) instanceof CableLoad cable) {
                checkCable(root, scenario, cable, l);
            }
        }
        Solution solution = solver(scenario, scenario.loads()).solve().solution();
        return SolutionWriter.write(solution, scenario.support());
    }

    private static LinkageSolver solver(LinkageScenario scenario, List<Load> loads) {
        return LinkageSolver.of(scenario.linkage(), loads, scenario.support())
                .gravity(scenario.gravity())
                .configuration(scenario.configuration());
    }

    /** Refuses a cable without a direction, which shows only in its posture, where its pulley stands in the file. */
    private static void checkCable(JsonCursor root, LinkageScenario scenario, CableLoad cable, int index) {
        try {
            solver(scenario, List.of(cable)).solve();
        } catch (IllegalArgumentException e) {
            throw root.member("loads").elements().get(index).member("pulley").problem(String.valueOf(e.getMessage()));
        }
    }

    private static ScenarioAnswer refused(String problem) {
        String line = String.join(" ", problem.lines().toList());
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("format", new JsonText(SOLUTION_FORMAT));
        members.put("version", new JsonNumber(VERSION));
        members.put("error", new JsonText(line));
        return new ScenarioAnswer(new JsonObject(members), line);
    }

    /** Returns whether any of some answers has no solution: then a program that printed them ends with exit code 2. */
    public static boolean anyRefused(List<ScenarioAnswer> answers) {
        return answers.stream().anyMatch(answer -> !answer.solved());
    }
}
