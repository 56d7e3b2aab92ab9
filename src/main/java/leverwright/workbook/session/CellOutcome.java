package leverwright.workbook.session;

import java.time.Duration;
import java.util.List;
import leverwright.run.result.CellState;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Result;
import org.jspecify.annotations.Nullable;

/**
 * What came of a cell.
 *
 * @param id the cell's id
 * @param state fresh, failed, refused, not run, running or stale
 * @param results what it shows, in order; empty unless fresh, stale, or stopped with something done
 * @param dials the dials it declares
 * @param output what it printed
 * @param outputLeftOut how many printed characters were dropped because there were too many
 * @param message what went wrong, in words; while it runs, how far a study is; empty when there is nothing to say
 * @param faults every place in the script that is wrong, the one that the message speaks of first; empty when no place is
 *     known
 * @param elapsed how long it ran
 */
public record CellOutcome(
        String id,
        CellState state,
        List<Result> results,
        List<DialDeclared> dials,
        String output,
        long outputLeftOut,
        String message,
        List<Fault> faults,
        Duration elapsed) {

    /** Copies the lists. */
    public CellOutcome {
        results = List.copyOf(results);
        dials = List.copyOf(dials);
        faults = List.copyOf(faults);
    }

    /** Returns an outcome without results. */
    static CellOutcome without(String id, CellState state, String message, @Nullable Span span) {
        List<Fault> faults = span == null ? List.of() : List.of(new Fault(message, span));
        return new CellOutcome(id, state, List.of(), List.of(), "", 0, message, faults, Duration.ZERO);
    }

    /** Returns the outcome of a script that is no Java, or not sound. */
    static CellOutcome failed(String id, List<Fault> faults) {
        String message = faults.get(0).message();
        return new CellOutcome(id, CellState.FAILED, List.of(), List.of(), "", 0, message, faults, Duration.ZERO);
    }

    /** Returns where in the script it went wrong first, or null when no place is known. */
    public @Nullable Span span() {
        return faults.isEmpty() ? null : faults.get(0).span();
    }

    /** Returns this outcome with another reason. */
    CellOutcome saying(String words) {
        return new CellOutcome(id, state, results, dials, output, outputLeftOut, words, faults, elapsed);
    }

    /** Returns this outcome without what it shows; what it printed stays. */
    CellOutcome withoutResults() {
        return new CellOutcome(id, state, List.of(), dials, output, outputLeftOut, message, faults, elapsed);
    }

    /** Returns this outcome in another state. */
    CellOutcome in(CellState other) {
        return new CellOutcome(id, other, results, dials, output, outputLeftOut, message, faults, elapsed);
    }
}
