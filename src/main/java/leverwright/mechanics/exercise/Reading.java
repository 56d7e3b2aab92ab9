package leverwright.mechanics.exercise;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.working.Answer;

/**
 * A quantity that can be read off a held posture: what {@code chart(...)} and {@link HeldPosture#read} take.
 *
 * @param <M> its kind
 */
public final class Reading<M extends Measure<M>> {
    private final String label;
    private final Function<Plane, String> labels;
    private final Unit unit;
    private final Sides sides;
    private final ToDoubleFunction<HeldPosture> si;
    private final Function<HeldPosture, Answer<M>> answer;
    private final Function<UnaryOperator<MuscleModel>, Reading<M>> redrawn;

    Reading(
            String label,
            Unit unit,
            Sides sides,
            ToDoubleFunction<HeldPosture> si,
            Function<HeldPosture, Answer<M>> answer) {
        this(label, plane -> label, unit, sides, si, answer);
    }

    Reading(
            String label,
            Function<Plane, String> labels,
            Unit unit,
            Sides sides,
            ToDoubleFunction<HeldPosture> si,
            Function<HeldPosture, Answer<M>> answer) {
        this.label = label;
        this.labels = labels;
        this.unit = unit;
        this.sides = sides;
        this.si = si;
        this.answer = answer;
        this.redrawn = other -> this;
    }

    private Reading(
            Reading<M> that,
            String label,
            Function<Plane, String> labels,
            Function<UnaryOperator<MuscleModel>, Reading<M>> redrawn) {
        this.label = label;
        this.labels = labels;
        this.unit = that.unit;
        this.sides = that.sides;
        this.si = that.si;
        this.answer = that.answer;
        this.redrawn = redrawn;
    }

    /**
     * Returns this reading, told how it is read with another model of the muscles.
     *
     * @param other makes the same reading of the model that it is given for its own
     */
    public Reading<M> ofMuscles(Function<UnaryOperator<MuscleModel>, Reading<M>> other) {
        return new Reading<>(this, label, labels, other);
    }

    /**
     * Returns this reading under the names that others have in each plane, changed: a peak is named after what it is the peak of.
     *
     * @param names makes the name of the names of the others
     * @param others the readings that it is made of
     */
    public Reading<M> named(Function<List<String>, String> names, Reading<?>... others) {
        List<Reading<?>> all = List.of(others);
        return new Reading<>(
                this,
                names.apply(all.stream().map(each -> each.label).toList()),
                plane -> names.apply(
                        all.stream().map(each -> each.labels.apply(plane)).toList()),
                redrawn);
    }

    /** Returns this reading with its model of the muscles changed; the same one where it asks no muscle. */
    public Reading<M> redrawn(UnaryOperator<MuscleModel> change) {
        return redrawn.apply(change);
    }

    /**
     * Returns a reading of one's own, for studies and cells.
     *
     * @param label what it is, such as "low back compression"
     * @param unit in which it is shown
     * @param sides whether it is per side, in total, or neither
     * @param si the bare value in SI units: quick; throws IllegalArgumentException where a posture has none
     * @param answer the value with band and working
     */
    public static <M extends Measure<M>> Reading<M> of(
            String label,
            Unit unit,
            Sides sides,
            ToDoubleFunction<HeldPosture> si,
            Function<HeldPosture, Answer<M>> answer) {
        return new Reading<>(label, unit, sides, si, answer);
    }

    /** Returns what it is, such as "hip extension moment". */
    public String label() {
        return label;
    }

    /** Returns what it is in the plane of an exercise and on the side that is reported, such as "hip abduction moment". */
    public String label(Performance performance) {
        String inPlane = labels.apply(performance.exercise().plane());
        return performance.isOtherSide() ? "other " + inPlane : inPlane;
    }

    /** Returns the unit in which it is shown. */
    public Unit unit() {
        return unit;
    }

    /** Returns whether it is per side, in total, or neither. */
    public Sides sides() {
        return sides;
    }

    /**
     * Returns the bare value in SI units, without band and working: quick.
     *
     * @throws IllegalArgumentException if the posture has no such value
     */
    public double si(HeldPosture posture) {
        return si.applyAsDouble(posture);
    }

    /**
     * Returns the value with band and working.
     *
     * @throws IllegalArgumentException if the posture has no such value
     */
    public Answer<M> of(HeldPosture posture) {
        return answer.apply(posture);
    }

    @Override
    public String toString() {
        return label;
    }
}
