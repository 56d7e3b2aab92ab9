package leverwright.run.cell;

import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Unit;
import leverwright.run.result.Verdict;

/**
 * What a claim asks of its value: to lie between two limits, either of which may be missing.
 *
 * @param words the test as a reader sees it, for example {@code "equals 120 N·m within 1 %"}
 * @param least the least value that passes, in SI units; minus infinity when there is none
 * @param greatest the greatest value that passes, in SI units; infinity when there is none
 * @param openEnds whether the limits themselves fail
 * @param <M> the kind of value
 */
public record ClaimTest<M extends Measure<M>>(String words, double least, double greatest, boolean openEnds) {

    /**
     * Returns the verdict over a band: it holds when the whole band passes, does not hold when none of it does, and
     * cannot be told in between.
     *
     * @param low the lower limit of the value in SI units
     * @param high the upper limit of the value in SI units
     */
    Verdict verdict(double low, double high) {
        if (passes(low) && passes(high)) {
            return Verdict.HOLDS;
        }
        boolean below = openEnds ? high <= least : high < least;
        boolean above = openEnds ? low >= greatest : low > greatest;
        return below || above ? Verdict.DOES_NOT_HOLD : Verdict.CANNOT_TELL;
    }

    private boolean passes(double value) {
        return openEnds ? value > least && value < greatest : value >= least && value <= greatest;
    }

    /** Returns the test that a value lies no further than a distance from the asserted one. */
    static <M extends Measure<M>> ClaimTest<M> around(M asserted, double distance, String distanceText) {
        if (!(distance >= 0) || !Double.isFinite(distance)) {
            throw new IllegalArgumentException(
                    "a claim's tolerance is " + distanceText + "; it must be zero or more, as in .within(percent(1))");
        }
        Unit unit = asserted.dimension().shown();
        return new ClaimTest<>(
                "equals " + unit.format(asserted.si()) + " within " + distanceText,
                asserted.si() - distance,
                asserted.si() + distance,
                false);
    }
}
