package leverwright.workbook.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import leverwright.run.result.CellState;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes wrong in a cell costs that run of that cell only. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MishapTest {

    /** Far longer than any of these takes; only a hang reaches it. */
    private static final int PATIENCE_SECONDS = 60;

    private final ExecutorService background = Executors.newSingleThreadExecutor();
    private volatile CountDownLatch running = new CountDownLatch(1);
    private Session session;

    @BeforeAll
    void open() {
        session = Session.open(SessionOptions.standard().withTrust(true).withListener(outcome -> {
            if (outcome.id().equals("b") && outcome.state() == CellState.RUNNING) {
                running.countDown();
            }
        }));
    }

    @AfterAll
    void close() {
        session.close();
        background.shutdownNow();
    }

    private RunReport runAnd(Runnable whileBRuns, String... scripts)
            throws InterruptedException, ExecutionException, TimeoutException {
        running = new CountDownLatch(1);
        Future<RunReport> report = background.submit(() -> session.run(SessionTest.cells(scripts)));
        assertTrue(running.await(PATIENCE_SECONDS, TimeUnit.SECONDS));
        whileBRuns.run();
        return report.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "while (true);",
                "while (true) { try { while (true) { } } catch (Throwable t) { } }",
                "int n = 0;\nfor (;;) { try { n++; } finally { continue; } }",
                "void f() { while (true) { try { f(); } catch (Throwable t) { } } }\nf();",
                "Stream.iterate(1, x -> x + 1).forEach(x -> { });",
                "while (true) { System.out.println(\"again\"); }",
            })
    void loopIsStoppedAndTheCellsAboveKeepTheirValues(String loop) throws Exception {
        RunReport report = runAnd(session::stop, "var a = 3;", loop, "a + 1");
        assertEquals(CellState.FRESH, report.outcome("a").state());
        assertEquals(CellState.FAILED, report.outcome("b").state());
        assertTrue(
                report.outcome("b").message().startsWith("stopped"),
                report.outcome("b").message());
        assertEquals(CellState.NOT_RUN, report.outcome("c").state());
        assertEquals("4", SessionTest.text(session.edit("b", "var b = 1;"), "c"));
    }

    @Test
    void loopInsideTheLibraryIsEndedWithItsWorker() throws Exception {
        RunReport report = runAnd(
                session::stop, "var a = 3;", "java.math.BigInteger.TEN.pow(80_000_000).toString().length()", "a + 1");
        assertEquals(CellState.FAILED, report.outcome("b").state());
        assertTrue(
                report.outcome("b").message().startsWith("stopped"),
                report.outcome("b").message());
        assertEquals("4", SessionTest.text(session.edit("b", "var b = 1;"), "c"));
    }

    @Test
    void exitCostsOnlyItsCell() {
        RunReport report = session.run(SessionTest.cells("var a = 3;", "System.exit(5);", "a + 1"));
        assertEquals(CellState.FAILED, report.outcome("b").state());
        assertTrue(
                report.outcome("b").message().contains("exit code 5"),
                report.outcome("b").message());
        assertEquals("4", SessionTest.text(report, "c"));
        assertEquals("5", SessionTest.text(session.edit("a", "var a = 4;"), "c"));
    }

    @Test
    void killedWorkerIsReplaced() throws Exception {
        RunReport report =
                runAnd(() -> session.workerHandle().destroyForcibly(), "var a = 3;", "while (true);", "a + 1");
        assertEquals(CellState.FAILED, report.outcome("b").state());
        assertTrue(
                report.outcome("b").message().contains("the worker ended"),
                report.outcome("b").message());
        assertEquals("4", SessionTest.text(report, "c"));
        session.workerHandle().destroyForcibly();
        session.workerHandle().onExit().get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        assertEquals("4", SessionTest.text(session.confirm(), "c"));
    }

    @Test
    void memoryThatRunsOutCostsOnlyItsCell() {
        RunReport report = session.run(SessionTest.cells(
                "var a = 3;",
                "var hog = new ArrayList<double[]>();\nwhile (true) hog.add(new double[1_000_000]);",
                "a + 1"));
        assertEquals(CellState.FAILED, report.outcome("b").state());
        assertTrue(
                report.outcome("b").message().contains("out of memory"),
                report.outcome("b").message());
        assertEquals("4", SessionTest.text(report, "c"));
    }

    @Test
    void endlessRecursionCostsOnlyItsCell() {
        RunReport report = session.run(
                SessionTest.cells("var a = 3;", "int deeper(int n) { return deeper(n + 1) + 1; }\ndeeper(0)", "a + 1"));
        assertEquals(CellState.FAILED, report.outcome("b").state());
        assertTrue(
                report.outcome("b").message().contains("calls itself too deeply"),
                report.outcome("b").message());
        assertEquals("4", SessionTest.text(report, "c"));
        assertEquals("5", SessionTest.text(session.edit("a", "var a = 4;"), "c"));
    }

    @Test
    void printingWithoutEndIsCutAndCounted() {
        RunReport report = session.run(SessionTest.cells(
                "var line = \"x\".repeat(1_000_000);\nfor (int i = 0; i < 1000; i++) System.out.print(line);", "7"));
        CellOutcome outcome = report.outcome("a");
        assertEquals(CellState.FRESH, outcome.state(), outcome::message);
        assertEquals(1_000_000_000L, outcome.output().length() + outcome.outputLeftOut());
        assertTrue(outcome.output().length() <= 100_000);
    }

    @Test
    void hugeArrayIsRefusedInWords() {
        CellOutcome outcome = session.run(SessionTest.cells("new double[2_000_000_000].length"))
                .outcome("a");
        assertEquals(CellState.FAILED, outcome.state());
        assertTrue(outcome.message().contains("2000000000 elements is too large"), outcome.message());
    }

    @Test
    void resultThatIsTooLargeFailsInWords() {
        CellOutcome outcome =
                session.run(SessionTest.cells("\"x\".repeat(20_000_000)")).outcome("a");
        assertEquals(CellState.FAILED, outcome.state());
        assertTrue(outcome.message().contains("longer than"), outcome.message());
    }

    @Test
    void closingTheSessionEndsTheWorker() throws Exception {
        Session other = Session.open(SessionOptions.standard());
        ProcessHandle worker = other.workerHandle();
        other.close();
        worker.onExit().get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        assertTrue(!worker.isAlive());
    }
}
