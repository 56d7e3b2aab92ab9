package leverwright.mechanics.equilibrium;

import leverwright.mechanics.posture.Place;

/**
 * A clamp: a force at a place of one link, and a couple.
 *
 * @param on name of the link that is held
 * @param at where on the link
 */
public record FixedSupport(String on, Place at) implements Support {}
