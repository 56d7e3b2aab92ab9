package leverwright.run.result;

import java.util.List;
import leverwright.mechanics.working.ContourMap;

/**
 * One quantity over two settings, to be drawn as a contour map.
 *
 * @param title what the map shows
 * @param map the data, with names, units and the present setting
 * @param notes cautions and remarks
 */
public record MapResult(String title, ContourMap map, List<String> notes) implements Result {

    /** Copies the notes. */
    public MapResult {
        notes = List.copyOf(notes);
    }
}
