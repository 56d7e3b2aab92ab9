/**
 * The catalogue of exercises in the window: found by family and by words, tried with its knobs in figure and chart, and put into
 * the sheet as lines of a script.
 *
 * <p>Settings are SI values by the place of their knob; what a reader types is read in the knob's unit.
 */
@NullMarked
package leverwright.face.desk.catalogue;

import org.jspecify.annotations.NullMarked;
