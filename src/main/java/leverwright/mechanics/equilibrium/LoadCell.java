package leverwright.mechanics.equilibrium;

import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.LoadPoint;

/** A load on its body, and what a solve finds for it: place from the first link's start, m, and force, N. */
final class LoadCell {
    Load load;
    Body body;
    double x;
    double y;
    double forceX;
    double forceY;

    LoadCell(Load load, Body body) {
        this.load = load;
        this.body = body;
    }

    /** Finds the force and adds it to its body; call when all bodies are placed. */
    void apply(double originX, double originY, double gravityX, double gravityY, double gravity, boolean moving) {
        Body on = body;
        double along = load.at().along();
        double across = load.at().across();
        double armX = along * on.rotation.cosine() - across * on.rotation.sine();
        double armY = along * on.rotation.sine() + across * on.rotation.cosine();
        x = on.startX + armX;
        y = on.startY + armY;
        LoadPoint point = new LoadPoint(
                originX + x,
                originY + y,
                on.rotation.cosine(),
                on.rotation.sine(),
                moving ? on.startAccelerationX + on.turnX(armX, armY) : 0,
                moving ? on.startAccelerationY + on.turnY(armX, armY) : 0,
                gravityX,
                gravityY,
                gravity);
        forceX = load.forceX(point);
        forceY = load.forceY(point);
        on.add(armX, armY, forceX, forceY, load.couple());
    }
}
