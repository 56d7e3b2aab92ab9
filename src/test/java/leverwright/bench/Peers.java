package leverwright.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.openjdk.jmh.results.RunResult;

/**
 * What some benchmarks are held against, in the same minutes: the static solve and the sharing of muscles against C++ programs, the first result of {@code
 * leverwright run} against the least that one cell needs. Each gives one line with both figures and their ratio, or says what is
 * missing.
 */
final class Peers {

    private static final int PAIRS = 9;
    private static final Path HOME = Path.of("target", "leverwright");

    private Peers() {}

    /** Returns the lines of static solve and sharing, as far as they ran; the peers need g++ and Eigen. */
    static List<String> solves(Iterable<RunResult> results) throws IOException, InterruptedException {
        double statics = score(results, "StaticSolveBenchmark.solveOneAtATime");
        double sharing = score(results, "SharingBenchmark.solveOneAtATime");
        double million = score(results, "BulkStaticsBenchmark.million");
        double cached = score(results, "BulkStaticsBenchmark.inCache");
        double threads = score(results, "BulkStaticsBenchmark.millionByTwoThreads");
        if (statics == 0 && sharing == 0 && million == 0 && cached == 0) {
            return List.of();
        }
        Process script = new ProcessBuilder("bash", "src/test/peers/bench.sh")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<String> lines = lines(script.getInputStream());
        script.waitFor();
        List<String> held = new ArrayList<>();
        held(held, "static solve", statics, "eigen_aos", lines);
        held(held, "sharing", sharing, "cpp_dual_newton_1", lines);
        held(held, "bulk statics, a million", million, "numpy_1e6", lines);
        held(held, "bulk statics, 4096 in cache", cached, "c_soa_own_sincos_n4096", lines);
        if (million > 0 && threads > 0) {
            held.add(String.format(
                    Locale.ROOT, "bulk statics, two threads over one: %.4g/s, ratio %.2f", threads, threads / million));
        }
        return held;
    }

    /** Returns the best second, as is taken of the peers: a mean would measure the other users of the machine. */
    private static double score(Iterable<RunResult> results, String name) {
        double score = 0;
        for (RunResult result : results) {
            if (result.getParams().getBenchmark().endsWith(name)) {
                score = result.getPrimaryResult().getStatistics().getMax();
            }
        }
        return score;
    }

    private static void held(List<String> held, String what, double ours, String peer, List<String> lines) {
        double theirs = 0;
        for (String line : lines) {
            if (line.startsWith("RATE " + peer + " ")) {
                theirs = Math.max(theirs, Double.parseDouble(line.split(" ")[2]));
            }
        }
        if (ours != 0) {
            held.add(
                    theirs == 0
                            ? what + ": " + ours + "/s; no peer here (Debian: apt-get install g++ libeigen3-dev)"
                            : String.format(
                                    Locale.ROOT,
                                    "%s: %.4g/s, peer %s %.4g/s, ratio %.2f",
                                    what,
                                    ours,
                                    peer,
                                    theirs,
                                    ours / theirs));
        }
    }

    /** Returns the line of the first result; needs the packaged program. */
    static String firstResult(Path folder) throws IOException, InterruptedException {
        Path launcher = HOME.resolve("bin").resolve("leverwright");
        if (!Files.isExecutable(launcher)) {
            return "first result: no package here; run 'mvn -q -DskipTests package' first";
        }
        List<String> floor = floor(folder);
        List<String> run = List.of(launcher.toString(), "run", "workbooks/the-torso-leans.leverwright.json");
        List<Double> floors = new ArrayList<>();
        List<Double> runs = new ArrayList<>();
        firstResult(floor);
        firstResult(run);
        for (int i = 0; i < PAIRS; i++) {
            floors.add(firstResult(floor));
            runs.add(firstResult(run));
        }
        double least = median(floors);
        double ours = median(runs);
        return String.format(
                Locale.ROOT, "first result: %.0f ms, floor %.0f ms, ratio %.2f", ours, least, ours / least);
    }

    private static List<String> floor(Path folder) throws IOException {
        Path jar = folder.resolve("floor.jar");
        String name = FirstResultFloor.class.getName().replace('.', '/') + ".class";
        try (InputStream bytes = Objects.requireNonNull(Peers.class.getResourceAsStream("/" + name));
                OutputStream file = Files.newOutputStream(jar);
                JarOutputStream out = new JarOutputStream(file)) {
            out.putNextEntry(new JarEntry(name));
            bytes.transferTo(out);
        }
        Path lib = HOME.resolve("lib").toAbsolutePath();
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(
                List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Djdk.reflect.useNativeAccessorOnly=true"));
        Path shared = lib.resolve("leverwright-" + Runtime.version() + ".jsa");
        Path cache = lib.resolve("leverwright-" + Runtime.version() + ".aot");
        if (Files.exists(shared)) {
            command.add("-XX:SharedArchiveFile=" + shared);
        } else if (Files.exists(cache)) {
            command.add("-XX:AOTCache=" + cache);
        }
        command.addAll(List.of("-Xlog:disable", "-cp", lib.resolve("leverwright.jar") + ":" + jar.toAbsolutePath()));
        command.add(FirstResultFloor.class.getName());
        return command;
    }

    /** Returns the milliseconds from the start of a process to its first line that tells of a fresh cell. */
    private static double firstResult(List<String> command) throws IOException, InterruptedException {
        long start = System.nanoTime();
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        Process process = builder.start();
        double first = 0;
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (first == 0 && line.endsWith("  fresh")) {
                    first = (System.nanoTime() - start) / 1e6;
                }
            }
        }
        if (process.waitFor() != 0 || first == 0) {
            throw new IOException("no first result from " + command);
        }
        return first;
    }

    private static List<String> lines(InputStream stream) throws IOException {
        return new String(stream.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }
}
