package leverwright.mechanics.exercise;

/** The point of the body whose place is given; everything else is placed from it, segment by segment. */
enum Anchor {
    /** The back of the heel, on the floor or on a wedge. */
    HEEL,
    /** The ankle. */
    ANKLE,
    /** The knee. */
    KNEE,
    /** The hip: the middle between both, where they are apart. */
    HIP,
    /** The shoulder: the middle between both, where they are apart. */
    SHOULDER,
    /** The elbow. */
    ELBOW,
    /** The wrist. */
    WRIST,
    /** The middle of the grip. */
    GRIP;

    boolean onLeg() {
        return ordinal() < HIP.ordinal();
    }

    boolean onArm() {
        return ordinal() > SHOULDER.ordinal();
    }
}
