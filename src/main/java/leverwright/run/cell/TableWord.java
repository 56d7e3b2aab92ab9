package leverwright.run.cell;

import java.util.ArrayList;
import java.util.List;
import leverwright.run.result.TableResult;

/**
 * A table that a cell fills row by row: {@code table("Two lifters").columns("lifter", "hip").row("Ines", hip)}. An entry
 * is a text, a whole or decimal number, a measure, or an answer of the mechanics with its band and working.
 */
public final class TableWord implements ResultBuilder {

    private final String title;
    private final List<String> headings = new ArrayList<>();
    private final List<List<TableResult.Entry>> rows = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    TableWord(String title) {
        this.title = title;
    }

    /**
     * Sets the headings, one a column.
     *
     * @param names the headings from left to right
     */
    public TableWord columns(String... names) {
        headings.clear();
        headings.addAll(List.of(names));
        return this;
    }

    /**
     * Adds a row.
     *
     * @param entries one entry a column
     * @throws IllegalArgumentException when the number of entries is not the number of columns, or an entry is of a
     *     kind that a table cannot hold
     */
    public TableWord row(Object... entries) {
        if (headings.isEmpty()) {
            throw new IllegalArgumentException(
                    "the table \"" + title + "\" has no columns yet; write .columns(…) before .row(…)");
        }
        if (entries.length != headings.size()) {
            throw new IllegalArgumentException("the table \"" + title + "\" has " + headings.size()
                    + " columns, but this row has " + entries.length + " entries; give one entry a column");
        }
        List<TableResult.Entry> row = new ArrayList<>();
        for (Object entry : entries) {
            row.add(Values.entry(entry, notes));
        }
        rows.add(row);
        return this;
    }

    /** Adds remarks that stand under the table, each once. */
    void notes(List<String> remarks) {
        remarks.stream().filter(note -> !notes.contains(note)).forEach(notes::add);
    }

    TableResult result() {
        return new TableResult(title, headings, rows, notes);
    }
}
