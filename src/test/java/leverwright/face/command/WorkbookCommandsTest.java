package leverwright.face.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Seal;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkbookCommandsTest {

    private static final Path DEMO = Path.of("workbooks", "the-torso-leans.leverwright.json");

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(Object... arguments) {
        String[] words = List.of(arguments).stream().map(Object::toString).toArray(String[]::new);
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
    }

    private Path workbook(String... scripts) throws IOException {
        Workbook workbook = Workbook.empty("Larkmere notes");
        for (int i = 0; i < scripts.length; i++) {
            workbook = workbook.withAdded(i, new ScriptCell("s" + (i + 1), scripts[i]));
        }
        Path file = Files.createTempFile(folder, "notes", ".leverwright.json");
        Files.delete(file);
        WorkbookFiles.onDisk().saveNew(file, workbook);
        return file;
    }

    @Test
    void everyShippedWorkbookGivesItsRecordedResultsAgain() throws IOException {
        try (var shelf = Files.list(Path.of("workbooks"))) {
            List<Path> files = shelf.sorted().toList();
            assertFalse(files.isEmpty());
            assertEquals(0, run(with("recheck", files)), out.toString() + err);
            for (Path file : files) {
                assertTrue(out.toString().contains(file + ": all "), out.toString());
            }
        }
    }

    private static Object[] with(String command, List<Path> files) {
        Object[] arguments = new Object[files.size() + 1];
        arguments[0] = command;
        for (int i = 0; i < files.size(); i++) {
            arguments[i + 1] = files.get(i);
        }
        return arguments;
    }

    @Test
    void aDialSetOnTheCommandLineMovesTheNumbers() {
        assertEquals(0, run("run", DEMO, "--set", "Torso lean=45 deg"));
        String before = hipLine();
        assertEquals(0, run("run", DEMO, "--set", "Torso lean=60 deg"));
        assertTrue(out.toString().contains("dial Torso lean at 60°"), out.toString());
        assertFalse(before.equals(hipLine()), before);
    }

    private String hipLine() {
        return out.toString()
                .lines()
                .filter(line -> line.startsWith("hip  "))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aDialOutsideItsRangeFailsItsCellInWords() {
        assertEquals(1, run("run", DEMO, "--set", "Torso lean=95 deg"));
        assertTrue(out.toString().contains("goes from 10° to 80°, but it is set to 95°"), out.toString());
        assertFalse(out.toString().contains("at leverwright."), "a stack trace");
    }

    @Test
    void aDialThatNoCellDeclaresIsBadUsage() {
        assertEquals(2, run("run", DEMO, "--set", "Torso=45 deg"));
        assertEquals(
                "leverwright: no cell declares a dial \"Torso\"; this workbook has Torso lean, Bar",
                err.toString()
                        .lines()
                        .filter(line -> !line.startsWith("leverwright: still computing"))
                        .reduce("", String::concat));
    }

    @Test
    void aDialThatNoCellCanDeclareIsToldBeforeAnythingRuns() throws IOException {
        Path file = workbook("1 / 0", "dial(\"Bar\", kg(60)).from(kg(20)).to(kg(90))");
        assertEquals(2, run("run", file, "--set", "Baar=45 kg"));
        assertEquals("", out.toString());
        assertTrue(err.toString().contains("no cell declares a dial \"Baar\"; this workbook has Bar"), err.toString());
        assertEquals(2, run("publish", file, "--to", folder.resolve("page.html"), "--set", "Baar=45 kg"));
        assertFalse(Files.exists(folder.resolve("page.html")));
        assertEquals(1, run("run", file, "--set", "Bar=45 kg"));
        assertTrue(out.toString().contains("dial Bar at 45 kg"), out.toString());
    }

    @Test
    void aSettingInTheFileThatReachesNoDialIsTold() throws IOException {
        Path file = workbook("dial(\"Bar\", kg(60)).from(kg(20)).to(kg(90))");
        Workbook set = WorkbookFiles.onDisk()
                .read(file)
                .workbook()
                .withDial("Baar", "45 kg")
                .withDial("Bar", "50 kg");
        WorkbookFiles.onDisk().replace(file, set);
        assertEquals(0, run("run", file));
        assertEquals(
                List.of("leverwright: the workbook sets a dial \"Baar\" that no cell declares"),
                err.toString()
                        .lines()
                        .filter(line -> !line.contains("still computing"))
                        .toList());
    }

    @Test
    void aDialWhoseNameAScriptMakesIsFoundByRunning() throws IOException {
        Path file = workbook("dial(\"Bar of \" + \"Ines\", kg(60)).from(kg(20)).to(kg(90))");
        assertEquals(0, run("run", file, "--set", "Bar of Ines=45 kg"));
        assertTrue(out.toString().contains("dial Bar of Ines at 45 kg"), out.toString());
        assertEquals(2, run("run", file, "--set", "Bar of Oda=45 kg"));
        assertTrue(err.toString().contains("this workbook has Bar of Ines"), err.toString());
    }

    @Test
    void aCellThatDoesNotEndIsStoppedAndNamed() throws IOException {
        Path file = workbook("1 + 1", "while (true) { }", "2 + 2");
        assertEquals(1, run("run", file, "--seconds", 1));
        assertTrue(out.toString().contains("stopped, since it took longer than 1 s"), out.toString());
        assertTrue(out.toString().contains("stopped before it ran"), out.toString());
        assertEquals(2, run("run", file, "--seconds", 0));
        assertEquals("", out.toString());
        assertTrue(err.toString().contains("--seconds is 0; allowed: 1 to 86400"), err.toString());
    }

    @Test
    void resultsBelowARefusedCellDoNotWaitForTheEnd() throws IOException {
        Path file = workbook("System.exit(0);", "var a = 1;\na", "while (true) { }");
        assertEquals(1, run("run", file, "--seconds", 1));
        String text = out.toString();
        assertTrue(text.indexOf("System.exit") < text.indexOf("s2 "), text);
        assertEquals(text.indexOf("System.exit"), text.lastIndexOf("System.exit"), "told twice: " + text);
    }

    @Test
    void aSettingWithoutAnEqualsSignIsBadUsageInPlainWords() {
        assertEquals(2, run("run", DEMO, "--set", "Torso lean"));
        assertTrue(err.toString().contains("--set \"Torso lean\" has no equals sign"), err.toString());
    }

    @Test
    void aMisspeltSettingIsNamedWithoutPackages() throws IOException {
        assertEquals(1, run("run", workbook("kneeExtension().knee(deg(60))")));
        String words = out.toString().replaceAll("\\s+", " ");
        assertTrue(words.contains("the method knee(Angle) is not known here in class KneeExtension"), words);
    }

    @Test
    void aChangedNumberIsFoundWhateverBecameOfTheSeal() throws IOException {
        Path file =
                workbook("show(\"mass\", kg(62))", "claim(\"about 60\", kg(62), equalTo(kg(60)).within(percent(5)))");
        assertEquals(2, run("recheck", file));
        assertTrue(err.toString().contains("there is no record to check"), err.toString());
        assertEquals(0, run("run", "--record", file), out.toString());
        assertEquals(0, run("recheck", file));
        assertTrue(out.toString().contains("sealed and intact"), out.toString());

        String honest = Files.readString(file);
        Files.writeString(file, honest.replaceAll("\"(value|low|high)\": 62\\b", "\"$1\": 62.000000000000007"));
        assertEquals(1, run("recheck", file));
        assertTrue(
                out.toString().contains("s1") && out.toString().contains("sealed, but changed since"), out.toString());
        WorkbookFiles.onDisk()
                .replace(file, Seal.seal(WorkbookFiles.onDisk().read(file).workbook()));
        assertEquals(1, run("recheck", file));
        assertTrue(out.toString().contains("2 differences in 2 results"), out.toString());
        assertTrue(out.toString().contains("sealed and intact"), out.toString());
    }

    @Test
    void aClaimThatDoesNotHoldFailsTheRecheckUnlessItIsMarked() throws IOException {
        Path file = workbook(
                "claim(\"wrong\", 2.0, equalTo(3).within(0.1))",
                "claim(\"open\", 2.0, equalTo(3).within(0.1)).forReader()");
        assertEquals(0, run("run", "--record", file));
        assertEquals(1, run("recheck", file));
        assertTrue(out.toString().contains("wrong"), out.toString());
        assertFalse(out.toString().contains("\"open\""), out.toString());
    }

    @Test
    void aRefusedCellIsNamedAndTrustLiftsTheRefusal() throws IOException {
        Path file = workbook("java.nio.file.Path.of(\"x\").toString()");
        assertEquals(1, run("run", file));
        assertTrue(out.toString().contains("refused"), out.toString());
        assertTrue(out.toString().contains("java.nio.file"), out.toString());
        assertEquals(0, run("run", "--trust", file), out.toString());
    }

    @Test
    void aFileThatCannotBeReadIsNeverWrittenOver() throws IOException {
        Path future = folder.resolve("future.leverwright.json");
        Files.writeString(future, "{\"format\":\"leverwright-workbook\",\"version\":99}");
        byte[] before = Files.readAllBytes(future);
        assertEquals(2, run("run", "--record", future));
        assertEquals(1, err.toString().strip().lines().count(), err.toString());
        assertTrue(err.toString().contains("99"), err.toString());
        assertArrayEquals(before, Files.readAllBytes(future));
        assertEquals(2, run("run", folder.resolve("nowhere.leverwright.json")));
        assertTrue(err.toString().contains("there is no such file"), err.toString());
    }

    @Test
    void thePageIsWrittenOnceAndNotOverAWorkbook() throws IOException {
        Path file = workbook("show(\"mass\", kg(62))");
        Path page = folder.resolve("page.html");
        assertEquals(0, run("publish", file, "--to", page));
        String html = Files.readString(page);
        assertTrue(html.contains("62"), html);
        assertTrue(html.contains("not medical or training advice"), html);
        assertEquals(2, run("publish", file, "--to", file));
        assertEquals(2, run("publish", file, "--to", folder));
        assertEquals(2, run("publish", file, "--to", folder.resolve("no/page.html")));
    }

    @Test
    void goodScenariosAreSolvedBesideABadOne() throws IOException {
        Path good = Path.of("src", "test", "resources", "scenario", "005-barbell.scenario.json");
        Path bad = folder.resolve("bad.scenario.json");
        Files.writeString(
                bad, "{\"format\":\"leverwright-scenario\",\"version\":1,\"kind\":\"linkage\",\"segmnts\":[]}");
        assertEquals(0, run("solve", good));
        String solution = out.toString();
        assertEquals(2, run("solve", bad, good));
        List<String> lines = out.toString().lines().toList();
        assertTrue(
                lines.get(0).startsWith("{\"format\":\"leverwright-solution\",\"version\":1,\"error\":"), lines.get(0));
        assertEquals(solution.strip(), lines.get(1));
        assertTrue(err.toString().contains("segmnts"), err.toString());
    }
}
