package leverwright.mechanics.body;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A segment table for one sex: all seven segments, the parts of the trunk and the places on the body. Immutable.
 */
public final class Proportions {
    /** How far a body may sum from 1: published tables are rounded to 0.01 %. */
    public static final double SUM_TOLERANCE = 2e-4;

    private final Map<Segment, SegmentRow> rows = new EnumMap<>(Segment.class);
    private final Map<Landmark, LandmarkRow> landmarks = new EnumMap<>(Landmark.class);
    private final TrunkParts trunk;

    /**
     * Makes proportions.
     *
     * @param rows one row per segment
     * @param trunk the parts of the trunk
     * @param landmarks one row per landmark
     * @throws IllegalArgumentException if a segment or landmark is missing or doubled, or if the masses of the whole body do
     *     not sum to 1 within {@link #SUM_TOLERANCE}
     */
    public Proportions(Collection<SegmentRow> rows, TrunkParts trunk, Collection<LandmarkRow> landmarks) {
        for (SegmentRow row : rows) {
            if (this.rows.put(row.segment(), row) != null) {
                throw new IllegalArgumentException("the segment table has two rows for the "
                        + row.segment().words() + "; allowed: one");
            }
        }
        for (LandmarkRow row : landmarks) {
            this.landmarks.put(row.landmark(), row);
        }
        this.trunk = trunk;
        checkComplete();
        checkSum();
    }

    private void checkComplete() {
        for (Segment segment : Segment.values()) {
            if (!rows.containsKey(segment)) {
                throw new IllegalArgumentException(
                        "the segment table has no row for the " + segment.words() + "; give one for each segment");
            }
        }
        for (Landmark landmark : Landmark.values()) {
            if (!landmarks.containsKey(landmark)) {
                throw new IllegalArgumentException("the segment table lacks the place of " + landmark.words());
            }
        }
    }

    private void checkSum() {
        double sum = massSum();
        if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the segment masses of the table sum to %.3f %% of body mass, both sides together; allowed: 99.98 %%"
                            + " to 100.02 %%",
                    100 * sum));
        }
    }

    /** Returns the sum of the mass ratios, pairs counted twice; 1 but for the table's rounding. */
    public double massSum() {
        double sum = 0;
        for (SegmentRow row : rows.values()) {
            sum += row.segment().sides() * row.mass().value();
        }
        return sum;
    }

    /** Returns the row of a segment. */
    public SegmentRow row(Segment segment) {
        return java.util.Objects.requireNonNull(rows.get(segment));
    }

    /** Returns the default place of a landmark. */
    public LandmarkRow landmark(Landmark landmark) {
        return java.util.Objects.requireNonNull(landmarks.get(landmark));
    }

    /** Returns all rows, in the order of {@link Segment}. */
    public List<SegmentRow> rows() {
        return List.copyOf(rows.values());
    }

    /** Returns what the table knows inside the trunk. */
    public TrunkParts trunk() {
        return trunk;
    }
}
