package leverwright.workbook.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import leverwright.run.result.CellState;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the compiler finds is marked at the word that is wrong, and said so that a reader knows what to write instead. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CompileWordsTest {

    private Session session;

    @BeforeAll
    void open() {
        session = Session.open(SessionOptions.standard());
    }

    @AfterAll
    void close() {
        session.close();
    }

    private CellOutcome failed(String script) {
        CellOutcome outcome = session.run(SessionTest.cells(script)).outcome("a");
        assertEquals(CellState.FAILED, outcome.state(), script);
        return outcome;
    }

    private static String marked(String script, CellOutcome outcome) {
        return marked(script, Objects.requireNonNull(outcome.span(), outcome::message));
    }

    private static String marked(String script, Span span) {
        assertEquals(span.line(), span.endLine(), span::toString);
        return script.split("\n", -1)[span.line() - 1].substring(span.column() - 1, span.endColumn() - 1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "romanianDeadlift().barbel(kg(40))|barbel|barbell",
                "romanianDeadlift().barbell(kg(40)).torsoLaen(deg(3))|torsoLaen|torsoLean",
                "var b = backSquat()\\n    .barbell(kg(60))\\n    .tighs(LEVEL);|tighs|thighs",
                "romanianDedlift()|romanianDedlift|romanianDeadlift",
                "var q = lifter(\"O\").of(FEMAL, cm(169), kg(62));|FEMAL|FEMALE",
                "var held = 3; hled + 1|hled|held",
                "Maths.abs(3)|Maths|Math",
                "Math.sine(3)|sine|sin",
                "new ArayList<String>()|ArayList|ArrayList",
            })
    void unknownWordIsMarkedItselfAndTheNearOneNamed(String line, String word, String near) {
        String script = line.replace("\\n", "\n");
        CellOutcome outcome = failed(script);
        assertEquals(word, marked(script, outcome));
        assertTrue(outcome.message().contains("did you mean " + near), outcome.message());
    }

    @Test
    void nothingIsSuggestedWhereNothingIsNear() {
        CellOutcome outcome = failed("zebra(3)");
        assertFalse(outcome.message().contains("did you mean"), outcome.message());
        assertTrue(outcome.message().endsWith("check its spelling, or declare it in this cell or above"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "dial(\"lean\", 45)|dial|dial takes (String, Measure), but here it is given (String, int)",
                "backSquat().barbell()|barbell|barbell takes (Mass), but here it is given no values",
                "backSquat().barbell(cm(3))|cm(3)|a value of type Length stands where Mass is needed",
                "claim(\"c\", kg(5), equalTo(kg(5)))|claim|equalTo(…) needs its tolerance, as in .within(percent(5))",
                "claim(\"c\", kg(5), lessThan(cm(5)))|claim|no form of claim takes (String, Mass, ClaimTest<Length>)",
                "kg(1) + kg(2)|kg(1) + kg(2)|+ does not work between Mass and Mass; measures have words for it",
                "static int z = 3; z|static|a name of a cell needs no static, public or private",
                "return 3;|3|a cell gives nothing back with return",
            })
    void wrongValuesAreToldWithTheWordThatTakesThem(String script, String word, String words) {
        CellOutcome outcome = failed(script);
        assertEquals(word, marked(script, outcome));
        assertTrue(outcome.message().contains(words), outcome.message());
        assertFalse(outcome.message().contains("leverwright."), outcome.message());
        assertFalse(outcome.message().contains("\n"), outcome.message());
    }

    @Test
    void everyErrorOfAScriptIsToldAtItsOwnPlace() {
        String script = "var a = kg(2).plu(kg(3));\nvar b = nothing;\nint c = \"three\";\nshow(\"d\", kg(1) + kg(2));";
        CellOutcome outcome = failed(script);
        assertEquals(
                List.of("plu", "nothing", "\"three\"", "kg(1) + kg(2)"),
                outcome.faults().stream()
                        .map(fault -> marked(script, fault.span()))
                        .toList());
        assertEquals(outcome.message(), outcome.faults().get(0).message());
        CellOutcome unfinished = failed("var a = (1;\nvar b = 2;\nvar c = 3) + 1;");
        assertEquals(
                List.of(1, 3),
                unfinished.faults().stream().map(fault -> fault.span().line()).toList());
    }

    @Test
    void valueThatIsNotFiniteFailsItsCell() {
        assertTrue(failed("0.0 / 0").message().contains("not a number"));
        assertTrue(failed("1.0 / 0").message().contains("infinite"));
        assertTrue(failed("1f / 0").message().contains("infinite"));
    }
}
