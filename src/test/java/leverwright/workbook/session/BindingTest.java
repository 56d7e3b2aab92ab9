package leverwright.workbook.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import java.util.Set;
import leverwright.run.result.CellState;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Which cell a name means: the nearest above that declares it, whatever stands below or further up. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BindingTest {

    private Session session;

    @BeforeAll
    void open() {
        session = Session.open(SessionOptions.standard());
    }

    @AfterAll
    void close() {
        session.close();
    }

    private RunReport run(String... scripts) {
        return session.run(SessionTest.cells(scripts));
    }

    @Test
    void variablesMethodsAndTypesAreHiddenByNearerOnesEach() {
        RunReport report = run(
                "var v = 1; int f() { return 10; } record R(int x) {} enum E { P, Q } var only = 5;",
                "var v = 2; int f() { return 20; } record R(int x, int y) {}",
                "v + f() + new R(3, 4).y() + only",
                "enum E { Z }\nv + f() + only + \" \" + List.of(E.values())");
        assertEquals("31", SessionTest.text(report, "c"));
        assertEquals("27 [Z]", SessionTest.text(report, "d"));
        assertEquals(Set.of("a", "b"), session.readsFrom("d"));
    }

    @Test
    void ownDeclarationsHideThoseAbove() {
        RunReport report = run(
                "var v = 1; var w = 2; int f(int x) { return x; } record R(int x) {}",
                "var v = 7; int f(String s) { return 70; }\nrecord R(String s) {}\n"
                        + "int g(int w) { return w; }\nv + f(\"\") + w + g(100) + new R(\"a\").s()");
        assertEquals("179a", SessionTest.text(report, "b"));
        assertEquals(Set.of("a"), session.readsFrom("b"));
    }

    @Test
    void localsParametersAndInheritedMembersHideThoseAbove() {
        RunReport report = run(
                "var v = 1; var n = 2;",
                "class Base { int v = 50; }\nclass Kid extends Base { int see() { return v + n; } }\n"
                        + "java.util.function.IntUnaryOperator o = v -> v * n;\n"
                        + "int s = 0; for (int n : new int[] {7}) { s += n; }\nnew Kid().see() + \" \" + o.applyAsInt(9) + \" \" + s");
        assertEquals("52 18 7", SessionTest.text(report, "b"));
    }

    @Test
    void assignmentsReachTheCellThatDeclares() {
        RunReport report = run("int a = 1; int b = 1;", "int b = 5;", "a = a + 10; b++;", "a + \" \" + b");
        assertEquals("11 6", SessionTest.text(report, "d"));
        assertEquals(Set.of("a", "b", "c"), session.readsFrom("d"));
    }

    @Test
    void laterCellsChangeNothingAbove() {
        RunReport report = run("var v = 1;", "int f() { return v; }", "var v = 100;", "f() + v");
        assertEquals("101", SessionTest.text(report, "d"));
    }

    @Test
    void valuesOfTypesFromAboveTravelOn() {
        RunReport report = run(
                "record P(int x) {} enum E { A, B } interface Shape { int area(); }",
                "var p = new P(4); var list = List.of(new P(1), p); E e = E.B;\nShape s = () -> p.x() * 2;",
                "var q = list.get(1);\nint r = switch (e) { case A -> 0; case B -> q.x() + s.area() + p.x(); };\nr");
        assertEquals("16", SessionTest.text(report, "c"));
        RunReport edited = session.edit(
                "a", "record P(int y) { int x() { return y + 1; } }\nenum E { B, A }\ninterface Shape { int area(); }");
        assertEquals("20", SessionTest.text(edited, "c"));
    }

    @Test
    void anImportHoldsForItsCellAndThoseBelow() {
        RunReport report = run(
                "new ArrayDeque<>(List.of(1))",
                "import java.math.BigDecimal;\nvar d = new BigDecimal(\"1.50\");",
                "new BigDecimal(\"2\").add(d)");
        assertEquals("3.50", SessionTest.text(report, "c"));
        CellOutcome early = run("new BigDecimal(\"1\")", "import java.math.BigDecimal;\nBigDecimal.TEN")
                .outcome("a");
        assertEquals(CellState.FAILED, early.state());
        assertTrue(early.message().contains("BigDecimal is not known here"), early.message());
    }

    @Test
    void variablesAndMethodsOfOneNameAreTwoThings() {
        RunReport report = run(
                "int figure(int x) { return x + 1; }",
                "var figure = 3;\nfigure(4) * 10 + figure",
                "figure(1) + figure",
                "int show(int x) { return x * 2; }\nvar deg = 7;",
                "var show = 5;\nshow(show) + deg(90).plus(deg(deg)).si() * 0");
        assertEquals("53", SessionTest.text(report, "b"));
        assertEquals("5", SessionTest.text(report, "c"));
        assertEquals("10.0", SessionTest.text(report, "e"));
        assertEquals(Set.of("a", "b"), session.readsFrom("c"));
    }

    @Test
    void aVariableNamedLikeAStandardWordLeavesTheWord() {
        RunReport report = run("var kg = 2;", "kg(3).si() + kg", "var table = 1; table");
        assertEquals("5.0", SessionTest.text(report, "b"));
        assertEquals("1", SessionTest.text(report, "c"));
    }

    @Test
    void twoImportsOfOneNameAreRefusedInOneCellAndTheNearerHoldsBelow() {
        String both = "import static java.lang.Math.max;\nimport static java.lang.Integer.max;\nmax(1, 2)";
        CellOutcome clash = run(both).outcome("a");
        assertEquals(CellState.FAILED, clash.state());
        assertTrue(clash.message().startsWith("two imports bring the name max, from java.lang.Math and from"));
        assertEquals(2, Objects.requireNonNull(clash.span()).line());
        RunReport report = run(
                "import static java.lang.Math.signum;\nsignum(-3.5f)",
                "import static java.lang.Integer.signum;\nsignum(-3)",
                "signum(4)");
        assertEquals("-1", SessionTest.text(report, "b"));
        assertEquals("1", SessionTest.text(report, "c"));
        RunReport types =
                run("import java.util.Formatter;\n1", "import java.util.List;\nimport java.util.List;\nList.of(2)");
        assertEquals("[2]", SessionTest.text(types, "b"));
    }

    @Test
    void anImportBelowIsGoneWhenACellAboveIsEdited() {
        run("1", "import java.math.BigDecimal;\nBigDecimal.TEN", "BigDecimal.ONE");
        CellOutcome outcome = session.edit("a", "BigDecimal.TEN").outcome("a");
        assertEquals(CellState.FAILED, outcome.state());
        assertEquals("1", SessionTest.text(session.edit("a", "2"), "c"));
        assertEquals("0", SessionTest.text(session.edit("c", "BigDecimal.ZERO"), "c"));
    }

    @Test
    void anOwnTypeHidesAnImportedOne() {
        RunReport report = run("record List(int x) {}", "new List(3).x()", "java.util.List.of(1)");
        assertEquals("3", SessionTest.text(report, "b"));
        assertEquals("[1]", SessionTest.text(report, "c"));
    }

    @Test
    void manyVersionsOfACellLeaveNothingBehind() {
        run("record P(int x) {}\nvar p = new P(0);", "p.x() + 1");
        for (int i = 1; i <= 40; i++) {
            String field = i % 2 == 0 ? "x" : "y";
            String script = "record P(int " + field + ") { int x() { return " + i + "; } }\nvar p = new P(0);";
            String fine = i % 2 == 0 ? script.replace("int x()", "public int x()") : script;
            assertEquals(String.valueOf(i + 1), SessionTest.text(session.edit("a", fine), "b"));
        }
    }
}
