package leverwright.mechanics.motion;

import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import leverwright.mechanics.posture.Placement;

/** Velocities, accelerations and energies of a linkage in one configuration; immutable. */
public final class Kinematics {
    private final Placement placement;
    private final Vector[] startVelocities;
    private final Vector[] startAccelerations;

    private Kinematics(Placement placement, Vector velocity, Vector acceleration) {
        this.placement = placement;
        int size = placement.linkage().size();
        startVelocities = new Vector[size];
        startAccelerations = new Vector[size];
        startVelocities[0] = velocity;
        startAccelerations[0] = acceleration;
        for (int k = 1; k < size; k++) {
            int parent = placement.linkage().parent(k);
            Place at = placement.linkage().attachment(k);
            startVelocities[k] = velocity(parent, at);
            startAccelerations[k] = acceleration(parent, at);
        }
    }

    /**
     * Returns the kinematics of a linkage.
     *
     * @throws IllegalArgumentException if the configuration is of another number of links
     */
    public static Kinematics of(Linkage linkage, Configuration configuration) {
        return of(linkage, configuration, Vector.ZERO, Vector.ZERO);
    }

    /**
     * Returns the kinematics of a linkage whose first link's start moves.
     *
     * @param velocity of that start, m/s
     * @param acceleration of that start, m/s²
     * @throws IllegalArgumentException if the configuration is of another number of links
     */
    public static Kinematics of(Linkage linkage, Configuration configuration, Vector velocity, Vector acceleration) {
        return new Kinematics(Placement.of(linkage, configuration), velocity, acceleration);
    }

    /** Returns the velocity of a place on a link, m/s. */
    public Vector velocity(String link, Place place) {
        return velocity(placement.linkage().indexOf(link), place);
    }

    /** Returns the acceleration of a place on a link, m/s². */
    public Vector acceleration(String link, Place place) {
        return acceleration(placement.linkage().indexOf(link), place);
    }

    private Vector velocity(int link, Place place) {
        return startVelocities[link].plus(turned(arm(link, place)).times(angularVelocity(link)));
    }

    private Vector acceleration(int link, Place place) {
        Vector arm = arm(link, place);
        double alpha = placement.configuration().angularAccelerations().get(link);
        double omega = angularVelocity(link);
        return startAccelerations[link].plus(turned(arm).times(alpha)).minus(arm.times(omega * omega));
    }

    private double angularVelocity(int link) {
        return placement.configuration().angularVelocities().get(link);
    }

    private Vector arm(int link, Place place) {
        return placement.point(link, place).minus(placement.start(link));
    }

    private static Vector turned(Vector arm) {
        return new Vector(-arm.y(), arm.x());
    }

    /** Returns the energy of motion of all links, ½·m·v² + ½·I·ω², J; attached masses are not links. */
    public double kineticEnergy() {
        double sum = 0;
        for (int k = 0; k < placement.linkage().size(); k++) {
            Link link = placement.linkage().link(k);
            Vector v = velocity(k, link.centre());
            double omega = angularVelocity(k);
            sum += 0.5 * link.mass() * v.dot(v) + 0.5 * link.inertia() * omega * omega;
        }
        return sum;
    }

    /**
     * Returns the power of a joint, W, both sides together: moment of the parent on the child times the child's angular
     * velocity relative to the parent.
     *
     * @param solved a solver that has just solved the same linkage in the same configuration
     * @param joint index of the link that starts at the joint, at least 1
     */
    public double jointPower(LinkageSolver solved, int joint) {
        int parent = placement.linkage().parent(joint);
        return solved.moment(joint) * (angularVelocity(joint) - angularVelocity(parent));
    }
}
