package leverwright.workbook.session;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import leverwright.run.result.CellState;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Result;
import leverwright.run.wire.Message;
import org.jspecify.annotations.Nullable;

/** Follows the runs that one worker was asked for, and puts its frames together to outcomes. */
final class RunWatch implements WorkerProcess.Ear {

    /** What has come from a cell that runs. */
    private static final class Arriving {
        final List<Result> results = new ArrayList<>();
        final List<DialDeclared> dials = new ArrayList<>();
        String text = "";
    }

    private final SessionListener listener;
    private final Function<String, String> scripts;
    private final Map<String, CellOutcome> outcomes = new LinkedHashMap<>();
    private Arriving arriving = new Arriving();
    private @Nullable String running;
    private long lastEnded = -1;
    private boolean gone;
    private boolean spoiled;

    /**
     * Makes a watch.
     *
     * @param listener is told of every change
     * @param scripts gives the text of a cell's script
     */
    RunWatch(SessionListener listener, Function<String, String> scripts) {
        this.listener = listener;
        this.scripts = scripts;
    }

    @Override
    public void heard(WorkerProcess from, Message.FromWorker message) {
        CellOutcome changed = null;
        synchronized (this) {
            if (message instanceof Message.CellStarted started) {
                running = started.cell();
                arriving = new Arriving();
                changed = CellOutcome.without(started.cell(), CellState.RUNNING, "", null);
            } else if (message instanceof Message.CellProgress progress) {
                changed = CellOutcome.without(progress.cell(), CellState.RUNNING, progress.words(), null);
            } else if (message instanceof Message.CellResult result) {
                arriving.results.add(result.result());
            } else if (message instanceof Message.CellDial dial) {
                arriving.dials.add(dial.dial());
            } else if (message instanceof Message.CellText text) {
                arriving.text += text.text();
            } else if (message instanceof Message.CellEnded ended) {
                changed = outcome(ended);
                outcomes.put(ended.cell(), changed);
                spoiled |= ended.spoiled();
                running = null;
            } else if (message instanceof Message.RunEnded ended) {
                lastEnded = ended.run();
                notifyAll();
            }
        }
        if (changed != null) {
            listener.cellChanged(changed);
        }
    }

    private CellOutcome outcome(Message.CellEnded ended) {
        String script = scripts.apply(ended.cell());
        Span span = null;
        StringBuilder words = new StringBuilder(ended.message());
        for (Message.Trace trace : ended.traces()) {
            if (trace.cell().equals(ended.cell())) {
                span = Span.ofLine(script, trace.line());
                break;
            }
            words.append(" (in line ")
                    .append(trace.line())
                    .append(" of ")
                    .append(trace.cell())
                    .append(')');
        }
        boolean shows = ended.ending() == Message.Ending.FINE || ended.ending() == Message.Ending.STOPPED;
        return new CellOutcome(
                ended.cell(),
                state(ended),
                shows ? arriving.results : List.of(),
                arriving.dials,
                arriving.text,
                ended.textLeftOut(),
                words.toString(),
                span == null ? List.of() : List.of(new Fault(words.toString(), span)),
                Duration.ofNanos(ended.nanoseconds()));
    }

    private static CellState state(Message.CellEnded ended) {
        return switch (ended.ending()) {
            case FINE -> CellState.FRESH;
            case FAILED -> CellState.FAILED;
            case STOPPED -> ended.message().equals("stopped") ? CellState.FAILED : CellState.NOT_RUN;
            case NOT_RUN -> CellState.NOT_RUN;
        };
    }

    @Override
    public synchronized void gone(WorkerProcess from) {
        gone = true;
        notifyAll();
    }

    /** Waits until a run has ended or the worker is gone; returns whether the run has ended. */
    synchronized boolean await(long run) {
        boolean interrupted = false;
        while (lastEnded < run && !gone) {
            try {
                wait();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        return lastEnded >= run;
    }

    /** Waits for a run for a while at most; returns whether the run has ended or the worker is gone. */
    synchronized boolean await(long run, long milliseconds) throws InterruptedException {
        long end = System.nanoTime() + milliseconds * 1_000_000;
        while (lastEnded < run && !gone) {
            long left = (end - System.nanoTime()) / 1_000_000;
            if (left <= 0) {
                return false;
            }
            wait(left);
        }
        return true;
    }

    /** Returns and forgets the outcomes so far. */
    synchronized Map<String, CellOutcome> takeOutcomes() {
        Map<String, CellOutcome> taken = new LinkedHashMap<>(outcomes);
        outcomes.clear();
        return taken;
    }

    /** Returns the cell that was running when the worker went, or null when none was. */
    synchronized @Nullable String running() {
        return running;
    }

    /** Returns whether the worker had better not be used again. */
    synchronized boolean isSpoiled() {
        return spoiled;
    }
}
