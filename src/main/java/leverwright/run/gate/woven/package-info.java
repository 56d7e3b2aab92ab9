/**
 * What the gate weaves into the classes of cells: stop checks, ordered twins of unordered collections, the cell's seeded
 * random stream, and text that is the same on every JDK and at every start.
 *
 * <p>No cell names these classes itself; the gate refuses that and puts the calls in afterwards, so that a script reads
 * like ordinary Java and still gives the same bits everywhere. Everything here runs on the worker's run thread.
 */
@NullMarked
package leverwright.run.gate.woven;

import org.jspecify.annotations.NullMarked;
