package leverwright.face.publish;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.FigureResult;
import leverwright.run.result.MapResult;
import leverwright.run.result.Result;

/** The cautions and remarks that travel with a result. */
public final class Notes {
    private Notes() {}

    /** Returns the notes of a result and of what it shows, each once. */
    public static List<String> of(Result result) {
        Set<String> notes = new LinkedHashSet<>(result.notes());
        if (result instanceof CurvesResult curves) {
            notes.addAll(curves.curves().notes());
        } else if (result instanceof MapResult map) {
            notes.addAll(map.map().notes());
        } else if (result instanceof FigureResult figure) {
            notes.addAll(figure.sketch().notes());
        }
        return List.copyOf(notes);
    }
}
