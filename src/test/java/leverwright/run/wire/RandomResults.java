package leverwright.run.wire;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
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
import leverwright.run.result.ClaimResult;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.FigureResult;
import leverwright.run.result.MapResult;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Quantity;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import leverwright.run.result.TextResult;
import leverwright.run.result.Verdict;
import org.jspecify.annotations.Nullable;

/** Makes results of every kind from a seed. */
final class RandomResults {

    private static final String[] TEXTS = {"", "hip", "N·m", "ends\nhere", "𝛼 and \uD800 alone", "a \"quote\" <b>"};

    private final Random random;
    private int names;

    RandomResults(long seed) {
        random = new Random(seed);
    }

    Result next() {
        return switch (random.nextInt(7)) {
            case 0 -> new NumberResult(text(), quantity(), one(Sides.values()), maybe(this::working), flip(), texts());
            case 1 -> new TextResult(text(), text(), random.nextInt(99), texts());
            case 2 -> table();
            case 3 -> new CurvesResult(text(), curves(), texts());
            case 4 -> new FigureResult(text(), text(), sketch(), texts());
            case 5 -> new MapResult(text(), map(), texts());
            default -> claim();
        };
    }

    private ClaimResult claim() {
        Verdict verdict = one(Verdict.values());
        Quantity computed = verdict == Verdict.OUTSIDE_THIS_MODEL ? null : quantity();
        return new ClaimResult(
                text(),
                computed,
                text(),
                one(Sides.values()),
                text(),
                verdict,
                text(),
                flip(),
                flip(),
                text(),
                texts(),
                maybe(this::working),
                texts());
    }

    private TableResult table() {
        int columns = 1 + random.nextInt(4);
        List<List<TableResult.Entry>> rows = list(() -> exactly(columns, this::entry));
        return new TableResult(text(), exactly(columns, this::text), rows, texts());
    }

    private TableResult.Entry entry() {
        return flip()
                ? new TableResult.TextEntry(text())
                : new TableResult.NumberEntry(quantity(), one(Sides.values()), maybe(this::working));
    }

    private Curves curves() {
        List<Double> axis = new ArrayList<>();
        double at = number();
        for (int i = 0; i < 2 + random.nextInt(30); i++) {
            axis.add(at);
            at += 0.001 + Math.abs(at) * 0.01 + random.nextDouble();
        }
        List<Curves.Curve> curves = exactly(1 + random.nextInt(3), () -> {
            List<@Nullable Double> values = new ArrayList<>();
            axis.forEach(each -> values.add(random.nextInt(5) == 0 ? null : number()));
            return Curves.Curve.of("hip", one(Unit.values()), one(Sides.values()), values);
        });
        return new Curves("curves", new Curves.Axis("lean", Unit.DEGREE, axis), curves, maybe(this::number), texts());
    }

    private ContourMap map() {
        Curves.Axis across = new Curves.Axis("lean", Unit.DEGREE, List.of(0.0, 0.5, 1.0 + random.nextDouble()));
        Curves.Axis up = new Curves.Axis("bar", Unit.KILOGRAM, List.of(-1.0, 20.0 + random.nextDouble()));
        List<@Nullable Double> values = exactly(6, () -> random.nextInt(5) == 0 ? null : number());
        boolean marked = flip();
        return new ContourMap(
                text(),
                "hip",
                one(Unit.values()),
                one(Sides.values()),
                across,
                up,
                values,
                flip() ? List.of() : List.of(-1.5, 2.5),
                marked ? 0.5 : null,
                marked ? 1.0 : null,
                texts());
    }

    private Sketch sketch() {
        List<Sketch.Shape> shapes = list(() -> switch (random.nextInt(4)) {
            case 0 -> new Sketch.Bone("thigh", point(), point());
            case 1 -> new Sketch.JointMark("hip", point());
            case 2 -> new Sketch.LoadArm(point(), point(), "arm");
            default -> new Sketch.Label(point(), "words");
        });
        Sketch.Play play = flip()
                ? null
                : new Sketch.Play("lean", "", List.of(new Sketch.Beat(0, number()), new Sketch.Beat(2, number())));
        return new Sketch("figure", shapes, List.of(), texts(), play);
    }

    private Sketch.Point point() {
        return new Sketch.Point(random.nextGaussian(), random.nextGaussian());
    }

    private Working working() {
        return Working.of("a title", exactly(1 + random.nextInt(3), () -> {
            names++;
            return new Step(
                    "M_" + names, maybe(() -> expression(0)), random.nextGaussian(), Dimension.MOMENT, "a source", "");
        }));
    }

    private Expression expression(int depth) {
        return switch (depth > 6 ? 0 : random.nextInt(6)) {
            case 1 -> new Expression.Sum(exactly(2, () -> expression(depth + 1)));
            case 2 -> new Expression.Product(exactly(2, () -> expression(depth + 1)));
            case 3 -> new Expression.Quotient(expression(depth + 1), expression(depth + 1));
            case 4 -> new Expression.Negation(expression(depth + 1));
            case 5 -> new Expression.Constant("g", new BigDecimal("9.80665"), Unit.ONE, "a source");
            default -> {
                names++;
                yield new Expression.Symbol("d_" + names, random.nextGaussian(), Dimension.LENGTH, "a source");
            }
        };
    }

    private Quantity quantity() {
        double value = number();
        return flip()
                ? Quantity.exact(value, one(Unit.values()))
                : new Quantity(value, value - Math.abs(value), value + 1e300, one(Unit.values()));
    }

    /** Any finite number, by its bits. */
    private double number() {
        double value = Double.longBitsToDouble(random.nextLong());
        return Math.abs(value) < 1e200 ? value : random.nextGaussian();
    }

    private boolean flip() {
        return random.nextBoolean();
    }

    private String text() {
        return TEXTS[random.nextInt(TEXTS.length)];
    }

    private List<String> texts() {
        return list(this::text);
    }

    private <T> @Nullable T maybe(Supplier<T> maker) {
        return flip() ? maker.get() : null;
    }

    private <T> T one(T[] values) {
        return values[random.nextInt(values.length)];
    }

    private <T> List<T> list(Supplier<T> maker) {
        return exactly(random.nextInt(5), maker);
    }

    private static <T> List<T> exactly(int count, Supplier<T> maker) {
        List<T> made = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            made.add(maker.get());
        }
        return made;
    }
}
