/**
 * Planar linkages built at run time: links, how they hang together, the directions they take, and where that puts every
 * joint and mass centre.
 *
 * <p><b>Concept.</b> A {@link leverwright.mechanics.posture.Linkage} is a tree of rigid
 * {@link leverwright.mechanics.posture.Link links}. The first link starts at the origin; every other one starts at a joint
 * on its parent, usually at the parent's {@code next} place. A chain is the case without branches; arms on a trunk whose head
 * rides along are a branch. A {@link leverwright.mechanics.posture.Configuration} holds the origin and the direction of
 * every link (and, for motion, angular velocity and acceleration); a {@link leverwright.mechanics.posture.Placement} tells
 * where everything then lies.
 *
 * <pre>{@code
 * Linkage arm = Linkage.builder()
 *         .start(new Link("upper arm", 2, 3.3, 0.29, new Place(0.17, 0), new Place(0.29, 0), 0.03))
 *         .then(new Link("forearm", 2, 2.0, 0.26, new Place(0.11, 0), new Place(0.26, 0), 0.01))
 *         .build();
 * Placement where = Placement.of(arm, Configuration.at(arm, Vector.ZERO, -1.5, 0.2));
 * Vector elbow = where.start("forearm");
 * }</pre>
 *
 * <p><b>Frame and signs.</b> x forward, y up; angles counter-clockwise positive. The direction of a link is the angle of its
 * axis, from its start joint to its end, from +x. A {@link leverwright.mechanics.posture.Place} on a link is measured along
 * the axis and across it (left of the axis, seen along it): world = start + along·(cos d, sin d) + across·(−sin d, cos d).
 *
 * <p><b>Units.</b> m, kg, kg·m², rad, rad/s, rad/s². Masses and inertias are those of both sides together; {@code sides} (1
 * or 2) tells by how many to divide for one side.
 */
@NullMarked
package leverwright.mechanics.posture;

import org.jspecify.annotations.NullMarked;
