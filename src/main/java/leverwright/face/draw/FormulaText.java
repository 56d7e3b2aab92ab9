package leverwright.face.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Formulas in a line of a note: what stands between two dollar signs on one line, such as {@code $M = W·d_{hip} / 2$} or
 * {@code $v^2$}. Letters lean, an index stands lower and a power higher; everything else is as written.
 */
public final class FormulaText {

    private static final Pattern FORMULA = Pattern.compile("\\$(?! )([^$\\n]+?)(?<! )\\$(?![0-9])");
    private static final Pattern PART =
            Pattern.compile("[_^](?:\\{([^{}]*)\\}|(\\p{L}|\\p{N}+))|(\\p{L}+)|([^\\p{L}_^]+|[_^])");

    /** What a piece of a formula is. */
    public enum Kind {
        /** Words outside any formula. */
        WORDS,
        /** Letters of a formula. */
        LETTERS,
        /** Numbers and signs of a formula. */
        SIGNS,
        /** An index of what stands before it. */
        INDEX,
        /** A power of what stands before it. */
        POWER
    }

    /**
     * A piece of a line.
     *
     * @param text its characters
     * @param kind what it is
     * @param begins whether a formula begins with it
     */
    public record Piece(String text, Kind kind, boolean begins) {}

    private FormulaText() {}

    /** Parts a line into plain words and the pieces of its formulas; the texts together are the line without its signs of form. */
    public static List<Piece> pieces(String line) {
        List<Piece> pieces = new ArrayList<>();
        Matcher formula = FORMULA.matcher(line);
        int done = 0;
        while (formula.find()) {
            words(pieces, line.substring(done, formula.start()));
            parts(pieces, formula.group(1));
            done = formula.end();
        }
        words(pieces, line.substring(done));
        return pieces;
    }

    private static void words(List<Piece> pieces, String words) {
        if (!words.isEmpty()) {
            pieces.add(new Piece(words, Kind.WORDS, false));
        }
    }

    private static void parts(List<Piece> pieces, String formula) {
        Matcher part = PART.matcher(formula);
        boolean begins = true;
        while (part.find()) {
            String small = part.group(1) != null ? part.group(1) : part.group(2);
            if (small != null) {
                Kind kind = part.group().charAt(0) == '_' ? Kind.INDEX : Kind.POWER;
                pieces.add(new Piece(small, kind, begins));
            } else if (part.group(3) != null) {
                pieces.add(new Piece(part.group(3), Kind.LETTERS, begins));
            } else {
                pieces.add(new Piece(part.group(4), Kind.SIGNS, begins));
            }
            begins = false;
        }
    }
}
