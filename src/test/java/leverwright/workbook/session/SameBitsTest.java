package leverwright.workbook.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.numeric.Trigonometry;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What the gate rewrites: order, digits, random numbers and text are the same at every start. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SameBitsTest {

    private static final List<CellScript> SCRIPTS = SessionTest.cells(
            "enum E { P, Q, R, S }\n"
                    + "Map.of(E.S, 1, E.P, 2, E.R, 3) + \" \" + Set.of(E.R, E.Q, E.P) + Set.copyOf(List.of(E.Q, E.S))",
            "var m = new HashMap<Object, Integer>();\nfor (var e : List.of(\"z\", \"b\", \"q\")) m.put(e, 1);\n"
                    + "m + \" \" + Stream.of(\"y\", \"a\", \"k\").collect(Collectors.toSet())",
            "Stream.of(\"zz\", \"a\", \"kk\").collect(Collectors.groupingBy(String::length)) + \"\"",
            "Math.sin(0.3) + \" \" + Math.exp(0.7) + \" \" + StrictMath.cos(2.0)",
            "new Random().nextInt(1000) + \" \" + Math.random() + \" \" + new SplittableRandom().nextInt(1000)",
            "var l = new ArrayList<>(List.of(1, 2, 3, 4, 5, 6, 7, 8));\nCollections.shuffle(l);\nl",
            "class Plain {}\nRunnable r = () -> {};\nnew Plain() + \" \" + r + \" \" + new double[2] + \" \" + new Plain().hashCode()",
            "record P(double a, List<Double> b) {}\ndouble x = 5.684341886080802E-14;\nnew P(2e23, List.of(1.0e23)) + \" \" + 2.0E-3 + \" \" + x",
            "System.out.println(2.2250738585072014E-308);\nSystem.out.println(List.of(5.684341886080802E-14));\n"
                    + "Stream.of(1.5, 5.684341886080802E-14).map(Object::toString).collect(Collectors.joining(\";\"))");

    private Session session;

    @BeforeAll
    void open() {
        session = Session.open(SessionOptions.standard());
    }

    @AfterAll
    void close() {
        session.close();
    }

    @Test
    void orderAndDigitsAreOurs() {
        RunReport report = session.run(SCRIPTS);
        assertEquals("{S=1, P=2, R=3} [R, Q, P][Q, S]", SessionTest.text(report, "a"));
        assertEquals("{z=1, b=1, q=1} [y, a, k]", SessionTest.text(report, "b"));
        assertEquals("{2=[zz, kk], 1=[a]}", SessionTest.text(report, "c"));
        assertEquals(
                Trigonometry.sine(0.3) + " " + StrictMath.exp(0.7) + " " + Trigonometry.cosine(2.0),
                SessionTest.text(report, "d"));
        assertEquals("Plain lambda double[2] 1", SessionTest.text(report, "g"));
        assertEquals("P[a=2.0E23, b=[1.0E23]] 0.002 5.684341886080802E-14", SessionTest.text(report, "h"));
        assertEquals("1.5;5.684341886080802E-14", SessionTest.text(report, "i"));
        assertEquals(
                "2.2250738585072014E-308\n[5.684341886080802E-14]\n",
                report.outcome("i").output());
    }

    @Test
    void anotherStartGivesTheSameAndAnotherSeedDoesNot() {
        RunReport first = session.run(SCRIPTS);
        try (Session other = Session.open(SessionOptions.standard());
                Session seeded = Session.open(SessionOptions.standard().withSeed(2))) {
            RunReport second = other.run(SCRIPTS);
            for (CellScript script : SCRIPTS) {
                assertTrue(Outcomes.same(first.outcome(script.id()), second.outcome(script.id())), script.text());
            }
            assertTrue(!SessionTest.text(first, "e").equals(SessionTest.text(seeded.run(SCRIPTS), "e")));
        }
    }
}
