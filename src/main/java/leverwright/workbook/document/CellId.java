package leverwright.workbook.document;

import java.util.regex.Pattern;

/** What a cell may be called: names stand in files, in pages as anchors and in messages, so they are kept plain. */
final class CellId {

    /** The allowed names in words, for messages. */
    static final String ALLOWED = "1 to 64 letters (a to z, A to Z), digits, hyphens or underscores";

    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9_-]{1,64}");

    private CellId() {}

    /** Returns whether a cell may have this name. */
    static boolean isAllowed(String id) {
        return PLAIN.matcher(id).matches();
    }

    /** Refuses a name that is not allowed. */
    static void require(String id) {
        if (!isAllowed(id)) {
            throw new IllegalArgumentException("a cell cannot be called \"" + id + "\"; allowed are " + ALLOWED);
        }
    }
}
