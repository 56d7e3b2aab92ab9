package leverwright.mechanics.equilibrium;

import leverwright.mechanics.load.Load;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Place;

/**
 * Two contacts without couples, as hands and feet in a push-up. Three equations cannot give four force components: the part
 * of the first contact's force along {@code axis} is free, and here given; the other three follow.
 *
 * @param first where the first contact acts; its force along the axis is {@code freeForce}
 * @param second where the second contact acts
 * @param axis direction of the surfaces' tangent, rad from forward: 0 for a level floor; the surfaces' normal is a right
 *     angle counter-clockwise from it
 * @param freeForce N, along the axis, on the linkage; within ±{@link Load#GREATEST_FORCE}
 */
public record TwoContacts(Contact first, Contact second, double axis, double freeForce) implements Support {
    /**
     * A contact.
     *
     * @param on name of the link that is touched
     * @param at where on the link
     */
    public record Contact(String on, Place at) {}

    /**
     * Makes the support.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public TwoContacts {
        Require.within(
                axis,
                -Configuration.GREATEST_DIRECTION,
                Configuration.GREATEST_DIRECTION,
                "direction of the contacts' tangent",
                "rad");
        Require.within(freeForce, -Load.GREATEST_FORCE, Load.GREATEST_FORCE, "free force of the first contact", "N");
    }

    /** Makes two contacts on a level floor, with the first one's force forward given, N. */
    public static TwoContacts onFloor(Contact first, Contact second, double forwardForceOfFirst) {
        return new TwoContacts(first, second, 0, forwardForceOfFirst);
    }
}
