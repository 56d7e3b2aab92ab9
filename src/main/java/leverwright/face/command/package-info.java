/**
 * The command line: one class per subcommand, each a thin shell over a room that does the work.
 *
 * <p>Results go to standard output, messages to standard error, one line each. Exit codes: 0 fine, 1 the work was done
 * and found something wrong, 2 it could not be done (bad usage, bad file, unsuitable Java). No number is computed here;
 * measures are printed with the unit that they carry.
 */
@NullMarked
package leverwright.face.command;

import org.jspecify.annotations.NullMarked;
