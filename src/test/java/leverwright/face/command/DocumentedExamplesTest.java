package leverwright.face.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leverwright.run.result.CellState;
import leverwright.workbook.session.CellOutcome;
import leverwright.workbook.session.CellScript;
import leverwright.workbook.session.Session;
import leverwright.workbook.session.SessionOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the documents tell a reader to type works as it stands. */
class DocumentedExamplesTest {

    @TempDir
    private Path folder;

    private static List<String> fenced(String file, String language) throws IOException {
        Matcher block =
                Pattern.compile("(?ms)^ *```" + language + "\\n(.*?)^ *```").matcher(Files.readString(Path.of(file)));
        List<String> blocks = new ArrayList<>();
        while (block.find()) {
            blocks.add(block.group(1));
        }
        return blocks;
    }

    @Test
    void everyExampleOfTheWordsOfACellIsComputed() throws IOException {
        List<String> examples = fenced("docs/words.md", "java");
        assertTrue(examples.size() >= 12, "examples: " + examples.size());
        List<CellScript> scripts = new ArrayList<>();
        for (String example : examples) {
            scripts.add(new CellScript("example-" + (scripts.size() + 1), example));
        }
        try (Session session = Session.open(SessionOptions.standard())) {
            for (CellOutcome outcome : session.run(scripts).outcomes()) {
                assertEquals(CellState.FRESH, outcome.state(), () -> outcome.id() + ": " + outcome.message());
            }
        }
    }

    @Test
    void theFirstWorkbookOfTheReadmeIsComputedAndKept() throws IOException {
        Path file = folder.resolve("squat.leverwright.json");
        Files.writeString(file, fenced("README.md", "json").get(0));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), "run", file.toString(), "--record");
        assertEquals(0, code, out + "" + err);
        assertTrue(out.toString().contains("knee extension"), out.toString());
        assertTrue(Files.readString(file).contains("\"seal\""), "the results are kept");
    }

    @Test
    void everyLinkBetweenTheDocumentsLeadsToAFile() throws IOException {
        for (String file :
                List.of("README.md", "DEVELOPERS.md", "docs/words.md", "docs/method.md", "docs/scenario.md")) {
            Matcher link = Pattern.compile("\\]\\(([^)#:]+)\\)").matcher(Files.readString(Path.of(file)));
            while (link.find()) {
                Path target = Path.of(file).resolveSibling(link.group(1));
                assertTrue(Files.exists(target), file + " links to " + target);
            }
        }
    }
}
