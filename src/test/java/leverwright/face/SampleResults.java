package leverwright.face;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Sketch;
import leverwright.mechanics.working.Sketch.Point;
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

/**
 * Results made by hand for looking at drawings, pages and reports: a sculler of 71 kg and 1.78 m holding 50 kg at a torso
 * lean of 45°. The places follow from lengths and angles; the curves only have a likely course.
 */
public final class SampleResults {
    private static final Sides PER_SIDE = Sides.PER_SIDE;

    private SampleResults() {}

    /** One of each kind of result. */
    public static List<Result> all() {
        return List.of(figure(), number(), table(), curves(200, true), map(), claim(Verdict.DOES_NOT_HOLD), text());
    }

    public static FigureResult figure() {
        Point ankle = new Point(0.055, 0.08);
        Point knee = step(ankle, 0.4379, 4);
        Point hip = step(knee, 0.4361, -25.97);
        Point shoulder = step(hip, 0.5126, 45);
        Point elbow = step(shoulder, 0.3311, 188.54);
        Point wrist = step(elbow, 0.2599, 188.54);
        Point bar = step(wrist, 0.0961, 188.54);
        Point lowBack = step(hip, 0.0997, 45);
        double lineX = hip.x() + 0.2556;
        List<Sketch.Shape> shapes = new ArrayList<>(List.of(
                new Sketch.GroundLine(new Point(-0.35, 0), new Point(0.75, 0)),
                new Sketch.Bone("foot", new Point(0, 0.02), new Point(0.25, 0.02)),
                new Sketch.Bone("shank", ankle, knee),
                new Sketch.Bone("thigh", knee, hip),
                new Sketch.Bone("trunk", hip, shoulder),
                new Sketch.HeadOutline(step(shoulder, 0.2, 45), 0.12, 0.085, Math.toRadians(45)),
                new Sketch.Bone("upper arm", shoulder, elbow),
                new Sketch.Bone("forearm", elbow, wrist),
                new Sketch.Bone("hand", wrist, bar),
                new Sketch.Disc("plate", bar, 0.225),
                new Sketch.LineOfAction(new Point(lineX, 1), new Point(0, 1)),
                new Sketch.LoadArm(hip, new Point(lineX, hip.y()), "hip 25.6 cm"),
                new Sketch.LoadArm(lowBack, new Point(lineX, lowBack.y()), "low back 18.5 cm"),
                new Sketch.AngleArc(hip, 0.22, Math.PI / 2, Math.PI / 4, "45°")));
        for (Object[] joint : new Object[][] {
            {"ankle", ankle},
            {"knee", knee},
            {"hip", hip},
            {"low back", lowBack},
            {"shoulder", shoulder},
            {"elbow", elbow},
            {"wrist", wrist}
        }) {
            shapes.add(new Sketch.JointMark((String) joint[0], (Point) joint[1]));
        }
        shapes.add(new Sketch.Arrow(bar, new Point(0, -490.3), "bar 490 N", Sketch.ForceKind.LOAD));
        shapes.add(new Sketch.Arrow(
                new Point(0.125, 0), new Point(0, 1186.6), "ground 1187 N, mid-foot", Sketch.ForceKind.REACTION));
        Sketch sketch = new Sketch("Hinge at a torso lean of 45°", shapes, List.of(), List.of());
        return new FigureResult(
                "Ines holds 50 kg", "The lifter hinges at the hip, the torso leaning 45° forward.", sketch, List.of());
    }

    /** A point so many metres further in a direction given as degrees from upwards, forward positive. */
    private static Point step(Point from, double length, double lean) {
        double angle = Math.toRadians(lean);
        return new Point(from.x() + length * Math.sin(angle), from.y() + length * Math.cos(angle));
    }

    public static Working working() {
        Expression.Symbol weight =
                Expression.symbol("W", Dimension.FORCE.of(962.4, 0), "bar and everything above the hip, both sides");
        Expression.Symbol arm = Expression.symbol("d_hip", Dimension.LENGTH.of(0.2556, 0), "posture");
        Expression product = Expression.product(weight, arm).dividedBy(Expression.exact("2"));
        return Working.of(
                "Hip extension moment, per side",
                List.of(new Step("M_hip", product, product.evaluate(), Dimension.MOMENT, "moment of a force", "")));
    }

    public static NumberResult number() {
        double value = working().last().value();
        return new NumberResult(
                "hip extension moment",
                new Quantity(value, value - 4.6, value + 4.1, Unit.NEWTON_METRE),
                PER_SIDE,
                working(),
                true,
                List.of("Ankle's place over the foot: from memory."));
    }

    public static TableResult table() {
        return new TableResult(
                "net moments",
                List.of("joint", "extension moment", "load above", "load arm"),
                List.of(
                        row("hip", 123.04, 962.4, 0.2556, PER_SIDE),
                        row("knee", -23.59, 1102.1, -0.0428, PER_SIDE),
                        row("ankle (plantarflexion)", 40.98, 1166.3, 0.0703, PER_SIDE),
                        row("low back", 178.2, 863.9, 0.185, Sides.TOTAL)),
                List.of("both cuts agree"));
    }

    private static List<TableResult.Entry> row(String joint, double moment, double force, double arm, Sides sides) {
        @Nullable Working working = joint.equals("hip") ? working() : null;
        return List.of(
                new TableResult.TextEntry(joint),
                new TableResult.NumberEntry(Quantity.exact(moment, Unit.NEWTON_METRE), sides, working),
                new TableResult.NumberEntry(Quantity.exact(force, Unit.NEWTON), Sides.NOT_SIDED, null),
                new TableResult.NumberEntry(Quantity.exact(arm, Unit.CENTIMETRE), Sides.NOT_SIDED, null));
    }

    /** Two curves over the torso lean, the first with a band if asked. */
    public static CurvesResult curves(int points, boolean band) {
        List<Double> axis = new ArrayList<>();
        List<@Nullable Double> hip = new ArrayList<>();
        List<@Nullable Double> low = new ArrayList<>();
        List<@Nullable Double> high = new ArrayList<>();
        List<@Nullable Double> rule = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double lean = Math.toRadians(10 + 70.0 * i / (points - 1));
            double value = 168 * Math.sin(lean) + 4;
            axis.add(lean);
            hip.add(value);
            low.add(value * 0.93);
            high.add(value * 1.06);
            rule.add(168 * lean / (Math.PI / 2));
        }
        Curves.Curve first = new Curves.Curve(
                "hip extension moment",
                Unit.NEWTON_METRE,
                PER_SIDE,
                hip,
                band ? low : List.of(),
                band ? high : List.of());
        Curves.Curve second = Curves.Curve.of("tilt rule (lean ÷ 90°)", Unit.NEWTON_METRE, PER_SIDE, rule);
        return new CurvesResult(
                "through every lean",
                new Curves(
                        "hip moment over torso lean",
                        new Curves.Axis("torso lean", Unit.DEGREE, axis),
                        List.of(first, second),
                        Math.toRadians(45),
                        List.of()),
                List.of());
    }

    /** A map of what a mass m on a rod of 1 m asks of its pivot, m·g·sin(lean), without values beyond 75° under 20 kg. */
    public static MapResult map() {
        List<Double> leans = new ArrayList<>();
        List<Double> masses = new ArrayList<>();
        List<@Nullable Double> values = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            leans.add(Math.toRadians(10 + 2 * i));
            masses.add(2.5 * i);
        }
        for (double mass : masses) {
            for (double lean : leans) {
                values.add(mass < 20 && lean > Math.toRadians(75) ? null : mass * 9.80665 * Math.sin(lean));
            }
        }
        return new MapResult(
                "moment over lean and mass",
                new ContourMap(
                        "moment over lean and mass",
                        "pivot moment",
                        Unit.NEWTON_METRE,
                        Sides.TOTAL,
                        new Curves.Axis("Torso lean", Unit.DEGREE, leans),
                        new Curves.Axis("Bar", Unit.KILOGRAM, masses),
                        values,
                        List.of(),
                        Math.toRadians(45),
                        50.0,
                        List.of("a note of the map")),
                List.of());
    }

    /** Five curves in two units, with gaps, negative values and ends close together. */
    public static CurvesResult manyCurves() {
        List<Double> axis = new ArrayList<>();
        List<List<@Nullable Double>> values = new ArrayList<>();
        for (int c = 0; c < 5; c++) {
            values.add(new ArrayList<>());
        }
        for (int i = 0; i <= 60; i++) {
            double lean = Math.toRadians(10 + 70.0 * i / 60);
            axis.add(lean);
            values.get(0).add(168 * Math.sin(lean));
            values.get(1).add(i > 45 ? null : 150 * Math.sin(lean) + 10);
            values.get(2).add(i > 20 && i < 30 ? null : -40 * Math.cos(lean));
            values.get(3).add(160 * Math.sin(lean) + 6);
            values.get(4).add(900 + 300 * Math.sin(2 * lean));
        }
        List<Curves.Curve> curves = List.of(
                Curves.Curve.of("hip extension moment", Unit.NEWTON_METRE, PER_SIDE, values.get(0)),
                Curves.Curve.of("same with plumb arms", Unit.NEWTON_METRE, PER_SIDE, values.get(1)),
                Curves.Curve.of("knee extension moment", Unit.NEWTON_METRE, PER_SIDE, values.get(2)),
                Curves.Curve.of("hip, shorter trunk", Unit.NEWTON_METRE, PER_SIDE, values.get(3)),
                Curves.Curve.of("low-back compression", Unit.NEWTON, Sides.TOTAL, values.get(4)));
        return new CurvesResult(
                "many curves",
                new Curves(
                        "many",
                        new Curves.Axis("torso lean", Unit.DEGREE, axis),
                        curves,
                        Math.toRadians(38),
                        List.of()),
                List.of());
    }

    public static ClaimResult claim(Verdict verdict) {
        return new ClaimResult(
                "Leaning 45 degrees, the hip carries 120 N·m a side",
                verdict == Verdict.OUTSIDE_THIS_MODEL ? null : Quantity.exact(123.04, Unit.NEWTON_METRE),
                "hip extension moment",
                PER_SIDE,
                "equals 120 N·m within 1 %",
                verdict,
                "123.0 N·m is 2.5 % above 120 N·m",
                true,
                false,
                "",
                List.of("Torso lean 45°", "Barbell 50 kg"),
                working(),
                List.of());
    }

    public static TextResult text() {
        return TextResult.of("mass above both hips: 48.14 kg\nit rides on two legs\n");
    }
}
