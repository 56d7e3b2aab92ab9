package leverwright.workbook.session;

import java.time.Duration;
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

    /** How long one cell may take unless asked otherwise. */
    public static final Duration MOST_PER_CELL = Duration.ofSeconds(60);

    private CleanRun() {}

    /**
     * Runs a workbook at its own dials; a cell may take {@link #MOST_PER_CELL}.
     *
     * @param workbook the workbook
     * @param trusted whether its cells may use any class
     * @param listener is told of every cell that begins or ends, on threads of the run
     * @return what every script came to
     * @throws IllegalStateException when this Java has no compiler
     */
    public static WorkbookRecord of(Workbook workbook, boolean trusted, SessionListener listener) {
        return of(workbook, trusted, MOST_PER_CELL, listener);
    }

    /**
     * Runs a workbook at its own dials.
     *
     * @param workbook the workbook
     * @param trusted whether its cells may use any class
     * @param mostPerCell how long one cell may take; one that takes longer is stopped, and the cells below are not run
     * @param listener is told of every cell that begins or ends, on threads of the run
     * @return what every script came to
     * @throws IllegalStateException when this Java has no compiler
     */
    public static WorkbookRecord of(
            Workbook workbook, boolean trusted, Duration mostPerCell, SessionListener listener) {
        return of(workbook, trusted, mostPerCell, new Halt(), listener);
    }

    /**
     * Runs a workbook at its own dials, until it is told to end.
     *
     * @param workbook the workbook
     * @param trusted whether its cells may use any class
     * @param mostPerCell how long one cell may take; one that takes longer is stopped, and the cells below are not run
     * @param halt ends the run when it is asked
     * @param listener is told of every cell that begins or ends, on threads of the run
     * @return what every script came to
     * @throws java.util.concurrent.CancellationException when the halt was asked for before the run came to its end
     * @throws IllegalStateException when this Java has no compiler
     */
    public static WorkbookRecord of(
            Workbook workbook, boolean trusted, Duration mostPerCell, Halt halt, SessionListener listener) {
        SessionListener told = outcome -> {
            listener.cellChanged(outcome);
            halt.stopWhatBegins();
        };
        long seed = workbook.record().map(WorkbookRecord::seed).orElse(SessionOptions.STANDARD_SEED);
        try (CellClock clock = new CellClock(told, mostPerCell);
                Session session = Session.open(new SessionOptions(trusted, seed, workbook.dials(), clock))) {
            clock.watch(session);
            halt.over(session);
            List<CellScript> scripts = workbook.scripts().stream()
                    .map(cell -> new CellScript(cell.id(), cell.text()))
                    .toList();
            RunReport report = session.run(scripts);
            halt.refuseWhenAsked();
            List<CellOutcome> outcomes =
                    report.outcomes().stream().map(clock::worded).toList();
            return record(workbook, new RunReport(outcomes, report.way(), report.differences()), seed);
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
            // what a stopped study had done depends on the moment of the stop, and is no record
            CellOutcome kept = outcome.state() == CellState.FAILED ? outcome.withoutResults() : outcome;
            cells.put(outcome.id(), CellRecord.of(outcome.state(), problem(outcome), outcome.dials(), shown(kept)));
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
