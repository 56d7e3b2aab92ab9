package leverwright.run.worker;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import leverwright.run.gate.AllowList;
import leverwright.run.wire.FrameOutput;
import leverwright.run.wire.Message;
import org.jspecify.annotations.Nullable;

/** Runs cells on the run thread, in the order in which the session asks. */
final class Runner implements Runnable {

    private final BlockingQueue<Message.ToWorker> work;
    private final FrameOutput out;
    private final WorkerMain.StopSwitch stop;
    private final CellRun cellRun;
    private final @Nullable AllowList allowed;

    /** The bytes of every cell's classes, by name. */
    private final Map<String, byte[]> kept = new LinkedHashMap<>();

    /** The loader of every class in use, by the class's name. */
    private Map<String, CellLoader> register = new LinkedHashMap<>();

    Runner(
            BlockingQueue<Message.ToWorker> work,
            FrameOutput out,
            CellPrinter printer,
            WorkerMain.StopSwitch stop,
            boolean trusted) {
        this.work = work;
        this.out = out;
        this.stop = stop;
        this.allowed = trusted ? null : AllowList.standard();
        this.cellRun = new CellRun(out, printer);
    }

    @Override
    public void run() {
        try {
            while (true) {
                Message.ToWorker order = next();
                if (order instanceof Message.Classes classes) {
                    keep(classes);
                } else if (order instanceof Message.Run run) {
                    perform(run);
                }
            }
        } catch (IOException | RuntimeException e) {
            Runtime.getRuntime().halt(WorkerMain.EXIT_BAD_FRAME);
        }
    }

    private Message.ToWorker next() {
        while (true) {
            try {
                return work.take();
            } catch (InterruptedException e) {
                // an interrupt that came after the run it was meant for had ended: there is nothing to stop
            }
        }
    }

    private void keep(Message.Classes classes) {
        for (String cellClass : classes.forget()) {
            kept.keySet().removeIf(name -> belongs(name, cellClass));
        }
        for (Message.ClassBytes each : classes.add()) {
            kept.put(each.name(), each.bytes());
        }
    }

    private static boolean belongs(String name, String cellClass) {
        return name.equals(cellClass) || name.startsWith(cellClass + "$");
    }

    private void perform(Message.Run run) throws IOException {
        stop.begin(run.run());
        ClassLoader loader = loader(run);
        cellRun.begin(run);
        for (Message.Step step : run.steps()) {
            // told before it runs, for a cell may end the process; not so the short way, which is replayed after a
            // death
            cellRun.announce(step);
            if (run.mode() != Message.Mode.SHORT) {
                out.flush();
            }
            cellRun.run(step, () -> Class.forName(step.className(), true, loader));
            if (run.mode() != Message.Mode.SHORT) {
                out.flush();
            }
        }
        stop.end();
        try {
            out.write(new Message.RunEnded(run.run()));
            out.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private ClassLoader loader(Message.Run run) {
        Map<String, byte[]> bytes = new LinkedHashMap<>();
        switch (run.mode()) {
            case REPLAY -> {
                register = new LinkedHashMap<>();
                cellRun.forget();
                bytes.putAll(kept);
            }
            case PATCH ->
                run.steps()
                        .forEach(step -> kept.forEach((name, each) -> {
                            if (belongs(name, step.className())) {
                                bytes.put(name, each);
                            }
                        }));
            case SHORT -> {}
        }
        CellLoader loader = new CellLoader(bytes, register, allowed);
        loader.register();
        return loader;
    }
}
