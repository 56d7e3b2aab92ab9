package leverwright.mechanics.numeric;

/**
 * A vector, or a point, of the plane of movement: x forward, y up, in any one unit.
 *
 * @param x component forward
 * @param y component up
 */
public record Vector(double x, double y) {
    /** The zero vector. */
    public static final Vector ZERO = new Vector(0, 0);

    /**
     * Makes a vector.
     *
     * @throws IllegalArgumentException if a component is not a finite number
     */
    public Vector {
        Require.finite(x, "x component of a vector", "");
        Require.finite(y, "y component of a vector", "");
    }

    /**
     * Returns the unit vector at an angle.
     *
     * @param angle counter-clockwise from forward, rad
     */
    public static Vector unit(double angle) {
        return new Vector(Trigonometry.cosine(angle), Trigonometry.sine(angle));
    }

    /** Returns this + other. */
    public Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y);
    }

    /** Returns this − other. */
    public Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y);
    }

    /** Returns this vector times a number. */
    public Vector times(double factor) {
        return new Vector(x * factor, y * factor);
    }

    /** Returns the scalar product. */
    public double dot(Vector other) {
        return x * other.x + y * other.y;
    }

    /**
     * Returns x·other.y − y·other.x: for a lever r and a force F, {@code r.cross(F)} is the moment of F about the lever's
     * foot, counter-clockwise positive.
     */
    public double cross(Vector other) {
        return x * other.y - y * other.x;
    }

    /** Returns the length, never negative. */
    public double length() {
        return Math.sqrt(x * x + y * y);
    }

    /** Returns the angle of this vector from forward, counter-clockwise, in (−π, π], rad; 0 for the zero vector. */
    public double angle() {
        return Trigonometry.arcTangent(y, x);
    }
}
