package leverwright.run.cell;

import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.study.Spread;

/** The words with which a cell begins a study of many settings: {@code spread(squat.by(ines)).vary(…).of(moment(HIP))}. */
public final class StudyWords {
    private StudyWords() {}

    /**
     * Begins a spread: how sure results are, given how sure the inputs are. Errors typed with a value are among them.
     *
     * @param performance the exercise done by a lifter
     */
    public static SpreadWord spread(Performance performance) {
        return new SpreadWord(Spread.of(performance));
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
