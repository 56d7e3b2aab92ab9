package leverwright.workbook.document;

import java.util.List;
import leverwright.workbook.json.JsonObject;

/**
 * A note: prose in CommonMark.
 *
 * @param id the cell's name; letters, digits, hyphen and underscore, at most 64
 * @param lines the prose, one element a line
 * @param unknown keys of the file that this version does not know
 */
public record NoteCell(String id, List<String> lines, JsonObject unknown) implements Cell {

    /**
     * Checks the name and splits elements at line ends.
     *
     * @throws IllegalArgumentException when the name is not allowed
     */
    public NoteCell {
        CellId.require(id);
        lines = Lines.split(lines);
    }

    /**
     * Makes a note from one string.
     *
     * @param id the cell's name; letters, digits, hyphen and underscore, at most 64
     * @param text the prose
     */
    public NoteCell(String id, String text) {
        this(id, List.of(text), JsonObject.EMPTY);
    }

    @Override
    public NoteCell withLines(List<String> changed) {
        return new NoteCell(id, changed, unknown);
    }
}
