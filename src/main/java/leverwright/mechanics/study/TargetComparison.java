package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Duration;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.motion.Tempo;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.muscle.Muscles;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listed;
import leverwright.mechanics.working.Listing;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * Exercises side by side for a target: what it gets, what others pay. Each row is at the posture of the exercise's own range
 * where the target's force is greatest, at the load that was set: equal nothing, unless {@link #loadForSame} made it so. Not for
 * several threads at once.
 */
public final class TargetComparison implements Listed {
    static final int PLACES = 25;
    private static final int HALVINGS = 45;
    private static final int SET_HALVINGS = 30;
    /** How far the angle of a peak may be off, rad; assumed. */
    private static final double OFF = Math.PI / 60;

    static final String CAUTION = "Equal load, equal force: not a load to attempt; a qualified coach, spotter and"
            + " safety bars come first.";

    private final Muscles target;
    private final MuscleModel model;
    private final List<Entry> entries;
    private final Map<Entry, List<Place>> placed = new LinkedHashMap<>();

    /** An exercise with the knob that moves it through its range. */
    record Entry(Performance performance, @Nullable Knob<?> knob, double from, double to) {
        List<Place> places() {
            Knob<?> turned = knob;
            if (turned == null) {
                return List.of(new Place(performance.posture(), "as set", 0));
            }
            List<Place> all = new ArrayList<>();
            for (int k = 0; k < PLACES; k++) {
                double si = from + (to - from) * k / (PLACES - 1);
                all.add(new Place(
                        performance.withSi(turned, si).posture(),
                        "peak at " + turned.name() + " " + turned.unit().format(si),
                        si));
            }
            return all;
        }

        /** Mean force of the target over equal steps of the knob. */
        Object mean(TargetComparison of) {
            if (knob == null) {
                return "one posture only";
            }
            return Force.of(of.force(this, true));
        }

        /** Lifting and lowering work of one repetition through the range. */
        List<Object> work() {
            Knob<?> turned = knob;
            if (turned == null) {
                return List.of("none, held", "none, held");
            }
            try {
                Tempo slow = Tempo.of(Duration.of(2), Duration.of(2));
                Repetition way = new Repetition(performance, turned, from, to, slow);
                return List.of(way.liftingWork(), way.loweringWork());
            } catch (IllegalArgumentException notThere) {
                return List.of("not computed here", "not computed here");
            }
        }

        /** Lifting work of one repetition through the range, J; null where none is done or known. */
        @Nullable
        Double lifting() {
            return work().get(0) instanceof Answer<?> answer ? answer.value().si() : null;
        }

        /** The greatest load that a model holds through the range, SI. */
        double greatest(Knob<?> load, MuscleModel model) {
            return new GreatestLoad<>(performance, load, model, knob, from, to).si();
        }

        /** The posture of a draw: typed errors moved within their limits, the range's knob by up to 3°. */
        HeldPosture moved(Place at, int number, Map<String, Double> parts, RandomStream random) {
            Performance here = at.held().performance();
            for (Performance.Unsure unsure : here.unsure()) {
                String name = unsure.ofExercise() ? number + unsure.name() : unsure.name();
                here = unsure.mover().move(here, parts.computeIfAbsent(name, any -> random.nextBetween(-1, 1)));
            }
            Knob<?> turned = knob;
            if (turned != null && turned.unit().dimension() == Dimension.ANGLE) {
                double si = at.si() + random.nextBetween(-OFF, OFF);
                here = here.withSi(
                        turned,
                        Math.max(turned.least().si(), Math.min(turned.most().si(), si)));
            }
            return here.posture();
        }

        Entry with(Performance other) {
            return new Entry(other, knob, from, to);
        }
    }

    /** A posture on the way and where it lies. */
    record Place(HeldPosture held, String words, double si) {}

    private TargetComparison(Muscles target, MuscleModel model, List<Entry> entries) {
        this.target = target;
        this.model = model;
        this.entries = List.copyOf(entries);
    }

    static TargetComparison of(Muscles target) {
        return new TargetComparison(target, MuscleModel.standard(), List.of());
    }

    /** Returns this with another model of the muscles. */
    public TargetComparison with(MuscleModel other) {
        return new TargetComparison(target, other, entries);
    }

    /** Returns this with one more exercise, in the posture that is set. */
    public TargetComparison of(Performance performance) {
        return and(new Entry(performance, null, 0, 0));
    }

    /** Returns this with one more exercise, through a range. */
    public <Q extends Measure<Q>> TargetComparison of(Performance performance, Knob<Q> knob, Q least, Q most) {
        return and(new Entry(performance, knob, least.si(), most.si()));
    }

    private TargetComparison and(Entry entry) {
        List<Entry> more = new ArrayList<>(entries);
        more.add(entry);
        return new TargetComparison(target, model, more);
    }

    /** An exercise's postures, made once; those of a load that is only tried are not kept. */
    List<Place> places(Entry entry) {
        List<Place> known = placed.get(entry);
        if (known == null) {
            known = entry.places();
            if (entries.contains(entry)) {
                placed.put(entry, known);
            }
        }
        return known;
    }

    Place peak(Entry entry) {
        Place best = null;
        double most = -1;
        for (Place place : places(entry)) {
            double force = Shares.of(place.held(), model, target).asked().force(target);
            if (force > most) {
                most = force;
                best = place;
            }
        }
        return Objects.requireNonNull(best);
    }

    /** The target's force in an exercise: its peak, or its mean over equal steps of the range. */
    double force(Entry entry, boolean mean) {
        double sum = 0;
        double most = 0;
        List<Place> places = places(entry);
        for (int k = 0; k < places.size(); k++) {
            double force =
                    Shares.of(places.get(k).held(), model, target).asked().force(target);
            boolean end = places.size() > 1 && (k == 0 || k == places.size() - 1);
            sum += end ? force / 2 : force;
            most = Math.max(most, force);
        }
        return mean ? sum / Math.max(1, places.size() - 1) : most;
    }

    /** Returns the table of all exercises. */
    @Override
    public Listing listing() {
        List<List<Object>> rows = new ArrayList<>();
        for (Entry entry : entries) {
            Place place = peak(entry);
            HeldPosture held = place.held();
            List<Object> work = entry.work();
            rows.add(List.of(
                    entry.performance().exercise().toString(),
                    place.words(),
                    Shares.force(target, model).of(held),
                    Shares.capacityUsed(target, model).of(held),
                    other(held),
                    reading(held, Studies.compression(Joint.LOW_BACK)),
                    contact(held),
                    entry.mean(this),
                    work.get(0),
                    work.get(1)));
        }
        List<String> notes = new ArrayList<>();
        if (entries.size() > 1) {
            notes.add(order());
        }
        notes.addAll(List.of(
                basis(),
                Shares.ruleNote(model),
                "Equal in this table: nothing but the lifter and the model; loads are as set.",
                "Low back: one extensor muscle with the published arm; joint contact: the shared forces, along the bone.",
                "Work: against weights and loads, one way up and down the range, both sides together; what muscles spend is more.",
                CAUTION));
        return new Listing(
                "For the " + target.words() + ", each at the load that is set",
                List.of(
                        "exercise",
                        "at",
                        "force of the target",
                        "its capacity used",
                        "most used other muscle",
                        "low back compression, total",
                        "joint contact there, per side",
                        "mean force of the target over the range",
                        "lifting work",
                        "lowering work"),
                rows,
                notes);
    }

    String basis() {
        return model.basis(entries.get(0).performance().lifter());
    }

    /** What the first joint that the target crosses presses together with, by the shared forces. */
    private Object contact(HeldPosture held) {
        try {
            Joint joint = TargetMeasure.contactJoint(held, model, target);
            return joint.words() + " "
                    + shown(MuscleContact.of(held, model, joint).value());
        } catch (IllegalArgumentException notComputed) {
            return "not computed here";
        }
    }

    /**
     * Returns how much of its capacity the target uses in each exercise through its own range, from its start to its end; an
     * exercise in one posture is a level line.
     */
    public Curves curves() {
        return curves(TargetMeasure.SHARE);
    }

    /**
     * Returns chosen measures of each exercise through its own range, from its start to its end; an exercise in one posture is a
     * level line, and where a measure is not known its curve has a gap. Measures of one unit stand in one plot.
     *
     * @param measures at least one, such as {@code TargetMeasure.BACK}
     */
    public Curves curves(TargetMeasure... measures) {
        return TargetTables.curves(this, List.of(measures));
    }

    /** Returns every measure at each exercise's peak as bars, the longest the largest of its measure. */
    public Listing bars() {
        return TargetTables.bars(this);
    }

    /**
     * Returns what a set gives the target: its force over time through repetitions at a tempo, with what speed and inertia do to
     * moments and capacities; mean over time, peak, and force times time of the whole set.
     *
     * @param tempo of every repetition
     * @param repetitions of the set, at least 1
     */
    public Listing overSet(Tempo tempo, double repetitions) {
        return TargetTables.overSet(this, tempo, repetitions);
    }

    /**
     * Returns target, others and low back at three kinds of equality: equal load, equal peak force of the target, and each exercise at
     * the greatest load that the model holds through its range.
     *
     * @param loads the knob of each exercise's load, in their order
     * @throws IllegalArgumentException if there is not one for each exercise
     */
    public Listing equalWhat(Knob<?>... loads) {
        return TargetTables.equalWhat(this, List.of(loads));
    }

    Muscles target() {
        return target;
    }

    MuscleModel model() {
        return model;
    }

    List<Entry> entries() {
        return entries;
    }

    private String other(HeldPosture held) {
        return TargetMeasure.other(held, model, target)
                .map(other -> other.muscle().words()
                        + String.format(Locale.ROOT, ", %.0f %% of capacity", 100 * other.used()))
                .orElse("none");
    }

    private static Object reading(HeldPosture held, Reading<Force> reading) {
        try {
            return Force.of(reading.si(held));
        } catch (IllegalArgumentException unknownHere) {
            return "not known here";
        }
    }

    /**
     * Returns the load in the last exercise that gives the target the same peak force as the first.
     *
     * @param load the knob of the last exercise's load
     * @throws IllegalArgumentException if no load of the knob's range does
     */
    public <Q extends Measure<Q>> Answer<Q> loadForSame(Knob<Q> load) {
        return loadForSame(load, false);
    }

    /**
     * Returns the load in the last exercise that gives the target the same mean force over its own range as the first; an
     * exercise in one posture counts with its force there. Over sets of equal time under load both means stand for the set.
     *
     * @param load the knob of the last exercise's load
     * @throws IllegalArgumentException if no load of the knob's range does
     */
    public <Q extends Measure<Q>> Answer<Q> loadForSameMean(Knob<Q> load) {
        return loadForSame(load, true);
    }

    /**
     * Returns the load in the last exercise that gives the target the same force × time over a set as the first: as many
     * repetitions at one tempo, through each one's own range, with what speed and inertia do to moments and capacities.
     *
     * @param load the knob of the last exercise's load
     * @param tempo of both
     * @throws IllegalArgumentException if no load of the knob's range does
     */
    public <Q extends Measure<Q>> Answer<Q> loadForSameSet(Knob<Q> load, Tempo tempo) {
        Entry first = entries.get(0);
        Entry last = entries.get(entries.size() - 1);
        double wanted = TargetTables.meanOverTime(this, first, tempo);
        ToDoubleFunction<Double> force = si ->
                TargetTables.meanOverTime(this, last.with(last.performance().withSi(load, si)), tempo);
        double low = loadFor(load, wanted, SET_HALVINGS, force);
        Q value = load.least().with(low, 0);
        String label = load.name() + " for the same set";
        Working working = Working.of(label, List.of(Step.given("load", value, "found by bisection")))
                .checked(List.of(
                        Step.given("F_first", Force.of(wanted), "mean force over time, per side, first exercise"),
                        Step.given("F_last", Force.of(force.applyAsDouble(low)), "the same in the last exercise")));
        return Answer.of(label, value, Sides.TOTAL, working)
                .noted(List.of(
                        "With " + shown(value) + " in total, a repetition of "
                                + last.performance().exercise().name() + " gives the " + target.words()
                                + " the same mean force over time per side, " + shown(Force.of(wanted)) + ", as one of "
                                + first.performance().exercise()
                                + " at the same tempo, so that sets of as many repetitions give the"
                                + " same force × time.",
                        basis(),
                        CAUTION));
    }

    private <Q extends Measure<Q>> Answer<Q> loadForSame(Knob<Q> load, boolean mean) {
        Entry first = entries.get(0);
        Entry last = entries.get(entries.size() - 1);
        double wanted = force(first, mean);
        String statistic = mean ? "mean force over the range" : "peak force";
        double low = loadFor(last, load, wanted, mean);
        double found = force(last.with(last.performance().withSi(load, low)), mean);
        Q value = load.least().with(low, 0);
        String label = load.name() + " for the same";
        Working working = Working.of(label, List.of(Step.given("load", value, "found by bisection")))
                .checked(List.of(
                        Step.given("F_first", Force.of(wanted), statistic + " of the target, per side, first exercise"),
                        Step.given("F_last", Force.of(found), "the same in the last exercise at this load")));
        return Answer.of(label, value, Sides.TOTAL, working)
                .noted(notesOf(first, last.with(last.performance().withSi(load, low)), value, mean));
    }

    /**
     * The load of an exercise that gives the target a force, SI; forces beyond the model's capacity are those that are asked.
     *
     * @throws IllegalArgumentException if no load of the knob's range does
     */
    double loadFor(Entry entry, Knob<?> load, double wanted, boolean mean) {
        return loadFor(
                load,
                wanted,
                HALVINGS,
                si -> force(entry.with(entry.performance().withSi(load, si)), mean));
    }

    private double loadFor(Knob<?> load, double wanted, int halvings, ToDoubleFunction<Double> force) {
        double low = load.least().si();
        double high = load.most().si();
        if (force.applyAsDouble(low) > wanted || force.applyAsDouble(high) < wanted) {
            throw new IllegalArgumentException("no " + load.name() + " from " + load.least() + " to " + load.most()
                    + " gives the " + target.words() + " the " + Force.of(wanted) + " of the first exercise");
        }
        for (int k = 0; k < halvings; k++) {
            double middle = (low + high) / 2;
            if (force.applyAsDouble(middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    static String shown(Measure<?> value) {
        return value.with(NumberText.rounded(value.si(), 4).doubleValue(), 0).toString();
    }

    private List<String> notesOf(Entry first, Entry last, Measure<?> value, boolean mean) {
        List<String> notes = new ArrayList<>();
        notes.add(sentence(first, last, value, mean));
        for (Entry entry : List.of(first, last)) {
            Shares.beyond(Shares.of(peak(entry).held(), model, target))
                    .ifPresent(words -> notes.add(entry.performance().exercise().name() + ": " + words));
        }
        notes.add(basis());
        notes.add(CAUTION);
        return notes;
    }

    private String sentence(Entry first, Entry last, Measure<?> value, boolean mean) {
        String statistic = mean ? "mean force over the range" : "peak force";
        return "With " + shown(value) + " in total, "
                + last.performance().exercise().name() + " gives the " + target.words()
                + " the same " + statistic + " per side as "
                + first.performance().exercise() + ": "
                + shown(Force.of(force(first, mean))) + " ("
                + (mean
                        ? "each over its own range, equal steps of what moves"
                        : peak(first).words() + "; " + peak(last).words())
                + ").";
    }

    /**
     * Returns in how many of 100 draws the exercises keep their order by the capacity that the target uses, each at its peak:
     * draws of areas, arms, specific tensions and exponent; inputs typed with an error, evenly within it; and the angle at which
     * a range has its peak, evenly within 3° (assumed, no source). What belongs to the lifter is drawn alike for all.
     *
     * @throws IllegalArgumentException if there are fewer than two exercises
     */
    public String order() {
        if (entries.size() < 2) {
            throw new IllegalArgumentException("an order needs two exercises; add another with of(…)");
        }
        List<Place> peaks = entries.stream().map(this::peak).toList();
        List<Double> values = new ArrayList<>();
        for (Place place : peaks) {
            values.add(Shares.of(place.held(), model, target).asked().capacityUsed(target));
        }
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, values.size()).boxed().toList());
        order.sort(Comparator.comparing((Integer k) -> -values.get(k)));
        RandomStream random = new RandomStream(1);
        int holds = 0;
        int made = 0;
        for (int k = 0; k < Shares.DRAWS; k++) {
            Optional<List<Double>> drawn = drawn(peaks, random);
            made += drawn.isPresent() ? 1 : 0;
            holds += drawn.isPresent() && falls(drawn.get(), order) ? 1 : 0;
        }
        List<String> names = order.stream()
                .map(k -> entries.get(k).performance().exercise().toString())
                .toList();
        return "Capacity of the " + target.words() + " that is used, most first: " + String.join("; ", names)
                + ". This order holds in " + holds + " of " + made
                + " draws of muscles' numbers and exponent, of inputs typed with an error, and of 3° (assumed) at the peak of a"
                + " range of angles; a posture without either is not moved"
                + (made < Shares.DRAWS
                        ? "; in the other " + (Shares.DRAWS - made) + " the muscles could not hold one of the postures."
                        : ".");
    }

    /** Capacity used in each exercise in one draw; empty where one of them cannot be held. */
    private Optional<List<Double>> drawn(List<Place> peaks, RandomStream random) {
        Sex sex = peaks.get(0).held().performance().lifter().sex();
        MuscleModel numbers = model.drawn(random, sex);
        Map<String, Double> parts = new LinkedHashMap<>();
        List<Double> used = new ArrayList<>();
        try {
            for (int k = 0; k < peaks.size(); k++) {
                HeldPosture held = entries.get(k).moved(peaks.get(k), k, parts, random);
                used.add(Shares.of(held, numbers, target).asked().capacityUsed(target));
            }
        } catch (IllegalArgumentException cannotBeMade) {
            return Optional.empty();
        }
        return Optional.of(used);
    }

    private static boolean falls(List<Double> values, List<Integer> order) {
        for (int k = 1; k < order.size(); k++) {
            if (values.get(order.get(k - 1)) < values.get(order.get(k))) {
                return false;
            }
        }
        return true;
    }
}
