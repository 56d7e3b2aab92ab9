package leverwright.mechanics.equilibrium;

/** How large the sums are at a solver's joints, and how far its two cuts disagree. */
final class Rounding {
    private Rounding() {}

    static double scale(LinkageSolver solver) {
        double largest = 0;
        for (int k = 1; k < solver.linkage.size(); k++) {
            largest = Math.max(largest, scaleAt(solver, solver.bodies[k].startX, solver.bodies[k].startY));
        }
        return largest;
    }

    private static double scaleAt(LinkageSolver solver, double x, double y) {
        double sum = 0;
        for (Body body : solver.bodies) {
            sum += Math.abs((body.centreX() - x) * body.weightY(solver.gravityY)
                            - (body.centreY() - y) * body.weightX(solver.gravityX))
                    + Math.abs(body.inertiaCouple());
        }
        for (LoadCell cell : solver.loads) {
            sum += Math.abs((cell.x() - x) * cell.forceY - (cell.y() - y) * cell.forceX) + Math.abs(cell.couple);
        }
        for (Hold hold : solver.reactions.all()) {
            sum += Math.abs((hold.atX - x) * hold.forceY - (hold.atY - y) * hold.forceX) + Math.abs(hold.couple);
        }
        return sum;
    }

    static double closure(LinkageSolver solver, double scale) {
        double largest = 0;
        for (int k = 1; k < solver.linkage.size(); k++) {
            largest = Math.max(largest, Math.abs(solver.moment(k) - solver.supportSideMoment(k)));
        }
        return scale > 0 ? largest / scale : 0;
    }
}
