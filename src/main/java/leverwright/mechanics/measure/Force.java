package leverwright.mechanics.measure;

/**
 * A force or a signed component of one, in newtons.
 *
 * @param si the value in N; finite
 * @param error half width of the band around the value, same unit, not negative; see {@link Measure#error()}
 */
public record Force(double si, double error) implements Measure<Force> {

    /**
     * Checks both numbers; minus zero becomes zero.
     *
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Force {
        si = Checks.value(si, Dimension.FORCE);
        error = Checks.error(error, Dimension.FORCE);
    }

    /** Returns a value in N that carries no error. */
    public static Force of(double si) {
        return new Force(si, 0);
    }

    /**
     * Returns a {@link Force} as written by a person, such as {@code 490 N}.
     *
     * @throws IllegalArgumentException in the words of {@link MeasureText#parse}
     */
    public static Force parse(String text) {
        return (Force) MeasureText.parse(text, Dimension.FORCE);
    }

    @Override
    public Dimension dimension() {
        return Dimension.FORCE;
    }

    @Override
    public Force with(double si, double error) {
        return new Force(si, error);
    }

    /** Returns the moment of this force on a lever arm. */
    public Moment times(Length length) {
        return new Moment(si * length.si(), Bands.ofProduct(this, length));
    }

    /** Returns the work of this force along a distance in its own direction. */
    public Work workOver(Length length) {
        return new Work(si * length.si(), Bands.ofProduct(this, length));
    }

    /** Returns the power of this force along its own direction. */
    public Power times(Speed speed) {
        return new Power(si * speed.si(), Bands.ofProduct(this, speed));
    }

    /** Returns the stiffness that gives this force at a stretch. */
    public Stiffness dividedBy(Length length) {
        return new Stiffness(Bands.quotient(this, length), Bands.ofQuotient(this, length));
    }

    /** Returns the stretch at which a stiffness gives this force. */
    public Length dividedBy(Stiffness stiffness) {
        return new Length(Bands.quotient(this, stiffness), Bands.ofQuotient(this, stiffness));
    }

    /** Returns this force spread over an area. */
    public Stress dividedBy(Area area) {
        return new Stress(Bands.quotient(this, area), Bands.ofQuotient(this, area));
    }

    /** Returns the area over which this force makes a stress. */
    public Area dividedBy(Stress stress) {
        return new Area(Bands.quotient(this, stress), Bands.ofQuotient(this, stress));
    }

    /** Returns the acceleration of a mass under this force. */
    public Acceleration dividedBy(Mass mass) {
        return new Acceleration(Bands.quotient(this, mass), Bands.ofQuotient(this, mass));
    }

    /** Returns the mass that this force accelerates so. */
    public Mass dividedBy(Acceleration acceleration) {
        return new Mass(Bands.quotient(this, acceleration), Bands.ofQuotient(this, acceleration));
    }

    @Override
    public String toString() {
        return MeasureText.print(this);
    }
}
