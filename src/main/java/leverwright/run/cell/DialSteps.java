package leverwright.run.cell;

import leverwright.mechanics.measure.Unit;

/** Round steps for dials: 1, 2 or 5 times a power of ten in the unit that the dial is read in. */
final class DialSteps {

    private DialSteps() {}

    /**
     * Returns the round step nearest below a size.
     *
     * @param size the size in SI units, above zero
     * @param unit the unit the dial is read in
     * @return the step in SI units, above zero
     */
    static double about(double size, Unit unit) {
        double shown = unit.fromSi(size);
        double power = 1;
        while (power > shown) {
            power /= 10;
        }
        while (power * 10 <= shown) {
            power *= 10;
        }
        double times = shown >= 5 * power ? 5 : shown >= 2 * power ? 2 : 1;
        return unit.toSi(times * power);
    }
}
