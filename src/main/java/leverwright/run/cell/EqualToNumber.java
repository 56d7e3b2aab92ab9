package leverwright.run.cell;

import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Unit;

/** A plain number that a claim asserts, waiting for its tolerance. */
public final class EqualToNumber {

    private final Ratio asserted;

    EqualToNumber(Ratio asserted) {
        this.asserted = asserted;
    }

    /**
     * Returns the test that the computed number lies no further than this from the asserted one, on either side.
     *
     * @param tolerance the distance, zero or more
     * @throws IllegalArgumentException when the tolerance is negative
     */
    public ClaimTest<Ratio> within(double tolerance) {
        return ClaimTest.around(asserted, tolerance, Unit.ONE.format(tolerance));
    }
}
