package leverwright.face.publish;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.measure.Sides;
import leverwright.run.result.TableResult;

/**
 * Where a table says which side its numbers count: in the heading of a column whose numbers all count the same, in a column
 * of its own where one column mixes them, and beside each number where several do.
 */
public final class TableSides {
    private final TableResult table;
    private final List<Integer> mixed;

    /**
     * Looks at a table.
     *
     * @param table the table
     */
    public TableSides(TableResult table) {
        this.table = table;
        mixed = java.util.stream.IntStream.range(0, table.headings().size())
                .filter(column -> sides(column).size() > 1)
                .boxed()
                .toList();
    }

    /** Returns a column's heading, with the side that all its numbers count. */
    public String heading(int column) {
        Set<Sides> sides = sides(column);
        String heading = table.headings().get(column);
        Sides only = sides.size() == 1 ? sides.iterator().next() : Sides.NOT_SIDED;
        if (only == Sides.NOT_SIDED || heading.contains(only.words())) {
            return heading;
        }
        return heading + ", " + only.words();
    }

    /** Returns whether the table needs a column that says which side a row counts. */
    public boolean hasColumn() {
        return mixed.size() == 1;
    }

    /** Returns what that column says in a row. */
    public String ofRow(List<TableResult.Entry> row) {
        return row.get(mixed.get(0)) instanceof TableResult.NumberEntry number
                ? number.sides().words()
                : "";
    }

    /** Returns the side to be said beside a number itself; empty where heading or column say it. */
    public String beside(int column, TableResult.NumberEntry number) {
        return mixed.size() > 1 && mixed.contains(column) ? number.sides().words() : "";
    }

    private Set<Sides> sides(int column) {
        Set<Sides> sides = new LinkedHashSet<>();
        for (List<TableResult.Entry> row : table.rows()) {
            if (row.get(column) instanceof TableResult.NumberEntry number) {
                sides.add(number.sides());
            }
        }
        return sides;
    }
}
