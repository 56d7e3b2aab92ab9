package leverwright.mechanics.body;

/** The two samples of which segment tables and body surveys exist. */
public enum Sex {
    /** Women. */
    FEMALE("women"),
    /** Men. */
    MALE("men");

    private final String group;

    Sex(String group) {
        this.group = group;
    }

    /** Returns the sample's name as in "a survey of women". */
    public String group() {
        return group;
    }
}
