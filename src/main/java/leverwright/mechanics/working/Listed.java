package leverwright.mechanics.working;

/** What can be laid out as a table. */
public interface Listed {
    /** Returns it as a table. */
    Listing listing();
}
