package leverwright.face.desk.model;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import leverwright.run.result.CellState;

/** A desk without a window: one thread stands in for the window's, and the waits are short. */
final class DeskBench implements AutoCloseable {

    private static final long PATIENCE_SECONDS = 60;

    final ExecutorService view = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "view of the test");
        thread.setDaemon(true);
        return thread;
    });
    final DeskHome home;

    DeskBench(Path folder, Path shelf) {
        DeskTiming timing = new DeskTiming(
                Duration.ofMillis(20),
                Duration.ofMillis(20),
                Duration.ofMillis(20),
                Duration.ofMillis(30),
                Duration.ofHours(1));
        home = new DeskHome(DeskFolders.under(folder), shelf, timing, view);
    }

    /** Does something on the window's thread and returns what it gave. */
    <T> T at(Callable<T> task) throws Exception {
        return view.submit(task).get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    }

    void doing(Runnable task) throws Exception {
        view.submit(task).get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    }

    /** Waits until something is so on the window's thread; fails when it never is. */
    void until(String what, BooleanSupplier condition) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!at(condition::getAsBoolean)) {
            assertTrue(System.nanoTime() < end, () -> "never so: " + what);
            Thread.sleep(10);
        }
    }

    void untilFresh(DeskModel model) throws Exception {
        until(
                "all fresh: " + at(() -> model.status().get()),
                () -> model.cells().stream()
                        .filter(CellView::isScript)
                        .allMatch(cell -> cell.shown().get().state() == CellState.FRESH));
    }

    @Override
    public void close() {
        view.shutdown();
        home.close();
    }
}
