package leverwright.mechanics.exercise;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.working.Expression;

/**
 * Angles between neighbouring segments: 0 in the upright stance with straight limbs, foot level, arms hanging; flexion
 * positive (dorsiflexion at the ankle).
 */
final class Flexions {
    private Flexions() {}

    /**
     * Returns the flexion of a joint, rad.
     *
     * @throws IllegalArgumentException for low back and neck, inside the straight trunk of this model
     */
    static double of(Layout layout, Joint joint) {
        double far = layout.lean(far(joint));
        double near = layout.lean(near(joint));
        return switch (joint) {
            case SHOULDER -> far + near;
            case WRIST -> layout.hasPalmsBack() ? near - far : far - near;
            default -> far - near;
        };
    }

    /** Writes the flexion into a hand calculation. */
    static Expression.Symbol in(Hand hand, Layout layout, Joint joint) {
        Expression far = hand.lean(far(joint));
        Expression near = hand.lean(near(joint));
        boolean turned = joint == Joint.WRIST && layout.hasPalmsBack();
        Expression difference = turned ? near.minus(far) : far.minus(near);
        return hand.step(
                "φ_" + Hand.name(joint),
                joint == Joint.SHOULDER ? far.plus(near) : difference,
                Angle.of(of(layout, joint)),
                (joint == Joint.ANKLE ? "dorsiflexion" : "flexion") + " of the " + joint.words());
    }

    /** The segment whose lean counts up with flexion. */
    private static Segment far(Joint joint) {
        return switch (joint) {
            case ANKLE -> Segment.SHANK;
            case KNEE -> Segment.SHANK;
            case HIP -> Segment.TRUNK;
            case SHOULDER -> Segment.UPPER_ARM;
            case ELBOW -> Segment.FOREARM;
            case WRIST -> Segment.HAND;
            case LOW_BACK, NECK -> throw straight(joint);
        };
    }

    private static Segment near(Joint joint) {
        return switch (joint) {
            case ANKLE -> Segment.FOOT;
            case KNEE, HIP -> Segment.THIGH;
            case SHOULDER -> Segment.TRUNK;
            case ELBOW -> Segment.UPPER_ARM;
            case WRIST -> Segment.FOREARM;
            case LOW_BACK, NECK -> throw straight(joint);
        };
    }

    private static IllegalArgumentException straight(Joint joint) {
        return new IllegalArgumentException("the " + joint.words()
                + " has no angle in this model: the trunk is straight from hip to head; ask for the torso's lean");
    }
}
