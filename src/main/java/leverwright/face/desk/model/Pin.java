package leverwright.face.desk.model;

/**
 * A result that the reader keeps in view.
 *
 * @param cell the id of the script that shows it
 * @param index its place among the script's results, from 0
 */
public record Pin(String cell, int index) {}
