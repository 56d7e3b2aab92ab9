package leverwright.face.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leverwright.face.desk.DeskApp;
import leverwright.face.desk.Display;
import leverwright.face.desk.model.DeskHome;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import leverwright.workbook.document.WorkbookRecord;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens workbooks in windows; where no window is possible, says why and shows the first one in the terminal. */
@Command(
        name = "desk",
        mixinStandardHelpOptions = true,
        description = {
            "Open workbooks, each in a window of its own; without a file, the page of beginnings.",
            "Where no window is possible, one line says what is missing, and the workbook is computed in the terminal."
        },
        footer = "Exit codes: 0 fine, 1 a cell failed or was refused (terminal only), 2 bad usage or bad file.")
final class DeskCommand implements Callable<Integer> {

    @Parameters(arity = "0..*", paramLabel = "FILE", description = "workbooks")
    private List<Path> files = List.of();

    @Option(names = "--page", paramLabel = "PAGE", description = "also write the first workbook as this page")
    private @Nullable Path page;

    @Option(names = "--terminal", description = "compute in the terminal, even where a window is possible")
    private boolean terminal;

    @Option(names = "--rehearse", hidden = true, description = "lay out and compute without showing anything, then end")
    private boolean rehearse;

    @Option(names = "--compile-shelf", hidden = true, description = "compile the program's own workbooks, then end")
    private boolean compileShelf;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (compileShelf) {
            DeskHome.forRehearsal(Runnable::run).compileShelf();
            return 0;
        }
        Path target = page;
        if (target != null) {
            PublishCommand.requirePage(target);
        }
        for (Path file : files) {
            if (!Files.exists(file)) {
                throw new IllegalArgumentException(file + " does not exist; name a workbook that does");
            }
        }
        if (terminal) {
            return inTerminal(target);
        }
        Optional<String> missing = Display.missing();
        if (missing.isPresent()) {
            return without(missing.get(), target);
        }
        try {
            DeskApp.show(new DeskApp.Request(files, Optional.ofNullable(target), rehearse));
            return 0;
        } catch (UnsupportedOperationException | UnsatisfiedLinkError refused) {
            return without(refusedWith(refused), target);
        }
    }

    /** Returns whether a command line names this command and files, and nothing else. */
    static boolean isPlain(String... arguments) {
        for (String word : arguments) {
            if (word.startsWith("-") || word.startsWith("@")) {
                return false;
            }
        }
        return arguments.length > 0 && arguments[0].equals("desk");
    }

    /** Returns the line that says why there is no window. */
    static String noWindow(String why) {
        return "leverwright: no window: " + why;
    }

    /** Returns why the toolkit gave no window, in words. */
    static String refusedWith(Throwable refused) {
        return "the system gives none (" + Main.oneLine(String.valueOf(refused.getMessage())) + ")";
    }

    private int without(String why, @Nullable Path target) throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        err.println(noWindow(why));
        err.flush();
        return inTerminal(target);
    }

    private int inTerminal(@Nullable Path target) throws IOException {
        if (files.isEmpty()) {
            throw new IllegalArgumentException("without a window, name the workbook to compute in the terminal");
        }
        PrintWriter out = spec.commandLine().getOut();
        WorkbookOptions options = new WorkbookOptions();
        Workbook workbook = WorkbookFiles.onDisk().read(files.get(0)).workbook();
        WorkbookRecord record = RunCommand.printed(workbook, options, false, spec.commandLine());
        if (target != null) {
            PublishCommand.write(workbook, record, target);
            out.println("The same as a page: " + target);
        }
        return Computation.isAllFresh(record) ? 0 : 1;
    }
}
