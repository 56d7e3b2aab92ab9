package leverwright.run.cell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Result;
import org.jspecify.annotations.Nullable;

/**
 * What the words of a cell write to and read from while the cell runs: results, dials and the seed.
 *
 * <p>A sink belongs to one run of one cell and to the thread that runs it; it is not safe for other threads.
 */
public final class CellSink {

    /** The greatest number of results one cell may show. */
    public static final int MOST_RESULTS = 500;

    private static final ThreadLocal<@Nullable CellSink> CURRENT = new ThreadLocal<>();

    static {
        CellCrew.appoint();
    }

    private final long seed;
    private final boolean everyWorking;
    private final Map<String, String> settings;
    private final List<Supplier<? extends Result>> pending = new ArrayList<>();
    private final Map<String, DialDeclared> dials = new LinkedHashMap<>();
    private Consumer<String> progress = words -> {};
    private boolean cut;
    private @Nullable SpreadMarks claim;

    private CellSink(long seed, Map<String, String> settings, boolean everyWorking) {
        this.seed = seed;
        this.everyWorking = everyWorking;
        this.settings = settings;
    }

    /**
     * Opens a sink for the calling thread, in place of any sink it had.
     *
     * @param seed where the cell's random stream starts
     * @param settings the settings given for dials, by the dial's name, as text such as {@code "45 ± 5 deg"}
     * @param everyWorking whether results carry the workings that a reader sees folded; those that stand open they carry
     *     always
     * @return the sink, which {@link #current()} returns on this thread until {@link #close()}
     */
    public static CellSink open(long seed, Map<String, String> settings, boolean everyWorking) {
        CellSink sink = new CellSink(seed, settings, everyWorking);
        CURRENT.set(sink);
        return sink;
    }

    /**
     * Returns the sink of the cell that runs on this thread.
     *
     * @throws IllegalStateException when no cell runs on this thread
     */
    public static CellSink current() {
        CellSink sink = CURRENT.get();
        if (sink == null) {
            throw new IllegalStateException("dial, table, chart, figure, working and claim work only inside a cell");
        }
        return sink;
    }

    /** Returns whether a cell runs on this thread. */
    static boolean isOpen() {
        return CURRENT.get() != null;
    }

    /**
     * Takes a result that is made when the cell ends. Results are made in the order in which they were added, so a
     * fluent word adds itself when it is created and may be told more until the cell ends.
     *
     * @param result makes the result; called once, on this thread
     * @throws IllegalArgumentException when the cell shows more than {@link #MOST_RESULTS} results
     */
    public void add(Supplier<? extends Result> result) {
        if (pending.size() >= MOST_RESULTS) {
            throw new IllegalArgumentException(
                    "a cell shows at most " + MOST_RESULTS + " results; put the values into one table or chart");
        }
        pending.add(result);
    }

    /**
     * Returns the setting given for a dial, as text in the unit grammar, such as {@code "45 deg"} or {@code "45 ± 5
     * deg"}; null when nothing was given and the script's own value holds.
     *
     * @param dialName the dial's name as the script says it
     */
    public @Nullable String setting(String dialName) {
        return settings.get(dialName);
    }

    /**
     * Records a dial that the cell declares.
     *
     * @param dial the dial with its range and the value now in force
     * @throws IllegalArgumentException when the cell has declared a dial of this name already
     */
    public void declare(DialDeclared dial) {
        if (dials.putIfAbsent(dial.name(), dial) != null) {
            throw new IllegalArgumentException(
                    "the dial \"" + dial.name() + "\" is declared twice; give the second one another name");
        }
    }

    /** Returns the seed at which the cell's random stream starts: the same for every run of the same workbook and cell. */
    public long seed() {
        return seed;
    }

    /** Returns whether results carry the workings that a reader sees folded. */
    public boolean wantsEveryWorking() {
        return everyWorking;
    }

    /**
     * Names who is told how far a study of this cell is.
     *
     * @param listener takes it in words, on the cell's thread
     */
    public void tellProgress(Consumer<String> listener) {
        progress = listener;
    }

    /** Remembers the claim that a spread of this cell made last, which may still be marked. */
    void lastClaim(SpreadMarks marks) {
        claim = marks;
    }

    /**
     * Returns what may still be said of the claim that a spread of this cell made last.
     *
     * @throws IllegalArgumentException when none was made
     */
    SpreadMarks lastClaim() {
        SpreadMarks marks = claim;
        if (marks == null) {
            throw new IllegalArgumentException("no spread of this cell made a claim yet; write .holds(\"…\", …) first");
        }
        return marks;
    }

    /** Remembers that a study of this cell was cut short by a stop, so that its results are not the whole. */
    void cutShort() {
        cut = true;
    }

    /** Returns whether a study of this cell was cut short by a stop. */
    public boolean isCutShort() {
        return cut;
    }

    /** Tells how far a study of this cell is, in words. */
    void progress(String words) {
        progress.accept(words);
    }

    /** Returns the dials declared so far, in the order of declaration. */
    public List<DialDeclared> dials() {
        return List.copyOf(dials.values());
    }

    /**
     * Makes the results, in the order in which they were added. A result that is added while another is being made
     * comes last.
     *
     * @return the results
     */
    public List<Result> finish() {
        List<Result> results = new ArrayList<>(pending.size());
        for (int i = 0; i < pending.size(); i++) {
            results.add(pending.get(i).get());
        }
        pending.clear();
        return results;
    }

    /** Ends the cell's run: {@link #current()} no longer answers on this thread. */
    public void close() {
        CURRENT.remove();
    }
}
