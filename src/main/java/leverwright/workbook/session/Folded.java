package leverwright.workbook.session;

import java.util.ArrayList;
import java.util.List;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;

/** Takes the workings that a reader sees folded out of results, as turns of a dial leave them out. */
final class Folded {

    private Folded() {}

    static Result without(Result result) {
        if (result instanceof NumberResult number && !number.workingOpen()) {
            return new NumberResult(number.title(), number.quantity(), number.sides(), null, false, number.notes());
        }
        if (result instanceof TableResult table) {
            List<List<TableResult.Entry>> rows = new ArrayList<>();
            for (List<TableResult.Entry> row : table.rows()) {
                rows.add(row.stream().map(Folded::without).toList());
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
