package leverwright.face.command;

import leverwright.Release;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command {@code leverwright} itself; a new subcommand joins by being named in {@code subcommands}. */
@Command(
        name = "leverwright",
        description = "A workbench for people who explain strength exercises with mechanics.",
        mixinStandardHelpOptions = true,
        versionProvider = LeverwrightCommand.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            RunCommand.class,
            RecheckCommand.class,
            PublishCommand.class,
            SolveCommand.class,
            ExercisesCommand.class,
            DeskCommand.class
        },
        footer = {
            "",
            "Exit codes: 0 fine, 1 something is wrong with the content, 2 bad usage, bad file or unsuitable Java.",
            "All results are estimates of a model, not medical or training advice."
        })
final class LeverwrightCommand implements Runnable {

    @Spec
    private CommandSpec spec;

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
