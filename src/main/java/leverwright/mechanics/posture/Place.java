package leverwright.mechanics.posture;

import leverwright.mechanics.numeric.Require;

/**
 * A point on a link, measured from its start joint.
 *
 * @param along distance along the link's axis, m, within ±{@link Link#GREATEST_LENGTH}
 * @param across distance across it, positive to the left seen along the axis, m, within the same range
 */
public record Place(double along, double across) {
    /** The start joint itself. */
    public static final Place START = new Place(0, 0);

    /**
     * Makes a place.
     *
     * @throws IllegalArgumentException if a distance is outside its range or not a number
     */
    public Place {
        Require.within(along, -Link.GREATEST_LENGTH, Link.GREATEST_LENGTH, "distance along a link", "m");
        Require.within(across, -Link.GREATEST_LENGTH, Link.GREATEST_LENGTH, "distance across a link", "m");
    }

    /** Returns the place at a distance along the axis, on the axis. */
    public static Place along(double along) {
        return new Place(along, 0);
    }
}
