package leverwright.workbook.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leverwright.workbook.json.JsonArray;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonValue;
import leverwright.workbook.json.JsonWriter;

/** Where two trees differ, leaf by leaf; numbers are compared by their bits. */
final class TreeDifferences {

    /** One place where two trees differ; a side that has nothing there is empty. */
    record Difference(String path, Optional<JsonValue> recorded, Optional<JsonValue> recomputed) {

        /** Returns the two sides in words. */
        String sides() {
            return "recorded " + shown(recorded) + ", recomputed " + shown(recomputed);
        }

        private static String shown(Optional<JsonValue> value) {
            String text = value.map(JsonWriter::compact).orElse("nothing");
            return text.length() > 120 ? text.substring(0, 120) + "…" : text;
        }
    }

    private final List<Difference> found = new ArrayList<>();

    private TreeDifferences() {}

    /** Returns every place where the trees differ, in the order of the recorded one. */
    static List<Difference> between(JsonValue recorded, JsonValue recomputed) {
        TreeDifferences differences = new TreeDifferences();
        differences.compare("", Optional.of(recorded), Optional.of(recomputed));
        return differences.found;
    }

    private void compare(String path, Optional<JsonValue> recorded, Optional<JsonValue> recomputed) {
        if (recorded.equals(recomputed)) {
            return;
        }
        JsonValue one = recorded.orElse(null);
        JsonValue other = recomputed.orElse(null);
        if (one instanceof JsonObject first && other instanceof JsonObject second) {
            Set<String> keys = new LinkedHashSet<>(first.members().keySet());
            keys.addAll(second.members().keySet());
            for (String key : keys) {
                compare(path.isEmpty() ? key : path + "." + key, first.get(key), second.get(key));
            }
        } else if (one instanceof JsonArray first && other instanceof JsonArray second) {
            int longest = Math.max(first.elements().size(), second.elements().size());
            for (int index = 0; index < longest; index++) {
                compare(path + "[" + index + "]", at(first, index), at(second, index));
            }
        } else {
            found.add(new Difference(path, recorded, recomputed));
        }
    }

    private static Optional<JsonValue> at(JsonArray array, int index) {
        return index < array.elements().size() ? Optional.of(array.elements().get(index)) : Optional.empty();
    }
}
