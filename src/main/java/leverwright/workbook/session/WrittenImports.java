package leverwright.workbook.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The imports that cells write. An import holds from its cell down, until a cell below imports the same simple name from
 * elsewhere; within one cell a simple name is imported once, since JShell would silently keep the last.
 */
final class WrittenImports {

    private static final Pattern SINGLE =
            Pattern.compile("import\\s+(static\\s+)?([\\w.\\s]+?)\\s*\\.\\s*(\\w+)\\s*;\\s*", Pattern.DOTALL);

    private WrittenImports() {}

    /** Returns the imports of a cell as written. */
    static List<String> of(ParsedCell cell) {
        return cell.elements().stream()
                .filter(element -> element.kind() == Part.Kind.IMPORT)
                .map(element -> cell.script().text().substring(element.start(), element.end()))
                .toList();
    }

    /** Returns those of the imports from above that still hold in a cell, each once, in their order. */
    static List<String> holding(List<String> carried, ParsedCell cell) {
        Set<String> taken = new LinkedHashSet<>();
        of(cell).forEach(text -> taken.add(nameKey(text)));
        List<String> held = new ArrayList<>();
        for (int i = carried.size() - 1; i >= 0; i--) {
            if (taken.add(nameKey(carried.get(i)))) {
                held.add(0, carried.get(i));
            }
        }
        return held;
    }

    /** Returns what is wrong when a cell imports one simple name from two places; null when it does not. */
    static @Nullable Fault clash(ParsedCell cell) {
        Map<String, String> sources = new LinkedHashMap<>();
        String script = cell.script().text();
        for (Part element : cell.elements()) {
            Matcher single = SINGLE.matcher(script.substring(element.start(), element.end()));
            if (element.kind() != Part.Kind.IMPORT || !single.matches()) {
                continue;
            }
            String from = single.group(2).replaceAll("\\s", "");
            String before = sources.putIfAbsent((single.group(1) == null ? "" : "static ") + single.group(3), from);
            if (before != null && !before.equals(from)) {
                String words =
                        "two imports bring the name " + single.group(3) + ", from " + before + " and from " + from
                                + "; import one, and write the other with its class, as in "
                                + from.substring(from.lastIndexOf('.') + 1) + "." + single.group(3);
                return new Fault(words, Span.of(script, element.start(), element.end()));
            }
        }
        return null;
    }

    /** What an import brings: a simple name, or the whole text where it brings many. */
    private static String nameKey(String text) {
        Matcher single = SINGLE.matcher(text);
        return single.matches() ? (single.group(1) == null ? "" : "static ") + single.group(3) : text.strip();
    }
}
