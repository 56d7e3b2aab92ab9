package leverwright.mechanics.body;

import java.util.Locale;

/**
 * The rigid parts of the planar body, from the ground up and then along the arms. The trunk carries neck and head in line
 * with it and counts once; the others are pairs.
 *
 * <p>Lengths, and the places of mass centres, are measured from the start named here. The axis of the foot is the sole, from
 * the back of the heel to the longest toe.
 */
public enum Segment {
    /** From the back of the heel to the longest toe, along the sole. */
    FOOT(2, "heel", "longest toe"),
    /** From the knee to the ankle. */
    SHANK(2, "knee", "ankle"),
    /** From the hip to the knee. */
    THIGH(2, "hip", "knee"),
    /** Pelvis, abdomen, chest, neck and head in one; its length runs from the hip to the shoulder. */
    TRUNK(1, "hip", "shoulder"),
    /** From the shoulder to the elbow. */
    UPPER_ARM(2, "shoulder", "elbow"),
    /** From the elbow to the wrist. */
    FOREARM(2, "elbow", "wrist"),
    /** From the wrist to the tip of the middle finger, straight. */
    HAND(2, "wrist", "tip of the middle finger");

    private final int sides;
    private final String start;
    private final String end;

    Segment(int sides, String start, String end) {
        this.sides = sides;
        this.start = start;
        this.end = end;
    }

    /** Returns how many of it the body has: 2, or 1 for the trunk. */
    public int sides() {
        return sides;
    }

    /** Returns the end from which lengths and mass centres are measured. */
    public String start() {
        return start;
    }

    /** Returns the other end. */
    public String end() {
        return end;
    }

    /** Returns its name in print, as in "upper arm"; the trunk is "trunk with head". */
    public String words() {
        return this == TRUNK
                ? "trunk with head"
                : name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Returns "one thigh" for a pair, "trunk with head" for the trunk: what a mass given for it stands for. */
    public String oneOf() {
        return sides == 2 ? "one " + words() : words();
    }
}
