package leverwright.face.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import leverwright.Release;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command {@code leverwright} itself; a new subcommand joins by being named in {@link #SUBCOMMANDS}. */
@Command(
        name = "leverwright",
        description = "A workbench for people who explain strength exercises with mechanics.",
        mixinStandardHelpOptions = true,
        versionProvider = LeverwrightCommand.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "Exit codes: 0 fine, 1 something is wrong with the content, 2 bad usage, bad file or unsuitable Java.",
            "All results are estimates of a model, not medical or training advice."
        })
final class LeverwrightCommand implements Runnable {

    /** Every subcommand under its name, in the order in which help lists them. */
    private static final Map<String, Supplier<Object>> SUBCOMMANDS = subcommands();

    @Spec
    private CommandSpec spec;

    private static Map<String, Supplier<Object>> subcommands() {
        Map<String, Supplier<Object>> subcommands = new LinkedHashMap<>();
        subcommands.put("run", RunCommand::new);
        subcommands.put("recheck", RecheckCommand::new);
        subcommands.put("publish", PublishCommand::new);
        subcommands.put("solve", SolveCommand::new);
        subcommands.put("exercises", ExercisesCommand::new);
        subcommands.put("desk", DeskCommand::new);
        return subcommands;
    }

    /**
     * Returns the command line that understands these arguments. Of the subcommands it makes only the one that comes first
     * among them, since to make them all delays every start, and all of them where none does.
     *
     * @param arguments the command line, without the program's name
     */
    static CommandLine commandLine(List<String> arguments) {
        CommandLine line = new CommandLine(new LeverwrightCommand());
        String asked = arguments.isEmpty() ? "" : arguments.get(0);
        SUBCOMMANDS.forEach((name, subcommand) -> {
            if (name.equals(asked) || !SUBCOMMANDS.containsKey(asked)) {
                line.addSubcommand(name, subcommand.get());
            }
        });
        return line;
    }

    /** Reached only when no subcommand was given, which is bad usage. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "no command given");
    }

    /** Prints the version of the program and of the Java that runs it. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"leverwright " + Release.version(), "Java " + Runtime.version()};
        }
    }
}
