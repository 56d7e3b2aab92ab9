package leverwright.run.result;

import java.util.List;
import leverwright.mechanics.working.Curves;

/**
 * Curves over a setting, to be drawn as a chart.
 *
 * @param title what the chart shows
 * @param curves the data, with names, units and the present setting
 * @param notes cautions and remarks
 */
public record CurvesResult(String title, Curves curves, List<String> notes) implements Result {

    /** Copies the notes. */
    public CurvesResult {
        notes = List.copyOf(notes);
    }
}
