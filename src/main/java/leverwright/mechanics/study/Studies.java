package leverwright.mechanics.study;

import leverwright.mechanics.exercise.Performance;

/** The words with which a cell begins a study, as in {@code repetition(squat.by(ines)).through(TORSO_LEAN, …)}. */
public final class Studies {
    private Studies() {}

    /** Begins a repetition: tell which knob moves, from where to where, and the tempo. */
    public static Repetition.Of repetition(Performance performance) {
        return new Repetition.Of(performance);
    }
}
