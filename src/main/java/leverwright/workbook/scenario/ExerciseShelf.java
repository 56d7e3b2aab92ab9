package leverwright.workbook.scenario;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Catalogue;
import leverwright.mechanics.exercise.Course;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Knobs;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.exercise.SetupKnobs;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.study.Sweep;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Sketch;
import org.jspecify.annotations.Nullable;

/**
 * The catalogue as somebody picks from it: each exercise with its knobs, its figure and the curves of its joints at chosen
 * settings, and the line of a cell that makes it. Numbers are SI values; a knob is named by its place among an entry's knobs.
 */
public final class ExerciseShelf {
    private static final int POINTS = 61;
    private static final int MOST_JOINTS = 4;

    /** Words that set a knob and are not its own name. */
    private static final Map<String, String> WORDS =
            Map.of("BAR", "barbell", "DUMBBELL", "dumbbells", "BENCH_INCLINE", "incline");

    private ExerciseShelf() {}

    /**
     * A knob as a reader may set it.
     *
     * @param name such as "Torso lean"
     * @param word what a cell says to set it, such as "torsoLean(" or "with(PRESSURE, "
     * @param constant its name in a cell, such as "TORSO_LEAN"
     * @param unit in which it is read
     * @param least lower end of its range, SI
     * @param most upper end, SI
     * @param standard its default, SI
     * @param meaning what it means
     * @param reason why it starts there
     */
    public record Setting(
            String name,
            String word,
            String constant,
            Unit unit,
            double least,
            double most,
            double standard,
            String meaning,
            String reason) {
        /** Returns a value as a cell says it, such as "deg(45)". */
        String inCell(double si) {
            String way = switch (unit) {
                case DEGREE -> "deg";
                case CENTIMETRE -> "cm";
                case METRE -> "m";
                case KILOGRAM -> "kg";
                case NEWTON -> "newtons";
                case PERCENT -> "percent";
                case ONE -> "ratio";
                default -> throw new IllegalStateException("no word of a cell for " + unit);
            };
            return way + "(" + unit.decimal(si).stripTrailingZeros().toPlainString() + ")";
        }
    }

    /**
     * The way of a repetition.
     *
     * @param knob place of the knob that moves
     * @param from where it starts, SI
     * @param to where it turns, SI
     * @param together whether other knobs move in step with it
     */
    public record Way(int knob, double from, double to, boolean together) {}

    /**
     * One exercise.
     *
     * @param name such as "Front squat"
     * @param word by which a cell begins it
     * @param family under which it is listed
     * @param plane of the body in which it moves
     * @param trains what it trains
     * @param drivenBy the joints that drive it
     * @param supports what carries the body
     * @param loads what it is loaded with; none where body weight is all
     * @param follows which angle follows when which are set
     * @param way of a repetition; empty where it is held still
     * @param knobs in their order
     * @param freeForces components that balance leaves free
     * @param assumptions of its model
     * @param cautions that travel with its results
     */
    public record Entry(
            String name,
            String word,
            String family,
            String plane,
            List<String> trains,
            List<String> drivenBy,
            List<String> supports,
            List<String> loads,
            String follows,
            Optional<Way> way,
            List<Setting> knobs,
            List<String> freeForces,
            List<String> assumptions,
            List<String> cautions) {
        /** Copies the lists. */
        public Entry {
            trains = List.copyOf(trains);
            drivenBy = List.copyOf(drivenBy);
            supports = List.copyOf(supports);
            loads = List.copyOf(loads);
            knobs = List.copyOf(knobs);
            freeForces = List.copyOf(freeForces);
            assumptions = List.copyOf(assumptions);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * How an exercise looks at some settings.
     *
     * @param sketch the figure
     * @param curves moments of its joints through its way; null where it has none
     * @param remarks what must be said of this posture: that it would fall, or a contact slide
     */
    public record View(Sketch sketch, @Nullable Curves curves, List<String> remarks) {
        /** Copies the remarks. */
        public View {
            remarks = List.copyOf(remarks);
        }
    }

    private static final class Holder {
        static final List<Entry> ENTRIES =
                Catalogue.exercises().stream().map(ExerciseShelf::entry).toList();
        static final Lifter LIFTER = Lifter.lifter("Ines").of(Sex.FEMALE, Measures.cm(178), Measures.kg(71));
    }

    /** Returns every exercise, family by family. */
    public static List<Entry> entries() {
        return Holder.ENTRIES;
    }

    private static Entry entry(Exercise<?> exercise) {
        List<Setting> knobs =
                exercise.knobs().stream().map(knob -> setting(exercise, knob)).toList();
        return new Entry(
                exercise.name(),
                ExerciseListing.word(exercise),
                exercise.family().words(),
                exercise.plane().words(),
                exercise.trains(),
                exercise.drivenJoints().stream().map(Joint::words).toList(),
                exercise.supports(),
                exercise.loads(),
                exercise.follows(),
                exercise.course().map(course -> way(exercise, course)),
                knobs,
                exercise.freeComponents(),
                exercise.assumptions(),
                exercise.cautions());
    }

    private static Way way(Exercise<?> exercise, Course course) {
        return new Way(
                exercise.knobs().indexOf(course.knob()),
                course.from(),
                course.to(),
                !course.inStep().isEmpty());
    }

    private static Setting setting(Exercise<?> exercise, Knob<?> knob) {
        String constant = constant(knob);
        return new Setting(
                knob.name(),
                word(exercise, knob, constant),
                constant,
                knob.unit(),
                knob.least().si(),
                knob.most().si(),
                knob.standard().si(),
                knob.meaning(),
                knob.reason());
    }

    private static String constant(Knob<?> knob) {
        for (Class<?> knobs : List.of(Knobs.class, SetupKnobs.class)) {
            for (Field field : knobs.getFields()) {
                try {
                    if (Modifier.isStatic(field.getModifiers()) && knob.equals(field.get(null))) {
                        return field.getName();
                    }
                } catch (IllegalAccessException hidden) {
                    throw new IllegalStateException(field.getName() + " cannot be read", hidden);
                }
            }
        }
        throw new IllegalStateException("the knob " + knob.name() + " has no name in a cell");
    }

    private static String word(Exercise<?> exercise, Knob<?> knob, String constant) {
        String own = WORDS.getOrDefault(constant, camel(constant));
        for (Method method : exercise.getClass().getMethods()) {
            if (method.getName().equals(own)
                    && method.getParameterCount() == 1
                    && method.getParameterTypes()[0].isInstance(knob.standard())) {
                return own + "(";
            }
        }
        return "with(" + constant + ", ";
    }

    private static String camel(String constant) {
        StringBuilder word = new StringBuilder();
        for (String part : constant.toLowerCase(Locale.ROOT).split("_")) {
            word.append(word.isEmpty() ? part : part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1));
        }
        return word.toString();
    }

    /**
     * Who does an exercise, and with what beside its own load.
     *
     * @param name of the variable that holds the lifter in the scripts
     * @param lifter whom figure and chart show
     * @param added loads beside the exercise's own
     */
    public record Trying(String name, Lifter lifter, AddedLoads added) {
        /** Returns the same lifter with other loads beside the exercise's own. */
        public Trying with(AddedLoads other) {
            return new Trying(name, lifter, other);
        }

        @Override
        public String toString() {
            return lifter.name() + ", " + name;
        }
    }

    /** Returns the catalogue's own lifter, a woman of 178 cm and 71 kg, for workbooks that declare none; nothing added. */
    public static Trying byInes() {
        return new Trying("ines", Holder.LIFTER, AddedLoads.NONE);
    }

    /**
     * Returns how an exercise looks.
     *
     * @param set knobs that differ from their default, by place
     * @param trying who does it and with what
     * @throws IllegalArgumentException in words, where no posture has these settings
     */
    public static View view(Entry entry, Map<Integer, Double> set, Trying trying) {
        Performance performance = performance(entry, set, trying);
        List<Knob<?>> knobs = performance.exercise().knobs();
        HeldPosture held = performance.posture();
        List<Joint> joints = known(held);
        Sketch sketch = held.sketch(joints.toArray(Joint[]::new));
        Curves curves = entry.way()
                .filter(way -> !joints.isEmpty())
                .map(way -> curves(performance, knobs.get(way.knob()), way, joints))
                .orElse(null);
        return new View(sketch, curves, held.remarks());
    }

    /** The exercise with what is added, its knobs set in the order in which a script sets them. */
    private static Performance performance(Entry entry, Map<Integer, Double> set, Trying trying) {
        Performance performance =
                trying.added().on(Catalogue.named(entry.name())).by(trying.lifter());
        List<Knob<?>> knobs = performance.exercise().knobs();
        for (Map.Entry<Integer, Double> each : new TreeMap<>(set).entrySet()) {
            performance = performance.withSi(knobs.get(each.getKey()), each.getValue());
        }
        return performance;
    }

    /** The driven joints whose moment does not depend on how what holds the body shares the load. */
    private static List<Joint> known(HeldPosture held) {
        List<Joint> joints = new ArrayList<>();
        for (Joint joint : held.performance().exercise().drivenJoints()) {
            try {
                held.moment(joint);
                joints.add(joint);
            } catch (IllegalArgumentException shared) {
                continue;
            }
        }
        return joints.subList(0, Math.min(MOST_JOINTS, joints.size()));
    }

    private static <Q extends Measure<Q>> Curves curves(
            Performance performance, Knob<Q> knob, Way way, List<Joint> joints) {
        Q from = knob.standard().with(Math.min(way.from(), way.to()), 0);
        Q to = knob.standard().with(Math.max(way.from(), way.to()), 0);
        return Sweep.sweep(knob)
                .from(from)
                .to(to)
                .points(POINTS)
                .of(performance.alongItsWay())
                .curves(joints.stream().map(Readings::moment).toArray(Reading<?>[]::new));
    }

    /**
     * Returns the lines of a cell that make an exercise and show it.
     *
     * @param name of the variable that holds it
     * @param set knobs that differ from their default, by place
     * @param trying who does it and with what
     * @param figure whether its figure is shown
     * @param table whether its moments are shown
     * @param chart whether its moments through its way are shown
     */
    public static String script(
            Entry entry,
            String name,
            Map<Integer, Double> set,
            Trying trying,
            boolean figure,
            boolean table,
            boolean chart) {
        StringBuilder made = new StringBuilder("var " + name + " = " + entry.word() + "()");
        new TreeMap<>(set).forEach((place, si) -> {
            Setting knob = entry.knobs().get(place);
            made.append('.').append(knob.word()).append(knob.inCell(si)).append(')');
        });
        List<String> lines = new ArrayList<>(List.of(made + trying.added().words() + ";"));
        String joints = joints(entry, set, trying);
        String by = ".by(" + trying.name() + ")";
        if (figure) {
            lines.add("figure(" + name + by + ".posture())" + (joints.isEmpty() ? "" : ".loadArms(" + joints + ")")
                    + ";");
        }
        if (table && !joints.isEmpty()) {
            lines.add("table(" + name + by + ".posture().moments(" + joints + "));");
        }
        if (chart && !joints.isEmpty() && entry.way().isPresent()) {
            Way way = entry.way().orElseThrow();
            Setting knob = entry.knobs().get(way.knob());
            String moments = List.of(joints.split(", ")).stream()
                    .map(joint -> "moment(" + joint + ")")
                    .collect(Collectors.joining(", "));
            lines.add("sweep(" + knob.constant() + ").from(" + knob.inCell(Math.min(way.from(), way.to())) + ").to("
                    + knob.inCell(Math.max(way.from(), way.to())) + ").of(" + name
                    + (way.together() ? ".alongItsWay()" : "")
                    + by + ").chart(" + moments + ");");
        }
        return String.join("\n", lines);
    }

    private static String joints(Entry entry, Map<Integer, Double> set, Trying trying) {
        return known(performance(entry, set, trying).posture()).stream()
                .map(Joint::name)
                .collect(Collectors.joining(", "));
    }
}
