package leverwright.mechanics.exercise;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;

/** Which sides are kept apart: none where posture and load mirror, legs, arms, or both; and whether the arms alone count. */
enum Parting {
    /** Both sides alike. */
    NONE(false, false, false),
    /** Each leg on its own, both arms alike. */
    LEGS(true, false, false),
    /** Each arm on its own, both legs alike. */
    ARMS(false, true, false),
    /** Each limb on its own. */
    LIMBS(true, true, false),
    /** The arms alone, each on its own: seen from the head the rest has no extent. */
    ARMS_ALONE(true, true, true);

    static final int COUNT = values().length;

    /** Bits of the other side's arm. */
    static final int OTHER_ARM = Member.OTHER_UPPER_ARM.bit() | Member.OTHER_FOREARM.bit() | Member.OTHER_HAND.bit();

    /** Bits of the reported side's arm, or of both arms. */
    static final int ARM = Member.UPPER_ARM.bit() | Member.FOREARM.bit() | Member.HAND.bit();

    /** Bits of the reported side's leg, or of both legs. */
    static final int LEG = Member.FOOT.bit() | Member.SHANK.bit() | Member.THIGH.bit();

    /** Bits of the other side's leg. */
    static final int OTHER_LEG = Member.OTHER_FOOT.bit() | Member.OTHER_SHANK.bit() | Member.OTHER_THIGH.bit();

    private final boolean legs;
    private final boolean arms;
    private final boolean armsAlone;
    private final int everything;
    private final int[] above = new int[Joint.values().length];

    Parting(boolean legs, boolean arms, boolean armsAlone) {
        this.legs = legs;
        this.arms = arms;
        this.armsAlone = armsAlone;
        this.everything = all();
        for (Joint joint : Joint.values()) {
            above[joint.ordinal()] = mask(joint);
        }
    }

    boolean isSplit(Segment segment) {
        return segment.sides() == 2 && (segment.ordinal() < Segment.TRUNK.ordinal() ? legs : arms);
    }

    boolean splitsAny() {
        return legs || arms;
    }

    boolean armsAlone() {
        return armsAlone;
    }

    /** Tells whether a member's weight counts. */
    boolean has(Member member) {
        if (armsAlone && !member.isArm()) {
            return false;
        }
        return !member.isOther() || isSplit(member.segment());
    }

    /** Tells whether a joint belongs to an arm. */
    static boolean isArm(Joint joint) {
        return joint == Joint.SHOULDER || joint == Joint.ELBOW || joint == Joint.WRIST;
    }

    /** Returns the bits of all members that there are, whether or not their weight counts. */
    int everything() {
        return everything;
    }

    private int all() {
        int mask = 0;
        for (Member member : Member.ALL) {
            if (!member.isOther() || isSplit(member.segment())) {
                mask |= member.bit();
            }
        }
        return mask;
    }

    /** Returns whether a joint's two sides are kept apart. */
    boolean isSplit(Joint joint) {
        return switch (joint) {
            case ANKLE, KNEE, HIP -> legs;
            case SHOULDER, ELBOW, WRIST -> arms;
            case LOW_BACK, NECK -> false;
        };
    }

    /** Returns the bits of what lies above a joint of a leg, or out along an arm; not for low back and neck. */
    int above(Joint joint) {
        return above[joint.ordinal()];
    }

    private int mask(Joint joint) {
        int beyond = Member.of(Layout.above(joint)).ordinal();
        int arm = Member.UPPER_ARM.ordinal();
        boolean isLeg = beyond < arm;
        int mask = 0;
        if (isLeg) {
            for (int k = 0; k < beyond; k++) {
                mask |= 1 << k;
            }
            return everything() & ~mask;
        }
        for (int k = beyond; k <= Member.HAND.ordinal(); k++) {
            mask |= 1 << k;
        }
        return mask;
    }
}
