package leverwright.run.wire;

/** How values of one type are written and read. */
interface Shape {

    /**
     * Writes a value.
     *
     * @throws WireException when the value is beyond the limits
     */
    void write(WireWriter out, Object value, int depth) throws WireException;

    /**
     * Reads a value.
     *
     * @throws WireException when the bytes are not such a value
     */
    Object read(WireReader in, int depth) throws WireException;

    /** Returns the fewest bytes a value takes; at least 1. */
    int leastBytes();

    /** Refuses to go deeper than the limit. */
    static void checkDepth(int depth) throws WireException {
        if (depth > WireLimits.DEPTH) {
            throw new WireException("records and lists are nested deeper than " + WireLimits.DEPTH);
        }
    }
}
