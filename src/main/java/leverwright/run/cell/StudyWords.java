package leverwright.run.cell;

import java.util.List;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.study.Comparison;
import leverwright.mechanics.study.Spread;
import leverwright.mechanics.study.Sweep;

/** The words with which a cell begins a study of many settings: {@code spread(squat.by(ines)).vary(…).of(moment(HIP))}. */
public final class StudyWords {
    private StudyWords() {}

    /**
     * Begins a map of two knobs, each over its whole range: {@code map(TORSO_LEAN, BAR).of(hinge.by(ines)).chart(moment(HIP))}.
     *
     * @param across the knob turned from left to right
     * @param up the knob turned upwards
     */
    public static MapWord map(Knob<?> across, Knob<?> up) {
        return new MapWord(Sweep.sweep(across), Sweep.sweep(up));
    }

    /**
     * Begins a map of two sweeps, whose ranges it takes:
     * {@code map(sweep(lengthOf(THIGH)).from(cm(36)).to(cm(48)), sweep(TORSO_LEAN).to(deg(60))).of(squat.by(ines)).chart(moment(HIP))}.
     *
     * @param across what is turned from left to right
     * @param up what is turned upwards
     */
    public static MapWord map(SweepWord<?> across, SweepWord<?> up) {
        return new MapWord(across.sweep(), up.sweep());
    }

    /**
     * Begins a spread: how sure results are, given how sure the inputs are. Errors typed with a value are among them.
     *
     * @param performance the exercise done by a lifter
     */
    public static SpreadWord spread(Performance performance) {
        return new SpreadWord(Spread.of(performance));
    }

    /**
     * Begins a comparison: {@code compare(squat.by(ines), press.by(ines)).show(moment(KNEE))}.
     *
     * @param performances exercises done by lifters, at least two
     */
    public static CompareWord compare(Performance... performances) {
        return new CompareWord(Comparison.of(List.of(performances)));
    }

    /**
     * Begins a comparison of exercises: {@code compare(squat, press, extend).by(ines)}.
     *
     * @param exercises the exercises
     */
    public static CompareWord.Exercises compare(Exercise<?>... exercises) {
        return new CompareWord.Exercises(List.of(exercises));
    }

    /**
     * Begins a comparison of one exercise at several settings: {@code compare(squat.by(ines), BAR, kg(20), kg(60), kg(100))}.
     *
     * @param performance the exercise done by a lifter
     * @param knob the knob
     * @param values its settings
     * @param <Q> the kind of quantity that the knob sets
     */
    @SafeVarargs
    public static <Q extends Measure<Q>> CompareWord compare(Performance performance, Knob<Q> knob, Q... values) {
        return new CompareWord(Comparison.of(Comparison.each(performance, knob, List.of(values))));
    }

    /**
     * Asserts that a reading lies above another, in each draw of a spread.
     *
     * @param other the other reading
     * @param <M> the kind of value
     */
    public static <M extends Measure<M>> ReadingTest<M> greaterThan(Reading<M> other) {
        return new ReadingTest<>(other, true);
    }

    /**
     * Asserts that a reading lies below another, in each draw of a spread.
     *
     * @param other the other reading
     * @param <M> the kind of value
     */
    public static <M extends Measure<M>> ReadingTest<M> lessThan(Reading<M> other) {
        return new ReadingTest<>(other, false);
    }

    /**
     * What a claim asks of a reading against another.
     *
     * @param other the other reading
     * @param above whether the reading must lie above it
     * @param <M> the kind of value
     */
    public record ReadingTest<M extends Measure<M>>(Reading<M> other, boolean above) {}
}
