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
 * @param span where in the script it went wrong, or null when no place is known
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
        @Nullable Span span,
        Duration elapsed) {

    /** Copies the lists. */
    public CellOutcome {
        results = List.copyOf(results);
        dials = List.copyOf(dials);
    }

    /** Returns an outcome without results. */
    static CellOutcome without(String id, CellState state, String message, @Nullable Span span) {
        return new CellOutcome(id, state, List.of(), List.of(), "", 0, message, span, Duration.ZERO);
    }

    /** Returns this outcome with another reason. */
    CellOutcome saying(String words) {
        return new CellOutcome(id, state, results, dials, output, outputLeftOut, words, span, elapsed);
    }

    /** Returns this outcome without what it shows; what it printed stays. */
    CellOutcome withoutResults() {
        return new CellOutcome(id, state, List.of(), dials, output, outputLeftOut, message, span, elapsed);
    }

    /** Returns this outcome in another state. */
    CellOutcome in(CellState other) {
        return new CellOutcome(id, other, results, dials, output, outputLeftOut, message, span, elapsed);
    }
}
