package leverwright.face.desk.model;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import leverwright.run.result.CellState;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.session.CellOutcome;
import leverwright.workbook.session.Halt;

/** A recheck that is under way or done: how far it has come, the way to stop it, and what it came to. */
public final class Recheck {

    private final Executor view;
    private final int total;
    private final Halt halt = new Halt();
    private final Set<String> ended = new LinkedHashSet<>();
    private final CompletableFuture<RecheckReport> report = new CompletableFuture<>();
    private final ReadOnlyObjectWrapper<Progress> progress;

    Recheck(Workbook workbook, Executor view) {
        this.view = view;
        total = workbook.scripts().size();
        progress = new ReadOnlyObjectWrapper<>(new Progress("", 0, total));
    }

    /** One that was over before it began. */
    static Recheck none() {
        Recheck none = new Recheck(Workbook.empty(""), Runnable::run);
        none.report.cancel(false);
        return none;
    }

    /** Returns what came of it; fails in words when it was stopped or could not be done; completes on the window's thread. */
    public CompletableFuture<RecheckReport> report() {
        return report;
    }

    /** Returns how far it has come; changes on the window's thread. */
    public ReadOnlyObjectProperty<Progress> progress() {
        return progress.getReadOnlyProperty();
    }

    /** Stops it; one that is done stays as it is. Returns at once. */
    public void stop() {
        halt.ask();
    }

    /** Does it, on a thread of its own. */
    void run(Supplier<Workbook> recording, boolean trusted) {
        try {
            Workbook recorded = recording.get();
            if (recorded.record().isEmpty()) {
                throw new IllegalStateException(
                        "There is no record to check yet: compute the workbook until every script is fresh.");
            }
            RecheckReport made = Recording.recheck(recorded, trusted, halt, this::told);
            view.execute(() -> report.complete(made));
        } catch (CancellationException stopped) {
            IllegalStateException words =
                    new IllegalStateException("The recheck was stopped. It says nothing about the record.");
            view.execute(() -> report.completeExceptionally(words));
        } catch (RuntimeException failure) {
            view.execute(() -> report.completeExceptionally(failure));
        }
    }

    private void told(CellOutcome outcome) {
        Progress now;
        synchronized (ended) {
            boolean running = outcome.state() == CellState.RUNNING;
            if (!running) {
                ended.add(outcome.id());
            }
            now = new Progress(running ? outcome.id() : "", ended.size(), total);
        }
        view.execute(() -> progress.set(now));
    }
}
