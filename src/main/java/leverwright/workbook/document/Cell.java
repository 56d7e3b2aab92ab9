package leverwright.workbook.document;

import java.util.List;
import leverwright.workbook.json.JsonObject;

/** One cell of a sheet: a note for reading or a script that computes. */
public sealed interface Cell permits NoteCell, ScriptCell {

    /** Returns the name that is this cell's own within its workbook, for example {@code "c3"}. */
    String id();

    /** Returns the text, one element a line, without line ends. */
    List<String> lines();

    /** Returns what the file says about this cell in keys that this version does not know. */
    JsonObject unknown();

    /**
     * Returns the same cell with another text.
     *
     * @param lines the text, one element a line; an element with line ends is split at them
     */
    Cell withLines(List<String> lines);

    /** Returns the text as one string, lines parted by a line feed. */
    default String text() {
        return String.join("\n", lines());
    }
}
