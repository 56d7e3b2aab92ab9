package leverwright.mechanics.body;

/**
 * How a number came to be known, from the surest to the least sure. A number made from several has the least sure status
 * among them, and at best {@link #DERIVED}.
 */
public enum ReadingStatus {
    /** Given by the user for this lifter. */
    GIVEN("given"),
    /** Read in two independent texts. */
    READ_TWICE("read in two texts"),
    /** Computed from, or copied out of, an open data file that was read completely. */
    DATA("from an open data file"),
    /** Read in one text. */
    READ_ONCE("read in one text"),
    /** Derived here by arithmetic from numbers that were read. */
    DERIVED("derived"),
    /** Remembered or assumed; no text was read. */
    FROM_MEMORY("from memory");

    private final String words;

    ReadingStatus(String words) {
        this.words = words;
    }

    /** Returns the words printed beside a number, such as "from memory". */
    public String words() {
        return words;
    }

    /** Returns the less sure of the two. */
    public ReadingStatus worse(ReadingStatus other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
