package leverwright.run.result;

import java.util.List;

/**
 * Text: what a cell printed, or a value that has no better form.
 *
 * @param title what the text is; empty for printed output
 * @param text the text, lines parted by a line feed
 * @param leftOut how many characters were cut off because the text was too long; 0 or more
 * @param notes cautions and remarks
 */
public record TextResult(String title, String text, long leftOut, List<String> notes) implements Result {

    /**
     * Copies the notes.
     *
     * @throws IllegalArgumentException when {@code leftOut} is negative
     */
    public TextResult {
        if (leftOut < 0) {
            throw new IllegalArgumentException("characters left out must be 0 or more, not " + leftOut);
        }
        notes = List.copyOf(notes);
    }

    /**
     * Returns text without title, cut or notes.
     *
     * @param text the text
     */
    public static TextResult of(String text) {
        return new TextResult("", text, 0, List.of());
    }
}
