package leverwright.workbook.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.mechanics.muscle.Sharing;
import leverwright.mechanics.muscle.SharingProblem;
import leverwright.mechanics.muscle.SharingRule;
import leverwright.mechanics.muscle.SharingSolution;
import leverwright.workbook.json.CanonicalNumber;
import leverwright.workbook.json.JsonArray;
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonNothing;
import leverwright.workbook.json.JsonNumber;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonText;
import leverwright.workbook.json.JsonTruth;
import leverwright.workbook.json.JsonValue;

/** Reads, solves and writes a scenario of kind "sharing". */
final class SharingScenario {
    private static final List<String> TOP =
            List.of("format", "version", "kind", "title", "momentArms", "moments", "areas", "limits", "exponent");

    private SharingScenario() {}

    static JsonObject solved(JsonCursor root) {
        root.allowOnly(TOP);
        root.optional("title").ifPresent(JsonCursor::text);
        return written(Sharing.solve(problem(root), rule(root.member("exponent"))));
    }

    private static SharingRule rule(JsonCursor at) {
        double exponent = at.number();
        if (!(exponent > 1 && exponent <= SharingRule.GREATEST_EXPONENT)) {
            throw at.problem("is " + CanonicalNumber.write(exponent) + "; allowed: greater than 1, at most "
                    + CanonicalNumber.write(SharingRule.GREATEST_EXPONENT));
        }
        return SharingRule.power(exponent);
    }

    private static SharingProblem problem(JsonCursor root) {
        JsonCursor at = root.member("momentArms");
        List<JsonCursor> rows = at.elements();
        int joints = size(at, rows.size(), "rows, one a joint", SharingProblem.MOST_JOINTS);
        int muscles =
                size(rows.get(0), rows.get(0).elements().size(), "numbers, one a muscle", SharingProblem.MOST_MUSCLES);
        double[][] arms = new double[joints][];
        for (int j = 0; j < joints; j++) {
            arms[j] = numbers(rows.get(j), muscles, SharingProblem.GREATEST_ARM, "m", false);
        }
        double[] moments = numbers(root.member("moments"), joints, SharingProblem.GREATEST_MOMENT, "N m", false);
        double[] limits = numbers(root.member("limits"), muscles, SharingProblem.GREATEST_LIMIT, "N", true);
        return SharingProblem.of(
                names("joint", joints),
                names("muscle", muscles),
                arms,
                moments,
                areas(root.member("areas"), muscles),
                limits);
    }

    private static double[] areas(JsonCursor at, int count) {
        double[] areas = new double[length(at, count)];
        for (int i = 0; i < count; i++) {
            areas[i] = ScenarioReader.positive(at.elements().get(i), SharingProblem.GREATEST_DIVISOR, "m^2");
        }
        return areas;
    }

    private static double[] numbers(JsonCursor at, int count, double greatest, String unit, boolean positive) {
        double[] values = new double[length(at, count)];
        for (int i = 0; i < count; i++) {
            values[i] = ScenarioReader.within(at.elements().get(i), positive ? 0 : -greatest, greatest, unit);
        }
        return values;
    }

    private static int length(JsonCursor at, int count) {
        int size = at.elements().size();
        if (size != count) {
            throw at.problem("has " + size + " numbers; allowed: " + count);
        }
        return size;
    }

    private static int size(JsonCursor at, int size, String what, int most) {
        if (size < 1 || size > most) {
            throw at.problem("has " + size + " " + what + "; allowed: 1 to " + most);
        }
        return size;
    }

    private static List<String> names(String kind, int count) {
        List<String> names = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            names.add(kind + " " + i);
        }
        return names;
    }

    private static JsonObject written(SharingSolution solution) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("format", new JsonText(ScenarioSolver.SOLUTION_FORMAT));
        members.put("version", new JsonNumber(ScenarioSolver.VERSION));
        members.put("kind", new JsonText("sharing"));
        members.put("feasible", new JsonTruth(solution.feasible()));
        members.put(
                "forces",
                solution.feasible()
                        ? new JsonArray(solution.forces().stream()
                                .map(force -> (JsonValue) new JsonNumber(force))
                                .toList())
                        : new JsonNothing());
        members.put(
                "greatestScale",
                solution.greatestScale().isPresent()
                        ? new JsonNumber(solution.greatestScale().getAsDouble())
                        : new JsonNothing());
        // a steep power of pascals may be beyond any double number
        boolean told = solution.feasible() && Double.isFinite(solution.cost());
        members.put("cost", told ? new JsonNumber(solution.cost()) : new JsonNothing());
        return new JsonObject(members);
    }
}
