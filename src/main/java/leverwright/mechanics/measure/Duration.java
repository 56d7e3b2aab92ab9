package leverwright.mechanics.measure;

/**
 * A stretch of time, in seconds.
 *
 * @param si the value in s; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Duration(double si, double error) implements Measure<Duration> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Duration {
        si = Checks.value(si, Dimension.DURATION);
        error = Checks.error(error, Dimension.DURATION);
    }

    /** Returns a value in s that carries no error. */
    public static Duration of(double si) {
        return new Duration(si, 0);
    }

    /**
     * Returns a {@link Duration} as written by a person, such as {@code 2.5 s}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Duration parse(String text) {
        return (Duration) MeasureText.parse(text, Dimension.DURATION);
    }

    @Override
    public Dimension dimension() {
        return Dimension.DURATION;
    }

    @Override
    public Duration with(double si, double error) {
        return new Duration(si, error);
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
