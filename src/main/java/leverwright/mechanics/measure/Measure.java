package leverwright.mechanics.measure;

/**
 * A value with its kind: SI inside, and the half width of the band that the value was typed or computed with.
 *
 * <p>Only arithmetic that means something compiles: a {@link Force} times a {@link Length} is a {@link Moment}, and two
 * different kinds cannot be added.
 *
 * <p>Errors are limits, not standard deviations. Every operation returns the half width that encloses all results which
 * its operands' bands allow, each operand moving on its own; so a difference of a value with itself keeps a band. Where
 * the exact band is lopsided (products, quotients) the wider side is used for both.
 *
 * <p>Comparison looks at the values alone, not at the errors; {@code equals} looks at both.
 *
 * @param <M> the kind itself
 */
public sealed interface Measure<M extends Measure<M>> extends Comparable<M>
        permits Angle,
                Length,
                Mass,
                Force,
                Moment,
                Work,
                Stress,
                Ratio,
                Stiffness,
                Duration,
                AngularVelocity,
                AngularAcceleration,
                Speed,
                Acceleration,
                Power,
                Area,
                Inertia {

    /** Returns the value in the SI unit of its kind (radians for angles). */
    double si();

    /**
     * Returns the half width of the band around the value, in the same unit as {@link #si()}; 0 where no error was
     * given. The true value is meant to lie within the band: these are limits, not a standard deviation.
     */
    double error();

    /** Returns which kind of quantity this is. */
    Dimension dimension();

    /**
     * Returns a value of the same kind.
     *
     * @param si the value in the SI unit
     * @param error half width of its band in the SI unit, not negative
     */
    M with(double si, double error);

    /** Returns the value in a unit of its kind, without its error. */
    default double in(Unit unit) {
        Checks.unit(unit, dimension());
        return unit.fromSi(si());
    }

    /** Returns the sum; the half widths add. */
    default M plus(M other) {
        return with(si() + other.si(), error() + other.error());
    }

    /** Returns the difference; the half widths add. */
    default M minus(M other) {
        return with(si() - other.si(), error() + other.error());
    }

    /** Returns the value and its half width, both multiplied. */
    default M times(double factor) {
        return with(si() * factor, error() * Math.abs(factor));
    }

    /** Returns this value multiplied by a ratio, whose band widens the result's. */
    default M times(Ratio factor) {
        return with(si() * factor.si(), Bands.ofProduct(this, factor));
    }

    /**
     * Returns the value and its half width, both divided.
     *
     * @throws IllegalArgumentException if the divisor is zero
     */
    default M dividedBy(double divisor) {
        Checks.divisor(divisor);
        return with(si() / divisor, error() / Math.abs(divisor));
    }

    /**
     * Returns how many times the other value goes into this one.
     *
     * @throws IllegalArgumentException if the other value is zero or its band holds zero
     */
    default Ratio dividedBy(M other) {
        return new Ratio(Bands.quotient(this, other), Bands.ofQuotient(this, other));
    }

    /** Returns the value with its sign turned; the band keeps its width. */
    default M negated() {
        return with(-si(), error());
    }

    /** Returns the value without its sign; the band keeps its width. */
    default M abs() {
        return with(Math.abs(si()), error());
    }

    /**
     * Returns the same value with the size of the given one as the half width of its band, instead of the former one.
     * The argument's own error is not used.
     */
    default M plusOrMinus(M halfWidth) {
        return with(si(), Math.abs(halfWidth.si()));
    }

    /** Returns the lower end of the band, without an error of its own. */
    default M lowest() {
        return with(si() - error(), 0);
    }

    /** Returns the upper end of the band, without an error of its own. */
    default M highest() {
        return with(si() + error(), 0);
    }

    /** Compares the values; errors play no part. */
    @Override
    default int compareTo(M other) {
        return Double.compare(si(), other.si());
    }
}
