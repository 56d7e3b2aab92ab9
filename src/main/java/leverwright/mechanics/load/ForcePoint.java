package leverwright.mechanics.load;

import leverwright.mechanics.numeric.Require;

/**
 * A force measured at a position.
 *
 * @param position m; of a band its stretch
 * @param force N, 0 to {@link Load#GREATEST_FORCE}
 */
public record ForcePoint(double position, double force) {
    /**
     * Makes a point.
     *
     * @throws IllegalArgumentException if a number is outside its range or not a number
     */
    public ForcePoint {
        Require.within(position, -100, 100, "position of a measured force", "m");
        Require.within(force, 0, Load.GREATEST_FORCE, "measured force", "N");
    }
}
