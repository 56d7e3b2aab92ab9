package leverwright.face.desk.catalogue;

import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import leverwright.workbook.scenario.ExerciseShelf;
import org.jspecify.annotations.Nullable;

/**
 * Computes how an exercise looks off the window's thread: of several orders that come while one is computed, the latest is next
 * and the others never are. To be used on the window's thread.
 */
final class Trial {
    private static final ExecutorService THREAD = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "catalogue");
        thread.setDaemon(true);
        return thread;
    });

    private final Consumer<ExerciseShelf.View> shown;
    private final Consumer<String> refused;
    private @Nullable Runnable wanted;
    private boolean busy;
    private boolean ended;

    /**
     * Begins with nothing.
     *
     * @param shown takes what was computed
     * @param refused takes, in words, why no posture has the settings
     */
    Trial(Consumer<ExerciseShelf.View> shown, Consumer<String> refused) {
        this.shown = shown;
        this.refused = refused;
    }

    void order(ExerciseShelf.Entry entry, Map<Integer, Double> set, Supplier<ExerciseShelf.Trying> trying) {
        Map<Integer, Double> settings = Map.copyOf(set);
        wanted = () -> compute(entry, settings, trying);
        if (!busy) {
            next();
        }
    }

    /** Runs something on the thread that computes, and then on the window's. */
    static <T> void after(Supplier<T> work, Consumer<T> then) {
        THREAD.execute(() -> {
            T made = work.get();
            Platform.runLater(() -> then.accept(made));
        });
    }

    private void next() {
        Runnable order = wanted;
        wanted = null;
        if (order != null && !ended) {
            busy = true;
            THREAD.execute(order);
        }
    }

    private void compute(ExerciseShelf.Entry entry, Map<Integer, Double> set, Supplier<ExerciseShelf.Trying> trying) {
        try {
            ExerciseShelf.View view = ExerciseShelf.view(entry, set, trying.get());
            Platform.runLater(() -> arrive(() -> shown.accept(view)));
        } catch (IllegalArgumentException impossible) {
            String words = String.valueOf(impossible.getMessage());
            Platform.runLater(() -> arrive(() -> refused.accept(words)));
        }
    }

    private void arrive(Runnable telling) {
        busy = false;
        if (!ended) {
            telling.run();
            next();
        }
    }

    void end() {
        ended = true;
        wanted = null;
    }
}
