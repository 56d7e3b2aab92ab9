package leverwright.mechanics.exercise;

import java.util.Arrays;
import java.util.List;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Unit;

/** The words by which a cell begins an exercise. */
public final class Exercises {
    /** Level: 0°, as in {@code backSquat().thighs(LEVEL)}. */
    public static final Angle LEVEL = Measures.deg(0);

    private Exercises() {}

    /**
     * Begins an exercise of one's own, made of the words of {@link Movement}.
     *
     * @param name as it will stand in print
     * @throws IllegalArgumentException if the name is blank
     */
    public static Movement exercise(String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("an exercise needs a name; write exercise(\"Face pull\")");
        }
        return new Movement(name);
    }

    /**
     * Makes a knob of one's own: {@code knob("Box height", cm(10), cm(60), cm(40), "height of the box")}.
     *
     * @param name as a reader would say it
     * @param least lower end of its range
     * @param most upper end of its range
     * @param standard where it stands when nobody sets it
     * @param meaning what is measured, from where, which way is positive
     * @throws IllegalArgumentException if the default lies outside the range
     */
    public static <Q extends Measure<Q>> Knob<Q> knob(String name, Q least, Q most, Q standard, String meaning) {
        return new Knob<>(name, usual(standard.dimension()), least, most, standard, meaning, "as this workbook says");
    }

    /** The unit in which people say a quantity of this kind. */
    private static Unit usual(Dimension dimension) {
        for (Unit unit : List.of(Unit.CENTIMETRE, Unit.DEGREE)) {
            if (unit.dimension() == dimension) {
                return unit;
            }
        }
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == dimension && unit.toSi(1) == 1)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no unit prints a knob of this kind: " + dimension));
    }

    /** Returns the hinge with a bar in hanging arms. */
    public static RomanianDeadlift romanianDeadlift() {
        return new RomanianDeadlift();
    }

    /** Returns the squat with a bar on the back. */
    public static BackSquat backSquat() {
        return new BackSquat();
    }

    /** Returns the seated machine knee extension. */
    public static KneeExtension kneeExtension() {
        return new KneeExtension();
    }

    /** Returns the standing curl with a dumbbell in each hand. */
    public static DumbbellCurl dumbbellCurl() {
        return new DumbbellCurl();
    }

    /** Returns the push-up on hands and balls of the feet. */
    public static PushUp pushUp() {
        return new PushUp();
    }

    /** Returns the squat with a bar on the front of the shoulders. */
    public static Movement frontSquat() {
        return Squats.FRONT_SQUAT;
    }

    /** Returns the standing raise of both arms to the sides, a dumbbell in each hand. */
    public static Movement lateralRaise() {
        return Raises.LATERAL_RAISE;
    }

    /** Returns the deadlift: the bar lifted from the floor in hanging arms. */
    public static RomanianDeadlift deadlift() {
        return RomanianDeadlift.fromTheFloor();
    }

    /** Returns the squat with the bar across the shoulder blades. */
    public static Movement lowBarSquat() {
        return Squats.LOW_BAR_SQUAT;
    }

    /** Returns the squat with a dumbbell held at the chest. */
    public static Movement gobletSquat() {
        return Squats.GOBLET_SQUAT;
    }

    /** Returns the squat with one foot ahead and the ball of the other one behind. */
    public static Movement splitSquat() {
        return Squats.SPLIT_SQUAT;
    }

    /** Returns the squat with the back against a wall. */
    public static Movement wallSquat() {
        return Squats.WALL_SQUAT;
    }

    /** Returns the step onto a box. */
    public static Movement stepUp() {
        return Squats.STEP_UP;
    }

    /** Returns the hinge with a bar on the back. */
    public static Movement goodMorning() {
        return Hinges.GOOD_MORNING;
    }

    /** Returns the bridge with the shoulders on a bench and a bar on the hips. */
    public static Movement hipThrust() {
        return Hinges.HIP_THRUST;
    }

    /** Returns the back extension on an inclined bench. */
    public static Movement backExtension() {
        return Hinges.BACK_EXTENSION;
    }

    /** Returns the press of a sled on a rail. */
    public static Movement legPress() {
        return LegMachines.LEG_PRESS;
    }

    /** Returns the seated machine leg curl. */
    public static Movement seatedLegCurl() {
        return LegMachines.SEATED_LEG_CURL;
    }

    /** Returns the machine leg curl lying on the front. */
    public static Movement lyingLegCurl() {
        return LegMachines.LYING_LEG_CURL;
    }

    /** Returns the calf raise with straight knees. */
    public static Movement standingCalfRaise() {
        return LegMachines.STANDING_CALF_RAISE;
    }

    /** Returns the calf raise with bent knees. */
    public static Movement seatedCalfRaise() {
        return LegMachines.SEATED_CALF_RAISE;
    }

    /** Returns the extension of one hip against a cable at the ankle. */
    public static Movement cableHipExtension() {
        return LegMachines.CABLE_HIP_EXTENSION;
    }

    /** Returns the standing raise of one leg to the side. */
    public static Movement hipAbduction() {
        return LegMachines.HIP_ABDUCTION;
    }

    /** Returns the same against a cable at the ankle. */
    public static Movement cableHipAbduction() {
        return LegMachines.CABLE_HIP_ABDUCTION;
    }

    /** Returns the stance on one leg, seen from the front. */
    public static Movement singleLegStance() {
        return LegMachines.SINGLE_LEG_STANCE;
    }

    /** Returns the bench press with a barbell, seen from the head. */
    public static Movement benchPress() {
        return Presses.BENCH_PRESS;
    }

    /** Returns the bench press with dumbbells, seen from the head. */
    public static Movement dumbbellBenchPress() {
        return Presses.DUMBBELL_BENCH_PRESS;
    }

    /** Returns the push-up with the hands on a box. */
    public static Movement pushUpHandsRaised() {
        return PushUps.HANDS_RAISED;
    }

    /** Returns the push-up with the feet on a box. */
    public static Movement pushUpFeetRaised() {
        return PushUps.FEET_RAISED;
    }

    /** Returns the push-up on the knees. */
    public static Movement pushUpOnKnees() {
        return PushUps.ON_KNEES;
    }

    /** Returns the dip between two bars. */
    public static Movement dip() {
        return Presses.DIP;
    }

    /** Returns the standing press of a barbell overhead. */
    public static Movement overheadPress() {
        return Presses.OVERHEAD_PRESS;
    }

    /** Returns the standing press of dumbbells overhead, seen from the front. */
    public static Movement dumbbellShoulderPress() {
        return Presses.DUMBBELL_SHOULDER_PRESS;
    }

    /** Returns the fly on a flat bench, seen from the head. */
    public static Movement fly() {
        return Presses.FLY;
    }

    /** Returns the fly on an inclined bench, seen from the head. */
    public static Movement inclineFly() {
        return Presses.INCLINE_FLY;
    }

    /** Returns the standing fly between two cables, seen from the head. */
    public static Movement cableFly() {
        return Presses.CABLE_FLY;
    }

    /** Returns the raise of the upper arm lying on the side. */
    public static Movement lyingLateralRaise() {
        return Raises.LYING_LATERAL_RAISE;
    }

    /** Returns the raise of one arm to the side against a low cable. */
    public static Movement cableLateralRaise() {
        return Raises.CABLE_LATERAL_RAISE;
    }

    /** Returns the raise of both arms to the front. */
    public static Movement frontRaise() {
        return Raises.FRONT_RAISE;
    }

    /** Returns the upright row with a barbell, seen from the front. */
    public static Movement uprightRow() {
        return Raises.UPRIGHT_ROW;
    }

    /** Returns the row with a barbell, trunk leaning forward. */
    public static Movement bentOverRow() {
        return Pulls.BENT_OVER_ROW;
    }

    /** Returns the seated row against a cable. */
    public static Movement cableRow() {
        return Pulls.CABLE_ROW;
    }

    /** Returns the seated pulldown to the front, seen from the front. */
    public static Movement pulldown() {
        return Pulls.PULLDOWN;
    }

    /** Returns the pull-up on a bar. */
    public static Movement pullUp() {
        return Pulls.PULL_UP;
    }

    /** Returns the pulldown with straight arms. */
    public static Movement straightArmPulldown() {
        return Pulls.STRAIGHT_ARM_PULLDOWN;
    }

    /** Returns the curl with dumbbells on an inclined bench. */
    public static Movement inclineCurl() {
        return Curls.INCLINE_CURL;
    }

    /** Returns the curl over a pad. */
    public static Movement preacherCurl() {
        return Curls.PREACHER_CURL;
    }

    /** Returns the standing curl against a low cable. */
    public static Movement cableCurl() {
        return Curls.CABLE_CURL;
    }

    /** Returns the pushdown against a high cable. */
    public static Movement pushdown() {
        return Curls.PUSHDOWN;
    }

    /** Returns the extension of the elbows overhead. */
    public static Movement overheadTricepsExtension() {
        return Curls.OVERHEAD_EXTENSION;
    }

    /** Returns the extension of the elbows lying on the back. */
    public static Movement lyingTricepsExtension() {
        return Curls.LYING_EXTENSION;
    }

    /** Returns the curl of the wrists. */
    public static Movement wristCurl() {
        return Curls.WRIST_CURL;
    }

    /** Returns the plank on forearms and balls of the feet. */
    public static Movement plank() {
        return PushUps.PLANK;
    }

    /** Returns the lift of the trunk off the floor. */
    public static Movement crunch() {
        return TrunkExercises.CRUNCH;
    }

    /** Returns the side bend with a dumbbell, seen from the front. */
    public static Movement sideBend() {
        return TrunkExercises.SIDE_BEND;
    }

    /** Returns the carry with a dumbbell in one hand, seen from the front. */
    public static Movement loadedCarry() {
        return TrunkExercises.LOADED_CARRY;
    }
}
