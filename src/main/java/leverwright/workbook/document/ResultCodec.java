package leverwright.workbook.document;

import java.util.LinkedHashMap;
import java.util.Map;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Sketch;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;
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
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonProblem;

/**
 * Writes results as JSON and reads them back. The closed set of records that a file may hold stands here by name; the kinds
 * are part of the file format and do not change when a class is renamed. Every double comes back with the same bits, but
 * that negative zero, which no result holds, becomes zero.
 */
public final class ResultCodec {

    private static final RecordCodec CODEC = new RecordCodec(kinds());

    private ResultCodec() {}

    private static Map<Class<?>, String> kinds() {
        Map<Class<?>, String> kinds = new LinkedHashMap<>();
        kinds.put(NumberResult.class, "number");
        kinds.put(TextResult.class, "text");
        kinds.put(TableResult.class, "table");
        kinds.put(CurvesResult.class, "curves");
        kinds.put(MapResult.class, "map");
        kinds.put(FigureResult.class, "figure");
        kinds.put(ClaimResult.class, "claim");
        kinds.put(DialDeclared.class, "dial");
        kinds.put(Quantity.class, "quantity");
        kinds.put(TableResult.TextEntry.class, "text");
        kinds.put(TableResult.NumberEntry.class, "number");
        kinds.put(Curves.class, "curves");
        kinds.put(Curves.Axis.class, "axis");
        kinds.put(Curves.Curve.class, "curve");
        kinds.put(ContourMap.class, "contour map");
        addWorkings(kinds);
        addSketches(kinds);
        return kinds;
    }

    private static void addWorkings(Map<Class<?>, String> kinds) {
        kinds.put(Working.class, "working");
        kinds.put(Step.class, "step");
        kinds.put(Expression.Constant.class, "constant");
        kinds.put(Expression.Symbol.class, "symbol");
        kinds.put(Expression.Sum.class, "sum");
        kinds.put(Expression.Product.class, "product");
        kinds.put(Expression.Quotient.class, "quotient");
        kinds.put(Expression.Negation.class, "negation");
        kinds.put(Expression.Square.class, "square");
        kinds.put(Expression.SquareRoot.class, "square root");
        kinds.put(Expression.Sine.class, "sine");
        kinds.put(Expression.Cosine.class, "cosine");
    }

    private static void addSketches(Map<Class<?>, String> kinds) {
        kinds.put(Sketch.class, "sketch");
        kinds.put(Sketch.Point.class, "point");
        kinds.put(Sketch.Bone.class, "bone");
        kinds.put(Sketch.JointMark.class, "joint");
        kinds.put(Sketch.Arrow.class, "force");
        kinds.put(Sketch.LineOfAction.class, "line of action");
        kinds.put(Sketch.LoadArm.class, "load arm");
        kinds.put(Sketch.AngleArc.class, "angle");
        kinds.put(Sketch.GroundLine.class, "ground");
        kinds.put(Sketch.Disc.class, "disc");
        kinds.put(Sketch.HeadOutline.class, "head");
        kinds.put(Sketch.Line.class, "line");
        kinds.put(Sketch.Label.class, "label");
        kinds.put(Sketch.Handle.class, "handle");
        kinds.put(Sketch.Stop.class, "stop");
        kinds.put(Sketch.Play.class, "play");
        kinds.put(Sketch.Beat.class, "beat");
    }

    /** Returns the records that a file may hold, with their kinds. */
    static Map<Class<?>, String> allowed() {
        return CODEC.kinds();
    }

    /**
     * Returns a result as JSON.
     *
     * @param result the result
     * @throws IllegalArgumentException when a number in it is NaN or infinite
     */
    public static JsonObject write(Result result) {
        return CODEC.write(result, Result.class);
    }

    /**
     * Returns a declared dial as JSON.
     *
     * @param dial the dial
     */
    public static JsonObject write(DialDeclared dial) {
        return CODEC.write(dial, DialDeclared.class);
    }

    /**
     * Returns the result that JSON holds.
     *
     * @param cursor where the result stands
     * @throws JsonProblem when it is not a result; names line, column and key path
     */
    public static Result readResult(JsonCursor cursor) {
        return (Result) CODEC.read(cursor, Result.class);
    }

    /**
     * Returns the declared dial that JSON holds.
     *
     * @param cursor where the dial stands
     * @throws JsonProblem when it is not a dial; names line, column and key path
     */
    public static DialDeclared readDial(JsonCursor cursor) {
        return (DialDeclared) CODEC.read(cursor, DialDeclared.class);
    }
}
