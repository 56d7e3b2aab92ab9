package leverwright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Starts the packaged program as its user does. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class FrontDoorPackagedTest {

    private static final Path HOME = Path.of(System.getProperty("leverwright.home"));

    @TempDir
    private Path folder;

    private record Outcome(int code, String out, String err) {}

    @Test
    void answersFromAnyFolder() throws Exception {
        assertAnswers(launch(HOME, Map.of(), "--version"));
    }

    @Test
    void answersSilentlyAfterTheFolderHasMovedAndAJarWasTouched() throws Exception {
        Path moved = folder.resolve("moved elsewhere");
        try (Stream<Path> files = Files.walk(HOME)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Path copy = moved.resolve(HOME.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                if (Files.isRegularFile(file)) {
                    Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
        assertTrue(moved.resolve("bin/leverwright").toFile().setExecutable(true));
        assertAnswers(launch(moved, Map.of(), "--version"));
    }

    @Test
    void keepsAMiddleDotAndADegreeSignUnderAPlainLocale() throws Exception {
        // The shell makes the two characters, since the Java of this test may itself run under a plain locale.
        Path caller = folder.resolve("caller");
        Files.writeString(caller, "exec \"$1\" \"$(printf 'N\\302\\267m at 45\\302\\260')\"");
        Outcome outcome = run(
                Map.of("LC_ALL", "C"),
                List.of(
                        "/bin/sh",
                        caller.toString(),
                        HOME.resolve("bin/leverwright").toString()));
        assertEquals(2, outcome.code);
        assertTrue(outcome.err.contains("'N·m at 45°'"), outcome.err);
    }

    @Test
    void writesNothingIntoTheFolderOfTheUser() throws Exception {
        launch(HOME, Map.of(), "--help");
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    List.of("err"),
                    files.map(file -> file.getFileName().toString()).toList());
        }
    }

    @Test
    void carriesTheLicencesOfWhatItCarries() throws Exception {
        assertEquals(
                Files.readString(Path.of("target/licence/third-party.txt")),
                Files.readString(HOME.resolve("licence/third-party.txt")));
        assertTrue(Files.exists(HOME.resolve("licence/apache-2.0.txt")));
    }

    private static void assertAnswers(Outcome outcome) {
        assertEquals("", outcome.err);
        assertEquals(0, outcome.code);
        assertTrue(outcome.out.startsWith("leverwright "), outcome.out);
        assertTrue(outcome.out.endsWith("Java " + Runtime.version() + "\n"), outcome.out);
    }

    private Outcome launch(Path home, Map<String, String> more, String... arguments)
            throws IOException, InterruptedException {
        List<String> command =
                new ArrayList<>(List.of(home.resolve("bin/leverwright").toString()));
        command.addAll(List.of(arguments));
        return run(more, command);
    }

    private Outcome run(Map<String, String> more, List<String> command) throws IOException, InterruptedException {
        Path err = folder.resolve("err");
        ProcessBuilder builder =
                new ProcessBuilder(command).directory(Path.of("/").toFile()).redirectError(err.toFile());
        builder.environment().clear();
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("PATH", "/usr/bin:/bin");
        builder.environment().put("HOME", folder.toString());
        builder.environment().putAll(more);
        Process process = builder.start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), "the program did not end");
        return new Outcome(process.exitValue(), out, Files.readString(err));
    }
}
