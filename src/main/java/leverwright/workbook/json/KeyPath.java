package leverwright.workbook.json;

import java.util.regex.Pattern;
import tools.jackson.core.TokenStreamContext;

/** Writes the way from the top of a tree to a value as {@code sheet[2].note} or {@code dials["Torso lean"]}. */
final class KeyPath {

    private static final Pattern PLAIN_KEY = Pattern.compile("[A-Za-z_][A-Za-z0-9_-]*");
    private static final int LONGEST_SHOWN = 60;

    private KeyPath() {}

    /** Returns the step to a member, for example {@code ".note"}. */
    static String member(String key) {
        String shown = key.length() > LONGEST_SHOWN ? key.substring(0, LONGEST_SHOWN) + "…" : key;
        if (PLAIN_KEY.matcher(shown).matches()) {
            return "." + shown;
        }
        StringBuilder quoted = new StringBuilder("[");
        JsonWriter.quote(shown, quoted);
        return quoted.append(']').toString();
    }

    /** Returns the step to an element, counted from 0, for example {@code "[2]"}. */
    static String element(int index) {
        return "[" + index + "]";
    }

    /** Returns a path with a step added to it. */
    static String join(String path, String step) {
        return path.isEmpty() && step.startsWith(".") ? step.substring(1) : path + step;
    }

    /** Returns the path to where a parser stands. */
    static String of(TokenStreamContext context) {
        TokenStreamContext parent = context.getParent();
        String before = parent == null ? "" : of(parent);
        if (context.inArray() && context.hasCurrentIndex()) {
            return join(before, element(context.getCurrentIndex()));
        }
        return context.inObject() && context.currentName() != null
                ? join(before, member(context.currentName()))
                : before;
    }
}
