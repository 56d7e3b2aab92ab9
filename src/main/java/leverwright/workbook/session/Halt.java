package leverwright.workbook.session;

import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;

/** The way to end a clean run from another thread. */
public final class Halt {

    private volatile boolean asked;
    private volatile @Nullable Session session;

    /** Makes one that was not asked for yet. */
    public Halt() {}

    /** Asks the run to end; one that has not begun will not begin. From any thread; returns at once. */
    public void ask() {
        asked = true;
        Session running = session;
        if (running != null) {
            running.stop();
        }
    }

    /** Returns whether the run was asked to end. */
    public boolean isAsked() {
        return asked;
    }

    /** Takes the session that is about to run. */
    void over(Session running) {
        session = running;
        refuseWhenAsked();
    }

    /** Stops what has begun although the end was asked for, as it may when both come in the same moment. */
    void stopWhatBegins() {
        Session running = session;
        if (asked && running != null) {
            running.stop();
        }
    }

    /** Ends a run that was asked to end; what it came to tells nothing about the workbook. */
    void refuseWhenAsked() {
        if (asked) {
            throw new CancellationException("the run was stopped");
        }
    }
}
