package leverwright.face.desk.model;

/** What the reader lets a workbook do. */
public enum Permission {
    /** Nothing runs: the workbook is a stranger's and the reader has not asked for its results. */
    ASLEEP("not run: this workbook comes from elsewhere"),
    /** It computes behind the gate: mechanics, the words of cells and a short list of Java's own members. */
    GATED("computes behind the gate"),
    /** It computes and may use any class, since the reader trusts it. */
    TRUSTED("trusted: its scripts may use any class");

    private final String words;

    Permission(String words) {
        this.words = words;
    }

    /** Returns the permission as a reader sees it. */
    public String words() {
        return words;
    }
}
