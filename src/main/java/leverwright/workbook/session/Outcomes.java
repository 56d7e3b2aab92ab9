package leverwright.workbook.session;

import java.util.Arrays;
import java.util.List;
import leverwright.run.result.Result;
import leverwright.run.wire.ResultBytes;

/** Compares outcomes bit by bit. */
final class Outcomes {

    private Outcomes() {}

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
            if (!Arrays.equals(ResultBytes.of(some.get(i)), ResultBytes.of(others.get(i)))) {
                return false;
            }
        }
        return true;
    }
}
