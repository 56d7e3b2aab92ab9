package leverwright.run.cell;

import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Unit;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A dial being declared: {@code dial("Torso lean", deg(45)).from(deg(10)).to(deg(80))}. The last word, {@link #to},
 * declares it and gives the value now in force.
 *
 * @param <M> the kind of value that the dial sets
 */
public final class DialRange<M extends Measure<M>> {

    private final String name;
    private final M standard;
    private @Nullable M from;
    private @Nullable M step;

    DialRange(String name, M standard) {
        this.name = name;
        this.standard = standard;
    }

    /**
     * Sets the least value that the dial allows.
     *
     * @param least the start of the range
     * @return this dial, to be told its end with {@link #to}
     */
    public DialRange<M> from(M least) {
        from = least;
        return this;
    }

    /**
     * Sets how far one press of an arrow key turns the dial; without it about a hundredth of the range.
     *
     * @param size the step, above zero
     * @return this dial, to be told its end with {@link #to}
     */
    public DialRange<M> inStepsOf(M size) {
        step = size;
        return this;
    }

    /**
     * Sets the greatest value that the dial allows, declares the dial, and returns the value now in force: what the
     * reader set, or else the value in the script.
     *
     * @param greatest the end of the range
     * @return a plain value; it carries the error that was typed with it, as in "45 ± 5 deg"
     * @throws IllegalArgumentException when the range is empty, a value lies outside it, or the given setting cannot be
     *     read
     */
    public M to(M greatest) {
        M least = from;
        if (least == null) {
            throw new IllegalArgumentException("the dial \"" + name + "\" has no start; write .from(…) before .to(…)");
        }
        Unit unit = unitOf(least, greatest);
        if (!(least.si() < greatest.si())) {
            throw new IllegalArgumentException("the dial \"" + name + "\" goes from " + unit.format(least.si()) + " to "
                    + unit.format(greatest.si()) + "; its end must lie above its start");
        }
        inRange(standard, "the script sets", least, greatest, unit);
        CellSink sink = CellSink.current();
        String text = sink.setting(name);
        M now = standard;
        Unit shown = unit;
        if (text != null) {
            now = read(text);
            shown = typedUnit(text, unit);
            inRange(now, "it is set to", least, greatest, shown);
        }
        double size = step == null ? DialSteps.about((greatest.si() - least.si()) / 100, unit) : step.si();
        sink.declare(new DialDeclared(
                name, quantity(now, shown), quantity(standard, unit), least.si(), greatest.si(), size));
        return now;
    }

    private M read(String text) {
        try {
            Measure<?> parsed = MeasureText.parse(text, standard.dimension());
            return standard.with(parsed.si(), parsed.error());
        } catch (IllegalArgumentException unreadable) {
            throw new IllegalArgumentException("the dial \"" + name + "\": " + unreadable.getMessage(), unreadable);
        }
    }

    private void inRange(M value, String how, M least, M greatest, Unit unit) {
        if (value.si() < least.si() || value.si() > greatest.si()) {
            throw new IllegalArgumentException("the dial \"" + name + "\" goes from " + unit.format(least.si()) + " to "
                    + unit.format(greatest.si()) + ", but " + how + " " + unit.format(value.si())
                    + "; choose a value in that range");
        }
    }

    private static Quantity quantity(Measure<?> value, Unit unit) {
        return new Quantity(value.si(), value.si() - value.error(), value.si() + value.error(), unit);
    }

    /** Lengths of a body or an implement are read in centimetres, everything else as results are. */
    private static Unit unitOf(Measure<?> least, Measure<?> greatest) {
        boolean bodyLength = least.dimension() == Dimension.LENGTH && greatest.si() <= 3;
        return bodyLength ? Unit.CENTIMETRE : least.dimension().shown();
    }

    private static Unit typedUnit(String text, Unit otherwise) {
        String typed = text.strip();
        Unit best = otherwise;
        int longest = 0;
        for (Unit unit : otherwise.dimension().units()) {
            for (String way : unit.ways()) {
                if (way.length() > longest && typed.endsWith(way)) {
                    best = unit;
                    longest = way.length();
                }
            }
        }
        return best;
    }
}
