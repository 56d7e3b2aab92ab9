package leverwright.mechanics.muscle;

import leverwright.mechanics.body.Joint;

/**
 * An axis that muscles turn a joint about. The sagittal ones have the actions and signs of {@link Joint}; flexion angles grow
 * with flexion (dorsiflexion, abduction, horizontal adduction).
 */
public enum Axis {
    /** The ankle, plantarflexion positive. */
    ANKLE(Joint.ANKLE, "plantarflexion", "dorsiflexion", 1),
    /** The knee, extension positive. */
    KNEE(Joint.KNEE, "extension", "flexion", 1),
    /** The hip, extension positive. */
    HIP(Joint.HIP, "extension", "flexion", 1),
    /** The low back, extension positive; both sides together. */
    LOW_BACK(Joint.LOW_BACK, "extension", "flexion", 1),
    /** The shoulder, extension positive. */
    SHOULDER(Joint.SHOULDER, "extension", "flexion", 1),
    /** The elbow, extension positive. */
    ELBOW(Joint.ELBOW, "extension", "flexion", 1),
    /** The wrist, extension positive. */
    WRIST(Joint.WRIST, "extension", "flexion", 1),
    /** The hip in the frontal plane, abduction positive. */
    HIP_ABDUCTION(Joint.HIP, "abduction", "adduction", -1),
    /** The shoulder in the frontal plane, abduction positive. */
    SHOULDER_ABDUCTION(Joint.SHOULDER, "abduction", "adduction", -1),
    /** The shoulder in the transverse plane, horizontal adduction positive. */
    SHOULDER_HORIZONTAL(Joint.SHOULDER, "horizontal adduction", "horizontal abduction", -1);

    private final Joint joint;
    private final String positive;
    private final String negative;
    private final int lengthens;

    Axis(Joint joint, String positive, String negative, int lengthens) {
        this.joint = joint;
        this.positive = positive;
        this.negative = negative;
        this.lengthens = lengthens;
    }

    /** Returns the joint. */
    public Joint joint() {
        return joint;
    }

    /** Returns +1 where a growing angle makes the muscles of the positive action longer, else −1. */
    int lengthens() {
        return lengthens;
    }

    /** Returns the action that a moment of this sign needs, such as "knee extension". */
    public String action(double moment) {
        return joint.words() + " " + (moment >= 0 ? positive : negative);
    }

    /** Returns the name for print, such as "hip, abduction and adduction". */
    public String words() {
        return joint.words() + ", " + positive + " and " + negative;
    }
}
