package leverwright.run.result;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes the workings that a reader sees folded out of results. Turns of a dial and kept records leave them out: they follow
 * from the numbers and are made again by a run; workings that stand open stay.
 */
public final class FoldedWorkings {

    private FoldedWorkings() {}

    /**
     * Returns a result without the workings that a reader sees folded.
     *
     * @param result any result
     */
    public static Result without(Result result) {
        if (result instanceof NumberResult number && !number.workingOpen()) {
            return new NumberResult(number.title(), number.quantity(), number.sides(), null, false, number.notes());
        }
        if (result instanceof TableResult table) {
            List<List<TableResult.Entry>> rows = new ArrayList<>();
            for (List<TableResult.Entry> row : table.rows()) {
                rows.add(row.stream().map(FoldedWorkings::without).toList());
            }
            return new TableResult(table.title(), table.headings(), rows, table.notes());
        }
        if (result instanceof ClaimResult claim) {
            return new ClaimResult(
                    claim.title(),
                    claim.computed(),
                    claim.computedLabel(),
                    claim.sides(),
                    claim.test(),
                    claim.verdict(),
                    claim.reason(),
                    claim.forReader(),
                    claim.doubted(),
                    claim.source(),
                    claim.settings(),
                    null,
                    claim.notes());
        }
        return result;
    }

    private static TableResult.Entry without(TableResult.Entry entry) {
        return entry instanceof TableResult.NumberEntry number
                ? new TableResult.NumberEntry(number.quantity(), number.sides(), null)
                : entry;
    }
}
