package leverwright.mechanics.measure;

/**
 * A length, distance or signed coordinate, in metres.
 *
 * @param si the value in m; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Length(double si, double error) implements Measure<Length> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Length {
        si = Checks.value(si, Dimension.LENGTH);
        error = Checks.error(error, Dimension.LENGTH);
    }

    /** Returns a value in m that carries no error. */
    public static Length of(double si) {
        return new Length(si, 0);
    }

    /**
     * Returns a {@link Length} as written by a person, such as {@code 5 ft 10 in}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Length parse(String text) {
        return (Length) MeasureText.parse(text, Dimension.LENGTH);
    }

    @Override
    public Dimension dimension() {
        return Dimension.LENGTH;
    }

    @Override
    public Length with(double si, double error) {
        return new Length(si, error);
    }

    /** Returns the moment of a force on this lever arm. */
    public Moment times(Force force) {
        return new Moment(si * force.si(), Bands.ofProduct(this, force));
    }

    /** Returns the rectangle of two lengths. */
    public Area times(Length length) {
        return new Area(si * length.si(), Bands.ofProduct(this, length));
    }

    /** Returns the mean speed. */
    public Speed dividedBy(Duration duration) {
        return new Speed(Bands.quotient(this, duration), Bands.ofQuotient(this, duration));
    }

    /** Returns the time this way takes. */
    public Duration dividedBy(Speed speed) {
        return new Duration(Bands.quotient(this, speed), Bands.ofQuotient(this, speed));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
