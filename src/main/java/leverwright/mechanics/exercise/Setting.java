package leverwright.mechanics.exercise;

import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Ratio;

/**
 * The words that set knobs, one each: {@code frontSquat().barbell(kg(60)).torsoLean(deg(15))}. A word whose knob an exercise
 * does not have throws an IllegalArgumentException that lists those it has.
 *
 * @param <E> the exercise itself
 */
public abstract class Setting<E extends Exercise<E>> extends Exercise<E> {
    Setting(String name, Settings settings) {
        super(name, settings);
    }

    /** Sets the bar with its plates; see {@link Knobs#BAR}. */
    public final E barbell(Mass value) {
        return with(Knobs.BAR, value);
    }

    /** Sets the mass of one dumbbell; see {@link Knobs#DUMBBELL}. */
    public final E dumbbells(Mass value) {
        return with(Knobs.DUMBBELL, value);
    }

    /** Sets the mass of the stack; see {@link Knobs#STACK}. */
    public final E stack(Mass value) {
        return with(Knobs.STACK, value);
    }

    /** Sets the plates on the sled or machine; see {@link SetupKnobs#PLATES}. */
    public final E plates(Mass value) {
        return with(SetupKnobs.PLATES, value);
    }

    /** Sets the mass of the empty sled; see {@link SetupKnobs#SLED}. */
    public final E sled(Mass value) {
        return with(SetupKnobs.SLED, value);
    }

    /** Sets the angle of the rail; see {@link SetupKnobs#RAIL}. */
    public final E rail(Angle value) {
        return with(SetupKnobs.RAIL, value);
    }

    /** Sets the lean of the torso; see {@link Knobs#TORSO_LEAN}. */
    public final E torsoLean(Angle value) {
        return with(Knobs.TORSO_LEAN, value);
    }

    /** Sets the lean of the shank; see {@link Knobs#SHANK_LEAN}. */
    public final E shankLean(Angle value) {
        return with(Knobs.SHANK_LEAN, value);
    }

    /** Sets how far the thigh stands above level; see {@link Knobs#THIGH_ABOVE_LEVEL}. */
    public final E thighAboveLevel(Angle value) {
        return with(Knobs.THIGH_ABOVE_LEVEL, value);
    }

    /** Sets the depth; the same as thighAboveLevel; see {@link Knobs#THIGH_ABOVE_LEVEL}. */
    public final E thighs(Angle value) {
        return with(Knobs.THIGH_ABOVE_LEVEL, value);
    }

    /** Sets the bend of the knee; see {@link Knobs#KNEE_FLEXION}. */
    public final E kneeFlexion(Angle value) {
        return with(Knobs.KNEE_FLEXION, value);
    }

    /** Sets the bend of the hip; see {@link SetupKnobs#HIP_FLEXION}. */
    public final E hipFlexion(Angle value) {
        return with(SetupKnobs.HIP_FLEXION, value);
    }

    /** Sets how far the thigh is spread; see {@link SetupKnobs#HIP_ABDUCTION}. */
    public final E hipAbduction(Angle value) {
        return with(SetupKnobs.HIP_ABDUCTION, value);
    }

    /** Sets the dorsiflexion of the ankle; see {@link SetupKnobs#ANKLE_FLEXION}. */
    public final E ankleFlexion(Angle value) {
        return with(SetupKnobs.ANKLE_FLEXION, value);
    }

    /** Sets the bend of the elbow; see {@link Knobs#ELBOW_FLEXION}. */
    public final E elbowFlexion(Angle value) {
        return with(Knobs.ELBOW_FLEXION, value);
    }

    /** Sets the lean of the upper arm from hanging; see {@link Knobs#UPPER_ARM_LEAN}. */
    public final E upperArmLean(Angle value) {
        return with(Knobs.UPPER_ARM_LEAN, value);
    }

    /** Sets the flexion of the shoulder; see {@link SetupKnobs#SHOULDER_FLEXION}. */
    public final E shoulderFlexion(Angle value) {
        return with(SetupKnobs.SHOULDER_FLEXION, value);
    }

    /** Sets the abduction of the shoulder; see {@link SetupKnobs#SHOULDER_ABDUCTION}. */
    public final E shoulderAbduction(Angle value) {
        return with(SetupKnobs.SHOULDER_ABDUCTION, value);
    }

    /** Sets the direction of the upper arm seen from the head; see {@link SetupKnobs#UPPER_ARM_OUT}. */
    public final E upperArmOut(Angle value) {
        return with(SetupKnobs.UPPER_ARM_OUT, value);
    }

    /** Sets the bend of the wrist; see {@link SetupKnobs#WRIST_FLEXION}. */
    public final E wristFlexion(Angle value) {
        return with(SetupKnobs.WRIST_FLEXION, value);
    }

    /** Sets the distance between the hands; see {@link SetupKnobs#GRIP_WIDTH}. */
    public final E gripWidth(Length value) {
        return with(SetupKnobs.GRIP_WIDTH, value);
    }

    /** Sets how far the bar is from the shoulders; see {@link SetupKnobs#BAR_HEIGHT}. */
    public final E barHeight(Length value) {
        return with(SetupKnobs.BAR_HEIGHT, value);
    }

    /** Sets the force of each hand along the bar; see {@link SetupKnobs#OUTWARD_FORCE}. */
    public final E outwardForce(Force value) {
        return with(SetupKnobs.OUTWARD_FORCE, value);
    }

    /** Sets the incline of the bench; see {@link SetupKnobs#BENCH_INCLINE}. */
    public final E incline(Angle value) {
        return with(SetupKnobs.BENCH_INCLINE, value);
    }

    /** Sets the height of the bench; see {@link SetupKnobs#BENCH_HEIGHT}. */
    public final E benchHeight(Length value) {
        return with(SetupKnobs.BENCH_HEIGHT, value);
    }

    /** Sets the length of the step; see {@link SetupKnobs#STEP_LENGTH}. */
    public final E stepLength(Length value) {
        return with(SetupKnobs.STEP_LENGTH, value);
    }

    /** Sets the distance of the pad from the joint nearer the trunk; see {@link Knobs#PAD}. */
    public final E pad(Length value) {
        return with(Knobs.PAD, value);
    }

    /** Sets the arm at which the cable pulls on the wheel of the machine; see {@link Knobs#WHEEL_ARM}. */
    public final E wheelArm(Length value) {
        return with(Knobs.WHEEL_ARM, value);
    }

    /** Sets the measured force of the pad; see {@link Knobs#PAD_FORCE}. */
    public final E padForce(Force value) {
        return with(Knobs.PAD_FORCE, value);
    }

    /** Sets the size of a given force; see {@link SetupKnobs#PULL}. */
    public final E pull(Force value) {
        return with(SetupKnobs.PULL, value);
    }

    /** Sets the direction of a pull, counter-clockwise from forward; see {@link SetupKnobs#PULL_DIRECTION}. */
    public final E pullDirection(Angle value) {
        return with(SetupKnobs.PULL_DIRECTION, value);
    }

    /** Sets how far the pulley lies ahead; see {@link SetupKnobs#PULLEY_AHEAD}. */
    public final E pulleyAhead(Length value) {
        return with(SetupKnobs.PULLEY_AHEAD, value);
    }

    /** Sets the height of the pulley; see {@link SetupKnobs#PULLEY_HEIGHT}. */
    public final E pulleyHeight(Length value) {
        return with(SetupKnobs.PULLEY_HEIGHT, value);
    }

    /** Sets the height of the heels; see {@link Knobs#HEEL_HEIGHT}. */
    public final E heelHeight(Length value) {
        return with(Knobs.HEEL_HEIGHT, value);
    }

    /** Sets the friction of the contacts; see {@link Knobs#FRICTION}. */
    public final E friction(Ratio value) {
        return with(Knobs.FRICTION, value);
    }
}
