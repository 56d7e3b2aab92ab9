package leverwright.mechanics.equilibrium;

import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;

/**
 * The forces that hold a linkage: one, or two for two contacts. Places are from the first link's start, m; forces N; couples
 * N·m. A ground that would have to pull stands here as its force at the start of its link with the couple that closes.
 */
final class Reactions {
    final Support support;
    final int count;
    final int[] links;
    private final Place[] places;
    final double[] atX;
    final double[] atY;
    final double[] forceX;
    final double[] forceY;
    final double[] couples;
    boolean pushes;
    private final double tangentX;
    private final double tangentY;
    private double freeForce;

    private Reactions(Support support, int[] links, Place[] places, double axis, double freeForce) {
        this.support = support;
        this.count = links.length;
        this.links = links;
        this.places = places;
        this.tangentX = Trigonometry.cosine(axis);
        this.tangentY = Trigonometry.sine(axis);
        this.freeForce = freeForce;
        atX = new double[count];
        atY = new double[count];
        forceX = new double[count];
        forceY = new double[count];
        couples = new double[count];
    }

    static Reactions of(Support support, Linkage linkage) {
        if (support instanceof GroundSupport ground) {
            return new Reactions(support, new int[] {linkage.indexOf(ground.on())}, new Place[] {Place.START}, 0, 0);
        }
        if (support instanceof FixedSupport fixed) {
            return new Reactions(support, new int[] {linkage.indexOf(fixed.on())}, new Place[] {fixed.at()}, 0, 0);
        }
        TwoContacts two = (TwoContacts) support;
        return new Reactions(
                support,
                new int[] {
                    linkage.indexOf(two.first().on()),
                    linkage.indexOf(two.second().on())
                },
                new Place[] {two.first().at(), two.second().at()},
                two.axis(),
                two.freeForce());
    }

    void freeForce(double force) {
        if (count != 2) {
            throw new IllegalArgumentException(
                    "a free force of " + force + " N was set, but the support is not two contacts");
        }
        freeForce = force;
    }

    double freeForce() {
        return freeForce;
    }

    /** Finds the reaction to forces (x, y) with a moment about the first link's start. */
    void solve(LinkageSolver solver, double x, double y, double moment) {
        for (int r = 0; r < count; r++) {
            place(solver, r);
        }
        if (count == 2) {
            solveTwo(x, y, moment);
            return;
        }
        forceX[0] = -x;
        forceY[0] = -y;
        if (support instanceof GroundSupport) {
            // the point (c, −originY), from the first link's start, about which all moments vanish
            double c = (moment - solver.originY * x) / y;
            pushes = y < 0 && Math.abs(c) < Double.MAX_VALUE;
            if (pushes) {
                atX[0] = c;
                atY[0] = -solver.originY;
                couples[0] = 0;
                return;
            }
        }
        couples[0] = -(moment - (atX[0] * y - atY[0] * x));
    }

    private void place(LinkageSolver solver, int r) {
        int k = links[r];
        Place at = places[r];
        atX[r] = solver.startX[k] + (at.along() * solver.cosines[k] - at.across() * solver.sines[k]);
        atY[r] = solver.startY[k] + (at.along() * solver.sines[k] + at.across() * solver.cosines[k]);
    }

    /** First contact's force h·t + v·n, t tangent, n normal: v from the moments about the second contact, then the rest. */
    private void solveTwo(double x, double y, double moment) {
        double leverX = atX[0] - atX[1];
        double leverY = atY[0] - atY[1];
        double normalLever = leverX * tangentX + leverY * tangentY; // lever × n
        double size = Math.abs(leverX) + Math.abs(leverY);
        if (!(Math.abs(normalLever) > 1e-9 * (size + 1e-3))) {
            throw new IllegalArgumentException("the two contacts lie " + normalLever
                    + " m apart along their surface; allowed: apart by more, else they cannot hold a moment");
        }
        double about = moment - (atX[1] * y - atY[1] * x);
        double free = freeForce * (leverX * tangentY - leverY * tangentX);
        double normal = -(about + free) / normalLever;
        forceX[0] = freeForce * tangentX - normal * tangentY;
        forceY[0] = freeForce * tangentY + normal * tangentX;
        forceX[1] = -x - forceX[0];
        forceY[1] = -y - forceY[0];
    }

    /** Returns the part of a contact's force along the tangent, N. */
    double tangential(int r) {
        return forceX[r] * tangentX + forceY[r] * tangentY;
    }

    /** Returns the part of a contact's force along the normal, N; positive pushes. */
    double normal(int r) {
        return forceY[r] * tangentX - forceX[r] * tangentY;
    }

    boolean balanced(LinkageSolver solver) {
        if (support instanceof FixedSupport) {
            return true;
        }
        if (count == 2) {
            return normal(0) >= 0 && normal(1) >= 0;
        }
        int k = links[0];
        double start = solver.startX[k];
        double end = start + solver.linkage.link(k).length() * solver.cosines[k];
        return pushes && atX[0] >= Math.min(start, end) && atX[0] <= Math.max(start, end);
    }
}
