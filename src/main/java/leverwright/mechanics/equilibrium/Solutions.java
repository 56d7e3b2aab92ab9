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
        return new Solution(
                joints(solver),
                forces(solver),
                reactions(solver),
                solver.balanced(),
                pushes ? OptionalDouble.of(solver.centreOfPressure()) : OptionalDouble.empty(),
                frictionNeeded(solver.reactions),
                massCentre(solver, false),
                massCentre(solver, true),
                solver.scale(),
                solver.closure());
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
                    new Vector(solver.weightX[k], solver.weightY[k]),
                    solver.inertiaCouples[k]));
        }
        for (int l = 0; l < solver.loads.length; l++) {
            forces.add(new AppliedForce(
                    solver.loads[l].kind(),
                    solver.loads[l].on(),
                    new Vector(solver.originX + solver.loadX[l], solver.originY + solver.loadY[l]),
                    new Vector(solver.loadForceX[l], solver.loadForceY[l]),
                    solver.loads[l].couple()));
        }
        return forces;
    }

    private static List<Reaction> reactions(LinkageSolver solver) {
        Reactions held = solver.reactions;
        List<Reaction> reactions = new ArrayList<>();
        for (int r = 0; r < held.count; r++) {
            reactions.add(new Reaction(
                    solver.linkage.link(held.links[r]).name(),
                    new Vector(solver.originX + held.atX[r], solver.originY + held.atY[r]),
                    new Vector(held.forceX[r], held.forceY[r]),
                    held.couples[r]));
        }
        return reactions;
    }

    private static OptionalDouble frictionNeeded(Reactions held) {
        if (held.support instanceof FixedSupport || (held.support instanceof GroundSupport && !held.pushes)) {
            return OptionalDouble.empty();
        }
        double needed = 0;
        for (int r = 0; r < held.count; r++) {
            double ratio = Math.abs(held.tangential(r)) / held.normal(r);
            if (!(held.normal(r) > 0) || !(ratio < Double.MAX_VALUE)) {
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
        for (int k = 0; k < solver.linkage.size(); k++) {
            mass += solver.masses[k];
            x += solver.masses[k] * solver.centreX[k];
            y += solver.masses[k] * solver.centreY[k];
        }
        for (int l = 0; withLoads && l < solver.loads.length; l++) {
            double attached = solver.loads[l].attachedMass();
            mass += attached;
            x += attached * solver.loadX[l];
            y += attached * solver.loadY[l];
        }
        return mass > 0
                ? Optional.of(new Vector(solver.originX + x / mass, solver.originY + y / mass))
                : Optional.empty();
    }
}
