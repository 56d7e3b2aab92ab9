package leverwright.mechanics.study;

import leverwright.mechanics.exercise.Reading;
import org.jspecify.annotations.Nullable;

/**
 * What a claim asks of every draw: that a reading, or a reading less another one, lies between two limits.
 *
 * @param sentence the claim in words
 * @param reading what is read
 * @param less what is taken off it; null for nothing
 * @param least the least that passes, SI; minus infinity when there is none
 * @param greatest the greatest that passes, SI; infinity when there is none
 * @param openEnds whether the limits themselves fail
 */
public record Order(
        String sentence,
        Reading<?> reading,
        @Nullable Reading<?> less,
        double least,
        double greatest,
        boolean openEnds) {

    /** Returns the claim that one reading lies above another. */
    public static Order above(String sentence, Reading<?> reading, Reading<?> other) {
        comparable(reading, other);
        return new Order(sentence, reading, other, 0, Double.POSITIVE_INFINITY, true);
    }

    /** Returns the claim that one reading lies below another. */
    public static Order below(String sentence, Reading<?> reading, Reading<?> other) {
        comparable(reading, other);
        return new Order(sentence, reading, other, Double.NEGATIVE_INFINITY, 0, true);
    }

    /** Returns the claim that a reading lies between limits, SI. */
    public static Order between(String sentence, Reading<?> reading, double least, double greatest, boolean openEnds) {
        return new Order(sentence, reading, null, least, greatest, openEnds);
    }

    static void comparable(Reading<?> one, Reading<?> other) {
        if (one.unit().dimension() != other.unit().dimension() || one.sides() != other.sides()) {
            throw new IllegalArgumentException("the " + one + " (" + one.unit().symbol() + " "
                    + one.sides().words() + ") and the " + other + " ("
                    + other.unit().symbol() + " " + other.sides().words()
                    + ") are of different kinds; compare like with like");
        }
    }

    boolean passes(double value) {
        return openEnds ? value > least && value < greatest : value >= least && value <= greatest;
    }
}
