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
        if (layout.plane() != Plane.SAGITTAL) {
            double turned = joint == Joint.SHOULDER ? far + near : far - near;
            return layout.side() * turned;
        }
        return switch (joint) {
            case SHOULDER -> far + near;
            case WRIST -> layout.hasPalmsBack() ? near - far : far - near;
            default -> far - near;
        };
    }

    /** Returns what the angle is called: flexion, or abduction in the frontal plane. */
    static String label(Layout layout, Joint joint) {
        boolean hinge = joint == Joint.ELBOW || joint == Joint.KNEE || joint == Joint.WRIST;
        if (layout.plane() == Plane.FRONTAL && !hinge) {
            return joint == Joint.SHOULDER ? "shoulder abduction" : "sideways angle of the " + joint.words();
        }
        if (layout.plane() == Plane.TRANSVERSE && !hinge) {
            return "horizontal angle of the " + joint.words();
        }
        return joint == Joint.ANKLE ? "ankle dorsiflexion" : joint.words() + " flexion";
    }

    /** Writes the flexion into a hand calculation. */
    static Expression.Symbol in(Hand hand, Layout layout, Joint joint) {
        Expression far = hand.lean(far(joint));
        Expression near = hand.lean(near(joint));
        boolean sagittal = layout.plane() == Plane.SAGITTAL;
        boolean turned = sagittal ? joint == Joint.WRIST && layout.hasPalmsBack() : layout.side() < 0;
        Expression difference = turned ? near.minus(far) : far.minus(near);
        Expression sum = turned ? far.plus(near).negated() : far.plus(near);
        return hand.step(
                "φ_" + Hand.name(joint),
                joint == Joint.SHOULDER ? sum : difference,
                Angle.of(of(layout, joint)),
                sagittal
                        ? (joint == Joint.ANKLE ? "dorsiflexion" : "flexion") + " of the " + joint.words()
                        : label(layout, joint));
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
