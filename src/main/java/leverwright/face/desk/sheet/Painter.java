package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.image.WritableImage;
import leverwright.face.draw.Palette;
import leverwright.face.draw.Picture;
import org.jspecify.annotations.Nullable;

/**
 * Draws off the window's thread into the spare of two sheets of pixels; only the swap is on the window's thread. Of several
 * orders that come while one is drawn, the latest is drawn next and the others never are. To be used on the window's thread.
 *
 * @param <D> what a drawing gives beside its picture
 */
final class Painter<D> {

    /** One thread draws for every window: drawings share caches that no two threads may fill at once. */
    private static final ExecutorService THREAD = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "desk drawing");
        thread.setDaemon(true);
        return thread;
    });

    /** Orders that the thread has not met yet, over all panes. */
    private static final AtomicInteger AHEAD = new AtomicInteger();

    /** What was drawn and not handed over yet: all that one turn of a dial changes is swapped in one pulse. */
    private static final List<Runnable> ARRIVED = new ArrayList<>();

    /**
     * What is to be drawn.
     *
     * @param draw makes the drawing
     * @param palette its shades
     * @param scale pixels for each picture unit
     */
    record Order<D>(Supplier<D> draw, Palette palette, double scale) {}

    /** Takes what was drawn, on the window's thread. */
    interface Receiver<D> {
        void drawn(D drawing, Order<D> order, WritableImage image);

        void failed(RuntimeException failure);
    }

    private static final int MOST_TOGETHER = 6;

    private final Function<D, Picture> picture;
    private @Nullable Receiver<D> receiver;
    private @Nullable PixelSheet front;
    private @Nullable PixelSheet spare;
    private @Nullable Order<D> wanted;
    private boolean busy;

    Painter(Function<D, Picture> picture, Receiver<D> receiver) {
        this.picture = picture;
        this.receiver = receiver;
    }

    void order(Order<D> order) {
        wanted = order;
        if (!busy) {
            next();
        }
    }

    /** Gives up what is ordered and whom it was for. */
    void dispose() {
        receiver = null;
        wanted = null;
    }

    private void next() {
        Order<D> order = wanted;
        if (order == null) {
            return;
        }
        wanted = null;
        busy = true;
        PixelSheet reused = spare;
        AHEAD.incrementAndGet();
        THREAD.execute(() -> {
            ARRIVED.add(drawn(order, reused));
            if (AHEAD.decrementAndGet() == 0 || ARRIVED.size() >= MOST_TOGETHER) {
                List<Runnable> all = List.copyOf(ARRIVED);
                ARRIVED.clear();
                Platform.runLater(() -> all.forEach(Runnable::run));
            }
        });
    }

    private Runnable drawn(Order<D> order, @Nullable PixelSheet reused) {
        try {
            D drawing = order.draw().get();
            Picture drawn = picture.apply(drawing);
            int width = (int) Math.ceil(drawn.width() * order.scale() - 1e-6);
            int height = (int) Math.ceil(drawn.height() * order.scale() - 1e-6);
            PixelSheet sheet = reused != null && reused.hasSize(width, height) ? reused : new PixelSheet(width, height);
            sheet.paint(drawn, order.palette(), order.scale());
            return () -> arrive(drawing, order, sheet);
        } catch (RuntimeException failure) {
            return () -> fail(failure);
        }
    }

    private void arrive(D drawing, Order<D> order, PixelSheet sheet) {
        busy = false;
        Receiver<D> open = receiver;
        if (open != null) {
            spare = front;
            front = sheet;
            open.drawn(drawing, order, sheet.updated());
            next();
        }
    }

    private void fail(RuntimeException failure) {
        busy = false;
        Receiver<D> open = receiver;
        if (open != null) {
            open.failed(failure);
            next();
        }
    }
}
