package leverwright.mechanics.measure;

/**
 * A number without a unit.
 *
 * @param si the value in plain numbers, not percent; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Ratio(double si, double error) implements Measure<Ratio> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Ratio {
        si = Checks.value(si, Dimension.RATIO);
        error = Checks.error(error, Dimension.RATIO);
    }

    /** Returns a value in plain numbers that carries no error. */
    public static Ratio of(double si) {
        return new Ratio(si, 0);
    }

    /**
     * Returns a {@link Ratio} as written by a person, such as {@code 12 %}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Ratio parse(String text) {
        return (Ratio) MeasureText.parse(text, Dimension.RATIO);
    }

    @Override
    public Dimension dimension() {
        return Dimension.RATIO;
    }

    @Override
    public Ratio with(double si, double error) {
        return new Ratio(si, error);
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
