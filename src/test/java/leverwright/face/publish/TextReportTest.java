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
import org.junit.jupiter.api.Test;

class TextReportTest {
    private static final TextReport REPORT = TextReport.standard();

    /** The stored report was read by eye. */
    @Test
    void aReportIsAsStored() throws IOException {
        assertEquals(stored("report.txt"), whole(REPORT));
        assertEquals(stored("report-ascii-60.txt"), whole(new TextReport(60, true, false)));
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
            whole(new TextReport(width, false, false)).lines().forEach(line -> {
                boolean working = line.startsWith("    ") && line.contains(" = ");
                assertTrue(working || PlainText.columns(line) <= width, width + ": " + line);
            });
        }
    }

    @Test
    void asciiIsAscii() {
        assertTrue(whole(new TextReport(80, true, false)).chars().allMatch(letter -> letter < 127));
        assertTrue(new TextReport(80, true, false)
                .results(HostileWorkbook.results(Hostile.all()))
                .chars()
                .allMatch(letter -> letter == '\n' || (letter >= ' ' && letter < 127)));
    }

    @Test
    void nothingInAResultSteersTheTerminal() {
        for (String text : Hostile.TEXTS) {
            String report = REPORT.results(HostileWorkbook.results(text))
                    + REPORT.cell(text, CellState.FAILED, text, List.of())
                    + REPORT.heading(text, text, text);
            assertTrue(
                    report.chars()
                            .allMatch(letter -> letter == '\n' || (letter >= ' ' && letter < 127) || letter >= 160),
                    text);
            assertFalse(report.contains("\u202e"));
        }
    }

    @Test
    void titlesAreBoldOnlyWhenAsked() {
        assertFalse(whole(REPORT).contains("\u001b"));
        String bold = new TextReport(100, false, true).heading("Title", "", "");
        assertEquals("\u001b[1mTitle\u001b[0m\n", bold);
    }

    @Test
    void linesTooShortToReadAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new TextReport(39, false, false));
    }
}
