package leverwright.run.cell;

/**
 * Marks a word of a cell that has handed its result to the {@link CellSink} already, such as a figure that may still be
 * told which load arms to draw. When a cell ends with such a word, nothing more is shown for it.
 */
public interface ResultBuilder {}
