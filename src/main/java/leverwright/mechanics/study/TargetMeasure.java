package leverwright.mechanics.study;

import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.muscle.Axis;
import leverwright.mechanics.muscle.Muscle;
import leverwright.mechanics.muscle.MuscleForces;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.muscle.MuscleState;
import leverwright.mechanics.muscle.Muscles;
import org.jspecify.annotations.Nullable;

/** What exercises for a target are compared by; values are SI. */
public enum TargetMeasure {
    /** Capacity that the target uses. */
    SHARE("capacity used of the target", Unit.PERCENT, Sides.NOT_SIDED),
    /** Force of the target. */
    FORCE("force of the target", Unit.NEWTON, Sides.PER_SIDE),
    /** Capacity that the hardest working other muscle uses. */
    OTHERS("capacity used of the hardest working other muscle", Unit.PERCENT, Sides.NOT_SIDED),
    /** Compression of the low back by one equivalent muscle. */
    BACK("low back compression", Unit.NEWTON, Sides.TOTAL),
    /** What the first joint that the target crosses presses with, by the shared forces. */
    CONTACT("joint contact", Unit.NEWTON, Sides.PER_SIDE);

    private final String words;
    private final Unit unit;
    private final Sides sides;

    TargetMeasure(String words, Unit unit, Sides sides) {
        this.words = words;
        this.unit = unit;
        this.sides = sides;
    }

    /** Returns what it is called in print. */
    public String words() {
        return words;
    }

    /** Returns how it is shown. */
    public Unit unit() {
        return unit;
    }

    /** Returns whether it is per side or in total. */
    public Sides sides() {
        return sides;
    }

    /**
     * The value in a posture.
     *
     * @throws IllegalArgumentException if it is not known there
     */
    double of(HeldPosture held, MuscleModel model, Muscles target) {
        return switch (this) {
            case SHARE -> Shares.of(held, model, target).asked().capacityUsed(target);
            case FORCE -> Shares.of(held, model, target).asked().force(target);
            case OTHERS -> other(held, model, target).map(Other::used).orElse(0.0);
            case BACK -> Studies.compression(Joint.LOW_BACK).si(held);
            case CONTACT ->
                MuscleContact.of(held, model, contactJoint(held, model, target))
                        .value()
                        .si();
        };
    }

    /** Another muscle and the capacity that it uses. */
    record Other(Muscle muscle, double used) {}

    /** The muscle outside the target that uses most of its capacity; empty where none works. */
    static Optional<Other> other(HeldPosture held, MuscleModel model, Muscles target) {
        @Nullable Other most = null;
        for (MuscleForces made : Shares.parts(held, model)) {
            MuscleForces forces = made.asked();
            if (!forces.feasible()) {
                continue;
            }
            for (MuscleState state : forces.states()) {
                double used = forces.capacityUsed(state.muscle());
                boolean outside = !target.members().contains(state.muscle());
                if (outside && used > 0 && (most == null || used > most.used())) {
                    most = new Other(state.muscle(), used);
                }
            }
        }
        return Optional.ofNullable(most);
    }

    /** The first joint that the target crosses where contact is computed. */
    static Joint contactJoint(HeldPosture held, MuscleModel model, Muscles target) {
        for (MuscleState state : Shares.of(held, model, target).states(target)) {
            for (Axis axis : state.arms().keySet()) {
                if (axis != Axis.WRIST) {
                    return axis.joint();
                }
            }
        }
        throw new IllegalArgumentException("contact is not computed for the joints of the " + target.words());
    }
}
