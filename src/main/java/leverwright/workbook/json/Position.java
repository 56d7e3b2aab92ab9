package leverwright.workbook.json;

/**
 * A place in a text.
 *
 * @param line the line, counted from 1; 0 when the value was not read from a text
 * @param column the column in characters, counted from 1; 0 when the value was not read from a text
 */
public record Position(int line, int column) {

    /** The place of a value that was made by a program and not read from a text. */
    public static final Position NOWHERE = new Position(0, 0);

    /** Returns whether this is a place in a text. */
    public boolean isKnown() {
        return line > 0;
    }
}
