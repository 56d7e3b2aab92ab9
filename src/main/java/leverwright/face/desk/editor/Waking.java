package leverwright.face.desk.editor;

import java.util.ArrayDeque;
import java.util.Deque;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.util.Duration;

/**
 * Opens scripts one after the other, as many between two pictures as leave time to paint: the first one can be written in
 * while the others still open. To be used on the window's thread.
 */
final class Waking {

    private static final long SLICE_NANOS = 8_000_000;
    private static final Deque<Runnable> ASKED = new ArrayDeque<>();
    private static boolean busy;

    private Waking() {}

    static void ask(Runnable wake) {
        ASKED.add(wake);
        if (!busy) {
            busy = true;
            Platform.runLater(Waking::work);
        }
    }

    private static void work() {
        long begin = System.nanoTime();
        while (!ASKED.isEmpty() && System.nanoTime() - begin < SLICE_NANOS) {
            ASKED.remove().run();
        }
        if (ASKED.isEmpty()) {
            busy = false;
            ApiIndex.warmUp();
        } else {
            PauseTransition picture = new PauseTransition(Duration.millis(1));
            picture.setOnFinished(event -> Platform.runLater(Waking::work));
            picture.play();
        }
    }
}
