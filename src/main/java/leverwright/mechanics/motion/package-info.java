/**
 * How a linkage moves: velocities and accelerations of its places, energy, and joint power.
 *
 * <p><b>Concept.</b> The origin of the linkage stands still unless it is told to move; each link turns with its own angular
 * velocity ω and angular acceleration α. A point at r from the start of its link has velocity v_start + ω × r and
 * acceleration a_start + α × r − ω²·r. The forces of motion, −m·a and −I·α, enter the equilibrium as forces beside the
 * weights: see {@link leverwright.mechanics.equilibrium.LinkageSolver}, which takes the same angular velocities and
 * accelerations.
 *
 * <p>A {@link leverwright.mechanics.motion.LinkagePath} is the smooth way through a range of postures,
 * {@link leverwright.mechanics.motion.Repeating} goes along it and back at a
 * {@link leverwright.mechanics.motion.Tempo}, each way by {@link leverwright.mechanics.motion.MinimumJerk minimum jerk}, and
 * {@link leverwright.mechanics.motion.Energies} is its energy account.
 *
 * <p><b>Frame, signs, units.</b> x forward, y up, counter-clockwise positive; m, s, kg, rad, J, W. Joint power is the moment
 * that the parent exerts on the child times the child's angular velocity relative to the parent, both counter-clockwise:
 * positive when the joint puts energy into the linkage.
 */
@NullMarked
package leverwright.mechanics.motion;

import org.jspecify.annotations.NullMarked;
