package leverwright.workbook.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.Release;
import leverwright.run.result.CellState;
import leverwright.run.result.Result;
import leverwright.run.result.TextResult;
import leverwright.workbook.document.CellRecord;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookRecord;

/** A run of a whole workbook in a worker of its own, from top to bottom, and the record it gives. */
public final class CleanRun {

    private CleanRun() {}

    /**
     * Runs a workbook at its own dials.
     *
     * @param workbook the workbook
     * @param trusted whether its cells may use any class
     * @param listener is told of every cell that begins or ends, on threads of the run
     * @return what every script came to
     * @throws IllegalStateException when this Java has no compiler
     */
    public static WorkbookRecord of(Workbook workbook, boolean trusted, SessionListener listener) {
        long seed = workbook.record().map(WorkbookRecord::seed).orElse(SessionOptions.STANDARD_SEED);
        SessionOptions options = new SessionOptions(trusted, seed, workbook.dials(), listener);
        try (Session session = Session.open(options)) {
            List<CellScript> scripts = workbook.scripts().stream()
                    .map(cell -> new CellScript(cell.id(), cell.text()))
                    .toList();
            return record(workbook, session.run(scripts), seed);
        }
    }

    /**
     * Returns the record of a run.
     *
     * @param workbook the workbook that was run
     * @param report what came of its cells
     * @param seed where the run's random numbers started
     * @throws IllegalArgumentException when a cell is stale or still running
     */
    public static WorkbookRecord record(Workbook workbook, RunReport report, long seed) {
        Map<String, CellRecord> cells = new LinkedHashMap<>();
        for (CellOutcome outcome : report.outcomes()) {
            cells.put(outcome.id(), CellRecord.of(outcome.state(), problem(outcome), outcome.dials(), shown(outcome)));
        }
        return WorkbookRecord.of(workbook, Release.version(), Runtime.version().toString(), seed, cells);
    }

    /**
     * Returns what a cell shows: its results, then what it printed.
     *
     * @param outcome the cell
     */
    public static List<Result> shown(CellOutcome outcome) {
        List<Result> results = new ArrayList<>(outcome.results());
        if (!outcome.output().isEmpty()) {
            results.add(new TextResult("", outcome.output(), outcome.outputLeftOut(), List.of()));
        }
        return results;
    }

    /**
     * Returns what went wrong in a cell and where, in words; empty when nothing did.
     *
     * @param outcome the cell
     */
    public static String problem(CellOutcome outcome) {
        Span span = outcome.span();
        boolean placed = span != null
                && outcome.state() == CellState.FAILED
                && !outcome.message().isEmpty();
        return placed && span != null
                ? "line " + span.line() + ", column " + span.column() + ": " + outcome.message()
                : outcome.message();
    }
}
