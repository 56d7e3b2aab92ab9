package leverwright.mechanics.load;

import leverwright.mechanics.numeric.Trigonometry;

/**
 * What a load may depend on: the state of the point where it acts.
 *
 * @param x its place in the world forward, m
 * @param y its place in the world upward, m
 * @param cosine cosine of the link's direction
 * @param sine sine of the link's direction
 * @param accelerationX its acceleration forward, m/s²
 * @param accelerationY its acceleration upward, m/s²
 * @param velocityX its velocity forward, m/s
 * @param velocityY its velocity upward, m/s
 * @param angularVelocity of the link, rad/s, counter-clockwise positive
 * @param angularAcceleration of the link, rad/s², counter-clockwise positive
 * @param gravityX gravity's pull forward, m/s²
 * @param gravityY gravity's pull upward, m/s²: −9.80665 as a rule
 * @param gravity size of gravity's pull, m/s²
 */
public record LoadPoint(
        double x,
        double y,
        double cosine,
        double sine,
        double accelerationX,
        double accelerationY,
        double velocityX,
        double velocityY,
        double angularVelocity,
        double angularAcceleration,
        double gravityX,
        double gravityY,
        double gravity) {
    /** Returns the state of a point at rest under standard gravity on a link whose axis has a direction, rad. */
    public static LoadPoint atRest(double x, double y, double direction) {
        double gravity = 9.80665;
        return new LoadPoint(
                x,
                y,
                Trigonometry.cosine(direction),
                Trigonometry.sine(direction),
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                -gravity,
                gravity);
    }

    /** Returns the power of a force and a couple on the link here, W. */
    public double power(double forceX, double forceY, double couple) {
        return forceX * velocityX + forceY * velocityY + couple * angularVelocity;
    }
}
