package leverwright.mechanics.equilibrium;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leverwright.mechanics.numeric.Vector;

/**
 * All values of one solve, with names; immutable. Signs and units as in the package's description.
 *
 * @param joints by index of the link that starts there
 * @param forces every weight (with its inertia terms) and load that acts on the linkage
 * @param reactions what holds the linkage: one, or two for two contacts
 * @param balanced whether the support can hold it: see {@link LinkageSolver#balanced}
 * @param centreOfPressure where ground pushes, x in the world, m; empty when it would have to pull, and for other supports
 * @param frictionNeeded greatest tangential over normal force; empty when a contact does not push, and for a fixed support
 * @param massCentre of the links, m; empty if they have no mass
 * @param systemMassCentre of links and attached masses, m; empty if they have no mass
 * @param scale largest sum over all forces of |r × F| + |couple| about any one joint, N·m
 * @param closure largest difference between the moments of the two cuts of any joint, over the scale
 */
public record Solution(
        List<JointLoad> joints,
        List<AppliedForce> forces,
        List<Reaction> reactions,
        boolean balanced,
        OptionalDouble centreOfPressure,
        OptionalDouble frictionNeeded,
        Optional<Vector> massCentre,
        Optional<Vector> systemMassCentre,
        double scale,
        double closure) {

    /** Makes a solution. */
    public Solution {
        joints = List.copyOf(joints);
        forces = List.copyOf(forces);
        reactions = List.copyOf(reactions);
    }

    /**
     * What one link exerts on the next at their joint.
     *
     * @param below name of the parent link
     * @param above name of the link that starts at the joint
     * @param position world, m
     * @param force of below on above, N, from the load's side
     * @param moment of below on above, N·m, from the load's side
     * @param sides by how many to divide for one side
     * @param supportSideForce the same force from the support's side
     * @param supportSideMoment the same moment from the support's side
     */
    public record JointLoad(
            String below,
            String above,
            Vector position,
            Vector force,
            double moment,
            int sides,
            Vector supportSideForce,
            double supportSideMoment) {
        /** Returns the moment on one side, N·m. */
        public double momentPerSide() {
            return moment / sides;
        }
    }

    /**
     * A force on a link.
     *
     * @param source "weight", or the kind of load
     * @param on name of the link
     * @param at world, m
     * @param force N
     * @param couple N·m
     */
    public record AppliedForce(String source, String on, Vector at, Vector force, double couple) {}

    /**
     * What holds the linkage.
     *
     * @param on name of the link that is held
     * @param at world, m; for ground that would have to pull, the start of its link
     * @param force on the linkage, N
     * @param couple on the linkage, N·m; 0 for contacts and for ground that pushes
     */
    public record Reaction(String on, Vector at, Vector force, double couple) {}

    /**
     * Returns what happens at the joint where a link starts.
     *
     * @param above name of the link
     * @throws IllegalArgumentException if there is no such joint; the message lists them
     */
    public JointLoad joint(String above) {
        for (JointLoad joint : joints) {
            if (joint.above().equals(above)) {
                return joint;
            }
        }
        throw new IllegalArgumentException("no joint has \"" + above + "\" above it; allowed: "
                + String.join(", ", joints.stream().map(JointLoad::above).toList()));
    }

    /** Returns what holds the linkage; of two contacts the first. */
    public Reaction reaction() {
        return reactions.get(0);
    }
}
