package leverwright.mechanics.measure;

/**
 * A mass, in kilograms.
 *
 * @param si the value in kg; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Mass(double si, double error) implements Measure<Mass> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Mass {
        si = Checks.value(si, Dimension.MASS);
        error = Checks.error(error, Dimension.MASS);
    }

    /** Returns a value in kg that carries no error. */
    public static Mass of(double si) {
        return new Mass(si, 0);
    }

    /**
     * Returns a {@link Mass} as written by a person, such as {@code 135 lb}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Mass parse(String text) {
        return (Mass) MeasureText.parse(text, Dimension.MASS);
    }

    @Override
    public Dimension dimension() {
        return Dimension.MASS;
    }

    @Override
    public Mass with(double si, double error) {
        return new Mass(si, error);
    }

    /** Returns the force that gives this mass an acceleration. */
    public Force times(Acceleration acceleration) {
        return new Force(si * acceleration.si(), Bands.ofProduct(this, acceleration));
    }

    /** Returns the inertia of this mass at a squared distance. */
    public Inertia times(Area area) {
        return new Inertia(si * area.si(), Bands.ofProduct(this, area));
    }

    /**
     * Returns the weight of this mass at standard gravity, in newtons, pointing nowhere: its direction is the caller's.
     *
     * @see Measures#STANDARD_GRAVITY
     */
    public Force weight() {
        return times(Measures.STANDARD_GRAVITY);
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
