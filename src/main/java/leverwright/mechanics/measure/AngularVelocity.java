package leverwright.mechanics.measure;

/**
 * A rate of turning, in radians per second.
 *
 * @param si the value in rad/s; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record AngularVelocity(double si, double error) implements Measure<AngularVelocity> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public AngularVelocity {
        si = Checks.value(si, Dimension.ANGULAR_VELOCITY);
        error = Checks.error(error, Dimension.ANGULAR_VELOCITY);
    }

    /** Returns a value in rad/s that carries no error. */
    public static AngularVelocity of(double si) {
        return new AngularVelocity(si, 0);
    }

    /**
     * Returns an {@link AngularVelocity} as written by a person, such as {@code 60 deg/s}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static AngularVelocity parse(String text) {
        return (AngularVelocity) MeasureText.parse(text, Dimension.ANGULAR_VELOCITY);
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGULAR_VELOCITY;
    }

    @Override
    public AngularVelocity with(double si, double error) {
        return new AngularVelocity(si, error);
    }

    /** Returns the angle turned. */
    public Angle times(Duration duration) {
        return new Angle(si * duration.si(), Bands.ofProduct(this, duration));
    }

    /** Returns the speed at a radius. */
    public Speed times(Length length) {
        return new Speed(si * length.si(), Bands.ofProduct(this, length));
    }

    /** Returns the mean angular acceleration. */
    public AngularAcceleration dividedBy(Duration duration) {
        return new AngularAcceleration(Bands.quotient(this, duration), Bands.ofQuotient(this, duration));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
