package leverwright.face.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import leverwright.workbook.scenario.ExerciseListing;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the catalogue of exercises, or one of them. */
@Command(
        name = "exercises",
        mixinStandardHelpOptions = true,
        description = {
            "List the exercises, or one with its knobs, ranges, free forces and cautions.",
            "NAME is its name, such as \"Front squat\", or the word that a cell says, such as frontSquat."
        })
final class ExercisesCommand implements Callable<Integer> {

    @Parameters(arity = "0..*", paramLabel = "NAME", description = "one exercise; all of them if none is named")
    private String @Nullable [] name;

    @Option(names = "--json", description = "print a JSON list of objects, each with its name")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        String[] words = name;
        if (words == null || words.length == 0) {
            out.print(json ? ExerciseListing.json() : ExerciseListing.text());
        } else {
            String asked = String.join(" ", words);
            out.print(json ? ExerciseListing.json(asked) : ExerciseListing.text(asked));
        }
        out.flush();
        return 0;
    }
}
