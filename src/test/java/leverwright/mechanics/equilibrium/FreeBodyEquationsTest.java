package leverwright.mechanics.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.LoadPoint;
import leverwright.mechanics.motion.Kinematics;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import leverwright.mechanics.posture.Placement;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The solver against another formulation: the three equations of every free body, moments about the world's origin, as one
 * linear system for all joint forces and moments and the support's unknowns, solved by Hipparchus's LU decomposition.
 */
class FreeBodyEquationsTest {
    private static final int CASES = 400;
    private static final int MANY_CASES = 40_000;

    @Test
    void agreesWithOneLinearSystemOfAllFreeBodies() {
        agreesWithOneLinearSystem(CASES);
    }

    @Test
    @Tag("soak")
    void agreesWithTheLinearSystemsOfManyLinkages() {
        agreesWithOneLinearSystem(MANY_CASES);
    }

    private static void agreesWithOneLinearSystem(int cases) {
        int trees = 0;
        int moving = 0;
        for (long seed = 1; seed <= cases; seed++) {
            RandomCase drawn = RandomCase.of(seed);
            LinkageSolver solver = drawn.solver();
            double[] unknowns = new System(drawn).solve();
            double scale = 1 + solver.scale();
            for (int k = 1; k < drawn.linkage().size(); k++) {
                String where = "seed " + seed + ", joint " + k;
                double force = 1 + Math.hypot(unknowns[3 * k], unknowns[3 * k + 1]) + scale;
                assertEquals(unknowns[3 * k], solver.forceX(k), 1e-9 * force, where);
                assertEquals(unknowns[3 * k + 1], solver.forceY(k), 1e-9 * force, where);
                assertEquals(unknowns[3 * k + 2], solver.moment(k), 1e-9 * scale, where);
                assertEquals(unknowns[3 * k], solver.supportSideForceX(k), 1e-9 * force, where);
                assertEquals(unknowns[3 * k + 1], solver.supportSideForceY(k), 1e-9 * force, where);
                assertEquals(unknowns[3 * k + 2], solver.supportSideMoment(k), 1e-9 * scale, where);
                trees += drawn.linkage().parent(k) != k - 1 ? 1 : 0;
            }
            checkReaction(drawn, solver, unknowns, scale, seed);
            moving += drawn.configuration().angularVelocities().stream().anyMatch(w -> w != 0) ? 1 : 0;
            assertTrue(solver.closure() < 1e-12, "seed " + seed + ", closure " + solver.closure());
        }
        assertTrue(trees > 100 && moving > 100, trees + " branches and " + moving + " moving cases are too few");
    }

    private static void checkReaction(
            RandomCase drawn, LinkageSolver solver, double[] unknowns, double scale, long seed) {
        if (drawn.support() instanceof TwoContacts) {
            assertEquals(unknowns[1], solver.reactionX(1), 1e-9 * scale * 10, "seed " + seed);
            assertEquals(unknowns[2], solver.reactionY(1), 1e-9 * scale * 10, "seed " + seed);
        } else {
            assertEquals(unknowns[0], solver.reactionX(0), 1e-9 * scale * 10, "seed " + seed);
            assertEquals(unknowns[1], solver.reactionY(0), 1e-9 * scale * 10, "seed " + seed);
        }
        if (drawn.support() instanceof GroundSupport && solver.groundPushes()) {
            double centre = unknowns[2] / unknowns[1];
            assertEquals(centre, solver.centreOfPressure(), 1e-8 * (1 + Math.abs(centre)), "seed " + seed);
        }
    }

    /** Unknowns 0 to 2 are the support's; 3k to 3k + 2 force and moment of the parent on link k. */
    private static final class System {
        private final RandomCase drawn;
        private final Linkage linkage;
        private final Placement placement;
        private final Kinematics kinematics;
        private final double[][] matrix;
        private final double[] right;

        System(RandomCase drawn) {
            this.drawn = drawn;
            linkage = drawn.linkage();
            placement = Placement.of(linkage, drawn.configuration());
            kinematics = Kinematics.of(linkage, drawn.configuration());
            matrix = new double[3 * linkage.size()][3 * linkage.size()];
            right = new double[3 * linkage.size()];
        }

        double[] solve() {
            for (int k = 0; k < linkage.size(); k++) {
                Link link = linkage.link(k);
                Vector pull = new Vector(0, -9.80665).minus(kinematics.acceleration(link.name(), link.centre()));
                double alpha = drawn.configuration().angularAccelerations().get(k);
                known(k, placement.centre(link.name()), pull.times(link.mass()), -link.inertia() * alpha);
                if (k > 0) {
                    unknownForce(k, 3 * k, placement.start(k), 1);
                    unknownForce(linkage.parent(k), 3 * k, placement.start(k), -1);
                    matrix[3 * k + 2][3 * k + 2] += 1;
                    matrix[3 * linkage.parent(k) + 2][3 * k + 2] -= 1;
                }
            }
            for (Load load : drawn.loads()) {
                load(load);
            }
            support();
            return new LUDecomposition(new Array2DRowRealMatrix(matrix), 1e-14)
                    .getSolver()
                    .solve(new ArrayRealVector(right))
                    .toArray();
        }

        private void load(Load load) {
            int k = linkage.indexOf(load.on());
            double direction = drawn.configuration().directions().get(k);
            Vector at = placement.point(k, load.at());
            Vector acceleration = kinematics.acceleration(load.on(), load.at());
            Vector velocity = kinematics.velocity(load.on(), load.at());
            LoadPoint point = new LoadPoint(
                    at.x(),
                    at.y(),
                    Math.cos(direction),
                    Math.sin(direction),
                    acceleration.x(),
                    acceleration.y(),
                    velocity.x(),
                    velocity.y(),
                    drawn.configuration().angularVelocities().get(k),
                    drawn.configuration().angularAccelerations().get(k),
                    0,
                    -9.80665,
                    9.80665);
            known(k, at, new Vector(load.forceX(point), load.forceY(point)), load.couple(point));
        }

        private void support() {
            if (drawn.support() instanceof TwoContacts two) {
                int first = linkage.indexOf(two.first().on());
                Vector at = placement.point(first, two.first().at());
                Vector tangent = new Vector(Math.cos(two.axis()), Math.sin(two.axis()));
                Vector normal = new Vector(-tangent.y(), tangent.x());
                known(first, at, tangent.times(two.freeForce()), 0);
                matrix[3 * first][0] += normal.x();
                matrix[3 * first + 1][0] += normal.y();
                matrix[3 * first + 2][0] += at.cross(normal);
                int second = linkage.indexOf(two.second().on());
                unknownForce(second, 1, placement.point(second, two.second().at()), 1);
            } else if (drawn.support() instanceof FixedSupport fixed) {
                int k = linkage.indexOf(fixed.on());
                unknownForce(k, 0, placement.point(k, fixed.at()), 1);
                matrix[3 * k + 2][2] += 1;
            } else if (drawn.support() instanceof GroundSupport ground) {
                int k = linkage.indexOf(ground.on());
                unknownForce(k, 0, Vector.ZERO, 1);
                matrix[3 * k + 2][2] += 1;
            }
        }

        private void known(int k, Vector at, Vector force, double couple) {
            right[3 * k] -= force.x();
            right[3 * k + 1] -= force.y();
            right[3 * k + 2] -= at.cross(force) + couple;
        }

        private void unknownForce(int k, int column, Vector at, double sign) {
            matrix[3 * k][column] += sign;
            matrix[3 * k + 1][column + 1] += sign;
            matrix[3 * k + 2][column] -= sign * at.y();
            matrix[3 * k + 2][column + 1] += sign * at.x();
        }
    }

    @Test
    void staysTheSameAtRestInMotionOfNothing() {
        for (long seed = 1; seed <= 100; seed++) {
            RandomCase still = RandomCase.of(seed).atRest();
            LinkageSolver moved = LinkageSolver.of(still.linkage(), still.loads(), still.support())
                    .configuration(still.configuration());
            moved.turning(0, 1, 2).solve();
            moved.turning(0, 0, 0).solve();
            LinkageSolver fresh = still.solver();
            for (int k = 1; k < still.linkage().size(); k++) {
                assertEquals(fresh.moment(k), moved.moment(k), "seed " + seed);
                assertEquals(fresh.forceY(k), moved.forceY(k), "seed " + seed);
            }
        }
    }

    @Test
    void findsTheSameMomentsInATurnedAndShiftedFrame() {
        for (long seed = 1; seed <= 200; seed++) {
            RandomCase drawn = RandomCase.of(seed);
            if (!(drawn.support() instanceof FixedSupport)
                    || drawn.loads().stream()
                            .anyMatch(l -> !l.kind().equals("mass") && !l.kind().equals("pad"))) {
                continue;
            }
            double turn = 0.7;
            List<Double> directions = new ArrayList<>();
            for (double direction : drawn.configuration().directions()) {
                directions.add(direction + turn);
            }
            LinkageSolver there = LinkageSolver.of(drawn.linkage(), drawn.loads(), drawn.support())
                    .configuration(drawn.configuration())
                    .gravity(9.80665 * Math.sin(turn), -9.80665 * Math.cos(turn))
                    .origin(3, -5);
            for (int k = 0; k < directions.size(); k++) {
                there.direction(k, directions.get(k));
            }
            there.solve();
            LinkageSolver here = drawn.solver();
            for (int k = 1; k < drawn.linkage().size(); k++) {
                assertEquals(here.moment(k), there.moment(k), 1e-11 * (1 + here.scale()), "seed " + seed);
            }
        }
    }

    @Test
    void mirrorsMomentsInAMirror() {
        for (long seed = 1; seed <= 200; seed++) {
            RandomCase drawn = RandomCase.of(seed);
            if (!drawn.loads().stream().allMatch(l -> l.kind().equals("mass") && l.couple() == 0)
                    || drawn.support() instanceof TwoContacts) {
                continue;
            }
            Linkage.Builder mirrored = Linkage.builder();
            for (int k = 0; k < drawn.linkage().size(); k++) {
                Link link = drawn.linkage().link(k);
                Link flipped = new Link(
                        link.name(),
                        link.sides(),
                        link.mass(),
                        link.length(),
                        flipped(link.centre()),
                        flipped(link.next()),
                        link.inertia());
                if (k == 0) {
                    mirrored.start(flipped);
                } else {
                    String on = drawn.linkage().link(drawn.linkage().parent(k)).name();
                    mirrored.attach(flipped, on, flipped(drawn.linkage().attachment(k)));
                }
            }
            LinkageSolver here = drawn.atRest().solver();
            LinkageSolver there = LinkageSolver.of(mirrored.build(), drawn.loads(), drawn.support());
            there.origin(
                    -drawn.configuration().origin().x(),
                    drawn.configuration().origin().y());
            for (int k = 0; k < drawn.linkage().size(); k++) {
                there.direction(k, Math.PI - drawn.configuration().directions().get(k));
            }
            there.solve();
            for (int k = 1; k < drawn.linkage().size(); k++) {
                assertEquals(-here.moment(k), there.moment(k), 1e-12 * (1 + here.scale()), "seed " + seed);
            }
        }
    }

    private static Place flipped(Place place) {
        return new Place(place.along(), -place.across());
    }
}
