package leverwright.face.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.stage.Stage;
import javafx.stage.Window;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskFolders;
import leverwright.face.desk.model.DeskHome;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DeskTiming;
import leverwright.run.result.CellState;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A desk with windows on the tests' screen, folders of its own, and a chooser that knows what to answer. */
final class WindowBench implements AutoCloseable {

    private static final Logger STYLES = Logger.getLogger("javafx.css");

    final Path folder;
    final DeskHome home;
    final Desk desk;
    final Deque<Path> answers = new ArrayDeque<>();
    final List<String> browsed = new ArrayList<>();
    final List<Throwable> failures = new ArrayList<>();
    final FxRobot robot = new FxRobot();

    WindowBench(Path folder) throws Exception {
        this.folder = folder;
        // Labels made before they stand in a scene look colours up in vain once; nothing of that is ever drawn.
        STYLES.setLevel(Level.OFF);
        FxToolkit.registerPrimaryStage();
        Platform.setImplicitExit(false);
        WaitForAsyncUtils.autoCheckException = false;
        DeskTiming timing = new DeskTiming(
                Duration.ofMillis(60),
                Duration.ofMillis(60),
                Duration.ofMillis(100),
                Duration.ofMillis(100),
                Duration.ofMillis(1200));
        home = at(() -> new DeskHome(
                DeskFolders.under(folder.resolve("user")), folder.resolve("shelf"), timing, Platform::runLater));
        desk = at(() -> new Desk(home, new Answering(), browsed::add));
        Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> {
            synchronized (failures) {
                failures.add(failure);
            }
        });
    }

    /** The chooser of the tests: gives what was laid ready. */
    private final class Answering implements Chooser {
        @Override
        public List<Path> toOpen(Window owner) {
            return answers.isEmpty() ? List.of() : List.of(answers.remove());
        }

        @Override
        public Optional<Path> toSave(Window owner, String suggested) {
            return Optional.ofNullable(answers.poll());
        }

        @Override
        public Optional<Path> forPage(Window owner, String suggested) {
            return Optional.ofNullable(answers.poll());
        }
    }

    /** Puts a workbook of the project onto the shelf of this desk, from where it computes on opening. */
    Path onShelf(Path workbook) throws IOException {
        Path shelf = Files.createDirectories(folder.resolve("shelf"));
        return Files.copy(workbook, shelf.resolve(workbook.getFileName()));
    }

    static Path demo() {
        return Path.of("workbooks/the-torso-leans.leverwright.json");
    }

    <T> T at(Callable<T> task) throws Exception {
        return WindowThread.at(task);
    }

    void doing(Runnable task) throws Exception {
        WindowThread.doing(task);
    }

    void until(String what, BooleanSupplier condition) throws Exception {
        WindowThread.until(what, condition);
    }

    DeskWindow open(Path file) throws Exception {
        return at(() -> {
            try {
                return desk.show(home.open(file), new Stage());
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        });
    }

    void untilFresh(DeskModel model) throws Exception {
        try {
            until("all fresh", () -> isFresh(model));
        } catch (AssertionError never) {
            throw new AssertionError(
                    at(() -> model.status().get() + ", busy " + model.busy().get() + ", notices " + model.notices()),
                    never);
        }
    }

    private static boolean isFresh(DeskModel model) {
        return !model.busy().get()
                && model.cells().stream()
                        .filter(CellView::isScript)
                        .allMatch(cell -> cell.shown().get().state() == CellState.FRESH);
    }

    /** Every node of a window that fits, in order of the scene. */
    List<Node> nodes(DeskWindow window, java.util.function.Predicate<Node> fits) throws Exception {
        return at(() -> WindowThread.all(window.stage().getScene().getRoot())
                .filter(fits)
                .toList());
    }

    /** The text of everything that can be read in a window. */
    String words(DeskWindow window) throws Exception {
        return at(() -> {
            StringBuilder words = new StringBuilder();
            WindowThread.all(window.stage().getScene().getRoot())
                    .filter(node -> node instanceof javafx.scene.text.Text && node.isVisible())
                    .forEach(node -> words.append(((javafx.scene.text.Text) node).getText())
                            .append('\n'));
            return words.toString();
        });
    }

    @Override
    public void close() throws Exception {
        doing(() -> {
            for (DeskWindow window : desk.windows()) {
                window.model().close();
                window.stage().hide();
            }
            desk.startWindow().ifPresent(start -> start.stage().hide());
        });
        home.close();
        Thread.setDefaultUncaughtExceptionHandler(null);
    }
}
