package leverwright.workbook.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import leverwright.run.result.CellState;
import leverwright.workbook.json.JsonObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class WorkbookTest {

    private final Workbook workbook = Workbook.empty("Hinge")
            .withAdded(0, new NoteCell("n1", "Guess first."))
            .withAdded(1, new ScriptCell("c1", "var a = 1;"))
            .withAdded(2, new ScriptCell("c2", "var b = a;"));

    private static String complaint(Executable action) {
        return assertThrows(IllegalArgumentException.class, action).getMessage();
    }

    private static List<String> ids(Workbook workbook) {
        return workbook.sheet().stream().map(Cell::id).toList();
    }

    @Test
    void cellsAreAddedMovedChangedAndDeletedInNewWorkbooks() {
        assertEquals(List.of("c2", "n1", "c1"), ids(workbook.withMoved("c2", 0)));
        assertEquals(List.of("c1", "c2", "n1"), ids(workbook.withMoved("n1", 2)));
        assertEquals(List.of("n1", "c2"), ids(workbook.withoutCell("c1")));
        assertEquals(List.of("n1", "x", "c1", "c2"), ids(workbook.withAdded(1, new NoteCell("x", ""))));
        Workbook changed = workbook.withText("c1", "var a = 1;\nvar z = 2;");
        assertEquals(
                List.of("var a = 1;", "var z = 2;"),
                changed.cell("c1").orElseThrow().lines());
        assertEquals("var a = 1;\nvar z = 2;", changed.cell("c1").orElseThrow().text());
        assertEquals(List.of("n1", "c1", "c2"), ids(workbook));
        assertEquals(
                List.of("c1", "c2"),
                workbook.scripts().stream().map(ScriptCell::id).toList());
    }

    @Test
    void aTitleSurvivesANewText() {
        Workbook titled = workbook.withCell(new ScriptCell("c1", "a").withTitle("Ines"));
        assertEquals("Ines", ((ScriptCell) titled.withText("c1", "b").cell("c1").orElseThrow()).title());
    }

    @Test
    void dialsAreSetAndGivenBackToTheirScript() {
        Workbook set = workbook.withDial("Torso lean", "45 deg").withDial("Bar", "50 kg");
        assertEquals(
                List.of("Torso lean", "Bar"),
                List.copyOf(set.withDial("Torso lean", "50 deg").dials().keySet()));
        assertEquals(Map.of("Bar", "50 kg"), set.withoutDial("Torso lean").dials());
    }

    @Test
    void newIdsAreFreeInTheSheetAndInTheRecord() {
        assertEquals("c4", workbook.newId());
        CellRecord cell = CellRecord.of(CellState.NOT_RUN, "", List.of(), List.of());
        WorkbookRecord record = WorkbookRecord.of(workbook, "0", "17", 1, Map.of("c4", cell));
        assertEquals("c5", workbook.withRecord(record).newId());
    }

    @Test
    void whatCannotBeIsRefusedInWords() {
        assertTrue(
                complaint(() -> workbook.withAdded(0, new NoteCell("c1", ""))).contains("two cells are called c1"));
        assertTrue(
                complaint(() -> workbook.withoutCell("c9")).contains("no cell called c9 in this workbook; its cells"));
        assertTrue(complaint(() -> workbook.withAdded(4, new NoteCell("x", ""))).contains("allowed are 0 to 3"));
        assertTrue(complaint(() -> workbook.withMoved("c1", 3)).contains("allowed are 0 to 2"));
        assertTrue(complaint(() -> workbook.withDial(" ", "1")).contains("a dial needs a name"));
        assertTrue(complaint(() -> new NoteCell("", "")).contains("a cell cannot be called \"\""));
        assertTrue(complaint(() -> new ScriptCell("c1", "a\nb", List.of(), JsonObject.EMPTY))
                .contains("has more than one line"));
        assertTrue(complaint(() -> CellRecord.of(CellState.RUNNING, "", List.of(), List.of()))
                .contains("a cell that is running cannot be recorded"));
        assertTrue(complaint(() -> WorkbookRecord.of(workbook, "", "", -1, Map.of()))
                .contains("a seed is a whole number"));
    }
}
