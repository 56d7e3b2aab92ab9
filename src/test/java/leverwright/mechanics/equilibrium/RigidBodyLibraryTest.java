package leverwright.mechanics.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import org.junit.jupiter.api.Test;
import us.ihmc.euclid.matrix.Matrix3D;
import us.ihmc.euclid.referenceFrame.ReferenceFrame;
import us.ihmc.euclid.tuple3D.Vector3D;
import us.ihmc.mecano.algorithms.InverseDynamicsCalculator;
import us.ihmc.mecano.multiBodySystem.FixedJoint;
import us.ihmc.mecano.multiBodySystem.RevoluteJoint;
import us.ihmc.mecano.multiBodySystem.RigidBody;

/**
 * A second opinion: the recursive Newton–Euler of the general rigid-body library mecano (us.ihmc, Apache 2.0), three-dimensional
 * and with its own kinematics, on the same random linkages. Attached masses are bodies there; other loads and what the support
 * gives are forces on bodies. Every joint's moment must agree, and nothing may be left at the root.
 */
class RigidBodyLibraryTest {
    private static final int CASES = 200;
    private static final Vector3D AXIS = new Vector3D(0, 0, 1);

    @Test
    void jointMomentsAgreeOnRandomPosturesAtRest() {
        int compared = 0;
        for (int seed = 0; compared < CASES; seed++) {
            compared += compare(RandomCase.of(seed).atRest(), "at rest, seed " + seed) ? 1 : 0;
        }
    }

    @Test
    void jointMomentsAgreeOnRandomMovingPostures() {
        int compared = 0;
        for (int seed = 0; compared < CASES; seed++) {
            RandomCase drawn = RandomCase.of(seed);
            boolean moves = drawn.configuration().angularVelocities().stream().anyMatch(v -> v != 0);
            compared += moves && compare(drawn, "moving, seed " + seed) ? 1 : 0;
        }
    }

    /** Compares one case; tells whether its supports could hold it at all. */
    private static boolean compare(RandomCase drawn, String which) {
        LinkageSolver solver;
        try {
            solver = drawn.solver();
        } catch (IllegalArgumentException cannotHold) {
            return false;
        }
        Tree tree = new Tree(drawn, solver.solution());
        double scale = 1 + solver.scale();
        assertEquals(0, tree.moment(0) / scale, 1e-9, which + ", root");
        for (int joint = 1; joint < drawn.linkage().size(); joint++) {
            assertEquals(solver.moment(joint) / scale, tree.moment(joint) / scale, 1e-9, which + ", joint " + joint);
        }
        return true;
    }

    /** The linkage as the library knows it. */
    private static final class Tree {
        private final Linkage linkage;
        private final Configuration configuration;
        private final List<RevoluteJoint> joints = new ArrayList<>();
        private final List<RigidBody> bodies = new ArrayList<>();
        private final InverseDynamicsCalculator calculator;

        Tree(RandomCase drawn, Solution solution) {
            linkage = drawn.linkage();
            configuration = drawn.configuration();
            RigidBody world = new RigidBody("world", ReferenceFrame.getWorldFrame());
            for (int k = 0; k < linkage.size(); k++) {
                add(k, world);
            }
            for (int l = 0; l < drawn.loads().size(); l++) {
                if (drawn.loads().get(l) instanceof MassLoad mass) {
                    RigidBody on = bodies.get(linkage.indexOf(mass.on()));
                    FixedJoint held = new FixedJoint("held " + l, on);
                    Vector3D at = new Vector3D(mass.at().along(), mass.at().across(), 0);
                    new RigidBody("mass " + l, held, 0, 0, 0, mass.mass(), at);
                }
            }
            for (int k = 0; k < linkage.size(); k++) {
                int parent = linkage.parent(k);
                joints.get(k).setQ(relative(configuration.directions(), k, parent));
                joints.get(k).setQd(relative(configuration.angularVelocities(), k, parent));
                joints.get(k).setQdd(relative(configuration.angularAccelerations(), k, parent));
            }
            world.updateFramesRecursively();
            calculator = new InverseDynamicsCalculator(world);
            calculator.setGravitationalAcceleration(0, -9.80665, 0);
            forces(drawn, solution);
            calculator.compute();
        }

        private static double relative(List<Double> values, int k, int parent) {
            return values.get(k) - (parent < 0 ? 0 : values.get(parent));
        }

        private void add(int k, RigidBody world) {
            Link link = linkage.link(k);
            int parent = linkage.parent(k);
            Place at = linkage.attachment(k);
            Vector3D offset = parent < 0
                    ? new Vector3D(
                            configuration.origin().x(), configuration.origin().y(), 0)
                    : new Vector3D(at.along(), at.across(), 0);
            RevoluteJoint joint =
                    new RevoluteJoint("joint " + k, parent < 0 ? world : bodies.get(parent), offset, AXIS);
            joints.add(joint);
            Matrix3D inertia = new Matrix3D(0, 0, 0, 0, 0, 0, 0, 0, link.inertia());
            Vector3D centre = new Vector3D(link.centre().along(), link.centre().across(), 0);
            bodies.add(new RigidBody("body " + k, joint, inertia, link.mass(), centre));
        }

        private void forces(RandomCase drawn, Solution solution) {
            double[][] sums = new double[linkage.size()][3];
            int weights = linkage.size();
            for (int l = 0; l < drawn.loads().size(); l++) {
                Solution.AppliedForce force = solution.forces().get(weights + l);
                boolean isBody = drawn.loads().get(l) instanceof MassLoad;
                add(sums, force.on(), force.at(), isBody ? Vector.ZERO : force.force(), force.couple());
            }
            for (Solution.Reaction reaction : solution.reactions()) {
                add(sums, reaction.on(), reaction.at(), reaction.force(), reaction.couple());
            }
            for (int k = 0; k < linkage.size(); k++) {
                double c = Math.cos(configuration.directions().get(k));
                double s = Math.sin(configuration.directions().get(k));
                // in the body's frame, which lies at its mass centre
                double x = c * sums[k][0] + s * sums[k][1];
                double y = -s * sums[k][0] + c * sums[k][1];
                Place centre = linkage.link(k).centre();
                double aboutCentre = sums[k][2] - (centre.along() * y - centre.across() * x);
                calculator.getExternalWrench(bodies.get(k)).set(new Vector3D(0, 0, aboutCentre), new Vector3D(x, y, 0));
            }
        }

        private void add(double[][] sums, String on, Vector at, Vector force, double couple) {
            int k = linkage.indexOf(on);
            Vector start = leverwright.mechanics.posture.Placement.of(linkage, configuration)
                    .start(k);
            Vector arm = at.minus(start);
            sums[k][0] += force.x();
            sums[k][1] += force.y();
            sums[k][2] += arm.cross(force) + couple;
        }

        double moment(int joint) {
            return calculator.getComputedJointTau(joints.get(joint)).get(0, 0);
        }
    }
}
