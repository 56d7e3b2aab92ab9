package leverwright.bench.launch;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;

/**
 * Holds the launch of the packaged desk against an empty window with one text area, in pairs, each with the class-data
 * archive of its own: from the start of the process to the first typed key, to all results, to a number that a dial has
 * moved. Needs a display and the packaged program; run as DEVELOPERS.md says.
 *
 * <p>Argument: how many pairs.
 */
public final class DeskLaunch {

    private static final Path HOME = Path.of("target", "leverwright").toAbsolutePath();
    private static final Path LIB = HOME.resolve("lib");
    private static final boolean CACHED = Runtime.version().feature() >= 25;

    private final Path folder;
    private final Path probe;
    private final Path emptyArchive;

    private DeskLaunch() throws IOException {
        folder = Files.createDirectories(
                Path.of("target", "bench", "desk-launch").toAbsolutePath());
        probe = folder.resolve("probe.jar");
        emptyArchive = folder.resolve("empty-" + Runtime.version() + (CACHED ? ".aot" : ".jsa"));
    }

    /** Measures and prints medians and ratios. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        DeskLaunch launch = new DeskLaunch();
        launch.pack();
        Map<String, List<Double>> figures = new LinkedHashMap<>();
        int pairs = Integer.parseInt(arguments[0]);
        for (int pair = 0; pair <= pairs; pair++) {
            Map<String, Double> empty = launch.run(launch.emptyCommand());
            Map<String, Double> desk = launch.run(launch.deskCommand());
            if (pair == 0) {
                continue; // the first pair warms the disk
            }
            empty.forEach((what, value) -> add(figures, "empty " + what, value));
            desk.forEach((what, value) -> add(figures, "desk " + what, value));
            for (String what : List.of("typed", "fresh", "moved")) {
                add(
                        figures,
                        "ratio " + what + " over empty typed",
                        desk.getOrDefault(what, Double.NaN) / empty.getOrDefault("typed", Double.NaN));
            }
        }
        List<String> lines = new ArrayList<>(List.of("Java " + Runtime.version() + ", " + pairs + " pairs, medians"));
        figures.forEach((what, values) -> {
            values.sort(Double::compare);
            lines.add(String.format(
                    Locale.ROOT,
                    "%-34s %8.2f   (%.2f to %.2f)",
                    what,
                    values.get(values.size() / 2),
                    values.get(0),
                    values.get(values.size() - 1)));
        });
        Files.write(
                launch.folder.resolveSibling("desk-launch-" + Runtime.version().feature() + ".txt"), lines);
        lines.forEach(System.out::println);
    }

    private static void add(Map<String, List<Double>> figures, String what, double value) {
        figures.computeIfAbsent(what, key -> new ArrayList<>()).add(value);
    }

    /** Packs the probe into a jar, since archives of classes take no folders, and makes the empty window's archive. */
    private void pack() throws IOException, InterruptedException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        Path classes = Path.of(DeskLaunch.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .getPath());
        try (OutputStream out = Files.newOutputStream(probe);
                JarOutputStream jar = new JarOutputStream(out, manifest);
                var files = Files.list(classes.resolve("leverwright/bench/launch"))) {
            for (Path file : files.sorted().toList()) {
                jar.putNextEntry(new ZipEntry("leverwright/bench/launch/" + file.getFileName()));
                jar.write(Files.readAllBytes(file));
                jar.closeEntry();
            }
        }
        Files.deleteIfExists(emptyArchive);
        List<String> training = command(
                List.of((CACHED ? "-XX:AOTCacheOutput=" : "-XX:ArchiveClassesAtExit=") + emptyArchive),
                "leverwright.bench.launch.EmptyWindow");
        training.add("--train");
        run(training);
    }

    private List<String> emptyCommand() {
        return command(
                Files.exists(emptyArchive)
                        ? List.of((CACHED ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=") + emptyArchive)
                        : List.of(),
                "leverwright.bench.launch.EmptyWindow");
    }

    private List<String> deskCommand() {
        Path archive = LIB.resolve("leverwright-desk-" + Runtime.version() + (CACHED ? ".aot" : ".jsa"));
        List<String> command = command(
                Files.exists(archive)
                        ? List.of((CACHED ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=") + archive)
                        : List.of(),
                "leverwright.bench.launch.LaunchProbe");
        command.addAll(List.of(
                "desk",
                HOME.resolve("workbooks/the-torso-leans.leverwright.json").toString()));
        return command;
    }

    /** The command line of the launcher, but for the probe at the end of the class path. */
    private List<String> command(List<String> archive, String main) {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(flags());
        command.addAll(archive);
        command.addAll(List.of("-cp", LIB.resolve("leverwright.jar") + ":" + probe, main));
        return command;
    }

    private static List<String> flags() {
        List<String> flags = new ArrayList<>(List.of(
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xlog:disable",
                "-Xlog:all=error:stderr",
                "-Dfile.encoding=UTF-8",
                "-Duser.language=en",
                "-Duser.country=US",
                "-Djava.awt.headless=true",
                "-Xms88m",
                "-Xmn52m",
                "-XX:MinHeapFreeRatio=15",
                "-XX:MaxHeapFreeRatio=30",
                "-XX:-UsePerfData",
                "-Djdk.reflect.useNativeAccessorOnly=true",
                "--module-path",
                LIB.resolve("fx").toString(),
                "--add-modules",
                "javafx.controls",
                "--enable-native-access=javafx.graphics"));
        if (Runtime.version().feature() >= 23) {
            flags.add("--sun-misc-unsafe-memory-access=allow");
        }
        return flags;
    }

    private Map<String, Double> run(List<String> command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectError(folder.resolve("err.txt").toFile());
        builder.environment().put("XDG_CONFIG_HOME", folder.resolve("config").toString());
        builder.environment().put("XDG_STATE_HOME", folder.resolve("state").toString());
        long start = System.nanoTime();
        Process process = builder.start();
        // The probe ends by itself within a minute; what ends neither itself nor is ended holds up everything.
        CompletableFuture.delayedExecutor(90, TimeUnit.SECONDS).execute(process::destroyForcibly);
        Map<String, Double> seen = new LinkedHashMap<>();
        try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                double milliseconds = (System.nanoTime() - start) / 1e6;
                String[] words = line.split(" ");
                if (words[0].equals("probe") && words[1].equals("memory") && words.length > 3) {
                    seen.put(words[2].replace(":", "") + " MB", Double.parseDouble(words[3]) / 1024);
                } else if (words[0].equals("probe") && words[1].equals("late")) {
                    System.out.println("not within a minute: " + line);
                } else if (words[0].equals("probe")) {
                    seen.put(words[1], milliseconds);
                }
            }
        }
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
        return seen;
    }
}
