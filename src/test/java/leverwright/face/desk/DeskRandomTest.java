package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Keys and clicks without sense: nothing may end in an exception, and the window goes on answering. */
class DeskRandomTest extends AtTheWindow {

    private static final List<KeyCode> KEYS = List.of(
            KeyCode.TAB,
            KeyCode.ENTER,
            KeyCode.SPACE,
            KeyCode.UP,
            KeyCode.DOWN,
            KeyCode.LEFT,
            KeyCode.RIGHT,
            KeyCode.HOME,
            KeyCode.END,
            KeyCode.PAGE_UP,
            KeyCode.PAGE_DOWN,
            KeyCode.ESCAPE,
            KeyCode.DELETE,
            KeyCode.BACK_SPACE,
            KeyCode.F1,
            KeyCode.F6,
            KeyCode.F10,
            KeyCode.A,
            KeyCode.V,
            KeyCode.DIGIT5,
            KeyCode.PERIOD,
            KeyCode.SEMICOLON);

    private static final List<KeyCode> WITH_CONTROL = List.of(
            KeyCode.Z,
            KeyCode.Y,
            KeyCode.S,
            KeyCode.F,
            KeyCode.DIGIT1,
            KeyCode.DIGIT2,
            KeyCode.DIGIT3,
            KeyCode.PLUS,
            KeyCode.MINUS,
            KeyCode.DIGIT0,
            KeyCode.SPACE,
            KeyCode.C,
            KeyCode.X,
            KeyCode.V,
            KeyCode.A);

    private static final List<KeyCode> WITH_BOTH = List.of(
            KeyCode.N,
            KeyCode.M,
            KeyCode.UP,
            KeyCode.DOWN,
            KeyCode.DELETE,
            KeyCode.T,
            KeyCode.B,
            KeyCode.A,
            KeyCode.D,
            KeyCode.Z);

    @Test
    @Tag("minute")
    void sixtySecondsOfAnythingEndInNoException() throws Exception {
        anything(60);
    }

    @Test
    @Tag("soak")
    void twentyMinutesOfAnythingEndInNoException() throws Exception {
        anything(20 * 60);
    }

    private void anything(int seconds) throws Exception {
        long seed = Long.getLong("random.seed", new Random().nextLong());
        Random random = new Random(seed);
        DeskWindow window = bench.open(bench.onShelf(WindowBench.demo()));
        bench.untilFresh(window.model());
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        while (System.nanoTime() < end) {
            if (bench.at(() -> bench.desk.windows().isEmpty())) {
                bench.open(folder.resolve("shelf/the-torso-leans.leverwright.json"));
            }
            one(random);
            synchronized (bench.failures) {
                if (!bench.failures.isEmpty()) {
                    break;
                }
            }
        }
        assertEquals(List.of(), bench.failures, () -> "seed " + seed + traces());
        assertEquals(2, bench.at(() -> 2), "the window no longer answers, seed " + seed);
        try (Stream<Path> logs = Files.list(folder.resolve("user/state"))) {
            for (Path log :
                    logs.filter(file -> file.toString().endsWith(".log")).toList()) {
                String text = Files.readString(log);
                assertFalse(text.contains("Exception"), "seed " + seed + ", log:\n" + text);
            }
        }
    }

    private String traces() {
        StringWriter text = new StringWriter();
        synchronized (bench.failures) {
            bench.failures.forEach(failure -> failure.printStackTrace(new PrintWriter(text, true)));
        }
        return "\n" + text;
    }

    private void one(Random random) throws Exception {
        switch (random.nextInt(10)) {
            case 0, 1, 2 -> bench.robot.push(KEYS.get(random.nextInt(KEYS.size())));
            case 3 -> bench.robot.push(KeyCode.CONTROL, WITH_CONTROL.get(random.nextInt(WITH_CONTROL.size())));
            case 4 -> bench.robot.push(KeyCode.CONTROL, KeyCode.SHIFT, WITH_BOTH.get(random.nextInt(WITH_BOTH.size())));
            case 5, 6, 7 -> {
                place(random);
                bench.robot.clickOn(random.nextInt(8) == 0 ? MouseButton.SECONDARY : MouseButton.PRIMARY);
            }
            case 8 -> {
                place(random);
                bench.robot.scroll(
                        random.nextInt(3) + 1,
                        random.nextBoolean()
                                ? javafx.geometry.VerticalDirection.UP
                                : javafx.geometry.VerticalDirection.DOWN);
            }
            default -> {
                place(random);
                bench.robot.press(MouseButton.PRIMARY);
                place(random);
                bench.robot.release(MouseButton.PRIMARY);
            }
        }
    }

    private void place(Random random) throws Exception {
        Point2D point = bench.at(() -> {
            if (bench.desk.windows().isEmpty()) {
                return new Point2D(10, 10);
            }
            var stage = bench.desk.windows().get(0).stage();
            return new Point2D(
                    stage.getX() + random.nextDouble() * stage.getWidth(),
                    stage.getY() + random.nextDouble() * stage.getHeight());
        });
        bench.robot.moveTo(point, org.testfx.robot.Motion.DIRECT);
    }
}
