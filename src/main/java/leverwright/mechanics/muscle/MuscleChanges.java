package leverwright.mechanics.muscle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Numbers of the muscles set in place of those on file; an immutable value. Later ones of the same number replace earlier ones. */
public final class MuscleChanges {
    private static final int MUSCLES = Muscle.values().length;
    private static final int AXES = Axis.values().length;
    /** Nothing changed. */
    public static final MuscleChanges NONE = new MuscleChanges(List.of());

    private final List<Change> changes;
    private final double[] areas = ones(MUSCLES);
    private final double[] tensions = ones(MUSCLES);
    private final double[] optima = ones(MUSCLES);
    private final double[] arms = ones(MUSCLES * AXES);
    private final double lengthPart;

    private record Change(MuscleNumber number, double value) {}

    private MuscleChanges(List<Change> changes) {
        this.changes = List.copyOf(changes);
        this.lengthPart = whole(MuscleNumber.Kind.LENGTH_FACTOR).orElse(1);
        for (Change change : changes) {
            for (Muscle muscle : change.number().muscles()) {
                multiply(change, muscle.ordinal());
            }
        }
    }

    private static double[] ones(int size) {
        double[] ones = new double[size];
        Arrays.fill(ones, 1);
        return ones;
    }

    private void multiply(Change change, int muscle) {
        switch (change.number().kind()) {
            case AREA -> areas[muscle] *= change.value();
            case TENSION -> tensions[muscle] *= change.value();
            case OPTIMUM_LENGTH -> optima[muscle] *= change.value();
            case ARM -> {
                for (Axis axis : change.number().axes()) {
                    arms[muscle * AXES + axis.ordinal()] *= change.value();
                }
            }
            default -> {
                // numbers of the model as a whole are asked for by their kind
            }
        }
    }

    /**
     * Returns these changes with a number set.
     *
     * @throws IllegalArgumentException if the value lies outside the number's range
     */
    public MuscleChanges with(MuscleNumber number, double value) {
        MuscleNumber.Kind kind = number.kind();
        if (!(value >= kind.least() && value <= kind.most())) {
            throw new IllegalArgumentException(
                    number + " is " + value + "; allowed: " + kind.least() + " to " + kind.most());
        }
        List<Change> more = new ArrayList<>(changes);
        more.removeIf(change -> change.number().equals(number));
        more.add(new Change(number, value));
        return new MuscleChanges(more);
    }

    /** Returns whether nothing is changed. */
    public boolean isEmpty() {
        return changes.isEmpty();
    }

    /** Returns the value set for a number; empty where the one on file stands. */
    public OptionalDouble value(MuscleNumber number) {
        return changes.stream()
                .filter(change -> change.number().equals(number))
                .mapToDouble(Change::value)
                .findFirst();
    }

    /** Returns a sentence for every number that is changed. */
    public List<String> words() {
        return changes.stream()
                .map(change ->
                        "Set for the muscles: " + change.number() + ", " + Math.rint(1e4 * change.value()) / 1e4 + ".")
                .toList();
    }

    OptionalDouble whole(MuscleNumber.Kind kind) {
        return changes.stream()
                .filter(change -> change.number().kind() == kind)
                .mapToDouble(Change::value)
                .findFirst();
    }

    /** How much of the length factor counts. */
    double lengthPart() {
        return lengthPart;
    }

    double area(Muscle muscle) {
        return areas[muscle.ordinal()];
    }

    double tension(Muscle muscle) {
        return tensions[muscle.ordinal()];
    }

    double optimum(Muscle muscle) {
        return optima[muscle.ordinal()];
    }

    double arm(Muscle muscle, Axis axis) {
        return arms[muscle.ordinal() * AXES + axis.ordinal()];
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MuscleChanges that && changes.equals(that.changes);
    }

    @Override
    public int hashCode() {
        return changes.hashCode();
    }

    @Override
    public String toString() {
        return String.join(" ", words());
    }
}
