/**
 * The desk without its window: open workbooks, their history, their runs and their files. No control of JavaFX is used
 * here, only its observable values, so that everything can be tried without a display.
 *
 * <p>{@link leverwright.face.desk.model.DeskHome} is the user's desk: folders, recent files, trust, settings.
 * {@link leverwright.face.desk.model.DeskModel} is one open workbook. All of its methods are called on the window's
 * thread and none of them blocks; everything observable changes on that thread only, which is given as an executor. Results
 * of a run arrive there in one batch, after which {@link leverwright.face.desk.model.DeskModel#batch()} counts one more.
 *
 * <p>Values are those of the results: SI units (radians for angles), with the unit in which people read them beside them.
 */
@NullMarked
package leverwright.face.desk.model;

import org.jspecify.annotations.NullMarked;
