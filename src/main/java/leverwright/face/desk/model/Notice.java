package leverwright.face.desk.model;

/**
 * Something that the reader should know, in words, until it is dismissed or no longer so.
 *
 * @param kind what it is about
 * @param words one or two sentences: what happened and what to do
 */
public record Notice(Kind kind, String words) {

    /** What a notice is about. */
    public enum Kind {
        /** The file was changed or removed by somebody else. */
        CHANGED_ON_DISK,
        /** Another window has the file open; this one cannot save over it. */
        OPEN_ELSEWHERE,
        /** Text that was typed and never saved was found. */
        UNSAVED_TEXT,
        /** The worker could not be started or does not stay alive. */
        WORKER,
        /** A confirming replay gave other values than were shown; the shown ones were replaced. */
        DIFFERENCE,
        /** A file of the desk itself could not be written. */
        FILE
    }
}
