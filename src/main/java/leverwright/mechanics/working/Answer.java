package leverwright.mechanics.working;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A result of the mechanics: a value with its name, its band, its sides and its working.
 *
 * <p>Answers can be added, subtracted and divided by one another where that means something; per-side values never mix
 * with totals. The bands of two answers are then taken as independent, which is never too narrow. The new working starts
 * from both values, each of which keeps a working of its own.
 *
 * @param <M> the kind of the value
 */
public final class Answer<M extends Measure<M>> {

    private final String label;
    private final M value;
    private final M low;
    private final M high;
    private final Sides sides;
    private final Later working;
    private final List<String> notes;
    private final Unit unit;

    /** A working that is made when somebody asks for it, and once only. */
    private static final class Later {
        private final Supplier<Working> maker;
        private @Nullable Working made;

        Later(Supplier<Working> maker) {
            this.maker = maker;
        }

        synchronized Working get(String label, double value) {
            Working known = made;
            if (known == null) {
                known = maker.get();
                if (Double.compare(known.last().value(), value) != 0) {
                    throw new IllegalArgumentException(
                            label + ": the working ends in " + known.last().value() + ", the value is " + value);
                }
                made = known;
            }
            return known;
        }
    }

    private Answer(String label, M value, M low, M high, Sides sides, Later working, List<String> notes, Unit unit) {
        this.label = label;
        this.value = value;
        this.low = low;
        this.high = high;
        this.sides = sides;
        this.working = working;
        this.notes = List.copyOf(notes);
        this.unit = unit;
        if (low.compareTo(value) > 0 || high.compareTo(value) < 0) {
            throw new IllegalArgumentException(
                    label + ": the value " + value + " lies outside its band, " + low + " to " + high);
        }
    }

    /**
     * Returns an answer without a band and without notes.
     *
     * @param label what it is, such as "hip extension moment"
     * @param value the value; its own {@link Measure#error()} plays no part here
     * @param sides whether the value is for one side or in total
     * @param working how the value follows; its last step has this value
     * @throws IllegalArgumentException if the working ends in another value
     */
    public static <M extends Measure<M>> Answer<M> of(String label, M value, Sides sides, Working working) {
        Answer<M> answer = of(label, value, sides, () -> working);
        answer.working();
        return answer;
    }

    /**
     * Returns an answer without a band and without notes, whose working is made when somebody asks for it.
     *
     * @param label what it is, such as "hip extension moment"
     * @param value the value; its own {@link Measure#error()} plays no part here
     * @param sides whether the value is for one side or in total
     * @param working makes the account of how the value follows, always the same; its last step has this value
     */
    public static <M extends Measure<M>> Answer<M> of(String label, M value, Sides sides, Supplier<Working> working) {
        return new Answer<>(
                label,
                value,
                value,
                value,
                sides,
                new Later(working),
                List.of(),
                value.dimension().shown());
    }

    /** Returns what it is, such as "hip extension moment". */
    public String label() {
        return label;
    }

    /** Returns the value; its own {@link Measure#error()} plays no part here. */
    public M value() {
        return value;
    }

    /** Returns the lower end of the band; equal to the value when no input carried an error. */
    public M low() {
        return low;
    }

    /** Returns the upper end of the band; equal to the value when no input carried an error. */
    public M high() {
        return high;
    }

    /** Returns whether the value is for one side or in total. */
    public Sides sides() {
        return sides;
    }

    /**
     * Returns how the value follows; the last step has this value.
     *
     * @throws IllegalArgumentException if the working ends in another value
     */
    public Working working() {
        return working.get(label, value.si());
    }

    /** Returns cautions and remarks that travel with the value. */
    public List<String> notes() {
        return notes;
    }

    /**
     * Returns the same answer with a band around it.
     *
     * @throws IllegalArgumentException if the value lies outside it
     */
    public Answer<M> between(M lowest, M highest) {
        return new Answer<>(label, value, lowest, highest, sides, working, notes, unit);
    }

    /** Returns the same answer with one more remark. */
    public Answer<M> noted(String remark) {
        return noted(List.of(remark));
    }

    /** Returns the same answer with more remarks. */
    public Answer<M> noted(Collection<String> remarks) {
        List<String> all = new ArrayList<>(notes);
        all.addAll(remarks);
        return new Answer<>(label, value, low, high, sides, working, all, unit);
    }

    /**
     * Returns the same answer shown in another unit of its kind, such as percent.
     *
     * @throws IllegalArgumentException if the unit is of another kind
     */
    public Answer<M> shownIn(Unit other) {
        if (other.dimension() != value.dimension()) {
            throw new IllegalArgumentException(
                    "the " + label + " cannot be shown in " + other.symbol() + "; take a unit of its kind");
        }
        return new Answer<>(label, value, low, high, sides, working, notes, other);
    }

    /** Returns the unit in which it is shown. */
    public Unit unit() {
        return unit;
    }

    /** Returns whether an input carried an error. */
    public boolean hasBand() {
        return low.compareTo(high) != 0;
    }

    /** Returns the value as the last line of its working shows it, with its sides: "123.0 N·m per side". */
    public String shown() {
        String text = WorkingText.answer(working());
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
        return of(title, result, resultSides, joint).between(lowest, highest).noted(all);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Answer<?> that
                && label.equals(that.label)
                && value.equals(that.value)
                && low.equals(that.low)
                && high.equals(that.high)
                && sides == that.sides
                && notes.equals(that.notes)
                && working().equals(that.working());
    }

    @Override
    public int hashCode() {
        return Objects.hash(label, value, low, high, sides);
    }

    @Override
    public String toString() {
        return label + " " + shown();
    }
}
