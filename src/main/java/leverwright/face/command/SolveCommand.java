package leverwright.face.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import leverwright.workbook.scenario.ScenarioAnswer;
import leverwright.workbook.scenario.ScenarioSolver;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Solves scenario files. */
@Command(
        name = "solve",
        mixinStandardHelpOptions = true,
        description = {
            "Solve scenario files and print one solution a file, in order, each as one line of JSON.",
            "A bad file's line says why in its key \"error\"; the other files are still solved."
        },
        footer = "Exit codes: 0 every file got a solution (\"not balanced\" is one), 2 a bad file or bad usage.")
final class SolveCommand implements Callable<Integer> {

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "scenario files")
    private List<Path> files = List.of();

    @Option(names = "--pretty", description = "lay the JSON out for people")
    private boolean pretty;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        List<ScenarioAnswer> answers = new ArrayList<>();
        for (Path file : files) {
            ScenarioAnswer answer = ScenarioSolver.solve(file);
            answers.add(answer);
            out.print(pretty ? answer.pretty() : answer.line() + "\n");
            if (!answer.solved()) {
                err.println("leverwright: " + Main.oneLine(answer.problem()));
            }
        }
        return ScenarioSolver.anyRefused(answers) ? Main.CANNOT : 0;
    }
}
