/**
 * The child process that runs cells: it takes over its own standard streams, keeps the bytes of every cell's classes,
 * runs them from the top in a fresh class loader or again where they are, and hands results back as frames.
 *
 * <p>The control thread reads frames and never runs a cell; the run thread runs cells one after another. When the
 * control stream ends, the process ends. Cells see empty input and bounded output.
 */
@NullMarked
package leverwright.run.worker;

import org.jspecify.annotations.NullMarked;
