package leverwright.workbook.session;

import java.util.Arrays;
import java.util.List;
import leverwright.run.result.FoldedWorkings;
import leverwright.run.result.Result;
import leverwright.run.wire.ResultBytes;

/** Compares outcomes bit by bit. */
final class Outcomes {

    private Outcomes() {}

    /** Returns whether two outcomes are the same; workings that the first was computed without are passed over. */
    static boolean same(CellOutcome one, CellOutcome other) {
        return one.state() == other.state()
                && one.dials().equals(other.dials())
                && one.output().equals(other.output())
                && one.outputLeftOut() == other.outputLeftOut()
                && one.message().equals(other.message())
                && same(one.results(), other.results());
    }

    private static boolean same(List<Result> some, List<Result> others) {
        if (some.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < some.size(); i++) {
            Result one = some.get(i);
            Result other = others.get(i);
            if (!equal(one, other)
                    && !(equal(one, FoldedWorkings.without(one)) && equal(one, FoldedWorkings.without(other)))) {
                return false;
            }
        }
        return true;
    }

    private static boolean equal(Result one, Result other) {
        return Arrays.equals(ResultBytes.of(one), ResultBytes.of(other));
    }
}
