package leverwright.workbook.session;

import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;

/** JShell, started when it is first asked for or a little before. From any thread. */
final class ShellLater implements AutoCloseable {

    private final Compilers compilers;
    private @Nullable CompletableFuture<Shell> made;

    ShellLater(Compilers compilers) {
        this.compilers = compilers;
    }

    /** Begins to start it on another thread. */
    synchronized CompletableFuture<Shell> begin() {
        CompletableFuture<Shell> begun = made;
        if (begun == null) {
            begun = CompletableFuture.supplyAsync(() -> new Shell(compilers.files(), compilers.options()));
            made = begun;
        }
        return begun;
    }

    /** Returns it; waits until it has started. */
    Shell get() {
        return begin().join();
    }

    synchronized boolean isBegun() {
        return made != null;
    }

    @Override
    public synchronized void close() {
        CompletableFuture<Shell> begun = made;
        if (begun != null) {
            begun.thenAccept(Shell::close);
        }
    }
}
