/**
 * How everything on the desk looks: one place that knows every style sheet, and dresses the scene of each window in the
 * colours and the text size that the reader chose.
 *
 * <p>The colours are looked up by name, on the root of a scene, which carries the style class {@code desk} and that of the
 * chosen colours: {@code -ink} and {@code -quiet} for text, {@code -paper}, {@code -results-ground}, {@code -edge-ground} and
 * {@code -field} for grounds, {@code -line} and {@code -strong-line}, {@code -accent} and {@code -on-accent}, {@code -good},
 * {@code -warn} and {@code -warn-ground}, {@code -selection}, {@code -ghost} for what is held beside the live. A text takes {@code -text}, which the nearest part around it sets. Sizes are in em
 * of the root's font, so that all of them follow the scale of the text.
 */
@NullMarked
package leverwright.face.desk.style;

import org.jspecify.annotations.NullMarked;
