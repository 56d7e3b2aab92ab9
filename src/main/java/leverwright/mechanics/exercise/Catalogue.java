package leverwright.mechanics.exercise;

import java.util.List;

/** All exercises, as they are before anybody sets anything. */
public final class Catalogue {
    private static final List<Exercise<?>> EXERCISES = List.of(
            Exercises.backSquat(),
            Exercises.romanianDeadlift(),
            Exercises.kneeExtension(),
            Exercises.dumbbellCurl(),
            Exercises.pushUp(),
            Exercises.frontSquat(),
            Exercises.lateralRaise());

    private Catalogue() {}

    /**
     * Returns every exercise with its default settings; ask each for its knobs with ranges, defaults and reasons, for which
     * angle follows, its assumptions, free components and cautions.
     */
    public static List<Exercise<?>> exercises() {
        return EXERCISES;
    }

    /**
     * Returns the exercise with a name, such as "Back squat"; letter case does not matter.
     *
     * @throws IllegalArgumentException if there is none; the message lists the names
     */
    public static Exercise<?> named(String name) {
        for (Exercise<?> exercise : EXERCISES) {
            if (exercise.name().equalsIgnoreCase(name)) {
                return exercise;
            }
        }
        throw new IllegalArgumentException("there is no exercise \"" + name + "\"; there are: "
                + String.join(", ", EXERCISES.stream().map(Exercise::name).toList()));
    }
}
