package leverwright.face.desk.editor;

/**
 * A stretch of one line that is marked.
 *
 * @param line the line, from 0
 * @param from the first column, from 0
 * @param to the column after the last
 * @param words what is to be said about it; empty for nothing
 */
record SourceMark(int line, int from, int to, String words) {

    SourceMark(int line, int from, int to) {
        this(line, from, to, "");
    }

    SourceMark movedBy(int lines) {
        return new SourceMark(line + lines, from, to, words);
    }
}
