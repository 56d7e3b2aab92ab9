package leverwright.workbook.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.workbook.json.JsonArray;
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonNumber;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonText;
import leverwright.workbook.json.JsonValue;

/** A scenario of kind "exercise": an exercise of the catalogue by a lifter, its knobs and what is added, held still. */
final class ExerciseScenario {
    private static final List<String> TOP =
            List.of("format", "version", "kind", "title", "exercise", "lifter", "knobs", "added");

    private ExerciseScenario() {}

    static JsonValue solved(JsonCursor root) {
        root.allowOnly(TOP);
        root.optional("title").ifPresent(JsonCursor::text);
        JsonCursor name = root.member("exercise");
        Exercise<?> exercise;
        try {
            exercise = ExerciseListing.find(name.text());
        } catch (IllegalArgumentException unknown) {
            throw name.problem("names no exercise: " + unknown.getMessage());
        }
        AddedLoads added = root.optional("added").map(ExerciseScenario::added).orElse(AddedLoads.NONE);
        try {
            exercise = added.on(exercise);
        } catch (IllegalArgumentException impossible) {
            throw root.member("added").problem("cannot be: " + impossible.getMessage());
        }
        Performance performance = exercise.by(lifter(root.member("lifter")));
        Optional<JsonCursor> knobs = root.optional("knobs");
        if (knobs.isPresent()) {
            for (Map.Entry<String, JsonCursor> each : knobs.get().members().entrySet()) {
                performance = set(performance, each.getKey(), each.getValue());
            }
        }
        return answer(performance.posture());
    }

    private static Performance set(Performance performance, String name, JsonCursor value) {
        for (Knob<?> knob : performance.exercise().knobs()) {
            if (knob.name().equalsIgnoreCase(name)) {
                try {
                    return performance.withSi(knob, value.number());
                } catch (IllegalArgumentException outside) {
                    throw value.problem("cannot be: " + outside.getMessage());
                }
            }
        }
        List<String> names =
                performance.exercise().knobs().stream().map(Knob::name).toList();
        throw value.problem("is no knob of this exercise; it has: " + String.join(", ", names));
    }

    private static Lifter lifter(JsonCursor at) {
        at.allowOnly(List.of("name", "sex", "stature", "mass"));
        JsonCursor sex = at.member("sex");
        if (!sex.text().equals("female") && !sex.text().equals("male")) {
            throw sex.problem("is \"" + sex.text() + "\"; allowed: \"female\", \"male\"");
        }
        String name = at.optional("name").map(JsonCursor::text).orElse("the lifter");
        return Lifter.lifter(name)
                .of(
                        sex.text().equals("female") ? Sex.FEMALE : Sex.MALE,
                        Length.of(at.member("stature").number()),
                        Mass.of(at.member("mass").number()));
    }

    private static AddedLoads added(JsonCursor at) {
        AddedLoads all = AddedLoads.NONE;
        for (JsonCursor load : at.elements()) {
            JsonCursor kind = load.member("kind");
            all = switch (kind.text()) {
                case "vest" -> {
                    load.allowOnly(List.of("kind", "mass"));
                    yield new AddedLoads(mass(load), all.chains(), all.chainLength(), all.band(), all.guided());
                }
                case "chains" -> {
                    load.allowOnly(List.of("kind", "mass", "length"));
                    double length = ScenarioReader.positive(load.member("length"), 100, "m");
                    yield new AddedLoads(all.vest(), mass(load), length, all.band(), all.guided());
                }
                case "band" ->
                    new AddedLoads(all.vest(), all.chains(), all.chainLength(), Optional.of(band(load)), all.guided());
                case "guide" -> {
                    load.allowOnly(List.of("kind"));
                    yield new AddedLoads(all.vest(), all.chains(), all.chainLength(), all.band(), true);
                }
                default ->
                    throw kind.problem(
                            "is \"" + kind.text() + "\"; allowed: \"vest\", \"chains\", \"band\", \"guide\"");
            };
        }
        return all;
    }

    private static double mass(JsonCursor load) {
        return ScenarioReader.within(load.member("mass"), 0, 1000, "kg");
    }

    private static AddedLoads.Tied band(JsonCursor load) {
        load.allowOnly(List.of("kind", "restLength", "stretched", "returned", "anchor"));
        double[] anchor = pair(load.member("anchor"));
        try {
            return AddedLoads.Tied.of(
                    ScenarioReader.positive(load.member("restLength"), 100, "m"),
                    pairs(load.member("stretched")),
                    load.optional("returned").map(ExerciseScenario::pairs).orElse(List.of()),
                    anchor[0],
                    anchor[1]);
        } catch (IllegalArgumentException wrong) {
            throw load.problem("cannot be: " + wrong.getMessage());
        }
    }

    private static List<double[]> pairs(JsonCursor at) {
        List<double[]> pairs = new ArrayList<>();
        at.elements().forEach(each -> pairs.add(pair(each)));
        return pairs;
    }

    private static double[] pair(JsonCursor at) {
        double[] pair = at.numbers();
        if (pair.length != 2) {
            throw at.problem("has " + pair.length + " numbers; allowed: 2");
        }
        return pair;
    }

    private static JsonValue answer(HeldPosture held) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("format", new JsonText(ScenarioSolver.SOLUTION_FORMAT));
        members.put("version", new JsonNumber(ScenarioSolver.VERSION));
        members.put("kind", new JsonText("exercise"));
        members.put("standing", new JsonText(held.standing().words()));
        List<JsonValue> joints = new ArrayList<>();
        for (Joint joint : Joint.values()) {
            joints.add(joint(held, joint));
        }
        members.put("joints", new JsonArray(joints));
        members.put("remarks", new JsonArray(texts(held.remarks())));
        members.put(
                "cautions", new JsonArray(texts(held.performance().exercise().cautions())));
        return new JsonObject(members);
    }

    private static List<JsonValue> texts(List<String> words) {
        List<JsonValue> texts = new ArrayList<>();
        words.forEach(each -> texts.add(new JsonText(each)));
        return texts;
    }

    private static JsonValue joint(HeldPosture held, Joint joint) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("joint", new JsonText(joint.words()));
        try {
            double moment = Readings.moment(joint).si(held);
            members.put("action", new JsonText(held.plane().positiveAction(joint)));
            members.put("sides", new JsonText(joint.sides().words()));
            members.put("moment", new JsonNumber(moment));
        } catch (IllegalArgumentException shared) {
            members.put("notKnown", new JsonText(String.valueOf(shared.getMessage())));
        }
        return new JsonObject(members);
    }
}
