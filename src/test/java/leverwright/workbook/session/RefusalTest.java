package leverwright.workbook.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leverwright.run.result.CellState;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Scripts that try to get out, and ordinary ones that must not be refused. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RefusalTest {

    private static final String[] HOSTILE = {
        "new Exception().printStackTrace()",
        "class Y extends Exception { void p() { printStackTrace(); } }",
        "class XL extends ArrayList<Integer> { long n() { return parallelStream().count(); } }",
        "AutoCloseable ac = System.out;\nac.close();",
        "System.out.close();",
        "System.out.write(7);",
        "Function<String, Class<?>> f = n -> { try { return Class.forName(n); } catch (ClassNotFoundException e) {"
                + " return null; } };",
        "Optional.of(1).getClass().getModule()",
        "String.class.getClassLoader()",
        "new Object().getClass().getMethods().length",
        "new ThreadLocal<Integer>()",
        "Thread.onSpinWait()",
        "Thread.sleep(10);",
        "new Thread(() -> {}).start();",
        "import static java.lang.System.exit;\nexit(0)",
        "System.exit(0)",
        "Runtime.getRuntime().halt(1);",
        "Iterable<?> it = java.nio.file.Path.of(\"/etc/passwd\");",
        "new java.io.File(\"/etc/passwd\").length()",
        "java.nio.file.Files.readString(java.nio.file.Path.of(\"/etc/passwd\"))",
        "new java.net.Socket(\"localhost\", 80)",
        "System.getenv()",
        "System.getProperty(\"user.home\")",
        "System.setOut(null);",
        "Integer.getInteger(\"x\")",
        "new Iterator<Thread>() { public boolean hasNext() { return false; } public Thread next() { return null; } }",
        "new java.lang.ref.WeakReference<>(1)",
        "new java.security.SecureRandom().nextInt()",
        "Runtime.version()",
        "Object th = new Thread[1];",
        "Object fi = new java.io.File[1][1];",
        "Object o = \"x\";\no instanceof java.io.File f ? 1 : 2",
        "Locale.getDefault()",
        "Locale.setDefault(Locale.ROOT);",
        "new Scanner(System.in).next()",
        "new Timer()",
        "java.util.concurrent.ForkJoinPool.commonPool()",
        "java.util.concurrent.CompletableFuture.runAsync(() -> {})",
        "IntStream.range(0, 9).parallel().sum()",
        "List.of(1).parallelStream().count()",
        "Arrays.parallelSort(new int[3]);",
        "ServiceLoader.load(Runnable.class)",
        "java.lang.invoke.MethodHandles.lookup()",
        "synchronized (\"x\") { }",
        "class S { synchronized void s() { } }",
        "class F { protected void finalize() { } }",
        "class R implements java.io.Serializable { private void readObject(java.io.ObjectInputStream s) { } }",
        "Runnable r = (Runnable & java.io.Serializable) () -> {};",
        "\"x\".wait();",
        "new int[1].notify();",
        "\"x\".describeConstable()",
        "UUID.randomUUID()",
        "System.identityHashCode(\"x\")",
        "new IdentityHashMap<String, String>()",
        "Random::new instanceof Object",
        "System.gc();",
        "leverwright.run.gate.woven.StopCheck.clear();",
        "leverwright.run.cell.CellSink.current().seed()",
        "leverwright.workbook.session.Session.open(null)",
        "Object o = leverwright.run.worker.WorkerMain.class;",
        "new ProcessBuilder(\"ls\").start()",
        "System.loadLibrary(\"x\");",
        "javax.tools.ToolProvider.getSystemJavaCompiler()",
    };

    private static final String[] CLOCKS = {
        "System.currentTimeMillis()",
        "System.nanoTime()",
        "java.time.LocalDate.now()",
        "java.time.Instant.now()",
        "java.time.Clock.systemUTC().millis()",
        "new Date()",
        "new Date().getTime()",
        "Calendar.getInstance()",
        "Supplier<java.time.LocalTime> s = java.time.LocalTime::now;",
    };

    private static final String[] ORDINARY = {
        "IntStream.range(0, 5).map(i -> i * i).sum()",
        "List.of(1, 2).stream().map(String::valueOf).collect(Collectors.toList())",
        "record R(int x) {}\nnew R(1).equals(new R(1)) + \"\" + new R(2)",
        "enum E { A, B }\nswitch (E.A) { case A -> System.out.println(1); case B -> System.out.println(2); }",
        "enum E { A, B }\nint k = switch (E.B) { case A -> 1; case B -> 2; };\nk",
        "System.out.println(\"x\" + 1)",
        "String s = \"a\";\nint k = switch (s) { case \"a\" -> 2; default -> 3; };",
        "\"a,b\".split(\",\").length",
        "String.format(\"%.2f\", 1.0)",
        "System.out.printf(\"%d%n\", 3);",
        "Object o1 = 3;\no1 instanceof Integer i ? i : 0",
        "class C { class D { int v = 1; } int g() { return new D().v; } }\nnew C().g()",
        "new int[] {1, 2}.clone().length",
        "try { Object z = null; z.hashCode(); } catch (NullPointerException e) { System.out.println(e.getMessage()); }",
        "Stream.of(3, 1).sorted(Comparator.comparing(x -> -x)).toList()",
        "java.time.LocalDate.of(2020, 1, 1).plusDays(3)",
        "new java.math.BigDecimal(\"1.1\").add(java.math.BigDecimal.ONE)",
        "assert 1 > 0;",
        "\"x\".getClass().getSimpleName()",
        "Arrays.asList(1, 2, 3)",
        "sealed interface Sh permits Sq {}\nrecord Sq(double a) implements Sh {}\nnew Sq(2)",
        "enum E { A, B }\nvar m = new EnumMap<E, Integer>(E.class);\nm.put(E.B, 1);\nm",
        "new Random(1).nextGaussian()",
        "new Iterator<Integer>() { public boolean hasNext() { return false; } public Integer next() { return 1; } }"
                + ".hasNext()",
        "new StringBuilder(\"a\").append(2.5).reverse().toString()",
        "var text = \"\"\"\n    two \"lines\"\n    here\"\"\";\ntext.lines().count()",
        "double f(double x) { return x < 1 ? x : f(x / 2); }\nf(100)",
        "<T extends Comparable<T>> T most(List<T> xs) { return Collections.max(xs); }\nmost(List.of(1, 3, 2))",
        "int n = 0;\nfor (int i = 0; i < 10; i++) { if (i % 2 == 0) continue; n += i; }\nwhile (n > 20) n--;\n"
                + "do { n++; } while (n < 30);\nn",
        "double[] xs = {3, 1, 2};\nArrays.sort(xs);\nArrays.toString(xs)",
        "int a = 1, b = a + 1;\na + b",
        "interface Shape { double area(); default String name() { return \"shape\"; } }\n"
                + "Shape s = () -> 2;\ns.name() + s.area()",
        "var groups = Stream.of(\"a\", \"bb\", \"cc\").collect(Collectors.groupingBy(String::length));\ngroups",
        "Map<String, Integer> counts = new HashMap<>();\ncounts.merge(\"a\", 1, Integer::sum);\ncounts",
        "abstract class Base { abstract int v(); public String toString() { return \"v\" + v(); } }\n"
                + "class Own extends Base { int v() { return 4; } }\nnew Own()",
        "BiFunction<Double, Double, Double> h = Math::hypot;\nh.apply(3.0, 4.0)",
        "Supplier<List<String>> made = ArrayList::new;\nmade.get()",
        "class Mine extends HashMap<String, Integer> { public Integer put(String k, Integer v) {"
                + " return super.put(k + \"!\", v); } }\nvar m = new Mine();\nm.put(\"a\", 1);\nm",
        "throw new IllegalStateException(\"on purpose\");",
        "outer:\nfor (int i = 0; i < 3; i++) { for (int j = 0; j < 3; j++) { if (j == 1) continue outer; } }",
        "Optional<Double> best = Stream.of(1.5, 2.5).max(Double::compare);\nbest.get()",
        "var r = new Random();\nr.nextDouble() < 1",
        "import java.math.BigInteger;\nBigInteger.TWO.pow(10)",
        "final double g = 9.80665;\ng * 2",
        "int[][] grid = new int[3][4];\ngrid[1][2] = 5;\ngrid[1][2]",
        "var x = new Object() { int hidden = 3; };\n\"made\"",
        "var either = true ? 1 : \"a\";\neither",
        "var mixed = List.of(1, \"a\", 2.5);\nmixed.size()",
        "static int once() { return 1; }\npublic int twice() { return 2; }\nonce() + twice()",
        "char c = 'x'; String quote = \"\\\"}\"; // { not a bracket\n/* } */ c + quote",
    };

    private Session session;

    @BeforeAll
    void open() {
        session = Session.open(SessionOptions.standard());
    }

    @AfterAll
    void close() {
        session.close();
    }

    private RunReport runEach(Session with, String[] scripts) {
        List<CellScript> cells = new ArrayList<>();
        for (int i = 0; i < scripts.length; i++) {
            cells.add(new CellScript("cell " + i, scripts[i]));
        }
        return with.run(cells);
    }

    @Test
    void hostileScriptsAreRefusedWithAdvice() {
        RunReport report = runEach(session, HOSTILE);
        List<String> escaped = new ArrayList<>();
        for (int i = 0; i < HOSTILE.length; i++) {
            CellOutcome outcome = report.outcome("cell " + i);
            boolean refused =
                    outcome.state() == CellState.REFUSED && outcome.message().contains("may not use");
            boolean noJava = outcome.state() == CellState.FAILED
                    && outcome.span() != null
                    && outcome.elapsed().isZero();
            if (!refused && !noJava) {
                escaped.add(HOSTILE[i] + " -> " + outcome);
            }
        }
        assertEquals(List.of(), escaped);
    }

    @Test
    void clocksAreRefusedEvenWhenTrusted() {
        try (Session trusted = Session.open(SessionOptions.standard().withTrust(true))) {
            RunReport report = runEach(trusted, CLOCKS);
            for (int i = 0; i < CLOCKS.length; i++) {
                CellOutcome outcome = report.outcome("cell " + i);
                assertEquals(CellState.REFUSED, outcome.state(), CLOCKS[i]);
                assertTrue(outcome.message().contains("make a dial"), outcome.message());
            }
            assertEquals(
                    "0.0",
                    SessionTest.text(trusted.run(SessionTest.cells("new java.io.File(\"/no\").length() * 1.0")), "a"));
        }
    }

    @Test
    void ordinaryScriptsAreNotRefused() {
        RunReport report = runEach(session, ORDINARY);
        List<String> refused = new ArrayList<>();
        for (int i = 0; i < ORDINARY.length; i++) {
            CellOutcome outcome = report.outcome("cell " + i);
            boolean onPurpose =
                    ORDINARY[i].contains("on purpose") && outcome.message().equals("on purpose");
            if (outcome.state() != CellState.FRESH && !onPurpose) {
                refused.add(ORDINARY[i] + " -> " + outcome);
            }
        }
        assertEquals(List.of(), refused);
    }

    @Test
    void refusalNamesLineMemberAndWhatToUseInstead() {
        CellOutcome outcome = session.run(SessionTest.cells("var x = 1;\nvar y = Thread.activeCount();"))
                .outcome("a");
        assertEquals(CellState.REFUSED, outcome.state());
        assertTrue(
                outcome.message().startsWith("line 2: a cell may not use java.lang.Thread.activeCount; "),
                outcome::message);
        assertEquals(2, java.util.Objects.requireNonNull(outcome.span()).line());
    }

    @Test
    void aRefusedClassIsToldOnceForAllItsMembers() {
        CellOutcome outcome = session.run(
                        SessionTest.cells("var t = new Thread(() -> { });\nt.start();\nSystem.exit(t.getPriority());"))
                .outcome("a");
        assertEquals(CellState.REFUSED, outcome.state());
        List<String> lines = outcome.message().lines().toList();
        assertEquals(
                List.of("line 1", "line 2", "line 3"),
                lines.stream().map(line -> line.substring(0, 6)).distinct().toList(),
                outcome.message());
        assertEquals(1, lines.stream().filter(line -> line.startsWith("line 1")).count(), outcome.message());
    }
}
