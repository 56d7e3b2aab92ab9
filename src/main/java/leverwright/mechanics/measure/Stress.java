package leverwright.mechanics.measure;

/**
 * A force per area, in pascals.
 *
 * @param si the value in Pa; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Stress(double si, double error) implements Measure<Stress> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Stress {
        si = Checks.value(si, Dimension.STRESS);
        error = Checks.error(error, Dimension.STRESS);
    }

    /** Returns a value in Pa that carries no error. */
    public static Stress of(double si) {
        return new Stress(si, 0);
    }

    /**
     * Returns a {@link Stress} as written by a person, such as {@code 250 kPa}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Stress parse(String text) {
        return (Stress) MeasureText.parse(text, Dimension.STRESS);
    }

    @Override
    public Dimension dimension() {
        return Dimension.STRESS;
    }

    @Override
    public Stress with(double si, double error) {
        return new Stress(si, error);
    }

    /** Returns the force of this stress on an area. */
    public Force times(Area area) {
        return new Force(si * area.si(), Bands.ofProduct(this, area));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
