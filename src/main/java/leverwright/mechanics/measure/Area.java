package leverwright.mechanics.measure;

/**
 * An area, in square metres.
 *
 * @param si the value in m²; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Area(double si, double error) implements Measure<Area> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Area {
        si = Checks.value(si, Dimension.AREA);
        error = Checks.error(error, Dimension.AREA);
    }

    /** Returns a value in m² that carries no error. */
    public static Area of(double si) {
        return new Area(si, 0);
    }

    /**
     * Returns an {@link Area} as written by a person, such as {@code 48 cm²}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Area parse(String text) {
        return (Area) MeasureText.parse(text, Dimension.AREA);
    }

    @Override
    public Dimension dimension() {
        return Dimension.AREA;
    }

    @Override
    public Area with(double si, double error) {
        return new Area(si, error);
    }

    /** Returns the force of a stress on this area. */
    public Force times(Stress stress) {
        return new Force(si * stress.si(), Bands.ofProduct(this, stress));
    }

    /** Returns the other side of the rectangle. */
    public Length dividedBy(Length length) {
        return new Length(Bands.quotient(this, length), Bands.ofQuotient(this, length));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
