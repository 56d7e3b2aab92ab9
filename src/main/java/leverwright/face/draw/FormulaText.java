package leverwright.face.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Formulas in a line of a note: what stands between two dollar signs on one line, such as {@code $M = W·d_{hip} / 2$} or
 * {@code $v^2$}. Letters lean, an index stands lower and a power higher; {@code \\frac{a}{b}} is a fraction and
 * {@code \\sqrt{a}} a root, each of which may hold others; everything else is as written.
 */
public final class FormulaText {

    private static final Pattern FORMULA = Pattern.compile("\\$(?! )([^$\\n]+?)(?<! )\\$(?![0-9])");
    private static final Pattern PART =
            Pattern.compile("[_^](?:\\{([^{}]*)\\}|(\\p{L}|\\p{N}+))|(\\p{L}+)|([^\\p{L}_^\\\\]+|[_^\\\\])");

    private static final String FRACTION = "\\frac";
    private static final String ROOT = "\\sqrt";

    /** A file may hold any text: what is nested deeper stands as written. */
    private static final int DEEPEST = 8;

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
        POWER,
        /** A fraction: what stands above its line and what below. */
        FRACTION,
        /** A square root of what stands under it. */
        ROOT
    }

    /**
     * A piece of a line.
     *
     * @param text its characters; those of a fraction or root in one line, as {@code (a)/(b)} and {@code √(a)}
     * @param kind what it is
     * @param begins whether a formula begins with it
     * @param parts what a fraction has above and below its line, or a root under it; empty for any other kind
     */
    public record Piece(String text, Kind kind, boolean begins, List<List<Piece>> parts) {
        /** Copies the parts. */
        public Piece {
            parts = parts.stream().map(List::copyOf).toList();
        }

        /** Makes a piece without parts. */
        public Piece(String text, Kind kind, boolean begins) {
            this(text, kind, begins, List.of());
        }
    }

    private FormulaText() {}

    /** Parts a line into plain words and the pieces of its formulas; the texts together are the line without its signs of form. */
    public static List<Piece> pieces(String line) {
        List<Piece> pieces = new ArrayList<>();
        Matcher formula = FORMULA.matcher(line);
        int done = 0;
        while (formula.find()) {
            words(pieces, line.substring(done, formula.start()));
            parts(pieces, formula.group(1), true, 0);
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

    private static void parts(List<Piece> pieces, String formula, boolean first, int depth) {
        Matcher part = PART.matcher(formula);
        boolean begins = first;
        int at = 0;
        while (at < formula.length()) {
            Braced fraction = depth < DEEPEST ? Braced.of(formula, at, FRACTION, 2) : null;
            Braced root = depth < DEEPEST ? Braced.of(formula, at, ROOT, 1) : null;
            if (fraction != null) {
                List<Piece> above = inside(fraction.contents().get(0), depth);
                List<Piece> below = inside(fraction.contents().get(1), depth);
                String text = "(" + text(above) + ")/(" + text(below) + ")";
                pieces.add(new Piece(text, Kind.FRACTION, begins, List.of(above, below)));
                at = fraction.end();
            } else if (root != null) {
                List<Piece> under = inside(root.contents().get(0), depth);
                pieces.add(new Piece("√(" + text(under) + ")", Kind.ROOT, begins, List.of(under)));
                at = root.end();
            } else {
                part.find(at);
                pieces.add(plain(part, begins));
                at = part.end();
            }
            begins = false;
        }
    }

    private static Piece plain(Matcher part, boolean begins) {
        String small = part.group(1) != null ? part.group(1) : part.group(2);
        if (small != null) {
            return new Piece(small, part.group().charAt(0) == '_' ? Kind.INDEX : Kind.POWER, begins);
        }
        return part.group(3) != null
                ? new Piece(part.group(3), Kind.LETTERS, begins)
                : new Piece(part.group(4), Kind.SIGNS, begins);
    }

    private static List<Piece> inside(String formula, int depth) {
        List<Piece> pieces = new ArrayList<>();
        parts(pieces, formula.strip(), false, depth + 1);
        return pieces;
    }

    private static String text(List<Piece> pieces) {
        StringBuilder text = new StringBuilder();
        pieces.forEach(piece -> text.append(piece.text()));
        return text.toString();
    }

    /** A word of form with what stands in the braces behind it. */
    private record Braced(List<String> contents, int end) {

        /** Returns it where it begins at an offset with all its braces; null otherwise. */
        static @Nullable Braced of(String formula, int start, String word, int braces) {
            if (!formula.startsWith(word, start)) {
                return null;
            }
            List<String> contents = new ArrayList<>();
            int at = start + word.length();
            for (int i = 0; i < braces; i++) {
                int end = at < formula.length() && formula.charAt(at) == '{' ? closing(formula, at) : -1;
                if (end < 0) {
                    return null;
                }
                contents.add(formula.substring(at + 1, end));
                at = end + 1;
            }
            return new Braced(contents, at);
        }

        private static int closing(String formula, int opening) {
            int open = 0;
            for (int i = opening; i < formula.length(); i++) {
                open += formula.charAt(i) == '{' ? 1 : formula.charAt(i) == '}' ? -1 : 0;
                if (open == 0) {
                    return i;
                }
            }
            return -1;
        }
    }
}
