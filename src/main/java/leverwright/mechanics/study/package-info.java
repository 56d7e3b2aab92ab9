/**
 * Studies of an exercise: what becomes of its results when settings change.
 *
 * <p><b>Concept.</b> A {@link leverwright.mechanics.study.Sweep} turns one knob through a range, everything else set the
 * same, and reads quantities off every posture on the way. Where no posture has a setting, or the lifter would fall, the
 * curves have gaps, and a note says where and why.
 *
 * <p><b>Frame, signs, units.</b> Those of the {@link leverwright.mechanics.exercise readings}; SI and radians inside.
 */
@NullMarked
package leverwright.mechanics.study;

import org.jspecify.annotations.NullMarked;
