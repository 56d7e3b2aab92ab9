package leverwright.face.desk;

import static leverwright.face.desk.WindowThread.at;

import com.sun.javafx.tk.RenderJob;
import com.sun.javafx.tk.Toolkit;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.ImageView;
import javafx.stage.Stage;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskFolders;
import leverwright.face.desk.model.DeskHome;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DeskTiming;
import leverwright.run.result.CellState;

/**
 * Measures the way of a dial turn on the window with the demo: from the call that turns the dial to the end of the pulse that
 * paints its last result, with table, sweep of 200 points and figure in view. Every turn comes at a random time within a
 * pulse, one after the other has been painted; the first 60 are not counted. "Drawn" is the time to the swap of the last
 * drawing: worker, decoding, drawing, and the ways between the threads. A second part moves the dial without a pause, as a
 * hand does, and counts the pictures a second.
 *
 * <p>Arguments: the file for the figures. The display is that of the environment, or Monocle's by system properties; the
 * scale of the screen is set by the system property {@code glass.gtk.uiScale}.
 */
public final class DialPulse {

    private static final int UNCOUNTED = 60;
    private static final int TURNS = 300;
    private static final double LEAST = Math.toRadians(12);
    private static final double RANGE = Math.toRadians(64);
    private static final String DIAL = "Torso lean";

    private final DeskWindow window;
    private final DeskModel model;
    private final Map<ImageView, Long> swaps = new LinkedHashMap<>();
    private Set<ImageView> awaited = Set.of();
    private CompletableFuture<Long> done = new CompletableFuture<>();
    private volatile long batchAt;
    private volatile long lastSwap;

    private DialPulse(DeskWindow window) {
        this.window = window;
        model = window.model();
    }

    /** Runs the measurement and ends the process. */
    public static void main(String[] arguments) throws Exception {
        Logger.getLogger("javafx").setLevel(Level.OFF);
        Platform.startup(() -> Platform.setImplicitExit(false));
        Path folder = Files.createTempDirectory("leverwright-dial-pulse");
        Path shelf = Files.createDirectories(folder.resolve("shelf"));
        Path demo = Files.writeString(
                shelf.resolve("demo.leverwright.json"),
                Files.readString(Path.of("workbooks/the-torso-leans.leverwright.json"))
                        .replace(
                                "sweep(TORSO_LEAN).from(deg(10)).to(deg(80)).of(",
                                "sweep(TORSO_LEAN).from(deg(10)).to(deg(80)).points(200).of("));
        DialPulse pulse = at(() -> {
            DeskHome home = new DeskHome(
                    DeskFolders.under(folder.resolve("user")), shelf, DeskTiming.standard(), Platform::runLater);
            Desk desk = new Desk(home, new SystemChooser(), address -> {});
            return new DialPulse(shown(desk, home, demo));
        });
        List<String> lines = pulse.run();
        lines.forEach(System.out::println);
        Files.write(Path.of(arguments[0]), lines);
        System.exit(0);
    }

    private static DeskWindow shown(Desk desk, DeskHome home, Path demo) throws IOException {
        Stage stage = new Stage();
        DeskModel model = home.open(demo);
        model.computeFromTheTop();
        DeskWindow window = desk.show(model, stage);
        stage.setX(0);
        stage.setY(0);
        stage.setWidth(1280);
        stage.setHeight(800);
        return window;
    }

    private List<String> run() throws Exception {
        untilFresh();
        at(() -> {
            window.reveal("moments");
            model.batch().addListener((property, before, now) -> batchAt = System.nanoTime());
            Scene scene = window.stage().getScene();
            scene.addPostLayoutPulseListener(this::pulse);
            return 0;
        });
        Thread.sleep(800);
        Set<ImageView> views = watch();
        double[][] times = new double[3][TURNS];
        Map<String, Long> used = new LinkedHashMap<>();
        Random random = new Random(1);
        int degrees = 12;
        for (int i = -UNCOUNTED; i < TURNS; i++) {
            if (i == 0) {
                used = cpu();
            }
            // The dial goes by whole degrees: a turn to where it stands would change nothing.
            degrees = 12 + (degrees - 12 + 1 + random.nextInt(63)) % 64;
            double[] one = turn(Math.toRadians(degrees), views);
            for (int part = 0; i >= 0 && part < 3; part++) {
                times[part][i] = one[part];
            }
            TimeUnit.MICROSECONDS.sleep(20_000 + random.nextInt(16_667));
        }
        List<String> lines = new ArrayList<>();
        double scale = at(() -> window.stage().getRenderScaleX());
        lines.add("screen scale " + scale + ", drawings in view " + views.size() + ", Java " + Runtime.version());
        lines.add(line("to the window (worker, decoding)", times[0]));
        lines.add(line("to the last drawing", times[1]));
        lines.add(line("to the end of its pulse", times[2]));
        lines.add(cpuWords(used, cpu()));
        lines.add(moving(random));
        return lines;
    }

    /** Processor time of the threads that take part, by name. */
    private static Map<String, Long> cpu() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        Map<String, Long> used = new LinkedHashMap<>();
        for (long id : threads.getAllThreadIds()) {
            ThreadInfo info = threads.getThreadInfo(id);
            if (info != null) {
                used.merge(info.getThreadName(), threads.getThreadCpuTime(id), Long::sum);
            }
        }
        return used;
    }

    /** What a turn costs on each thread; other work on the machine changes that less than it changes the times. */
    private static String cpuWords(Map<String, Long> before, Map<String, Long> after) {
        StringBuilder words = new StringBuilder("processor time a turn:");
        for (String name : List.of("desk runs", "desk drawing", "JavaFX Application Thread", "QuantumRenderer-0")) {
            long spent = after.getOrDefault(name, 0L) - before.getOrDefault(name, 0L);
            words.append(String.format(Locale.ROOT, " %s %.1f ms;", name, spent / 1e6 / TURNS));
        }
        return words.toString();
    }

    private void untilFresh() throws Exception {
        while (!at(() -> !model.busy().get()
                && model.cells().stream()
                        .filter(CellView::isScript)
                        .allMatch(cell -> cell.shown().get().state() == CellState.FRESH))) {
            Thread.sleep(50);
        }
    }

    /** Finds the drawings that follow the dial: those whose image changes when it turns. */
    private Set<ImageView> watch() throws Exception {
        at(() -> {
            WindowThread.all(window.stage().getScene().getRoot())
                    .filter(ImageView.class::isInstance)
                    .map(ImageView.class::cast)
                    .forEach(view -> view.imageProperty().addListener((property, before, now) -> swapped(view)));
            swaps.clear();
            model.turn(DIAL, LEAST);
            return 0;
        });
        Thread.sleep(1000);
        Set<ImageView> found = at(() -> new LinkedHashSet<>(swaps.keySet()));
        if (found.size() < 2) {
            throw new IllegalStateException("only " + found.size() + " drawings follow the dial; two are expected");
        }
        return found;
    }

    /** Stamps the end of painting, and of handing the pixels to the screen, after each pulse. */
    private void pulse() {
        long asked = System.nanoTime();
        Platform.runLater(() -> Toolkit.getToolkit()
                .addRenderJob(new RenderJob(() -> Platform.runLater(() -> paintedUpTo(asked, System.nanoTime())))));
    }

    private void swapped(ImageView view) {
        swaps.put(view, System.nanoTime());
        if (!awaited.isEmpty() && lastSwap == 0 && swaps.keySet().containsAll(awaited)) {
            lastSwap = System.nanoTime();
        }
    }

    private void paintedUpTo(long asked, long now) {
        if (lastSwap != 0 && asked >= lastSwap) {
            done.complete(now);
        }
    }

    private double[] turn(double to, Set<ImageView> views) throws Exception {
        CompletableFuture<Long> end = new CompletableFuture<>();
        long start = at(() -> {
            swaps.clear();
            awaited = views;
            lastSwap = 0;
            done = end;
            long now = System.nanoTime();
            model.turn(DIAL, to);
            return now;
        });
        long paintedAt = end.get(20, TimeUnit.SECONDS);
        return new double[] {(batchAt - start) / 1e6, (lastSwap - start) / 1e6, (paintedAt - start) / 1e6};
    }

    /** Moves the dial every 8 ms for five seconds; counts the batches and the pulses that painted something. */
    private String moving(Random random) throws Exception {
        long batches = at(() -> model.batch().get());
        long[] pulses = new long[1];
        Runnable count = () -> pulses[0]++;
        at(() -> {
            window.stage().getScene().addPostLayoutPulseListener(count);
            return 0;
        });
        long start = System.nanoTime();
        double phase = random.nextDouble();
        while (System.nanoTime() - start < TimeUnit.SECONDS.toNanos(5)) {
            double seconds = (System.nanoTime() - start) / 1e9;
            double to = LEAST + RANGE * (0.5 + 0.5 * Math.sin(seconds * 2 + phase));
            Platform.runLater(() -> model.turn(DIAL, to));
            TimeUnit.MILLISECONDS.sleep(8);
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        long come = at(() -> model.batch().get()) - batches;
        return String.format(
                Locale.ROOT,
                "while it moves: %.0f results and %.0f pulses a second",
                come / seconds,
                pulses[0] / seconds);
    }

    private static String line(String what, double[] milliseconds) {
        double[] sorted = milliseconds.clone();
        Arrays.sort(sorted);
        return String.format(
                Locale.ROOT,
                "%-34s p50 %5.1f   p95 %5.1f   p99 %5.1f   most %5.1f ms",
                what,
                share(sorted, 0.5),
                share(sorted, 0.95),
                share(sorted, 0.99),
                sorted[sorted.length - 1]);
    }

    private static double share(double[] sorted, double part) {
        return sorted[Math.min(sorted.length - 1, (int) Math.ceil(part * sorted.length) - 1)];
    }
}
