package leverwright.mechanics.equilibrium;

/** How large the sums are at a solver's joints, and how far its two cuts disagree. */
final class Rounding {
    private Rounding() {}

    static double scale(LinkageSolver solver) {
        double largest = 0;
        for (int k = 1; k < solver.linkage.size(); k++) {
            largest = Math.max(largest, scaleAt(solver, solver.startX[k], solver.startY[k]));
        }
        return largest;
    }

    private static double scaleAt(LinkageSolver solver, double x, double y) {
        double sum = 0;
        for (int k = 0; k < solver.linkage.size(); k++) {
            sum += Math.abs((solver.centreX[k] - x) * solver.weightY[k] - (solver.centreY[k] - y) * solver.weightX[k])
                    + Math.abs(solver.inertiaCouples[k]);
        }
        for (int l = 0; l < solver.loads.length; l++) {
            sum += Math.abs((solver.loadX[l] - x) * solver.loadForceY[l] - (solver.loadY[l] - y) * solver.loadForceX[l])
                    + Math.abs(solver.loads[l].couple());
        }
        Reactions held = solver.reactions;
        for (int r = 0; r < held.count; r++) {
            sum += Math.abs((held.atX[r] - x) * held.forceY[r] - (held.atY[r] - y) * held.forceX[r])
                    + Math.abs(held.couples[r]);
        }
        return sum;
    }

    static double closure(LinkageSolver solver) {
        double largest = 0;
        for (int k = 1; k < solver.linkage.size(); k++) {
            largest = Math.max(largest, Math.abs(solver.jointMoment[k] - solver.otherMoment[k]));
        }
        double scale = scale(solver);
        return scale > 0 ? largest / scale : 0;
    }
}
