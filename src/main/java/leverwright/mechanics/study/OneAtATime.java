package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listed;
import leverwright.mechanics.working.Listing;
import org.jspecify.annotations.Nullable;

/**
 * A result while one input at a time goes through its spread, from 2.5 to 97.5 of 100 draws, all others at their middle. Inputs
 * that stand for many numbers, such as a body, are left out.
 */
public final class OneAtATime implements Listed {
    private static final int PLACES = 39;
    private static final double FROM = 0.025;

    private final Reading<?> reading;
    private final String label;
    private final String title;
    private final List<Line> lines = new ArrayList<>();
    private final List<Double> places = new ArrayList<>();
    private final Set<String> notes = new LinkedHashSet<>();

    private record Line(String name, List<@Nullable Double> values) {
        double first() {
            Double value = values.get(0);
            return value == null ? Double.NaN : value;
        }

        double last() {
            Double value = values.get(values.size() - 1);
            return value == null ? Double.NaN : value;
        }

        double swing() {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (Double value : values) {
                if (value != null) {
                    least = Math.min(least, value);
                    most = Math.max(most, value);
                }
            }
            return most < least ? 0 : most - least;
        }
    }

    OneAtATime(Spread spread, Reading<?> reading) {
        this.reading = reading;
        this.label = reading.label(spread.performance());
        this.title = "One input at a time: " + label + ", " + spread.performance();
        List<SpreadInput> inputs = spread.inputs();
        Trials trials = new Trials(spread.performances(), inputs, Links.NONE, List.of(new Asked(0, reading)));
        for (int k = 0; k < PLACES; k++) {
            places.add(FROM + (1 - 2 * FROM) * k / (PLACES - 1));
        }
        for (int i = 0; i < inputs.size(); i++) {
            if (inputs.get(i).axes() > 1) {
                notes.add("Left out, since it stands for many numbers: "
                        + inputs.get(i).name() + ". The shares of the variance have it.");
                continue;
            }
            List<@Nullable Double> values = new ArrayList<>();
            for (double place : places) {
                double[] unit = new double[trials.axes()];
                Arrays.fill(unit, 0.5);
                unit[trials.from(i)] = place;
                double value = trials.at(unit)[0];
                values.add(Double.isNaN(value) ? null : value);
            }
            lines.add(new Line(inputs.get(i).name() + ", " + inputs.get(i).words(), values));
        }
        if (lines.isEmpty()) {
            throw new IllegalArgumentException(
                    "no input of this spread is a single number; ask for the shares of the variance");
        }
        lines.sort(Comparator.comparingDouble(Line::swing).reversed());
        if (!trials.reasons().isEmpty()) {
            notes.add("Gaps: " + trials.reasons() + ".");
        }
        if (!spread.links().all().isEmpty()) {
            notes.add("Each input moves alone here, also where it goes together with another one.");
        }
        notes.add("All other inputs stand at the middle of what is known of them.");
        SpreadResult.general(spread, notes);
    }

    /** Returns the inputs, the one that moves the result most first: the result at both ends, and how far it moves. */
    @Override
    public Listing listing() {
        List<List<Object>> rows = new ArrayList<>();
        for (Line line : lines) {
            rows.add(List.of(line.name(), entry(line.first()), entry(line.last()), entry(line.swing())));
        }
        return new Listing(
                title,
                List.of("input", label + " at its low end", "at its high end", "moves by"),
                rows,
                List.copyOf(notes));
    }

    private Object entry(double si) {
        return Double.isNaN(si)
                ? "none"
                : Found.value(label, reading.unit(), reading.sides(), si, "all other inputs at their middle");
    }

    /** Returns the result over the place of each input among its draws, a curve an input. */
    public Curves curves() {
        List<Curves.Curve> curves = new ArrayList<>();
        for (Line line : lines) {
            curves.add(Curves.Curve.of(line.name(), reading.unit(), reading.sides(), line.values()));
        }
        notes.add("Drawn: the " + label + ".");
        return new Curves(
                title,
                new Curves.Axis("draws of the input below", Unit.PERCENT, places),
                curves,
                null,
                List.copyOf(notes));
    }
}
