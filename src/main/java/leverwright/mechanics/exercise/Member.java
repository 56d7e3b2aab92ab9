package leverwright.mechanics.exercise;

import java.util.List;
import java.util.Locale;
import leverwright.mechanics.body.Segment;

/**
 * A segment of the side that is reported (or of both sides together, where they are alike), or of the other side. The first
 * seven stand in the order of {@link Segment}.
 */
enum Member {
    FOOT(Segment.FOOT),
    SHANK(Segment.SHANK),
    THIGH(Segment.THIGH),
    TRUNK(Segment.TRUNK),
    UPPER_ARM(Segment.UPPER_ARM),
    FOREARM(Segment.FOREARM),
    HAND(Segment.HAND),
    OTHER_FOOT(Segment.FOOT),
    OTHER_SHANK(Segment.SHANK),
    OTHER_THIGH(Segment.THIGH),
    OTHER_UPPER_ARM(Segment.UPPER_ARM),
    OTHER_FOREARM(Segment.FOREARM),
    OTHER_HAND(Segment.HAND);

    static final List<Member> ALL = List.of(values());
    static final int COUNT = ALL.size();

    private final Segment segment;

    Member(Segment segment) {
        this.segment = segment;
    }

    Segment segment() {
        return segment;
    }

    boolean isOther() {
        return ordinal() > HAND.ordinal();
    }

    boolean isArm() {
        return segment.ordinal() > Segment.TRUNK.ordinal();
    }

    boolean isLeg() {
        return segment.ordinal() < Segment.TRUNK.ordinal();
    }

    /** Returns its subscript in workings. */
    String symbol() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Returns its name in print. */
    String words() {
        return isOther() ? "other " + segment.words() : segment.words();
    }

    static Member of(Segment segment) {
        return ALL.get(segment.ordinal());
    }

    /** Returns a segment of the other side; there is one trunk only. */
    static Member other(Segment segment) {
        return of(segment).twin();
    }

    static Member of(Segment segment, boolean other) {
        return other ? other(segment) : of(segment);
    }

    /** Returns the same segment of the opposite side. */
    Member twin() {
        int k = ordinal();
        if (this == TRUNK) {
            return this;
        }
        if (isOther()) {
            return ALL.get(isArm() ? k - 6 : k - 7);
        }
        return ALL.get(isArm() ? k + 6 : k + 7);
    }

    int bit() {
        return 1 << ordinal();
    }
}
