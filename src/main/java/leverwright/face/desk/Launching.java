package leverwright.face.desk;

import java.io.IOException;
import java.lang.invoke.MethodHandles;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.stage.Stage;
import leverwright.face.desk.model.DeskHome;
import leverwright.workbook.json.JsonProblem;
import org.jspecify.annotations.Nullable;

/**
 * What is got ready on another thread while the toolkit starts: the user's desk and, where a file was asked for, the first
 * window, laid out. The window's thread waits for all of it before it makes a control, so that no two threads ever
 * initialize the classes of controls at once.
 */
final class Launching {

    private final CompletableFuture<Desk> desk;
    private final @Nullable CompletableFuture<DeskWindow> first;
    private final CountDownLatch toolkit = new CountDownLatch(1);
    private volatile Consumer<String> browser = address -> {};

    private Launching(DeskApp.Request request) {
        try {
            // The toolkit makes the first stage by itself; what that initializes is initialized before there are two
            // threads.
            MethodHandles.lookup().ensureInitialized(Stage.class);
        } catch (IllegalAccessException impossible) {
            throw new IllegalStateException(impossible);
        }
        desk = CompletableFuture.supplyAsync(() -> {
            DeskHome home = request.rehearsal()
                    ? DeskHome.forRehearsal(this::onWindowsThread)
                    : DeskHome.ofUser(this::onWindowsThread);
            home.holdBack();
            return new Desk(home, new SystemChooser(), address -> browser.accept(address));
        });
        if (request.files().isEmpty()) {
            first = null;
            return;
        }
        Path file = request.files().get(0);
        CompletableFuture<DeskWindow> opened = new CompletableFuture<>();
        first = opened;
        desk.whenComplete((made, failed) -> {
            if (failed != null) {
                opened.completeExceptionally(failed);
                return;
            }
            try {
                DeskHome home = made.home();
                DeskWindow window = new DeskWindow(made, home.open(home.readTextFirst(file)));
                window.layOut();
                opened.complete(window);
            } catch (IOException | RuntimeException | Error problem) {
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

    /**
     * Returns the user's desk. To be called on the window's thread, which there is from now on.
     *
     * @param shows shows a web address or a file in the user's browser
     */
    Desk desk(Consumer<String> shows) {
        browser = shows;
        toolkit.countDown();
        CompletableFuture<DeskWindow> opening = first;
        if (opening != null) {
            opening.handle((window, problem) -> window).join();
        }
        return desk.join();
    }

    /**
     * Returns the first window of the request, without a stage.
     *
     * @throws IOException when its file cannot be read, in words
     * @throws JsonProblem when that is not a workbook that this version can read, in words
     */
    DeskWindow first() throws IOException {
        CompletableFuture<DeskWindow> opening = first;
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
