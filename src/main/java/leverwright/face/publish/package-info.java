/**
 * Workbooks and results for readers without the program: pages and plain text.
 *
 * <p>A published page stands for itself: it asks no server for anything, needs no script, and nothing in a note, a script
 * or a result becomes markup of the page. It shows a workbook's record as last computed and computes nothing, so the same
 * workbook always gives the same bytes. Values arrive in SI units and are printed in the unit that stands beside them,
 * with their side (per side, total) and their band.
 */
@NullMarked
package leverwright.face.publish;

import org.jspecify.annotations.NullMarked;
