package leverwright.mechanics.study;

import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Population;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.working.Listing;

/** The words with which a cell begins a study, as in {@code repetition(squat.by(ines)).through(TORSO_LEAN, …)}. */
public final class Studies {
    private Studies() {}

    /** Returns the women or men of the survey: {@code population(FEMALE).random(7, 100)}. */
    public static Population population(Sex sex) {
        return Population.population(sex);
    }

    /** Returns two bodies side by side: lengths and masses, and their ratios. */
    public static Listing people(Lifter one, Lifter other) {
        return People.bodies(one, other);
    }

    /**
     * Returns what one exercise asks of two people at the same settings.
     *
     * @param readings at least one
     */
    public static Listing people(Exercise<?> exercise, Lifter one, Lifter other, Reading<?>... readings) {
        return People.at(exercise, one, other, readings);
    }

    /** Begins a repetition: tell which knob moves, from where to where, and the tempo. */
    public static Repetition.Of repetition(Performance performance) {
        return new Repetition.Of(performance);
    }
}
