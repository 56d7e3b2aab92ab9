package leverwright.face.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import leverwright.face.publish.TextReport;
import leverwright.run.result.CellState;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Result;
import leverwright.workbook.document.Cell;
import leverwright.workbook.document.CellRecord;
import leverwright.workbook.document.NoteCell;
import leverwright.workbook.document.OpenedWorkbook;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Seal;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import leverwright.workbook.document.WorkbookRecord;
import leverwright.workbook.session.CellOutcome;
import leverwright.workbook.session.CleanRun;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Computes a workbook from top to bottom and prints what its cells come to. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        description = "Compute a workbook in a clean worker, from top to bottom, and print its results.",
        footer = "Exit codes: 0 fine, 1 a cell failed or was refused, 2 bad usage or bad file.")
final class RunCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "the workbook, a file named *.leverwright.json")
    private Path file = Path.of("");

    @Option(names = "--record", description = "keep the results in the file, sealed")
    private boolean keep;

    @Option(names = "--working", description = "print the hand calculation of every number")
    private boolean working;

    @Mixin
    private WorkbookOptions options = new WorkbookOptions();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        WorkbookFiles files = WorkbookFiles.onDisk();
        OpenedWorkbook opened = files.read(file);
        Workbook workbook = options.applyTo(opened.workbook());
        PrintWriter out = spec.commandLine().getOut();
        WorkbookRecord record = printed(workbook, options, working, spec.commandLine());
        requireDials(workbook, record, options);
        if (keep) {
            files.save(file, Seal.seal(workbook.withRecord(record.toKeep())), opened.stamp());
            out.println("The results are kept in " + file + ", sealed.");
        }
        return Computation.isAllFresh(record) ? 0 : 1;
    }

    /** Computes a workbook and prints its notes and results as they come. */
    static WorkbookRecord printed(
            Workbook workbook, WorkbookOptions options, boolean everyWorking, CommandLine command) {
        TextReport report = new TextReport(TextReport.WIDTH, false, false, everyWorking);
        Printer printer = new Printer(workbook, report, command.getOut());
        WorkbookRecord record = new Computation(workbook, options.running(), command.getErr()).run(printer::arrived);
        printer.finish(record);
        return record;
    }

    /**
     * Refuses a dial of the command line that no cell declared. Where a cell did not come to its end, it may be that cell's.
     *
     * @throws IllegalArgumentException naming the dials there are
     */
    static void requireDials(Workbook workbook, WorkbookRecord record, WorkbookOptions options) {
        DialNames known = DialNames.of(workbook);
        known.add(record);
        if (Computation.isAllFresh(record)) {
            known.requireAfterRun(options.setDials());
        }
    }

    /** Prints notes and cells in the order of the sheet, each cell as soon as all above it are known. */
    private static final class Printer {
        private final PrintWriter out;
        private final TextReport report;
        private final Deque<Cell> sheet;
        private final Map<String, CellOutcome> arrived = new HashMap<>();

        Printer(Workbook workbook, TextReport report, PrintWriter out) {
            this.out = out;
            this.report = report;
            this.sheet = new ArrayDeque<>(workbook.sheet());
            out.print(report.heading(workbook.title(), workbook.author(), workbook.about()));
            out.println();
            out.print(report.caution());
        }

        void arrived(ScriptCell cell, CellOutcome outcome) {
            arrived.put(cell.id(), outcome);
            while (!sheet.isEmpty() && isKnown(sheet.peek())) {
                Cell next = sheet.remove();
                CellOutcome known = arrived.get(next.id());
                if (next instanceof ScriptCell script && known != null) {
                    print(script, known.state(), CleanRun.problem(known), CleanRun.shown(known), known.dials());
                } else {
                    note(next);
                }
            }
            out.flush();
        }

        private boolean isKnown(Cell cell) {
            return cell instanceof NoteCell || arrived.containsKey(cell.id());
        }

        /** Prints what has not come while the workbook ran: cells that did not compile or were refused, and all below. */
        void finish(WorkbookRecord record) {
            for (Cell cell : sheet) {
                CellRecord known = record.cells().get(cell.id());
                if (cell instanceof ScriptCell script && known != null) {
                    print(script, known.state(), known.problem(), known.results(), known.dials());
                } else {
                    note(cell);
                }
            }
            out.println();
            out.print(report.caution());
            out.flush();
        }

        private void note(Cell cell) {
            out.println();
            out.print(report.note(cell.text()));
        }

        private void print(
                ScriptCell cell, CellState state, String problem, List<Result> results, List<DialDeclared> dials) {
            out.println();
            out.print(report.cell(Computation.title(cell), state, problem, results));
            out.print(report.dials(dials));
        }
    }
}
