package leverwright.run.result;

import java.util.List;

/** One result of a cell. The set is closed: whatever reads results handles every kind. */
public sealed interface Result
        permits NumberResult, TextResult, TableResult, CurvesResult, MapResult, FigureResult, ClaimResult {

    /** Returns the short text that names this result to a reader; may be empty for text. */
    String title();

    /** Returns cautions and remarks that travel with the result, in reading order; empty when there are none. */
    List<String> notes();
}
