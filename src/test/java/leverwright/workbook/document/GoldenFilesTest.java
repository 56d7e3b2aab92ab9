package leverwright.workbook.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Sketch;
import leverwright.run.result.CellState;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.FigureResult;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Quantity;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import leverwright.run.result.TextResult;
import leverwright.run.result.Verdict;
import org.junit.jupiter.api.Test;

/** Files of every version ever written, which every later version goes on reading. They are never changed. */
class GoldenFilesTest {

    private static final Path GOLDEN = Path.of("src/test/resources/workbook/golden");

    private static String text(String name) throws IOException {
        return Files.readString(GOLDEN.resolve(name));
    }

    private static Workbook read(String name) throws IOException {
        return WorkbookFormat.read(Files.readAllBytes(GOLDEN.resolve(name)));
    }

    private static Result result(Workbook workbook, String cell, int index) {
        return workbook.record().orElseThrow().cells().get(cell).results().get(index);
    }

    @Test
    void everyVersionUpToThePresentHasItsFiles() throws IOException {
        for (int version = 1; version <= WorkbookFormat.VERSION; version++) {
            try (Stream<Path> files = Files.list(GOLDEN.resolve("v" + version))) {
                for (Path file : files.toList()) {
                    WorkbookFormat.read(Files.readAllBytes(file));
                }
            }
        }
    }

    @Test
    void theFileOfVersionOneIsWrittenAgainByteByByte() throws IOException {
        String golden = text("v1/hinge.leverwright.json");
        Workbook workbook = read("v1/hinge.leverwright.json");
        assertEquals(golden, new String(WorkbookFormat.write(workbook), StandardCharsets.UTF_8));
        assertEquals(Seal.State.INTACT, Seal.state(workbook));
        assertTrue(workbook.recordIsCurrent());
    }

    @Test
    void recordedResultsWrittenFromTheirValuesGiveTheSameFile() throws IOException {
        Workbook workbook = read("v1/hinge.leverwright.json");
        workbook.record().orElseThrow().cells().forEach((id, cell) -> {
            assertEquals(cell, CellRecord.of(cell.state(), cell.problem(), cell.dials(), cell.results()), id);
        });
    }

    @Test
    void theSheetOfVersionOneReadsAsItWasWritten() throws IOException {
        Workbook workbook = read("v1/hinge.leverwright.json");
        assertEquals("The torso leans", workbook.title());
        assertEquals("Larkmere Boat Club", workbook.author());
        assertEquals(
                List.of("n1", "c1", "c2", "c3", "c4", "c5", "c6"),
                workbook.sheet().stream().map(Cell::id).toList());
        assertEquals(3, workbook.sheet().get(0).lines().size());
        assertEquals("Ines and her hinge", workbook.scripts().get(0).title());
        assertEquals("45 ± 5 deg", workbook.dials().get("Torso lean"));
        WorkbookRecord record = workbook.record().orElseThrow();
        assertEquals("17.0.15", record.java());
        assertEquals(20251125, record.seed());
        assertEquals(CellState.FAILED, record.cells().get("c5").state());
        assertEquals("not run: c5 failed", record.cells().get("c6").problem());
        assertEquals(
                0x1.921fb54442d18p-1,
                record.cells().get("c1").dials().get(0).setting().value());
    }

    @Test
    void theNumbersOfVersionOneHaveTheBitsTheyWereWrittenWith() throws IOException {
        Workbook workbook = read("v1/hinge.leverwright.json");
        Quantity moment = ((NumberResult) result(workbook, "c1", 1)).quantity();
        assertEquals(0x405EC28F5C28F5C3L, Double.doubleToRawLongBits(moment.value()));
        Quantity bits = ((NumberResult) result(workbook, "c2", 1)).quantity();
        assertEquals(0x1p-44, bits.value());
        assertEquals(1L, Double.doubleToRawLongBits(bits.low()));
        assertEquals(0x3FD3333333333334L, Double.doubleToRawLongBits(bits.high()));
    }

    @Test
    void everyKindOfResultOfVersionOneIsRead() throws IOException {
        Workbook workbook = read("v1/hinge.leverwright.json");
        FigureResult figure = (FigureResult) result(workbook, "c1", 0);
        assertEquals(11, figure.sketch().shapes().size());
        assertEquals(
                new Sketch.JointMark("hip", new Sketch.Point(-0.3, 0.85)),
                figure.sketch().shapes().get(3));
        TableResult table = (TableResult) result(workbook, "c2", 0);
        assertEquals(
                -23.59,
                ((TableResult.NumberEntry) table.rows().get(1).get(1))
                        .quantity()
                        .value());
        Curves curves = ((CurvesResult) result(workbook, "c3", 0)).curves();
        assertEquals(123.04, curves.curves().get(0).values().get(1));
        assertNull(curves.curves().get(0).values().get(2));
        assertEquals(List.of(1.5, 2.5, 3.5), curves.curves().get(1).high());
        assertEquals("3 points\n\"done\"", ((TextResult) result(workbook, "c3", 1)).text());
        ClaimResult claim = (ClaimResult) result(workbook, "c4", 0);
        assertEquals(Verdict.DOES_NOT_HOLD, claim.verdict());
        assertTrue(claim.forReader());
        assertNull(((ClaimResult) result(workbook, "c4", 1)).computed());
    }

    @Test
    void aFileWrittenByHandIsReadAndLaidOutWithItsUnknownKeys() throws IOException {
        Workbook workbook = read("v1/written-by-hand.leverwright.json");
        assertEquals(
                List.of("Prose with a tab\tescaped and a letter escaped: café"),
                workbook.sheet().get(0).lines());
        String written = new String(WorkbookFormat.write(workbook), StandardCharsets.UTF_8);
        assertTrue(written.contains("\"folded\": true") && written.contains("\"shelf\": {"), written);
        assertEquals(workbook, WorkbookFormat.read(WorkbookFormat.write(workbook)));
    }
}
