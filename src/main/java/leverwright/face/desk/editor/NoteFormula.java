package leverwright.face.desk.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Formulas in a note: what stands between two dollar signs on one line, such as {@code $M = W·d_{hip} / 2$} or
 * {@code $v^2$}. Letters lean, an index stands lower and a power higher; everything else is as written.
 */
final class NoteFormula {

    private static final Pattern FORMULA = Pattern.compile("\\$(?! )([^$\\n]+?)(?<! )\\$(?![0-9])");
    private static final Pattern PART =
            Pattern.compile("[_^](?:\\{([^{}]*)\\}|(\\p{L}|\\p{N}+))|(\\p{L}+)|([^\\p{L}_^]+|[_^])");

    /**
     * A piece of a line.
     *
     * @param text its characters
     * @param style its style class; empty for plain words
     * @param shift how much lower it stands, in sizes of its text; negative is higher
     */
    record Piece(String text, String style, double shift) {}

    private NoteFormula() {}

    /** Parts a line into plain words and the pieces of its formulas. */
    static List<Piece> pieces(String line) {
        List<Piece> pieces = new ArrayList<>();
        Matcher formula = FORMULA.matcher(line);
        int done = 0;
        while (formula.find()) {
            plain(pieces, line.substring(done, formula.start()));
            parts(pieces, formula.group(1));
            done = formula.end();
        }
        plain(pieces, line.substring(done));
        return pieces;
    }

    private static void plain(List<Piece> pieces, String words) {
        if (!words.isEmpty()) {
            pieces.add(new Piece(words, "", 0));
        }
    }

    private static void parts(List<Piece> pieces, String formula) {
        Matcher part = PART.matcher(formula);
        while (part.find()) {
            String small = part.group(1) != null ? part.group(1) : part.group(2);
            if (small != null) {
                boolean index = part.group().charAt(0) == '_';
                pieces.add(new Piece(small, "formula-small", index ? 0.28 : -0.42));
            } else if (part.group(3) != null) {
                pieces.add(new Piece(part.group(3), "formula-letter", 0));
            } else {
                pieces.add(new Piece(part.group(4), "formula-sign", 0));
            }
        }
    }
}
