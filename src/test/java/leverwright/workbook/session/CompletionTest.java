package leverwright.workbook.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What may be written at the caret. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CompletionTest {

    private Session session;

    @BeforeAll
    void open() {
        session = Session.open(SessionOptions.standard());
        session.run(SessionTest.cells(
                "var heavyBar = 60.0;\nrecord Plate(double mass, String colour) {}",
                "double doubled(double number) { return 2 * number; }\nvar plate = new Plate(20, \"blue\");",
                "1",
                "var heavyPlate = 1;"));
    }

    @AfterAll
    void close() {
        session.close();
    }

    private List<String> at(String text) {
        return session.completions("c", text, text.length()).stream()
                .map(Suggestion::text)
                .toList();
    }

    @Test
    void namesFromAboveAndOfTheCellAreSuggestedAndThoseBelowAreNot() {
        assertEquals(List.of("heavyBar"), at("var x = 2;\nx + heavy"));
        assertEquals(List.of("ownName"), at("var ownName = 2;\nownN"));
        assertEquals(List.of("counter"), at("for (int counter = 0; counter < 3; counter++) {\n    count"));
        assertTrue(at("Pla").contains("Plate"));
        assertEquals(
                List.of("doubled("),
                at("doubl").stream().filter(each -> each.endsWith("(")).toList());
    }

    @Test
    void scriptsThatWereNotRunAreCompletedWithoutAWorkerAndWithoutRunning() {
        try (UnrunScripts unrun = new UnrunScripts()) {
            // Run, the first of them would never end.
            unrun.take(SessionTest.cells(
                    "var heavyBar = kg(60); while (heavyBar.si() > 2) { }", "record Plate(double mass) { }", "1"));
            long children = ProcessHandle.current().children().count();
            String text = "heavyBar.plu";
            assertEquals(
                    List.of("plus(", "plusOrMinus("),
                    unrun.completions("b", text, text.length()).stream()
                            .map(Suggestion::text)
                            .toList());
            assertTrue(unrun.signatures("b", "kg(", 3).stream().anyMatch(each -> each.contains("double")));
            assertTrue(unrun.completions("c", "Pla", 3).stream()
                    .anyMatch(each -> each.text().startsWith("Plate")));
            assertEquals(children, ProcessHandle.current().children().count(), "a worker was started");
        }
    }

    @Test
    void membersFollowADot() {
        assertTrue(
                at("plate.").containsAll(List.of("mass()", "colour()")),
                () -> at("plate.").toString());
        assertEquals(List.of("colour()"), at("var p = plate;\np.col"));
        assertTrue(at("import java.util.ArrayDeque;\nvar a = List.of(1);\na.si").contains("size()"));
    }

    @Test
    void insideAMethodItsParametersAndTheNamesBeforeItAreSuggested() {
        assertEquals(List.of("weight"), at("var q = 1;\ndouble f(double weight) {\n    return wei"));
        assertEquals(List.of("earlier"), at("var earlier = 1;\ndouble f(double weight) {\n    return earl"));
        assertEquals(List.of("heavyBar"), at("class K {\n    double g() {\n        return heavyB"));
    }

    @Test
    void textIsReplacedFromTheBeginningOfTheWord() {
        Suggestion first = session.completions("c", "var x = heavyB; x", 14).get(0);
        assertEquals(new Suggestion(8, "heavyBar", Suggestion.Kind.NAME, first.fits()), first);
        Suggestion method = session.completions("c", "doubled", 6).stream()
                .filter(each -> each.text().equals("doubled("))
                .findFirst()
                .orElseThrow();
        assertEquals(new Suggestion(0, "doubled(", Suggestion.Kind.METHOD, method.fits()), method);
    }

    @Test
    void namesOfTheHouseAreKnownAndOursAreHidden() {
        assertTrue(at("sweep").contains("sweep("));
        assertFalse(at("").stream().anyMatch(each -> each.startsWith("$") || each.startsWith("Cell_")));
    }

    @Test
    void signaturesOfTheCalledMethodAreTold() {
        assertEquals(List.of("double doubled(double number)"), signatures("doubled("));
        assertTrue(
                signatures("Math.max(1, ").contains("int Math.max(int a, int b)"),
                () -> signatures("Math.max(1, ").toString());
        assertEquals(
                List.of("double ownSum(double x)"),
                signatures("double ownSum(double x) { return x; }\nownSum(").stream()
                        .map(each -> each.replace("Caret.", ""))
                        .toList());
        assertEquals(List.of(), signatures("nowhere("));
    }

    private List<String> signatures(String text) {
        return session.signatures("c", text, text.length());
    }
}
