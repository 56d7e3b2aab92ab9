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
                ? words + String.format(Locale.ROOT, ", %.2f ms", arrived.took().toNanos() / 1e6)
                : words;
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
