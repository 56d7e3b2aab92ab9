package leverwright.mechanics.study;

import java.util.List;
import java.util.Optional;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Population;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.muscle.MuscleInput;

/** One input of a spread, or several that are drawn together: takes a fixed number of axes of the unit cube. */
sealed interface SpreadInput {
    /** What it is called. */
    String name();

    /** How unsure it is, in words. */
    String words();

    /** How many numbers it takes. */
    int axes();

    /** When it is put in, 0 to 3: whole performances first, then people, then what is changed on them. */
    int stage();

    /** Puts a draw into a trial. */
    void draw(double[] unit, int from, Trial trial);

    /** The performances of one draw, changed one input after another, and the muscles as drawn; for one thread. */
    final class Trial {
        final Performance[] performances;
        final MuscleInput.Drawn muscles = new MuscleInput.Drawn();
        boolean musclesDrawn;

        Trial(List<Performance> start) {
            performances = start.toArray(Performance[]::new);
        }
    }

    /** A knob or a lifter's number. */
    record OfVariable<Q extends Measure<Q>>(Variable<Q> variable, Uncertainty<Q> uncertainty) implements SpreadInput {
        @Override
        public String name() {
            return variable.name();
        }

        @Override
        public String words() {
            return uncertainty.words(variable.unit());
        }

        @Override
        public int axes() {
            return 1;
        }

        @Override
        public int stage() {
            return variable.isOwn() ? 0 : 3;
        }

        @Override
        public void draw(double[] unit, int from, Trial trial) {
            for (int k = 0; k < trial.performances.length; k++) {
                Performance start = trial.performances[k];
                if (variable.isOf(start)) {
                    double value = uncertainty.at(unit[from], variable.present(start));
                    trial.performances[k] = variable.set(start, value);
                }
            }
        }
    }

    /** An error typed with a value: limits. One mover for each performance that it belongs to. */
    record Typed(String name, List<Optional<Performance.Unsure.Mover>> movers) implements SpreadInput {
        @Override
        public String words() {
            return "evenly within the error typed";
        }

        @Override
        public int axes() {
            return 1;
        }

        @Override
        public int stage() {
            return 2;
        }

        @Override
        public void draw(double[] unit, int from, Trial trial) {
            double part = 2 * unit[from] - 1;
            for (int k = 0; k < trial.performances.length; k++) {
                Performance start = trial.performances[k];
                trial.performances[k] =
                        movers.get(k).map(mover -> mover.move(start, part)).orElse(start);
            }
        }
    }

    /** Somebody drawn from a population in each lifter's place. */
    record People(Population population) implements SpreadInput {
        @Override
        public String name() {
            return "the lifter's body";
        }

        @Override
        public String words() {
            return "drawn among " + population;
        }

        @Override
        public int axes() {
            return population.axes();
        }

        @Override
        public int stage() {
            return 1;
        }

        @Override
        public void draw(double[] unit, int from, Trial trial) {
            Lifter drawn = population.at(unit, from);
            for (int k = 0; k < trial.performances.length; k++) {
                trial.performances[k] = trial.performances[k].by(drawn);
            }
        }
    }

    /** Numbers of the muscles. */
    record OfMuscles(MuscleInput input, MuscleInput.Of drawer) implements SpreadInput {
        @Override
        public String name() {
            return input.words();
        }

        @Override
        public String words() {
            return "as published: each with the spread of its source";
        }

        @Override
        public int axes() {
            return drawer.axes();
        }

        @Override
        public int stage() {
            return 1;
        }

        @Override
        public void draw(double[] unit, int from, Trial trial) {
            drawer.draw(trial.muscles, unit, from);
            trial.musclesDrawn = true;
        }
    }
}
