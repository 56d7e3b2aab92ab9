/**
 * The sheet: one strip for each cell, with its script at the left and what it comes to at the right.
 *
 * <p>Values are those of the results: SI units with the unit in which people read them; nothing is computed here.
 */
@NullMarked
package leverwright.face.desk.sheet;

import org.jspecify.annotations.NullMarked;
