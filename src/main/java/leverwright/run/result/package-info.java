/**
 * What crosses the boundary between a cell and the rest of the house: a closed set of plain, immutable records.
 *
 * <p>A result is a {@link leverwright.run.result.NumberResult number} with its working, a
 * {@link leverwright.run.result.TableResult table}, {@link leverwright.run.result.CurvesResult curves}, a
 * {@link leverwright.run.result.FigureResult figure}, a {@link leverwright.run.result.ClaimResult claim} with its
 * verdict, or {@link leverwright.run.result.TextResult text}. Beside the results stand the
 * {@link leverwright.run.result.DialDeclared dials} that cells declare and the
 * {@link leverwright.run.result.CellState states} a cell can be in.
 *
 * <p>Every value is finite and in SI units (radians for angles); a {@link leverwright.mechanics.measure.Unit} beside it
 * says how people read it. A negative zero becomes zero when a result is made. Moments carry the direction that their
 * label names, and {@link leverwright.mechanics.measure.Sides} says whether a value is per side or total. The faces draw
 * and print these records and compute no mechanics.
 */
@NullMarked
package leverwright.run.result;

import org.jspecify.annotations.NullMarked;
