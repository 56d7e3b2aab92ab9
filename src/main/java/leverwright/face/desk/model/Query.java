package leverwright.face.desk.model;

import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;

/**
 * What is sought in a workbook.
 *
 * @param text the text, or the regular expression of Java
 * @param caseMatters whether capitals and small letters differ
 * @param wholeWords whether only whole words count
 * @param expression whether the text is a regular expression
 */
public record Query(String text, boolean caseMatters, boolean wholeWords, boolean expression) {

    private static final String LETTER = "[\\p{L}\\p{N}_]";

    /**
     * Returns the pattern of the query.
     *
     * @throws IllegalArgumentException when the regular expression cannot be read, in words
     */
    Pattern pattern() {
        String sought = expression ? "(?:" + text + ")" : Pattern.quote(text);
        String all = wholeWords ? "(?<!" + LETTER + ")" + sought + "(?!" + LETTER + ")" : sought;
        int flags = Pattern.MULTILINE | (caseMatters ? 0 : Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
        try {
            Pattern.compile(expression ? text : "");
            return Pattern.compile(all, flags);
        } catch (PatternSyntaxException broken) {
            throw new IllegalArgumentException(
                    "this expression cannot be read: " + broken.getDescription() + "; mend it or seek plain text",
                    broken);
        }
    }
}
