package leverwright.mechanics.load;

/**
 * What a load may depend on: the state of the point where it acts.
 *
 * @param x its place in the world forward, m
 * @param y its place in the world upward, m
 * @param cosine cosine of the link's direction
 * @param sine sine of the link's direction
 * @param accelerationX its acceleration forward, m/s²
 * @param accelerationY its acceleration upward, m/s²
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
        double gravityX,
        double gravityY,
        double gravity) {}
