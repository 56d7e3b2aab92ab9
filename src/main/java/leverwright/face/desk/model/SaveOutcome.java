package leverwright.face.desk.model;

/**
 * What came of saving.
 *
 * @param kind what happened
 * @param words one sentence for the reader
 */
public record SaveOutcome(Kind kind, String words) {

    /** What happened. */
    public enum Kind {
        /** The workbook is in the file. */
        SAVED,
        /** The workbook has no file of its own; choose a name. */
        NEEDS_NAME,
        /** The file was changed by somebody else; replace it, read it again, or choose another name. */
        CHANGED_ON_DISK,
        /** Another window has the file open; choose another name. */
        OPEN_ELSEWHERE,
        /** The file could not be written; what stood there is unchanged. */
        FAILED
    }

    /** Returns whether the workbook is in the file. */
    public boolean isSaved() {
        return kind == Kind.SAVED;
    }
}
