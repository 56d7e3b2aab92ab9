package leverwright.mechanics.measure;

/**
 * An angle or lean, in radians; counter-clockwise positive unless the quantity that carries it says otherwise.
 *
 * @param si the value in rad; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Angle(double si, double error) implements Measure<Angle> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Angle {
        si = Checks.value(si, Dimension.ANGLE);
        error = Checks.error(error, Dimension.ANGLE);
    }

    /** Returns a value in rad that carries no error. */
    public static Angle of(double si) {
        return new Angle(si, 0);
    }

    /**
     * Returns an {@link Angle} as written by a person, such as {@code 45 ± 5 deg}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Angle parse(String text) {
        return (Angle) MeasureText.parse(text, Dimension.ANGLE);
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGLE;
    }

    @Override
    public Angle with(double si, double error) {
        return new Angle(si, error);
    }

    /** Returns the mean rate of turning. */
    public AngularVelocity dividedBy(Duration duration) {
        return new AngularVelocity(Bands.quotient(this, duration), Bands.ofQuotient(this, duration));
    }

    /** Returns this angle in degrees, without its error. */
    public double degrees() {
        return Unit.DEGREE.fromSi(si);
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
