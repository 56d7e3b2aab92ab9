package leverwright.workbook.session;

import static leverwright.workbook.session.SessionTest.cells;
import static leverwright.workbook.session.SessionTest.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import leverwright.run.gate.AllowList;
import leverwright.run.gate.Gate;
import leverwright.run.result.CellState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cells that were compiled before: the same results without the compiler, and never those of another script. */
class CompiledCellsTest {

    private static final List<CellScript> SCRIPTS = cells(
            "import java.util.stream.IntStream;\nrecord Bar(double mass) {}\nvar bar = new Bar(20);",
            "double load(int plates) { return bar.mass() + IntStream.range(0, plates).count() * 2.5; }",
            "var all = List.of(load(2), load(4));\nint most = switch (all.size()) { case 2 -> 1; default -> 0; };\nall.get(most)",
            "System.out.println(\"heavy\");\nload(8)");

    @TempDir
    Path folder;

    private CompiledCells kept() {
        return CompiledCells.in(folder, "this program");
    }

    private Session open() {
        return Session.open(SessionOptions.standard(), kept());
    }

    private RunReport compiled(List<CellScript> scripts) {
        try (Session session = open()) {
            RunReport report = session.run(scripts);
            assertTrue(session.isCompilerAwake());
            session.keepCompiled();
            return report;
        }
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.toList();
        }
    }

    private static void assertSame(RunReport one, RunReport other) {
        for (int i = 0; i < one.outcomes().size(); i++) {
            assertTrue(Outcomes.same(one.outcomes().get(i), other.outcomes().get(i)), "cell " + i);
        }
    }

    @Test
    void whatWasCompiledBeforeGivesTheSameBitsWithoutTheCompiler() throws IOException {
        RunReport first = compiled(SCRIPTS);
        assertEquals(1, files().size());
        try (Session session = open()) {
            RunReport again = session.run(SCRIPTS);
            assertFalse(session.isCompilerAwake());
            assertSame(first, again);
            assertEquals(Set.of("a"), session.readsFrom("b"));
            for (int left = SCRIPTS.size(); left > 0; left--) {
                assertEquals(Session.KeptCheck.MORE_LEFT, session.checkKept());
            }
            assertEquals(Session.KeptCheck.NONE_LEFT, session.checkKept());
            assertTrue(session.isCompilerAwake());
        }
        assertEquals(1, files().size());
    }

    @Test
    void scriptIsEditedAndSpoilsNothingWhereTheOthersWereCompiledBefore() {
        compiled(SCRIPTS);
        try (Session session = open()) {
            session.run(SCRIPTS);
            assertEquals("70.0", text(session.edit("d", "2 * load(6)"), "d"));
            assertEquals("35.0", text(session.edit("a", "record Bar(double mass) {}\nvar bar = new Bar(25);"), "c"));
            CellOutcome wrong = session.edit("b", "double load(int plates) { return bar.weight(); }")
                    .outcome("b");
            assertEquals(CellState.FAILED, wrong.state());
            assertTrue(wrong.message().contains("weight"), wrong::message);
        }
    }

    @Test
    void anotherTextAnotherProgramAndATrustingReaderCompile() {
        compiled(SCRIPTS);
        List<CellScript> other = cells("2 + 3");
        assertEquals(Map.of(), kept().find(other));
        assertEquals(Map.of(), CompiledCells.in(folder, "another program").find(SCRIPTS));
        assertEquals(Map.of(), CompiledCells.none().find(SCRIPTS));
        assertEquals(SCRIPTS.size(), kept().find(SCRIPTS).size());
        try (Session session = Session.open(SessionOptions.standard().withTrust(true), kept())) {
            session.run(SCRIPTS);
            assertTrue(session.isCompilerAwake());
        }
    }

    @Test
    void damagedFileIsPassedOver() throws IOException {
        RunReport first = compiled(SCRIPTS);
        Path file = files().get(0);
        byte[] whole = Files.readAllBytes(file);
        for (int at : new int[] {0, 30, whole.length / 2, whole.length - 1}) {
            byte[] damaged = whole.clone();
            damaged[at] ^= 4;
            Files.write(file, damaged);
            assertEquals(Map.of(), kept().find(SCRIPTS), "byte " + at);
        }
        Files.write(file, new byte[3]);
        assertSame(first, compiled(SCRIPTS));
        assertEquals(SCRIPTS.size(), kept().find(SCRIPTS).size(), "written anew");
    }

    @Test
    void fileUnderTheNameOfAnotherWorkbookIsPassedOver() throws IOException {
        compiled(SCRIPTS);
        byte[] mine = Files.readAllBytes(files().get(0));
        List<CellScript> other = cells("2 + 3", "4");
        compiled(other);
        for (Path file : files()) {
            Files.write(file, mine);
        }
        assertEquals(Map.of(), kept().find(other));
    }

    /** Compiles a script as a trusting reader would and keeps its classes as those of another one. */
    private void keepAsThoseOf(CellScript script, CellScript other) {
        Compilers compilers = new Compilers();
        try (ShellLater shell = new ShellLater(compilers)) {
            CellCompiler compiler = new CellCompiler(compilers, shell::get, new Gate(AllowList.standard(), true));
            ParsedCell parsed = CellParser.parse(other, Sheet.className(other.id()), compilers);
            CompiledCell foreign = compiler.compile(parsed, CellImports.STANDARD, Set.of(), List.of())
                    .compiled();
            assertNotEquals(null, foreign);
            ParsedCell own = CellParser.parse(script, Sheet.className(script.id()), compilers);
            String key = script.text() + "\n" + CellImports.STANDARD;
            kept().keep(
                            List.of(script),
                            List.of(new KeptCell(
                                    own, key, foreign.raw(), foreign.immutable(), foreign.shape(), List.of())));
        }
    }

    @Test
    void classesOfAnotherScriptAreFoundOutAndGivenUp() throws IOException {
        CellScript script = cells("2 + 3").get(0);
        keepAsThoseOf(script, cells("2 + 4").get(0));
        try (Session session = open()) {
            session.run(List.of(script));
            assertEquals(Session.KeptCheck.DIFFERED, session.checkKept());
        }
        assertEquals(List.of(), files());
        assertEquals("5", text(compiled(List.of(script)), "a"));
    }

    @Test
    void keptClassesPassTheGateLikeAnyOthers() {
        CellScript harmless = cells("2 + 3").get(0);
        keepAsThoseOf(harmless, cells("Runtime.getRuntime().exit(4); 2 + 3").get(0));
        try (Session session = open()) {
            assertEquals("5", text(session.run(List.of(harmless)), "a"), "compiled instead");
            assertTrue(session.isCompilerAwake());
        }
    }

    @Test
    void anyOtherBuildHasAnotherDigest() throws IOException {
        String one = ProgramDigest.of(jar("one"));
        assertEquals(64, one.length());
        assertNotEquals(one, ProgramDigest.of(jar("two")));
    }

    private Path jar(String content) throws IOException {
        Path jar = folder.resolve(content + ".zip");
        byte[] bytes = content.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        CRC32 sum = new CRC32();
        sum.update(bytes);
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(jar))) {
            ZipEntry entry = new ZipEntry("A.class");
            entry.setMethod(ZipEntry.STORED);
            entry.setTime(0);
            entry.setSize(bytes.length);
            entry.setCrc(sum.getValue());
            out.putNextEntry(entry);
            out.write(bytes);
            out.closeEntry();
        }
        return jar;
    }
}
