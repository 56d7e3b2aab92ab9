package leverwright.face.desk.editor;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** Words that are the same or nearly so: beginnings, and one or two letters that differ. */
public final class NearWords {

    /** Words that tell nothing of what is sought. */
    private static final Set<String> EMPTY = Set.of(
            "a", "an", "the", "of", "on", "in", "is", "to", "at", "by", "if", "what", "how", "and", "for", "i", "with");

    private static final int LONG = 7;
    private static final int SHORT = 4;

    private NearWords() {}

    /** Returns the words of a text, small, without those that tell nothing. */
    public static List<String> of(String text) {
        return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty() && !EMPTY.contains(word))
                .toList();
    }

    /** Returns how well words stand in a text: the weight for each that does, less for one that nearly does. */
    public static double fit(List<String> sought, List<String> text, double weight) {
        double sum = 0;
        for (String word : sought) {
            double best = 0;
            for (String each : text) {
                best = Math.max(best, likeness(word, each));
            }
            sum += best * weight;
        }
        return sum;
    }

    private static double likeness(String sought, String word) {
        if (word.equals(sought)) {
            return 1;
        }
        if (word.startsWith(sought) && sought.length() > 1) {
            return 0.8;
        }
        if (sought.startsWith(word) && word.length() >= SHORT) {
            return 0.6;
        }
        if (sought.length() < SHORT || word.length() < SHORT) {
            return 0;
        }
        int most = sought.length() >= LONG ? 2 : 1;
        return distance(sought, word) <= most ? 0.5 : 0;
    }

    /** Returns how many letters must be put in, left out, changed or swapped with their neighbour. */
    static int distance(String one, String other) {
        int[][] steps = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                if (i == 0 || j == 0) {
                    steps[i][j] = i + j;
                    continue;
                }
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                int best = Math.min(Math.min(steps[i - 1][j] + 1, steps[i][j - 1] + 1), steps[i - 1][j - 1] + change);
                boolean swapped = i > 1
                        && j > 1
                        && one.charAt(i - 1) == other.charAt(j - 2)
                        && one.charAt(i - 2) == other.charAt(j - 1);
                steps[i][j] = swapped ? Math.min(best, steps[i - 2][j - 2] + 1) : best;
            }
        }
        return steps[one.length()][other.length()];
    }
}
