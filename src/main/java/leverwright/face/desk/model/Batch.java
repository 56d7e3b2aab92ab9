package leverwright.face.desk.model;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import leverwright.workbook.session.CellOutcome;

/**
 * What a run brought so far, for the window's thread.
 *
 * @param version the version of scripts and dials that the values belong to
 * @param outcomes the cells that changed, by id
 * @param readers the cells that read from each cell, directly or through others; empty while the run goes on
 * @param complete whether the run has ended
 * @param differences the cells that a confirming replay changed
 * @param took how long the run took so far
 * @param fault why the worker cannot be used, in words; empty when it can
 */
record Batch(
        long version,
        Map<String, CellOutcome> outcomes,
        Map<String, Set<String>> readers,
        boolean complete,
        Set<String> differences,
        Duration took,
        String fault) {

    /** Returns this batch with a later one on top. */
    Batch then(Batch later) {
        Map<String, CellOutcome> all = new LinkedHashMap<>(outcomes);
        all.putAll(later.outcomes);
        Set<String> different = new LinkedHashSet<>(differences);
        different.addAll(later.differences);
        return new Batch(
                later.version,
                all,
                later.readers.isEmpty() ? readers : later.readers,
                later.complete,
                different,
                later.took,
                later.fault.isEmpty() ? fault : later.fault);
    }
}
