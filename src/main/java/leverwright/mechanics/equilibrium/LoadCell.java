package leverwright.mechanics.equilibrium;

import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.LoadPoint;
import leverwright.mechanics.load.MassLoad;

/**
 * A load on its body, and what a solve finds for it: place from the first link's start, m, and force, N. Masses and forces,
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
    private boolean plain;

    double x;
    double y;
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

    /** Finds the force and adds it to its body; call when all bodies are placed. */
    void apply(double originX, double originY, double gravityX, double gravityY, double gravity, boolean moving) {
        Body on = body;
        double cosine = on.rotation.cosine();
        double sine = on.rotation.sine();
        double armX = along * cosine - across * sine;
        double armY = along * sine + across * cosine;
        x = on.startX + armX;
        y = on.startY + armY;
        double pullX = moving ? gravityX - (on.startAccelerationX + on.turnX(armX, armY)) : gravityX;
        double pullY = moving ? gravityY - (on.startAccelerationY + on.turnY(armX, armY)) : gravityY;
        if (plain) {
            forceX = fixedX + mass * pullX;
            forceY = fixedY + mass * pullY;
        } else {
            ask(new LoadPoint(
                    originX + x,
                    originY + y,
                    cosine,
                    sine,
                    gravityX - pullX,
                    gravityY - pullY,
                    moving ? on.startVelocityX - on.velocity * armY : 0,
                    moving ? on.startVelocityY + on.velocity * armX : 0,
                    moving ? on.velocity : 0,
                    moving ? on.acceleration : 0,
                    gravityX,
                    gravityY,
                    gravity));
        }
        on.add(armX, armY, forceX, forceY, couple);
    }

    private void ask(LoadPoint point) {
        forceX = load.forceX(point);
        forceY = load.forceY(point);
        couple = load.couple(point);
    }
}
