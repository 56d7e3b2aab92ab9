package leverwright.workbook.document;

import java.util.List;
import leverwright.workbook.json.JsonObject;

/**
 * A script: Java that computes.
 *
 * @param id the cell's name; letters, digits, hyphen and underscore, at most 64
 * @param title what the script is for; empty when it has no title
 * @param lines the script, one element a line
 * @param unknown keys of the file that this version does not know
 */
public record ScriptCell(String id, String title, List<String> lines, JsonObject unknown) implements Cell {

    /**
     * Checks the name and splits elements at line ends.
     *
     * @throws IllegalArgumentException when the name is not allowed or the title has more than one line
     */
    public ScriptCell {
        CellId.require(id);
        title = Lines.requireOne("title of cell " + id, title);
        lines = Lines.split(lines);
    }

    /**
     * Makes a script without title from one string.
     *
     * @param id the cell's name; letters, digits, hyphen and underscore, at most 64
     * @param text the script
     */
    public ScriptCell(String id, String text) {
        this(id, "", List.of(text), JsonObject.EMPTY);
    }

    @Override
    public ScriptCell withLines(List<String> changed) {
        return new ScriptCell(id, title, changed, unknown);
    }

    /**
     * Returns the same script with another title.
     *
     * @param changed the title, one line; empty for none
     */
    public ScriptCell withTitle(String changed) {
        return new ScriptCell(id, changed, lines, unknown);
    }
}
