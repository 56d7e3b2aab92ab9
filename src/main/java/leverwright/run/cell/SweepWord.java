package leverwright.run.cell;

import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.study.Sweep;
import leverwright.mechanics.study.Swept;
import leverwright.mechanics.study.Variable;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listing;

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

    Sweep<Q> sweep() {
        return sweep;
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
     * @param count how many; millions are drawn as faithfully as hundreds
     * @throws IllegalArgumentException when there are too few or too many; the message estimates time and room
     */
    public SweepWord<Q> points(double count) {
        return new SweepWord<>(sweep.points(count));
    }

    /**
     * Sets the distance of neighbouring settings instead of their number: {@code step(deg(5))}.
     *
     * @param distance above zero
     */
    public SweepWord<Q> step(Q distance) {
        return new SweepWord<>(sweep.step(distance));
    }

    /** Spreads the settings in equal ratios, as on a logarithmic scale; both ends must lie above zero. */
    public SweepWord<Q> logarithmic() {
        return new SweepWord<>(sweep.logarithmic());
    }

    /**
     * Lists the settings: {@code at(kg(20), kg(40), kg(100))}.
     *
     * @param settings at least 2, rising
     */
    @SafeVarargs
    public final SweepWord<Q> at(Q... settings) {
        return new SweepWord<>(sweep.at(settings));
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

    /** A sweep of a lifter's exercise, to be read as a chart, a table or curves. */
    public static final class Through implements ResultBuilder {

        private final Swept swept;

        Through(Swept swept) {
            this.swept = swept;
        }

        /**
         * Sweeps once for each value of another knob: {@code family(BAR, kg(20), kg(60), kg(100))}.
         *
         * @param knob what the curves differ in
         * @param values one curve each, for every reading
         * @param <R> the kind of quantity that the knob sets
         */
        @SafeVarargs
        public final <R extends Measure<R>> Through family(Knob<R> knob, R... values) {
            return new Through(swept.family(knob, values));
        }

        /**
         * Sweeps once for each value of another variable: {@code family(lengthOf(THIGH), cm(38), cm(44))}.
         *
         * @param variable what the curves differ in
         * @param values one curve each, for every reading
         * @param <R> its kind
         */
        @SafeVarargs
        public final <R extends Measure<R>> Through family(Variable<R> variable, R... values) {
            return new Through(swept.family(variable, values));
        }

        /**
         * Draws what is read on the way: {@code chart(moment(HIP), tiltRule(HIP))}.
         *
         * @param readings what to read, at least one
         */
        public Through chart(Reading<?>... readings) {
            Words.chart(curves(readings));
            return this;
        }

        /**
         * Shows what is read on the way as a table: all settings of a short way, a choice of a long one's.
         *
         * @param readings what to read, at least one
         */
        public Through table(Reading<?>... readings) {
            Listing listing = swept.table(CellCrew.crew(), readings);
            Words.show(() -> ListingRows.result(listing));
            return this;
        }

        /**
         * Returns what is read on the way, for a cell that goes on with it.
         *
         * @param readings what to read, at least one
         */
        public Curves curves(Reading<?>... readings) {
            return swept.curves(CellCrew.crew(), readings);
        }
    }
}
