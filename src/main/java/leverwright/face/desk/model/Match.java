package leverwright.face.desk.model;

/**
 * A place where something that is sought stands.
 *
 * @param cell the cell's id
 * @param from the first offset in the cell's text, in UTF-16 units
 * @param to the offset after the last
 */
public record Match(String cell, int from, int to) {}
