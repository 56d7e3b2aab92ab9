package leverwright.workbook.scenario;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.exercise.Catalogue;
import leverwright.mechanics.exercise.Course;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.Exercises;
import leverwright.mechanics.exercise.InStep;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.measure.Measure;
import leverwright.workbook.json.JsonArray;
import leverwright.workbook.json.JsonNumber;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonText;
import leverwright.workbook.json.JsonTruth;
import leverwright.workbook.json.JsonValue;
import leverwright.workbook.json.JsonWriter;

/** The catalogue of exercises as text and as JSON: a list of objects, each with its {@code name}. */
public final class ExerciseListing {
    private ExerciseListing() {}

    /** Returns one line per exercise, under the name of its family. */
    public static String text() {
        StringBuilder text = new StringBuilder();
        Map<String, List<Exercise<?>>> families = new LinkedHashMap<>();
        for (Exercise<?> exercise : Catalogue.exercises()) {
            families.computeIfAbsent(exercise.family().words(), family -> new ArrayList<>())
                    .add(exercise);
        }
        families.forEach((family, exercises) -> {
            text.append(family).append('\n');
            for (Exercise<?> exercise : exercises) {
                text.append(String.format("  %-30s %s%n", exercise.name(), String.join("; ", exercise.trains())));
            }
        });
        return text.toString();
    }

    /**
     * Returns one exercise with its knobs, ranges, free forces and cautions.
     *
     * @throws IllegalArgumentException if there is none of that name or word; the message lists the names
     */
    public static String text(String name) {
        Exercise<?> exercise = find(name);
        StringBuilder text = new StringBuilder();
        text.append(exercise.name())
                .append(", in a cell ")
                .append(word(exercise))
                .append("()\n");
        line(text, "family", List.of(exercise.family().words()));
        line(text, "plane", List.of(exercise.plane().words() + ", " + sides(exercise)));
        line(text, "trains", exercise.trains());
        line(text, "driven by", joints(exercise));
        exercise.course().ifPresent(course -> line(text, "path", List.of(path(course))));
        line(text, "carried by", exercise.supports());
        line(text, "loads", exercise.loads());
        line(text, "follows", List.of(exercise.follows()));
        text.append("knobs\n");
        for (Knob<?> knob : exercise.knobs()) {
            text.append(String.format("  %-24s %s, starts at %s%n", knob.name(), knob.range(), standard(knob)));
            text.append("    ").append(knob.meaning()).append('\n');
            text.append("    default: ").append(knob.reason()).append('\n');
        }
        line(text, "free forces", exercise.freeComponents());
        line(text, "assumes", exercise.assumptions());
        line(text, "cautions", exercise.cautions());
        return text.toString();
    }

    /** Returns all exercises as a JSON list of objects. */
    public static String json() {
        List<JsonValue> all = new ArrayList<>();
        Catalogue.exercises().forEach(exercise -> all.add(object(exercise)));
        return JsonWriter.laidOut(new JsonArray(all));
    }

    /**
     * Returns one exercise as a JSON list of one object.
     *
     * @throws IllegalArgumentException if there is none of that name or word; the message lists the names
     */
    public static String json(String name) {
        return JsonWriter.laidOut(new JsonArray(List.of(object(find(name)))));
    }

    static Exercise<?> find(String name) {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            if (word(exercise).equalsIgnoreCase(name)) {
                return exercise;
            }
        }
        return Catalogue.named(name);
    }

    private static JsonObject object(Exercise<?> exercise) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("name", new JsonText(exercise.name()));
        members.put("word", new JsonText(word(exercise)));
        members.put("family", new JsonText(exercise.family().words()));
        members.put("plane", new JsonText(exercise.plane().words()));
        members.put("sidesApart", new JsonTruth(exercise.keepsSidesApart()));
        members.put("supports", texts(exercise.supports()));
        members.put("drivenJoints", texts(joints(exercise)));
        exercise.course().ifPresent(course -> members.put("path", object(course)));
        members.put("loads", texts(exercise.loads()));
        members.put("trains", texts(exercise.trains()));
        members.put("follows", new JsonText(exercise.follows()));
        List<JsonValue> knobs = new ArrayList<>();
        exercise.knobs().forEach(knob -> knobs.add(object(knob)));
        members.put("knobs", new JsonArray(knobs));
        members.put("freeForces", texts(exercise.freeComponents()));
        members.put("assumptions", texts(exercise.assumptions()));
        members.put("cautions", texts(exercise.cautions()));
        return new JsonObject(members);
    }

    private static JsonObject object(Course course) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("knob", new JsonText(course.knob().name()));
        members.put("unit", new JsonText(course.knob().unit().symbol()));
        members.put("from", number(course.knob(), course.from()));
        members.put("to", number(course.knob(), course.to()));
        List<JsonValue> inStep = new ArrayList<>();
        for (InStep way : course.inStep()) {
            Map<String, JsonValue> follower = new LinkedHashMap<>();
            follower.put("knob", new JsonText(way.knob().name()));
            follower.put("unit", new JsonText(way.knob().unit().symbol()));
            follower.put("from", number(way.knob(), way.from()));
            follower.put("to", number(way.knob(), way.to()));
            inStep.add(new JsonObject(follower));
        }
        members.put("inStep", new JsonArray(inStep));
        return new JsonObject(members);
    }

    private static JsonObject object(Knob<?> knob) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("name", new JsonText(knob.name()));
        members.put("unit", new JsonText(knob.unit().symbol()));
        members.put("least", number(knob, knob.least().si()));
        members.put("most", number(knob, knob.most().si()));
        members.put("standard", number(knob, knob.standard().si()));
        members.put("meaning", new JsonText(knob.meaning()));
        members.put("reason", new JsonText(knob.reason()));
        return new JsonObject(members);
    }

    /** The decimal number that stands before the unit in print, so that 0.6 m reads 60 cm and not 60.00000000000001. */
    private static JsonNumber number(Knob<?> knob, double si) {
        return new JsonNumber(knob.unit().decimal(si).doubleValue());
    }

    private static JsonArray texts(List<String> words) {
        List<JsonValue> texts = new ArrayList<>();
        words.forEach(each -> texts.add(new JsonText(each)));
        return new JsonArray(texts);
    }

    private static List<String> joints(Exercise<?> exercise) {
        return exercise.drivenJoints().stream().map(Joint::words).toList();
    }

    private static String sides(Exercise<?> exercise) {
        return exercise.keepsSidesApart() ? "both sides kept apart" : "both sides alike";
    }

    private static String path(Course course) {
        StringBuilder text = new StringBuilder(range(course.knob(), course.from(), course.to()));
        course.inStep()
                .forEach(way -> text.append("; in step with it ").append(range(way.knob(), way.from(), way.to())));
        return text.toString();
    }

    private static String range(Knob<?> knob, double from, double to) {
        return knob.name() + " from " + knob.unit().format(from, 4) + " to "
                + knob.unit().format(to, 4);
    }

    private static String standard(Knob<?> knob) {
        return text(knob);
    }

    private static <Q extends Measure<Q>> String text(Knob<Q> knob) {
        return knob.text(knob.standard());
    }

    private static void line(StringBuilder text, String what, List<String> words) {
        if (!words.isEmpty()) {
            text.append(String.format("%-12s %s%n", what, String.join("\n             ", words)));
        }
    }

    /** The word by which a cell begins an exercise. */
    static String word(Exercise<?> exercise) {
        for (Method method : Exercises.class.getMethods()) {
            boolean begins = Modifier.isStatic(method.getModifiers())
                    && method.getParameterCount() == 0
                    && Exercise.class.isAssignableFrom(method.getReturnType());
            if (begins && name(method).equals(exercise.name())) {
                return method.getName();
            }
        }
        return "exercise";
    }

    private static String name(Method method) {
        try {
            return ((Exercise<?>) method.invoke(null)).name();
        } catch (IllegalAccessException | InvocationTargetException hidden) {
            throw new IllegalStateException(method.getName() + " cannot be asked", hidden);
        }
    }
}
