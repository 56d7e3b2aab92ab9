/**
 * Loads on a linkage, and the resistances behind them. Each load yields a force at a place of a link, and may carry a couple
 * besides.
 *
 * <p><b>Concept.</b> Weights ({@link leverwright.mechanics.load.MassLoad}, also a vest), given forces, couples and pads need no
 * model. What depends on how far and how fast it is moved is a {@link leverwright.mechanics.load.Resistance}: cable, band,
 * chains, sled, a partner, measured handle forces; a {@link leverwright.mechanics.load.LineLoad} lets it pull towards an anchor,
 * a {@link leverwright.mechanics.load.RailLoad} along a fixed direction. A
 * {@link leverwright.mechanics.load.LeverLoad} is a machine's lever, whose axis may lie off the joint's. Combine them by giving
 * a linkage several.
 *
 * <p><b>Energy.</b> Power into a load = growth of what it stores + what it turns into heat, at every instant; a load given from
 * outside stores nothing.
 *
 * <p><b>Frame and signs.</b> x forward, y up; couples counter-clockwise positive. Forces act <i>on</i> the link. Positions,
 * speeds and accelerations of a resistance grow against it; its force opposes that.
 *
 * <p><b>Units.</b> kg, N, N·m, m, N/m. Loads are for both sides together, like the masses of the links.
 */
@NullMarked
package leverwright.mechanics.load;

import org.jspecify.annotations.NullMarked;
