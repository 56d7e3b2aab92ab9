package leverwright.bench.launch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.text.Text;
import javafx.stage.Window;
import leverwright.face.command.Main;
import org.fxmisc.richtext.CodeArea;
import org.jspecify.annotations.Nullable;

/**
 * Starts the packaged desk as its launcher does and says on standard output, as soon as each is so: {@code typed}, a key
 * typed in the first script has been drawn; {@code fresh}, every script has its results; {@code moved}, a dial has moved a
 * number; {@code memory}, the resident memory in kB; then it ends.
 */
public final class LaunchProbe {

    private final boolean whole;
    private int drawn;
    private boolean typing;
    private boolean typed;
    private boolean fresh;
    private boolean turned;
    private String before = "";

    private final boolean training;

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
            while (true) {
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
        } else if (!fresh) {
            fresh = text(scene.getRoot()).contains("scripts fresh");
            if (fresh) {
                say("fresh");
            }
        } else if (!turned) {
            turn(scene);
        } else if (!words(scene).equals(before)) {
            say("moved");
            end();
        }
    }

    private void type(Scene scene) {
        CodeArea area = (CodeArea) all(scene.getRoot())
                .filter(CodeArea.class::isInstance)
                .filter(node -> ((CodeArea) node).getText().contains("var "))
                .findFirst()
                .orElse(null);
        if (area == null || typing) {
            return;
        }
        typing = true;
        area.requestFocus();
        area.moveTo(area.getLength());
        Event.fireEvent(area, new KeyEvent(KeyEvent.KEY_TYPED, " ", "", KeyCode.UNDEFINED, false, false, false, false));
        scene.addPostLayoutPulseListener(() -> {
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

    private void turn(Scene scene) {
        @Nullable
        Slider slider = (Slider) all(scene.getRoot())
                .filter(Slider.class::isInstance)
                .findFirst()
                .orElse(null);
        if (slider != null) {
            before = words(scene);
            turned = true;
            slider.requestFocus();
            slider.increment();
        }
    }

    /** The numbers of the tables, without what stands beside the dials. */
    private static String words(Scene scene) {
        Node sheet = scene.lookup(".sheet");
        return sheet == null ? "" : text(sheet);
    }

    private static String text(Node node) {
        StringBuilder words = new StringBuilder();
        all(node).filter(Text.class::isInstance).forEach(text -> words.append(((Text) text).getText()));
        return words.toString();
    }

    private static Stream<Node> all(Node node) {
        return node instanceof Parent parent
                ? Stream.concat(
                        Stream.of(node),
                        parent.getChildrenUnmodifiable().stream().flatMap(LaunchProbe::all))
                : Stream.of(node);
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
