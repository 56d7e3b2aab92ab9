package leverwright.mechanics.equilibrium;

import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.LoadPoint;
import leverwright.mechanics.load.MassLoad;
import org.jspecify.annotations.Nullable;

/**
 * A load on its body, and what a solve finds for it: its force, N. Masses and forces,
 * whose numbers change most, are kept as numbers, so that changing one makes no object; the others are asked for their force.
 */
final class LoadCell {
    Load load;
    Body body;
    double along;
    double across;
    double couple;
    double mass;
    double fixedX;
    double fixedY;
    /** Whether the force depends on the numbers above alone, and not on the posture. */
    boolean plain;
    /** The next load on the same body; null for the last. */
    @Nullable
    LoadCell next;

    double forceX;
    double forceY;

    LoadCell(Load load, Body body) {
        this.load = load;
        this.body = body;
        take(load);
    }

    /** Takes another load's numbers. */
    void take(Load other) {
        load = other;
        along = other.at().along();
        across = other.at().across();
        couple = other.couple();
        mass = other.attachedMass();
        boolean force = other instanceof ForceLoad;
        fixedX = force ? ((ForceLoad) other).x() : 0;
        fixedY = force ? ((ForceLoad) other).y() : 0;
        plain = force || other instanceof MassLoad;
    }

    /** Finds the force and adds it to its body; a load that depends on its place needs all bodies placed. */
    void apply(LinkageSolver solver, boolean moving) {
        Body on = body;
        double armX = armX();
        double armY = armY();
        double pullX = solver.gravityX;
        double pullY = solver.gravityY;
        if (moving) {
            pullX -= on.startAccelerationX + on.turnX(armX, armY);
            pullY -= on.startAccelerationY + on.turnY(armX, armY);
        }
        if (plain) {
            forceX = fixedX + mass * pullX;
            forceY = fixedY + mass * pullY;
        } else {
            ask(solver.pointAt(this, armX, armY, pullX, pullY, moving));
        }
        on.add(armX, armY, forceX, forceY, couple);
    }

    private double armX() {
        return along * body.cosine() - across * body.sine();
    }

    private double armY() {
        return along * body.sine() + across * body.cosine();
    }

    /** Forward place from the first link's start; for a placed body. */
    double x() {
        return body.startX + armX();
    }

    /** Upward place from the first link's start; for a placed body. */
    double y() {
        return body.startY + armY();
    }

    private void ask(LoadPoint point) {
        forceX = load.forceX(point);
        forceY = load.forceY(point);
        couple = load.couple(point);
    }
}
