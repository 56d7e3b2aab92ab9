package leverwright.mechanics.muscle;

import java.util.Arrays;
import java.util.List;
import leverwright.mechanics.body.Joint;

/**
 * A number of the muscles that a study may set in place of the one on file.
 *
 * <p>Areas, specific tensions, arms and optimum lengths are given over those on file, 1 for the same; the part of the length
 * factor from 0, where it is left out, to 1; the exponent of the sharing rule and co-contraction as they are.
 *
 * @param kind what is set
 * @param muscles whose; none for what belongs to the model as a whole
 * @param axes about which axes an arm is set; none for other numbers
 * @param words what it is called, such as "Area of the vasti"
 */
public record MuscleNumber(Kind kind, List<Muscle> muscles, List<Axis> axes, String words) {
    /** What is set. */
    public enum Kind {
        /** Physiological cross-section: capacity, and what a force is divided by. */
        AREA(0.2, 3, "Area"),
        /** Specific tension: capacity. */
        TENSION(0.2, 3, "Specific tension"),
        /** Arm: moment of a force, and how much the muscle lengthens. */
        ARM(0.3, 2, "Arm"),
        /** Optimum length of the fibres: length and speed factor. */
        OPTIMUM_LENGTH(0.6, 1.6, "Optimum length"),
        /** How much of the length factor counts. */
        LENGTH_FACTOR(0, 1, "Part of the length factor"),
        /** The exponent p of a rule that sums powers; other rules have none and stay. */
        EXPONENT(1.05, SharingRule.GREATEST_EXPONENT, "Exponent of the sharing rule"),
        /** What muscles against a joint's moment make of it. */
        CO_CONTRACTION(0, 1, "Co-contraction");

        private final double least;
        private final double most;
        private final String words;

        Kind(double least, double most, String words) {
            this.least = least;
            this.most = most;
            this.words = words;
        }

        /** Returns the least value that may be set. */
        public double least() {
            return least;
        }

        /** Returns the greatest value that may be set. */
        public double most() {
            return most;
        }
    }

    /** Copies the lists. */
    public MuscleNumber {
        muscles = List.copyOf(muscles);
        axes = List.copyOf(axes);
    }

    /** Returns a number of the model as a whole. */
    public static MuscleNumber of(Kind kind) {
        return new MuscleNumber(kind, List.of(), List.of(), kind.words);
    }

    /** Returns a number of some muscles. */
    public static MuscleNumber of(Kind kind, Muscles muscles) {
        List<Axis> axes = kind == Kind.ARM ? List.of(Axis.values()) : List.of();
        return new MuscleNumber(
                kind, muscles.members(), axes, kind.words + " of the " + muscles.words() + ", over that on file");
    }

    /** Returns the arms of some muscles about a joint. */
    public static MuscleNumber armAbout(Joint joint, Muscles muscles) {
        List<Axis> axes = Arrays.stream(Axis.values())
                .filter(axis -> axis.joint() == joint)
                .toList();
        return new MuscleNumber(
                Kind.ARM,
                muscles.members(),
                axes,
                "Arm of the " + muscles.words() + " about the " + joint.words() + ", over that on file");
    }

    /** What stands on file: 1 over itself, the exponent and the co-contraction of the standard model. */
    public double standard() {
        return switch (kind) {
            case EXPONENT -> 3;
            case CO_CONTRACTION -> 0;
            default -> 1;
        };
    }

    @Override
    public String toString() {
        return words;
    }
}
