import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Makes the class-data archives of the Java that runs this file, each by one training run of the packaged program: later
 * starts map the classes instead of reading them. Run by the package step; the program works without the archives too, so
 * whatever goes wrong costs one line and never the build.
 *
 * <p>There are two: one for the terminal, and one for the window, which needs other modules. The window is rehearsed on
 * a display of Xvfb or, where there is no Xvfb, as a window that nobody can see on the display there is. In the end the
 * workbooks of the shelf are compiled.
 *
 * <p>Arguments: the packaged folder, and the workbook that the training run computes.
 */
final class MakeArchive {

    private static final int SECONDS = 240;
    private static final boolean CACHED = Runtime.version().feature() >= 25;

    private final Path home;
    private final Path lib;
    private final Path workbook;

    private MakeArchive(Path home, Path workbook) {
        this.home = home;
        this.lib = home.resolve("lib");
        this.workbook = workbook;
    }

    public static void main(String[] arguments) throws InterruptedException {
        MakeArchive maker = new MakeArchive(Path.of(arguments[0]).toAbsolutePath(), Path.of(arguments[1]));
        tell("starts in the terminal", maker::terminal);
        tell("the window", maker::window);
        String failed = maker.shelf();
        if (!failed.isEmpty()) {
            System.out.println("The shelf is not compiled, its workbooks will open slower: " + failed);
        }
    }

    private interface Making {
        String make() throws IOException, InterruptedException;
    }

    private static void tell(String what, Making making) throws InterruptedException {
        String outcome;
        try {
            outcome = making.make();
        } catch (IOException failure) {
            outcome = failure.toString();
        }
        if (!outcome.isEmpty()) {
            System.out.println("No class-data archive for " + what + ", it will start slower: " + outcome);
        }
    }

    /** Returns why there is no archive, or an empty text when there is one. */
    private String terminal() throws IOException, InterruptedException {
        return make("leverwright-", List.of(), List.of("run", workbook.toString()), "", List.of("--version"));
    }

    private String window() throws IOException, InterruptedException {
        if (!Files.isDirectory(lib.resolve("fx"))) {
            return "";
        }
        List<String> flags = windowFlags();
        List<String> rehearsal = List.of("desk", "--rehearse", workbook.toString());
        List<String> check = List.of("desk", "--help");
        Process screen;
        try {
            screen = new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1440x900x24", "-nolisten", "tcp")
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException none) {
            String display = System.getenv("DISPLAY");
            return display == null || display.isBlank()
                    ? "there is no display to rehearse on (Debian's package xvfb brings one)"
                    : make("leverwright-desk-", flags, rehearsal, display, check);
        }
        try {
            String number = new String(screen.getInputStream().readNBytes(1), StandardCharsets.US_ASCII);
            while (number.matches("\\d+") && screen.isAlive()) {
                String next = new String(screen.getInputStream().readNBytes(1), StandardCharsets.US_ASCII);
                if (next.isBlank()) {
                    break;
                }
                number += next;
            }
            return make("leverwright-desk-", flags, rehearsal, ":" + number, check);
        } finally {
            screen.destroy();
        }
    }

    /** Returns the flags with which the launcher starts a window. */
    private List<String> windowFlags() {
        List<String> flags = new ArrayList<>(List.of(
                "--module-path",
                lib.resolve("fx").toString(),
                "--add-modules",
                "javafx.controls",
                "--enable-native-access=javafx.graphics"));
        if (Runtime.version().feature() >= 23) {
            flags.add("--sun-misc-unsafe-memory-access=allow");
        }
        return flags;
    }

    /** Compiles the workbooks that come along, for this Java; returns what went wrong, or an empty text. */
    private String shelf() throws InterruptedException {
        if (!Files.isDirectory(lib.resolve("fx"))) {
            return "";
        }
        try {
            return run(
                    home.resolveSibling("compile-shelf.log"),
                    "-Xshare:auto",
                    windowFlags(),
                    List.of("desk", "--compile-shelf"),
                    "");
        } catch (IOException failure) {
            return failure.toString();
        }
    }

    private String make(String name, List<String> flags, List<String> rehearsal, String display, List<String> check)
            throws IOException, InterruptedException {
        Path archive = lib.resolve(name + Runtime.version() + (CACHED ? ".aot" : ".jsa"));
        if (Files.exists(archive) && Files.getLastModifiedTime(archive).compareTo(newestJar()) > 0) {
            return "";
        }
        Files.deleteIfExists(archive);
        Path unfinished = lib.resolve(archive.getFileName() + ".part");
        Path log = home.resolveSibling("make-" + name + "archive.log");
        String training = (CACHED ? "-XX:AOTCacheOutput=" : "-XX:ArchiveClassesAtExit=") + unfinished;
        String failed = run(log, training, flags, rehearsal, display);
        if (!failed.isEmpty()) {
            System.out.println("The class-data archive is made without the workbook " + workbook + ": " + failed);
            log = home.resolveSibling("make-" + name + "archive-2.log");
            failed = run(log, training, flags, check, display);
        }
        if (failed.isEmpty() && !Files.exists(unfinished)) {
            failed = "the training run wrote none, see " + log;
        }
        if (failed.isEmpty()) {
            failed =
                    run(log, (CACHED ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=") + unfinished, flags, check, display);
        }
        if (failed.isEmpty()) {
            // Only a whole archive may bear the name that the launcher looks for: half of one ends the Java that reads
            // it.
            Files.move(unfinished, archive, StandardCopyOption.ATOMIC_MOVE);
        }
        Files.deleteIfExists(unfinished);
        return failed;
    }

    /** Runs the packaged program with one more option for the Java; returns what went wrong, or an empty text. */
    private String run(Path log, String option, List<String> flags, List<String> arguments, String display)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Djdk.reflect.useNativeAccessorOnly=true",
                option,
                "-Dfile.encoding=UTF-8",
                "-Djava.awt.headless=true"));
        command.addAll(flags);
        command.addAll(List.of("-jar", lib.resolve("leverwright.jar").toString()));
        command.addAll(arguments);
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile());
        if (!display.isEmpty()) {
            builder.environment().put("DISPLAY", display);
        }
        Process process = builder.start();
        process.getOutputStream().close();
        if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            process.waitFor();
            return "the training run took more than " + SECONDS + " s, see " + log;
        }
        return process.exitValue() == 0
                ? ""
                : "the training run ended with exit code " + process.exitValue() + ", see " + log;
    }

    private FileTime newestJar() throws IOException {
        try (Stream<Path> files = Files.list(lib)) {
            FileTime newest = FileTime.fromMillis(0);
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".jar")).toList()) {
                FileTime changed = Files.getLastModifiedTime(file);
                newest = changed.compareTo(newest) > 0 ? changed : newest;
            }
            return newest;
        }
    }
}
