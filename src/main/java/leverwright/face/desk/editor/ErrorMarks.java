package leverwright.face.desk.editor;

import java.util.ArrayList;
import java.util.List;
import leverwright.workbook.session.Span;
import org.fxmisc.richtext.CodeArea;

/** The stretches of lines that a span of a script covers. */
final class ErrorMarks {

    private ErrorMarks() {}

    /** Returns the stretches; a span without length marks the character at it, or the one before at a line's end. */
    static List<SourceMark> of(Span span, CodeArea area) {
        int lines = area.getParagraphs().size();
        int first = Math.min(span.line(), lines) - 1;
        int last = Math.min(Math.max(span.endLine(), span.line()), lines) - 1;
        List<SourceMark> marks = new ArrayList<>();
        for (int line = Math.max(0, first); line <= last; line++) {
            int length = area.getParagraphLength(line);
            int from = line == first ? Math.min(span.column() - 1, length) : Lines.blanks(area.getText(line));
            int to = line == last && last == span.endLine() - 1 ? Math.min(span.endColumn() - 1, length) : length;
            if (to <= from && first == last) {
                to = Math.min(from + 1, length);
                from = Math.max(0, to - 1);
            }
            if (to > from) {
                marks.add(new SourceMark(line, from, to));
            }
        }
        return marks;
    }
}
