package leverwright.run.result;

/** What a claim's check came to, always within this model. */
public enum Verdict {
    /** The computed value, with its whole band, meets the claim. */
    HOLDS("holds"),
    /** The computed value, with its whole band, misses the claim. */
    DOES_NOT_HOLD("does not hold"),
    /** The claim speaks of something that this model does not contain. */
    OUTSIDE_THIS_MODEL("outside this model"),
    /** The band of the computed value reaches over the claim's limit, so that both answers are possible. */
    CANNOT_TELL("cannot tell");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** Returns the verdict as a reader sees it, for example {@code "does not hold"}. */
    public String words() {
        return words;
    }
}
