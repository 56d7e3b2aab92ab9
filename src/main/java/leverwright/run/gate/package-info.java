/**
 * The gate between a script and the worker: every class of a cell is checked and rewritten before it is loaded.
 *
 * <p>The check refuses what a stranger's script must not reach: an {@linkplain leverwright.run.gate.AllowList allow-list}
 * of classes and members, resolved to the class that declares the member, so that a subclass is no way round. The
 * rewriting, which trust does not lift, makes scripts stoppable and their digits the same everywhere: stop checks, our
 * sine and cosine, ordered twins of unordered collections, the cell's seeded random stream, text without addresses.
 *
 * <p>The gate is a guard, not a proven sandbox: the worker stays a process of its own with bounded memory.
 */
@NullMarked
package leverwright.run.gate;

import org.jspecify.annotations.NullMarked;
