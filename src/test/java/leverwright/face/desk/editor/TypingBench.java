package leverwright.face.desk.editor;

import static leverwright.face.desk.WindowThread.at;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.DeskFolders;
import leverwright.face.desk.model.DeskHome;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DeskTiming;
import leverwright.face.desk.model.Starter;
import leverwright.face.desk.style.DeskStyle;

/**
 * How long a keystroke keeps the window's thread in a workbook of 2,000 lines: from the event to the end of its handlers, and
 * from the event to the end of the layout that it asks for. Run by {@code mvn -q test-compile exec:exec@typing}.
 */
public final class TypingBench {

    private static final int KEYS = 1200;
    private static final int WARM_UP = 300;
    private static final String LINE =
            "var hinge%d = romanianDeadlift().barbell(kg(50)).torsoLean(deg(45)); // a remark\n";

    private TypingBench() {}

    /** Measures one script of 2,000 lines, then 100 scripts of 20. */
    public static void main(String[] arguments) throws Exception {
        CompletableFuture<Void> started = new CompletableFuture<>();
        Platform.startup(() -> started.complete(null));
        started.get(30, TimeUnit.SECONDS);
        Platform.setImplicitExit(false);
        measure("one script of 2,000 lines", 1, 2000);
        measure("100 scripts of 20 lines", 100, 20);
        Platform.exit();
    }

    private static void measure(String what, int cells, int lines) throws Exception {
        Path folder = Files.createTempDirectory("typing");
        // No run falls into the measurement: compiling is another thread's work.
        DeskTiming timing = new DeskTiming(
                Duration.ofMinutes(10),
                Duration.ofMinutes(10),
                Duration.ofSeconds(1),
                Duration.ofSeconds(1),
                Duration.ofSeconds(1));
        DeskHome home =
                at(() -> new DeskHome(DeskFolders.under(folder), folder.resolve("shelf"), timing, Platform::runLater));
        DeskModel model = at(() -> home.begin(Starter.EMPTY));
        Stage stage = at(Stage::new);
        VBox column = new VBox(10);
        SourceArea area = at(() -> lay(model, stage, column, cells, lines));
        Thread.sleep(3000);
        double[] handled = new double[KEYS];
        double[] laidOut = new double[KEYS];
        for (int i = -WARM_UP; i < KEYS; i++) {
            int key = i;
            at(() -> {
                String typed =
                        key % 23 == 22 ? " " : "abcdefgh".substring(Math.floorMod(key, 8), Math.floorMod(key, 8) + 1);
                long begin = System.nanoTime();
                area.fireEvent(
                        new KeyEvent(KeyEvent.KEY_TYPED, typed, "", KeyCode.UNDEFINED, false, false, false, false));
                long done = System.nanoTime();
                stage.getScene().getRoot().applyCss();
                stage.getScene().getRoot().layout();
                long end = System.nanoTime();
                if (key >= 0) {
                    handled[key] = (done - begin) / 1e6;
                    laidOut[key] = (end - begin) / 1e6;
                }
                return 0;
            });
            Thread.sleep(4);
        }
        report(what + ", handled", handled);
        report(what + ", handled and laid out", laidOut);
        at(() -> {
            model.close();
            home.close();
            stage.close();
            return 0;
        });
    }

    private static SourceArea lay(DeskModel model, Stage stage, VBox column, int cells, int lines) {
        String first = model.cells().get(0).id();
        for (int cell = 0; cell < cells; cell++) {
            StringBuilder text = new StringBuilder();
            for (int line = 0; line < lines; line++) {
                text.append(String.format(Locale.ROOT, LINE, cell * lines + line));
            }
            if (cell == 0) {
                model.type(first, text.toString(), 0);
            } else {
                model.addScript(cell, text.toString());
            }
        }
        model.cells().forEach(cell -> column.getChildren().add(new ScriptEditor(model, cell.id())));
        ScrollPane pane = new ScrollPane(column);
        pane.setFitToWidth(true);
        stage.setScene(new Scene(pane, 1280, 800));
        DeskStyle.dress(stage.getScene(), model.looks());
        stage.show();
        Region editor = (Region) column.getChildren().get(0);
        String text = model.cells().get(0).text().get();
        ((ScriptEditor) editor).focusAt(new Caret(first, text.indexOf('\n', text.length() / 2)));
        return (SourceArea) editor.lookup(".source");
    }

    private static void report(String what, double[] milliseconds) {
        double[] sorted = milliseconds.clone();
        Arrays.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%-50s median %.2f ms, 99 %% %.2f ms, most %.2f ms%n",
                what,
                sorted[sorted.length / 2],
                sorted[(int) (sorted.length * 0.99)],
                sorted[sorted.length - 1]);
    }
}
