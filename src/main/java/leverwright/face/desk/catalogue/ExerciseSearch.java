package leverwright.face.desk.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import leverwright.face.desk.editor.NearWords;
import leverwright.workbook.scenario.ExerciseShelf;

/** Finds exercises by family and by words, also misspelt ones: name first, then what they train, then the rest. */
final class ExerciseSearch {
    private ExerciseSearch() {}

    /** Returns the families, in the order of the catalogue. */
    static List<String> families() {
        LinkedHashSet<String> families = new LinkedHashSet<>();
        ExerciseShelf.entries().forEach(entry -> families.add(entry.family()));
        return List.copyOf(families);
    }

    /**
     * Returns what fits, the best first; in the order of the catalogue where no words are sought.
     *
     * @param family one of the families, or nothing for all of them
     * @param sought words in any order
     */
    static List<ExerciseShelf.Entry> find(String family, String sought) {
        List<String> words = NearWords.of(sought);
        Map<ExerciseShelf.Entry, Double> fits = new LinkedHashMap<>();
        for (ExerciseShelf.Entry entry : ExerciseShelf.entries()) {
            if (family.isEmpty() || entry.family().equals(family)) {
                fits.put(entry, fit(words, entry));
            }
        }
        if (words.isEmpty()) {
            return List.copyOf(fits.keySet());
        }
        double best =
                fits.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        List<Map.Entry<ExerciseShelf.Entry, Double>> found = new ArrayList<>(fits.entrySet());
        found.removeIf(each -> each.getValue() <= 0 || each.getValue() < best / 3);
        found.sort(Comparator.comparingDouble((Map.Entry<ExerciseShelf.Entry, Double> each) -> -each.getValue()));
        return found.stream().map(Map.Entry::getKey).toList();
    }

    private static double fit(List<String> words, ExerciseShelf.Entry entry) {
        return NearWords.fit(words, NearWords.of(entry.name()), 3)
                + NearWords.fit(words, NearWords.of(String.join(" ", entry.trains())), 2)
                + NearWords.fit(
                        words,
                        NearWords.of(entry.family() + " " + String.join(" ", entry.drivenBy()) + " "
                                + String.join(" ", entry.loads()) + " " + String.join(" ", entry.supports())),
                        1);
    }
}
