package leverwright.workbook.session;

/**
 * A stretch of a script.
 *
 * @param line the first line, from 1
 * @param column the first column, from 1, counted in UTF-16 units
 * @param endLine the line of the end
 * @param endColumn the column after the last character
 */
public record Span(int line, int column, int endLine, int endColumn) {

    /** Returns the stretch between two offsets of a text. */
    static Span of(String text, int start, int end) {
        int from = Math.max(0, Math.min(start, text.length()));
        int to = Math.max(from, Math.min(end, text.length()));
        return new Span(lineAt(text, from), columnAt(text, from), lineAt(text, to), columnAt(text, to));
    }

    static int lineAt(String text, int offset) {
        int line = 1;
        for (int i = 0; i < offset; i++) {
            if (text.charAt(i) == '\n') {
                line++;
            }
        }
        return line;
    }

    private static int columnAt(String text, int offset) {
        return offset - text.lastIndexOf('\n', offset - 1);
    }

    /** Returns a whole line. */
    static Span ofLine(String text, int line) {
        int start = 0;
        for (int i = 1; i < line; i++) {
            int next = text.indexOf('\n', start);
            start = next < 0 ? text.length() : next + 1;
        }
        int end = text.indexOf('\n', start);
        return of(text, start, end < 0 ? text.length() : end);
    }
}
