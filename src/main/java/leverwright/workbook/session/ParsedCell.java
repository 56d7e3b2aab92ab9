package leverwright.workbook.session;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A script parted into elements, with its names.
 *
 * @param script the cell's script
 * @param className the class the cell becomes, with dots
 * @param elements its declarations and statements, in order
 * @param names what it declares, reads and assigns
 * @param value the expression whose value the cell shows at its end, or null
 * @param faults what is no Java, in order of the compiler; empty when all is
 */
record ParsedCell(
        CellScript script,
        String className,
        List<Part> elements,
        CellNames names,
        @Nullable Value value,
        List<Fault> faults) {

    /**
     * The expression at a cell's end.
     *
     * @param element the place of its element
     * @param start its first offset in the script
     * @param end the offset after it
     * @param mayBeVoid whether it is a call that may have no value
     */
    record Value(int element, int start, int end, boolean mayBeVoid) {}

    String simpleName() {
        return className.substring(className.lastIndexOf('.') + 1);
    }
}
