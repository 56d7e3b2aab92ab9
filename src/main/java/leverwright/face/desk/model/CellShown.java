package leverwright.face.desk.model;

import java.time.Duration;
import java.util.List;
import leverwright.run.result.CellState;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Result;
import leverwright.workbook.document.CellRecord;
import leverwright.workbook.session.CellOutcome;
import leverwright.workbook.session.CleanRun;
import leverwright.workbook.session.Fault;
import leverwright.workbook.session.Span;
import org.jspecify.annotations.Nullable;

/**
 * What a script shows beside it.
 *
 * @param state the state, to be told in words and shape
 * @param results the results in order, printed text last; those of before while the cell runs or is stale
 * @param dials the dials it declares
 * @param problem what went wrong, in words; while it runs, how far a study is; empty when there is nothing to say
 * @param faults every place in the script that is wrong, the one that the problem speaks of first; empty when no place is
 *     known
 * @param elapsed how long it ran
 * @param recorded whether the results are those of the file and nothing was run
 */
public record CellShown(
        CellState state,
        List<Result> results,
        List<DialDeclared> dials,
        String problem,
        List<Fault> faults,
        Duration elapsed,
        boolean recorded) {

    /** A script of which nothing is known. */
    static final CellShown NOTHING =
            new CellShown(CellState.NOT_RUN, List.of(), List.of(), "", List.of(), Duration.ZERO, false);

    /** Copies the lists. */
    public CellShown {
        results = List.copyOf(results);
        dials = List.copyOf(dials);
        faults = List.copyOf(faults);
    }

    /** Returns where in the script it went wrong first, or null when no place is known. */
    public @Nullable Span span() {
        return faults.isEmpty() ? null : faults.get(0).span();
    }

    static CellShown of(CellOutcome outcome, CellShown before) {
        if (outcome.state() == CellState.RUNNING) {
            return new CellShown(
                    CellState.RUNNING,
                    before.results(),
                    before.dials(),
                    outcome.message(),
                    List.of(),
                    before.elapsed(),
                    before.recorded());
        }
        return new CellShown(
                outcome.state(),
                CleanRun.shown(outcome),
                outcome.dials(),
                outcome.message(),
                outcome.faults(),
                outcome.elapsed(),
                false);
    }

    /** Returns what the file says about a script that was not run. */
    static CellShown recorded(CellRecord record, boolean current) {
        return new CellShown(
                current ? CellState.NOT_RUN : CellState.STALE,
                record.results(),
                record.dials(),
                record.problem(),
                List.of(),
                Duration.ZERO,
                true);
    }

    CellShown in(CellState other) {
        return new CellShown(other, results, dials, problem, faults, elapsed, recorded);
    }
}
