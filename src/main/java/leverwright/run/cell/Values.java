package leverwright.run.cell;

import java.util.List;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Working;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Quantity;
import leverwright.run.result.TableResult;
import org.jspecify.annotations.Nullable;

/** Turns values of the mechanics into results. */
final class Values {

    private Values() {}

    static Quantity quantity(Answer<?> answer) {
        return new Quantity(
                answer.value().si(), answer.low().si(), answer.high().si(), answer.unit());
    }

    static Quantity quantity(Measure<?> value) {
        return new Quantity(
                value.si(),
                value.si() - value.error(),
                value.si() + value.error(),
                value.dimension().shown());
    }

    /** Returns the working of an answer whose reader sees it folded; null in runs that leave those out. */
    static @Nullable Working folded(Answer<?> answer) {
        return CellSink.current().wantsEveryWorking() ? answer.working() : null;
    }

    static NumberResult number(Answer<?> answer, boolean workingOpen) {
        return new NumberResult(
                answer.label(),
                quantity(answer),
                answer.sides(),
                workingOpen ? answer.working() : folded(answer),
                workingOpen,
                answer.notes());
    }

    static NumberResult number(String title, Answer<?> answer) {
        return new NumberResult(title, quantity(answer), answer.sides(), folded(answer), false, answer.notes());
    }

    static NumberResult number(String title, Measure<?> value) {
        return new NumberResult(title, quantity(value), Sides.NOT_SIDED, null, false, List.of());
    }

    static NumberResult number(String title, double value) {
        return new NumberResult(title, Quantity.exact(value, Unit.ONE), Sides.NOT_SIDED, null, false, List.of());
    }

    /** Returns a table's entry for a value, and adds the remarks that come with it to the table's notes, each once. */
    static TableResult.Entry entry(Object value, List<String> notes) {
        if (value instanceof Answer<?> answer) {
            answer.notes().stream().filter(note -> !notes.contains(note)).forEach(notes::add);
            return new TableResult.NumberEntry(quantity(answer), answer.sides(), folded(answer));
        }
        if (value instanceof Measure<?> measure) {
            return new TableResult.NumberEntry(quantity(measure), Sides.NOT_SIDED, null);
        }
        if (value instanceof Integer || value instanceof Long) {
            return new TableResult.TextEntry(value.toString());
        }
        if (value instanceof Number number) {
            return new TableResult.NumberEntry(Quantity.exact(number.doubleValue(), Unit.ONE), Sides.NOT_SIDED, null);
        }
        if (value instanceof CharSequence || value instanceof Enum<?> || value instanceof Boolean) {
            return new TableResult.TextEntry(value.toString());
        }
        throw new IllegalArgumentException(
                "a table cannot hold a " + value.getClass().getSimpleName()
                        + "; give it text, a number, a measure or an answer such as held.moment(HIP)");
    }
}
