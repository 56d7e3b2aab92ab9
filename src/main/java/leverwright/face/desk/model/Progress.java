package leverwright.face.desk.model;

/**
 * How far a run has come.
 *
 * @param cell the id of the cell that is being computed; empty when none is
 * @param done how many scripts have come to their end
 * @param total how many scripts the workbook has
 */
public record Progress(String cell, int done, int total) {}
