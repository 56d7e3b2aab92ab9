package leverwright.face.desk.editor;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * The call whose brackets a caret stands in.
 *
 * @param bracket the offset of its opening bracket
 * @param parameter in which parameter the caret stands, from 0
 */
record CallAtCaret(int bracket, int parameter) {

    /** How much of a script before the caret is looked at. */
    private static final int FARTHEST = 4000;

    /** Finds the call; empty when the caret stands in none. */
    static Optional<CallAtCaret> in(String text, int caret) {
        int start = Math.max(0, text.lastIndexOf('\n', Math.max(0, caret - FARTHEST)) + 1);
        Deque<int[]> open = new ArrayDeque<>();
        ScriptLexer.State state = ScriptLexer.State.SCRIPT;
        int line = start;
        while (line <= caret) {
            int next = text.indexOf('\n', line);
            int end = Math.min(next < 0 ? text.length() : next, caret);
            ScriptLexer.Line parted = ScriptLexer.line(text.substring(line, end), state);
            state = parted.end();
            for (ScriptLexer.Piece piece : parted.pieces()) {
                if (piece.kind() == ScriptLexer.Kind.SIGN) {
                    sign(open, text.charAt(line + piece.start()), line + piece.start());
                }
            }
            line = end + 1;
        }
        int[] last = open.peek();
        boolean call = last != null && text.charAt(last[0]) == '(';
        return call ? Optional.of(new CallAtCaret(last[0], last[1])) : Optional.empty();
    }

    private static void sign(Deque<int[]> open, char sign, int at) {
        switch (sign) {
            case '(', '[', '{' -> open.push(new int[] {at, 0});
            case ')', ']', '}' -> open.poll();
            case ',' -> {
                int[] last = open.peek();
                if (last != null) {
                    last[1]++;
                }
            }
            default -> {
                // other signs do not count
            }
        }
    }
}
