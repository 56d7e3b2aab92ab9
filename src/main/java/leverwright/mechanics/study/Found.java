package leverwright.mechanics.study;

import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Working;

/** Values that a study found, as answers: their working names the search and ends there. */
final class Found {
    private Found() {}

    static Answer<?> value(String label, Unit unit, Sides sides, double si, String how) {
        return band(label, unit, sides, si, si, si, how);
    }

    static Answer<?> band(String label, Unit unit, Sides sides, double si, double low, double high, String how) {
        return typed(label, unit.dimension().of(si, 0), unit, sides, low, high, how);
    }

    @SuppressWarnings("unchecked") // a dimension gives its one kind of measure
    private static <M extends Measure<M>> Answer<M> typed(
            String label, Measure<?> value, Unit unit, Sides sides, double low, double high, String how) {
        M found = (M) value;
        return Answer.of(label, found, sides, () -> Working.given(label, "v", found, how))
                .between(found.with(Math.min(low, found.si()), 0), found.with(Math.max(high, found.si()), 0))
                .shownIn(unit);
    }

    /** Returns a share of something as an answer in percent. */
    static Answer<?> percent(String label, double share, String how) {
        return value(label, Unit.PERCENT, Sides.NOT_SIDED, share, how);
    }
}
