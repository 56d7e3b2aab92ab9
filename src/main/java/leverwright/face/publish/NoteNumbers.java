package leverwright.face.publish;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import leverwright.face.draw.Markup;
import leverwright.run.result.Result;

/**
 * The notes of a page. A note that only one strip has stands there in full; one that several strips share stands once in a
 * numbered list, and every result that has it names its number.
 */
final class NoteNumbers {
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    /** Numbers the notes that more than one of the strips' lists of results hold. */
    NoteNumbers(List<List<Result>> strips) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (List<Result> strip : strips) {
            Set<String> notes = new LinkedHashSet<>();
            strip.forEach(result -> notes.addAll(Notes.of(result)));
            notes.forEach(note -> counts.merge(note, 1, Integer::sum));
        }
        counts.forEach((note, count) -> {
            if (count > 1) {
                numbers.put(note, numbers.size() + 1);
            }
        });
    }

    /** Returns the notes of a result as they stand beside it. */
    String beside(Result result) {
        StringBuilder html = new StringBuilder();
        Set<Integer> shared = new TreeSet<>();
        for (String note : Notes.of(result)) {
            Integer number = numbers.get(note);
            if (number == null) {
                html.append("<p class=\"note\">Note: " + Markup.text(note) + "</p>\n");
            } else {
                shared.add(number);
            }
        }
        if (!shared.isEmpty()) {
            String links = shared.stream()
                    .map(number -> "<a href=\"#note-" + number + "\">" + number + "</a>")
                    .collect(Collectors.joining(", "));
            html.append("<p class=\"note\">" + (shared.size() == 1 ? "Note " : "Notes ") + links + "</p>\n");
        }
        return html.toString();
    }

    /** Returns the list of the numbered notes; empty when there are none. */
    String list() {
        if (numbers.isEmpty()) {
            return "";
        }
        StringBuilder html =
                new StringBuilder("<section class=\"notes\" aria-labelledby=\"notes\">\n<h2 id=\"notes\">Notes"
                        + " to the results</h2>\n<ol>\n");
        numbers.forEach(
                (note, number) -> html.append("<li id=\"note-" + number + "\">" + Markup.text(note) + "</li>\n"));
        return html.append("</ol>\n</section>\n").toString();
    }
}
