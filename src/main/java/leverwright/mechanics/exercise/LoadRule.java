package leverwright.mechanics.exercise;

/** How a load of a movement comes about. */
interface LoadRule {
    /** Adds the load to a layout whose segments are placed. */
    void add(Work work);

    /** Returns what it is and where it is held, in words; empty for what a support gives back. */
    String words();

    /** Adds what the figure shows beside it: a cable, a bench. */
    default void show(Work work) {}
}
