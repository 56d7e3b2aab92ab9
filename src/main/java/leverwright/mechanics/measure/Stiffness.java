package leverwright.mechanics.measure;

/**
 * A force per stretch, in newtons per metre.
 *
 * @param si the value in N/m; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Stiffness(double si, double error) implements Measure<Stiffness> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Stiffness {
        si = Checks.value(si, Dimension.STIFFNESS);
        error = Checks.error(error, Dimension.STIFFNESS);
    }

    /** Returns a value in N/m that carries no error. */
    public static Stiffness of(double si) {
        return new Stiffness(si, 0);
    }

    /**
     * Returns a {@link Stiffness} as written by a person, such as {@code 400 N/m}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Stiffness parse(String text) {
        return (Stiffness) MeasureText.parse(text, Dimension.STIFFNESS);
    }

    @Override
    public Dimension dimension() {
        return Dimension.STIFFNESS;
    }

    @Override
    public Stiffness with(double si, double error) {
        return new Stiffness(si, error);
    }

    /** Returns the force at a stretch. */
    public Force times(Length length) {
        return new Force(si * length.si(), Bands.ofProduct(this, length));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
