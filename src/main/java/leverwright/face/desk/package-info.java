/**
 * The window of the desk: what is around the sheet. {@link leverwright.face.desk.Display} decides before the toolkit starts
 * whether there can be a window at all; {@link leverwright.face.desk.DeskApp} starts it. One window shows one workbook;
 * {@code Desk} knows all windows of the process.
 *
 * <p>Everything runs on the window's thread; files and computing are left to the model, which answers on that thread.
 * Results come in SI units with the unit in which people read them; nothing is computed here.
 */
@NullMarked
package leverwright.face.desk;

import org.jspecify.annotations.NullMarked;
