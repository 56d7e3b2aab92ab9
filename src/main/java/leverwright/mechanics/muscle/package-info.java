/**
 * Muscles: what each could pull, and how those of a joint share its moment.
 *
 * <p><b>Concept.</b> A {@link leverwright.mechanics.muscle.Muscle} pulls with an arm about one or two
 * {@link leverwright.mechanics.muscle.Axis axes}; its arm is a curve over the joints' angles, its capacity area × specific
 * tension × length factor × cos pennation × speed factor. More muscles than joints leave the forces open: a
 * {@link leverwright.mechanics.muscle.SharingRule} closes them. {@link leverwright.mechanics.muscle.Sharing} solves that;
 * {@link leverwright.mechanics.muscle.CubicSharing} is its quick way.
 *
 * <p><b>Signs.</b> An arm is positive where the muscle's pull makes the positive action of its axis: extension, plantarflexion,
 * abduction of the hip, horizontal adduction of the shoulder. Flexion angles as in
 * {@link leverwright.mechanics.body.Joint}.
 *
 * <p><b>Units.</b> m, m², N, N·m, Pa, rad; per side for limbs, both sides together for the trunk.
 *
 * <p><b>Numbers.</b> Data files, one row a number with source and reading status; docs/muscles.md lists them all.
 */
@NullMarked
package leverwright.mechanics.muscle;

import org.jspecify.annotations.NullMarked;
