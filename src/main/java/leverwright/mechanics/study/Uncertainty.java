package leverwright.mechanics.study;

import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.numeric.NormalCurve;

/**
 * How unsure an input is, for a {@link Spread}: {@code withinLimits(deg(5))}, {@code normal(cm(1))}, {@code triangular(kg(50),
 * kg(60), kg(65))}. What names no centre lies about the input's present value.
 *
 * @param <Q> the kind of the input
 */
public final class Uncertainty<Q extends Measure<Q>> {
    /** Says that an input is as unsure as its source says. */
    public enum Published {
        /** The spread that the source of each number gives. */
        PUBLISHED
    }

    /** Returns the word for inputs whose spread was published: {@code vary(MUSCLE_AREAS, published())}. */
    public static Published published() {
        return Published.PUBLISHED;
    }

    private enum Kind {
        LIMITS_ABOUT,
        LIMITS,
        NORMAL_ABOUT,
        NORMAL,
        TRIANGULAR
    }

    private final Kind kind;
    private final Q first;
    private final Q second;
    private final Q third;

    private Uncertainty(Kind kind, Q first, Q second, Q third) {
        this.kind = kind;
        this.first = first;
        this.second = second;
        this.third = third;
    }

    /**
     * Returns values evenly within a half width of the present one.
     *
     * @param halfWidth greater than 0
     * @throws IllegalArgumentException if it is not
     */
    public static <Q extends Measure<Q>> Uncertainty<Q> withinLimits(Q halfWidth) {
        positive(halfWidth, "half width");
        return new Uncertainty<>(Kind.LIMITS_ABOUT, halfWidth, halfWidth, halfWidth);
    }

    /**
     * Returns values evenly between two limits.
     *
     * @param least the smaller limit
     * @param most the larger one
     * @throws IllegalArgumentException if they are the wrong way round
     */
    public static <Q extends Measure<Q>> Uncertainty<Q> withinLimits(Q least, Q most) {
        rising(least, most);
        return new Uncertainty<>(Kind.LIMITS, least, most, most);
    }

    /**
     * Returns values of a normal distribution about the present one.
     *
     * @param deviation standard deviation, greater than 0
     * @throws IllegalArgumentException if it is not
     */
    public static <Q extends Measure<Q>> Uncertainty<Q> normal(Q deviation) {
        positive(deviation, "standard deviation");
        return new Uncertainty<>(Kind.NORMAL_ABOUT, deviation, deviation, deviation);
    }

    /**
     * Returns values of a normal distribution.
     *
     * @param mean its middle
     * @param deviation standard deviation, greater than 0
     * @throws IllegalArgumentException if it is not
     */
    public static <Q extends Measure<Q>> Uncertainty<Q> normal(Q mean, Q deviation) {
        finite(mean);
        positive(deviation, "standard deviation");
        return new Uncertainty<>(Kind.NORMAL, mean, deviation, deviation);
    }

    /**
     * Returns values of a triangular distribution.
     *
     * @param least where it begins
     * @param likeliest where its peak stands
     * @param most where it ends, greater than the least
     * @throws IllegalArgumentException if they do not rise
     */
    public static <Q extends Measure<Q>> Uncertainty<Q> triangular(Q least, Q likeliest, Q most) {
        rising(least, most);
        if (likeliest.si() < least.si() || likeliest.si() > most.si()) {
            throw new IllegalArgumentException("the likeliest value is " + likeliest + "; allowed: " + least + " to "
                    + most + ", the limits of the triangle");
        }
        return new Uncertainty<>(Kind.TRIANGULAR, least, likeliest, most);
    }

    private static void finite(Measure<?> value) {
        if (!Double.isFinite(value.si())) {
            throw new IllegalArgumentException("an input of a spread is " + value.si() + "; allowed: finite values");
        }
    }

    private static void positive(Measure<?> width, String what) {
        finite(width);
        if (!(width.si() > 0)) {
            throw new IllegalArgumentException(
                    "a " + what + " is " + width + "; allowed: greater than 0. Leave the input out where it is sure.");
        }
    }

    private static void rising(Measure<?> least, Measure<?> most) {
        finite(least);
        finite(most);
        if (!(least.si() < most.si())) {
            throw new IllegalArgumentException(
                    "limits go from " + least + " to " + most + "; allowed: from a smaller to a larger value");
        }
    }

    /**
     * Checks that an input has a present value where this lies about it.
     *
     * @throws IllegalArgumentException if it has none
     */
    void about(Variable<Q> input, double present) {
        boolean needsOne = kind == Kind.LIMITS_ABOUT || kind == Kind.NORMAL_ABOUT;
        if (needsOne && Double.isNaN(present)) {
            throw new IllegalArgumentException(
                    input.name() + " follows from the other settings or is a cell's own, so that"
                            + " it has no value to lie about; give both limits, as in withinLimits(deg(40), deg(50))");
        }
    }

    /**
     * Returns the value below which a part of the draws lies.
     *
     * @param unit that part, greater than 0 and less than 1
     * @param present where the input stands, SI
     */
    double at(double unit, double present) {
        return switch (kind) {
            case LIMITS_ABOUT -> present + (2 * unit - 1) * first.si();
            case LIMITS -> first.si() + unit * (second.si() - first.si());
            case NORMAL_ABOUT -> present + NormalCurve.at(unit) * first.si();
            case NORMAL -> first.si() + NormalCurve.at(unit) * second.si();
            case TRIANGULAR -> triangle(unit);
        };
    }

    private double triangle(double unit) {
        double width = third.si() - first.si();
        double rise = second.si() - first.si();
        return unit * width < rise
                ? first.si() + Math.sqrt(unit * width * rise)
                : third.si() - Math.sqrt((1 - unit) * width * (width - rise));
    }

    /** Returns it in words, such as "within ±5°". */
    String words(Unit unit) {
        return switch (kind) {
            case LIMITS_ABOUT -> "evenly within ±" + text(first, unit);
            case LIMITS -> "evenly from " + text(first, unit) + " to " + text(second, unit);
            case NORMAL_ABOUT -> "normal, standard deviation " + text(first, unit);
            case NORMAL -> "normal, mean " + text(first, unit) + ", standard deviation " + text(second, unit);
            case TRIANGULAR ->
                "triangular from " + text(first, unit) + " over " + text(second, unit) + " to " + text(third, unit);
        };
    }

    private String text(Q value, Unit unit) {
        return MeasureText.exact(first.with(value.si(), 0), unit);
    }
}
