/**
 * The life of an open workbook's scripts: compiling, running in the worker, dials, stops, and what depends on what.
 *
 * <p>Every cell becomes one class, compiled by JShell. Its top-level variables, methods and types are members
 * of that class; its statements, in order, are the body of one method. A name that a cell does not declare itself is
 * bound to the nearest cell above that declares it. So document order is the order of meaning: nothing
 * that stands below changes what a cell sees, and no class is ever redefined behind a reader's back.
 *
 * <p>What is live is what a clean run would give: a replay of every cell, from the top, in a fresh class loader. The
 * {@linkplain leverwright.workbook.session.Session session} takes a shorter way only where every value that is read from
 * above is of an immutable type and no cell involved keeps state behind its variables.
 *
 * <p>This room sees results, never mechanics; units and signs are those of the results.
 */
@NullMarked
package leverwright.workbook.session;

import org.jspecify.annotations.NullMarked;
