package leverwright.face.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import javafx.application.Platform;
import leverwright.face.desk.editor.WarmUp;
import leverwright.face.desk.model.DeskHome;
import leverwright.face.desk.model.DeskModel;
import leverwright.workbook.json.JsonProblem;
import org.jspecify.annotations.Nullable;

/**
 * What is got ready on other threads while the toolkit starts: the user's desk, the first workbook as it is opened, and the
 * classes of a text area. The window's thread waits for all of it before it makes a control, so that no two threads ever
 * initialize classes of the toolkit at once.
 */
final class Launching {

    private final CompletableFuture<DeskHome> home;
    private final CompletableFuture<Void> warm;
    private final @Nullable CompletableFuture<DeskModel> first;
    private final CountDownLatch toolkit = new CountDownLatch(1);

    private Launching(DeskApp.Request request) {
        home = CompletableFuture.supplyAsync(() -> {
            DeskHome made = request.rehearsal()
                    ? DeskHome.forRehearsal(this::onWindowsThread)
                    : DeskHome.ofUser(this::onWindowsThread);
            made.holdBack();
            return made;
        });
        warm = CompletableFuture.runAsync(WarmUp::run);
        if (request.files().isEmpty()) {
            first = null;
            return;
        }
        Path file = request.files().get(0);
        CompletableFuture<DeskModel> opened = new CompletableFuture<>();
        first = opened;
        home.thenAccept(made -> {
            try {
                opened.complete(made.open(made.readTextFirst(file)));
            } catch (IOException | RuntimeException problem) {
                opened.completeExceptionally(problem);
            }
        });
    }

    /** Begins to get ready; returns at once. */
    static Launching begin(DeskApp.Request request) {
        return new Launching(request);
    }

    /** Does something on the window's thread, once there is one. */
    private void onWindowsThread(Runnable task) {
        try {
            toolkit.await();
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
            return;
        }
        Platform.runLater(task);
    }

    /** Returns the user's desk. To be called on the window's thread, which there is from now on. */
    DeskHome home() {
        toolkit.countDown();
        warm.join();
        return home.join();
    }

    /**
     * Returns the first workbook of the request, opened.
     *
     * @throws IOException when it cannot be read, in words
     * @throws JsonProblem when it is not a workbook that this version can read, in words
     */
    DeskModel first() throws IOException {
        CompletableFuture<DeskModel> opening = first;
        if (opening == null) {
            throw new IllegalStateException("no file was asked for");
        }
        try {
            return opening.get();
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof IOException problem) {
                throw problem;
            }
            if (failed.getCause() instanceof RuntimeException problem) {
                throw problem;
            }
            throw new IllegalStateException(failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException("reading was interrupted; open the workbook again", stopped);
        }
    }
}
