package leverwright.face.desk.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import leverwright.workbook.document.Cell;
import leverwright.workbook.document.Workbook;

/** Finds and replaces in the texts of a workbook. Stretches of no length never count as found. */
public final class WorkbookSearch {

    /** How many characters an expression may look at in one text before it is given up. */
    private static final int MOST_STEPS = 20_000_000;

    private WorkbookSearch() {}

    /**
     * Returns every place, cell by cell from top to bottom.
     *
     * @param workbook where to look
     * @param query what to look for; an empty one stands nowhere
     * @throws IllegalArgumentException when the expression cannot be read or takes too long, in words
     */
    public static List<Match> in(Workbook workbook, Query query) {
        List<Match> all = new ArrayList<>();
        for (Cell cell : workbook.sheet()) {
            all.addAll(in(cell.id(), cell.text(), query));
        }
        return all;
    }

    /**
     * Returns every place in one text.
     *
     * @param cell the id of the text's cell
     * @param text the text
     * @param query what to look for; an empty one stands nowhere
     * @throws IllegalArgumentException when the expression cannot be read or takes too long, in words
     */
    public static List<Match> in(String cell, String text, Query query) {
        if (query.text().isEmpty()) {
            return List.of();
        }
        List<Match> found = new ArrayList<>();
        Matcher matcher = query.pattern().matcher(new Bounded(text, 0, text.length(), new int[] {MOST_STEPS}));
        while (finds(matcher)) {
            if (matcher.end() > matcher.start()) {
                found.add(new Match(cell, matcher.start(), matcher.end()));
            }
        }
        return found;
    }

    private static boolean finds(Matcher matcher) {
        try {
            return matcher.find();
        } catch (StackOverflowError deep) {
            throw tooLong();
        }
    }

    private static IllegalArgumentException tooLong() {
        return new IllegalArgumentException("this expression takes too long; seek something simpler");
    }

    /**
     * Returns the texts that replacing every place changes, by the cells' ids.
     *
     * @param workbook where to replace
     * @param query what to replace
     * @param replacement what to put there; {@code $1} is the first group of a regular expression
     * @throws IllegalArgumentException when expression or replacement cannot be read, or take too long, in words
     */
    public static Map<String, String> replaced(Workbook workbook, Query query, String replacement) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Cell cell : workbook.sheet()) {
            String text = replaced(cell.text(), query, replacement, -1);
            if (!text.equals(cell.text())) {
                texts.put(cell.id(), text);
            }
        }
        return texts;
    }

    /**
     * Returns a text with one place replaced, or every place.
     *
     * @param text the text
     * @param query what to replace
     * @param replacement what to put there
     * @param only the offset at which the place begins; -1 for every place
     * @throws IllegalArgumentException when expression or replacement cannot be read, or take too long, in words
     */
    static String replaced(String text, Query query, String replacement, int only) {
        if (query.text().isEmpty()) {
            return text;
        }
        String put = query.expression() ? replacement : Matcher.quoteReplacement(replacement);
        Matcher matcher = query.pattern().matcher(new Bounded(text, 0, text.length(), new int[] {MOST_STEPS}));
        StringBuilder changed = new StringBuilder();
        try {
            while (finds(matcher)) {
                boolean counts = matcher.end() > matcher.start() && (only < 0 || matcher.start() == only);
                matcher.appendReplacement(changed, counts ? put : Matcher.quoteReplacement(matcher.group()));
            }
        } catch (IndexOutOfBoundsException noGroup) {
            throw new IllegalArgumentException(
                    "the replacement names a group that the expression does not have; write \\$ for a plain $",
                    noGroup);
        }
        return matcher.appendTail(changed).toString();
    }

    /** A text that ends an expression which looks at it too often. */
    private record Bounded(String text, int start, int end, int[] left) implements CharSequence {
        @Override
        public int length() {
            return end - start;
        }

        @Override
        public char charAt(int index) {
            if (--left[0] < 0) {
                throw tooLong();
            }
            return text.charAt(start + index);
        }

        @Override
        public CharSequence subSequence(int from, int to) {
            return text.substring(start + from, start + to);
        }

        @Override
        public String toString() {
            return text.substring(start, end);
        }
    }
}
