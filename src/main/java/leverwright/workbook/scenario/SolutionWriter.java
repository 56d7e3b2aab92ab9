package leverwright.workbook.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import leverwright.mechanics.equilibrium.GroundSupport;
import leverwright.mechanics.equilibrium.Solution;
import leverwright.mechanics.equilibrium.Solution.JointLoad;
import leverwright.mechanics.equilibrium.Solution.Reaction;
import leverwright.mechanics.equilibrium.Support;
import leverwright.mechanics.numeric.Vector;
import leverwright.workbook.json.JsonArray;
import leverwright.workbook.json.JsonNothing;
import leverwright.workbook.json.JsonNumber;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonText;
import leverwright.workbook.json.JsonTruth;
import leverwright.workbook.json.JsonValue;

/** Writes a solution as a tree. */
final class SolutionWriter {
    private SolutionWriter() {}

    static JsonObject write(Solution solution, Support support) {
        boolean ground = support instanceof GroundSupport;
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("format", new JsonText(ScenarioSolver.SOLUTION_FORMAT));
        members.put("version", new JsonNumber(ScenarioSolver.VERSION));
        members.put("kind", new JsonText("linkage"));
        List<JsonValue> joints = new ArrayList<>();
        for (JointLoad joint : solution.joints()) {
            joints.add(joint(joint));
        }
        members.put("joints", new JsonArray(joints));
        members.put("support", support(solution, ground));
        if (ground) {
            members.put("balanced", new JsonTruth(solution.balanced()));
            members.put("frictionNeeded", number(solution.frictionNeeded()));
        }
        members.put(
                "massCentre", solution.massCentre().map(SolutionWriter::pair).orElse(new JsonNothing()));
        members.put(
                "systemMassCentre",
                solution.systemMassCentre().map(SolutionWriter::pair).orElse(new JsonNothing()));
        members.put("scale", new JsonNumber(solution.scale()));
        members.put("closure", new JsonNumber(solution.closure()));
        return new JsonObject(members);
    }

    private static JsonValue joint(JointLoad joint) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("below", new JsonText(joint.below()));
        members.put("above", new JsonText(joint.above()));
        members.put("position", pair(joint.position()));
        members.put("force", pair(joint.force()));
        members.put("moment", new JsonNumber(joint.moment()));
        members.put("sides", new JsonNumber(joint.sides()));
        members.put("momentPerSide", new JsonNumber(joint.momentPerSide()));
        return new JsonObject(members);
    }

    private static JsonValue support(Solution solution, boolean ground) {
        Reaction reaction = solution.reaction();
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("force", pair(reaction.force()));
        if (ground) {
            members.put("centreOfPressure", number(solution.centreOfPressure()));
        } else {
            members.put("couple", new JsonNumber(reaction.couple()));
            members.put("at", pair(reaction.at()));
        }
        return new JsonObject(members);
    }

    private static JsonValue number(OptionalDouble value) {
        return value.isPresent() ? new JsonNumber(value.getAsDouble()) : new JsonNothing();
    }

    private static JsonValue pair(Vector vector) {
        return JsonArray.ofNumbers(vector.x(), vector.y());
    }
}
