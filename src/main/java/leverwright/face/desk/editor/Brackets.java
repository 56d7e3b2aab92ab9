package leverwright.face.desk.editor;

import java.util.List;
import java.util.Optional;
import org.fxmisc.richtext.CodeArea;

/** Finds brackets that belong together; brackets in texts and remarks do not count. */
final class Brackets {

    private static final String OPENING = "([{";
    private static final String CLOSING = ")]}";

    /** How many lines are looked through at most in one direction. */
    private static final int FARTHEST = 400;

    private final CodeArea area;
    private final Colouring colouring;

    Brackets(CodeArea area, Colouring colouring) {
        this.area = area;
        this.colouring = colouring;
    }

    /** Returns the bracket before or after a place and its partner; empty where there is none. */
    Optional<List<SourceMark>> at(int line, int column) {
        for (int start : new int[] {column - 1, column}) {
            Optional<SourceMark> bracket = bracket(line, start);
            if (bracket.isPresent()) {
                SourceMark one = bracket.get();
                char sign = area.getText(line).charAt(start);
                Optional<SourceMark> other = OPENING.indexOf(sign) >= 0 ? forward(one, sign) : backward(one, sign);
                return other.map(partner -> List.of(one, partner));
            }
        }
        return Optional.empty();
    }

    private Optional<SourceMark> bracket(int line, int column) {
        return signs(line).stream().filter(mark -> mark.from() == column).findFirst();
    }

    private List<SourceMark> signs(int line) {
        String text = area.getText(line);
        return ScriptLexer.line(text, colouring.stateBefore(line)).pieces().stream()
                .filter(piece -> piece.kind() == ScriptLexer.Kind.SIGN
                        && (OPENING + CLOSING).indexOf(text.charAt(piece.start())) >= 0)
                .map(piece -> new SourceMark(line, piece.start(), piece.end()))
                .toList();
    }

    private Optional<SourceMark> forward(SourceMark from, char open) {
        char close = CLOSING.charAt(OPENING.indexOf(open));
        int depth = 0;
        int last = Math.min(area.getParagraphs().size() - 1, from.line() + FARTHEST);
        for (int line = from.line(); line <= last; line++) {
            String text = area.getText(line);
            for (SourceMark mark : signs(line)) {
                if (line > from.line() || mark.from() >= from.from()) {
                    char sign = text.charAt(mark.from());
                    depth += sign == open ? 1 : sign == close ? -1 : 0;
                    if (depth == 0) {
                        return Optional.of(mark);
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Optional<SourceMark> backward(SourceMark from, char close) {
        char open = OPENING.charAt(CLOSING.indexOf(close));
        int depth = 0;
        for (int line = from.line(); line >= Math.max(0, from.line() - FARTHEST); line--) {
            String text = area.getText(line);
            List<SourceMark> signs = signs(line);
            for (int i = signs.size() - 1; i >= 0; i--) {
                SourceMark mark = signs.get(i);
                if (line < from.line() || mark.from() <= from.from()) {
                    char sign = text.charAt(mark.from());
                    depth += sign == close ? 1 : sign == open ? -1 : 0;
                    if (depth == 0) {
                        return Optional.of(mark);
                    }
                }
            }
        }
        return Optional.empty();
    }
}
