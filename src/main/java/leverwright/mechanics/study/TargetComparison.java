package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.muscle.Muscle;
import leverwright.mechanics.muscle.MuscleForces;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.muscle.MuscleState;
import leverwright.mechanics.muscle.Muscles;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Listed;
import leverwright.mechanics.working.Listing;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * Exercises side by side for a target: what it gets, what others pay. Each row is at the posture of the exercise's own range
 * where the target's force is greatest, at the load that was set: equal nothing, unless {@link #loadForSame} made it so.
 */
public final class TargetComparison implements Listed {
    private static final int PLACES = 25;
    private static final int HALVINGS = 45;
    private static final String CAUTION =
            "Equal load, equal force: not a load to attempt; a qualified coach, spotter and"
                    + " safety bars come first.";

    private final Muscles target;
    private final MuscleModel model;
    private final List<Entry> entries;

    /** An exercise with the knob that moves it through its range. */
    private record Entry(Performance performance, @Nullable Knob<?> knob, double from, double to) {
        List<Place> places() {
            Knob<?> turned = knob;
            if (turned == null) {
                return List.of(new Place(performance.posture(), "as set"));
            }
            List<Place> all = new ArrayList<>();
            for (int k = 0; k < PLACES; k++) {
                double si = from + (to - from) * k / (PLACES - 1);
                all.add(new Place(
                        performance.withSi(turned, si).posture(),
                        "peak at " + turned.name() + " " + turned.unit().format(si)));
            }
            return all;
        }

        Entry with(Performance other) {
            return new Entry(other, knob, from, to);
        }
    }

    /** A posture on the way and where it lies. */
    private record Place(HeldPosture held, String words) {}

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

    private Place peak(Entry entry) {
        Place best = null;
        double most = -1;
        for (Place place : entry.places()) {
            double force = Shares.of(place.held(), model, target).force(target);
            if (force > most) {
                most = force;
                best = place;
            }
        }
        return Objects.requireNonNull(best);
    }

    private double peakForce(Entry entry) {
        return Shares.of(peak(entry).held(), model, target).force(target);
    }

    /** Returns the table of all exercises. */
    @Override
    public Listing listing() {
        List<List<Object>> rows = new ArrayList<>();
        for (Entry entry : entries) {
            Place place = peak(entry);
            HeldPosture held = place.held();
            rows.add(List.of(
                    entry.performance().exercise().toString(),
                    place.words(),
                    Shares.force(target, model).of(held),
                    Shares.capacityUsed(target, model).of(held),
                    other(held),
                    reading(held, Studies.compression(Joint.LOW_BACK)),
                    reading(held, Studies.compression(Joint.KNEE))));
        }
        return new Listing(
                "For the " + target.words() + ", each at the load that is set",
                List.of(
                        "exercise",
                        "at",
                        "force of the target",
                        "its capacity used",
                        "most used other muscle",
                        "low back compression, total",
                        "knee compression, per side"),
                rows,
                List.of(
                        model.isPopulationEstimate() ? MuscleModel.POPULATION : "Calibrated by tested strength.",
                        Shares.ruleNote(model),
                        "Equal in this table: nothing but the lifter and the model; loads are as set.",
                        CAUTION));
    }

    private String other(HeldPosture held) {
        String name = "none";
        double most = 0;
        for (MuscleForces forces : Shares.parts(held, model)) {
            for (MuscleState state : forces.feasible() ? forces.states() : List.<MuscleState>of()) {
                Muscle muscle = state.muscle();
                if (!target.members().contains(muscle) && forces.capacityUsed(muscle) > most) {
                    most = forces.capacityUsed(muscle);
                    name = muscle.words();
                }
            }
        }
        return name + String.format(Locale.ROOT, ", %.0f %% of capacity", 100 * most);
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
        Entry first = entries.get(0);
        Entry last = entries.get(entries.size() - 1);
        double wanted = peakForce(first);
        ToDoubleFunction<Double> force = si -> {
            try {
                return peakForce(last.with(last.performance().withSi(load, si)));
            } catch (IllegalArgumentException beyondCapacity) {
                return Double.POSITIVE_INFINITY;
            }
        };
        double low = load.least().si();
        double high = load.most().si();
        if (force.applyAsDouble(low) > wanted || force.applyAsDouble(high) < wanted) {
            throw new IllegalArgumentException("no " + load.name() + " from " + load.least() + " to " + load.most()
                    + " gives the " + target.words() + " the " + Force.of(wanted) + " of the first exercise");
        }
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (low + high) / 2;
            if (force.applyAsDouble(middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double found = force.applyAsDouble(low);
        if (Double.isInfinite(found) || Math.abs(found - wanted) > 1e-6 * wanted) {
            throw new IllegalArgumentException("before the " + target.words() + " reach the " + Force.of(wanted)
                    + " of the first exercise, the muscles of the last one cannot hold it; lower the first one's load");
        }
        Q value = load.least().with(low, 0);
        String label = load.name() + " for the same";
        Working working = Working.of(label, List.of(Step.given("load", value, "found by bisection")))
                .checked(List.of(
                        Step.given("F_first", Force.of(wanted), "peak force of the target, per side, first exercise"),
                        Step.given("F_last", Force.of(found), "the same in the last exercise at this load")));
        return Answer.of(label, value, Sides.TOTAL, working).noted(List.of(sentence(first, last, value), CAUTION));
    }

    private String sentence(Entry first, Entry last, Measure<?> value) {
        return "With " + value + " in total, " + last.performance().exercise().name() + " gives the " + target.words()
                + " the same peak force per side as " + first.performance().exercise() + " ("
                + peak(first).words()
                + ").";
    }

    /**
     * Returns in how many of 100 draws of areas, arms, specific tensions and exponent the first exercise's capacity used by the
     * target stays above the last one's, or below, as it is without draws.
     */
    public String order() {
        HeldPosture first = peak(entries.get(0)).held();
        HeldPosture last = peak(entries.get(entries.size() - 1)).held();
        Sex sex = first.performance().lifter().sex();
        boolean above = Shares.of(first, model, target).capacityUsed(target)
                > Shares.of(last, model, target).capacityUsed(target);
        RandomStream random = new RandomStream(1);
        int holds = 0;
        int made = 0;
        for (int k = 0; k < Shares.DRAWS; k++) {
            MuscleModel drawn = model.drawn(random, sex);
            try {
                double a = Shares.of(first, drawn, target).capacityUsed(target);
                double b = Shares.of(last, drawn, target).capacityUsed(target);
                made++;
                holds += a > b == above ? 1 : 0;
            } catch (IllegalArgumentException cannotBeMade) {
                continue;
            }
        }
        return first.performance().exercise().name() + " uses " + (above ? "more" : "less") + " of the capacity of the "
                + target.words() + " than " + last.performance().exercise().name() + ": this order holds in " + holds
                + " of " + made + " draws.";
    }
}
