package leverwright.workbook.json;

/**
 * How much a text may hold before it is refused.
 *
 * @param bytes the size of the whole text in bytes; 1 or more
 * @param depth how many objects and arrays may stand inside each other; 1 or more
 * @param textLength the length of one string in characters; 1 or more
 * @param values the number of values, counting objects, arrays and their contents; 1 or more
 */
public record JsonLimits(int bytes, int depth, int textLength, int values) {

    /** Limits for workbooks and scenarios: 64 MiB, 64 deep, a million characters a string, two million values. */
    public static final JsonLimits STANDARD = new JsonLimits(64 << 20, 64, 1_000_000, 2_000_000);

    /**
     * Checks the limits.
     *
     * @throws IllegalArgumentException when a limit is below 1
     */
    public JsonLimits {
        if (bytes < 1 || depth < 1 || textLength < 1 || values < 1) {
            throw new IllegalArgumentException("limits must be 1 or more, but are " + bytes + " bytes, depth " + depth
                    + ", text length " + textLength + ", values " + values);
        }
    }
}
