package leverwright.workbook.session;

import java.util.List;
import java.util.Objects;

/**
 * What came of a run.
 *
 * @param outcomes one for each script cell of the workbook, in order of the sheet
 * @param way how the values were computed
 * @param differences cells whose values a confirming replay changed; empty when all bits were the same
 */
public record RunReport(List<CellOutcome> outcomes, Way way, List<String> differences) {

    /** How the values of a report were computed. */
    public enum Way {
        /** Every cell from the top, in fresh classes. */
        REPLAY,
        /** Only the cells concerned, in classes of their own. */
        PATCH,
        /**
         * Only the cells concerned, in the classes that were loaded. Their results come without the workings that a reader
         * sees folded; {@link Session#confirm()} brings those.
         */
        SHORT
    }

    /** Copies the lists. */
    public RunReport {
        outcomes = List.copyOf(outcomes);
        differences = List.copyOf(differences);
    }

    /**
     * Returns the outcome of a cell.
     *
     * @param id the cell's id
     * @throws IllegalArgumentException when the workbook has no script cell of this id
     */
    public CellOutcome outcome(String id) {
        return outcomes.stream()
                .filter(outcome -> Objects.equals(outcome.id(), id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no script cell \"" + id + "\" in this workbook"));
    }
}
