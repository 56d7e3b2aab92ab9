package leverwright.workbook.session;

/**
 * A script cell of a workbook.
 *
 * @param id the cell's id, unique in the workbook
 * @param text the script, lines parted by a line feed
 */
public record CellScript(String id, String text) {}
