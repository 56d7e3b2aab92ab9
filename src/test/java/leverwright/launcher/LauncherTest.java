package leverwright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Runs the launcher with a Java that only tells how it was called. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class LauncherTest {

    private static final String TELL = """
            #!/bin/sh
            for each in "$@"; do echo "argument $each"; done
            echo "LC_ALL $LC_ALL"
            echo "FONTCONFIG_FILE $FONTCONFIG_FILE"
            """;

    @TempDir
    private Path folder;

    private Path program;
    private Path lib;
    private Path javaHome;
    private final Map<String, String> environment = new TreeMap<>();

    private record Outcome(int code, List<String> out, List<String> err) {}

    @BeforeEach
    void layOutAProgramAndAJava() throws IOException {
        Path home = Files.createDirectories(folder.toRealPath().resolve("a folder with blanks"));
        lib = Files.createDirectories(home.resolve("lib"));
        program =
                executable(home.resolve("bin/leverwright"), Files.readString(Path.of("src/main/launcher/leverwright")));
        javaHome = home.resolve("java home");
        executable(javaHome.resolve("bin/java"), TELL);
        release("17.0.15", "17.0.15+6-Vendor");
        environment.put("JAVA_HOME", javaHome.toString());
        environment.put("PATH", "/usr/bin:/bin");
        environment.put("HOME", folder.toString());
    }

    @Test
    void runsTheJarBesideItFromAnyFolderAndPassesArgumentsUntouched() throws Exception {
        Outcome outcome = launch(program, "run", "two words", "*");
        assertEquals(0, outcome.code);
        int jar = outcome.out.indexOf("argument -jar");
        assertEquals(
                List.of(
                        "argument " + lib.resolve("leverwright.jar"),
                        "argument run",
                        "argument two words",
                        "argument *"),
                outcome.out.subList(jar + 1, jar + 5));
        assertEquals(List.of(), outcome.err);
    }

    @Test
    void isFoundThroughALink() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("linked"), program);
        assertTrue(launch(link).out.contains("argument " + lib.resolve("leverwright.jar")));
    }

    @Test
    void passesAnArchiveOnlyIfItWasMadeForExactlyThisJava() throws Exception {
        Files.createFile(lib.resolve("leverwright-17.0.14+7-Vendor.jsa"));
        assertFalse(launch(program).out.toString().contains("SharedArchiveFile"));
        Path fitting = Files.createFile(lib.resolve("leverwright-17.0.15+6-Vendor.jsa"));
        assertTrue(launch(program).out.contains("argument -XX:SharedArchiveFile=" + fitting));
    }

    @Test
    void passesAnAheadOfTimeCacheToTheJavaThatHasOne() throws Exception {
        release("25.0.3", "25.0.3+9-LTS");
        Path fitting = Files.createFile(lib.resolve("leverwright-25.0.3+9-LTS.aot"));
        assertTrue(launch(program).out.contains("argument -XX:AOTCache=" + fitting));
    }

    @Test
    void anOldJavaIsRefusedInOneLine() throws Exception {
        release("11.0.2", "11.0.2+9");
        assertRefusal("Java 11.0.2+9 (" + javaHome.resolve("bin/java") + ") is too old;", launch(program));
        Files.writeString(javaHome.resolve("release"), "JAVA_VERSION=\"1.8.0_402\"\n");
        assertRefusal("Java 1.8.0_402 (" + javaHome.resolve("bin/java") + ") is too old;", launch(program));
    }

    @Test
    void aJavaWithoutReleaseFileIsAskedForItsVersion() throws Exception {
        Files.delete(javaHome.resolve("release"));
        executable(javaHome.resolve("bin/java"), "#!/bin/sh\necho '    java.runtime.version = 16.0.1+9' >&2\n");
        assertRefusal("Java 16.0.1+9 (", launch(program));
    }

    @Test
    void aMissingJavaIsRefusedInOneLine() throws Exception {
        environment.put("JAVA_HOME", "/nowhere");
        assertRefusal("JAVA_HOME is /nowhere, which holds no bin/java;", launch(program));
    }

    @Test
    void aPlainLocaleBecomesUtf8AndAnotherIsLeftAlone() throws Exception {
        environment.put("LC_ALL", "C");
        assertTrue(launch(program).out.contains("LC_ALL C.UTF-8"));
        environment.put("LC_ALL", "de_CH.UTF-8");
        assertTrue(launch(program).out.contains("LC_ALL de_CH.UTF-8"));
    }

    @Test
    void aFontSettingOfTheUserIsLeftAlone() throws Exception {
        environment.put("FONTCONFIG_FILE", "/own/fonts.conf");
        assertTrue(launch(program).out.contains("FONTCONFIG_FILE /own/fonts.conf"));
    }

    @Test
    void standardOutputIsKeptForResults() throws Exception {
        List<String> arguments = launch(program).out;
        assertTrue(arguments.containsAll(List.of("argument -Xlog:disable", "argument -Xlog:all=error:stderr")));
    }

    private void assertRefusal(String expected, Outcome outcome) {
        assertEquals(2, outcome.code);
        assertEquals(List.of(), outcome.out);
        assertEquals(1, outcome.err.size(), outcome.err.toString());
        assertTrue(outcome.err.get(0).startsWith("leverwright: " + expected), outcome.err.get(0));
        assertTrue(outcome.err.get(0).contains("a JDK 17 or newer"), outcome.err.get(0));
    }

    private void release(String version, String runtime) throws IOException {
        Files.writeString(
                javaHome.resolve("release"),
                "IMPLEMENTOR=\"Vendor\"\nJAVA_RUNTIME_VERSION=\"" + runtime + "\"\nJAVA_VERSION=\"" + version + "\"\n");
    }

    private static Path executable(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
        return Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private Outcome launch(Path launcher, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(arguments));
        Path err = folder.resolve("err");
        ProcessBuilder builder =
                new ProcessBuilder(command).directory(Path.of("/").toFile()).redirectError(err.toFile());
        builder.environment().clear();
        builder.environment().putAll(environment);
        Process process = builder.start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(30, TimeUnit.SECONDS), "the launcher did not end");
        return new Outcome(process.exitValue(), out.lines().toList(), Files.readAllLines(err));
    }
}
