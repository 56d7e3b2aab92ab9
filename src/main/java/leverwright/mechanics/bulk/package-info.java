/**
 * Statics over arrays: one linkage, built at run time, solved for very many settings at once.
 *
 * <p><b>Concept.</b> {@link leverwright.mechanics.bulk.BulkStatics} takes a linkage, its loads and its support as
 * {@link leverwright.mechanics.equilibrium.LinkageSolver} does, and for what changes from point to point a
 * {@link leverwright.mechanics.bulk.Column} of numbers. It works block by block through short loops that compilers turn into
 * vector instructions. Every number is the same, to the last bit, as the solver gives for that point alone: both do the same
 * operations in the same order. What the block loops cannot do is left to the solver, point by point.
 *
 * <p><b>Frame, signs, units.</b> Those of {@link leverwright.mechanics.equilibrium}: x forward, y up, counter-clockwise
 * positive; SI and radians, both sides together.
 */
@NullMarked
package leverwright.mechanics.bulk;

import org.jspecify.annotations.NullMarked;
