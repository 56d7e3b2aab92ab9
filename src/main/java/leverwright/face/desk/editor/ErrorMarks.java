package leverwright.face.desk.editor;

import java.util.ArrayList;
import java.util.List;
import leverwright.workbook.session.Fault;
import leverwright.workbook.session.Span;
import org.fxmisc.richtext.CodeArea;

/** The stretches of lines that are wrong in a script. */
final class ErrorMarks {

    private ErrorMarks() {}

    /** Returns the stretches of every fault, each with its words. */
    static List<SourceMark> of(List<Fault> faults, CodeArea area) {
        List<SourceMark> marks = new ArrayList<>();
        for (Fault fault : faults) {
            marks.addAll(of(fault, area));
        }
        return marks;
    }

    /** A span without length marks the character at it, or the one before at a line's end; so does one of a line's end alone. */
    private static List<SourceMark> of(Fault fault, CodeArea area) {
        Span span = fault.span();
        int lines = area.getParagraphs().size();
        int first = Math.min(span.line(), lines) - 1;
        int last = Math.min(Math.max(span.endLine(), span.line()), lines) - 1;
        List<SourceMark> marks = new ArrayList<>();
        for (int line = Math.max(0, first); line <= last; line++) {
            int length = area.getParagraphLength(line);
            int from = line == first ? Math.min(span.column() - 1, length) : Lines.blanks(area.getText(line));
            int to = line == last && last == span.endLine() - 1 ? Math.min(span.endColumn() - 1, length) : length;
            boolean atEnd = line == first && from == length;
            if (to <= from && (first == last || atEnd)) {
                to = Math.min(from + 1, length);
                from = Math.max(0, to - 1);
            }
            if (to > from) {
                marks.add(new SourceMark(line, from, to, fault.message()));
            }
        }
        return marks;
    }
}
