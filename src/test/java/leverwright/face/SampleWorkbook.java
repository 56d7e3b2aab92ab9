package leverwright.face;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leverwright.mechanics.measure.Unit;
import leverwright.run.result.CellState;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Quantity;
import leverwright.run.result.Verdict;
import leverwright.workbook.document.CellRecord;
import leverwright.workbook.document.NoteCell;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Seal;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookRecord;
import leverwright.workbook.json.JsonObject;

/** A workbook with a record made by hand, one of everything that a page shows. */
public final class SampleWorkbook {
    private SampleWorkbook() {}

    public static Workbook sealed() {
        Workbook workbook = new Workbook(
                "The torso leans",
                "Larkmere Boat Club, strength notes",
                "Who carries the bar when a sculler hinges at the hips? The same question for every lean, with the hand"
                        + " calculation behind each number.",
                List.of(
                        new NoteCell("n1", """
                                # At 45 degrees, who carries the bar?

                                A sculler of 178 cm and 71 kg hinges at the hips with 50 kg in her hands.
                                *Guess before you turn the dial*: does the hip moment grow **in step** with the lean?
                                """),
                        script("c1", "the lifter and the hinge", """
                                var ines  = lifter("Ines").of(FEMALE, cm(178), kg(71));
                                var lean  = dial("Torso lean", deg(45)).from(deg(10)).to(deg(80));
                                var hinge = romanianDeadlift().barbell(kg(50)).barAhead(cm(3)).torsoLean(lean);
                                var held  = hinge.by(ines).posture();
                                figure(held).loadArms(HIP, LOW_BACK)   // the arms that matter here
                                """),
                        script("c2", "what the joints carry", "table(held.moments(HIP, KNEE, ANKLE, LOW_BACK))"),
                        script("c3", "through every lean", """
                                sweep(TORSO_LEAN).from(deg(10)).to(deg(80))
                                    .of(hinge.by(ines))
                                    .chart(moment(HIP), tiltRule(HIP))
                                """),
                        script("c4", "by hand", "working(held.moment(HIP))"),
                        new NoteCell(
                                "n2",
                                "## What the rule leaves out\n\nThe rule grows in step; the sine does not. See the"
                                        + " [method](https://example.org/method) and this list:\n\n- the mass above the joint\n"
                                        + "- where the force line runs\n\n> Now you: make the next line true by changing only the"
                                        + " bar. It does not follow the dial."),
                        script(
                                "c5",
                                "claims",
                                "claim(\"Leaning 45 degrees, the hip carries 120 N·m a side\",\n"
                                        + "      hinge.torsoLean(deg(45)).by(ines).posture().moment(HIP),\n"
                                        + "      equalTo(newtonMetres(120)).within(percent(1))).forReader()"),
                        script("c6", "", "print(\"mass above both hips\")\nvar x = 1 / 0;"),
                        script("c7", "many", "chart(everything)")),
                Map.of("Torso lean", "45 deg"),
                Optional.empty(),
                Optional.empty(),
                JsonObject.EMPTY);
        return Seal.seal(workbook.withRecord(WorkbookRecord.of(workbook, "0.1.0", "17.0.15", 1, cells())));
    }

    private static ScriptCell script(String id, String title, String text) {
        return new ScriptCell(id, text.stripTrailing()).withTitle(title);
    }

    private static Map<String, CellRecord> cells() {
        Map<String, CellRecord> cells = new LinkedHashMap<>();
        cells.put("c1", CellRecord.of(CellState.FRESH, "", List.of(dial()), List.of(SampleResults.figure())));
        cells.put("c2", CellRecord.of(CellState.FRESH, "", List.of(), List.of(SampleResults.table())));
        cells.put("c3", CellRecord.of(CellState.FRESH, "", List.of(), List.of(SampleResults.curves(141, true))));
        cells.put("c4", CellRecord.of(CellState.FRESH, "", List.of(), List.of(SampleResults.number())));
        cells.put(
                "c5",
                CellRecord.of(
                        CellState.FRESH,
                        "",
                        List.of(),
                        List.of(
                                SampleResults.claim(Verdict.DOES_NOT_HOLD),
                                SampleResults.claim(Verdict.HOLDS),
                                SampleResults.claim(Verdict.CANNOT_TELL),
                                SampleResults.claim(Verdict.OUTSIDE_THIS_MODEL))));
        cells.put(
                "c6",
                CellRecord.of(
                        CellState.FAILED,
                        "Line 2: a number was divided by zero (/ by zero).",
                        List.of(),
                        List.of(SampleResults.text())));
        cells.put(
                "c7",
                CellRecord.of(
                        CellState.FRESH, "", List.of(), List.of(SampleResults.manyCurves(), SampleResults.map())));
        return cells;
    }

    private static DialDeclared dial() {
        Quantity setting = Quantity.exact(Math.toRadians(45), Unit.DEGREE);
        return new DialDeclared(
                "Torso lean", setting, setting, Math.toRadians(10), Math.toRadians(80), Math.toRadians(1));
    }
}
