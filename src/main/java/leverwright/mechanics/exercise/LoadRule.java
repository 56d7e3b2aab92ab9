package leverwright.mechanics.exercise;

import java.util.Optional;

/** How a load of a movement comes about. */
interface LoadRule {
    /** Adds the load to a layout whose segments are placed. */
    void add(Work work);

    /** Returns what it is and where it is held, in words; empty for what a support gives back. */
    String words();

    /** Tells whether it may push along the floor: no weight that hangs. */
    default boolean pushes() {
        return true;
    }

    /** Returns, in words, the force component that it leaves free. */
    default Optional<String> leavesFree() {
        return Optional.empty();
    }

    /** Adds what the figure shows beside it: a cable, a bench. */
    default void show(Work work) {}
}
