package leverwright.mechanics.measure;

/**
 * A speed or a signed component of velocity, in metres per second.
 *
 * @param si the value in m/s; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Speed(double si, double error) implements Measure<Speed> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Speed {
        si = Checks.value(si, Dimension.SPEED);
        error = Checks.error(error, Dimension.SPEED);
    }

    /** Returns a value in m/s that carries no error. */
    public static Speed of(double si) {
        return new Speed(si, 0);
    }

    /**
     * Returns a {@link Speed} as written by a person, such as {@code 0.4 m/s}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Speed parse(String text) {
        return (Speed) MeasureText.parse(text, Dimension.SPEED);
    }

    @Override
    public Dimension dimension() {
        return Dimension.SPEED;
    }

    @Override
    public Speed with(double si, double error) {
        return new Speed(si, error);
    }

    /** Returns the mean acceleration. */
    public Acceleration dividedBy(Duration duration) {
        return new Acceleration(Bands.quotient(this, duration), Bands.ofQuotient(this, duration));
    }

    /** Returns the way covered. */
    public Length times(Duration duration) {
        return new Length(si * duration.si(), Bands.ofProduct(this, duration));
    }

    /** Returns the rate of turning at a radius. */
    public AngularVelocity dividedBy(Length length) {
        return new AngularVelocity(Bands.quotient(this, length), Bands.ofQuotient(this, length));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
