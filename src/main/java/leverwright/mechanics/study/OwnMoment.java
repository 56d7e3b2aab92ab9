package leverwright.mechanics.study;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.exercise.Mechanism;
import leverwright.mechanics.motion.LinkagePath;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;

/**
 * What the limb beyond a joint asks of it in motion by its own weight and inertia: Σ r × m·(g − a) − I·α over the limb's links,
 * about the joint, with the sign of the joint's positive action.
 */
final class OwnMoment {
    private final Linkage linkage;
    private final double gravity;
    private final int joint;
    private final int from;
    private final int to;
    private final double factor;

    /**
     * Takes the limb beyond a joint.
     *
     * @throws IllegalArgumentException for low back and neck, or where what holds the body leaves the joint unknown
     */
    OwnMoment(Mechanism mechanism, Joint of) {
        if (of == Joint.LOW_BACK || of == Joint.NECK) {
            throw new IllegalArgumentException(
                    "the " + of.words() + " belongs to no limb; ask for ankle, knee, hip, shoulder, elbow or wrist");
        }
        Mechanism.JointLink at = mechanism.joint(of);
        linkage = mechanism.linkage();
        gravity = mechanism.gravity();
        joint = linkage.indexOf(at.link());
        boolean arm = of == Joint.SHOULDER || of == Joint.ELBOW || of == Joint.WRIST;
        // links run from the foot up and out along the arms: a leg's limb are the links before the joint
        from = arm ? joint : 0;
        to = arm ? linkage.lastOf(joint) : joint - 1;
        factor = (arm ? -1.0 : 1.0) * at.sense() / at.divisor();
    }

    /** Returns that moment, N·m, as reported. */
    double of(LinkagePath.State state) {
        double sum = 0;
        for (int k = from; k <= to; k++) {
            Link link = linkage.link(k);
            Vector a = state.kinematics().acceleration(link.name(), link.centre());
            double x = state.solver().centreX(k) - state.solver().startX(joint);
            double y = state.solver().centreY(k) - state.solver().startY(joint);
            double forceX = -link.mass() * a.x();
            double forceY = -link.mass() * (gravity + a.y());
            sum += x * forceY - y * forceX - link.inertia() * state.angularAcceleration(k);
        }
        return factor * sum;
    }
}
