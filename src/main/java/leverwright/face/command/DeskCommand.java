package leverwright.face.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import leverwright.workbook.document.WorkbookRecord;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows a workbook: for now in the terminal, since this version has no window. */
@Command(
        name = "desk",
        mixinStandardHelpOptions = true,
        description = "Open a workbook. This version has no window: it computes the workbook in the terminal.",
        footer = "Exit codes: 0 fine, 1 a cell failed or was refused, 2 bad usage or bad file.")
final class DeskCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "the workbook")
    private Path file = Path.of("");

    @Option(names = "--page", paramLabel = "PAGE", description = "also write the workbook as this page")
    private @Nullable Path page;

    @Mixin
    private WorkbookOptions options = new WorkbookOptions();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Path target = page;
        if (target != null) {
            PublishCommand.requirePage(target);
        }
        PrintWriter out = spec.commandLine().getOut();
        Workbook workbook = options.applyTo(WorkbookFiles.onDisk().read(file).workbook());
        out.println("This version of Leverwright has no window yet; here is the workbook in the terminal.");
        out.println();
        WorkbookRecord record = RunCommand.printed(workbook, options, false, spec.commandLine());
        RunCommand.requireDials(record, options);
        if (target != null) {
            PublishCommand.write(workbook, record, target);
            out.println("The same as a page: " + target);
        }
        return Computation.isAllFresh(record) ? 0 : 1;
    }
}
