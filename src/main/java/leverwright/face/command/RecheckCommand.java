package leverwright.face.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import leverwright.workbook.document.RecordComparison;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import leverwright.workbook.document.WorkbookRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Computes workbooks anew and holds every recorded number against the fresh one. */
@Command(
        name = "recheck",
        mixinStandardHelpOptions = true,
        description = {
            "Compute workbooks in a clean worker and compare every recorded number, curve and claim, bit by bit.",
            "One line for each difference. A claim marked for the reader or doubted counts by its recorded verdict."
        },
        footer = "Exit codes: 0 all the same and all claims hold, 1 otherwise, 2 a file could not be rechecked.")
final class RecheckCommand implements Callable<Integer> {

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "workbooks with a record")
    private List<Path> files = List.of();

    @Mixin
    private RunOptions options = new RunOptions();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        int worst = 0;
        for (Path file : files) {
            try {
                worst = Math.max(worst, recheck(file, out, err) ? 0 : 1);
            } catch (IOException | IllegalArgumentException problem) {
                err.println("leverwright: " + Main.oneLine(Main.naming(file, problem)));
                worst = Main.CANNOT;
            }
            out.flush();
        }
        return worst;
    }

    private boolean recheck(Path file, PrintWriter out, PrintWriter err) throws IOException {
        Workbook workbook = WorkbookFiles.onDisk().read(file).workbook();
        if (workbook.record().isEmpty()) {
            throw new IllegalArgumentException(
                    file + ": there is no record to check; keep one with 'leverwright run --record " + file + "'");
        }
        WorkbookRecord fresh = new Computation(workbook, options, err).run((cell, outcome) -> {});
        RecordComparison comparison = RecordComparison.compare(workbook, fresh);
        comparison.differences().forEach(line -> out.println(file + ": " + line));
        comparison.unmetClaims().forEach(line -> out.println(file + ": " + line));
        out.println(file + ": " + comparison.resultWords() + ", " + comparison.claimWords() + "; "
                + comparison.seal().words());
        return comparison.passes();
    }
}
