package leverwright.workbook.session;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import leverwright.run.wire.FrameInput;
import leverwright.run.wire.FrameOutput;
import leverwright.run.wire.Message;

/** One worker: a child process with an empty environment, a folder of its own, and its pipes. */
final class WorkerProcess {

    /** Hears what a worker says and that it is gone. */
    interface Ear {
        void heard(WorkerProcess from, Message.FromWorker message);

        void gone(WorkerProcess from);
    }

    private static final String MAIN = "leverwright.run.worker.WorkerMain";
    private static final SecureRandom TOKENS = new SecureRandom();

    private final Process process;
    private final FrameOutput out;
    private final Path folder;
    private final String token;

    /** The classes of cells this worker keeps, by the cell's class, as last sent. */
    private final Map<String, Map<String, byte[]>> kept = new LinkedHashMap<>();

    /** Workers whose folders are still there; when this program ends, they end too and leave nothing behind. */
    private static final Set<WorkerProcess> LIVING = ConcurrentHashMap.newKeySet();

    static {
        Runtime.getRuntime().addShutdownHook(new Thread(() -> LIVING.forEach(WorkerProcess::endNow), "last workers"));
    }

    private volatile boolean gone;

    private WorkerProcess(Process process, Path folder, String token) {
        this.process = process;
        this.folder = folder;
        this.token = token;
        this.out = new FrameOutput(new BufferedOutputStream(process.getOutputStream(), 1 << 16));
    }

    /** Starts a worker; it gets ready while the session compiles. */
    static WorkerProcess start(boolean trusted) {
        try {
            Path folder = Files.createTempDirectory("leverwright-worker");
            ProcessBuilder builder = new ProcessBuilder(command(folder));
            String systemRoot = System.getenv("SystemRoot");
            builder.environment().clear();
            if (systemRoot != null) {
                builder.environment().put("SystemRoot", systemRoot);
            }
            builder.directory(folder.toFile());
            builder.redirectError(ProcessBuilder.Redirect.DISCARD);
            byte[] secret = new byte[16];
            TOKENS.nextBytes(secret);
            WorkerProcess worker =
                    new WorkerProcess(builder.start(), folder, HexFormat.of().formatHex(secret));
            LIVING.add(worker);
            worker.out.write(new Message.Begin(worker.token, trusted));
            worker.out.flush();
            return worker;
        } catch (IOException e) {
            throw new UncheckedIOException("the worker could not be started: " + e.getMessage(), e);
        }
    }

    private static List<String> command(Path folder) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(WorkerFlags.STANDARD);
        command.add("-Djava.io.tmpdir=" + folder);
        command.add("-XX:ErrorFile=" + folder.resolve("crash.txt"));
        command.add("-cp");
        command.add(Compilers.classPath());
        command.add(MAIN);
        return command;
    }

    /** Listens on a thread of its own until the worker is gone. */
    void listen(Ear ear) {
        Thread thread = new Thread(() -> hear(ear), "worker " + process.pid());
        thread.setDaemon(true);
        thread.start();
    }

    private void hear(Ear ear) {
        try (BufferedInputStream stream = new BufferedInputStream(process.getInputStream(), 1 << 16)) {
            FrameInput in = new FrameInput(stream);
            if (in.read() instanceof Message.Ready ready && ready.token().equals(token)) {
                Message message = in.read();
                while (message instanceof Message.FromWorker from) {
                    ear.heard(this, from);
                    message = in.read();
                }
            }
        } catch (IOException e) {
            // a worker that is gone or speaks nonsense ends the same way, below
        } finally {
            end(ear);
        }
    }

    private void end(Ear ear) {
        process.destroyForcibly();
        try {
            process.waitFor();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        gone = true;
        deleteFolder();
        ear.gone(this);
    }

    private void endNow() {
        process.destroyForcibly();
        try {
            process.waitFor(1, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        deleteFolder();
    }

    private void deleteFolder() {
        LIVING.remove(this);
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException | UncheckedIOException e) {
            // the folder is in the temporary folder and empty of value
        }
    }

    /** Sends messages. A worker that is gone is noticed by the thread that listens. */
    void send(Message.ToWorker... messages) {
        try {
            for (Message message : messages) {
                out.write(message);
            }
            out.flush();
        } catch (IOException e) {
            process.destroyForcibly();
        }
    }

    /** Sends the classes of a cell unless the worker has them. */
    void keep(CompiledCell cell) {
        String name = cell.parsed().className();
        if (kept.get(name) == cell.woven()) {
            return;
        }
        List<Message.ClassBytes> add = new ArrayList<>();
        cell.woven().forEach((each, bytes) -> add.add(new Message.ClassBytes(each, bytes)));
        send(new Message.Classes(List.of(name), add));
        kept.put(name, cell.woven());
    }

    /** Lets the worker forget the cells that are not among those given. */
    void keepOnly(Set<String> classNames) {
        List<String> forget = kept.keySet().stream()
                .filter(name -> !classNames.contains(name))
                .toList();
        if (!forget.isEmpty()) {
            send(new Message.Classes(forget, List.of()));
            kept.keySet().removeAll(forget);
        }
    }

    boolean isGone() {
        return gone || !process.isAlive();
    }

    /** Returns the exit code of a worker that is gone. */
    int exitCode() {
        return process.isAlive() ? -1 : process.exitValue();
    }

    ProcessHandle handle() {
        return process.toHandle();
    }

    void kill() {
        process.destroyForcibly();
    }
}
