package leverwright.face.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Timer;
import java.util.TimerTask;
import java.util.function.BiConsumer;
import leverwright.run.result.CellState;
import leverwright.run.result.DialDeclared;
import leverwright.workbook.document.CellRecord;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookRecord;
import leverwright.workbook.session.CellOutcome;
import leverwright.workbook.session.CleanRun;

/** Computes a workbook for a command: hands over each cell when it is done, and says what takes long. */
final class Computation {

    private static final long PATIENCE_MILLISECONDS = 2000;

    private final Workbook workbook;
    private final RunOptions options;
    private final PrintWriter err;
    private final Map<String, ScriptCell> cells = new LinkedHashMap<>();

    Computation(Workbook workbook, RunOptions options, PrintWriter err) {
        this.workbook = workbook;
        this.options = options;
        this.err = err;
        workbook.scripts().forEach(cell -> cells.put(cell.id(), cell));
    }

    /** Runs the workbook from top to bottom in a worker of its own and returns its record. */
    WorkbookRecord run(BiConsumer<ScriptCell, CellOutcome> whenDone) {
        Waiting waiting = new Waiting();
        Timer timer = new Timer("what takes long", true);
        timer.schedule(waiting, PATIENCE_MILLISECONDS, PATIENCE_MILLISECONDS);
        try {
            WorkbookRecord record = CleanRun.of(workbook, options.isTrusted(), options.mostPerCell(), outcome -> {
                ScriptCell cell = cells.get(outcome.id());
                if (cell == null) {
                    return;
                }
                if (outcome.state() == CellState.RUNNING) {
                    waiting.begins(cell, outcome.message());
                } else {
                    waiting.ends();
                    synchronized (waiting) {
                        whenDone.accept(cell, outcome);
                    }
                }
            });
            tellIdleSettings(record);
            return record;
        } finally {
            timer.cancel();
        }
    }

    /** Says which settings of the workbook reach no dial, where every cell has come to its end. */
    private void tellIdleSettings(WorkbookRecord record) {
        List<String> declared = dials(record).stream().map(DialDeclared::name).toList();
        for (String name : workbook.dials().keySet()) {
            if (isAllFresh(record) && !declared.contains(name)) {
                err.println("leverwright: the workbook sets a dial \"" + name + "\" that no cell declares");
            }
        }
    }

    /** Returns the title of a cell as a reader sees it. */
    static String title(ScriptCell cell) {
        return cell.title().isBlank() ? cell.id() : cell.title();
    }

    /** Returns whether every script of a record was computed. */
    static boolean isAllFresh(WorkbookRecord record) {
        return record.cells().values().stream().allMatch(cell -> cell.state() == CellState.FRESH);
    }

    /** Returns the dials that the scripts of a record declare. */
    static List<DialDeclared> dials(WorkbookRecord record) {
        List<DialDeclared> dials = new ArrayList<>();
        for (CellRecord cell : record.cells().values()) {
            dials.addAll(cell.dials());
        }
        return dials;
    }

    /** Says every two seconds which cell is being computed. */
    private final class Waiting extends TimerTask {
        private final long start = System.nanoTime();
        private String title = "the workbook";
        private String far = "";
        private boolean running = true;

        synchronized void begins(ScriptCell cell, String progress) {
            far = progress.isEmpty() ? "" : ": " + progress;
            title = "\"" + title(cell) + "\"";
            running = true;
        }

        synchronized void ends() {
            running = false;
        }

        @Override
        public synchronized void run() {
            if (running) {
                long seconds = (System.nanoTime() - start) / 1_000_000_000L;
                err.println("leverwright: still computing " + title + ", " + seconds + " s after the start" + far);
                err.flush();
            }
        }
    }
}
