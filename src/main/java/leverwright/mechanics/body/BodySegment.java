package leverwright.mechanics.body;

/**
 * A rigid part of a lifter's body as statics and dynamics need it: both sides of a pair together.
 *
 * @param name its name in print, as in "thigh"
 * @param sides 2 for a pair, whose masses and inertia are summed here; 1 for the trunk and its parts
 * @param mass kg, both sides together
 * @param length from its start to its end, m
 * @param centre mass centre from the start along the axis, m
 * @param across mass centre 90° counter-clockwise from the axis, m; 0 but for the foot, whose centre lies above the sole
 * @param inertia about the mass centre and the transverse axis, kg·m², both sides together
 */
public record BodySegment(
        String name, int sides, double mass, double length, double centre, double across, double inertia) {

    /** Returns the same part named from its other end: a thigh from knee to hip, for a chain that starts at the ground. */
    public BodySegment turned() {
        return new BodySegment(name, sides, mass, length, length - centre, -across, inertia);
    }

    /** Returns the mass of one of a pair, or of the single part, kg. */
    public double massOfOne() {
        return mass / sides;
    }
}
