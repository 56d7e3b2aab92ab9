package leverwright.bench;

import java.util.List;
import leverwright.workbook.session.CellScript;
import leverwright.workbook.session.RunReport;
import leverwright.workbook.session.Session;
import leverwright.workbook.session.SessionOptions;

/**
 * The least a cell needs, from the start of the process: one JShell, one worker, the gate, one snippet. What {@code
 * leverwright run} takes to its first result is held against it.
 */
public final class FirstResultFloor {

    private FirstResultFloor() {}

    /** Runs one cell and prints what it came to. */
    public static void main(String[] arguments) {
        try (Session session = Session.open(SessionOptions.standard())) {
            RunReport report = session.run(List.of(new CellScript("a", "1 + 1")));
            System.out.println("  " + report.outcome("a").state().words());
        }
    }
}
