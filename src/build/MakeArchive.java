import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Makes the class-data archive of the Java that runs this file, by one training run of the packaged program: later starts
 * map the classes instead of reading them. Run by the package step; the program works without the archive too, so
 * whatever goes wrong costs one line and never the build.
 *
 * <p>Arguments: the packaged folder, and the workbook that the training run computes.
 */
final class MakeArchive {

    private static final int SECONDS = 120;

    private MakeArchive() {}

    public static void main(String[] arguments) throws InterruptedException {
        try {
            String outcome = make(Path.of(arguments[0]).toAbsolutePath(), Path.of(arguments[1]));
            if (!outcome.isEmpty()) {
                System.out.println("No class-data archive for this Java, starts will be slower: " + outcome);
            }
        } catch (IOException failure) {
            System.out.println("No class-data archive for this Java, starts will be slower: " + failure);
        }
    }

    /** Returns why there is no archive, or an empty text when there is one. */
    private static String make(Path home, Path workbook) throws IOException, InterruptedException {
        Path lib = home.resolve("lib");
        boolean cached = Runtime.version().feature() >= 25;
        Path archive = lib.resolve("leverwright-" + Runtime.version() + (cached ? ".aot" : ".jsa"));
        if (Files.exists(archive) && Files.getLastModifiedTime(archive).compareTo(newestJar(lib)) > 0) {
            return "";
        }
        Files.deleteIfExists(archive);
        Path unfinished = lib.resolve(archive.getFileName() + ".part");
        Path log = home.resolveSibling("make-archive.log");
        String training = (cached ? "-XX:AOTCacheOutput=" : "-XX:ArchiveClassesAtExit=") + unfinished;
        String failed = run(lib, log, training, List.of("run", workbook.toString()));
        if (!failed.isEmpty()) {
            System.out.println("The class-data archive is made without the workbook " + workbook + ": " + failed);
            log = home.resolveSibling("make-archive-2.log");
            failed = run(lib, log, training, List.of("--version"));
        }
        if (failed.isEmpty() && !Files.exists(unfinished)) {
            failed = "the training run wrote none, see " + log;
        }
        if (failed.isEmpty()) {
            failed = run(
                    lib, log, (cached ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=") + unfinished, List.of("--version"));
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
    private static String run(Path lib, Path log, String option, List<String> arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                option,
                "-Dfile.encoding=UTF-8",
                "-Djava.awt.headless=true",
                "-jar",
                lib.resolve("leverwright.jar").toString()));
        command.addAll(arguments);
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
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

    private static FileTime newestJar(Path lib) throws IOException {
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
