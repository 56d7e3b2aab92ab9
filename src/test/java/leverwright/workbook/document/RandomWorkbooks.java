package leverwright.workbook.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Sketch;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;
import leverwright.run.result.CellState;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.FigureResult;
import leverwright.run.result.MapResult;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Quantity;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import leverwright.run.result.TextResult;
import leverwright.run.result.Verdict;
import leverwright.workbook.json.JsonArray;
import leverwright.workbook.json.JsonNothing;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonText;
import leverwright.workbook.json.JsonValue;
import org.jspecify.annotations.Nullable;

/** Workbooks and results of every kind, made from a seed. */
final class RandomWorkbooks {

    private static final List<String> TEXTS = List.of(
            "",
            "Torso lean",
            "Ein Gewicht von 50 kg hängt \"ruhig\"",
            "N·m — ½ 力 😀",
            "tab\tand \\ backslash",
            "<script>&amp;",
            "\u0000\u001f\u2028");

    private final Random random;

    RandomWorkbooks(long seed) {
        random = new Random(seed);
    }

    Workbook workbook() {
        List<Cell> cells = new ArrayList<>();
        Map<String, CellRecord> record = new LinkedHashMap<>();
        for (int number = 1; number <= 1 + random.nextInt(5); number++) {
            String id = "c" + number;
            if (random.nextInt(3) == 0) {
                cells.add(new NoteCell(id, some(this::text), unknown()));
            } else {
                cells.add(new ScriptCell(id, text(), some(this::text), unknown()));
                record.put(id, cellRecord());
            }
        }
        Map<String, String> dials = new LinkedHashMap<>();
        some(this::text).forEach(name -> dials.put(name + "!", text()));
        Workbook workbook =
                new Workbook(text(), text(), text(), cells, dials, Optional.empty(), Optional.empty(), unknown());
        if (random.nextInt(4) > 0) {
            long seed = Math.abs(random.nextLong()) % WorkbookRecord.GREATEST_SEED;
            workbook = workbook.withRecord(WorkbookRecord.of(workbook, text(), text(), seed, record));
        }
        return random.nextBoolean() ? Seal.seal(workbook) : workbook;
    }

    CellRecord cellRecord() {
        CellRecord known = CellRecord.of(
                pick(CellRecord.STATES.toArray(CellState[]::new)), text(), some(this::dial), some(this::result));
        return new CellRecord(
                known.state(), known.problem(), known.recordedDials(), known.recordedResults(), unknown());
    }

    private JsonObject unknown() {
        if (random.nextInt(3) > 0) {
            return JsonObject.EMPTY;
        }
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("zeta", new JsonText(text()));
        members.put("alpha", new JsonArray(List.of(JsonArray.ofNumbers(number()), new JsonNothing())));
        return new JsonObject(members);
    }

    Result result() {
        return switch (random.nextInt(7)) {
            case 0 -> numberResult();
            case 1 -> new TextResult(text(), text() + "\n" + text(), random.nextInt(10), notes());
            case 2 -> table();
            case 3 -> curves();
            case 4 -> figure();
            case 5 -> map();
            default -> claim();
        };
    }

    NumberResult numberResult() {
        return new NumberResult(text(), quantity(), sides(), maybe(this::working), random.nextBoolean(), notes());
    }

    TableResult table() {
        List<List<TableResult.Entry>> rows = some(() -> List.of(
                new TableResult.TextEntry(text()),
                new TableResult.NumberEntry(quantity(), sides(), maybe(this::working))));
        return new TableResult(text(), List.of("joint", "moment"), rows, notes());
    }

    CurvesResult curves() {
        int points = 1 + random.nextInt(4);
        List<Double> axis = new ArrayList<>();
        List<@Nullable Double> values = new ArrayList<>();
        for (int index = 0; index < points; index++) {
            axis.add(index + random.nextDouble());
            values.add(random.nextInt(4) == 0 ? null : Double.valueOf(number()));
        }
        Curves.Curve plain = Curves.Curve.of(text(), pick(Unit.values()), sides(), values);
        Curves.Curve banded = new Curves.Curve(text(), pick(Unit.values()), sides(), values, values, values);
        Double current = maybe(this::number);
        return new CurvesResult(
                text(),
                new Curves(
                        text(),
                        new Curves.Axis(text(), pick(Unit.values()), axis),
                        List.of(plain, banded),
                        current,
                        notes()),
                notes());
    }

    MapResult map() {
        Curves.Axis across = new Curves.Axis(text(), pick(Unit.values()), List.of(0.0, 1 + random.nextDouble()));
        Curves.Axis up = new Curves.Axis(text(), pick(Unit.values()), List.of(-1.0, 0.0, 1 + random.nextDouble()));
        List<@Nullable Double> values = new ArrayList<>();
        for (int node = 0; node < 6; node++) {
            values.add(random.nextInt(4) == 0 ? null : Double.valueOf(number()));
        }
        Double present = maybe(() -> 0.5);
        return new MapResult(
                text(),
                new ContourMap(
                        text(),
                        text(),
                        pick(Unit.values()),
                        sides(),
                        across,
                        up,
                        values,
                        random.nextBoolean() ? List.of() : List.of(1.5, 2.5),
                        present,
                        present,
                        notes()),
                notes());
    }

    FigureResult figure() {
        List<Sketch.Shape> shapes = List.of(
                new Sketch.Bone(text(), point(), point()),
                new Sketch.JointMark(text(), point()),
                new Sketch.Arrow(point(), point(), text(), pick(Sketch.ForceKind.values())),
                new Sketch.LineOfAction(point(), point()),
                new Sketch.LoadArm(point(), point(), text()),
                new Sketch.AngleArc(point(), number(), number(), number(), text()),
                new Sketch.GroundLine(point(), point()),
                new Sketch.Disc(text(), point(), number()),
                new Sketch.HeadOutline(point(), number(), number(), number()),
                new Sketch.Line(text(), point(), point()),
                new Sketch.Label(point(), text()));
        List<Sketch.Handle> handles =
                List.of(new Sketch.Handle(text(), point(), List.of(new Sketch.Stop(number(), point()))));
        Sketch.Play play = random.nextBoolean()
                ? null
                : new Sketch.Play(
                        text(), text(), List.of(new Sketch.Beat(0, number()), new Sketch.Beat(1.5, number())));
        return new FigureResult(text(), text(), new Sketch(text(), shapes, handles, notes(), play), notes());
    }

    ClaimResult claim() {
        Verdict verdict = pick(Verdict.values());
        return new ClaimResult(
                text(),
                verdict == Verdict.OUTSIDE_THIS_MODEL ? null : quantity(),
                text(),
                sides(),
                text(),
                verdict,
                text(),
                random.nextBoolean(),
                random.nextBoolean(),
                text(),
                some(this::text),
                maybe(this::working),
                notes());
    }

    DialDeclared dial() {
        double from = random.nextDouble();
        Unit unit = pick(Unit.values());
        return new DialDeclared(
                "Torso lean " + text(),
                Quantity.exact(from + 0.5, unit),
                Quantity.exact(from + 0.25, unit),
                from,
                from + 1,
                random.nextDouble() + 1e-9);
    }

    Working working() {
        Expression symbol = new Expression.Symbol("W", number(), Dimension.FORCE, "weighed");
        Expression constant = new Expression.Constant("k", new BigDecimal("9.80665"), Unit.ONE, "");
        Expression sum = symbol.plus(constant.negated()).minus(Expression.exact("0.50"));
        Expression formula = Expression.squareRoot(Expression.sine(sum.squared())
                .times(Expression.cosine(constant))
                .dividedBy(Expression.exactDegrees(90)));
        Step step = new Step("M", formula, number(), Dimension.MOMENT, "textbook", "a remark");
        Step given = new Step("a", null, number(), Dimension.LENGTH, "", "");
        return new Working("moment", List.of(given, step), List.of(step), Working.CELL_BEGINS);
    }

    private Quantity quantity() {
        double value = number();
        double low = random.nextBoolean() ? value : -Double.MAX_VALUE;
        return new Quantity(value, low, Math.max(value, value + random.nextDouble()), pick(Unit.values()));
    }

    private Sketch.Point point() {
        return new Sketch.Point(number(), number());
    }

    private Sides sides() {
        return pick(Sides.values());
    }

    private List<String> notes() {
        return some(this::text);
    }

    private String text() {
        return TEXTS.get(random.nextInt(TEXTS.size()));
    }

    /** Any finite double but negative zero, many of them with all their bits in use. */
    double number() {
        double value = switch (random.nextInt(4)) {
            case 0 -> random.nextInt(1000);
            case 1 -> random.nextGaussian() * 100;
            case 2 -> Math.scalb(1.0, random.nextInt(2000) - 1000);
            default -> Double.longBitsToDouble(random.nextLong());
        };
        return Double.isFinite(value) && value != 0 ? value : 0;
    }

    private <T> List<T> some(Supplier<T> source) {
        List<T> list = new ArrayList<>();
        for (int count = random.nextInt(4); count > 0; count--) {
            list.add(source.get());
        }
        return list;
    }

    private <T> @Nullable T maybe(Supplier<T> source) {
        return random.nextBoolean() ? source.get() : null;
    }

    private <T> T pick(T[] values) {
        return values[random.nextInt(values.length)];
    }
}
