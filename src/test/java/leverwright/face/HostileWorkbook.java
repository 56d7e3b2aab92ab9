package leverwright.face;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Sketch;
import leverwright.mechanics.working.Sketch.Point;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;
import leverwright.run.result.CellState;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.FigureResult;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Quantity;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import leverwright.run.result.TextResult;
import leverwright.run.result.Verdict;
import leverwright.workbook.document.CellRecord;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookRecord;
import leverwright.workbook.json.JsonObject;

/** A workbook with one text in every place that takes one. */
public final class HostileWorkbook {
    private static final Quantity ONE = Quantity.exact(1, Unit.NEWTON);

    private HostileWorkbook() {}

    public static Workbook with(String text) {
        Workbook workbook = new Workbook(
                text,
                text,
                text,
                List.of(
                        new ScriptCell("c1", text).withTitle(text),
                        new ScriptCell("c2", text).withTitle(text),
                        new ScriptCell("c3", text).withTitle(text)),
                Map.of(),
                Optional.empty(),
                Optional.of(text),
                JsonObject.EMPTY);
        Map<String, CellRecord> cells = new LinkedHashMap<>();
        DialDeclared dial = new DialDeclared("d" + text, ONE, ONE, 0, 2, 0.1);
        cells.put("c1", CellRecord.of(CellState.FRESH, "", List.of(dial), results(text)));
        cells.put("c2", CellRecord.of(CellState.FAILED, text, List.of(), List.of()));
        return workbook.withRecord(new WorkbookRecord(text, text, 1, text, Map.of(), cells, JsonObject.EMPTY));
    }

    /** One of each kind of result with the text in every place that takes one. */
    public static List<Result> results(String text) {
        List<String> notes = List.of(text, text);
        Working working = working(text);
        return List.of(
                new NumberResult(text, ONE, Sides.TOTAL, working, false, notes),
                new TableResult(
                        text,
                        List.of(text, text),
                        List.of(List.of(
                                new TableResult.TextEntry(text),
                                new TableResult.NumberEntry(ONE, Sides.PER_SIDE, working))),
                        notes),
                new CurvesResult(
                        text,
                        new Curves(
                                text,
                                new Curves.Axis(text, Unit.DEGREE, List.of(0.0, 1.0, 2.0)),
                                List.of(Curves.Curve.of("c" + text, Unit.NEWTON, Sides.TOTAL, List.of(1.0, 2.0, 3.0))),
                                1.0,
                                notes),
                        notes),
                new FigureResult(
                        text,
                        text,
                        new Sketch(
                                text,
                                List.of(
                                        new Sketch.Bone(text, new Point(0, 0), new Point(0, 1)),
                                        new Sketch.LoadArm(new Point(0, 1), new Point(0.3, 1), text),
                                        new Sketch.Arrow(
                                                new Point(0.3, 1), new Point(0, -100), text, Sketch.ForceKind.LOAD),
                                        new Sketch.AngleArc(new Point(0, 1), 0.2, 0, 1, text),
                                        new Sketch.Label(new Point(0.5, 0.5), text)),
                                List.of(),
                                notes),
                        notes),
                new ClaimResult(
                        text,
                        ONE,
                        text,
                        Sides.TOTAL,
                        text,
                        Verdict.HOLDS,
                        text,
                        true,
                        true,
                        text,
                        notes,
                        working,
                        notes),
                new TextResult(text, text, 3, notes));
    }

    private static Working working(String text) {
        StringBuilder kept = new StringBuilder();
        text.codePoints()
                .filter(point -> point != '[' && point != ']' && !Character.isISOControl(point))
                .forEach(kept::appendCodePoint);
        String allowed = kept.toString();
        Step step = new Step("F", null, 1, Dimension.FORCE, allowed, allowed);
        return new Working(allowed, List.of(step), List.of(), "");
    }
}
