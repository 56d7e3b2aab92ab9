package leverwright.mechanics.working;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Measure;

/**
 * A table of answers and words: what several quantities of one thing are, row by row.
 *
 * @param title what it lists
 * @param headings one a column, at least one
 * @param rows each with one entry a column: a text, a {@link Measure} or an {@link Answer}
 * @param notes cautions and remarks that travel with it
 */
public record Listing(String title, List<String> headings, List<List<Object>> rows, List<String> notes) {
    /**
     * Copies the lists and checks them.
     *
     * @throws IllegalArgumentException if a row has not one entry a column, or an entry is of another kind
     */
    public Listing {
        headings = List.copyOf(headings);
        notes = List.copyOf(notes);
        List<List<Object>> copied = new ArrayList<>();
        for (List<Object> row : rows) {
            if (row.size() != headings.size()) {
                throw new IllegalArgumentException("the table “" + title + "” has " + headings.size()
                        + " columns, but a row has " + row.size() + " entries; give one entry a column");
            }
            for (Object entry : row) {
                if (!(entry instanceof String || entry instanceof Measure<?> || entry instanceof Answer<?>)) {
                    throw new IllegalArgumentException("the table “" + title + "” cannot hold " + entry
                            + "; allowed: texts, measures and answers");
                }
            }
            copied.add(List.copyOf(row));
        }
        rows = List.copyOf(copied);
    }

    /** Returns the table of some answers, one a row, with their own notes and some more. */
    public static Listing of(String title, List<? extends Answer<?>> answers, List<String> notes) {
        List<List<Object>> rows = new ArrayList<>();
        for (Answer<?> answer : answers) {
            rows.add(List.of(answer.label(), answer));
        }
        return new Listing(title, List.of("what", "value"), rows, notes);
    }

    /** Returns the answer in the row with a label. */
    public Answer<?> answer(String label) {
        for (List<Object> row : rows) {
            for (Object entry : row) {
                if (label.equals(row.get(0)) && entry instanceof Answer<?> answer) {
                    return answer;
                }
            }
        }
        throw new IllegalArgumentException("the table “" + title + "” has no row \"" + label + "\" with an answer");
    }
}
