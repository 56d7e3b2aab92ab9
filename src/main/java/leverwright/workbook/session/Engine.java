package leverwright.workbook.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leverwright.run.result.CellState;
import leverwright.run.wire.Message;
import org.jspecify.annotations.Nullable;

/**
 * Asks the worker for runs and sees to it that there is a worker: one that died or spoiled is replaced, and the cells
 * are replayed, without the cell that was the death of it. Used by one thread at a time, but for {@link #stop()}.
 */
final class Engine implements AutoCloseable {

    private static final int GRACE_MILLISECONDS = 1000;
    private static final int MOST_DEATHS = 2;

    private final SessionOptions options;
    private final Sheet sheet;
    private final Map<String, String> settings = new LinkedHashMap<>();
    private final Map<String, CellOutcome> outcomes = new LinkedHashMap<>();

    /** Cells that ended their worker, each with its script, and are left out until they change. */
    private final Set<String> deadly = new LinkedHashSet<>();

    private volatile WorkerProcess worker;
    private volatile RunWatch watch;
    private volatile long lastRun;
    private volatile boolean stopAsked;
    private boolean replayDue = true;
    private int deathsInARow;

    Engine(SessionOptions options, WorkerProcess first, Sheet sheet) {
        this.options = options;
        this.sheet = sheet;
        settings.putAll(options.settings());
        worker = first;
        watch = newWatch();
        worker.listen(watch);
    }

    private RunWatch newWatch() {
        return new RunWatch(options.listener(), id -> {
            Sheet.Cell cell = sheet.find(id);
            return cell == null ? "" : cell.parsed.script().text();
        });
    }

    Map<String, String> settings() {
        return settings;
    }

    Map<String, CellOutcome> outcomes() {
        return outcomes;
    }

    boolean isReplayDue() {
        return replayDue || worker.isGone();
    }

    ProcessHandle workerHandle() {
        return worker.handle();
    }

    /** Forgets earlier stops, before an operation begins. */
    void begin() {
        stopAsked = false;
    }

    boolean isStopAsked() {
        return stopAsked;
    }

    /** Lets a cell that ended its worker be tried again. */
    void pardon(String id) {
        deadly.remove(id);
    }

    void pardonAll() {
        deadly.clear();
    }

    private void ensureWorker() {
        if (worker.isGone() || watch.isSpoiled()) {
            worker.kill();
            worker = WorkerProcess.start(options.trusted());
            watch = newWatch();
            worker.listen(watch);
            replayDue = true;
        }
    }

    /** Begins a run of every cell from the top; cells follow one by one through {@link #add}. */
    void beginAll() {
        ensureWorker();
        outcomes.clear();
        replayDue = false;
        send(Message.Mode.REPLAY, List.of());
    }

    /** Tells the listener at once of a cell that did not compile or was refused. */
    void tell(Sheet.Cell cell) {
        CellOutcome failed = cell.failed;
        if (failed != null) {
            options.listener().cellChanged(failed);
        }
    }

    /** Runs one more cell after those before, in classes of its own. Does not wait. */
    void add(Sheet.Cell cell) {
        if (isRunnable(cell)) {
            worker.keep(cell.code());
            send(Message.Mode.PATCH, List.of(cell));
        }
    }

    private boolean isRunnable(Sheet.Cell cell) {
        return cell.compiled != null && !deadly.contains(cell.id());
    }

    /** Waits for all runs that were asked for, and deals with a worker that did not live to see their end. */
    void finish() {
        boolean ended = watch.await(lastRun);
        outcomes.putAll(watch.takeOutcomes());
        if (ended) {
            deathsInARow = 0;
        } else {
            dealWithDeath();
        }
        if (stopAsked) {
            replayDue = true;
        }
    }

    /** Runs every cell from the top in fresh classes. */
    void replay() {
        ensureWorker();
        replayDue = false;
        List<Sheet.Cell> steps = new ArrayList<>();
        Set<String> classNames = new LinkedHashSet<>();
        for (Sheet.Cell cell : sheet.cells()) {
            if (isRunnable(cell)) {
                worker.keep(cell.code());
                classNames.add(cell.parsed.className());
                steps.add(cell);
            }
        }
        worker.keepOnly(classNames);
        send(Message.Mode.REPLAY, steps);
        finish();
    }

    /** Runs some cells only, in order of the sheet; the caller knows that this is safe. */
    void runOnly(Message.Mode mode, Set<String> ids) {
        List<Sheet.Cell> steps = new ArrayList<>();
        for (Sheet.Cell cell : sheet.cells()) {
            if (ids.contains(cell.id()) && isRunnable(cell)) {
                worker.keep(cell.code());
                steps.add(cell);
            }
        }
        send(mode, steps);
        finish();
    }

    private void send(Message.Mode mode, List<Sheet.Cell> cells) {
        List<Message.Setting> given = new ArrayList<>();
        settings.forEach((dial, text) -> given.add(new Message.Setting(dial, text)));
        List<Message.Step> steps = new ArrayList<>();
        for (Sheet.Cell cell : cells) {
            steps.add(new Message.Step(cell.id(), cell.parsed.className(), List.copyOf(cell.readsFrom)));
        }
        long run = lastRun + 1;
        lastRun = run;
        // a stop that is known already goes first, so that the run never begins; a later one names this run or one
        // after it
        if (stopAsked) {
            worker.send(new Message.Stop(run));
        }
        worker.send(new Message.Run(run, mode, options.seed(), given, steps));
    }

    private void dealWithDeath() {
        String culprit = watch.running();
        deathsInARow = culprit == null ? deathsInARow + 1 : 0;
        if (deathsInARow > MOST_DEATHS) {
            throw new IllegalStateException("the worker does not stay alive (exit code " + worker.exitCode()
                    + "); look for free memory and for the Java in " + System.getProperty("java.home"));
        }
        if (culprit != null) {
            deadly.add(culprit);
            CellOutcome outcome = CellOutcome.without(culprit, CellState.FAILED, words(worker.exitCode()), null);
            outcomes.put(culprit, outcome);
            options.listener().cellChanged(outcome);
        }
        replayDue = true;
        if (!stopAsked) {
            replay();
        }
    }

    private String words(int exitCode) {
        if (stopAsked) {
            return "stopped; the cell did not react within a second, so its worker was ended and started again";
        }
        if (exitCode == WorkerFlags.EXIT_OUT_OF_MEMORY && options.trusted()) {
            return "the cell ran out of memory, or ended its worker by itself, which was started again; keep fewer or"
                    + " smaller values, and let the cell come to its end";
        }
        if (exitCode == WorkerFlags.EXIT_OUT_OF_MEMORY) {
            return "the cell ran out of memory and its worker was started again; keep fewer or smaller values";
        }
        return "the worker ended while this cell ran (exit code " + exitCode
                + ") and was started again; a cell must come to its end by itself";
    }

    /** Stops what runs. From any thread; returns at once. */
    void stop() {
        stopAsked = true;
        long run = lastRun;
        WorkerProcess stopped = worker;
        RunWatch watched = watch;
        stopped.send(new Message.Stop(run));
        Thread patience = new Thread(
                () -> {
                    try {
                        if (!watched.await(run, GRACE_MILLISECONDS)) {
                            stopped.kill();
                        }
                    } catch (InterruptedException e) {
                        stopped.kill();
                    }
                },
                "stop");
        patience.setDaemon(true);
        patience.start();
    }

    /** Returns the outcome of a cell in the order of things: why it did not compile, what its last run came to. */
    CellOutcome outcome(Sheet.Cell cell) {
        CellOutcome failed = cell.failed;
        if (failed != null) {
            return failed;
        }
        CellOutcome known = outcomes.get(cell.id());
        if (known != null) {
            return known;
        }
        @Nullable String missing = missing(cell);
        String words = missing != null
                ? "not run: " + missing + " failed"
                : stopAsked ? "not run: stopped before it ran" : "not run";
        return CellOutcome.without(cell.id(), CellState.NOT_RUN, words, null);
    }

    private @Nullable String missing(Sheet.Cell cell) {
        for (String id : cell.readsFrom) {
            CellOutcome outcome = outcomes.get(id);
            if (outcome == null || outcome.state() != CellState.FRESH) {
                return id;
            }
        }
        return null;
    }

    @Override
    public void close() {
        stopAsked = true;
        worker.kill();
    }
}
