package leverwright.mechanics.equilibrium;

import leverwright.mechanics.numeric.Rotation;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import org.jspecify.annotations.Nullable;

/**
 * One link as a free body: its geometry, its inputs, among them its rotation, and what a solve finds for it. Places are from the first link's start, m;
 * forces N, moments N·m.
 */
final class Body extends Rotation {
    /** The body that this one starts on; null for the first. */
    final @Nullable Body parent;
    /** Index of this body. */
    final int index;
    /** Index of the last body that hangs on this one. */
    final int last;
    /** Whether the load's side of this body's joint is the one before it, because the support lies beyond. */
    final boolean loadedBefore;

    final double centreAlong;
    final double centreAcross;
    final double jointAlong;
    final double jointAcross;
    /** Whether mass centre and joint lie on the axes of their links, as they mostly do: half the work. */
    final boolean straight;

    double mass;
    double inertia;
    double velocity;
    double acceleration;

    /** The loads on this body, in their order; null without. */
    @Nullable
    LoadCell loads;

    double startX;
    double startY;
    /** From the parent's start to this body's. */
    double jointX;

    double jointY;
    double startVelocityX;
    double startVelocityY;
    double startAccelerationX;
    double startAccelerationY;
    /** All that acts on this body but its neighbours; moment about its start. */
    double ownX;

    double ownY;
    double ownMoment;
    /** All that acts on this body and on what hangs on it; moment about its start. */
    double beyondX;

    double beyondY;
    double beyondMoment;
    /** All that acts on the other bodies; moment about this body's start. */
    double otherX;

    double otherY;
    double otherMoment;
    /** What branches that do not follow in order bring to this body, gathered while summing. */
    double branchX;

    double branchY;
    double branchMoment;
    /** The own forces summed over this body and all after it; moment about the first body's start. */
    double afterX;

    double afterY;
    double afterMoment;

    Body(Linkage linkage, int index, @Nullable Body parent, Reactions reactions) {
        Link link = linkage.link(index);
        this.parent = parent;
        this.index = index;
        last = linkage.lastOf(index);
        loadedBefore = reactions.second == null && reactions.first.link >= index && reactions.first.link <= last;
        centreAlong = link.centre().along();
        centreAcross = link.centre().across();
        jointAlong = linkage.attachment(index).along();
        jointAcross = linkage.attachment(index).across();
        straight = centreAcross == 0 && jointAcross == 0;
        mass = link.mass();
        inertia = link.inertia();
    }

    /** Whether the start, of the first body, moves. */
    boolean startMoves() {
        return startVelocityX != 0 || startVelocityY != 0 || startAccelerationX != 0 || startAccelerationY != 0;
    }

    /** Forward distance of the mass centre from the start. */
    double centreArmX() {
        return centreAlong * cosine() - centreAcross * sine();
    }

    /** Upward distance of the mass centre from the start. */
    double centreArmY() {
        return centreAlong * sine() + centreAcross * cosine();
    }

    double centreX() {
        return startX + centreArmX();
    }

    double centreY() {
        return startY + centreArmY();
    }

    /** Forward part of m·(g − a) at the mass centre. */
    double weightX(double gravityX) {
        return mass * (gravityX - (startAccelerationX + turnX(centreArmX(), centreArmY())));
    }

    /** Upward part of m·(g − a) at the mass centre. */
    double weightY(double gravityY) {
        return mass * (gravityY - (startAccelerationY + turnY(centreArmX(), centreArmY())));
    }

    /** The couple −I·α. */
    double inertiaCouple() {
        return -inertia * acceleration;
    }

    /** Starts the own forces with the weight at rest. */
    void weigh(double gravityX, double gravityY) {
        ownX = mass * gravityX;
        ownY = mass * gravityY;
        ownMoment = centreArmX() * ownY - centreArmY() * ownX;
    }

    /** Starts the own forces with the weight at rest under gravity straight down. */
    void hang(double gravityY) {
        double weight = mass * gravityY;
        ownX = 0;
        ownY = weight;
        ownMoment = straight ? centreAlong * cosine() * weight : centreArmX() * weight;
    }

    /** Starts the own forces with weight and inertia; call when placed and accelerated. */
    void weighMoving(double gravityX, double gravityY) {
        ownX = weightX(gravityX);
        ownY = weightY(gravityY);
        ownMoment = centreArmX() * ownY - centreArmY() * ownX + inertiaCouple();
    }

    /** Finds the way from the parent's start to this one's. */
    void reach(Body on) {
        double sine = on.sine();
        double cosine = on.cosine();
        double armX = jointAlong * cosine;
        double armY = jointAlong * sine;
        if (!straight) {
            armX -= jointAcross * sine;
            armY += jointAcross * cosine;
        }
        jointX = armX;
        jointY = armY;
    }

    /** Finds the start from the parent's. */
    void place() {
        Body on = parent;
        if (on != null) {
            reach(on);
            startX = on.startX + jointX;
            startY = on.startY + jointY;
        }
    }

    /** Finds how the start moves from how the parent moves; call when placed. */
    void accelerate() {
        Body on = parent;
        if (on != null) {
            startVelocityX = on.startVelocityX - on.velocity * jointY;
            startVelocityY = on.startVelocityY + on.velocity * jointX;
            startVelocityX = on.startVelocityX - on.velocity * jointY;
            startVelocityY = on.startVelocityY + on.velocity * jointX;
            startAccelerationX = on.startAccelerationX + on.turnX(jointX, jointY);
            startAccelerationY = on.startAccelerationY + on.turnY(jointX, jointY);
        }
    }

    /** Forward acceleration of a point at (x, y) from the start, relative to the start: α × r − ω²·r. */
    double turnX(double x, double y) {
        return -acceleration * y - velocity * velocity * x;
    }

    /** Upward acceleration of a point at (x, y) from the start, relative to the start: α × r − ω²·r. */
    double turnY(double x, double y) {
        return acceleration * x - velocity * velocity * y;
    }

    /** Adds a force at (x, y) from the start, and a couple. */
    void add(double x, double y, double forceX, double forceY, double couple) {
        ownX += forceX;
        ownY += forceY;
        ownMoment += x * forceY - y * forceX + couple;
    }

    /** Adds a force of the support to the own forces. */
    void hold(Hold hold) {
        ownX += hold.forceX;
        ownY += hold.forceY;
        ownMoment += hold.momentAbout(this);
    }

    /** Adds a force of the support to what acts beyond the joint. */
    void holdBeyond(Hold hold) {
        beyondX += hold.forceX;
        beyondY += hold.forceY;
        beyondMoment += hold.momentAbout(this);
    }
}
