package leverwright.face.desk.model;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import leverwright.workbook.document.Workbook;

/** A file of which the text is shown before all of it has been read. */
final class WholeFile {

    private final CompletableFuture<Void> read = new CompletableFuture<>();

    /** Completes on the window's thread when all has been read and taken; exceptionally when it cannot be read. */
    CompletableFuture<Void> read() {
        return read;
    }

    boolean isRead() {
        return read.isDone() && !read.isCompletedExceptionally();
    }

    /** Notes that there is nothing more to read. */
    void nothingMore() {
        read.complete(null);
    }

    /**
     * Reads all of it.
     *
     * @param rest reads it
     * @param disk where it is read
     * @param view the window's thread
     * @param taker takes it there
     */
    void read(Supplier<Workbook> rest, Executor disk, Executor view, Consumer<Workbook> taker) {
        disk.execute(() -> {
            try {
                Workbook all = rest.get();
                view.execute(() -> taker.accept(all));
            } catch (IllegalArgumentException unreadable) {
                view.execute(() -> read.completeExceptionally(unreadable));
            }
        });
    }

    /**
     * Returns all of a file with what was changed since its text was read.
     *
     * @param text its text, as read first
     * @param all all of it
     * @param now the text with what was changed since
     */
    static Workbook with(Workbook text, Workbook all, Workbook now) {
        boolean asRead = SheetChange.sameText(text, all) && text.dials().equals(all.dials());
        return asRead
                ? all.withSheet(now.sheet())
                        .withWords(now.title(), now.author(), now.about())
                        .withDials(now.dials())
                : all;
    }
}
