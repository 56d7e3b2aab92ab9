package leverwright.workbook.session;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The names of a cell.
 *
 * @param variables the top-level variables it declares, in order
 * @param members the methods and types it declares
 * @param reads names it uses and does not declare
 * @param readsInBodies those of its top-level variables that methods, types or lambdas mention
 * @param assigns names it assigns and does not declare
 * @param keepsState whether it keeps state that a second run of its statements would not make anew
 * @param tooEarly uses of its own variables above the line that declares them
 */
record CellNames(
        List<Variable> variables,
        Set<String> members,
        Set<String> reads,
        Set<String> readsInBodies,
        Set<String> assigns,
        boolean keepsState,
        Map<String, Integer> tooEarly) {

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

    /** Returns whether the cell declares a name. */
    boolean declares(String name) {
        return members.contains(name)
                || variables.stream().anyMatch(variable -> variable.name().equals(name));
    }
}
