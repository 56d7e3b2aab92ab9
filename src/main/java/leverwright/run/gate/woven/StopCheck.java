package leverwright.run.gate.woven;

/** Lets a running cell be stopped: the gate puts a check at every method's start, backward jump and catch. */
public final class StopCheck {

    /** The most elements one array of a cell may have. */
    public static final int MOST_ELEMENTS = 50_000_000;

    private static volatile boolean asked;

    private StopCheck() {}

    /** Ends the calling cell with {@link Stopped} when a stop was asked for. */
    public static void check() {
        if (asked) {
            throw new Stopped();
        }
    }

    /**
     * Returns the number of elements of an array about to be made.
     *
     * @param elements the number asked for
     * @throws IllegalArgumentException when it is above {@link #MOST_ELEMENTS}
     */
    public static int size(int elements) {
        if (elements > MOST_ELEMENTS) {
            throw new IllegalArgumentException("an array of " + elements
                    + " elements is too large; a cell may make at most " + MOST_ELEMENTS + " elements at a time");
        }
        return elements;
    }

    /** Asks the running cell to stop. */
    public static void ask() {
        asked = true;
    }

    /** Takes back a stop, before the next run. */
    public static void clear() {
        asked = false;
    }

    /** Returns whether a stop is asked for. */
    public static boolean isAsked() {
        return asked;
    }

    /** Ends a cell that was stopped. An error, so that ordinary catches let it pass. */
    public static final class Stopped extends Error {
        private static final long serialVersionUID = 1;

        Stopped() {
            super("stopped", null, false, false);
        }
    }
}
