package leverwright.workbook.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import leverwright.run.gate.AllowList;
import leverwright.run.gate.Gate;
import leverwright.run.result.DialDeclared;
import leverwright.run.wire.Message;
import org.jspecify.annotations.Nullable;

/**
 * The scripts of an open workbook, compiled here and run in a worker.
 *
 * <p>Operations run one at a time and return when they are done; call them from a background thread. {@link #stop()} may
 * be called from any thread while one is under way.
 */
public final class Session implements ScriptAdvisor, AutoCloseable {

    private final Object operations = new Object();
    private final Sheet sheet;
    private static final AtomicReference<@Nullable Prepared> PREPARED = new AtomicReference<>();

    private final ShellLater shell;

    /** Held by whatever compiles: turns of a dial do not, and need not wait for it. */
    private final Object compiling = new Object();

    private final SheetAdvisor advisor;
    private final Engine engine;
    private final Map<String, Set<String>> dialCells = new LinkedHashMap<>();

    /** Whether the rule that guards the ways that are shorter than a replay is followed; a test switches it off. */
    private boolean ruleFollowed = true;

    private Session(Sheet sheet, Compilers compilers, ShellLater shell, Engine engine) {
        this.sheet = sheet;
        this.shell = shell;
        advisor = new SheetAdvisor(sheet, compilers);
        this.engine = engine;
    }

    /**
     * Opens a session: starts a worker and makes the compiler ready.
     *
     * @param options trust, seed, settings of dials and listener
     * @throws IllegalStateException when this Java has no compiler
     * @throws java.io.UncheckedIOException when no worker can be started
     */
    public static Session open(SessionOptions options) {
        return open(options, CompiledCells.none());
    }

    /**
     * Opens a session that need not compile what was compiled before.
     *
     * @param options trust, seed, settings of dials and listener
     * @param kept where compiled cells are looked for and kept; passed over when the session is trusted
     * @throws IllegalStateException when this Java has no compiler
     * @throws java.io.UncheckedIOException when no worker can be started
     */
    public static Session open(SessionOptions options, CompiledCells kept) {
        Prepared prepared = PREPARED.getAndSet(null);
        if (prepared == null || prepared.trusted != options.trusted()) {
            if (prepared != null) {
                prepared.discard();
            }
            prepared = new Prepared(options.trusted());
        }
        try {
            Gate gate = new Gate(AllowList.standard(), options.trusted());
            Compilers compilers = prepared.compilers;
            CompiledCells keeping = options.trusted() ? CompiledCells.none() : kept;
            if (keeping.isOff()) {
                prepared.shell.begin();
            }
            Sheet sheet = new Sheet(compilers, new CellCompiler(compilers, prepared.shell::get, gate), keeping);
            return new Session(sheet, compilers, prepared.shell, new Engine(options, prepared.worker, sheet));
        } catch (RuntimeException e) {
            prepared.discard();
            throw e;
        }
    }

    /**
     * Begins to start a worker and JShell for the session that will be opened next, so that both get ready while something
     * else is done.
     *
     * @param trusted whether that session will be trusted
     * @throws IllegalStateException when this Java has no compiler
     * @throws java.io.UncheckedIOException when no worker can be started
     */
    public static void prepare(boolean trusted) {
        Prepared prepared = new Prepared(trusted);
        prepared.shell.begin();
        Prepared before = PREPARED.getAndSet(prepared);
        if (before != null) {
            before.discard();
        }
    }

    /** What a session needs and takes long to start. */
    private static final class Prepared {
        final boolean trusted;
        final WorkerProcess worker;
        final Compilers compilers;
        final ShellLater shell;

        Prepared(boolean trusted) {
            this.trusted = trusted;
            worker = WorkerProcess.start(trusted);
            try {
                compilers = new Compilers();
            } catch (RuntimeException e) {
                worker.kill();
                throw e;
            }
            shell = new ShellLater(compilers);
        }

        void discard() {
            worker.kill();
            shell.close();
        }
    }

    /**
     * Takes the script cells of a workbook and runs them all, from the top, in fresh classes. Cells begin to run while
     * those below are still being compiled.
     *
     * @param scripts the script cells in order of the sheet
     * @return what came of every cell
     * @throws IllegalArgumentException when two cells have the same id
     */
    public RunReport run(List<CellScript> scripts) {
        synchronized (operations) {
            engine.begin();
            engine.pardonAll();
            engine.beginAll();
            synchronized (compiling) {
                if (!sheet.remember(scripts)) {
                    shell.begin();
                }
                sheet.take(scripts, (cell, changed) -> {
                    engine.tell(cell);
                    engine.add(cell);
                    return !engine.isStopAsked();
                });
            }
            engine.finish();
            return report(RunReport.Way.REPLAY);
        }
    }

    /**
     * Sets a dial and computes what depends on it.
     *
     * @param dial the dial's name
     * @param setting the setting in the unit grammar, for example {@code "45 deg"} or {@code "45 ± 5 deg"}; null goes
     *     back to the script's own value
     * @return what came of every cell
     */
    public RunReport setDial(String dial, @Nullable String setting) {
        synchronized (operations) {
            engine.begin();
            presetDial(dial, setting);
            Set<String> concerned = sheet.withReaders(dialCells.getOrDefault(dial, Set.of()));
            concerned.forEach(engine::pardon);
            return compute(concerned, Message.Mode.SHORT, true);
        }
    }

    /**
     * Sets a dial without computing anything: the next run reads it.
     *
     * @param dial the dial's name
     * @param setting the setting in the unit grammar; null goes back to the script's own value
     */
    public void presetDial(String dial, @Nullable String setting) {
        synchronized (operations) {
            if (setting == null) {
                engine.settings().remove(dial);
            } else {
                engine.settings().put(dial, setting);
            }
        }
    }

    /**
     * Sets every dial at once and computes what depends on those that changed.
     *
     * @param settings the dials that are set by hand, by name; the others go back to their scripts' own values
     * @return what came of every cell
     */
    public RunReport setDials(Map<String, String> settings) {
        synchronized (operations) {
            engine.begin();
            Set<String> roots = new LinkedHashSet<>();
            Set<String> names = new LinkedHashSet<>(engine.settings().keySet());
            names.addAll(settings.keySet());
            for (String name : names) {
                if (!Objects.equals(engine.settings().get(name), settings.get(name))) {
                    roots.addAll(dialCells.getOrDefault(name, Set.of()));
                }
            }
            engine.settings().clear();
            engine.settings().putAll(settings);
            Set<String> concerned = sheet.withReaders(roots);
            concerned.forEach(engine::pardon);
            return compute(concerned, Message.Mode.SHORT, true);
        }
    }

    /**
     * Changes the script of one cell; it and everything that reads from it is computed again.
     *
     * @param id the cell's id
     * @param text the new script
     * @return what came of every cell
     * @throws IllegalArgumentException when there is no script cell of this id
     */
    public RunReport edit(String id, String text) {
        synchronized (operations) {
            if (sheet.find(id) == null) {
                throw new IllegalArgumentException("no script cell \"" + id + "\" in this workbook");
            }
            engine.begin();
            List<CellScript> scripts = new ArrayList<>();
            for (CellScript script : sheet.scripts()) {
                scripts.add(script.id().equals(id) ? new CellScript(id, text) : script);
            }
            Set<String> before = sheet.withReaders(Set.of(id));
            boolean oldLeftNothing = sheet.isSafeAlone(before);
            Set<String> changed = new LinkedHashSet<>(Set.of(id));
            synchronized (compiling) {
                sheet.take(scripts, (cell, isNew) -> {
                    if (isNew) {
                        changed.add(cell.id());
                    }
                    return !engine.isStopAsked();
                });
            }
            changed.addAll(before);
            Set<String> concerned = sheet.withReaders(changed);
            concerned.forEach(engine::pardon);
            return compute(concerned, Message.Mode.PATCH, oldLeftNothing);
        }
    }

    /**
     * Computes some cells the short way where that is safe, and all of them otherwise.
     *
     * @param oldLeftNothing whether what the cells said before an edit left no trace in the state of others
     */
    private RunReport compute(Set<String> concerned, Message.Mode mode, boolean oldLeftNothing) {
        boolean safe = !ruleFollowed || (oldLeftNothing && sheet.isSafeAlone(concerned));
        if (safe && !engine.isReplayDue()) {
            concerned.forEach(engine.outcomes()::remove);
            engine.runOnly(mode, concerned);
            return report(mode == Message.Mode.SHORT ? RunReport.Way.SHORT : RunReport.Way.PATCH);
        }
        engine.outcomes().clear();
        engine.replay();
        return report(RunReport.Way.REPLAY);
    }

    /**
     * Replays every cell and compares with what was shown, bit by bit.
     *
     * @return the replayed values, with the cells that differed
     */
    public RunReport confirm() {
        synchronized (operations) {
            engine.begin();
            Map<String, CellOutcome> shown = new LinkedHashMap<>(engine.outcomes());
            engine.outcomes().clear();
            engine.replay();
            List<String> differences = new ArrayList<>();
            if (!engine.isStopAsked()) {
                for (Sheet.Cell cell : sheet.cells()) {
                    CellOutcome before = shown.get(cell.id());
                    if (before != null && !Outcomes.same(before, engine.outcome(cell))) {
                        differences.add(cell.id());
                    }
                }
            }
            return new RunReport(report(RunReport.Way.REPLAY).outcomes(), RunReport.Way.REPLAY, differences);
        }
    }

    /** Keeps what was compiled for the next time that exactly these scripts are opened. Writes a file if need be. */
    public void keepCompiled() {
        synchronized (compiling) {
            sheet.keep();
        }
    }

    /**
     * Compiles one of the cells again that were compiled before this session, and compares, byte by byte. Call it again
     * until there is none left. Runs and turns of dials go on meanwhile; an edit waits for one cell at most.
     *
     * @return whether cells are left, whether there is none, or whether one differed: then what was kept is given up, and the
     *     scripts must be run from the top in another session
     */
    public KeptCheck checkKept() {
        synchronized (compiling) {
            for (Sheet.Cell cell : sheet.cells()) {
                if (cell.kept != null) {
                    return sheet.check(cell) ? KeptCheck.MORE_LEFT : KeptCheck.DIFFERED;
                }
            }
            return KeptCheck.NONE_LEFT;
        }
    }

    /** What is known of the cells that were compiled before a session. */
    public enum KeptCheck {
        /** Those looked at are as they were compiled; others are still to be looked at. */
        MORE_LEFT,
        /** There are no others. */
        NONE_LEFT,
        /** One is not what its script compiles to. */
        DIFFERED
    }

    private RunReport report(RunReport.Way way) {
        List<CellOutcome> outcomes = new ArrayList<>();
        for (Sheet.Cell cell : sheet.cells()) {
            CellOutcome outcome = engine.outcome(cell);
            outcomes.add(outcome);
            for (DialDeclared dial : outcome.dials()) {
                dialCells
                        .computeIfAbsent(dial.name(), name -> new LinkedHashSet<>())
                        .add(cell.id());
            }
        }
        return new RunReport(outcomes, way, List.of());
    }

    /**
     * Returns which cells a cell reads from directly.
     *
     * @param id the cell's id
     * @throws IllegalArgumentException when there is no script cell of this id
     */
    public Set<String> readsFrom(String id) {
        synchronized (operations) {
            Sheet.Cell cell = sheet.find(id);
            if (cell == null) {
                throw new IllegalArgumentException("no script cell \"" + id + "\" in this workbook");
            }
            return Set.copyOf(cell.readsFrom);
        }
    }

    @Override
    public List<Suggestion> completions(String id, String text, int caret) {
        return advisor.completions(id, text, caret);
    }

    @Override
    public List<String> signatures(String id, String text, int caret) {
        return advisor.signatures(id, text, caret);
    }

    /** Stops the operation that is under way, if one is. From any thread; returns at once. */
    public void stop() {
        engine.stop();
    }

    /** Ends the worker. From any thread. */
    @Override
    public void close() {
        engine.close();
        shell.close();
        advisor.close();
    }

    /** Switches the safety rule off, so that a test can see that it notices. */
    void ignoreSafetyRule() {
        ruleFollowed = false;
    }

    /** Returns whether JShell was asked for, so that a test can see that it was not. */
    boolean isCompilerAwake() {
        return shell.isBegun();
    }

    /** Returns the worker's process, so that a test can end it. */
    ProcessHandle workerHandle() {
        return Objects.requireNonNull(engine.workerHandle());
    }
}
