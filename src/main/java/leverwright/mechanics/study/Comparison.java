package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Knobs;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.exercise.SetupKnobs;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listing;
import org.jspecify.annotations.Nullable;

/**
 * Exercises, lifters or loads side by side over any readings: a table, who asks more in every pair and how surely, and which of
 * them no other beats in both target and cost. Immutable; every word returns another comparison.
 */
public final class Comparison {
    private static final List<Knob<Mass>> LOADS =
            List.of(Knobs.BAR, Knobs.DUMBBELL, Knobs.STACK, SetupKnobs.PLATES, SetupKnobs.VEST);
    private static final int MOST = 40;
    private static final double ALIKE = 1e-9;

    private static final String AS_WRITTEN = "the loads and settings as written";

    private final List<Performance> performances;
    /** Names given; empty to make them of exercise, lifter and settings. */
    private final List<String> called;

    private final String equal;
    private final List<String> notes;
    private final UnaryOperator<Spread> unsure;

    private Comparison(
            List<Performance> performances,
            List<String> called,
            String equal,
            List<String> notes,
            UnaryOperator<Spread> unsure) {
        this.performances = List.copyOf(performances);
        this.called = List.copyOf(called);
        this.equal = equal;
        this.notes = List.copyOf(notes);
        this.unsure = unsure;
    }

    /**
     * Begins a comparison.
     *
     * @param performances 2 to 40
     */
    public static Comparison of(List<Performance> performances) {
        if (performances.size() < 2 || performances.size() > MOST) {
            throw new IllegalArgumentException(
                    "a comparison has " + performances.size() + " performances; allowed: 2 to " + MOST);
        }
        return new Comparison(performances, List.of(), AS_WRITTEN, List.of(), each -> each);
    }

    /** Returns this comparison with inputs that are unsure, for how surely one asks more: as of a {@link Spread}. */
    public Comparison unsure(UnaryOperator<Spread> inputs) {
        return new Comparison(performances, called, equal, notes, each -> inputs.apply(unsure.apply(each)));
    }

    /**
     * Returns this comparison with the load of each set so that a reading is the same in all: that of the first. One whose load
     * cannot be found is left out, and a note says why.
     *
     * @param reading what shall be equal
     */
    public Comparison equal(Reading<?> reading) {
        double wanted = reading.si(performances.get(0).posture());
        List<Performance> set = new ArrayList<>();
        List<String> said = new ArrayList<>(notes);
        List<String> names = names();
        List<String> kept = new ArrayList<>(called.isEmpty() ? List.of() : called.subList(0, 1));
        for (int k = 0; k < performances.size(); k++) {
            Performance each = performances.get(k);
            if (k == 0) {
                set.add(each);
                continue;
            }
            try {
                Knob<Mass> load = load(each.exercise());
                Performance changed = with(each, load, reading, performances.get(0));
                set.add(changed);
                if (!called.isEmpty()) {
                    kept.add(called.get(k));
                }
                said.add(names.get(k) + " then has " + load.name() + " "
                        + load.text(Mass.of(rounded(changed.exercise().get(load).si()))) + ".");
            } catch (IllegalArgumentException none) {
                said.add(names.get(k) + " is left out: " + none.getMessage() + ".");
            }
        }
        if (set.size() < 2) {
            throw new IllegalArgumentException(String.join(" ", said));
        }
        String words =
                reading.label(performances.get(0)) + " of " + reading.unit().format(wanted, 4)
                        + (reading.sides().words().isEmpty()
                                ? ""
                                : " " + reading.sides().words());
        return new Comparison(set, kept, words, said, unsure);
    }

    private static double rounded(double kilograms) {
        return Math.rint(kilograms * 100) / 100;
    }

    private static Performance with(Performance each, Knob<Mass> load, Reading<?> reading, Performance like) {
        double si = SolveFor.of(Variable.of(load))
                .in(each)
                .gives(reading, like)
                .only()
                .value()
                .si();
        return each.withSi(load, si);
    }

    /** The knob that loads an exercise: the first that is set, else the first that it has. */
    private static Knob<Mass> load(Exercise<?> exercise) {
        for (Knob<Mass> load : LOADS) {
            if (exercise.knobs().contains(load) && exercise.isSet(load)) {
                return load;
            }
        }
        for (Knob<Mass> load : LOADS) {
            if (exercise.knobs().contains(load)) {
                return load;
            }
        }
        throw new IllegalArgumentException("the " + exercise.name().toLowerCase(Locale.ROOT)
                + " has no bar, dumbbell, stack, plates or vest whose mass could be set");
    }

    /** Returns what is compared, in the order of the table. */
    public List<Performance> performances() {
        return performances;
    }

    /**
     * Returns this comparison with names of one's own.
     *
     * @param names one for each performance, in their order
     * @throws IllegalArgumentException if there is not one for each
     */
    public Comparison called(List<String> names) {
        if (names.size() != performances.size() || names.stream().anyMatch(String::isBlank)) {
            throw new IllegalArgumentException(
                    names.size() + " names for " + performances.size() + " performances; give one for each");
        }
        return new Comparison(performances, names, equal, notes, unsure);
    }

    private List<String> names() {
        return called.isEmpty() ? Named.of(performances) : called;
    }

    private String title(String what) {
        return what + ": " + String.join("; ", names());
    }

    private List<String> allNotes() {
        Set<String> all = new LinkedHashSet<>();
        all.add("Equal: " + equal + ".");
        all.addAll(notes);
        for (Performance each : performances) {
            all.addAll(SolveFor.cautions(each));
        }
        return List.copyOf(all);
    }

    private static Object entry(Performance of, Reading<?> reading) {
        try {
            return Found.value(
                    reading.label(of), reading.unit(), reading.sides(), reading.si(of.posture()), "of this exercise");
        } catch (IllegalArgumentException none) {
            return "none: " + none.getMessage();
        }
    }

    /**
     * Returns the table: a row a performance, a column a reading.
     *
     * @param readings at least one
     */
    public Listing table(Reading<?>... readings) {
        List<String> headings = new ArrayList<>();
        headings.add("");
        for (Reading<?> reading : readings) {
            headings.add(reading.label(performances.get(0)));
        }
        List<String> names = names();
        List<List<Object>> rows = new ArrayList<>();
        for (int k = 0; k < performances.size(); k++) {
            List<Object> row = new ArrayList<>();
            row.add(names.get(k));
            for (Reading<?> reading : readings) {
                row.add(entry(performances.get(k), reading));
            }
            rows.add(row);
        }
        return new Listing(title("Compared"), headings, rows, allNotes());
    }

    private double value(int k, Reading<?> reading) {
        try {
            return reading.si(performances.get(k).posture());
        } catch (IllegalArgumentException none) {
            return Double.NaN;
        }
    }

    private record Pair(int one, int other, Reading<?> reading) {}

    /**
     * Returns a sentence for every pair and reading: who asks more, by how much, and in how many draws.
     *
     * @param crew who works on the draws
     * @param readings at least one
     */
    public Listing pairs(Crew crew, Reading<?>... readings) {
        List<Pair> pairs = new ArrayList<>();
        for (Reading<?> reading : readings) {
            for (int a = 0; a < performances.size(); a++) {
                for (int b = a + 1; b < performances.size(); b++) {
                    pairs.add(new Pair(a, b, reading));
                }
            }
        }
        @Nullable SpreadResult drawn = drawn(crew, pairs);
        List<String> names = names();
        List<List<Object>> rows = new ArrayList<>();
        for (int p = 0; p < pairs.size(); p++) {
            rows.add(row(pairs.get(p), p, names, drawn));
        }
        Set<String> all = new LinkedHashSet<>(allNotes());
        if (drawn == null) {
            all.add("How surely is not said, since no input is unsure: type an error, or say what varies.");
        } else {
            all.addAll(drawn.notes());
        }
        return new Listing(
                title("Pair by pair"), List.of("reading", "who asks more", "how surely"), rows, List.copyOf(all));
    }

    private @Nullable SpreadResult drawn(Crew crew, List<Pair> pairs) {
        Spread spread = unsure.apply(Spread.ofAll(performances));
        if (!spread.isUnsure()) {
            return null;
        }
        List<Asked> asked = new ArrayList<>();
        List<Order> orders = new ArrayList<>();
        for (Pair pair : pairs) {
            asked.add(new Asked(pair.one(), pair.reading()));
            asked.add(new Asked(pair.other(), pair.reading()));
            boolean above = !(value(pair.one(), pair.reading()) < value(pair.other(), pair.reading()));
            orders.add(
                    above
                            ? Order.above("", pair.reading(), pair.reading())
                            : Order.below("", pair.reading(), pair.reading()));
        }
        return SpreadResult.of(spread, crew, asked, 0, orders);
    }

    private List<Object> row(Pair pair, int place, List<String> names, @Nullable SpreadResult drawn) {
        Reading<?> reading = pair.reading();
        double one = value(pair.one(), reading);
        double other = value(pair.other(), reading);
        String label = reading.label(performances.get(pair.one()));
        if (Double.isNaN(one - other)) {
            return List.of(
                    label, names.get(pair.one()) + " and " + names.get(pair.other()) + ": one has no such value", "");
        }
        String sure = drawn == null || drawn.judged(place) == 0
                ? ""
                : "this order holds in " + drawn.held(place) + " of " + drawn.judged(place) + " draws";
        return List.of(label, sentence(reading, names, pair, one, other), sure);
    }

    private String sentence(Reading<?> reading, List<String> names, Pair pair, double one, double other) {
        String first = names.get(pair.one());
        String second = names.get(pair.other());
        String side =
                reading.sides().words().isEmpty() ? "" : " " + reading.sides().words();
        if (Math.abs(one - other) <= ALIKE * Math.max(Math.abs(one), Math.abs(other))) {
            return first + " and " + second + " ask the same, " + reading.unit().format(one, 4) + side;
        }
        boolean above = one > other;
        double more = above ? one : other;
        double less = above ? other : one;
        String by = less > 0
                ? String.format(Locale.ROOT, "%.0f %% more", 100 * (more / less - 1))
                : reading.unit().format(more - less, 4) + " more";
        return (above ? first : second) + " more than " + (above ? second : first) + ": "
                + reading.unit().format(more, 4) + " against " + reading.unit().format(less, 4) + side + ", " + by
                + (equal.equals(AS_WRITTEN) ? ", with " : ", at equal ") + equal;
    }

    /** Whether no other has more of the target for the same cost or less. */
    private boolean isOnFront(int k, double[] targets, double[] costs) {
        for (int other = 0; other < targets.length; other++) {
            boolean asGood = targets[other] >= targets[k] && costs[other] <= costs[k];
            boolean better = targets[other] > targets[k] || costs[other] < costs[k];
            if (other != k && asGood && better) {
                return false;
            }
        }
        return !Double.isNaN(targets[k] + costs[k]);
    }

    private double[] values(Reading<?> reading) {
        double[] values = new double[performances.size()];
        for (int k = 0; k < values.length; k++) {
            values[k] = value(k, reading);
        }
        return values;
    }

    /**
     * Returns who is beaten by none in both target and cost, and by whom the others are.
     *
     * @param target of which more is wanted
     * @param cost of which less is wanted
     */
    public Listing frontTable(Reading<?> target, Reading<?> cost) {
        double[] targets = values(target);
        double[] costs = values(cost);
        List<String> names = names();
        List<List<Object>> rows = new ArrayList<>();
        for (int k = 0; k < targets.length; k++) {
            String word =
                    isOnFront(k, targets, costs) ? "beaten by none" : "beaten by " + beater(k, targets, costs, names);
            rows.add(List.of(names.get(k), entry(performances.get(k), target), entry(performances.get(k), cost), word));
        }
        return new Listing(
                title("Target and cost"),
                List.of("", target.label(performances.get(0)), cost.label(performances.get(0)), "more of it for less"),
                rows,
                allNotes());
    }

    private static String beater(int k, double[] targets, double[] costs, List<String> names) {
        for (int other = 0; other < targets.length; other++) {
            if (other != k && targets[other] >= targets[k] && costs[other] <= costs[k]) {
                return names.get(other);
            }
        }
        return "none, for want of a value";
    }

    /**
     * Returns the target over the cost: a dot for each, and the line of what no other beats.
     *
     * @param target of which more is wanted
     * @param cost of which less is wanted
     * @throws IllegalArgumentException if fewer than two have both values, or all cost the same
     */
    public Curves front(Reading<?> target, Reading<?> cost) {
        double[] targets = values(target);
        double[] costs = values(cost);
        Set<Double> rising = new TreeSet<>();
        for (int k = 0; k < costs.length; k++) {
            if (!Double.isNaN(costs[k] + targets[k])) {
                rising.add(costs[k]);
            }
        }
        if (rising.size() < 2) {
            throw new IllegalArgumentException(
                    "fewer than two different costs are known, so that there is no chart of them;"
                            + " ask for the table");
        }
        List<Double> axis = List.copyOf(rising);
        List<Curves.Curve> curves = new ArrayList<>();
        List<@Nullable Double> line = new ArrayList<>();
        for (double at : axis) {
            double most = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < costs.length; k++) {
                if (costs[k] <= at && targets[k] > most) {
                    most = targets[k];
                }
            }
            line.add(most);
        }
        curves.add(Curves.Curve.of("most for this cost or less", target.unit(), target.sides(), line));
        List<String> names = names();
        for (int k = 0; k < costs.length; k++) {
            List<@Nullable Double> dot = new ArrayList<>();
            for (double at : axis) {
                dot.add(at == costs[k] && !Double.isNaN(targets[k]) ? targets[k] : null);
            }
            curves.add(Curves.Curve.of(names.get(k), target.unit(), target.sides(), dot));
        }
        List<String> said = new ArrayList<>(allNotes());
        said.add("Drawn upward: " + target.label(performances.get(0)) + ".");
        return new Curves(
                title("Target and cost"),
                new Curves.Axis(cost.label(performances.get(0)), cost.unit(), axis),
                curves,
                null,
                said);
    }

    /** Returns one performance with a knob set in each of several values: loads side by side. */
    public static <Q extends Measure<Q>> List<Performance> each(Performance performance, Knob<Q> knob, List<Q> values) {
        return values.stream().map(value -> performance.with(knob, value)).toList();
    }
}
