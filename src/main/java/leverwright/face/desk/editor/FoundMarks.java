package leverwright.face.desk.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.Finding;
import leverwright.face.desk.model.Match;
import org.fxmisc.richtext.model.TwoDimensional.Bias;

/** Marks in one text what is sought in the workbook, and shows the place at which the search is. */
final class FoundMarks {

    private final Finding finding;
    private final CellView cell;
    private final SourceArea area;
    private final Colouring colouring;
    private final InvalidationListener follow = changed -> later();
    private final WeakInvalidationListener weakly = new WeakInvalidationListener(follow);
    private boolean waiting;
    private boolean disposed;
    private Optional<Match> shown = Optional.empty();

    FoundMarks(Finding finding, CellView cell, SourceArea area, Colouring colouring) {
        this.finding = finding;
        this.cell = cell;
        this.area = area;
        this.colouring = colouring;
        finding.query().addListener(weakly);
        finding.here().addListener(weakly);
        finding.words().addListener(weakly);
        cell.text().addListener(weakly);
        later();
    }

    private void later() {
        // A property that nobody reads does not tell again.
        finding.query().get();
        Optional<Match> here = finding.here().get();
        finding.words().get();
        cell.text().get();
        if (!waiting && (finding.query().get().isPresent() || here.isPresent() || !shown.isEmpty() || isMarked())) {
            waiting = true;
            Platform.runLater(this::mark);
        }
    }

    private boolean isMarked() {
        return !colouring.marks(Colouring.Mark.FOUND).isEmpty()
                || !colouring.marks(Colouring.Mark.HERE).isEmpty();
    }

    private void mark() {
        waiting = false;
        if (disposed) {
            return;
        }
        Optional<Match> here = finding.here().get().filter(match -> match.cell().equals(cell.id()));
        List<SourceMark> all = new ArrayList<>();
        if (finding.query().get().isPresent()) {
            finding.matches().stream()
                    .filter(match -> match.cell().equals(cell.id()))
                    .forEach(match -> all.addAll(marks(match)));
        }
        colouring.mark(Colouring.Mark.FOUND, all);
        colouring.mark(Colouring.Mark.HERE, here.map(this::marks).orElse(List.of()));
        if (here.isPresent() && !here.equals(shown)) {
            show(here.get());
        }
        shown = here;
    }

    private List<SourceMark> marks(Match match) {
        List<SourceMark> marks = new ArrayList<>();
        int length = area.getLength();
        var from = area.offsetToPosition(Math.min(match.from(), length), Bias.Forward);
        var to = area.offsetToPosition(Math.min(match.to(), length), Bias.Forward);
        for (int line = from.getMajor(); line <= to.getMajor(); line++) {
            int start = line == from.getMajor() ? from.getMinor() : 0;
            int end = line == to.getMajor() ? to.getMinor() : area.getParagraphLength(line);
            marks.add(new SourceMark(line, start, end));
        }
        return marks;
    }

    private void show(Match match) {
        int end = Math.min(match.to(), area.getLength());
        area.selectRange(Math.min(match.from(), end), end);
        area.requestFollowCaret();
        Platform.runLater(() -> Reveal.in(area, place()));
    }

    /** Returns where the caret is, in the area's own coordinates. */
    private Bounds place() {
        return area.getCaretBounds()
                .map(area::screenToLocal)
                .orElseGet(() -> new BoundingBox(0, 0, 1, Math.min(20, area.getHeight())));
    }

    void dispose() {
        disposed = true;
        finding.query().removeListener(weakly);
        finding.here().removeListener(weakly);
        finding.words().removeListener(weakly);
        cell.text().removeListener(weakly);
    }
}
