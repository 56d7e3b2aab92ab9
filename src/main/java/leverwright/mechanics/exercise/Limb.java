package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.working.Expression;

/**
 * The limb beyond a joint, away from the trunk: what its own weight asks of the joint, and what is left for all that acts on it
 * from outside, such as the floor under a foot or a bar in the hand.
 *
 * <p>Whichever end of the limb moves, an equal force from outside asks for the same moment; only the limb's own weight, and its
 * inertia in motion, tell the one from the other.
 */
final class Limb {
    private final Layout layout;
    private final Joint joint;
    private final List<Part> parts;
    private final int direction;
    private final double mass;
    private final double massX;

    /**
     * Takes the limb beyond a joint.
     *
     * @throws IllegalArgumentException for low back and neck, which belong to no limb
     */
    Limb(Layout layout, Joint joint) {
        if (joint == Joint.LOW_BACK || joint == Joint.NECK) {
            throw new IllegalArgumentException(
                    "the " + joint.words()
                            + " belongs to no limb; ask for the limb's own weight at ankle, knee, hip, shoulder, elbow or wrist");
        }
        this.layout = layout;
        this.joint = joint;
        boolean arm = Parting.isArm(joint);
        this.parts = members(layout, joint, arm);
        this.direction = arm ? layout.counterClockwise(joint) : -layout.counterClockwise(joint);
        double sum = 0;
        double sumX = 0;
        for (Part part : parts) {
            sum += part.mass();
            sumX += part.mass() * layout.centreX(part.on());
        }
        mass = sum;
        massX = sumX;
    }

    /** The parts beyond the joint: of the reported side alone where both are kept apart. */
    private static List<Part> members(Layout layout, Joint joint, boolean arm) {
        List<Part> limb = new ArrayList<>();
        int from = Member.of(Layout.above(joint)).ordinal();
        for (Part part : layout.pieces().all()) {
            int k = part.on().ordinal();
            boolean beyond = arm ? part.on().isArm() && k >= from : part.on().isLeg() && k < from;
            if (beyond && !part.on().isOther()) {
                limb.add(part);
            }
        }
        return limb;
    }

    private int divisor() {
        return joint.sides() == Sides.PER_SIDE && !layout.parting().isSplit(joint) ? 2 : 1;
    }

    /** Moment of the joint's positive action that the limb's own weight asks for, as reported, N·m. */
    double ownWeight() {
        return direction * (massX - mass * layout.jointX(joint)) * layout.gravity() / divisor();
    }

    /** The same as a line of the hand calculation. */
    Expression.Symbol ownWeight(Hand hand) {
        String name = Hand.name(joint);
        String sides = divisor() == 2 ? "both sides" : "all of it";
        Expression weighed = Expression.sum(parts.stream().map(hand::mass).toList());
        Expression.Symbol weight = hand.step(
                "W_limb_" + name,
                weighed.times(hand.gravity()),
                Force.of(mass * layout.gravity()),
                "the limb beyond the " + joint.words() + ", " + sides);
        Expression.Symbol at = hand.step(
                "x_limb_" + name,
                Expression.sum(parts.stream()
                                .map(part -> hand.mass(part).times(hand.x(part)))
                                .toList())
                        .dividedBy(weighed),
                Length.of(massX / mass),
                "its mass centre");
        Expression arm = direction > 0 ? at.minus(hand.x(joint)) : hand.x(joint).minus(at);
        Expression moment = weight.times(arm);
        return hand.step(
                "M_own_" + name,
                divisor() == 2 ? moment.dividedBy(Expression.exact("2")) : moment,
                Moment.of(ownWeight()),
                divisor() == 2 ? "per side" : "of this side");
    }
}
