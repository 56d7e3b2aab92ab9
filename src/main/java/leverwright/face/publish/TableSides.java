package leverwright.face.publish;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.measure.Sides;
import leverwright.run.result.TableResult;

/** Which side the rows of a table count. */
final class TableSides {
    private TableSides() {}

    /** Returns whether any number of the table counts a side or the whole body. */
    static boolean any(TableResult table) {
        return table.rows().stream().anyMatch(row -> !of(row).isEmpty());
    }

    /** Returns the sides of a row's numbers in words, for example {@code "per side"}. */
    static String of(List<TableResult.Entry> row) {
        Set<String> words = new LinkedHashSet<>();
        for (TableResult.Entry entry : row) {
            if (entry instanceof TableResult.NumberEntry number && number.sides() != Sides.NOT_SIDED) {
                words.add(number.sides().words());
            }
        }
        return String.join(", ", words);
    }
}
