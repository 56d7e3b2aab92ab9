package leverwright.bench.launch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import leverwright.face.command.Main;
import leverwright.face.desk.sheet.SheetPane;
import org.fxmisc.richtext.CodeArea;

/**
 * Starts the packaged desk as its launcher does and says on standard output, as soon as each is so: {@code typed}, a key
 * typed in the first script has been drawn; {@code fresh}, a run has brought every script its results; {@code moved}, what
 * the sheet shows has followed a dial that was turned as soon as there was one; {@code memory}, the resident memory in kB;
 * then it ends. What is not so within a minute is called {@code late}.
 */
public final class LaunchProbe {

    private static final long PATIENCE_NANOS = 60_000_000_000L;

    private final long begin = System.nanoTime();
    private final boolean whole;
    private final boolean training;
    private int drawn;
    private boolean typing;
    private boolean typed;
    private boolean fresh;
    private boolean turned;
    private boolean moved;
    private String before = "";

    private LaunchProbe(boolean whole, boolean training) {
        this.whole = whole;
        this.training = training;
    }

    /** Starts the desk with these arguments. */
    public static void main(String[] arguments) {
        watch(true, false);
        Main.main(arguments);
    }

    /** Watches the window that is about to come. */
    static void watch(boolean whole, boolean training) {
        LaunchProbe probe = new LaunchProbe(whole, training);
        Thread thread = new Thread(probe::loop, "probe");
        thread.setDaemon(true);
        thread.start();
    }

    private void loop() {
        try {
            while (System.nanoTime() - begin < PATIENCE_NANOS) {
                Thread.sleep(20);
                try {
                    Platform.runLater(this::look);
                } catch (IllegalStateException notYet) {
                    continue;
                }
            }
        } catch (InterruptedException end) {
            Thread.currentThread().interrupt();
        }
        say("late " + (typed ? "" : "typed ") + (fresh ? "" : "fresh ") + (moved ? "" : "moved"));
        Runtime.getRuntime().halt(1);
    }

    private void look() {
        Scene scene = Window.getWindows().stream()
                .filter(Window::isShowing)
                .map(Window::getScene)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
        if (scene == null) {
            return;
        }
        if (!typed) {
            type(scene);
            return;
        }
        if (!fresh && statesFresh(scene)) {
            fresh = true;
            say("fresh");
        }
        if (!turned) {
            turn(scene);
        } else if (!moved && !words(scene).equals(before)) {
            moved = true;
            say("moved");
        }
        if (fresh && moved) {
            end();
        }
    }

    /** Types into the first script there is, not into whichever can be typed into first. */
    private void type(Scene scene) {
        if (typing) {
            return;
        }
        CodeArea area = first(scene.getRoot(), node -> node.getStyleClass().contains("script-strip"))
                .or(() -> Optional.of(scene.getRoot()))
                .flatMap(strip -> first(strip, CodeArea.class::isInstance))
                .map(CodeArea.class::cast)
                .filter(found -> found.getText().contains("var "))
                .orElse(null);
        if (area == null) {
            return;
        }
        typing = true;
        area.requestFocus();
        area.moveTo(area.getLength());
        Event.fireEvent(area, new KeyEvent(KeyEvent.KEY_TYPED, " ", "", KeyCode.UNDEFINED, false, false, false, false));
        scene.addPostLayoutPulseListener(() -> {
            if (typed) {
                return;
            }
            if (area.getText().endsWith(" ") && ++drawn == 2) {
                typed = true;
                say("typed");
                if (!whole) {
                    end();
                }
            }
            Platform.requestNextPulse();
        });
        Platform.requestNextPulse();
    }

    /** Words of a run end with how long it took; those of the file's record do not. */
    private static boolean statesFresh(Scene scene) {
        return first(scene.getRoot(), node -> node.getStyleClass().contains("status-bar"))
                .flatMap(bar -> first(
                        bar,
                        node -> node instanceof Label label && label.getText().contains("scripts fresh, ")))
                .isPresent();
    }

    private void turn(Scene scene) {
        first(scene.getRoot(), Slider.class::isInstance).ifPresent(slider -> {
            before = words(scene);
            turned = !before.isEmpty();
            if (!turned) {
                return;
            }
            slider.requestFocus();
            ((Slider) slider).increment();
        });
    }

    /** What stands for the first figure of the sheet in words: its numbers follow the dial. */
    private static String words(Scene scene) {
        return first(scene.getRoot(), SheetPane.class::isInstance)
                .flatMap(sheet -> first(sheet, node -> node.getStyleClass().contains("figure")))
                .map(figure -> String.valueOf(figure.getAccessibleText()))
                .orElse("");
    }

    private static Optional<Node> first(Node node, Predicate<Node> wanted) {
        if (wanted.test(node)) {
            return Optional.of(node);
        }
        if (node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                Optional<Node> found = first(child, wanted);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static void say(String what) {
        System.out.println("probe " + what);
        System.out.flush();
    }

    private void end() {
        try {
            for (String line : Files.readAllLines(Path.of("/proc/self/status"))) {
                if (line.startsWith("VmRSS") || line.startsWith("VmHWM")) {
                    say("memory " + line.toLowerCase(Locale.ROOT).replaceAll("\\s+", " "));
                }
            }
        } catch (IOException elsewhere) {
            say("memory unknown");
        }
        if (training) {
            Platform.exit();
        } else {
            Runtime.getRuntime().halt(0);
        }
    }
}
