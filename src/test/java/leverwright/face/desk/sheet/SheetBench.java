package leverwright.face.desk.sheet;

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
import java.util.function.Predicate;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import leverwright.face.desk.WindowThread;
import leverwright.face.desk.dials.SidePane;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskFolders;
import leverwright.face.desk.model.DeskHome;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DeskTiming;
import leverwright.face.desk.style.DeskStyle;
import leverwright.run.result.CellState;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Sheet and side of one workbook in a window of their own, on the tests' screen. */
final class SheetBench implements AutoCloseable {

    private static final Logger STYLES = Logger.getLogger("javafx.css");

    final DeskHome home;
    final DeskModel model;
    final SheetPane sheet;
    final SidePane side;
    final Stage stage;
    final FxRobot robot = new FxRobot();
    final Deque<Path> answers = new ArrayDeque<>();
    final List<Throwable> failures = new ArrayList<>();

    /** Shows a workbook and waits until it has computed. */
    SheetBench(Path folder, Workbook workbook) throws Exception {
        STYLES.setLevel(Level.OFF);
        FxToolkit.registerPrimaryStage();
        Platform.setImplicitExit(false);
        WaitForAsyncUtils.autoCheckException = false;
        Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> {
            synchronized (failures) {
                failures.add(failure);
            }
        });
        Path shelf = Files.createDirectories(folder.resolve("shelf"));
        Path file = shelf.resolve("shown.leverwright.json");
        WorkbookFiles.onDisk().saveNew(file, workbook);
        DeskTiming timing = new DeskTiming(
                Duration.ofMillis(60),
                Duration.ofMillis(60),
                Duration.ofSeconds(5),
                Duration.ofSeconds(5),
                Duration.ofMillis(1200));
        home = at(() -> new DeskHome(DeskFolders.under(folder.resolve("user")), shelf, timing, Platform::runLater));
        model = at(() -> home.open(file));
        sheet = at(() -> new SheetPane(model, (owner, name, ending, kind) -> Optional.ofNullable(answers.poll())));
        side = at(() -> new SidePane(model));
        stage = at(this::shown);
        untilFresh();
    }

    private Stage shown() {
        BorderPane all = new BorderPane(sheet);
        all.setRight(side);
        side.setPrefWidth(325);
        Scene scene = new Scene(all, 1180, 760);
        DeskStyle.dress(scene, model.looks());
        Stage window = new Stage();
        window.setScene(scene);
        window.show();
        return window;
    }

    static Workbook demo() throws Exception {
        return WorkbookFiles.onDisk()
                .read(Path.of("workbooks/the-torso-leans.leverwright.json"))
                .workbook();
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

    void untilFresh() throws Exception {
        until(
                "all fresh",
                () -> !model.busy().get()
                        && model.cells().stream()
                                .filter(CellView::isScript)
                                .allMatch(cell -> cell.shown().get().state() == CellState.FRESH));
    }

    /** The nodes of a kind under another, in order of the scene. */
    <N> List<N> find(Node under, Class<N> kind, Predicate<N> fits) throws Exception {
        return at(() -> WindowThread.all(under)
                .filter(kind::isInstance)
                .map(kind::cast)
                .filter(fits)
                .toList());
    }

    /** Waits for a node of a kind and returns the first. */
    <N> N wait(Node under, Class<N> kind, Predicate<N> fits) throws Exception {
        until(
                "there is a " + kind.getSimpleName(),
                () -> WindowThread.all(under)
                        .filter(kind::isInstance)
                        .map(kind::cast)
                        .anyMatch(fits));
        return find(under, kind, fits).get(0);
    }

    /** Waits until a node stays where it is and as large as it is, so that a place on it can be pointed at. */
    void untilSteady(Node node) throws Exception {
        Bounds before = at(() -> node.localToScreen(node.getBoundsInLocal()));
        for (int same = 0; same < 3; ) {
            Thread.sleep(50);
            Bounds now = at(() -> node.localToScreen(node.getBoundsInLocal()));
            same = now.equals(before) ? same + 1 : 0;
            before = now;
        }
    }

    void press(Node under, String words) throws Exception {
        Button button = wait(under, Button.class, found -> words.equals(found.getText()) && found.isVisible());
        doing(button::fire);
    }

    /** Whether a node and all it stands in are visible. */
    static boolean isSeen(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }

    /** Everything that can be read under a node. */
    String words(Node under) throws Exception {
        return at(() -> wordsNow(under));
    }

    /** As {@link #words}, called on the window's thread. */
    static String wordsNow(Node under) {
        StringBuilder words = new StringBuilder();
        WindowThread.all(under)
                .filter(node -> node instanceof javafx.scene.text.Text && isSeen(node))
                .forEach(node ->
                        words.append(((javafx.scene.text.Text) node).getText()).append('\n'));
        return words.toString();
    }

    double dial(String name) throws Exception {
        return at(() -> model.dials().stream()
                .filter(dial -> dial.name().equals(name))
                .findFirst()
                .orElseThrow()
                .value()
                .get());
    }

    @Override
    public void close() throws Exception {
        doing(() -> {
            sheet.dispose();
            side.dispose();
            stage.hide();
            model.close();
        });
        home.close();
        Thread.setDefaultUncaughtExceptionHandler(null);
    }
}
