package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.muscle.Axis;
import leverwright.mechanics.muscle.MuscleForces;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.muscle.Muscles;
import leverwright.mechanics.working.Curves;
import org.jspecify.annotations.Nullable;

/**
 * How much of their capacity muscles use through a repetition: moments by inverse dynamics, capacities by the speed at which the
 * tempo turns the joints. Angular velocities are differences of the angles over neighbouring instants.
 */
final class MusclesInMotion {
    private static final int INSTANTS = 121;

    private final Repetition repetition;
    private final MuscleModel model;
    private final List<Double> times = new ArrayList<>();
    private final List<HeldPosture> postures = new ArrayList<>();

    MusclesInMotion(Repetition repetition, MuscleModel model) {
        this.repetition = repetition;
        this.model = model.changed(repetition.performance().muscles());
        double total = repetition.tempo().total();
        for (int k = 0; k < INSTANTS; k++) {
            double time = total * k / (INSTANTS - 1);
            times.add(time);
            postures.add(repetition.postureAt(time));
        }
    }

    /** Returns the curves of some muscles, in motion and, beside them, of the same postures held still. */
    Curves curves(Muscles... asked) {
        List<Curves.Curve> curves = new ArrayList<>();
        for (Muscles muscles : asked) {
            List<@Nullable Double> moving = new ArrayList<>();
            List<@Nullable Double> still = new ArrayList<>();
            for (int k = 0; k < INSTANTS; k++) {
                moving.add(used(k, muscles, true));
                still.add(used(k, muscles, false));
            }
            curves.add(
                    Curves.Curve.of("capacity used of the " + muscles.words(), Unit.PERCENT, Sides.NOT_SIDED, moving));
            curves.add(Curves.Curve.of(
                    "capacity used of the " + muscles.words() + ", held still", Unit.PERCENT, Sides.NOT_SIDED, still));
        }
        return new Curves(
                "Muscles in motion: " + repetition.performance(),
                new Curves.Axis("time", Unit.SECOND, times),
                curves,
                null,
                notes());
    }

    private List<String> notes() {
        Set<String> notes = new LinkedHashSet<>();
        notes.add(model.basis(repetition.performance().lifter()));
        notes.add(Shares.ruleNote(model));
        notes.add(
                "Capacity follows the tempo: fibres that shorten pull less, fibres that lengthen more, by Hill's curve with a/F0"
                        + " = 0.25 and 1.4 at most when lengthening (both from memory). Above 100 %: the muscles of this model cannot make the moments.");
        notes.addAll(repetition.cautionList());
        return List.copyOf(notes);
    }

    /** Mean over time of the muscles' force in motion, N. */
    double meanForce(Muscles muscles) {
        double sum = 0;
        for (int k = 0; k < INSTANTS; k++) {
            double force = forces(k, muscles, true).force(muscles);
            sum += k == 0 || k == INSTANTS - 1 ? force / 2 : force;
        }
        return sum / (INSTANTS - 1);
    }

    /** The greatest force of the muscles in motion, N. */
    double peakForce(Muscles muscles) {
        double most = 0;
        for (int k = 0; k < INSTANTS; k++) {
            most = Math.max(most, forces(k, muscles, true).force(muscles));
        }
        return most;
    }

    /** The greatest part of their capacity that the muscles use in motion. */
    double peakUsed(Muscles muscles) {
        double most = 0;
        for (int k = 0; k < INSTANTS; k++) {
            most = Math.max(most, forces(k, muscles, true).capacityUsed(muscles));
        }
        return most;
    }

    private @Nullable Double used(int instant, Muscles muscles, boolean moving) {
        try {
            return forces(instant, muscles, moving).capacityUsed(muscles);
        } catch (IllegalArgumentException cannotBeMade) {
            return null;
        }
    }

    private MuscleForces forces(int instant, Muscles muscles, boolean moving) {
        HeldPosture held = postures.get(instant);
        for (List<Axis> axes : Shares.axes(held)) {
            Shares.Part part = Shares.Part.of(held, axes);
            if (part.moments().isEmpty() || !has(held, part, muscles)) {
                continue;
            }
            Map<Axis, Double> moments = new EnumMap<>(part.moments());
            Map<Axis, Double> rates = new EnumMap<>(Axis.class);
            if (moving) {
                moments.replaceAll((axis, stillOne) -> repetition.momentAt(axis.joint(), times.get(instant)));
                part.angles().keySet().forEach(axis -> rates.put(axis, rate(instant, axis)));
            }
            return model.turning(rates)
                    .share(held.performance().lifter(), moments, part.angles())
                    .asked();
        }
        throw new IllegalArgumentException("the " + muscles.words()
                + " cross no joint whose moment is known in this repetition; ask for other muscles");
    }

    private boolean has(HeldPosture held, Shares.Part part, Muscles muscles) {
        return model.states(held.performance().lifter(), part.angles()).stream()
                .anyMatch(state -> muscles.members().contains(state.muscle()));
    }

    /** Angular velocity of flexion, rad/s. */
    private double rate(int instant, Axis axis) {
        if (axis == Axis.LOW_BACK) {
            return 0;
        }
        int before = Math.max(0, instant - 1);
        int after = Math.min(INSTANTS - 1, instant + 1);
        double change = Readings.flexion(axis.joint()).si(postures.get(after))
                - Readings.flexion(axis.joint()).si(postures.get(before));
        return change / (times.get(after) - times.get(before));
    }
}
