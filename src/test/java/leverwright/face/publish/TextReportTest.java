package leverwright.face.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import leverwright.face.Hostile;
import leverwright.face.HostileWorkbook;
import leverwright.face.SampleResults;
import leverwright.run.result.CellState;
import leverwright.run.result.NumberResult;
import org.junit.jupiter.api.Test;

class TextReportTest {
    /** The stored report was read by eye. */
    @Test
    void aReportIsAsStored() throws IOException {
        assertEquals(stored("report.txt"), whole(TextReport.standard()));
        assertEquals(stored("report-ascii-60.txt"), whole(new TextReport(60, true, false, true)));
    }

    static String whole(TextReport report) {
        return report.heading("The torso leans", "Larkmere Boat Club", "Who carries the bar?")
                + report.cell("the lifter", CellState.FRESH, "", SampleResults.all())
                + report.cell("c6", CellState.FAILED, "Line 2: a number was divided by zero.\nSee above.", List.of())
                + report.result(SampleResults.manyCurves())
                + report.caution();
    }

    private static String stored(String name) throws IOException {
        try (InputStream file = TextReportTest.class.getResourceAsStream(name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void linesKeepToTheWidthSaveHandCalculations() {
        for (int width : List.of(40, 60, 100, 160)) {
            whole(new TextReport(width, false, false, true)).lines().forEach(line -> {
                boolean working = line.startsWith("    ") && line.contains(" = ");
                assertTrue(working || PlainText.columns(line) <= width, width + ": " + line);
            });
        }
    }

    @Test
    void asciiIsAscii() {
        assertTrue(whole(new TextReport(80, true, false, true)).chars().allMatch(letter -> letter < 127));
        assertTrue(new TextReport(80, true, false, true)
                .results(HostileWorkbook.results(Hostile.all()))
                .chars()
                .allMatch(letter -> letter == '\n' || (letter >= ' ' && letter < 127)));
    }

    @Test
    void nothingInAResultSteersTheTerminal() {
        for (String text : Hostile.TEXTS) {
            String report = TextReport.standard().results(HostileWorkbook.results(text))
                    + TextReport.standard().cell(text, CellState.FAILED, text, List.of())
                    + TextReport.standard().heading(text, text, text);
            assertTrue(
                    report.chars()
                            .allMatch(letter -> letter == '\n' || (letter >= ' ' && letter < 127) || letter >= 160),
                    text);
            assertFalse(report.contains("\u202e"));
        }
    }

    @Test
    void aNoteIsSaidOnceInAReport() {
        TextReport report = TextReport.standard();
        String first = report.result(SampleResults.number());
        assertTrue(first.endsWith("note 1: Ankle's place over the foot: from memory.\n"), first);
        String again = report.result(SampleResults.number());
        assertTrue(again.endsWith("as above: note 1\n"), again);
    }

    @Test
    void handCalculationsArePrintedOnlyWhenTheCellOrTheReaderAsks() {
        TextReport few = TextReport.standard();
        assertTrue(few.result(SampleResults.number()).contains("M_hip = "));
        NumberResult asked = SampleResults.number();
        NumberResult bare = new NumberResult("", asked.quantity(), asked.sides(), asked.working(), false, List.of());
        assertEquals("123.0 N·m per side (118.3 to 127.1)\n", few.result(bare));
        assertTrue(new TextReport(100, false, false, true).result(bare).contains("M_hip = "));
        assertFalse(few.result(SampleResults.table()).contains("M_hip = "));
        assertTrue(new TextReport(100, false, false, true)
                .result(SampleResults.table())
                .contains("M_hip = "));
    }

    @Test
    void titlesAreBoldOnlyWhenAsked() {
        assertFalse(whole(TextReport.standard()).contains("\u001b"));
        String bold = new TextReport(100, false, true, true).heading("Title", "", "");
        assertEquals("\u001b[1mTitle\u001b[0m\n", bold);
    }

    @Test
    void linesTooShortToReadAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new TextReport(39, false, false, true));
    }
}
