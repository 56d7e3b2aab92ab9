package leverwright.run.worker;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import leverwright.run.cell.WarmUp;
import leverwright.run.gate.woven.StopCheck;
import leverwright.run.wire.FrameInput;
import leverwright.run.wire.FrameOutput;
import leverwright.run.wire.Message;

/** Main of the worker. Reads control frames until they end, then ends the process, whatever a cell is doing. */
public final class WorkerMain {

    /** Exit code after the session closed the control stream. */
    static final int EXIT_CLOSED = 0;

    /** Exit code after a frame that no session sends. */
    static final int EXIT_BAD_FRAME = 70;

    private static final long STACK_BYTES = 4L * 1024 * 1024;
    private static final int FLUSH_MILLISECONDS = 50;

    private final FrameInput in;
    private final FrameOutput out;
    private final BlockingQueue<Message.ToWorker> work = new LinkedBlockingQueue<>();
    private final StopSwitch stop;

    private WorkerMain(FrameInput in, FrameOutput out, Thread runner) {
        this.in = in;
        this.out = out;
        this.stop = new StopSwitch(runner);
    }

    /**
     * Runs the worker.
     *
     * @param arguments none are read
     */
    public static void main(String[] arguments) {
        FrameInput in = new FrameInput(new BufferedInputStream(new FileInputStream(FileDescriptor.in), 1 << 16));
        FrameOutput out = new FrameOutput(new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), 1 << 16));
        System.setIn(InputStream.nullInputStream());
        CellPrinter printer = new CellPrinter();
        System.setOut(printer);
        System.setErr(printer);
        int code = EXIT_BAD_FRAME;
        try {
            serve(in, out, printer);
            code = EXIT_CLOSED;
        } catch (IOException | RuntimeException e) {
            code = EXIT_BAD_FRAME;
        } finally {
            Runtime.getRuntime().halt(code);
        }
    }

    private static void serve(FrameInput in, FrameOutput out, CellPrinter printer) throws IOException {
        if (!(in.read() instanceof Message.Begin begin)) {
            throw new IOException("the first frame must begin the work");
        }
        out.write(new Message.Ready(begin.token(), System.getProperty("java.version")));
        out.flush();
        Runner[] holder = new Runner[1];
        Thread thread = new Thread(null, () -> holder[0].run(), "cells", STACK_BYTES);
        WorkerMain main = new WorkerMain(in, out, thread);
        holder[0] = new Runner(main.work, out, printer, main.stop, begin.trusted());
        thread.setDaemon(true);
        thread.start();
        Thread warmUp = new Thread(WarmUp::run, "warm-up");
        warmUp.setDaemon(true);
        warmUp.start();
        main.startFlusher();
        main.control();
    }

    /** Sends what waits now and then, so that long cells are seen to run. */
    private void startFlusher() {
        Thread flusher = new Thread(
                () -> {
                    try {
                        while (true) {
                            Thread.sleep(FLUSH_MILLISECONDS);
                            out.flush();
                        }
                    } catch (IOException | InterruptedException e) {
                        Runtime.getRuntime().halt(EXIT_CLOSED);
                    }
                },
                "flusher");
        flusher.setDaemon(true);
        flusher.start();
    }

    private void control() throws IOException {
        for (Message message = in.read(); message != null; message = in.read()) {
            if (message instanceof Message.Stop asked) {
                stop.ask(asked.run());
            } else if (message instanceof Message.ToWorker order) {
                work.add(order);
            } else {
                throw new IOException("a frame of the wrong direction");
            }
        }
    }

    /** Connects a stop that is asked for on the control thread with the run it is meant for. */
    static final class StopSwitch {
        private final Thread runner;
        private long running = -1;
        private long stopped = -1;

        StopSwitch(Thread runner) {
            this.runner = runner;
        }

        synchronized void ask(long run) {
            stopped = Math.max(stopped, run);
            if (running >= 0 && running <= run) {
                StopCheck.ask();
                runner.interrupt();
            }
        }

        synchronized void begin(long run) {
            running = run;
            StopCheck.clear();
            if (stopped >= run) {
                StopCheck.ask();
            }
        }

        @SuppressWarnings("ResultOfMethodCallIgnored") // clears the mark that a late interrupt left
        synchronized void end() {
            running = -1;
            StopCheck.clear();
            Thread.interrupted();
        }
    }
}
