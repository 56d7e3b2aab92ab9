package leverwright.mechanics.equilibrium;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leverwright.mechanics.equilibrium.Solution.AppliedForce;
import leverwright.mechanics.equilibrium.Solution.JointLoad;
import leverwright.mechanics.equilibrium.Solution.Reaction;
import leverwright.mechanics.numeric.Vector;

/** Makes a solution with names from a solver's arrays. */
final class Solutions {
    private Solutions() {}

    static Solution of(LinkageSolver solver) {
        boolean pushes = solver.groundPushes();
        double scale = solver.scale();
        return new Solution(
                joints(solver),
                forces(solver),
                reactions(solver),
                solver.balanced(),
                pushes ? OptionalDouble.of(solver.centreOfPressure()) : OptionalDouble.empty(),
                frictionNeeded(solver.reactions),
                massCentre(solver, false),
                massCentre(solver, true),
                scale,
                Rounding.closure(solver, scale));
    }

    private static List<JointLoad> joints(LinkageSolver solver) {
        List<JointLoad> joints = new ArrayList<>();
        for (int k = 1; k < solver.linkage.size(); k++) {
            joints.add(new JointLoad(
                    solver.linkage.link(solver.linkage.parent(k)).name(),
                    solver.linkage.link(k).name(),
                    new Vector(solver.startX(k), solver.startY(k)),
                    new Vector(solver.forceX(k), solver.forceY(k)),
                    solver.moment(k),
                    solver.linkage.sidesOfJoint(k),
                    new Vector(solver.supportSideForceX(k), solver.supportSideForceY(k)),
                    solver.supportSideMoment(k)));
        }
        return joints;
    }

    private static List<AppliedForce> forces(LinkageSolver solver) {
        List<AppliedForce> forces = new ArrayList<>();
        for (int k = 0; k < solver.linkage.size(); k++) {
            forces.add(new AppliedForce(
                    "weight",
                    solver.linkage.link(k).name(),
                    new Vector(solver.centreX(k), solver.centreY(k)),
                    new Vector(solver.bodies[k].weightX(solver.gravityX), solver.bodies[k].weightY(solver.gravityY)),
                    solver.bodies[k].inertiaCouple()));
        }
        for (LoadCell cell : solver.loads) {
            forces.add(new AppliedForce(
                    cell.load.kind(),
                    cell.load.on(),
                    new Vector(solver.originX + cell.x(), solver.originY + cell.y()),
                    new Vector(cell.forceX, cell.forceY),
                    cell.couple));
        }
        return forces;
    }

    private static List<Reaction> reactions(LinkageSolver solver) {
        List<Reaction> reactions = new ArrayList<>();
        for (Hold hold : solver.reactions.all()) {
            reactions.add(new Reaction(
                    solver.linkage.link(hold.link).name(),
                    new Vector(solver.originX + hold.atX, solver.originY + hold.atY),
                    new Vector(hold.forceX, hold.forceY),
                    hold.couple));
        }
        return reactions;
    }

    private static OptionalDouble frictionNeeded(Reactions held) {
        if (held.support instanceof FixedSupport || (held.support instanceof GroundSupport && !held.pushes)) {
            return OptionalDouble.empty();
        }
        double needed = 0;
        for (Hold hold : held.all()) {
            double ratio = Math.abs(held.tangential(hold)) / held.normal(hold);
            if (!(held.normal(hold) > 0) || !(ratio < Double.MAX_VALUE)) {
                return OptionalDouble.empty();
            }
            needed = Math.max(needed, ratio);
        }
        return OptionalDouble.of(needed);
    }

    private static Optional<Vector> massCentre(LinkageSolver solver, boolean withLoads) {
        double mass = 0;
        double x = 0;
        double y = 0;
        for (Body body : solver.bodies) {
            mass += body.mass;
            x += body.mass * body.centreX();
            y += body.mass * body.centreY();
        }
        for (LoadCell cell : solver.loads) {
            double attached = withLoads ? cell.mass : 0;
            mass += attached;
            x += attached * cell.x();
            y += attached * cell.y();
        }
        return mass > 0
                ? Optional.of(new Vector(solver.originX + x / mass, solver.originY + y / mass))
                : Optional.empty();
    }
}
