package leverwright.mechanics.bulk;

import java.util.Arrays;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.MassLoad;

/** Solves points one after another by the solver for a single one. */
final class PointByPoint {
    private final BulkStatics plan;
    private final BulkSolution found;
    private final LinkageSolver solver;

    PointByPoint(BulkStatics plan, BulkSolution found) {
        this.plan = plan;
        this.found = found;
        solver = LinkageSolver.of(plan.linkage, plan.loads, plan.support)
                .gravity(plan.gravityX, plan.gravityY)
                .origin(plan.originX, plan.originY);
    }

    void solve(int from, int to) {
        for (int i = from; i < to; i++) {
            set(i);
            try {
                solver.solve();
            } catch (IllegalArgumentException cannotBeHeld) {
                fill(i);
                continue;
            }
            read(i);
        }
    }

    private void set(int i) {
        for (int k = 0; k < plan.linkage.size(); k++) {
            solver.direction(k, plan.directions[k].at(i));
            solver.mass(k, plan.masses[k].at(i));
        }
        for (int l = 0; l < plan.loads.size(); l++) {
            if (plan.loads.get(l) instanceof MassLoad) {
                solver.loadMass(l, plan.loadMasses[l].at(i));
            } else if (plan.loads.get(l) instanceof ForceLoad) {
                solver.loadForce(l, plan.forcesX[l].at(i), plan.forcesY[l].at(i));
            }
        }
        if (plan.freeForce != null) {
            solver.freeForce(plan.freeForce.at(i));
        }
    }

    private void read(int i) {
        for (int k = 1; k < plan.linkage.size(); k++) {
            found.moment(k)[i] = solver.moment(k);
            if (found.hasForces()) {
                found.forceX(k)[i] = solver.forceX(k);
                found.forceY(k)[i] = solver.forceY(k);
            }
        }
        found.centreOfPressure()[i] = solver.centreOfPressure();
    }

    private void fill(int i) {
        for (int k = 1; k < plan.linkage.size(); k++) {
            Arrays.fill(found.moment(k), i, i + 1, Double.NaN);
            if (found.hasForces()) {
                Arrays.fill(found.forceX(k), i, i + 1, Double.NaN);
                Arrays.fill(found.forceY(k), i, i + 1, Double.NaN);
            }
        }
        found.centreOfPressure()[i] = Double.NaN;
    }
}
