package leverwright.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.TimeUnit;
import leverwright.bench.launch.DeskLaunch;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs the benchmarks of the test tree and leaves {@code target/bench/NAME.json}, with {@code NAME.machine.txt} beside it:
 * a figure without its machine, Java and state of the code says nothing. What is held against a peer or a floor goes into {@code
 * NAME.ratios.txt}, both sides from the same minutes; the names "FirstResult" and "DeskLaunch" run those comparisons
 * alone.
 *
 * <p>The name "DialPulse" measures the turn of a dial at the window instead, on the display of the environment, or without
 * one on Monocle's; the figures are in {@code NAME.txt}. The scale of the screen is set by {@code -Dglass.gtk.uiScale=2} in
 * {@code JAVA_TOOL_OPTIONS}.
 *
 * <p>Arguments: a regular expression over the names of the benchmarks, and the name of the result.
 */
final class BenchmarkRun {

    private BenchmarkRun() {}

    public static void main(String[] arguments) throws IOException, InterruptedException, RunnerException {
        Path folder = Files.createDirectories(Path.of("target", "bench"));
        String name = arguments[1];
        Files.write(folder.resolve(name + ".machine.txt"), machine());
        if ("DialPulse".equals(arguments[0])) {
            dialPulse(folder.resolve(name + ".txt"));
            return;
        }
        Options options = new OptionsBuilder()
                .include(arguments[0])
                .shouldFailOnError(true)
                .resultFormat(ResultFormatType.JSON)
                .result(folder.resolve(name + ".json").toString())
                .build();
        if ("DeskLaunch".equals(arguments[0])) {
            DeskLaunch.main(new String[] {"5"});
            return;
        }
        List<String> held = new ArrayList<>();
        if ("FirstResult".matches("(?i).*(" + arguments[0] + ").*")) {
            held.add(Peers.firstResult(folder));
        }
        if (!"FirstResult".equals(arguments[0])) {
            Collection<RunResult> results = new Runner(options).run();
            held.addAll(Peers.solves(results));
        }
        if (!held.isEmpty()) {
            Files.write(folder.resolve(name + ".ratios.txt"), held);
            held.forEach(System.out::println);
        }
    }

    private static void dialPulse(Path figures) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Djava.awt.headless=true",
                "-Dprism.order=sw"));
        if (System.getenv("DISPLAY") == null) {
            command.addAll(List.of("-Dglass.platform=Monocle", "-Dmonocle.platform=Headless"));
        }
        command.addAll(List.of(
                "-cp", System.getProperty("java.class.path"), "leverwright.face.desk.DialPulse", figures.toString()));
        int end = new ProcessBuilder(command).inheritIO().start().waitFor();
        if (end != 0) {
            throw new IllegalStateException("the measurement at the window ended with " + end);
        }
    }

    private static List<String> machine() throws IOException, InterruptedException {
        Path processors = Path.of("/proc/cpuinfo");
        String processor = Files.isReadable(processors)
                ? Files.readAllLines(processors).stream()
                        .filter(line -> line.startsWith("model name"))
                        .findFirst()
                        .orElse("model name: not given")
                : "model name: not given";
        return List.of(
                "code: " + output("git", "describe", "--always", "--dirty"),
                "java: " + System.getProperty("java.vendor") + " " + Runtime.version(),
                "system: " + System.getProperty("os.name") + " " + System.getProperty("os.version"),
                "processors: " + Runtime.getRuntime().availableProcessors(),
                processor);
    }

    private static String output(String... command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command).start();
            String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
            return process.waitFor(10, TimeUnit.SECONDS) && process.exitValue() == 0 ? text : "unknown";
        } catch (IOException noSuchProgram) {
            return "unknown";
        }
    }
}
