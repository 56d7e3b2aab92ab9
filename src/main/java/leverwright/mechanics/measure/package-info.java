/**
 * Typed quantities: what a number of a workbook is a number of.
 *
 * <p><b>Concept.</b> Each kind of quantity is an immutable record that holds a double in its SI unit (radians for
 * angles) and the half width of the band it is known within. Kinds are listed in {@link
 * leverwright.mechanics.measure.Dimension}, units in {@link leverwright.mechanics.measure.Unit}, the short words for
 * cells in {@link leverwright.mechanics.measure.Measures}, and reading and printing in {@link
 * leverwright.mechanics.measure.MeasureText}.
 *
 * <p><b>Sign and frame.</b> A measure has a sign but no direction; the quantity that carries it names its frame and its
 * positive direction. Angles turn counter-clockwise in the mechanics frame (x forward, y up) unless said otherwise.
 *
 * <p><b>Error.</b> Limits, not standard deviations: 45 ± 5° says that the angle lies between 40° and 50°. Arithmetic
 * returns the half width that encloses every result the operands' bands allow, each taken as independent.
 *
 * <p><b>Print.</b> No exponent within the range of the trade, nothing between thousands, the minus sign is U+2212, minus
 * zero does not exist. NaN and infinity are refused wherever a value is made.
 */
@NullMarked
package leverwright.mechanics.measure;

import org.jspecify.annotations.NullMarked;
