package leverwright.mechanics.exercise;

import leverwright.mechanics.body.Joint;

/**
 * The plane of the body that an exercise moves in, and what the actions of the joints are called there.
 *
 * <p><b>Frames.</b> Sagittal: x forward, y up, the lifter faces right. Frontal: x to the lifter's left, y up, the lifter faces
 * the viewer. Transverse: drawn with y forward of the body and x to the lifter's right, as seen from the head; a lifter on a
 * bench then has gravity along −y, a standing one square to the plane. Counter-clockwise positive in all of them.
 *
 * <p><b>Sides.</b> In the sagittal plane a split posture reports the working side first; in the two others the side at
 * positive x: left in the frontal, right in the transverse plane.
 */
public enum Plane {
    /** Seen from the right side. */
    SAGITTAL("sagittal"),
    /** Seen from the front. */
    FRONTAL("frontal"),
    /** Seen from the head. */
    TRANSVERSE("transverse");

    private final String words;

    Plane(String words) {
        this.words = words;
    }

    /** Returns its name in print. */
    public String words() {
        return words;
    }

    /** Returns the name of the action whose moment counts as positive at a joint in this plane. */
    public String positiveAction(Joint joint) {
        return switch (this) {
            case SAGITTAL -> joint.positiveAction();
            case FRONTAL ->
                switch (joint) {
                    case LOW_BACK, NECK -> "bending to the right";
                    case ANKLE -> "eversion";
                    case ELBOW -> "extension";
                    default -> "abduction";
                };
            case TRANSVERSE ->
                switch (joint) {
                    case ELBOW, WRIST -> "extension";
                    case LOW_BACK, NECK -> "turning to the left";
                    default -> "horizontal adduction";
                };
        };
    }

    /** Returns the name of the opposite action. */
    public String negativeAction(Joint joint) {
        return switch (this) {
            case SAGITTAL -> joint.negativeAction();
            case FRONTAL ->
                switch (joint) {
                    case LOW_BACK, NECK -> "bending to the left";
                    case ANKLE -> "inversion";
                    case ELBOW -> "flexion";
                    default -> "adduction";
                };
            case TRANSVERSE ->
                switch (joint) {
                    case ELBOW, WRIST -> "flexion";
                    case LOW_BACK, NECK -> "turning to the right";
                    default -> "horizontal abduction";
                };
        };
    }

    /**
     * Returns +1 where the positive action is a counter-clockwise moment of the near segment on the far one, −1 where it is
     * clockwise, for limbs at positive x.
     */
    int counterClockwise(Joint joint) {
        return switch (this) {
            case SAGITTAL -> joint.counterClockwise();
            case FRONTAL ->
                switch (joint) {
                    case HIP, KNEE, ANKLE, ELBOW -> -1;
                    case LOW_BACK, NECK, SHOULDER, WRIST -> 1;
                };
            case TRANSVERSE ->
                switch (joint) {
                    case ELBOW, WRIST -> -1;
                    default -> 1;
                };
        };
    }
}
