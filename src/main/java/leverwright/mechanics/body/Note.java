package leverwright.mechanics.body;

/**
 * Something that must be said beside every result about a lifter.
 *
 * @param kind what sort of remark it is
 * @param text the remark, one sentence
 */
public record Note(Kind kind, String text) {
    /** Sorts of remarks. */
    public enum Kind {
        /** What the segment table is and where it is weak. */
        TABLE,
        /** The lifter lies outside the people who were measured. */
        OUT_OF_SAMPLE,
        /** A measured value replaced one of the table, and what followed from that. */
        MEASURED,
        /** Numbers that no text confirms. */
        FROM_MEMORY,
        /** Something that calls for a person of the trade. */
        CAUTION
    }

    @Override
    public String toString() {
        return text;
    }
}
