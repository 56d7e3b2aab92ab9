package leverwright.workbook.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import leverwright.run.result.CellState;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Result;
import leverwright.run.result.TextResult;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SessionTest {

    private Session session;

    @BeforeAll
    void open() {
        session = Session.open(SessionOptions.standard());
    }

    @AfterAll
    void close() {
        session.close();
    }

    /** Names the scripts a, b, c, … */
    static List<CellScript> cells(String... scripts) {
        List<CellScript> cells = new ArrayList<>();
        for (int i = 0; i < scripts.length; i++) {
            cells.add(new CellScript(String.valueOf((char) ('a' + i)), scripts[i]));
        }
        return cells;
    }

    private RunReport run(String... scripts) {
        return session.run(cells(scripts));
    }

    static String text(RunReport report, String cell) {
        CellOutcome outcome = report.outcome(cell);
        assertEquals(CellState.FRESH, outcome.state(), outcome::message);
        Result last = outcome.results().get(outcome.results().size() - 1);
        return last instanceof NumberResult number
                ? String.valueOf(number.quantity().value())
                : ((TextResult) last).text();
    }

    private static Span span(CellOutcome outcome) {
        return Objects.requireNonNull(outcome.span(), () -> "no span: " + outcome.message());
    }

    @Test
    void valueOfTheLastExpressionIsShown() {
        assertEquals("5", text(run("2 + 3"), "a"));
        assertEquals("5", text(run("int x = 2;\nx + 3"), "a"));
        assertEquals("true", text(run("var x = 2;\nx < 3"), "a"));
        assertEquals("[1, 2]", text(run("List.of(1, 2)"), "a"));
        assertEquals("12", text(run("var s = 1;\nString.valueOf(s) + 2;"), "a"));
    }

    @Test
    void callWithoutValueShowsNothingButWhatItPrints() {
        CellOutcome outcome = run("System.out.println(\"hello\")").outcome("a");
        assertEquals(CellState.FRESH, outcome.state(), outcome::message);
        assertEquals("hello\n", outcome.output());
        assertTrue(outcome.results().isEmpty());
    }

    @Test
    void namesAreReadFromTheNearestCellAbove() {
        RunReport report =
                run("var m = 2.5;", "var m = 4;", "m * 2", "double twice(double x) { return x * m; }", "twice(3)");
        assertEquals("8", text(report, "c"));
        assertEquals("12.0", text(report, "e"));
    }

    @Test
    void compileErrorTellsItsSpanInPlainWords() {
        CellOutcome outcome = run("var x = 1;\nvar y = x + hight;").outcome("a");
        assertEquals(CellState.FAILED, outcome.state());
        assertEquals(new Span(2, 13, 2, 18), span(outcome));
        assertTrue(outcome.message().contains("the name hight is not known here"), outcome.message());
    }

    @Test
    void aValueAfterACallWithoutOneIsShown() {
        assertEquals("[]", text(run("var list = new ArrayList<>(List.of(1)); list.clear(); list"), "a"));
        assertEquals("x", text(run("var list = new ArrayList<>(List.of(1)); list.clear(); \"x\""), "a"));
        CellOutcome nothing =
                run("var list = new ArrayList<>(List.of(1)); list.clear()").outcome("a");
        assertEquals(CellState.FRESH, nothing.state(), nothing::message);
        assertEquals(List.of(), nothing.results());
    }

    @Test
    void assertionsHold() {
        assertEquals("3", text(run("assert 2 > 1; 3"), "a"));
        CellOutcome outcome =
                run("var a = 1;\nassert a > 2 : \"a is \" + a;\n3").outcome("a");
        assertEquals(CellState.FAILED, outcome.state());
        assertEquals("what this line asserts is not so: a is 1", outcome.message());
        assertEquals(2, span(outcome).line());
    }

    @Test
    void runTimeErrorTellsTheLine() {
        CellOutcome outcome = run("int zero = 0;\n\nint f(int x) {\n    return x / zero;\n}\nf(3)")
                .outcome("a");
        assertEquals(CellState.FAILED, outcome.state());
        assertEquals(4, span(outcome).line());
        assertEquals("a whole number is divided by zero", outcome.message());
    }

    @Test
    void failedCellStopsThoseThatReadFromIt() {
        RunReport report = run("int zero = 0;", "var a = 1 / zero;", "a + 1", "7");
        assertEquals(CellState.FAILED, report.outcome("b").state());
        assertEquals(CellState.NOT_RUN, report.outcome("c").state());
        assertEquals("not run: b failed", report.outcome("c").message());
        assertEquals("7", text(report, "d"));
    }

    @Test
    void exerciseIsComputedAndItsDialTurned() {
        RunReport first = run(
                "var ines  = lifter(\"Ines\").of(FEMALE, cm(178), kg(71));\n"
                        + "var lean  = dial(\"Torso lean\", deg(45)).from(deg(10)).to(deg(80));\n"
                        + "var hinge = romanianDeadlift().barbell(kg(50)).barAhead(cm(3)).torsoLean(lean);\n"
                        + "var held  = hinge.by(ines).posture();\n"
                        + "figure(held).loadArms(HIP, LOW_BACK)",
                "table(held.moments(HIP, KNEE, ANKLE, LOW_BACK))",
                "sweep(TORSO_LEAN).from(deg(10)).to(deg(80)).of(hinge.by(ines)).chart(moment(HIP), tiltRule(HIP))",
                "working(held.moment(HIP))");
        first.outcomes()
                .forEach(outcome ->
                        assertEquals(CellState.FRESH, outcome.state(), () -> outcome.id() + outcome.message()));
        assertEquals("Torso lean", first.outcome("a").dials().get(0).name());
        RunReport turned = session.setDial("Torso lean", "60 deg");
        assertEquals(RunReport.Way.SHORT, turned.way());
        assertEquals(List.of(), session.confirm().differences());
        assertTrue(!turned.outcome("b").results().equals(first.outcome("b").results()));
        RunReport outside = session.setDial("Torso lean", "120 deg");
        assertEquals(CellState.FAILED, outside.outcome("a").state());
        assertEquals(CellState.NOT_RUN, outside.outcome("d").state());
        RunReport back = session.setDial("Torso lean", null);
        assertTrue(Outcomes.same(back.outcome("b"), first.outcome("b")));
    }

    /** Java calls a method that it has called often in another way, which needs classes that no cell may name. */
    @Test
    void dialMayBeTurnedManyTimes() {
        run(
                "record P(double a) {}\nvar lean = dial(\"Lean\", kg(3)).from(kg(0)).to(kg(99)).si();\nnew P(lean) + \"\"",
                "lean * 2");
        for (int i = 0; i < 60; i++) {
            RunReport report = session.setDial("Lean", i + " kg");
            assertEquals(RunReport.Way.SHORT, report.way());
            assertEquals("P[a=" + i + ".0]", text(report, "a"));
            assertEquals(2.0 * i + "", text(report, "b"));
        }
        session.presetDial("Lean", null);
    }

    @Test
    void editComputesTheCellAndItsReaders() {
        run("var a = 1;", "var b = a + 1;", "b * 10", "5");
        RunReport report = session.edit("a", "var a = 4;");
        assertEquals("50", text(report, "c"));
        assertEquals(RunReport.Way.PATCH, report.way());
        assertNotNull(session.edit("a", "var a = 2.5;"));
        assertEquals("35.0", text(session.confirm(), "c"));
    }
}
