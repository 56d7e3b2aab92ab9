/**
 * Leverwright: a workbench for people who explain strength exercises with mechanics.
 */
@NullMarked
package leverwright;

import org.jspecify.annotations.NullMarked;
