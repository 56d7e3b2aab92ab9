package leverwright.face.desk.model;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import leverwright.workbook.session.CellOutcome;
import leverwright.workbook.session.CellScript;
import leverwright.workbook.session.CompiledCells;
import leverwright.workbook.session.RunReport;
import leverwright.workbook.session.Session;
import leverwright.workbook.session.SessionOptions;
import org.jspecify.annotations.Nullable;

/**
 * Brings the session to what the window wants, on one thread of its own. Only the latest wish counts, so that nothing ever
 * queues up behind a moving dial; what arrives goes to the window's thread in one batch.
 */
final class RunQueue implements AutoCloseable {

    private static final long FIRST_NEWS_MILLISECONDS = 60;

    /** Not at once: the first moments are the reader's. */
    private static final long CHECK_AFTER_MILLISECONDS = 1500;

    /** What the scripts and dials are to be. */
    record Target(long version, List<CellScript> scripts, Map<String, String> dials, boolean trusted, long seed) {}

    /** The last run that came to its end, with whether it was a replay or confirmed by one. */
    record Done(Target target, RunReport report, boolean confirmed) {}

    private final DeskTiming timing;
    private final Executor view;
    private final ScheduledExecutorService clock;
    private final Consumer<Batch> receiver;
    private final DeskLog log;
    private final CompiledCells compiled;
    private final Thread thread = new Thread(this::work, "desk runs");

    private @Nullable Target wanted;
    private long due;
    private boolean fresh;
    private boolean working;
    private boolean closed;
    private boolean stopAsked;
    private boolean confirming;
    private @Nullable Done done;
    private long confirmAt;
    private @Nullable Session session;
    private @Nullable Target applied;

    /** Whether the run under way is the first of its session; known to the thread that runs. */
    private boolean justOpened;

    private @Nullable Batch undelivered;
    private Map<String, CellOutcome> news = new LinkedHashMap<>();
    private long runningVersion;
    private long runningSince;

    RunQueue(
            DeskTiming timing,
            Executor view,
            ScheduledExecutorService clock,
            DeskLog log,
            CompiledCells compiled,
            Consumer<Batch> receiver) {
        this.timing = timing;
        this.view = view;
        this.clock = clock;
        this.log = log;
        this.compiled = compiled;
        this.receiver = receiver;
        thread.setDaemon(true);
        thread.start();
    }

    /** Takes a wish in place of an earlier one; it is met after the wait. */
    synchronized void want(Target target, Duration wait) {
        long at = System.nanoTime() + wait.toNanos();
        due = at;
        wanted = target;
        notifyAll();
    }

    /** Takes a wish and meets it by a run from the top in a new worker. */
    synchronized void fromTheTop(Target target) {
        fresh = true;
        want(target, Duration.ZERO);
    }

    /** Stops what runs. From any thread; returns at once. */
    void stop() {
        Session running;
        synchronized (this) {
            stopAsked = true;
            running = working ? session : null;
        }
        if (running != null) {
            running.stop();
        }
    }

    /** Meets what is wanted without waiting for typing to settle, confirms it, and waits for that; null when late. */
    synchronized @Nullable Done settled(Duration limit) throws InterruptedException {
        long end = System.nanoTime() + limit.toNanos();
        while (!closed && (wanted != null || working || confirmAt != 0)) {
            due = Math.min(due, System.nanoTime());
            confirmAt = confirmAt == 0 ? 0 : Math.min(confirmAt, System.nanoTime());
            notifyAll();
            long left = (end - System.nanoTime()) / 1_000_000;
            if (left <= 0) {
                return null;
            }
            wait(left);
        }
        return done;
    }

    /** Returns the session that runs the scripts; null while there is none. */
    synchronized @Nullable Session session() {
        return session;
    }

    @Override
    public void close() {
        Session open;
        synchronized (this) {
            closed = true;
            open = session;
            session = null;
            notifyAll();
        }
        if (open != null) {
            open.close();
        }
    }

    private void work() {
        while (true) {
            Target target;
            boolean again;
            synchronized (this) {
                try {
                    target = next();
                } catch (InterruptedException e) {
                    return;
                }
                if (closed) {
                    return;
                }
                again = fresh;
                fresh = false;
                working = true;
                stopAsked = false;
            }
            perform(target, again);
            synchronized (this) {
                working = false;
                notifyAll();
            }
        }
    }

    /** Waits for work; null asks for a confirming replay. */
    private @Nullable Target next() throws InterruptedException {
        while (!closed) {
            long now = System.nanoTime();
            long at = wanted != null ? due : confirmAt;
            if (wanted == null && confirmAt == 0) {
                wait();
            } else if (at > now) {
                wait((at - now) / 1_000_000 + 1);
            } else {
                Target target = wanted;
                wanted = null;
                confirmAt = 0;
                return target;
            }
        }
        return null;
    }

    private void perform(@Nullable Target target, boolean again) {
        Target now = target != null ? target : applied;
        if (now == null) {
            return;
        }
        begin(now.version(), target == null);
        ScheduledFuture<?> ticks = clock.scheduleWithFixedDelay(
                this::tell, FIRST_NEWS_MILLISECONDS, FIRST_NEWS_MILLISECONDS, TimeUnit.MILLISECONDS);
        try {
            RunReport report = target == null ? confirmed() : run(target, again);
            applied = now;
            ticks.cancel(false);
            finish(now, report, target == null);
            afterOpening();
        } catch (RuntimeException failure) {
            ticks.cancel(false);
            fail(now, failure);
        }
    }

    private synchronized void begin(long version, boolean confirms) {
        confirming = confirms;
        runningVersion = version;
        runningSince = System.nanoTime();
        news = new LinkedHashMap<>();
    }

    private RunReport confirmed() {
        Session open = session;
        if (open == null) {
            throw new IllegalStateException("the session was closed");
        }
        return open.confirm();
    }

    private RunReport run(Target target, boolean again) {
        Session open = session;
        Target before = applied;
        boolean another = before == null || before.trusted() != target.trusted() || before.seed() != target.seed();
        if (open == null || again || another || before == null) {
            Session opened = opened(target);
            RunReport report = opened.run(target.scripts());
            justOpened = true;
            return report;
        }
        @Nullable RunReport report = null;
        if (!before.dials().equals(target.dials())) {
            report = open.setDials(target.dials());
        }
        if (before.scripts().equals(target.scripts())) {
            return report != null ? report : open.confirm();
        }
        CellScript edited = onlyEdit(before.scripts(), target.scripts());
        return edited == null ? open.run(target.scripts()) : open.edit(edited.id(), edited.text());
    }

    private Session opened(Target target) {
        Session old = session;
        if (old != null) {
            old.close();
        }
        Session opened = Session.open(
                new SessionOptions(target.trusted(), target.seed(), target.dials(), this::arrives), compiled);
        synchronized (this) {
            session = opened;
            if (closed) {
                opened.close();
            }
        }
        return opened;
    }

    /** Keeps what was compiled for the first time. What was not is compiled again beside everything else, a little later. */
    private void afterOpening() {
        Session opened = session();
        if (justOpened && opened != null) {
            justOpened = false;
            opened.keepCompiled();
            clock.schedule(() -> check(opened), CHECK_AFTER_MILLISECONDS, TimeUnit.MILLISECONDS);
        }
    }

    private void check(Session opened) {
        Thread checking = new Thread(
                () -> {
                    Session.KeptCheck check = Session.KeptCheck.MORE_LEFT;
                    while (check == Session.KeptCheck.MORE_LEFT && session() == opened) {
                        check = opened.checkKept();
                    }
                    if (check == Session.KeptCheck.DIFFERED) {
                        log.note("compiled cells that were kept are not those of this workbook; it is compiled anew");
                        again(opened);
                    }
                },
                "desk check");
        checking.setDaemon(true);
        checking.setPriority(Thread.MIN_PRIORITY);
        checking.start();
    }

    private synchronized void again(Session opened) {
        Target last = applied;
        if (session == opened && last != null) {
            fromTheTop(wanted == null ? last : wanted);
        }
    }

    /** Keeps what was compiled for the next time that the same scripts are opened. From any thread. */
    void keepCompiled() {
        Session open = session();
        if (open != null) {
            open.keepCompiled();
        }
    }

    private static @Nullable CellScript onlyEdit(List<CellScript> before, List<CellScript> after) {
        if (before.size() != after.size()) {
            return null;
        }
        CellScript edited = null;
        for (int i = 0; i < before.size(); i++) {
            if (!before.get(i).equals(after.get(i))) {
                if (edited != null || !before.get(i).id().equals(after.get(i).id())) {
                    return null;
                }
                edited = after.get(i);
            }
        }
        return edited;
    }

    private synchronized void arrives(CellOutcome outcome) {
        news.put(outcome.id(), outcome);
    }

    /** Tells the window how far a run has come that takes long. */
    private synchronized void tell() {
        // A confirming replay shows nothing while it runs: what stands there stays unless it differs in the end.
        if (working && !confirming && !news.isEmpty()) {
            Batch batch = batch(runningVersion, news, Map.of(), false, Set.of(), "");
            news = new LinkedHashMap<>();
            deliver(batch);
        }
    }

    private Batch batch(
            long version,
            Map<String, CellOutcome> outcomes,
            Map<String, Set<String>> readers,
            boolean complete,
            Set<String> differences,
            String fault) {
        Duration took = Duration.ofNanos(System.nanoTime() - runningSince);
        return new Batch(version, new LinkedHashMap<>(outcomes), readers, complete, differences, took, fault);
    }

    private void finish(Target target, RunReport report, boolean confirms) {
        Map<String, CellOutcome> outcomes = new LinkedHashMap<>();
        Set<String> differences = new LinkedHashSet<>(report.differences());
        for (CellOutcome outcome : report.outcomes()) {
            // A replay that confirms brings the workings that turns of a dial leave out.
            outcomes.put(outcome.id(), outcome);
        }
        if (!differences.isEmpty()) {
            log.note("a confirming replay changed " + differences.size() + " cells");
        }
        Map<String, Set<String>> readers = confirms ? Map.of() : readers(target.scripts());
        synchronized (this) {
            boolean replayed = report.way() == RunReport.Way.REPLAY;
            done = new Done(target, report, replayed && !stopAsked);
            confirmAt = replayed || stopAsked
                    ? 0
                    : System.nanoTime() + timing.rest().toNanos();
            news = new LinkedHashMap<>();
            deliver(batch(target.version(), outcomes, readers, true, differences, ""));
        }
    }

    /** Returns which cells read from each, directly or through others. */
    private Map<String, Set<String>> readers(List<CellScript> scripts) {
        Session open = session;
        Map<String, Set<String>> readers = new LinkedHashMap<>();
        Map<String, Set<String>> above = new LinkedHashMap<>();
        for (CellScript script : scripts) {
            Set<String> all = new LinkedHashSet<>();
            if (open != null) {
                for (String source : open.readsFrom(script.id())) {
                    all.add(source);
                    all.addAll(above.getOrDefault(source, Set.of()));
                }
            }
            above.put(script.id(), all);
            all.forEach(source ->
                    readers.computeIfAbsent(source, id -> new LinkedHashSet<>()).add(script.id()));
        }
        return readers;
    }

    private void fail(Target target, RuntimeException failure) {
        synchronized (this) {
            if (closed) {
                return;
            }
        }
        log.failure("a run ended by itself", failure);
        Session broken = session;
        if (broken != null) {
            broken.close();
        }
        String message = failure.getMessage();
        synchronized (this) {
            session = null;
            applied = null;
            done = null;
            confirmAt = 0;
            String words = message == null ? "the worker failed; compute from the top to try again" : message;
            deliver(batch(target.version(), news, Map.of(), true, Set.of(), words));
        }
    }

    private void deliver(Batch batch) {
        Batch waiting = undelivered;
        undelivered = waiting == null ? batch : waiting.then(batch);
        if (waiting == null) {
            view.execute(this::hand);
        }
    }

    private void hand() {
        Batch batch;
        synchronized (this) {
            batch = undelivered;
            undelivered = null;
        }
        if (batch != null) {
            receiver.accept(batch);
        }
    }
}
