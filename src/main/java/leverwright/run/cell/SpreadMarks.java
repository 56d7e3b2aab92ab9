package leverwright.run.cell;

/** What may still be said of a spread's claim until its cell ends. */
final class SpreadMarks {
    /** Whether the reader is meant to complete it. */
    boolean forReader;

    /** Whether the author doubts it. */
    boolean doubted;
}
