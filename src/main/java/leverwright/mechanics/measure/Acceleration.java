package leverwright.mechanics.measure;

/**
 * An acceleration or a signed component of one, in metres per second squared.
 *
 * @param si the value in m/s²; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Acceleration(double si, double error) implements Measure<Acceleration> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Acceleration {
        si = Checks.value(si, Dimension.ACCELERATION);
        error = Checks.error(error, Dimension.ACCELERATION);
    }

    /** Returns a value in m/s² that carries no error. */
    public static Acceleration of(double si) {
        return new Acceleration(si, 0);
    }

    /**
     * Returns an {@link Acceleration} as written by a person, such as {@code 9.81 m/s²}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Acceleration parse(String text) {
        return (Acceleration) MeasureText.parse(text, Dimension.ACCELERATION);
    }

    @Override
    public Dimension dimension() {
        return Dimension.ACCELERATION;
    }

    @Override
    public Acceleration with(double si, double error) {
        return new Acceleration(si, error);
    }

    /** Returns the force that gives a mass this acceleration. */
    public Force times(Mass mass) {
        return new Force(si * mass.si(), Bands.ofProduct(this, mass));
    }

    /** Returns the change of speed. */
    public Speed times(Duration duration) {
        return new Speed(si * duration.si(), Bands.ofProduct(this, duration));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
