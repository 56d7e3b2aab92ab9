package leverwright.face.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import leverwright.face.desk.model.DeskModel;
import org.fxmisc.richtext.CodeArea;

/**
 * A start that nobody sees, for a class-data archive to learn from: a workbook is opened and computed, a key is typed into
 * its first script, a dial is turned; then the same once more with the cells that the first time has kept. Then everything
 * ends, and if it does not, it is ended, with what every thread is doing in words.
 */
final class Rehearsal {

    private static final int TURNS = 3;
    private static final long MOST_MILLISECONDS = 150_000;
    private static final long END_MILLISECONDS = 10_000;
    private static final int TOO_LONG = 3;

    private final Desk desk;
    private final Path workbook;
    private DeskModel model;
    private boolean again;
    private boolean typed;
    private int turned;

    private Rehearsal(Desk desk, Path workbook) {
        this.desk = desk;
        this.workbook = workbook;
        model = desk.windows().get(0).model();
    }

    /** Makes a stage that does not disturb whoever sits at the display. */
    static void prepare(Stage stage) {
        stage.setOpacity(0);
        Thread patience = new Thread(Rehearsal::endAtLast, "patience");
        patience.setDaemon(true);
        patience.start();
    }

    /** Ends a rehearsal that does not end by itself, with all that its threads are doing in its words. */
    private static void endAtLast() {
        try {
            Thread.sleep(MOST_MILLISECONDS);
            StringBuilder words = new StringBuilder("the rehearsal does not come to its end\n");
            for (Map.Entry<Thread, StackTraceElement[]> each :
                    Thread.getAllStackTraces().entrySet()) {
                words.append(each.getKey()).append('\n');
                for (StackTraceElement place : each.getValue()) {
                    words.append("    ").append(place).append('\n');
                }
            }
            System.getLogger("leverwright").log(System.Logger.Level.ERROR, words.toString());
            Thread ending = new Thread(() -> Runtime.getRuntime().exit(TOO_LONG), "ending");
            ending.setDaemon(true);
            ending.start();
            ending.join(END_MILLISECONDS);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        } finally {
            Runtime.getRuntime().halt(TOO_LONG);
        }
    }

    /** Rehearses with the window that has just been opened. */
    static void of(Desk desk, Path workbook) {
        new Rehearsal(desk, workbook).follow();
    }

    private void follow() {
        model.batch().addListener((property, before, now) -> Platform.runLater(this::arrived));
    }

    private void arrived() {
        if (model.busy().get()) {
            return;
        }
        if (!typed) {
            typed = true;
            area(desk.windows()
                            .get(desk.windows().size() - 1)
                            .stage()
                            .getScene()
                            .getRoot())
                    .ifPresent(Rehearsal::type);
            return;
        }
        if (turned < TURNS && !model.dials().isEmpty()) {
            turned++;
            var dial = model.dials().get(0);
            model.turn(dial.name(), dial.value().get() + dial.declared().get().step());
            return;
        }
        if (again) {
            end();
        } else {
            once();
        }
    }

    private static void type(CodeArea area) {
        area.requestFocus();
        area.moveTo(area.getLength());
        Event.fireEvent(area, new KeyEvent(KeyEvent.KEY_TYPED, " ", "", KeyCode.UNDEFINED, false, false, false, false));
    }

    private static Optional<CodeArea> area(Node node) {
        if (node instanceof CodeArea area && area.isEditable()) {
            return Optional.of(area);
        }
        if (node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                Optional<CodeArea> found = area(child);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private void once() {
        again = true;
        typed = false;
        turned = 0;
        try {
            Stage stage = new Stage();
            stage.setOpacity(0);
            model.close();
            model = desk.home().open(workbook);
            desk.show(model, stage);
            follow();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private void end() {
        model.close();
        desk.home().close();
        Platform.exit();
    }
}
