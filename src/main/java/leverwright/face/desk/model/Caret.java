package leverwright.face.desk.model;

/**
 * A place in a workbook that is returned to when a step is undone or done again.
 *
 * @param cell the cell's id; empty when no cell is left
 * @param position the offset in the cell's text, in UTF-16 units, 0 for its start
 */
public record Caret(String cell, int position) {}
