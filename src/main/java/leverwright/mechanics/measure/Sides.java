package leverwright.mechanics.measure;

/** Whether a value stands for one side of the body or for the whole; every result says which. */
public enum Sides {
    /** For one limb, left or right. */
    PER_SIDE("per side"),
    /** For the whole body: spine and neck, or both limbs together where that is said. */
    TOTAL("total"),
    /** For things that have no side, such as an angle of the trunk or a ratio. */
    NOT_SIDED("");

    private final String words;

    Sides(String words) {
        this.words = words;
    }

    /** Returns the words printed beside a value: "per side", "total" or nothing. */
    public String words() {
        return words;
    }
}
