package leverwright.face.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import javafx.application.Platform;
import leverwright.face.desk.model.DeskHome;
import leverwright.face.desk.model.Permission;
import leverwright.workbook.json.JsonProblem;
import leverwright.workbook.session.Session;
import org.jspecify.annotations.Nullable;

/** What is got ready on another thread while the toolkit starts: the user's desk, and the first workbook as read. */
final class Launching {

    private final CompletableFuture<DeskHome> home;
    private final @Nullable CompletableFuture<DeskHome.Read> first;

    private Launching(CompletableFuture<DeskHome> home, @Nullable CompletableFuture<DeskHome.Read> first) {
        this.home = home;
        this.first = first;
    }

    /** Begins to get ready; returns at once. */
    static Launching begin(DeskApp.Request request) {
        CompletableFuture<DeskHome> home = CompletableFuture.supplyAsync(() -> DeskHome.ofUser(Platform::runLater));
        if (request.files().isEmpty()) {
            return new Launching(home, null);
        }
        Path file = request.files().get(0);
        CompletableFuture<DeskHome.Read> read = new CompletableFuture<>();
        home.thenAccept(made -> {
            try {
                DeskHome.Read done = made.read(file);
                if (done.permission() != Permission.ASLEEP) {
                    // It will be computed at once: its worker gets ready beside the toolkit.
                    Session.prepareWorker(done.permission() == Permission.TRUSTED);
                }
                read.complete(done);
            } catch (IOException | RuntimeException problem) {
                read.completeExceptionally(problem);
            }
        });
        return new Launching(home, read);
    }

    /** Returns the user's desk. */
    DeskHome home() {
        return home.join();
    }

    /**
     * Returns the first workbook of the request as read.
     *
     * @throws IOException when it cannot be read, in words
     * @throws JsonProblem when it is not a workbook that this version can read, in words
     */
    DeskHome.Read first() throws IOException {
        CompletableFuture<DeskHome.Read> reading = first;
        if (reading == null) {
            throw new IllegalStateException("no file was asked for");
        }
        try {
            return reading.get();
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
