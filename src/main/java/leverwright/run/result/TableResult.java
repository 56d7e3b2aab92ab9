package leverwright.run.result;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A table whose entries are text or numbers.
 *
 * @param title what the table shows
 * @param headings one heading a column
 * @param rows the rows, each with one entry a column
 * @param notes cautions and remarks
 */
public record TableResult(String title, List<String> headings, List<List<Entry>> rows, List<String> notes)
        implements Result {

    /** One entry of a table. */
    public sealed interface Entry permits TextEntry, NumberEntry {}

    /**
     * An entry of words.
     *
     * @param text the words; may be empty
     */
    public record TextEntry(String text) implements Entry {}

    /**
     * An entry with a number.
     *
     * @param quantity the value, its band and its unit
     * @param sides whether it counts one side or the whole body
     * @param working the hand calculation, or null when there is none
     */
    public record NumberEntry(
            Quantity quantity, Sides sides, @Nullable Working working) implements Entry {}

    /**
     * Copies headings and rows.
     *
     * @throws IllegalArgumentException when a row has not one entry a column
     */
    public TableResult {
        headings = List.copyOf(headings);
        notes = List.copyOf(notes);
        List<List<Entry>> copied = new ArrayList<>(rows.size());
        for (List<Entry> row : rows) {
            if (row.size() != headings.size()) {
                throw new IllegalArgumentException("the table \"" + title + "\" has " + headings.size()
                        + " columns, but a row has " + row.size() + " entries; give one entry a column");
            }
            copied.add(List.copyOf(row));
        }
        rows = List.copyOf(copied);
    }
}
