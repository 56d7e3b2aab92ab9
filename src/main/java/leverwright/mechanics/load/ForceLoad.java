package leverwright.mechanics.load;

import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.posture.Place;

/**
 * A force fixed in the world, whatever the link does.
 *
 * @param on name of the link
 * @param at where on the link
 * @param x forward part, N, within ±{@link Load#GREATEST_FORCE}
 * @param y upward part, N, within the same range
 * @param couple N·m
 */
public record ForceLoad(String on, Place at, double x, double y, double couple) implements Load {
    /**
     * Makes the load.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public ForceLoad {
        Require.within(x, -GREATEST_FORCE, GREATEST_FORCE, "forward part of a force", "N");
        Require.within(y, -GREATEST_FORCE, GREATEST_FORCE, "upward part of a force", "N");
        Load.couple(couple, on);
    }

    /** Makes the load without a couple. */
    public ForceLoad(String on, Place at, double x, double y) {
        this(on, at, x, y, 0);
    }

    @Override
    public ForceLoad withCouple(double newCouple) {
        return new ForceLoad(on, at, x, y, newCouple);
    }

    @Override
    public double forceX(LoadPoint point) {
        return x;
    }

    @Override
    public double forceY(LoadPoint point) {
        return y;
    }

    @Override
    public String kind() {
        return "force";
    }
}
