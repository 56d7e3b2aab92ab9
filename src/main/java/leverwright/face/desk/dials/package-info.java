/**
 * The side of the window: the dials of the workbook, each a slider and a typed value with its unit.
 *
 * <p>Sliders go by SI values (radians for angles); what is typed and shown carries its unit.
 */
@NullMarked
package leverwright.face.desk.dials;

import org.jspecify.annotations.NullMarked;
