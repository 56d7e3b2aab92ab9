/**
 * The words a cell may say, and the one place that turns a value into a result.
 *
 * <p>This is the only room that sees both sides: the mechanics, whose answers are numbers with names, and the
 * {@linkplain leverwright.run.result results} that cross to the faces. While a cell runs, the words hand their results
 * to the {@link leverwright.run.cell.CellSink} of the running thread; the value of a bare expression at the end of a
 * cell goes through {@link leverwright.run.cell.ValueToResult}.
 *
 * <p>Values are in SI units and radians; signs and frames are those of the mechanics that made the value.
 */
@NullMarked
package leverwright.run.cell;

import org.jspecify.annotations.NullMarked;
