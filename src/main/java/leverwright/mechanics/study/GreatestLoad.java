package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.muscle.Axis;
import leverwright.mechanics.muscle.MuscleForces;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.muscle.MuscleState;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Listed;
import leverwright.mechanics.working.Listing;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * The heaviest load that the model can hold still at every posture passed, by bisection; not a one-repetition maximum. At it,
 * the limiting joint action (without which the moments could grow most), and the muscle that reaches its capacity first as the
 * load grows from nothing; these can differ.
 *
 * @param <Q> the kind of the load
 */
public final class GreatestLoad<Q extends Measure<Q>> implements Listed {
    private static final int HALVINGS = 45;
    private static final int PLACES = 13;
    private static final double FULL = 1 - 1e-9;
    private static final String CAUTION =
            "Greatest load: not a load to attempt; a qualified coach, spotter and safety bars"
                    + " come first. The heaviest load that this model holds still, not a one-repetition maximum.";

    private final Performance performance;
    private final Knob<Q> load;
    private final MuscleModel model;
    private final @Nullable Knob<?> turned;
    private final double from;
    private final double to;

    GreatestLoad(
            Performance performance,
            Knob<Q> load,
            MuscleModel model,
            @Nullable Knob<?> turned,
            double from,
            double to) {
        this.performance = performance;
        this.load = load;
        this.model = model;
        this.turned = turned;
        this.from = from;
        this.to = to;
    }

    /** Returns the same through a range of postures: {@code through(KNEE_FLEXION, deg(10), deg(110))}. */
    public <K extends Measure<K>> GreatestLoad<Q> through(Knob<K> knob, K least, K most) {
        return new GreatestLoad<>(performance, load, model, knob, least.si(), most.si());
    }

    /** Returns the same with another model of the muscles. */
    public GreatestLoad<Q> with(MuscleModel other) {
        return new GreatestLoad<>(performance, load, other, turned, from, to);
    }

    /**
     * Says how heavy the load of a posture may be in a model; empty where the exercise has no mass to change.
     */
    static String inWords(HeldPosture held, MuscleModel model) {
        Performance performance = held.performance();
        for (Knob<?> knob : performance.exercise().knobs()) {
            if (knob.unit().dimension() == Dimension.MASS) {
                return inWords(new GreatestLoad<>(performance, knob, model, null, 0, 0));
            }
        }
        return "";
    }

    private static <Q extends Measure<Q>> String inWords(GreatestLoad<Q> search) {
        String name = search.load.name().toLowerCase(Locale.ROOT);
        try {
            double si = search.si();
            return "Greatest " + name + " that this model holds here: "
                    + search.load.least().with(NumberText.rounded(si, 3).doubleValue(), 0) + ".";
        } catch (IllegalArgumentException notEvenTheLeast) {
            return "Not even " + search.load.least() + " of " + name + " are held here in this model.";
        }
    }

    private List<HeldPosture> postures(double si) {
        Performance loaded = performance.withSi(load, si);
        Knob<?> knob = turned;
        if (knob == null) {
            return List.of(loaded.posture());
        }
        List<HeldPosture> all = new ArrayList<>();
        for (int k = 0; k < PLACES; k++) {
            all.add(loaded.withSi(knob, from + (to - from) * k / (PLACES - 1)).posture());
        }
        return all;
    }

    private double scale(double si) {
        double least = Double.POSITIVE_INFINITY;
        for (HeldPosture held : postures(si)) {
            for (MuscleForces forces : Shares.parts(held, model)) {
                least = Math.min(least, forces.greatestScale());
            }
        }
        return least;
    }

    private @Nullable MuscleState full(double si) {
        for (HeldPosture held : postures(si)) {
            for (MuscleForces forces : Shares.parts(held, model)) {
                for (MuscleState state : forces.feasible() ? forces.states() : List.<MuscleState>of()) {
                    if (state.capacity() > 0 && forces.capacityUsed(state.muscle()) >= FULL) {
                        return state;
                    }
                }
            }
        }
        return null;
    }

    /** The greatest load, SI. */
    double si() {
        double low = load.least().si();
        double high = load.most().si();
        if (scale(low) < 1) {
            throw new IllegalArgumentException("even with the least " + load.name() + ", " + load.least()
                    + ", the muscles cannot hold this; ask shares(…) which joint lacks how much");
        }
        if (scale(high) >= 1) {
            return high;
        }
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (low + high) / 2;
            if (scale(middle) >= 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Returns the greatest load. */
    public Answer<Q> load() {
        double si = si();
        Q value = load.least().with(si, 0);
        String label = "greatest " + load.name() + " that the model holds";
        Step step = Step.given(
                "load",
                value,
                "found by bisection; the check is the share of the moments that the muscles could make there, 1 at most");
        Working working = Working.of(label, List.of(step))
                .checked(List.of(
                        Step.given("share", Ratio.of(Math.min(scale(si), 1e6)), "greatest share at this load")));
        return Answer.of(label, value, Sides.TOTAL, working).noted(List.of(model.basis(performance.lifter()), CAUTION));
    }

    /** Returns load, limiting joint action and the muscle that is full first. */
    @Override
    public Listing listing() {
        Answer<Q> greatest = load();
        double si = greatest.value().si();
        String limiting = "none up to the end of the knob's range";
        double least = Double.POSITIVE_INFINITY;
        for (HeldPosture held : postures(si)) {
            for (MuscleForces forces : Shares.parts(held, model)) {
                if (forces.greatestScale() < least) {
                    least = forces.greatestScale();
                    Axis axis = forces.limiting();
                    limiting = axis.action(forces.moments().getOrDefault(axis, 0.0));
                }
            }
        }
        double low = load.least().si();
        double high = si;
        MuscleState first = full(high);
        for (int k = 0; first != null && k < HALVINGS / 2; k++) {
            double middle = (low + high) / 2;
            MuscleState found = full(middle);
            if (found != null) {
                first = found;
                high = middle;
            } else {
                low = middle;
            }
        }
        List<List<Object>> rows = new ArrayList<>();
        rows.add(List.of("greatest " + load.name(), greatest));
        rows.add(List.of("limiting joint action", limiting));
        rows.add(List.of(
                "first muscle at capacity",
                first == null ? "none" : first.muscle().words()));
        if (first != null) {
            rows.add(List.of("it is full from", load.least().with(high, 0)));
        }
        return new Listing(
                "Greatest load: " + performance, List.of("what", "value"), rows, List.copyOf(greatest.notes()));
    }
}
