package leverwright.run.cell;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.exercise.MomentTable;
import leverwright.run.result.TableResult;

/** Lists what joints bear. */
final class MomentRows {

    private MomentRows() {}

    static TableResult result(MomentTable moments) {
        List<String> notes = new ArrayList<>(moments.notes());
        List<List<TableResult.Entry>> rows = new ArrayList<>();
        for (MomentTable.Row row : moments.rows()) {
            rows.add(List.of(
                    new TableResult.TextEntry(row.joint().words()),
                    new TableResult.TextEntry(row.action()),
                    Values.entry(row.moment(), notes),
                    Values.entry(row.load(), notes),
                    Values.entry(row.loadArm(), notes)));
        }
        notes.add(0, moments.closure().words());
        return new TableResult(
                "Joint moments: " + moments.title(),
                List.of("joint", "action", "moment", "load beyond", "load arm"),
                rows,
                notes);
    }
}
