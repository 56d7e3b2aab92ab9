package leverwright.face.desk.model;

/** The colours of the desk. */
public enum Colours {
    /** Dark ink on light paper. */
    LIGHT("Light"),
    /** Light ink on dark paper. */
    DARK("Dark"),
    /** Black on white, with strong lines. */
    CONTRAST("High contrast");

    private final String title;

    Colours(String title) {
        this.title = title;
    }

    /** Returns the name as a reader sees it. */
    public String title() {
        return title;
    }

    /** Returns the style class that the root of a window carries for these colours, for example {@code "dark"}. */
    public String styleClass() {
        return switch (this) {
            case LIGHT -> "light";
            case DARK -> "dark";
            case CONTRAST -> "contrast";
        };
    }
}
