package leverwright.mechanics.equilibrium;

import java.util.List;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import org.jspecify.annotations.Nullable;

/**
 * The forces that hold a linkage: one, or two for two contacts. A ground that would have to pull stands here as its force at
 * the start of its link with the couple that closes.
 */
final class Reactions {
    final Support support;
    final Hold first;
    final @Nullable Hold second;
    private final boolean ground;
    /** Whether ground pushes. */
    boolean pushes;

    private final double tangentX;
    private final double tangentY;
    private double freeForce;

    private Reactions(Support support, Hold first, @Nullable Hold second, double axis, double freeForce) {
        this.support = support;
        this.first = first;
        this.second = second;
        this.ground = support instanceof GroundSupport;
        this.tangentX = Trigonometry.cosine(axis);
        this.tangentY = Trigonometry.sine(axis);
        this.freeForce = freeForce;
    }

    static Reactions of(Support support, Linkage linkage) {
        if (support instanceof GroundSupport ground) {
            return new Reactions(support, new Hold(linkage, ground.on(), Place.START), null, 0, 0);
        }
        if (support instanceof FixedSupport fixed) {
            return new Reactions(support, new Hold(linkage, fixed.on(), fixed.at()), null, 0, 0);
        }
        TwoContacts two = (TwoContacts) support;
        return new Reactions(
                support,
                new Hold(linkage, two.first().on(), two.first().at()),
                new Hold(linkage, two.second().on(), two.second().at()),
                two.axis(),
                two.freeForce());
    }

    /** Returns the one or two forces. */
    List<Hold> all() {
        Hold other = second;
        return other == null ? List.of(first) : List.of(first, other);
    }

    /** Tells whether ground carries the first link, where nothing but sums is needed to find its force. */
    boolean groundOnFirst() {
        return ground && first.link == 0;
    }

    /** Returns the second of two contacts. */
    Hold second() {
        if (second == null) {
            throw new IllegalArgumentException(
                    "a free force or friction was asked for, but the support is not two contacts");
        }
        return second;
    }

    void freeForce(double force) {
        second();
        freeForce = force;
    }

    double freeForce() {
        return freeForce;
    }

    /** Finds the reaction to forces (x, y) with a moment about the first link's start. */
    void solve(Body[] bodies, double originY, double x, double y, double moment) {
        if (ground) {
            // the point (c, −originY), from the first link's start, about which all moments vanish
            double c = (moment - originY * x) / y;
            pushes = y < 0 && Math.abs(c) < Double.MAX_VALUE;
            if (pushes) {
                first.atX = c;
                first.atY = -originY;
                first.couple = 0;
                first.force(-x, -y, -moment);
                return;
            }
        }
        first.place(bodies[first.link]);
        if (second == null) {
            first.couple = -(moment - (first.atX * y - first.atY * x));
            first.force(-x, -y);
        } else {
            second.place(bodies[second.link]);
            solveTwo(first, second, x, y, moment);
        }
    }

    /** First contact's force h·t + v·n, t tangent, n normal: v from the moments about the second contact, then the rest. */
    private void solveTwo(Hold one, Hold two, double x, double y, double moment) {
        double leverX = one.atX - two.atX;
        double leverY = one.atY - two.atY;
        double normalLever = leverX * tangentX + leverY * tangentY; // lever × n
        double size = Math.abs(leverX) + Math.abs(leverY);
        if (!(Math.abs(normalLever) > 1e-9 * (size + 1e-3))) {
            throw new IllegalArgumentException("the two contacts lie " + normalLever
                    + " m apart along their surface; allowed: apart by more, else they cannot hold a moment");
        }
        double about = moment - (two.atX * y - two.atY * x);
        double free = freeForce * (leverX * tangentY - leverY * tangentX);
        double normal = -(about + free) / normalLever;
        one.force(freeForce * tangentX - normal * tangentY, freeForce * tangentY + normal * tangentX);
        two.force(-x - one.forceX, -y - one.forceY);
    }

    /** Returns the part of a contact's force along the tangent, N. */
    double tangential(Hold hold) {
        return hold.forceX * tangentX + hold.forceY * tangentY;
    }

    /** Returns the part of a contact's force along the normal, N; positive pushes. */
    double normal(Hold hold) {
        return hold.forceY * tangentX - hold.forceX * tangentY;
    }

    boolean balanced(LinkageSolver solver) {
        if (support instanceof FixedSupport) {
            return true;
        }
        if (second != null) {
            return normal(first) >= 0 && normal(second) >= 0;
        }
        Body body = solver.bodies[first.link];
        double end = body.startX + solver.linkage.link(first.link).length() * body.cosine();
        return pushes && first.atX >= Math.min(body.startX, end) && first.atX <= Math.max(body.startX, end);
    }
}
