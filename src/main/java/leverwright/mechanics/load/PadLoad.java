package leverwright.mechanics.load;

import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.posture.Place;

/**
 * A pad that pushes at a right angle to its link and turns with it: force·(−sin d, cos d) to the left of the axis, or the
 * opposite to the right.
 *
 * @param on name of the link
 * @param at where on the link
 * @param force N, 0 to {@link Load#GREATEST_FORCE}
 * @param side to which side of the link's axis it pushes
 * @param couple N·m
 */
public record PadLoad(String on, Place at, double force, Side side, double couple) implements Load {
    /** The side of a link's axis, seen along it from its start. */
    public enum Side {
        /** To the left: (−sin d, cos d), sense 1. */
        LEFT(1),
        /** To the right: (sin d, −cos d), sense −1. */
        RIGHT(-1);

        private final int sense;

        Side(int sense) {
            this.sense = sense;
        }

        /** Returns 1 for left, −1 for right. */
        public int sense() {
            return sense;
        }
    }

    /**
     * Makes the load.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public PadLoad {
        Require.within(force, 0, GREATEST_FORCE, "force of a pad", "N");
        Load.couple(couple, on);
    }

    /** Makes the load without a couple. */
    public PadLoad(String on, Place at, double force, Side side) {
        this(on, at, force, side, 0);
    }

    @Override
    public PadLoad withCouple(double newCouple) {
        return new PadLoad(on, at, force, side, newCouple);
    }

    @Override
    public double forceX(LoadPoint point) {
        return side.sense * force * -point.sine();
    }

    @Override
    public double forceY(LoadPoint point) {
        return side.sense * force * point.cosine();
    }

    @Override
    public String kind() {
        return "pad";
    }
}
