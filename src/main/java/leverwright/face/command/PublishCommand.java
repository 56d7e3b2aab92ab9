package leverwright.face.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import leverwright.face.publish.Publisher;
import leverwright.workbook.document.Seal;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import leverwright.workbook.document.WorkbookFormat;
import leverwright.workbook.document.WorkbookRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Computes a workbook and writes it as one page. */
@Command(
        name = "publish",
        mixinStandardHelpOptions = true,
        description = "Compute a workbook and write it as one page that needs nothing else, to read, print and check.",
        footer = "Exit codes: 0 fine, 1 a cell failed or was refused, 2 bad usage or bad file.")
final class PublishCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "the workbook")
    private Path file = Path.of("");

    @Option(
            names = "--to",
            required = true,
            paramLabel = "PAGE",
            description = "the page to write, for example page.html")
    private Path page = Path.of("");

    @Mixin
    private WorkbookOptions options = new WorkbookOptions();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        requirePage(page);
        PrintWriter out = spec.commandLine().getOut();
        Workbook workbook = options.applyTo(WorkbookFiles.onDisk().read(file).workbook());
        WorkbookRecord record =
                new Computation(workbook, options.running(), spec.commandLine().getErr()).run((cell, outcome) -> {});
        RunCommand.requireDials(workbook, record, options);
        write(workbook, record, page);
        out.println("The page is in " + page);
        return Computation.isAllFresh(record) ? 0 : 1;
    }

    /**
     * Refuses a place where no page can be written.
     *
     * @throws IllegalArgumentException when it is a folder, a workbook, or lies in no folder
     */
    static void requirePage(Path page) {
        Path folder = page.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new IllegalArgumentException(page + ": there is no folder " + folder + "; make it first");
        }
        if (Files.isDirectory(page)) {
            throw new IllegalArgumentException(page + " is a folder; name a file, such as page.html");
        }
        if (page.toString().endsWith(WorkbookFormat.EXTENSION)) {
            throw new IllegalArgumentException(
                    page + " has the ending of a workbook; name another file, such as page.html");
        }
    }

    /** Writes a computed workbook as a page. */
    static void write(Workbook workbook, WorkbookRecord record, Path page) throws IOException {
        byte[] html = Publisher.page(Seal.seal(workbook.withRecord(record))).getBytes(StandardCharsets.UTF_8);
        if (Files.exists(page) && !Files.isRegularFile(page)) {
            Files.write(page, html);
        } else {
            WorkbookFiles.onDisk().writeMade(page, html);
        }
    }
}
