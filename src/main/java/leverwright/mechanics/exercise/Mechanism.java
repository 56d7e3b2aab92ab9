package leverwright.mechanics.exercise;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.equilibrium.Support;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Linkage;

/**
 * A held posture as a general linkage with its loads and support: what motion, spine and joint forces are computed from.
 *
 * @param linkage the body's segments, with their moments of inertia
 * @param configuration where they lie, at rest
 * @param loads on them
 * @param support what holds them
 * @param gravity downwards in this plane, m/s²
 * @param joints that this linkage answers for, each with the link that starts there
 */
public record Mechanism(
        Linkage linkage,
        Configuration configuration,
        List<Load> loads,
        Support support,
        double gravity,
        Map<Joint, JointLink> joints) {
    /**
     * A joint in the linkage.
     *
     * @param link that starts at the joint
     * @param sense +1 where the joint's positive action is a counter-clockwise moment of the parent on that link, else −1
     * @param divisor by how many a moment or force of the linkage is divided to be reported: 2 per side, 1 in total
     */
    public record JointLink(String link, int sense, int divisor) {}

    /** Copies the lists. */
    public Mechanism {
        loads = List.copyOf(loads);
        Map<Joint, JointLink> copy = new EnumMap<>(Joint.class);
        copy.putAll(joints);
        joints = Collections.unmodifiableMap(copy);
    }

    /** Returns a solver of this posture, solved. */
    public LinkageSolver solved() {
        return LinkageSolver.of(linkage, loads, support)
                .gravity(gravity)
                .configuration(configuration)
                .solve();
    }

    /**
     * Returns where a joint is in the linkage.
     *
     * @throws IllegalArgumentException if what holds the body leaves that joint without an answer
     */
    public JointLink joint(Joint joint) {
        JointLink found = joints.get(joint);
        if (found == null) {
            throw new IllegalArgumentException("what the " + joint.words()
                    + " carries here depends on how what holds the body shares the load, which this model does not know;"
                    + " ask for a joint of the free limb");
        }
        return Objects.requireNonNull(found);
    }

    /** Returns the moment of a joint's positive action as it is reported, N·m, from a solved state of this linkage. */
    public double reported(Joint joint, LinkageSolver solved) {
        JointLink at = joint(joint);
        return at.sense() * solved.moment(linkage.indexOf(at.link())) / at.divisor();
    }
}
