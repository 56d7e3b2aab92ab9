package leverwright.mechanics.posture;

import leverwright.mechanics.numeric.Require;

/**
 * One rigid link.
 *
 * @param name its name, not blank, unique within a linkage
 * @param sides 1, or 2 for a pair lumped into one: masses and inertia are those of both together
 * @param mass kg, 0 to {@link #GREATEST_MASS}
 * @param length distance that its axis spans, m, greater than 0, at most {@link #GREATEST_LENGTH}
 * @param centre where its mass centre lies
 * @param next where the following link is joined, unless the linkage says otherwise
 * @param inertia about the mass centre, kg·m², 0 to {@link #GREATEST_INERTIA}
 */
public record Link(String name, int sides, double mass, double length, Place centre, Place next, double inertia) {
    /** Greatest mass of a link, kg: beyond any body or machine part meant here. */
    public static final double GREATEST_MASS = 10_000;
    /** Greatest length of a link and greatest distance of a place on it, m. */
    public static final double GREATEST_LENGTH = 100;
    /** Greatest moment of inertia of a link, kg·m². */
    public static final double GREATEST_INERTIA = 1.0e6;

    /**
     * Makes a link.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public Link {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a link has a blank name; give each link a name of its own");
        }
        if (sides != 1 && sides != 2) {
            throw new IllegalArgumentException(
                    "sides of link \"" + name + "\" is " + sides + "; allowed: 1, or 2 for a pair");
        }
        Require.within(mass, 0, GREATEST_MASS, "mass of link \"" + name + "\"", "kg");
        Require.positive(length, GREATEST_LENGTH, "length of link \"" + name + "\"", "m");
        Require.within(inertia, 0, GREATEST_INERTIA, "inertia of link \"" + name + "\"", "kg m^2");
    }
}
