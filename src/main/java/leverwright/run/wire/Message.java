package leverwright.run.wire;

import java.util.List;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Result;

/** Everything that may cross the pipes between the session and the worker. The set is closed. */
public sealed interface Message {

    /** What the session tells the worker. */
    sealed interface ToWorker extends Message {}

    /** What the worker tells the session. */
    sealed interface FromWorker extends Message {}

    /** How a run comes by its classes. */
    enum Mode {
        /** Fresh class loader, every cell from the top: what live means. */
        REPLAY,
        /** The cells of the run get new classes over those that are loaded. */
        PATCH,
        /** The classes that are loaded run again. */
        SHORT
    }

    /** How a cell's run ended. */
    enum Ending {
        /** It came to its end. */
        FINE,
        /** It threw. */
        FAILED,
        /** It was stopped. */
        STOPPED,
        /** A cell it reads from did not come to its end. */
        NOT_RUN
    }

    /**
     * The first frame to a worker.
     *
     * @param token a one-time secret, given back in {@link Ready}
     * @param trusted whether the reader trusts the workbook, so that cells may load any class
     */
    record Begin(String token, boolean trusted) implements ToWorker {}

    /**
     * Class files to keep.
     *
     * @param forget names of cells' classes to drop first, with all that is nested in them
     * @param add classes to keep
     */
    record Classes(List<String> forget, List<ClassBytes> add) implements ToWorker {}

    /**
     * A run of some cells, in order.
     *
     * @param run the run's number
     * @param mode how the run comes by its classes
     * @param seed the workbook's seed
     * @param settings the dials that are set
     * @param steps the cells to run, in order of the sheet
     */
    record Run(long run, Mode mode, long seed, List<Setting> settings, List<Step> steps) implements ToWorker {}

    /**
     * Asks a run to stop.
     *
     * @param run the run's number; another run is not stopped
     */
    record Stop(long run) implements ToWorker {}

    /**
     * One class file.
     *
     * @param name the class's name with dots
     * @param bytes its bytes, checked and rewritten by the gate
     */
    record ClassBytes(String name, byte[] bytes) {}

    /**
     * A dial's setting.
     *
     * @param dial the dial's name
     * @param text the setting in the unit grammar, for example {@code "45 deg"}
     */
    record Setting(String dial, String text) {}

    /**
     * A cell to run.
     *
     * @param cell the cell's id
     * @param className the class with the cell's script
     * @param readsFrom the ids of the cells that this one reads from
     */
    record Step(String cell, String className, List<String> readsFrom) {}

    /**
     * The first frame from a worker.
     *
     * @param token the secret of {@link Begin}
     * @param java the worker's Java version
     */
    record Ready(String token, String java) implements FromWorker {}

    /**
     * A cell begins to run.
     *
     * @param run the run's number
     * @param cell the cell's id
     */
    record CellStarted(long run, String cell) implements FromWorker {}

    /**
     * A cell printed text.
     *
     * @param run the run's number
     * @param cell the cell's id
     * @param text the text, to be put after what came before
     */
    record CellText(long run, String cell, String text) implements FromWorker {}

    /**
     * A cell is at a study that takes long.
     *
     * @param run the run's number
     * @param cell the cell's id
     * @param words how far it is and how long it still takes, in words
     */
    record CellProgress(long run, String cell, String words) implements FromWorker {}

    /**
     * A cell declared a dial.
     *
     * @param run the run's number
     * @param cell the cell's id
     * @param dial the dial
     */
    record CellDial(long run, String cell, DialDeclared dial) implements FromWorker {}

    /**
     * A cell made a result.
     *
     * @param run the run's number
     * @param cell the cell's id
     * @param result the result
     */
    record CellResult(long run, String cell, Result result) implements FromWorker {}

    /**
     * A cell's run ended.
     *
     * @param run the run's number
     * @param cell the cell's id
     * @param ending how it ended
     * @param message what went wrong, in words; empty when fine
     * @param traces the lines of cells it was in when it failed, innermost first
     * @param textLeftOut how many printed characters were dropped because there were too many
     * @param nanoseconds how long it took
     * @param spoiled whether the worker should not be used for another run, since it ran out of stack somewhere
     */
    record CellEnded(
            long run,
            String cell,
            Ending ending,
            String message,
            List<Trace> traces,
            long textLeftOut,
            long nanoseconds,
            boolean spoiled)
            implements FromWorker {}

    /**
     * A line of a cell.
     *
     * @param cell the cell's id
     * @param line the line of its script, from 1
     */
    record Trace(String cell, int line) {}

    /**
     * A run ended.
     *
     * @param run the run's number
     */
    record RunEnded(long run) implements FromWorker {}
}
