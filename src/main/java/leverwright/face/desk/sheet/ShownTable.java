package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import leverwright.face.draw.ValueText;
import leverwright.face.publish.TableSides;
import leverwright.mechanics.working.Working;
import leverwright.run.result.TableResult;
import org.jspecify.annotations.Nullable;

/**
 * A table as words for the window: sides said where the table needs them, and beside every column whose numbers changed since
 * a setting was held, a column with the change.
 *
 * @param columns the columns
 * @param rows the rows in the order of the script, each with one entry a column
 */
record ShownTable(List<Column> columns, List<List<Entry>> rows) {

    /**
     * A column.
     *
     * @param heading its heading
     * @param numeric whether it holds numbers
     * @param change whether it shows changes since the held setting
     */
    record Column(String heading, boolean numeric, boolean change) {}

    /**
     * An entry.
     *
     * @param text what is shown
     * @param number the value in SI units, by which rows are sorted; NaN for words
     * @param working its hand calculation, or null when there is none
     */
    record Entry(String text, double number, @Nullable Working working) {
        static Entry words(String text) {
            return new Entry(text, Double.NaN, null);
        }
    }

    ShownTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    static ShownTable of(TableResult now, @Nullable TableResult before) {
        TableSides sides = new TableSides(now);
        List<Integer> changed = before == null ? List.of() : changed(now, before);
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < now.headings().size(); i++) {
            int column = i;
            boolean numeric = now.rows().stream().anyMatch(row -> row.get(column) instanceof TableResult.NumberEntry);
            columns.add(new Column(sides.heading(i), numeric, false));
            if (changed.contains(i)) {
                columns.add(new Column("change", true, true));
            }
        }
        if (sides.hasColumn()) {
            columns.add(new Column("counts", false, false));
        }
        List<List<Entry>> rows = new ArrayList<>();
        for (int i = 0; i < now.rows().size(); i++) {
            rows.add(row(now, before, i, sides, changed));
        }
        return new ShownTable(columns, rows);
    }

    private static List<Entry> row(
            TableResult now, @Nullable TableResult before, int index, TableSides sides, List<Integer> changed) {
        List<TableResult.Entry> row = now.rows().get(index);
        List<TableResult.Entry> old = before == null ? List.of() : counterpart(now, before, index);
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            entries.add(entry(row.get(i), sides, i));
            if (changed.contains(i)) {
                boolean both = i < old.size()
                        && old.get(i) instanceof TableResult.NumberEntry
                        && row.get(i) instanceof TableResult.NumberEntry;
                entries.add(both ? change(old.get(i), row.get(i)) : Entry.words(""));
            }
        }
        if (sides.hasColumn()) {
            entries.add(Entry.words(sides.ofRow(row)));
        }
        return entries;
    }

    private static Entry entry(TableResult.Entry entry, TableSides sides, int column) {
        if (entry instanceof TableResult.NumberEntry number) {
            String beside = sides.beside(column, number);
            String text = ValueText.value(number.quantity(), number.working())
                    + (beside.isEmpty() ? "" : " " + beside)
                    + (number.quantity().hasBand() ? " (" + ValueText.band(number.quantity()) + ")" : "");
            return new Entry(text, number.quantity().value(), number.working());
        }
        return Entry.words(((TableResult.TextEntry) entry).text());
    }

    private static Entry change(TableResult.Entry before, TableResult.Entry now) {
        TableResult.NumberEntry old = (TableResult.NumberEntry) before;
        TableResult.NumberEntry live = (TableResult.NumberEntry) now;
        return new Entry(
                Change.words(old.quantity(), live.quantity()),
                live.quantity().value() - old.quantity().value(),
                null);
    }

    /** The columns in which some number or its band differs. */
    private static List<Integer> changed(TableResult now, TableResult before) {
        if (!now.headings().equals(before.headings())) {
            return List.of();
        }
        return IntStream.range(0, now.headings().size())
                .filter(column -> IntStream.range(0, now.rows().size()).anyMatch(row -> {
                    List<TableResult.Entry> old = counterpart(now, before, row);
                    return !old.isEmpty()
                            && old.get(column) instanceof TableResult.NumberEntry one
                            && now.rows().get(row).get(column) instanceof TableResult.NumberEntry two
                            && Change.isChange(one.quantity(), two.quantity());
                }))
                .boxed()
                .toList();
    }

    /** The row of before that speaks of the same: the one in the same place, if it begins with the same words. */
    private static List<TableResult.Entry> counterpart(TableResult now, TableResult before, int index) {
        List<TableResult.Entry> row = now.rows().get(index);
        if (index < before.rows().size() && sameName(before.rows().get(index), row)) {
            return before.rows().get(index);
        }
        return before.rows().stream()
                .filter(old -> row.get(0) instanceof TableResult.TextEntry && sameName(old, row))
                .findFirst()
                .orElse(List.of());
    }

    private static boolean sameName(List<TableResult.Entry> one, List<TableResult.Entry> two) {
        return !(one.get(0) instanceof TableResult.TextEntry) || one.get(0).equals(two.get(0));
    }

    /**
     * Returns the places of the rows in the order in which they are shown.
     *
     * @param column by which column to sort; −1 for the order of the script
     * @param falling whether the greatest comes first
     */
    List<Integer> order(int column, boolean falling) {
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, rows.size()).boxed().toList());
        if (column >= 0 && column < columns.size()) {
            Comparator<Integer> rising = Comparator.<Integer>comparingDouble(
                            row -> rows.get(row).get(column).number())
                    .thenComparing(row -> rows.get(row).get(column).text(), String.CASE_INSENSITIVE_ORDER);
            order.sort(falling ? rising.reversed() : rising);
        }
        return order;
    }
}
