package leverwright.workbook.session;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The names of a cell.
 *
 * @param variables the top-level variables it declares, in order
 * @param methods the methods it declares
 * @param types the types it declares
 * @param reads variables and types that it uses and does not declare, and methods that it calls and does not declare, those
 *     as {@link #call} writes them: a variable and a method of one name are two things
 * @param readsInBodies those of its top-level variables that methods, types or lambdas mention
 * @param assigns names it assigns and does not declare
 * @param keepsState whether it keeps state that a second run of its statements would not make anew
 * @param tooEarly uses of its own variables above the line that declares them
 */
record CellNames(
        List<Variable> variables,
        Set<String> methods,
        Set<String> types,
        Set<String> reads,
        Set<String> readsInBodies,
        Set<String> assigns,
        boolean keepsState,
        Map<String, Integer> tooEarly) {

    private static final String CALLED = "()";

    /**
     * A top-level variable.
     *
     * @param name its name
     * @param type its type as written, or null when {@code var} was
     * @param element the place of its element in the cell
     * @param start where its name begins in the script
     * @param valueStart where its first value begins; -1 when it has none
     * @param valueEnd where its first value ends
     * @param arrayValue whether the value is written as elements in braces
     */
    record Variable(
            String name,
            @Nullable String type,
            int element,
            int start,
            int valueStart,
            int valueEnd,
            boolean arrayValue) {}

    /** Returns the name of a method as it stands among the names that a cell reads. */
    static String call(String method) {
        return method + CALLED;
    }

    /** Returns the bare name of a variable, type or method that a cell reads. */
    static String bare(String read) {
        return isCall(read) ? read.substring(0, read.length() - CALLED.length()) : read;
    }

    static boolean isCall(String read) {
        return read.endsWith(CALLED);
    }

    /** Returns whether the cell declares what another one reads. */
    boolean declares(String read) {
        return isCall(read) ? methods.contains(bare(read)) : types.contains(read) || declaresVariable(read);
    }

    boolean declaresVariable(String name) {
        return variables.stream().anyMatch(variable -> variable.name().equals(name));
    }
}
