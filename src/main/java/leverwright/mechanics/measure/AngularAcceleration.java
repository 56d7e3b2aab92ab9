package leverwright.mechanics.measure;

/**
 * A rate of change of turning, in radians per second squared.
 *
 * @param si the value in rad/s²; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record AngularAcceleration(double si, double error) implements Measure<AngularAcceleration> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public AngularAcceleration {
        si = Checks.value(si, Dimension.ANGULAR_ACCELERATION);
        error = Checks.error(error, Dimension.ANGULAR_ACCELERATION);
    }

    /** Returns a value in rad/s² that carries no error. */
    public static AngularAcceleration of(double si) {
        return new AngularAcceleration(si, 0);
    }

    /**
     * Returns an {@link AngularAcceleration} as written by a person, such as {@code 200 deg/s²}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static AngularAcceleration parse(String text) {
        return (AngularAcceleration) MeasureText.parse(text, Dimension.ANGULAR_ACCELERATION);
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGULAR_ACCELERATION;
    }

    @Override
    public AngularAcceleration with(double si, double error) {
        return new AngularAcceleration(si, error);
    }

    /** Returns the change in the rate of turning. */
    public AngularVelocity times(Duration duration) {
        return new AngularVelocity(si * duration.si(), Bands.ofProduct(this, duration));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
