package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Parent;

/** What tests and measurements of the window share: doing things on its thread, waiting for it, walking its nodes. */
public final class WindowThread {
    private static final int PATIENCE_SECONDS = 60;

    private WindowThread() {}

    /** Does something on the window's thread, at once when called on it, and returns what it gave; its failure is thrown here. */
    public static <T> T at(Callable<T> task) throws Exception {
        if (Platform.isFxApplicationThread()) {
            return task.call();
        }
        CompletableFuture<T> answer = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                answer.complete(task.call());
            } catch (Throwable failure) {
                answer.completeExceptionally(failure);
            }
        });
        return answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    }

    /** Does something on the window's thread. */
    public static void doing(Runnable task) throws Exception {
        at(() -> {
            task.run();
            return 0;
        });
    }

    /** Waits until something is so on the window's thread; fails when it never is. */
    public static void until(String what, BooleanSupplier condition) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!at(condition::getAsBoolean)) {
            assertTrue(System.nanoTime() < end, () -> "never so: " + what);
            Thread.sleep(15);
        }
    }

    /** A node and all below it, in order of the scene. */
    public static Stream<Node> all(Node node) {
        return node instanceof Parent parent
                ? Stream.concat(
                        Stream.of(node),
                        parent.getChildrenUnmodifiable().stream().flatMap(WindowThread::all))
                : Stream.of(node);
    }

    /** Whether neither a node nor any that holds it is hidden. */
    static boolean isShown(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }
}
