package leverwright.face.desk.editor;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.application.Platform;
import org.fxmisc.richtext.model.PlainTextChange;
import org.fxmisc.richtext.model.StyleSpans;
import org.fxmisc.richtext.model.StyleSpansBuilder;
import org.fxmisc.richtext.model.TwoDimensional.Bias;
import org.jspecify.annotations.Nullable;
import org.reactfx.Subscription;

/**
 * Colours a script line by line: after a change the lines that were touched, and those below as long as they begin in
 * another state than before. What takes long goes on in slices between pulses. Marks lie over the colours.
 */
final class Colouring {

    private static final long SLICE_NANOS = 3_000_000;

    /** What a mark says. */
    enum Mark {
        /** The stretch is wrong. */
        ERROR("mark-error"),
        /** One of two brackets that belong together. */
        BRACKET("mark-bracket"),
        /** What is sought stands here. */
        FOUND("mark-found"),
        /** The place at which the search stands. */
        HERE("mark-here");

        private final List<String> style;

        Mark(String style) {
            this.style = List.of(style);
        }
    }

    private static final Map<ScriptLexer.Kind, Collection<String>> STYLES = styles();

    private final SourceArea area;
    private final boolean script;
    private final Subscription changes;
    private final List<ScriptLexer.@Nullable State> ends = new ArrayList<>();
    private final Map<Mark, List<SourceMark>> marks = new EnumMap<>(Mark.class);

    /** Lines from here on are to be coloured; -1 when all are. */
    private int from = -1;

    /** The last line that must be coloured, whatever its state. */
    private int until;

    private boolean scheduled;
    private boolean disposed;

    /**
     * Colours an area from now on.
     *
     * @param area the area
     * @param script whether it holds a script; other text gets marks only
     */
    Colouring(SourceArea area, boolean script) {
        this.area = area;
        this.script = script;
        for (int i = 0; i < area.getParagraphs().size(); i++) {
            ends.add(null);
        }
        from = 0;
        until = ends.size() - 1;
        changes = area.multiPlainChanges().subscribe(all -> {
            all.forEach(this::changed);
            work();
        });
        work();
    }

    private static Map<ScriptLexer.Kind, Collection<String>> styles() {
        Map<ScriptLexer.Kind, Collection<String>> styles = new EnumMap<>(ScriptLexer.Kind.class);
        styles.put(ScriptLexer.Kind.LANGUAGE, List.of("script-language"));
        styles.put(ScriptLexer.Kind.NAME, List.of());
        styles.put(ScriptLexer.Kind.CONSTANT, List.of("script-constant"));
        styles.put(ScriptLexer.Kind.TEXT, List.of("script-text"));
        styles.put(ScriptLexer.Kind.DIGITS, List.of("script-digits"));
        styles.put(ScriptLexer.Kind.REMARK, List.of("script-remark"));
        styles.put(ScriptLexer.Kind.SIGN, List.of());
        return styles;
    }

    /** Returns in what the line above a line ends. */
    ScriptLexer.State stateBefore(int line) {
        ScriptLexer.State state = line <= 0 || line > ends.size() ? null : ends.get(line - 1);
        return state == null ? ScriptLexer.State.SCRIPT : state;
    }

    private void changed(PlainTextChange change) {
        int first = area.offsetToPosition(Math.min(change.getPosition(), area.getLength()), Bias.Forward)
                .getMajor();
        int removed = count(change.getRemoved());
        int inserted = count(change.getInserted());
        int last = Math.min(first + removed + 1, ends.size());
        if (removed != inserted) {
            ends.subList(first, last).clear();
            ends.addAll(first, Collections.nCopies(inserted + 1, null));
        }
        int moved = inserted - removed;
        for (Map.Entry<Mark, List<SourceMark>> entry : marks.entrySet()) {
            List<SourceMark> kept = new ArrayList<>();
            for (SourceMark mark : entry.getValue()) {
                if (mark.line() < first) {
                    kept.add(mark);
                } else if (mark.line() > first + removed) {
                    kept.add(mark.movedBy(moved));
                }
            }
            entry.setValue(kept);
        }
        until = Math.max(from < 0 ? 0 : until + moved, first + inserted);
        from = from < 0 ? first : Math.min(from, first);
    }

    private static int count(String text) {
        return (int) text.chars().filter(each -> each == '\n').count();
    }

    private void work() {
        long end = System.nanoTime() + SLICE_NANOS;
        int line = from;
        int size = area.getParagraphs().size();
        while (line >= 0 && line < size) {
            boolean same = colour(line);
            line++;
            if (line > until && same) {
                break;
            }
            if (System.nanoTime() > end && line < size) {
                from = line;
                schedule();
                return;
            }
        }
        from = -1;
    }

    private void schedule() {
        if (!scheduled) {
            scheduled = true;
            Platform.runLater(() -> {
                scheduled = false;
                if (!disposed) {
                    work();
                }
            });
        }
    }

    /** Colours a line; returns whether it ends as it did before. */
    private boolean colour(int line) {
        String text = area.getText(line);
        if (!script) {
            paint(line, text, List.of());
            return true;
        }
        ScriptLexer.Line parted = ScriptLexer.line(text, stateBefore(line));
        boolean same = parted.end() == ends.get(line);
        ends.set(line, parted.end());
        paint(line, text, parted.pieces());
        return same;
    }

    private void paint(int line, String text, List<ScriptLexer.Piece> pieces) {
        if (text.isEmpty()) {
            return;
        }
        StyleSpans<Collection<String>> spans = spans(text, pieces);
        for (Map.Entry<Mark, List<SourceMark>> entry : marks.entrySet()) {
            for (SourceMark mark : entry.getValue()) {
                if (mark.line() == line) {
                    spans = over(spans, mark, text.length(), entry.getKey().style);
                }
            }
        }
        if (!spans.equals(area.getStyleSpans(line))) {
            area.setStyleSpans(line, 0, spans);
        }
    }

    private static StyleSpans<Collection<String>> spans(String text, List<ScriptLexer.Piece> pieces) {
        StyleSpansBuilder<Collection<String>> spans = new StyleSpansBuilder<>();
        int done = 0;
        for (ScriptLexer.Piece piece : pieces) {
            spans.add(List.of(), piece.start() - done);
            spans.add(STYLES.getOrDefault(piece.kind(), List.of()), piece.end() - piece.start());
            done = piece.end();
        }
        spans.add(List.of(), text.length() - done);
        return spans.create();
    }

    private static StyleSpans<Collection<String>> over(
            StyleSpans<Collection<String>> spans, SourceMark mark, int length, List<String> style) {
        int start = Math.max(0, Math.min(mark.from(), length));
        int end = Math.max(start, Math.min(mark.to(), length));
        if (start == end) {
            return spans;
        }
        StyleSpans<Collection<String>> layer = new StyleSpansBuilder<Collection<String>>()
                .add(List.of(), start)
                .add(style, end - start)
                .add(List.of(), length - end)
                .create();
        return spans.overlay(layer, (below, above) -> {
            if (above.isEmpty()) {
                return below;
            }
            List<String> both = new ArrayList<>(below);
            both.addAll(above);
            return both;
        });
    }

    /** Puts marks in the place of those of the same kind. */
    void mark(Mark kind, List<SourceMark> now) {
        List<SourceMark> before = marks.getOrDefault(kind, List.of());
        if (before.equals(now)) {
            return;
        }
        marks.put(kind, new ArrayList<>(now));
        Set<Integer> lines = new LinkedHashSet<>();
        before.forEach(mark -> lines.add(mark.line()));
        now.forEach(mark -> lines.add(mark.line()));
        for (int line : lines) {
            boolean waits = from >= 0 && line >= from;
            if (line < area.getParagraphs().size() && !waits) {
                colour(line);
            }
        }
    }

    /** Returns the marks of a kind as they lie now. */
    List<SourceMark> marks(Mark kind) {
        return List.copyOf(marks.getOrDefault(kind, List.of()));
    }

    void dispose() {
        disposed = true;
        changes.unsubscribe();
    }
}
