package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import leverwright.mechanics.body.Landmark;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.ReadingStatus;
import leverwright.mechanics.body.UncertainInput;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.muscle.MuscleChanges;
import leverwright.mechanics.muscle.MuscleNumber;
import org.jspecify.annotations.Nullable;

/**
 * An exercise done by a lifter; an immutable value.
 *
 * <p><b>Bands.</b> Inputs with an error, on knobs or on the lifter, make this uncertain. Results then are computed at the
 * centre, for the value, and all over the inputs' bands, for the ends: on a grid of 21 places for one uncertain input, 9 by 9
 * for two, and beyond that at all corners and, along each input alone, at the ends and half way. Errors are limits.
 */
public final class Performance {
    private static final int ALONE = 21;
    private static final int PAIR = 9;
    /** Greatest number of uncertain inputs: 2 to this power are the corners. */
    private static final int MOST_INPUTS = 10;

    private final Exercise<?> exercise;
    private final Skeleton skeleton;
    private final List<Landmark> spread;
    private final boolean otherSide;
    private final MuscleChanges muscles;

    Performance(Exercise<?> exercise, Lifter lifter) {
        this(exercise, new Skeleton(lifter), List.of(), false, MuscleChanges.NONE);
    }

    private Performance(
            Exercise<?> exercise, Skeleton skeleton, List<Landmark> spread, boolean otherSide, MuscleChanges muscles) {
        this.muscles = muscles;
        this.exercise = exercise;
        this.skeleton = skeleton;
        this.spread = spread;
        this.otherSide = otherSide;
    }

    /**
     * Returns the same with the other side reported, where an exercise keeps both sides apart: the idle leg, the rear leg, the
     * arm that holds nothing.
     *
     * @throws IllegalArgumentException if both sides are alike
     */
    public Performance otherSide() {
        if (!exercise.keepsSidesApart()) {
            throw new IllegalArgumentException(
                    "both sides are alike in the " + exercise.name().toLowerCase(Locale.ROOT)
                            + ", so that there is no other side; ask for the moment itself, which is per side");
        }
        return new Performance(exercise, skeleton, spread, !otherSide, muscles);
    }

    /** Tells whether the other one of two sides that differ is reported. */
    public boolean isOtherSide() {
        return otherSide;
    }

    /** Returns the exercise. */
    public Exercise<?> exercise() {
        return exercise;
    }

    /** Returns the lifter. */
    public Lifter lifter() {
        return skeleton.lifter();
    }

    /**
     * Returns the same lifter at the same exercise with a knob set.
     *
     * @throws IllegalArgumentException if the exercise has no such knob or the value lies outside its range
     */
    public <Q extends Measure<Q>> Performance with(Knob<Q> knob, Q value) {
        return new Performance(exercise.with(knob, value), skeleton, spread, otherSide, muscles);
    }

    /**
     * Returns this performance with the spread of a place on the body, such as the ankle over the foot, among the uncertain
     * inputs: the band that the body's data give it. A place given with an error of its own is among them anyway.
     */
    public Performance spreading(Landmark place) {
        List<Landmark> more = new ArrayList<>(spread);
        more.add(place);
        return new Performance(exercise, skeleton, List.copyOf(more), otherSide, muscles);
    }

    /**
     * Returns the same performance with a bare SI value in a knob's place, for sweeps.
     *
     * @throws IllegalArgumentException if the exercise has no such knob or the value lies outside its range
     */
    public Performance withSi(Knob<?> knob, double si) {
        Settings settings = exercise.settings();
        return with(settings.withSi(settings.indexOf(knob), si));
    }

    /** Returns the same lifter at the exercise with all that its usual way moves in step; see {@link Exercise#alongItsWay}. */
    public Performance alongItsWay() {
        return of(exercise.alongItsWay());
    }

    private Performance with(Settings settings) {
        return of(exercise.with(settings));
    }

    /** Returns the same lifter at another exercise. */
    Performance of(Exercise<?> other) {
        return new Performance(other, skeleton, spread, otherSide, muscles);
    }

    private Performance with(Lifter lifter) {
        return new Performance(exercise, new Skeleton(lifter), spread, otherSide, muscles);
    }

    /**
     * Returns the same performance with a number of the lifter's muscles set in place of the one on file.
     *
     * @throws IllegalArgumentException if the value lies outside the number's range
     */
    public Performance withMuscles(MuscleNumber number, double value) {
        return new Performance(exercise, skeleton, spread, otherSide, muscles.with(number, value));
    }

    /** Returns the numbers of the lifter's muscles that are set in place of those on file. */
    public MuscleChanges muscles() {
        return muscles;
    }

    /** Returns the same exercise with the same settings by another lifter. */
    public Performance by(Lifter other) {
        return with(other);
    }

    /**
     * Returns the posture held still. A lifter who would fall is an answer, not an error: ask {@link HeldPosture#standing}.
     *
     * @throws ImpossibleSetting if no posture has these settings
     * @throws IllegalArgumentException if the settings contradict each other
     */
    public HeldPosture posture() {
        return new HeldPosture(this, otherSide ? exercise.arrangeOther(skeleton) : exercise.arrange(skeleton));
    }

    /** Returns the names of the inputs that carry an error. */
    public List<String> uncertainInputs() {
        List<String> names = new ArrayList<>();
        axes().forEach(axis -> names.add(axis.name()));
        return names;
    }

    /**
     * An input that carries an error.
     *
     * @param name what it is
     * @param ofExercise whether it belongs to the exercise's settings and not to the lifter
     * @param centre its value, SI; 0 where it is a lifter's
     * @param mover puts a performance at a part of the input's half width, −1 to 1
     */
    public record Unsure(String name, boolean ofExercise, double centre, Mover mover) {
        /** Moves a performance. */
        public interface Mover {
            /**
             * Returns the performance with this input moved, without an error of its own.
             *
             * @param start the performance to change
             * @param part of the half width, −1 to 1
             */
            Performance move(Performance start, double part);
        }
    }

    /** Returns the inputs that carry an error, those of the exercise first. */
    public List<Unsure> unsure() {
        List<Unsure> all = new ArrayList<>();
        int own = exercise.settings().uncertain().size();
        for (Axis axis : axes()) {
            boolean ofExercise = all.size() < own;
            double centre = ofExercise
                    ? exercise.settings().si(exercise.settings().uncertain().get(all.size()))
                    : 0;
            all.add(new Unsure(axis.name(), ofExercise, centre, axis::move));
        }
        return List.copyOf(all);
    }

    /** An uncertain input: moves a performance to a part of its half width, −1 to 1. */
    private record Axis(String name, Function<Performance, Function<Double, Performance>> mover) {
        Performance move(Performance start, double part) {
            return mover.apply(start).apply(part);
        }
    }

    private List<Axis> axes() {
        List<Axis> axes = new ArrayList<>();
        Settings settings = exercise.settings();
        for (int index : settings.uncertain()) {
            double centre = settings.si(index);
            double error = settings.error(index);
            axes.add(new Axis(
                    settings.knobs().get(index).name(),
                    from -> part -> from.with(from.exercise.settings().moved(index, centre + part * error))));
        }
        lifterAxes(axes);
        return axes;
    }

    private void lifterAxes(List<Axis> axes) {
        for (UncertainInput input : lifter().uncertainInputs()) {
            axes.add(new Axis(
                    input.name(), from -> part -> from.with(input.mover().move(from.lifter(), part))));
        }
        for (Landmark place : Landmark.values()) {
            Length at = lifter().body().place(place);
            boolean given = skeleton.body().number(place).status() == ReadingStatus.GIVEN;
            if (at.error() > 0 && !given && spread.contains(place)) {
                axes.add(new Axis(
                        place.words(),
                        from -> part -> from.with(from.lifter().place(place, Length.of(at.si() + part * at.error())))));
            }
        }
    }

    /**
     * Returns this performance moved over the bands of its uncertain inputs, for the ends of results; empty when there are none.
     *
     * @throws IllegalArgumentException if more inputs carry an error than can be moved together
     */
    public List<Performance> variations() {
        List<Axis> axes = axes();
        if (axes.size() > MOST_INPUTS) {
            throw new IllegalArgumentException(axes.size() + " inputs carry an error; allowed: " + MOST_INPUTS
                    + " at once. Give the surest of them without an error.");
        }
        List<Performance> all = new ArrayList<>();
        if (axes.size() == 1 || axes.size() == 2) {
            grid(this, axes, 0, axes.size() == 1 ? ALONE : PAIR, all);
        } else if (axes.size() > 2) {
            grid(this, axes, 0, 2, all);
            for (Axis axis : axes) {
                for (double part : new double[] {-1, -0.5, 0.5, 1}) {
                    all.add(axis.move(this, part));
                }
            }
        }
        return all;
    }

    private static void grid(Performance at, List<Axis> axes, int axis, int places, List<Performance> all) {
        if (axis == axes.size()) {
            all.add(at);
            return;
        }
        for (int k = 0; k < places; k++) {
            grid(axes.get(axis).move(at, 2.0 * k / (places - 1) - 1), axes, axis + 1, places, all);
        }
    }

    /** Returns whether the other is the same exercise with the same settings by the very same lifter, as uncertain, with the same muscles. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Performance that
                && lifter() == that.lifter()
                && exercise.equals(that.exercise)
                && otherSide == that.otherSide
                && spread.equals(that.spread)
                && muscles.equals(that.muscles);
    }

    @Override
    public int hashCode() {
        return 31 * lifter().name().hashCode() + exercise.hashCode();
    }

    @Override
    public String toString() {
        return exercise + " by " + lifter().name();
    }
}
