package leverwright.face.desk.editor;

import java.util.List;
import java.util.function.UnaryOperator;

/** What keys do to whole lines of a script: indent, outdent, remarks. */
final class Lines {

    /** How many columns one step of indentation takes. */
    static final int STEP = 4;

    private static final String REMARK = "// ";

    private Lines() {}

    /** What Enter puts in place of the selection: a text, and how far into it the caret goes. */
    record Break(String text, int caret) {}

    /**
     * Returns the line break for a place.
     *
     * @param before the line up to the caret
     * @param after the line from the caret on
     */
    static Break lineBreak(String before, String after) {
        String indent = before.substring(0, blanks(before));
        String ending = before.strip();
        boolean opens = ending.endsWith("{") || ending.endsWith("(") || ending.endsWith("[");
        String text = "\n" + indent + (opens ? " ".repeat(STEP) : "");
        String rest = after.strip();
        boolean closes = rest.startsWith("}") || rest.startsWith(")") || rest.startsWith("]");
        return new Break(opens && closes ? text + "\n" + indent : text, text.length());
    }

    /** Returns lines moved one step to the right; empty ones stay empty. */
    static List<String> indented(List<String> lines) {
        return changed(lines, line -> line.isBlank() ? line : " ".repeat(STEP) + line);
    }

    /** Returns lines moved one step to the left, as far as they can. */
    static List<String> outdented(List<String> lines) {
        return changed(lines, Lines::outdented);
    }

    private static String outdented(String line) {
        return line.startsWith("\t") ? line.substring(1) : line.substring(Math.min(STEP, blanks(line)));
    }

    /** Returns lines made remarks, or, when all that say something are remarks, made script again. */
    static List<String> toggled(List<String> lines) {
        boolean all = lines.stream()
                .filter(line -> !line.isBlank())
                .allMatch(line -> line.stripLeading().startsWith("//"));
        int column = lines.stream()
                .filter(line -> !line.isBlank())
                .mapToInt(Lines::blanks)
                .min()
                .orElse(lines.get(0).length());
        return changed(lines, line -> {
            if (line.isBlank() && lines.size() > 1) {
                return line;
            }
            return all && !line.isBlank()
                    ? uncommented(line)
                    : line.substring(0, Math.min(column, line.length()))
                            + REMARK
                            + line.substring(Math.min(column, line.length()));
        });
    }

    private static String uncommented(String line) {
        int start = blanks(line);
        int skip = line.startsWith(REMARK, start) ? REMARK.length() : 2;
        return line.substring(0, start) + line.substring(start + skip);
    }

    private static List<String> changed(List<String> lines, UnaryOperator<String> change) {
        return lines.stream().map(change).toList();
    }

    /** Returns how many blanks and tabs a line begins with. */
    static int blanks(String line) {
        int count = 0;
        while (count < line.length() && (line.charAt(count) == ' ' || line.charAt(count) == '\t')) {
            count++;
        }
        return count;
    }
}
