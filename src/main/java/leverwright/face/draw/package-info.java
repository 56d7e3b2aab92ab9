/**
 * Drawings of results: charts and figures of the posture.
 *
 * <p>A drawing is a {@link leverwright.face.draw.Picture}: marks (lines, areas, words) in {@link leverwright.face.draw.Ink
 * inks}, in a frame with x to the right and y downwards, one unit being one CSS pixel at natural size. It is painted onto
 * any {@link java.awt.Graphics2D} in a {@link leverwright.face.draw.Palette}, or written as SVG whose colours are variables
 * of a style sheet, so that one drawing serves light, dark and paper. Layout needs no installed font and is the same on
 * every machine. Values arrive in SI units and are shown in the unit that stands beside them; nothing is computed here
 * but places on the page.
 */
@NullMarked
package leverwright.face.draw;

import org.jspecify.annotations.NullMarked;
