package leverwright.workbook.session;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Source made from a script, which knows where in the script each part of it came from. */
final class GeneratedSource {

    private record Chunk(int start, int end, int scriptStart, int scriptEnd, boolean exact) {}

    private final String script;
    private final StringBuilder text = new StringBuilder();
    private final List<Chunk> chunks = new ArrayList<>();
    private int @Nullable [] lines;

    GeneratedSource(String script) {
        this.script = script;
    }

    /** Adds text that has no place in the script. */
    GeneratedSource add(String plain) {
        text.append(plain);
        return this;
    }

    /** Adds a stretch of the script as it is. */
    GeneratedSource copy(int start, int end) {
        chunks.add(new Chunk(text.length(), text.length() + end - start, start, end, true));
        text.append(script, start, end);
        return this;
    }

    /** Adds text that stands for a stretch of the script. */
    GeneratedSource standFor(String plain, int start, int end) {
        chunks.add(new Chunk(text.length(), text.length() + plain.length(), start, end, false));
        text.append(plain);
        return this;
    }

    String text() {
        return text.toString();
    }

    String script() {
        return script;
    }

    /** Returns whether an offset lies in text that came from the script. */
    boolean isFromScript(long offset) {
        return chunks.stream().anyMatch(chunk -> chunk.start() <= offset && offset <= chunk.end());
    }

    /** Returns the offset in the script of an offset here: the nearest one where the script has no such place. */
    int toScript(long offset) {
        int nearest = 0;
        for (Chunk chunk : chunks) {
            if (offset < chunk.start()) {
                break;
            }
            nearest = offset > chunk.end()
                    ? chunk.scriptEnd()
                    : chunk.exact() ? chunk.scriptStart() + (int) (offset - chunk.start()) : chunk.scriptStart();
        }
        return nearest;
    }

    /** Returns the end in the script of a stretch that ends here. */
    int endToScript(long offset) {
        for (Chunk chunk : chunks) {
            if (chunk.start() < offset && offset <= chunk.end() && !chunk.exact()) {
                return chunk.scriptEnd();
            }
        }
        return toScript(offset);
    }

    /** Returns the line of the script for a line here, both from 1; 0 where the script has none. */
    int scriptLine(int line) {
        int[] known = lines == null ? scriptLines() : lines;
        lines = known;
        return line >= 1 && line <= known.length ? known[line - 1] : 0;
    }

    private int[] scriptLines() {
        String all = text();
        int[] result = new int[(int) all.chars().filter(each -> each == '\n').count() + 1];
        int start = 0;
        for (int i = 0; i < result.length; i++) {
            int newline = all.indexOf('\n', start);
            int end = newline < 0 ? all.length() : newline;
            result[i] = lineOf(start, end);
            start = end + 1;
        }
        return result;
    }

    private int lineOf(int start, int end) {
        for (Chunk chunk : chunks) {
            if (chunk.start() <= end && chunk.end() > start) {
                return Span.lineAt(script, toScript(Math.max(start, chunk.start())));
            }
        }
        return 0;
    }
}
