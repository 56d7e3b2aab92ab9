package leverwright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The packaged desk with and without a display. */
@EnabledOnOs(OS.LINUX)
class DeskPackagedTest {

    private static final Path HOME = Path.of(System.getProperty("leverwright.home"));
    private static final String DEMO =
            HOME.resolve("workbooks/the-torso-leans.leverwright.json").toString();

    @TempDir
    private Path folder;

    private record Outcome(int code, String out, String err) {}

    @Test
    void withoutADisplayOneLineSaysSoAndTheWorkbookComesInTheTerminal() throws Exception {
        Outcome outcome = run(Map.of(), "desk", DEMO);
        // a slow machine says besides how far it is
        assertEquals(
                1,
                outcome.err
                        .lines()
                        .filter(line -> !line.startsWith("leverwright: still computing"))
                        .count(),
                outcome.err);
        assertTrue(outcome.err.startsWith("leverwright: no window: "), outcome.err);
        assertEquals(0, outcome.code);
        assertTrue(outcome.out.contains("At 45 degrees, who carries the bar?"), outcome.out);
        assertTrue(outcome.out.contains("not medical or training advice"), outcome.out);
    }

    @Test
    void withADisplayTheDeskLaysOutComputesDrawsAndSaysNothing() throws Exception {
        assumeTrue(Files.exists(Path.of("/usr/bin/Xvfb")), "no Xvfb here");
        Process screen = new ProcessBuilder("/usr/bin/Xvfb", "-displayfd", "1", "-screen", "0", "1280x800x24")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            StringBuilder number = new StringBuilder();
            for (int next = screen.getInputStream().read();
                    next != '\n' && next >= 0;
                    next = screen.getInputStream().read()) {
                number.append((char) next);
            }
            Outcome outcome = run(Map.of("DISPLAY", ":" + number), "desk", "--rehearse", DEMO);
            assertEquals("", outcome.err);
            assertEquals(0, outcome.code);
        } finally {
            screen.destroy();
        }
    }

    private Outcome run(Map<String, String> more, String... arguments) throws IOException, InterruptedException {
        Path err = folder.resolve("err");
        Path out = folder.resolve("out");
        ProcessBuilder builder = new ProcessBuilder()
                .directory(folder.toFile())
                .redirectError(err.toFile())
                .redirectOutput(out.toFile());
        builder.command().add(HOME.resolve("bin/leverwright").toString());
        builder.command().addAll(java.util.List.of(arguments));
        builder.environment().clear();
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("PATH", "/usr/bin:/bin");
        builder.environment().put("HOME", folder.toString());
        builder.environment().put("XDG_CONFIG_HOME", folder.resolve("config").toString());
        builder.environment().put("XDG_STATE_HOME", folder.resolve("state").toString());
        builder.environment().putAll(more);
        Process process = builder.start();
        assertTrue(process.waitFor(120, TimeUnit.SECONDS), "the program did not end");
        return new Outcome(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }
}
