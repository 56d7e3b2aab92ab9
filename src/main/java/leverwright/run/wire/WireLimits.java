package leverwright.run.wire;

/** The limits of a frame. */
public final class WireLimits {

    /** The most bytes in one frame: room for a grid of a million doubles with names. */
    public static final int FRAME_BYTES = 32 * 1024 * 1024;

    /** The most characters in one text. */
    public static final int TEXT_LENGTH = 4 * 1024 * 1024;

    /** The most elements in one list or array. */
    public static final int COUNT = 4_000_000;

    /** The deepest nesting of records and lists. */
    public static final int DEPTH = 200;

    private WireLimits() {}
}
