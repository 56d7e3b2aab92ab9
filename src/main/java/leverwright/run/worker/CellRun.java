package leverwright.run.worker;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.run.cell.CellSink;
import leverwright.run.cell.ValueToResult;
import leverwright.run.gate.woven.SeededStream;
import leverwright.run.gate.woven.StopCheck;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Result;
import leverwright.run.wire.FrameOutput;
import leverwright.run.wire.Message;
import leverwright.run.wire.Message.Ending;
import org.jspecify.annotations.Nullable;

/** Runs one cell and tells the session what came of it. */
final class CellRun {

    /** The method of a cell's class that holds the cell's statements. */
    private static final String METHOD = "$run";

    /** Finds the class of a cell. */
    interface ClassFinder {
        Class<?> find() throws ClassNotFoundException;
    }

    private final FrameOutput out;
    private final CellPrinter printer;
    private final ValueToResult values = ValueToResult.standard();
    private boolean announced;
    private boolean everyWorking = true;
    private final Map<String, Ending> endings = new LinkedHashMap<>();
    private final Map<String, String> dialOwners = new LinkedHashMap<>();
    private final Map<String, String> cellsByClass = new LinkedHashMap<>();
    private final Map<String, String> settings = new LinkedHashMap<>();
    private long run;
    private long seed;

    CellRun(FrameOutput out, CellPrinter printer) {
        this.out = out;
        this.printer = printer;
    }

    /** Forgets every cell, before all are run from the top. */
    void forget() {
        endings.clear();
        dialOwners.clear();
        cellsByClass.clear();
    }

    /** Takes the settings of a run. */
    void begin(Message.Run order) {
        run = order.run();
        seed = order.seed();
        everyWorking = order.mode() != Message.Mode.SHORT;
        settings.clear();
        order.settings().forEach(setting -> settings.put(setting.dial(), setting.text()));
        for (Message.Step step : order.steps()) {
            cellsByClass.put(step.className(), step.cell());
            dialOwners.values().removeIf(step.cell()::equals);
            endings.remove(step.cell());
        }
    }

    /** Tells that a cell is about to run; once a stop is asked for, none is. */
    void announce(Message.Step step) throws IOException {
        announced = !StopCheck.isAsked();
        if (announced) {
            out.write(new Message.CellStarted(run, step.cell()));
        }
    }

    /** Runs one cell. */
    void run(Message.Step step, ClassFinder finder) throws IOException {
        String cell = step.cell();
        long start = System.nanoTime();
        String missing = missing(step.readsFrom());
        if (missing != null) {
            end(cell, Ending.NOT_RUN, "not run: " + missing + " failed", List.of(), start, false);
            return;
        }
        if (StopCheck.isAsked()) {
            end(cell, Ending.STOPPED, announced ? "stopped" : "stopped before it ran", List.of(), start, false);
            return;
        }
        printer.begin();
        CellSink sink = CellSink.open(SeededStream.seedOf(seed, cell), settings, everyWorking);
        SeededStream.restart(sink.seed());
        sink.tellProgress(words -> tell(cell, words));
        try {
            List<Result> results = results(sink, finder);
            write(cell, sink, results);
            boolean whole = !sink.isCutShort();
            end(cell, whole ? Ending.FINE : Ending.STOPPED, whole ? "" : "stopped", List.of(), start, false);
        } catch (Throwable thrown) {
            fail(cell, sink, thrown, start);
        } finally {
            sink.close();
        }
    }

    private void tell(String cell, String words) {
        try {
            out.write(new Message.CellProgress(run, cell, words));
            out.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private @Nullable String missing(List<String> readsFrom) {
        for (String other : readsFrom) {
            Ending ending = endings.get(other);
            if (ending != null && ending != Ending.FINE) {
                return other;
            }
        }
        return null;
    }

    private List<Result> results(CellSink sink, ClassFinder finder) throws Throwable {
        Class<?> type = finder.find();
        Method method = type.getDeclaredMethod(METHOD);
        Object value;
        try {
            value = method.invoke(null);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
        if (method.getReturnType() != void.class) {
            Result shown = values.toResult(value);
            if (shown != null) {
                sink.add(() -> shown);
            }
        }
        return sink.finish();
    }

    private void write(String cell, CellSink sink, List<Result> results) throws IOException {
        writeDials(cell, sink);
        for (Result result : results) {
            out.write(new Message.CellResult(run, cell, result));
        }
    }

    private void writeDials(String cell, CellSink sink) throws IOException {
        for (DialDeclared dial : sink.dials()) {
            String owner = dialOwners.putIfAbsent(dial.name(), cell);
            if (owner != null && !owner.equals(cell)) {
                throw new IllegalArgumentException("the dial \"" + dial.name() + "\" is declared in " + owner
                        + " already; give this one another name");
            }
            out.write(new Message.CellDial(run, cell, dial));
        }
    }

    private void fail(String cell, CellSink sink, Throwable thrown, long start) throws IOException {
        writeDialsQuietly(cell, sink);
        boolean spoiled = thrown instanceof VirtualMachineError || thrown instanceof LinkageError;
        boolean stopped = thrown instanceof StopCheck.Stopped || StopCheck.isAsked();
        Ending ending = stopped ? Ending.STOPPED : Ending.FAILED;
        if (stopped && !spoiled) {
            writeWhatIsDone(cell, sink);
        }
        String words = ending == Ending.STOPPED ? "stopped" : FailureWords.of(thrown);
        end(cell, ending, words, FailureWords.traces(thrown, cellsByClass), start, spoiled);
    }

    /** Tells the results that a stopped cell had already, such as those of a study that was cut short. */
    private void writeWhatIsDone(String cell, CellSink sink) throws IOException {
        try {
            for (Result result : sink.finish()) {
                out.write(new Message.CellResult(run, cell, result));
            }
        } catch (RuntimeException | StopCheck.Stopped e) {
            // what cannot be told any more is left out: the cell was stopped
        }
    }

    /** Tells of the dials that a failing cell declared, so that they can be turned back. */
    private void writeDialsQuietly(String cell, CellSink sink) throws IOException {
        try {
            writeDials(cell, sink);
        } catch (IllegalArgumentException e) {
            // the cell fails already, and its own reason is the one to tell
        }
    }

    private void end(
            String cell, Ending ending, String message, List<Message.Trace> traces, long start, boolean spoiled)
            throws IOException {
        endings.put(cell, ending);
        String text = ending == Ending.NOT_RUN ? "" : printer.text();
        if (!text.isEmpty()) {
            out.write(new Message.CellText(run, cell, text));
        }
        long leftOut = ending == Ending.NOT_RUN ? 0 : printer.dropped();
        long took = System.nanoTime() - start;
        out.write(new Message.CellEnded(run, cell, ending, message, traces, leftOut, took, spoiled));
    }
}
