package leverwright.mechanics.working;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;

/**
 * A result of the mechanics: a value with its name, its band, its sides and its working.
 *
 * <p>Answers can be added, subtracted and divided by one another where that means something; per-side values never mix
 * with totals. The bands of two answers are then taken as independent, which is never too narrow. The new working starts
 * from both values, each of which keeps a working of its own.
 *
 * @param <M> the kind of the value
 * @param label what it is, such as "hip extension moment"
 * @param value the value; its own {@link Measure#error()} plays no part here
 * @param low lower end of the band; equal to the value when no input carried an error
 * @param high upper end of the band; equal to the value when no input carried an error
 * @param sides whether the value is for one side or in total
 * @param working how the value follows; its last step has this value
 * @param notes cautions and remarks that travel with the value
 */
public record Answer<M extends Measure<M>>(
        String label, M value, M low, M high, Sides sides, Working working, List<String> notes) {

    /**
     * Copies the notes and checks that band and working belong to the value.
     *
     * @throws IllegalArgumentException if the value lies outside its band, or the working ends in another value
     */
    public Answer {
        notes = List.copyOf(notes);
        if (low.compareTo(value) > 0 || high.compareTo(value) < 0) {
            throw new IllegalArgumentException(
                    label + ": the value " + value + " lies outside its band, " + low + " to " + high);
        }
        if (Double.compare(working.last().value(), value.si()) != 0) {
            throw new IllegalArgumentException(
                    label + ": the working ends in " + working.last().value() + ", the value is " + value.si());
        }
    }

    /** Returns an answer without a band and without notes. */
    public static <M extends Measure<M>> Answer<M> of(String label, M value, Sides sides, Working working) {
        return new Answer<>(label, value, value, value, sides, working, List.of());
    }

    /** Returns the same answer with a band around it. */
    public Answer<M> between(M lowest, M highest) {
        return new Answer<>(label, value, lowest, highest, sides, working, notes);
    }

    /** Returns the same answer with one more remark. */
    public Answer<M> noted(String remark) {
        List<String> all = new ArrayList<>(notes);
        all.add(remark);
        return new Answer<>(label, value, low, high, sides, working, all);
    }

    /** Returns whether an input carried an error. */
    public boolean hasBand() {
        return low.compareTo(high) != 0;
    }

    /** Returns the value as the last line of its working shows it, with its sides: "123.0 N·m per side". */
    public String shown() {
        String text = WorkingText.answer(working);
        return sides.words().isEmpty() ? text : text + " " + sides.words();
    }

    /**
     * Returns the sum of two answers for the same sides.
     *
     * @throws IllegalArgumentException if one is per side and the other is not
     */
    public Answer<M> plus(Answer<M> other) {
        Pair pair = pair(other, "added to");
        M sum = value.plus(other.value);
        Step step = Step.of("s", pair.a().plus(pair.b()), sum, "");
        return derived(
                label + " plus " + other.label, sum, low.plus(other.low), high.plus(other.high), sides, step, other);
    }

    /**
     * Returns the difference of two answers for the same sides.
     *
     * @throws IllegalArgumentException if one is per side and the other is not
     */
    public Answer<M> minus(Answer<M> other) {
        Pair pair = pair(other, "subtracted from");
        M difference = value.minus(other.value);
        Step step = Step.of("d", pair.a().minus(pair.b()), difference, "");
        return derived(
                label + " minus " + other.label,
                difference,
                low.minus(other.high),
                high.minus(other.low),
                sides,
                step,
                other);
    }

    /**
     * Returns how many times the other answer goes into this one; both for the same sides.
     *
     * @throws IllegalArgumentException if one is per side and the other is not, or if the other's band holds zero
     */
    public Answer<Ratio> dividedBy(Answer<M> other) {
        Pair pair = pair(other, "divided by");
        if (other.low.si() <= 0 && other.high.si() >= 0) {
            throw new IllegalArgumentException("cannot divide by the " + other.label + ", " + other.low + " to "
                    + other.high + ": it must stay away from zero");
        }
        Ratio quotient = Ratio.of(value.si() / other.value.si());
        double lowest = quotient.si();
        double highest = quotient.si();
        for (double top : new double[] {low.si(), high.si()}) {
            for (double bottom : new double[] {other.low.si(), other.high.si()}) {
                lowest = Math.min(lowest, top / bottom);
                highest = Math.max(highest, top / bottom);
            }
        }
        Step step = Step.of("q", pair.a().dividedBy(pair.b()), quotient, "");
        return derived(
                label + " over " + (label.equals(other.label) ? "another" : other.label),
                quotient,
                Ratio.of(lowest),
                Ratio.of(highest),
                Sides.NOT_SIDED,
                step,
                other);
    }

    private record Pair(Expression a, Expression b) {}

    private Pair pair(Answer<M> other, String joined) {
        if (sides != other.sides) {
            throw new IllegalArgumentException("the " + label + " (" + named(sides) + ") cannot be " + joined + " the "
                    + other.label + " (" + named(other.sides) + "): bring both to the same sides first");
        }
        return new Pair(
                Expression.symbol("a", value, label + ", with a working of its own"),
                Expression.symbol("b", other.value, other.label + ", with a working of its own"));
    }

    private static String named(Sides sides) {
        return sides == Sides.NOT_SIDED ? "neither per side nor total" : sides.words();
    }

    private <R extends Measure<R>> Answer<R> derived(
            String title, R result, R lowest, R highest, Sides resultSides, Step step, Answer<M> other) {
        Working joint = Working.of(title, List.of(step)).endingWith(Working.CELL_BEGINS);
        List<String> all = new ArrayList<>(notes);
        other.notes.stream().filter(note -> !all.contains(note)).forEach(all::add);
        return new Answer<>(title, result, lowest, highest, resultSides, joint, all);
    }
}
