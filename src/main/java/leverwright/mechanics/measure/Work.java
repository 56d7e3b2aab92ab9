package leverwright.mechanics.measure;

/**
 * Work or energy, in joules; never interchangeable with {@link Moment}.
 *
 * @param si the value in J; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Work(double si, double error) implements Measure<Work> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Work {
        si = Checks.value(si, Dimension.WORK);
        error = Checks.error(error, Dimension.WORK);
    }

    /** Returns a value in J that carries no error. */
    public static Work of(double si) {
        return new Work(si, 0);
    }

    /**
     * Returns a {@link Work} as written by a person, such as {@code 250 J}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Work parse(String text) {
        return (Work) MeasureText.parse(text, Dimension.WORK);
    }

    @Override
    public Dimension dimension() {
        return Dimension.WORK;
    }

    @Override
    public Work with(double si, double error) {
        return new Work(si, error);
    }

    /** Returns the mean power. */
    public Power dividedBy(Duration duration) {
        return new Power(Bands.quotient(this, duration), Bands.ofQuotient(this, duration));
    }

    /** Returns the mean force along a distance. */
    public Force dividedBy(Length length) {
        return new Force(Bands.quotient(this, length), Bands.ofQuotient(this, length));
    }

    /** Returns the distance along which a force does this work. */
    public Length dividedBy(Force force) {
        return new Length(Bands.quotient(this, force), Bands.ofQuotient(this, force));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
