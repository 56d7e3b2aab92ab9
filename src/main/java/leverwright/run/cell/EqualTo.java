package leverwright.run.cell;

import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Unit;

/**
 * A value that a claim asserts, waiting for its tolerance.
 *
 * @param <M> the kind of value
 */
public final class EqualTo<M extends Measure<M>> {

    private final M asserted;

    EqualTo(M asserted) {
        this.asserted = asserted;
    }

    /**
     * Returns the test that the computed value lies no further than this from the asserted one, on either side.
     *
     * @param tolerance the distance, zero or more
     * @throws IllegalArgumentException when the tolerance is negative
     */
    public ClaimTest<M> within(M tolerance) {
        return ClaimTest.around(
                asserted, tolerance.si(), asserted.dimension().shown().format(tolerance.si()));
    }

    /**
     * Returns the test that the computed value lies no further than this share of the asserted one from it, on either
     * side: {@code within(percent(1))}.
     *
     * @param share the share, zero or more
     * @throws IllegalArgumentException when the share is negative
     */
    public ClaimTest<M> within(Ratio share) {
        return ClaimTest.around(asserted, Math.abs(asserted.si()) * share.si(), Unit.PERCENT.format(share.si()));
    }
}
