package leverwright.workbook.session;

import java.time.Duration;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.Timer;
import java.util.TimerTask;
import leverwright.run.result.CellState;
import org.jspecify.annotations.Nullable;

/** Stops a run when one of its cells takes longer than allowed, and says so in the cell's outcome. */
final class CellClock implements SessionListener, AutoCloseable {

    private final SessionListener listener;
    private final Duration most;
    private final Timer timer = new Timer("time of a cell", true);
    private final Set<String> late = new LinkedHashSet<>();
    private @Nullable Session session;
    private @Nullable String running;
    private @Nullable TimerTask alarm;

    /**
     * Makes a clock.
     *
     * @param listener is told what the session tells
     * @param most how long one cell may take
     */
    CellClock(SessionListener listener, Duration most) {
        this.listener = listener;
        this.most = most;
    }

    synchronized void watch(Session watched) {
        session = watched;
    }

    @Override
    public void cellChanged(CellOutcome outcome) {
        CellOutcome told;
        synchronized (this) {
            boolean furtherOn = outcome.state() == CellState.RUNNING
                    && outcome.id().equals(running)
                    && !outcome.message().isEmpty();
            if (outcome.state() == CellState.RUNNING && !furtherOn) {
                begin(outcome.id());
            } else if (outcome.id().equals(running) && !furtherOn) {
                rest();
            }
            told = worded(outcome);
        }
        listener.cellChanged(told);
    }

    private void begin(String cell) {
        rest();
        running = cell;
        TimerTask next = new TimerTask() {
            @Override
            public void run() {
                ring(cell);
            }
        };
        alarm = next;
        timer.schedule(next, most.toMillis());
    }

    private void rest() {
        running = null;
        TimerTask set = alarm;
        if (set != null) {
            set.cancel();
        }
    }

    private synchronized void ring(String cell) {
        Session watched = session;
        if (cell.equals(running) && watched != null) {
            late.add(cell);
            watched.stop();
        }
    }

    /** Returns an outcome with the reason why its cell was stopped, if this clock stopped it. */
    synchronized CellOutcome worded(CellOutcome outcome) {
        return late.contains(outcome.id())
                        && outcome.state() == CellState.FAILED
                        && outcome.message().startsWith("stopped")
                ? outcome.saying("stopped, since it took longer than " + most.toSeconds()
                        + " s; make it shorter, or allow more seconds")
                : outcome;
    }

    @Override
    public void close() {
        timer.cancel();
    }
}
