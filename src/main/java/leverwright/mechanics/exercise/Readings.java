package leverwright.mechanics.exercise;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Answer;

/** The words for what can be read off a posture, as in {@code chart(moment(HIP), tiltRule(HIP))}. */
public final class Readings {
    private Readings() {}

    /** Returns the moment of a joint's positive action, per side for limbs, in total for spine and neck. */
    public static Reading<Moment> moment(Joint joint) {
        return new Reading<>(
                momentLabel(joint),
                plane -> joint.words() + " " + plane.positiveAction(joint) + " moment",
                Unit.NEWTON_METRE,
                joint.sides(),
                held -> held.cut(joint).reported(),
                held -> held.moment(joint));
    }

    /** Returns the moment of a joint's extension (plantarflexion at the ankle): the same as {@link #moment}. */
    public static Reading<Moment> extensionMoment(Joint joint) {
        return moment(joint);
    }

    /** Returns the moment of a joint's flexion (dorsiflexion at the ankle). */
    public static Reading<Moment> flexionMoment(Joint joint) {
        return new Reading<>(
                joint.words() + " " + joint.negativeAction() + " moment",
                plane -> joint.words() + " " + plane.negativeAction(joint) + " moment",
                Unit.NEWTON_METRE,
                joint.sides(),
                held -> -held.cut(joint).reported(),
                held -> held.flexionMoment(joint));
    }

    /** Returns the part of a limb joint's moment that the limb's own weight asks for; {@link HeldPosture#ownWeight}. */
    public static Reading<Moment> ownWeight(Joint joint) {
        return part(joint, " of the limb's own weight", held -> held.ownWeightSi(joint), held -> held.ownWeight(joint));
    }

    /** Returns the part of a limb joint's moment that is asked for from outside; {@link HeldPosture#fromOutside}. */
    public static Reading<Moment> fromOutside(Joint joint) {
        return part(joint, " from outside", held -> held.outsideSi(joint), held -> held.fromOutside(joint));
    }

    /** Returns a leg joint's moment computed from below; {@link HeldPosture#fromTheFloor}. */
    public static Reading<Moment> fromTheFloor(Joint joint) {
        return part(
                joint, " from the floor's side", held -> held.floorMomentSi(joint), held -> held.fromTheFloor(joint));
    }

    /** Returns the arm of the floor's force about a leg's joint; {@link HeldPosture#floorArm}. */
    public static Reading<Length> floorArm(Joint joint) {
        return new Reading<>(
                "arm of the floor's force at the " + joint.words(),
                Unit.CENTIMETRE,
                Sides.NOT_SIDED,
                held -> held.floorArmSi(joint),
                held -> held.floorArm(joint));
    }

    /** Returns how far a segment reaches forward; {@link HeldPosture#reach}. */
    public static Reading<Length> reach(Segment segment) {
        return new Reading<>(
                "forward reach of the " + segment.words(),
                Unit.CENTIMETRE,
                Sides.NOT_SIDED,
                held -> held.reachSi(segment),
                held -> held.reach(segment));
    }

    private static Reading<Moment> part(
            Joint joint, String which, ToDoubleFunction<HeldPosture> si, Function<HeldPosture, Answer<Moment>> answer) {
        return new Reading<>(
                momentLabel(joint) + which,
                plane -> joint.words() + " " + plane.positiveAction(joint) + " moment" + which,
                Unit.NEWTON_METRE,
                joint.sides(),
                si,
                answer);
    }

    /** Returns a joint's moment by the tilt rule: that of the level segment, times lean over 90°. */
    public static Reading<Moment> tiltRule(Joint joint) {
        return new Reading<>(
                joint.words() + " moment by the tilt rule",
                Unit.NEWTON_METRE,
                joint.sides(),
                held -> held.tiltRuleSi(joint),
                held -> held.tiltRule(joint));
    }

    /** Returns the load beyond a joint, both sides together. */
    public static Reading<Force> load(Joint joint) {
        return new Reading<>(
                "load beyond the " + joint.words(),
                Unit.NEWTON,
                Sides.TOTAL,
                held -> held.cut(joint).load(),
                held -> held.load(joint));
    }

    /** Returns the arm of the load about a joint, positive where it asks for the positive action. */
    public static Reading<Length> loadArm(Joint joint) {
        return new Reading<>(
                "load arm of the " + joint.words(),
                Unit.CENTIMETRE,
                Sides.NOT_SIDED,
                held -> held.cut(joint).loadArm(),
                held -> held.loadArm(joint));
    }

    /** Returns the force of the one muscle that stands for all muscles of the action a joint needs. */
    public static Reading<Force> muscleForce(Joint joint) {
        return new Reading<>(
                "equivalent muscle force at the " + joint.words(),
                Unit.NEWTON,
                joint.sides(),
                held -> held.muscleForceSi(joint),
                held -> held.muscleForce(joint));
    }

    /** Returns how many times the load beyond a joint the equivalent muscle pulls: load arm over muscle arm. */
    public static Reading<Ratio> leverRatio(Joint joint) {
        return new Reading<>(
                "lever ratio of the " + joint.words(),
                Unit.ONE,
                Sides.NOT_SIDED,
                held -> held.leverRatioSi(joint),
                held -> held.leverRatio(joint));
    }

    /** Returns the lean of a segment from the vertical. */
    public static Reading<Angle> lean(Segment segment) {
        return new Reading<>(
                "lean of the " + segment.words(),
                Unit.DEGREE,
                Sides.NOT_SIDED,
                held -> held.layout().lean(segment),
                held -> held.lean(segment));
    }

    /** Returns the flexion of a joint. */
    public static Reading<Angle> flexion(Joint joint) {
        return new Reading<>(
                (joint == Joint.ANKLE ? "ankle dorsiflexion" : joint.words() + " flexion"),
                Unit.DEGREE,
                Sides.NOT_SIDED,
                held -> Flexions.of(held.layout(), joint),
                held -> held.flexion(joint));
    }

    /** Returns where the pressure of the feet lies ahead of the heel. */
    public static Reading<Length> pressure() {
        return new Reading<>(
                "centre of pressure ahead of the heel",
                Unit.CENTIMETRE,
                Sides.NOT_SIDED,
                HeldPosture::pressureSi,
                HeldPosture::pressure);
    }

    static String momentLabel(Joint joint) {
        return joint.words() + " " + joint.positiveAction() + " moment";
    }
}
