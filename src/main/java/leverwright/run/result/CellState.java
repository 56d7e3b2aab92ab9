package leverwright.run.result;

/** The state of a script cell, told in words beside it. */
public enum CellState {
    /** Its results belong to the present scripts and dials. */
    FRESH("fresh"),
    /** Something it reads has changed since its results were computed. */
    STALE("stale"),
    /** It is being computed now. */
    RUNNING("running"),
    /** It did not compile, or stopped with an error. */
    FAILED("failed"),
    /** It uses something that a cell may not use. */
    REFUSED("refused"),
    /** It was not computed: never asked for, or something it reads from failed. */
    NOT_RUN("not run");

    private final String words;

    CellState(String words) {
        this.words = words;
    }

    /** Returns the state as a reader sees it, for example {@code "not run"}. */
    public String words() {
        return words;
    }
}
