package leverwright.mechanics.measure;

/**
 * A rate of work, in watts.
 *
 * @param si the value in W; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Power(double si, double error) implements Measure<Power> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Power {
        si = Checks.value(si, Dimension.POWER);
        error = Checks.error(error, Dimension.POWER);
    }

    /** Returns a value in W that carries no error. */
    public static Power of(double si) {
        return new Power(si, 0);
    }

    /**
     * Returns a {@link Power} as written by a person, such as {@code 300 W}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Power parse(String text) {
        return (Power) MeasureText.parse(text, Dimension.POWER);
    }

    @Override
    public Dimension dimension() {
        return Dimension.POWER;
    }

    @Override
    public Power with(double si, double error) {
        return new Power(si, error);
    }

    /** Returns the work done. */
    public Work times(Duration duration) {
        return new Work(si * duration.si(), Bands.ofProduct(this, duration));
    }

    /** Returns the speed at which a force makes this power. */
    public Speed dividedBy(Force force) {
        return new Speed(Bands.quotient(this, force), Bands.ofQuotient(this, force));
    }

    /** Returns the moment that makes this power. */
    public Moment dividedBy(AngularVelocity angularVelocity) {
        return new Moment(Bands.quotient(this, angularVelocity), Bands.ofQuotient(this, angularVelocity));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
