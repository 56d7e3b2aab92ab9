package leverwright.mechanics.measure;

/**
 * A moment of inertia, in kilogram square metres.
 *
 * @param si the value in kg·m²; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Inertia(double si, double error) implements Measure<Inertia> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Inertia {
        si = Checks.value(si, Dimension.INERTIA);
        error = Checks.error(error, Dimension.INERTIA);
    }

    /** Returns a value in kg·m² that carries no error. */
    public static Inertia of(double si) {
        return new Inertia(si, 0);
    }

    /**
     * Returns an {@link Inertia} as written by a person, such as {@code 0.1 kg·m²}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Inertia parse(String text) {
        return (Inertia) MeasureText.parse(text, Dimension.INERTIA);
    }

    @Override
    public Dimension dimension() {
        return Dimension.INERTIA;
    }

    @Override
    public Inertia with(double si, double error) {
        return new Inertia(si, error);
    }

    /** Returns the moment that turns this inertia. */
    public Moment times(AngularAcceleration angularAcceleration) {
        return new Moment(si * angularAcceleration.si(), Bands.ofProduct(this, angularAcceleration));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
