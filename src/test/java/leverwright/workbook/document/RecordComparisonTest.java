package leverwright.workbook.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.CellState;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.MapResult;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Quantity;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import leverwright.run.result.TextResult;
import leverwright.run.result.Verdict;
import org.junit.jupiter.api.Test;

class RecordComparisonTest {

    private static final Workbook SHEET = Workbook.empty("Hinge")
            .withAdded(0, new ScriptCell("c1", "").withTitle("Moments"))
            .withAdded(1, new ScriptCell("c2", ""));

    private static CellRecord fresh(Result... results) {
        return CellRecord.of(CellState.FRESH, "", List.of(), List.of(results));
    }

    private static WorkbookRecord record(CellRecord first, CellRecord second) {
        Map<String, CellRecord> cells = new LinkedHashMap<>();
        cells.put("c1", first);
        cells.put("c2", second);
        return WorkbookRecord.of(SHEET, "0.1.0", "17", 1, cells);
    }

    private static RecordComparison compare(CellRecord recorded, CellRecord recomputed) {
        return RecordComparison.compare(SHEET.withRecord(record(recorded, fresh())), record(recomputed, fresh()));
    }

    private static List<String> differences(Result recorded, Result recomputed) {
        RecordComparison comparison = compare(fresh(recorded), fresh(recomputed));
        assertEquals(List.of(), compare(fresh(recorded), fresh(recorded)).differences());
        assertEquals(1, comparison.compared());
        assertFalse(comparison.passes());
        return comparison.differences();
    }

    private static NumberResult moment(double value) {
        return new NumberResult(
                "hip moment", Quantity.exact(value, Unit.NEWTON_METRE), Sides.PER_SIDE, null, false, List.of());
    }

    private static ClaimResult claim(Verdict verdict, boolean forReader, boolean doubted) {
        return new ClaimResult(
                "The hip carries 120 N·m",
                Quantity.exact(123.5, Unit.NEWTON_METRE),
                "hip moment",
                Sides.PER_SIDE,
                "equals 120 N·m within 1 %",
                verdict,
                "123.5 N·m",
                forReader,
                doubted,
                "",
                List.of(),
                null,
                List.of());
    }

    private static CurvesResult curves(Double... values) {
        Curves.Axis axis = new Curves.Axis("Torso lean", Unit.DEGREE, List.of(0.25, 0.5, 0.75));
        Curves.Curve curve = Curves.Curve.of("hip", Unit.NEWTON_METRE, Sides.PER_SIDE, Arrays.asList(values));
        return new CurvesResult("sweep", new Curves("sweep", axis, List.of(curve), 0.5, List.of()), List.of());
    }

    @Test
    void theSameRecordPasses() {
        RandomWorkbooks random = new RandomWorkbooks(20251127);
        CellRecord one = random.cellRecord();
        WorkbookRecord record = record(one, fresh(moment(1)));
        RecordComparison comparison = RecordComparison.compare(SHEET.withRecord(record), record);
        assertEquals(List.of(), comparison.differences());
        assertEquals(one.results().size() + 1, comparison.compared());
        assertEquals(Seal.State.NONE, comparison.seal());
    }

    @Test
    void oneBitOfANumberIsADifference() {
        assertEquals(
                List.of(
                        "cell c1 (Moments), result 1 \"hip moment\": recorded 120 N·m, recomputed 120.00000000000001 N·m"),
                differences(moment(120), moment(Math.nextUp(120.0))));
    }

    @Test
    void aBandAUnitAndARemarkAreDifferencesToo() {
        Quantity wide = new Quantity(120, 119, 121, Unit.NEWTON_METRE);
        NumberResult banded = new NumberResult("hip moment", wide, Sides.PER_SIDE, null, false, List.of());
        assertEquals(
                List.of(
                        "cell c1 (Moments), result 1 \"hip moment\": recorded band 120 N·m to 120 N·m, recomputed band 119"
                                + " N·m to 121 N·m"),
                differences(moment(120), banded));
        NumberResult noted = new NumberResult("hip moment", wide, Sides.TOTAL, null, false, List.of("a caution"));
        assertEquals(
                List.of("cell c1 (Moments), result 1 \"hip moment\": sides: recorded \"per side\", recomputed \"total\""
                        + " (and 1 more places)"),
                differences(banded, noted));
    }

    @Test
    void aCurveTellsItsFirstDifferingPointAndTheirCount() {
        assertEquals(
                List.of(
                        "cell c1 (Moments), result 1 \"sweep\": curve \"hip\": 2 of 3 points differ, first at Torso lean 0.5"
                                + " rad: recorded 2 N·m, recomputed a gap"),
                differences(curves(1.0, 2.0, 3.0), curves(1.0, null, Math.nextDown(3.0))));
    }

    private static MapResult map(Double... values) {
        Curves.Axis across = new Curves.Axis("Torso lean", Unit.DEGREE, List.of(0.25, 0.5));
        Curves.Axis up = new Curves.Axis("Bar", Unit.KILOGRAM, List.of(20.0, 40.0));
        ContourMap map = new ContourMap(
                "map",
                "hip",
                Unit.NEWTON_METRE,
                Sides.PER_SIDE,
                across,
                up,
                Arrays.asList(values),
                List.of(),
                null,
                null,
                List.of());
        return new MapResult("map", map, List.of());
    }

    @Test
    void aMapTellsItsFirstDifferingNodeAndTheirCount() {
        assertEquals(
                List.of(
                        "cell c1 (Moments), result 1 \"map\": map of \"hip\": 2 of 4 nodes differ, first at Torso lean 0.5 rad,"
                                + " Bar 20 kg: recorded 2 N·m, recomputed a gap"),
                differences(map(1.0, 2.0, 3.0, 4.0), map(1.0, null, 3.0, Math.nextDown(4.0))));
    }

    @Test
    void aTableTellsEveryDifferingEntry() {
        List<String> headings = List.of("joint", "moment");
        List<TableResult.Entry> hip = List.of(new TableResult.TextEntry("hip"), entry(1));
        List<TableResult.Entry> knee = List.of(new TableResult.TextEntry("knee"), entry(2));
        List<TableResult.Entry> ankle = List.of(new TableResult.TextEntry("ankle"), entry(3));
        TableResult recorded = new TableResult("moments", headings, List.of(hip, knee), List.of());
        assertEquals(
                List.of(
                        "cell c1 (Moments), result 1 \"moments\": row 2, \"joint\": recorded \"knee\", recomputed \"ankle\"",
                        "cell c1 (Moments), result 1 \"moments\": row 2, \"moment\": recorded 2 N·m, recomputed 3 N·m"),
                differences(recorded, new TableResult("moments", headings, List.of(hip, ankle), List.of())));
        assertEquals(
                List.of(
                        "cell c1 (Moments), result 1 \"moments\": recorded 2 rows of [joint, moment], recomputed 1 rows of"
                                + " [joint, moment]"),
                differences(recorded, new TableResult("moments", headings, List.of(hip), List.of())));
    }

    private static TableResult.NumberEntry entry(double value) {
        return new TableResult.NumberEntry(Quantity.exact(value, Unit.NEWTON_METRE), Sides.PER_SIDE, null);
    }

    @Test
    void textTellsItsFirstDifferingLine() {
        assertEquals(
                List.of("cell c1 (Moments), result 1: text line 2: recorded \"b\", recomputed \"c\""),
                differences(TextResult.of("a\nb\nx"), TextResult.of("a\nc\ny")));
        assertEquals(
                List.of("cell c1 (Moments), result 1: text line 2: recorded no such line, recomputed \"\""),
                differences(TextResult.of("a"), TextResult.of("a\n")));
    }

    @Test
    void aFigureTellsWhereItsFirstDifferenceLies() {
        RandomWorkbooks one = new RandomWorkbooks(1);
        List<String> lines = differences(one.figure(), one.figure());
        assertEquals(1, lines.size());
        assertTrue(lines.get(0).matches("cell c1 \\(Moments\\), result 1.*: recorded .*, recomputed .*more places\\)"));
    }

    @Test
    void anotherKindOfResultIsADifference() {
        assertEquals(1, differences(moment(1), TextResult.of("1")).size());
    }

    @Test
    void resultsAndCellsThatAreMissingOrNewAreNamed() {
        assertEquals(
                List.of("cell c1 (Moments), result 1 \"hip moment\": recorded, but not computed now"),
                compare(fresh(moment(1)), fresh()).differences());
        assertEquals(
                List.of("cell c1 (Moments), result 2 \"hip moment\": computed now, but not in the record"),
                compare(fresh(moment(1)), fresh(moment(1), moment(2))).differences());
        WorkbookRecord lacking = WorkbookRecord.of(SHEET, "0", "17", 1, Map.of("c1", fresh()));
        assertEquals(
                List.of("cell c2: recorded, but not computed now"),
                RecordComparison.compare(SHEET.withRecord(record(fresh(), fresh())), lacking)
                        .differences());
        assertEquals(
                List.of("cell c2: computed now, but not in the record"),
                RecordComparison.compare(SHEET.withRecord(lacking), record(fresh(), fresh()))
                        .differences());
    }

    @Test
    void anotherStateOrErrorIsADifference() {
        CellRecord failed = CellRecord.of(CellState.FAILED, "line 1: no such knob\nat length", List.of(), List.of());
        CellRecord other = CellRecord.of(CellState.FAILED, "line 2: no such knob", List.of(), List.of());
        assertEquals(
                List.of("cell c1 (Moments): recorded fresh, recomputed failed (line 1: no such knob)"),
                compare(fresh(), failed).differences());
        assertEquals(
                List.of(
                        "cell c1 (Moments): recorded failed (line 1: no such knob), recomputed failed (line 2: no such knob)"),
                compare(failed, other).differences());
        assertTrue(compare(failed, failed).passes());
    }

    @Test
    void dialsAndTheirSettingsAreCompared() {
        DialDeclared dial = dial(0.5);
        CellRecord one = CellRecord.of(CellState.FRESH, "", List.of(dial), List.of());
        CellRecord two = CellRecord.of(CellState.FRESH, "", List.of(dial(0.75)), List.of());
        assertEquals(
                List.of("cell c1 (Moments), dial \"Torso lean\", setting.value: recorded 0.5, recomputed 0.75"),
                compare(one, two).differences());
        assertEquals(
                List.of("cell c1 (Moments), dial \"Torso lean\": recorded, but not computed now"),
                compare(one, fresh()).differences());
        WorkbookRecord turned = new WorkbookRecord(
                "0",
                "17",
                1,
                "",
                Map.of("Torso lean", "50 deg"),
                record(fresh(), fresh()).cells(),
                SHEET.unknown());
        assertEquals(
                List.of("dial \"Torso lean\": recorded with the script's own setting, recomputed with 50 deg"),
                RecordComparison.compare(SHEET.withRecord(record(fresh(), fresh())), turned)
                        .differences());
    }

    private static DialDeclared dial(double value) {
        Quantity standard = Quantity.exact(0.5, Unit.DEGREE);
        return new DialDeclared("Torso lean", new Quantity(value, 0.5, 0.75, Unit.DEGREE), standard, 0, 1, 0.1);
    }

    @Test
    void aClaimThatDoesNotHoldFailsUnlessOnlyItsRecordedVerdictCounts() {
        RecordComparison plain = compare(
                fresh(claim(Verdict.DOES_NOT_HOLD, false, false)), fresh(claim(Verdict.DOES_NOT_HOLD, false, false)));
        assertEquals(List.of(), plain.differences());
        assertEquals(
                List.of("cell c1 (Moments), claim \"The hip carries 120 N·m\": does not hold (123.5 N·m)"),
                plain.unmetClaims());
        assertFalse(plain.passes());
        for (boolean forReader : new boolean[] {true, false}) {
            ClaimResult marked = claim(Verdict.DOES_NOT_HOLD, forReader, !forReader);
            assertTrue(compare(fresh(marked), fresh(marked)).passes());
            RecordComparison turned = compare(fresh(claim(Verdict.HOLDS, forReader, !forReader)), fresh(marked));
            assertEquals(
                    List.of(
                            "cell c1 (Moments), result 1 \"The hip carries 120 N·m\": recorded verdict holds, recomputed does"
                                    + " not hold (123.5 N·m)"),
                    turned.differences());
        }
        ClaimResult open = claim(Verdict.CANNOT_TELL, false, false);
        assertEquals(1, compare(fresh(open), fresh(open)).unmetClaims().size());
        ClaimResult held = claim(Verdict.HOLDS, false, false);
        assertTrue(compare(fresh(held), fresh(held)).passes());
    }

    @Test
    void aForgedRecordIsFoundWhateverItsSealSays() {
        WorkbookRecord forged = record(fresh(moment(99)), fresh());
        WorkbookRecord recomputed = record(fresh(moment(120)), fresh());
        Workbook resealed = Seal.seal(SHEET.withRecord(forged));
        RecordComparison comparison = RecordComparison.compare(resealed, recomputed);
        assertEquals(Seal.State.INTACT, comparison.seal());
        assertEquals(1, comparison.differences().size());
        Workbook unsealed = resealed.withSeal(Optional.empty());
        assertEquals(
                1, RecordComparison.compare(unsealed, recomputed).differences().size());
    }

    @Test
    void aWorkbookWithoutRecordCannotBeCompared() {
        WorkbookRecord record = record(fresh(), fresh());
        String message = assertThrows(IllegalArgumentException.class, () -> RecordComparison.compare(SHEET, record))
                .getMessage();
        assertEquals("the workbook has no record to compare with; run it with --record first", message);
    }

    @Test
    void keysOfTheRecordThatAreNotKnownAreNoDifference() {
        Workbook workbook = SHEET.withRecord(record(fresh(moment(1)), fresh()));
        String text = new String(WorkbookFormat.write(workbook), StandardCharsets.UTF_8);
        String extended = text.replace("\"workingOpen\"", "\"colour\": 1, \"workingOpen\"");
        Workbook read = WorkbookFormat.read(extended.getBytes(StandardCharsets.UTF_8));
        assertTrue(RecordComparison.compare(read, record(fresh(moment(1)), fresh()))
                .passes());
    }
}
