package leverwright.mechanics.exercise;

import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.measure.Sides;

/**
 * A joint cut through: the free body on the side that no unknown support touches, and what the joint must bear for it.
 *
 * <p>Signs: {@link #moment} is that of the joint's positive action ({@link Joint#positiveAction}), of the near segment on the
 * far one. With weights alone it is weight times {@link #arm}. All values are for both sides together where these are alike,
 * except {@link #reported}.
 */
final class Cut {
    private final Layout layout;
    private final Joint joint;
    private final boolean above;
    private final List<Part> parts;
    private final double jointX;
    private final double jointY;
    private final double bodyMass;
    private final double bodyMassX;
    private final double hungMass;
    private final double hungMassX;
    private final double otherMoment;
    private final double otherX;
    private final double otherY;
    private final boolean onlyWeights;

    /**
     * Cuts a joint.
     *
     * @throws IllegalArgumentException if both sides of the joint touch a support whose share is not known
     */
    Cut(Layout layout, Joint joint) {
        this.layout = layout;
        this.joint = joint;
        this.above = isAbove(layout, joint);
        this.parts = layout.pieces().parts(joint, above);
        this.jointX = layout.jointX(joint);
        this.jointY = layout.jointY(joint);
        double mass = 0;
        double massX = 0;
        for (Part part : parts) {
            mass += part.mass();
            massX += part.mass() * partX(part);
        }
        double hung = 0;
        double hungX = 0;
        double others = 0;
        double forceX = 0;
        double forceY = 0;
        boolean weights = true;
        for (Load load : layout.loads()) {
            if (isBeyond(load)) {
                if (load.isWeight()) {
                    hung += load.mass();
                    hungX += load.mass() * load.x();
                } else {
                    others += load.momentAbout(jointX, jointY);
                    forceX += load.forceX();
                    forceY += load.forceY();
                    weights = false;
                }
            }
        }
        bodyMass = mass;
        bodyMassX = massX;
        hungMass = hung;
        hungMassX = hungX;
        otherMoment = others;
        otherX = forceX;
        otherY = forceY;
        onlyWeights = weights;
    }

    /** Whether a joint's moment does not depend on how what holds the body shares the load. */
    static boolean isKnown(Layout layout, Joint joint) {
        return joint == Joint.NECK || !isHeld(layout, joint, true) || !isHeld(layout, joint, false);
    }

    private static boolean isAbove(Layout layout, Joint joint) {
        if (joint == Joint.NECK) {
            return true;
        }
        boolean aboveHeld = isHeld(layout, joint, true);
        boolean belowHeld = isHeld(layout, joint, false);
        if (aboveHeld && belowHeld) {
            throw new IllegalArgumentException("what the " + joint.words()
                    + " carries here depends on how what holds the body on either side of it shares the load (seat and"
                    + " backrest, both feet), which this model does not know; ask for a joint of the free limb");
        }
        return !aboveHeld;
    }

    private static boolean isHeld(Layout layout, Joint joint, boolean above) {
        int held = layout.held();
        if (layout.parting().armsAlone() && (joint == Joint.LOW_BACK || !Parting.isArm(joint))) {
            return true;
        }
        if (joint != Joint.LOW_BACK) {
            int mask = layout.parting().above(joint);
            return (held & (above ? mask : layout.parting().everything() & ~mask)) != 0;
        }
        int trunk = Member.TRUNK.bit();
        int arms = layout.parting().above(Joint.SHOULDER) | Parting.OTHER_ARM;
        return layout.holdsTrunk(above) || (held & (above ? arms : ~arms & ~trunk)) != 0;
    }

    /** Whether a load acts on the free body. */
    boolean isBeyond(Load load) {
        if (joint == Joint.NECK) {
            return false;
        }
        return above == isAboveJoint(layout, joint, load);
    }

    /** Whether a load acts above a joint, out along the arms. */
    static boolean isAboveJoint(Layout layout, Joint joint, Load load) {
        if (joint != Joint.LOW_BACK) {
            return (layout.parting().above(joint) & load.on().bit()) != 0;
        }
        if (load.on() != Member.TRUNK) {
            return load.on().isArm();
        }
        double along = (load.x() - layout.startX(Member.TRUNK)) * layout.sine(Member.TRUNK)
                + (load.y() - layout.startY(Member.TRUNK)) * layout.cosine(Member.TRUNK);
        return along >= layout.body().lowBackAlong();
    }

    double partX(Part part) {
        return part.whole() ? layout.centreX(part.on()) : layout.alongX(part.on(), part.centre());
    }

    Joint joint() {
        return joint;
    }

    List<Part> parts() {
        return parts;
    }

    /** Whether the free body is the one above the joint. */
    boolean isAbove() {
        return above;
    }

    boolean onlyWeights() {
        return onlyWeights;
    }

    double jointX() {
        return jointX;
    }

    double jointY() {
        return jointY;
    }

    /** Mass of the body's parts beyond the joint, kg. */
    double bodyMass() {
        return bodyMass;
    }

    /** x of the mass centre of those parts, m. */
    double bodyX() {
        return bodyMassX / bodyMass;
    }

    /** Mass of what hangs or rests on the free body, kg. */
    double hungMass() {
        return hungMass;
    }

    /** All mass beyond the joint, kg. */
    double mass() {
        return hungMass + bodyMass;
    }

    /** x of the mass centre of all that, m. */
    double massX() {
        return (hungMassX + bodyMassX) / mass();
    }

    /** Weight of all mass beyond the joint, as far as it acts in the plane, N. */
    double weight() {
        return mass() * layout.gravity();
    }

    /** +1 where a weight ahead of the joint asks for the positive action, −1 where it asks for the other. */
    int direction() {
        return above ? layout.counterClockwise(joint) : -layout.counterClockwise(joint);
    }

    /** Load arm of the weight, m: positive where it asks for the joint's positive action. */
    double arm() {
        return direction() * (massX() - jointX);
    }

    /** Forward part of the forces beyond the joint other than weights, N. */
    double otherX() {
        return otherX;
    }

    /** Upward part of the forces beyond the joint other than weights, N. */
    double otherY() {
        return otherY;
    }

    /** Size of all forces beyond the joint taken together, both sides, N. */
    double load() {
        if (onlyWeights) {
            return weight();
        }
        double up = otherY - weight();
        return Math.sqrt(otherX * otherX + up * up);
    }

    /** Arm of that load about the joint, m: positive where it asks for the joint's positive action. */
    double loadArm() {
        return isOneWeight() ? arm() : moment() / load();
    }

    /** Whether weight and arm say all: nothing else pulls, or nothing at all does. */
    boolean isOneWeight() {
        return onlyWeights || load() == 0;
    }

    /** Moment of the positive action that the other forces ask for, both sides, N·m. */
    double otherMoment() {
        return -direction() * otherMoment;
    }

    /** Moment of the positive action that one load asks for, both sides, N·m. */
    double momentFor(Load load) {
        return -direction() * load.momentAbout(jointX, jointY);
    }

    /** Moment of the positive action, both sides together, N·m. */
    double moment() {
        return weight() * arm() + otherMoment();
    }

    /** By how many the moment is divided: 2 per side where both sides are alike, else 1. */
    int divisor() {
        return joint.sides() == Sides.PER_SIDE && !layout.parting().isSplit(joint) ? 2 : 1;
    }

    /** Moment of the positive action as it is reported: per side for limbs, in total for spine and neck, N·m. */
    double reported() {
        return moment() / divisor();
    }
}
