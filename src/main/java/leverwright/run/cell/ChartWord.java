package leverwright.run.cell;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.CurvesResult;
import org.jspecify.annotations.Nullable;

/**
 * A chart of values that a cell gathered itself: {@code chart("Bar and hip").over("bar", bars).curve("hip", moments)}.
 * Values are plain numbers, measures, or answers of the mechanics.
 */
public final class ChartWord implements ResultBuilder {

    private final String title;
    private final List<Curves.Curve> curves = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private Curves.@Nullable Axis axis;

    ChartWord(String title) {
        this.title = title;
    }

    /**
     * Sets the values along the chart, each larger than the one before.
     *
     * @param name what varies
     * @param values the values, all of one kind
     * @throws IllegalArgumentException when the values do not rise or are of different kinds
     */
    public ChartWord over(String name, List<?> values) {
        Read read = read(name, values);
        axis = new Curves.Axis(name, read.unit, read.si);
        return this;
    }

    /**
     * Adds a curve.
     *
     * @param name what it shows
     * @param values one value for each value along the chart, all of one kind
     * @throws IllegalArgumentException when the number of values is not that of the values along the chart, or they are of
     *     different kinds
     */
    public ChartWord curve(String name, List<?> values) {
        Curves.Axis along = axis;
        if (along == null) {
            throw new IllegalArgumentException("the chart \"" + title
                    + "\" does not know what it runs over; write .over(\"bar\", values) before .curve(…)");
        }
        Read read = read(name, values);
        if (read.si.size() != along.values().size()) {
            throw new IllegalArgumentException("the curve \"" + name + "\" has " + read.si.size()
                    + " values, but the chart runs over " + along.values().size() + "; give one for each");
        }
        List<Double> low = read.hasBand() ? read.low : List.of();
        List<Double> high = read.hasBand() ? read.high : List.of();
        curves.add(new Curves.Curve(
                name, read.unit, read.sides, List.copyOf(read.si), List.copyOf(low), List.copyOf(high)));
        return this;
    }

    CurvesResult result() {
        Curves.Axis along = axis;
        if (along == null || curves.isEmpty()) {
            throw new IllegalArgumentException(
                    "the chart \"" + title + "\" is empty; write .over(\"bar\", values).curve(\"hip\", values)");
        }
        return new CurvesResult(title, new Curves(title, along, curves, null, notes), notes);
    }

    private Read read(String name, List<?> values) {
        Read read = new Read(name);
        for (Object value : values) {
            if (value instanceof Answer<?> answer) {
                answer.notes().stream().filter(note -> !notes.contains(note)).forEach(notes::add);
                read.add(
                        answer.value().dimension().shown(),
                        answer.sides(),
                        answer.value().si(),
                        answer.low().si(),
                        answer.high().si());
            } else if (value instanceof Measure<?> measure) {
                read.add(
                        measure.dimension().shown(),
                        Sides.NOT_SIDED,
                        measure.si(),
                        measure.lowest().si(),
                        measure.highest().si());
            } else if (value instanceof Number number) {
                read.add(Unit.ONE, Sides.NOT_SIDED, number.doubleValue(), number.doubleValue(), number.doubleValue());
            } else {
                throw new IllegalArgumentException("the values of \"" + name + "\" hold " + value
                        + "; allowed are numbers, measures and answers such as held.moment(HIP)");
            }
        }
        return read;
    }

    /** Values read from a list, all of one kind. */
    private static final class Read {
        private final String name;
        private final List<Double> si = new ArrayList<>();
        private final List<Double> low = new ArrayList<>();
        private final List<Double> high = new ArrayList<>();
        private Unit unit = Unit.ONE;
        private Sides sides = Sides.NOT_SIDED;

        Read(String name) {
            this.name = name;
        }

        boolean hasBand() {
            return !low.equals(high);
        }

        void add(Unit itsUnit, Sides itsSides, double value, double least, double greatest) {
            if (!si.isEmpty() && (itsUnit != unit || itsSides != sides)) {
                throw new IllegalArgumentException("the values of \"" + name
                        + "\" are of different kinds; give values of one unit, all per side or all total");
            }
            unit = itsUnit;
            sides = itsSides;
            si.add(value);
            low.add(least);
            high.add(greatest);
        }
    }
}
