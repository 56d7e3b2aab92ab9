package leverwright.run.cell;

import java.util.List;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.LeverView;
import leverwright.mechanics.exercise.MomentTable;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listed;
import leverwright.mechanics.working.Listing;
import leverwright.run.gate.woven.SameText;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.MapResult;
import leverwright.run.result.Result;
import leverwright.run.result.TextResult;
import org.jspecify.annotations.Nullable;

/** Shows the values of bare expressions: answers as numbers, tables as tables, anything else as text. */
final class StandardValues {

    private StandardValues() {}

    static @Nullable Result toResult(@Nullable Object value) {
        if (value instanceof ResultBuilder) {
            return null;
        }
        if (value instanceof Answer<?> answer) {
            return Values.number(answer, false);
        }
        if (value instanceof Measure<?> measure) {
            return Values.number("", measure);
        }
        if (value instanceof Double || value instanceof Float) {
            return Values.number("", ((Number) value).doubleValue());
        }
        if (value instanceof MomentTable moments) {
            return MomentRows.result(moments);
        }
        if (value instanceof Listed listed) {
            return ListingRows.result(listed.listing());
        }
        if (value instanceof Listing listing) {
            return ListingRows.result(listing);
        }
        if (value instanceof LeverView view) {
            return LeverRows.result(view);
        }
        if (value instanceof Curves curves) {
            return new CurvesResult(curves.title(), curves, curves.notes());
        }
        if (value instanceof ContourMap map) {
            return new MapResult(map.title(), map, map.notes());
        }
        if (value instanceof HeldPosture held) {
            return new TextResult(
                    "", held.performance() + ": " + held.standing().words(), 0, List.of());
        }
        return TextResult.of(SameText.of(value));
    }
}
