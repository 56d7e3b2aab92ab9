package leverwright.mechanics.body;

/**
 * One segment of a table, for one sex, in ratios, so that it scales with the lifter.
 *
 * @param segment which segment
 * @param length of stature; greater than 0, below 1
 * @param mass of body mass, one of the pair; greater than 0, below 1
 * @param centre mass centre from the segment's start, of its length; 0 to 1
 * @param radius radius of gyration about the mass centre and the transverse axis, of its length; greater than 0, below 1
 */
public record SegmentRow(
        Segment segment, SourcedValue length, SourcedValue mass, SourcedValue centre, SourcedValue radius) {
    /**
     * Makes a row.
     *
     * @throws IllegalArgumentException if a ratio lies outside its range; the message names segment, value and range
     */
    public SegmentRow {
        ratio(segment, "length", length, false);
        ratio(segment, "mass", mass, false);
        ratio(segment, "centre", centre, true);
        ratio(segment, "radius of gyration", radius, false);
    }

    private static void ratio(Segment segment, String what, SourcedValue ratio, boolean endsAllowed) {
        double v = ratio.value();
        if (!(endsAllowed ? v >= 0 && v <= 1 : v > 0 && v < 1)) {
            throw new IllegalArgumentException("the table's " + what + " ratio of the " + segment.words() + " is " + v
                    + "; allowed: " + (endsAllowed ? "0 to 1" : "greater than 0 and less than 1"));
        }
    }

    /**
     * Returns a row of a table of one's own, every number with the same source and status.
     *
     * @param length of stature
     * @param mass of body mass, one of the pair
     * @param centre from the segment's start, of its length
     * @param radius of gyration about the mass centre, of its length
     * @throws IllegalArgumentException if a ratio lies outside its range
     */
    public static SegmentRow of(
            Segment segment,
            double length,
            double mass,
            double centre,
            double radius,
            String source,
            ReadingStatus status) {
        String of = " of the " + segment.words();
        return new SegmentRow(
                segment,
                new SourcedValue("length ratio" + of, length, "1", source, status),
                new SourcedValue("mass ratio" + of, mass, "1", source, status),
                new SourcedValue("centre ratio" + of, centre, "1", source, status),
                new SourcedValue("radius ratio" + of, radius, "1", source, status));
    }
}
