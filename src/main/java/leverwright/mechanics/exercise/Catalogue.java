package leverwright.mechanics.exercise;

import java.util.List;

/** All exercises, as they are before anybody sets anything. */
public final class Catalogue {
    private static final List<Exercise<?>> EXERCISES = List.of(
            Exercises.backSquat(),
            Exercises.lowBarSquat(),
            Exercises.frontSquat(),
            Exercises.gobletSquat(),
            Exercises.splitSquat(),
            Exercises.wallSquat(),
            Exercises.stepUp(),
            Exercises.legPress(),
            Exercises.deadlift(),
            Exercises.romanianDeadlift(),
            Exercises.goodMorning(),
            Exercises.hipThrust(),
            Exercises.backExtension(),
            Exercises.kneeExtension(),
            Exercises.seatedLegCurl(),
            Exercises.lyingLegCurl(),
            Exercises.standingCalfRaise(),
            Exercises.seatedCalfRaise(),
            Exercises.cableHipExtension(),
            Exercises.hipAbduction(),
            Exercises.cableHipAbduction(),
            Exercises.singleLegStance(),
            Exercises.benchPress(),
            Exercises.dumbbellBenchPress(),
            Exercises.pushUp(),
            Exercises.pushUpHandsRaised(),
            Exercises.pushUpFeetRaised(),
            Exercises.pushUpOnKnees(),
            Exercises.dip(),
            Exercises.overheadPress(),
            Exercises.dumbbellShoulderPress(),
            Exercises.fly(),
            Exercises.inclineFly(),
            Exercises.cableFly(),
            Exercises.lateralRaise(),
            Exercises.lyingLateralRaise(),
            Exercises.cableLateralRaise(),
            Exercises.frontRaise(),
            Exercises.uprightRow(),
            Exercises.bentOverRow(),
            Exercises.cableRow(),
            Exercises.pulldown(),
            Exercises.pullUp(),
            Exercises.straightArmPulldown(),
            Exercises.dumbbellCurl(),
            Exercises.inclineCurl(),
            Exercises.preacherCurl(),
            Exercises.cableCurl(),
            Exercises.pushdown(),
            Exercises.overheadTricepsExtension(),
            Exercises.lyingTricepsExtension(),
            Exercises.wristCurl(),
            Exercises.plank(),
            Exercises.crunch(),
            Exercises.sideBend(),
            Exercises.loadedCarry());

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
