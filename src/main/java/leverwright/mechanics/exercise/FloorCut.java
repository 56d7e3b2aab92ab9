package leverwright.mechanics.exercise;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.working.Expression;

/**
 * A leg's joint cut through and looked at from below: the floor's force at its arm, and the weight of the leg below the joint.
 * Trunk, arms and bar do not enter, so that it is a second way to the same moment.
 *
 * <p>The arm of the floor's force about the hip is the thigh's horizontal length less the part of the shank's that lies ahead of
 * the force line: a leg that folds back shortens it.
 */
final class FloorCut {
    private final Layout layout;
    private final Joint joint;
    private final Limb limb;
    private final int sense;

    /**
     * Cuts a joint.
     *
     * @throws IllegalArgumentException where not both feet and the floor alone carry the body, or for a joint of no leg
     */
    FloorCut(Layout layout, Joint joint) {
        if (joint != Joint.ANKLE && joint != Joint.KNEE && joint != Joint.HIP) {
            throw new IllegalArgumentException(
                    "the " + joint.words() + " is no joint of the leg; ask for ankle, knee or hip from the floor");
        }
        boolean onLegs = layout.loads().stream().anyMatch(load -> load.on().isLeg());
        if (!layout.standsOnFeet() || layout.plane() != Plane.SAGITTAL || onLegs || layout.isSwapped()) {
            throw new IllegalArgumentException(
                    "seen from the floor a joint can be computed where the feet alone carry the"
                            + " body and no load hangs on the legs; ask for its moment, which is computed from the other side");
        }
        this.layout = layout;
        this.joint = joint;
        this.limb = new Limb(layout, joint);
        this.sense = layout.counterClockwise(joint);
    }

    /** Arm of the floor's upward force about the joint, m: positive where it asks for the positive action. */
    double arm() {
        return sense * (HandGround.pressureSi(layout) - layout.jointX(joint));
    }

    Expression.Symbol arm(Hand hand) {
        String name = Hand.name(joint);
        Expression.Symbol at = new HandGround(layout, hand).pressure();
        Expression formula;
        if (joint == Joint.HIP) {
            Expression.Symbol thigh = hand.step(
                    "r_thigh",
                    hand.x(Joint.KNEE).minus(hand.x(Joint.HIP)),
                    Length.of(layout.jointX(Joint.KNEE) - layout.jointX(Joint.HIP)),
                    "the thigh's horizontal length");
            Expression.Symbol shank = hand.step(
                    "a_shank",
                    hand.x(Joint.KNEE).minus(at),
                    Length.of(layout.jointX(Joint.KNEE) - HandGround.pressureSi(layout)),
                    "the part of the shank's that lies ahead of the force line");
            formula = sense > 0 ? thigh.minus(shank) : shank.minus(thigh);
        } else {
            formula = sense > 0 ? at.minus(hand.x(joint)) : hand.x(joint).minus(at);
        }
        return hand.step(
                "d_floor_" + name,
                formula,
                Length.of(arm()),
                "of the floor's force; positive asks for " + layout.plane().positiveAction(joint));
    }

    private int divisor() {
        return layout.parting().isSplit(joint) ? 1 : 2;
    }

    /** Moment of the positive action as reported, from below, N·m. */
    double moment() {
        // the floor's push along itself, at height 0, turns about the joint as well
        double along = sense * layout.jointY(joint) * HandGround.forwardSi(layout);
        return (HandGround.reactionSi(layout) * arm() + along) / divisor() + limb.ownWeight();
    }

    Expression.Symbol moment(Hand hand) {
        String name = Hand.name(joint);
        HandGround ground = new HandGround(layout, hand);
        Expression floor = ground.reaction().times(arm(hand));
        double forward = HandGround.forwardSi(layout);
        if (forward != 0) {
            Expression push = hand.step(
                    "T_ground", ground.forward(), Force.of(forward), "of the floor on both feet, forward positive");
            Expression along = hand.y(joint).times(push);
            floor = sense > 0 ? floor.plus(along) : floor.minus(along);
        }
        return hand.step(
                "M_floor_" + name,
                (divisor() == 2 ? floor.dividedBy(Expression.exact("2")) : floor).plus(limb.ownWeight(hand)),
                Moment.of(moment()),
                "from below" + (divisor() == 2 ? ", per side" : ", of this side"));
    }
}
