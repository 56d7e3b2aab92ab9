/**
 * Free bodies of a linkage: the support's reaction, and at every joint the force and moment from both cuts; at rest and in
 * motion.
 *
 * <p><b>Use.</b> Build a {@link leverwright.mechanics.posture.Linkage}, list the loads, name the support, and either ask once
 * or keep a {@link leverwright.mechanics.equilibrium.LinkageSolver}, change its inputs and solve again (no objects are
 * made, but by a whole new load and by cables, bands and pads):
 *
 * <pre>{@code
 * Solution held = LinkageSolver.solve(arm, Configuration.at(arm, Vector.ZERO, -1.5, 0.2),
 *         List.of(new MassLoad("forearm", new Place(0.26, 0), 8)), new FixedSupport("upper arm", Place.START));
 * double elbow = held.joint("forearm").moment();          // N·m, of the upper arm on the forearm, both sides
 *
 * LinkageSolver solver = LinkageSolver.of(arm, loads, support);
 * for (double d = -1.5; d < 1.5; d += 0.01) {
 *     solver.direction(1, d).solve();
 *     curve.add(solver.moment(1));
 * }
 * }</pre>
 *
 * <p><b>What is solved.</b> On each link act its weight m·g at the mass centre, in motion −m·a there and the couple −I·α, the
 * loads on it, the support's reaction, and what its neighbours exert at the joints. Cutting joint k parts the linkage in two
 * free bodies. With F and M the sums of all forces on the part <i>beyond</i> the joint (link k and what hangs on it) and of
 * their moments about the joint, the parent exerts −F and −M on link k; summing over the <i>other</i> part instead gives +F
 * and +M. Both are computed, each from its own forces: the one from the last link
 * inwards, the other, with the support's reaction among its forces, from the first link outwards (in a tree by summing about
 * the first link's start and moving that sum to the joint). That they agree checks the sums, not the model.
 *
 * <p><b>Frame and signs.</b> x forward, y up; moments counter-clockwise positive. Force and moment of a joint are those that
 * the parent exerts on the child. The reaction is what the support exerts on the linkage.
 *
 * <p><b>Units.</b> N, N·m, m, both sides together; {@code sides} tells by how many to divide.
 *
 * <p><b>Source.</b> Newton's and Euler's equations for rigid bodies in the plane with d'Alembert's inertia forces, derived
 * here from free bodies; no printed formula was copied.
 */
@NullMarked
package leverwright.mechanics.equilibrium;

import org.jspecify.annotations.NullMarked;
