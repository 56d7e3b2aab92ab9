package leverwright.run.cell;

import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.study.Sweep;
import leverwright.mechanics.working.Curves;

/**
 * A sweep that a cell begins: one knob turned through a range, everything else set the same.
 *
 * @param <Q> the kind of quantity that the knob sets
 */
public final class SweepWord<Q extends Measure<Q>> {

    private final Sweep<Q> sweep;

    SweepWord(Sweep<Q> sweep) {
        this.sweep = sweep;
    }

    /**
     * Starts the sweep elsewhere than at the least setting of its knob.
     *
     * @param least the first setting
     */
    public SweepWord<Q> from(Q least) {
        return new SweepWord<>(sweep.from(least));
    }

    /**
     * Ends the sweep elsewhere than at the greatest setting of its knob.
     *
     * @param greatest the last setting
     */
    public SweepWord<Q> to(Q greatest) {
        return new SweepWord<>(sweep.to(greatest));
    }

    /**
     * Sets how many settings the sweep has, both ends counted; 200 unless said otherwise.
     *
     * @param count how many
     * @throws IllegalArgumentException when there are too few or too many
     */
    public SweepWord<Q> points(int count) {
        return new SweepWord<>(sweep.points(count));
    }

    /**
     * Sweeps a lifter's exercise.
     *
     * @param performance the exercise done by a lifter
     * @throws IllegalArgumentException when the range does not rise, leaves the knob's range, or the exercise lacks the knob
     */
    public Through of(Performance performance) {
        return new Through(sweep.of(performance));
    }

    /** A sweep of a lifter's exercise, to be read as a chart or as curves. */
    public static final class Through {

        private final Sweep.Swept swept;

        Through(Sweep.Swept swept) {
            this.swept = swept;
        }

        /**
         * Draws what is read on the way: {@code chart(moment(HIP), tiltRule(HIP))}.
         *
         * @param readings what to read, at least one
         */
        public void chart(Reading<?>... readings) {
            Words.chart(curves(readings));
        }

        /**
         * Returns what is read on the way, for a cell that goes on with it.
         *
         * @param readings what to read, at least one
         */
        public Curves curves(Reading<?>... readings) {
            return swept.curves(readings);
        }
    }
}
