package leverwright.run.cell;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Population;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.muscle.MuscleInput;
import leverwright.mechanics.study.Comparison;
import leverwright.mechanics.study.Uncertainty;
import leverwright.mechanics.study.Variable;

/**
 * A comparison that a cell begins: {@code compare(squat, press, extend).by(ines).show(moment(KNEE)).pairs(moment(KNEE))}. Words
 * that change it return another one; words that ask show a result.
 */
public final class CompareWord implements ResultBuilder {
    private final Comparison comparison;

    CompareWord(Comparison comparison) {
        this.comparison = comparison;
    }

    /** Exercises that wait for their lifters. */
    public static final class Exercises {
        private final List<Exercise<?>> all;

        Exercises(List<Exercise<?>> all) {
            this.all = all;
        }

        /**
         * Compares the exercises done by lifters: each of them by each.
         *
         * @param lifters at least one
         */
        public CompareWord by(Lifter... lifters) {
            List<Performance> performances = new ArrayList<>();
            for (Lifter lifter : lifters) {
                all.forEach(exercise -> performances.add(exercise.by(lifter)));
            }
            return new CompareWord(Comparison.of(performances));
        }
    }

    /**
     * Gives names of one's own to what is compared.
     *
     * @param names one for each, in their order
     */
    public CompareWord called(String... names) {
        return new CompareWord(comparison.called(List.of(names)));
    }

    /**
     * Sets each load so that a reading is the same in all: that of the first.
     *
     * @param reading what shall be equal
     */
    public CompareWord equal(Reading<?> reading) {
        return new CompareWord(comparison.equal(reading));
    }

    /**
     * Adds an input that is unsure, for how surely one asks more than another.
     *
     * @param knob the input
     * @param uncertainty how unsure it is
     * @param <Q> its kind
     */
    public <Q extends Measure<Q>> CompareWord vary(Knob<Q> knob, Uncertainty<Q> uncertainty) {
        return new CompareWord(comparison.unsure(spread -> spread.vary(knob, uncertainty)));
    }

    /**
     * Adds an input that is unsure, for how surely one asks more than another.
     *
     * @param variable the input
     * @param uncertainty how unsure it is
     * @param <Q> its kind
     */
    public <Q extends Measure<Q>> CompareWord vary(Variable<Q> variable, Uncertainty<Q> uncertainty) {
        return new CompareWord(comparison.unsure(spread -> spread.vary(variable, uncertainty)));
    }

    /**
     * Adds numbers of the muscles, as unsure as their sources say.
     *
     * @param inputs which numbers
     */
    public CompareWord vary(MuscleInput... inputs) {
        Comparison more = comparison;
        for (MuscleInput input : inputs) {
            more = more.unsure(spread -> spread.vary(input));
        }
        return new CompareWord(more);
    }

    /**
     * Draws the lifter's body from a survey, the same in all exercises.
     *
     * @param population who is drawn
     */
    public CompareWord people(Population population) {
        return new CompareWord(comparison.unsure(spread -> spread.people(population)));
    }

    /**
     * Lets two unsure inputs go together: {@code together(TORSO_LEAN, BAR, 0.5)}.
     *
     * @param one an input: a knob or a variable such as lengthOf(THIGH)
     * @param other another one
     * @param correlation greater than −1 and less than 1
     */
    public CompareWord together(Object one, Object other, double correlation) {
        return new CompareWord(comparison.unsure(spread -> spread.together(one, other, Ratio.of(correlation))));
    }

    /**
     * Sets how many draws are made.
     *
     * @param count from 10 on
     */
    public CompareWord draws(double count) {
        return new CompareWord(comparison.unsure(spread -> spread.draws(count)));
    }

    /**
     * Shows a table: a row an exercise, a column a reading.
     *
     * @param readings what is read, at least one
     */
    public CompareWord show(Reading<?>... readings) {
        Words.table(comparison.table(readings));
        return this;
    }

    /**
     * Shows a sentence for every pair: who asks more, at equal what, by how much, and how surely.
     *
     * @param readings what is read, at least one
     */
    public CompareWord pairs(Reading<?>... readings) {
        Words.table(comparison.pairs(CellCrew.crew(), readings));
        return this;
    }

    /**
     * Draws a target over its cost, and shows who is beaten by none in both.
     *
     * @param target of which more is wanted
     * @param cost of which less is wanted
     */
    public CompareWord front(Reading<?> target, Reading<?> cost) {
        Words.chart(comparison.front(target, cost));
        Words.table(comparison.frontTable(target, cost));
        return this;
    }

    /** Returns what is compared, with the loads that were found, for a cell that goes on with it. */
    public List<Performance> performances() {
        return comparison.performances();
    }
}
