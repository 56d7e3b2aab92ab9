package leverwright.face.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.face.SampleResults;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.run.result.Quantity;
import leverwright.run.result.TableResult;
import org.junit.jupiter.api.Test;

/** The form of the fields: RFC 4180 (2005), section 2, rules 5 to 7 (from memory). */
class CsvTest {

    @Test
    void aTableSaysUnitsInItsHeadingsAndSidesWhereTheyDiffer() {
        List<String> lines = Csv.of(SampleResults.table(), ',').lines().toList();
        assertEquals("joint,extension moment (N·m),load above (N),load arm (cm),counts", lines.get(0));
        assertEquals("hip,123.04,962.4,25.56,per side", lines.get(1));
        assertTrue(lines.get(2).matches("knee,-23\\.59,1102\\.1,-4\\.2(8|79+\\d),per side"), lines.get(2));
        assertEquals("low back,178.2,863.9,18.5,total", lines.get(4));
    }

    @Test
    void everyTableAndChartEndsWithTheCaution() {
        assertTrue(Csv.of(SampleResults.table(), '\t').endsWith("\n" + Cautions.SHORT + "\n"));
        assertTrue(Csv.of(SampleResults.curves(5, true).curves(), ',').endsWith("\n\"" + Cautions.SHORT + "\"\n"));
    }

    @Test
    void curvesHaveOneLineASettingWithTheirBands() {
        List<String> lines =
                Csv.of(SampleResults.curves(3, true).curves(), ',').lines().toList();
        assertEquals(5, lines.size());
        String first = "\"hip extension moment, per side (N·m)\"";
        assertEquals(
                "torso lean (°)," + first + ",\"hip extension moment, per side (N·m), low\","
                        + "\"hip extension moment, per side (N·m), high\",\"tilt rule (lean ÷ 90°), per side (N·m)\"",
                lines.get(0));
        assertTrue(lines.get(1).startsWith("10,"), lines.get(1));
    }

    @Test
    void aGapIsAnEmptyField() {
        List<String> lines =
                Csv.of(SampleResults.manyCurves().curves(), ',').lines().toList();
        assertEquals("", lines.get(61).split(",", -1)[2]);
    }

    @Test
    void whatASpreadsheetWouldComputeIsMadeHarmless() {
        TableResult table = new TableResult(
                "t",
                List.of("a \"name\"", "n"),
                List.of(
                        List.of(
                                new TableResult.TextEntry("=1+2"),
                                new TableResult.NumberEntry(Quantity.exact(-2, Unit.NEWTON), Sides.NOT_SIDED, null)),
                        List.of(
                                new TableResult.TextEntry("two\nlines, and a comma"),
                                new TableResult.NumberEntry(Quantity.exact(0.5, Unit.NEWTON), Sides.NOT_SIDED, null))),
                List.of());
        String text = Csv.of(table, ',');
        assertTrue(text.startsWith("\"a \"\"name\"\"\",n (N)\n'=1+2,-2\n\"two\nlines, and a comma\",0.5\n"), text);
    }
}
