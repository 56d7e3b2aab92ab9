/**
 * Loads on a linkage: attached masses, forces, couples, cables, bands and pads. Each yields a force at a place of a link,
 * and may carry a couple besides.
 *
 * <p><b>Frame and signs.</b> x forward, y up; couples counter-clockwise positive. Forces act <i>on</i> the link.
 *
 * <p><b>Units.</b> kg, N, N·m, m, N/m. Loads are for both sides together, like the masses of the links.
 */
@NullMarked
package leverwright.mechanics.load;

import org.jspecify.annotations.NullMarked;
