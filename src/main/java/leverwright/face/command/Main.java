package leverwright.face.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leverwright.face.desk.DeskApp;
import leverwright.face.desk.Display;
import leverwright.workbook.session.Session;
import picocli.CommandLine;

/** Where the program starts. */
public final class Main {

    /** Exit code when the work could not be done: bad usage, bad file, unsuitable Java. */
    static final int CANNOT = CommandLine.ExitCode.USAGE;

    /** The commands that compute workbooks: their worker starts before anything is read. The desk shows its window first. */
    private static final Set<String> COMPUTING = Set.of("run", "recheck", "publish");

    private Main() {}

    /**
     * Runs one command and ends the process with its exit code.
     *
     * @param arguments the command line, without the program's name
     */
    public static void main(String[] arguments) {
        List<String> words = List.of(arguments);
        if (!words.isEmpty() && COMPUTING.contains(words.get(0)) && hasCompiler(ModuleLayer.boot())) {
            Session.prepare(words.contains("--trust"));
        }
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code = run(out, err, arguments);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /**
     * Runs one command.
     *
     * @param out takes results
     * @param err takes messages, one line each
     * @param arguments the command line, without the program's name
     * @return the exit code: 0, 1 or 2
     */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        if (!hasCompiler(ModuleLayer.boot())) {
            err.println("leverwright: this Java (" + System.getProperty("java.home")
                    + ") has no compiler; install a JDK 17 or newer and set JAVA_HOME to it");
            return CANNOT;
        }
        return DeskCommand.isPlain(arguments) ? desk(out, err, arguments) : parsed(out, err, arguments);
    }

    /** Opens windows without reading the whole command line: that would cost a tenth of the time to the first window. */
    private static int desk(PrintWriter out, PrintWriter err, String... arguments) {
        List<Path> files = new ArrayList<>();
        for (String name : List.of(arguments).subList(1, arguments.length)) {
            files.add(Path.of(name));
            if (!Files.exists(Path.of(name))) {
                return parsed(out, err, arguments);
            }
        }
        if (Display.missing().isPresent()) {
            return parsed(out, err, arguments);
        }
        try {
            DeskApp.show(new DeskApp.Request(files, Optional.empty(), false));
            return 0;
        } catch (UnsupportedOperationException | UnsatisfiedLinkError refused) {
            err.println(DeskCommand.noWindow(DeskCommand.refusedWith(refused)));
            String[] inTerminal = Arrays.copyOf(arguments, arguments.length + 1);
            inTerminal[arguments.length] = "--terminal";
            return parsed(out, err, inTerminal);
        } catch (RuntimeException failure) {
            err.println("leverwright: " + describe(failure));
            return CANNOT;
        }
    }

    private static int parsed(PrintWriter out, PrintWriter err, String... arguments) {
        return LeverwrightCommand.commandLine(List.of(arguments))
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler((refused, given) -> {
                    err.println("leverwright: " + oneLine(String.valueOf(refused.getMessage())) + " (see '"
                            + refused.getCommandLine().getCommandSpec().qualifiedName() + " --help')");
                    return CANNOT;
                })
                .setExecutionExceptionHandler((failure, command, parsed) -> {
                    err.println("leverwright: " + describe(failure));
                    return CANNOT;
                })
                .execute(arguments);
    }

    /** Whether the Java that runs us can compile scripts: a runtime without compiler or JShell cannot. */
    static boolean hasCompiler(ModuleLayer layer) {
        return layer.findModule("jdk.compiler").isPresent()
                && layer.findModule("jdk.jshell").isPresent();
    }

    /** Returns what is wrong with a file; a message that does not name it yet begins with its name. */
    static String naming(Path file, Exception problem) {
        String message = describe(problem);
        return message.contains(file.toString()) ? message : file + ": " + message;
    }

    private static String describe(Exception failure) {
        String message = failure.getMessage();
        boolean expected = failure instanceof IllegalArgumentException || failure instanceof IOException;
        if (expected && message != null) {
            return oneLine(message);
        }
        return oneLine("unexpected fault, please report it: " + failure);
    }

    /** Returns a message as one line. */
    static String oneLine(String message) {
        return message.strip().replaceAll("\\s*\\R\\s*", "; ");
    }
}
