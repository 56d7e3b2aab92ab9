package leverwright.mechanics.exercise;

/** How a posture stands. */
public enum Standing {
    /** Balance found the one angle that was left open: the pressure lies at the chosen place of the foot. */
    BALANCED("balanced"),
    /** The posture was held as set; the pressure falls on the foot, though not at the chosen place. */
    ON_THE_FOOT("stands, with the pressure away from the chosen place"),
    /** The pressure would fall ahead of the toes. */
    WOULD_FALL_FORWARD("would fall forward"),
    /** The pressure would fall behind the heel. */
    WOULD_FALL_BACKWARD("would fall backward"),
    /** The pressure would fall beside the foot. */
    WOULD_FALL_SIDEWAYS("would fall sideways"),
    /** A seat or bench carries the body. */
    SUPPORTED("supported");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    /** Returns the words printed for it. */
    public String words() {
        return words;
    }

    /** Tells whether nothing need be said about it: balanced as chosen, or carried by a seat. */
    boolean asChosen() {
        return this == BALANCED || this == SUPPORTED;
    }

    /** Tells whether the lifter would fall. */
    public boolean wouldFall() {
        return this == WOULD_FALL_FORWARD || this == WOULD_FALL_BACKWARD || this == WOULD_FALL_SIDEWAYS;
    }
}
