package leverwright.face.desk.editor;

/**
 * A stretch of one line that is marked.
 *
 * @param line the line, from 0
 * @param from the first column, from 0
 * @param to the column after the last
 */
record SourceMark(int line, int from, int to) {

    SourceMark movedBy(int lines) {
        return new SourceMark(line + lines, from, to);
    }
}
