package leverwright.mechanics.measure;

/**
 * A moment of force about a point, in newton metres; never interchangeable with {@link Work}.
 *
 * @param si the value in N·m; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Moment(double si, double error) implements Measure<Moment> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Moment {
        si = Checks.value(si, Dimension.MOMENT);
        error = Checks.error(error, Dimension.MOMENT);
    }

    /** Returns a value in N·m that carries no error. */
    public static Moment of(double si) {
        return new Moment(si, 0);
    }

    /**
     * Returns a {@link Moment} as written by a person, such as {@code 123 N·m}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Moment parse(String text) {
        return (Moment) MeasureText.parse(text, Dimension.MOMENT);
    }

    @Override
    public Dimension dimension() {
        return Dimension.MOMENT;
    }

    @Override
    public Moment with(double si, double error) {
        return new Moment(si, error);
    }

    /** Returns the force which on a lever arm makes this moment. */
    public Force dividedBy(Length length) {
        return new Force(Bands.quotient(this, length), Bands.ofQuotient(this, length));
    }

    /** Returns the lever arm on which a force makes this moment. */
    public Length dividedBy(Force force) {
        return new Length(Bands.quotient(this, force), Bands.ofQuotient(this, force));
    }

    /** Returns the angular acceleration of an inertia under this moment. */
    public AngularAcceleration dividedBy(Inertia inertia) {
        return new AngularAcceleration(Bands.quotient(this, inertia), Bands.ofQuotient(this, inertia));
    }

    /** Returns the work of this moment through an angle. */
    public Work times(Angle angle) {
        return new Work(si * angle.si(), Bands.ofProduct(this, angle));
    }

    /** Returns the power of this moment at a rate of turning. */
    public Power times(AngularVelocity angularVelocity) {
        return new Power(si * angularVelocity.si(), Bands.ofProduct(this, angularVelocity));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
