package leverwright.mechanics.equilibrium;

/**
 * Level ground at y = 0 under one link: one force at a centre of pressure on y = 0, no couple. The ground can only push; the
 * linkage is balanced when it pushes at a point that lies, in x, between the link's start and the point {@code length} along
 * its axis.
 *
 * @param on name of the link that stands on the ground
 */
public record GroundSupport(String on) implements Support {}
