package leverwright.workbook.session;

/** Is told what happens to cells while a run is under way. */
@FunctionalInterface
public interface SessionListener {

    /**
     * A cell changed: it began to run, or came to its end.
     *
     * @param outcome the cell as it is now; without results while it runs
     */
    void cellChanged(CellOutcome outcome);
}
