package leverwright.face.desk.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A setting that is kept beside the live one, for before and after.
 *
 * @param settings the dials set by hand, by name, as they were when it was held
 * @param shown what each script showed at that setting, by cell id
 */
public record Held(Map<String, String> settings, Map<String, CellShown> shown) {

    /** Copies the maps in their order. */
    public Held {
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
        shown = Collections.unmodifiableMap(new LinkedHashMap<>(shown));
    }
}
