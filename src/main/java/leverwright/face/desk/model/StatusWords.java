package leverwright.face.desk.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import leverwright.run.result.CellState;
import org.jspecify.annotations.Nullable;

/** The state of all scripts in one line. */
final class StatusWords {

    private StatusWords() {}

    static String of(List<CellView> scripts, @Nullable Batch arrived) {
        String words = states(scripts);
        return arrived != null && arrived.complete()
                ? words + ", " + duration(arrived.took().toNanos() / 1e6)
                : words;
    }

    private static String duration(double milliseconds) {
        return milliseconds < 1000
                ? String.format(Locale.ROOT, milliseconds < 10 ? "%.2f ms" : "%.0f ms", milliseconds)
                : String.format(Locale.ROOT, "%.1f s", milliseconds / 1000);
    }

    private static String states(List<CellView> scripts) {
        Map<CellState, Integer> counts = new LinkedHashMap<>();
        scripts.forEach(view -> counts.merge(view.shown().get().state(), 1, Integer::sum));
        int all = scripts.size();
        if (all == 0) {
            return "no script yet";
        }
        if (counts.size() == 1) {
            return (all == 1 ? "the script " : "all " + all + " scripts ")
                    + counts.keySet().iterator().next().words();
        }
        List<String> parts = new ArrayList<>();
        counts.forEach((state, count) -> parts.add(count + " " + state.words()));
        return String.join(", ", parts);
    }
}
