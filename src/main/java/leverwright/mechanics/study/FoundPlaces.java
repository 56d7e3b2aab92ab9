package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.working.Curves;
import org.jspecify.annotations.Nullable;

/** Settings along a chart, those that were found among them. */
final class FoundPlaces {
    private static final int STEPS = 120;
    private final Variable<?> variable;
    private final List<Double> all = new ArrayList<>();

    FoundPlaces(Variable<?> variable, List<Double> found) {
        this.variable = variable;
        double from = variable.least().si();
        double to = variable.most().si();
        all.addAll(found);
        for (int k = 0; k <= STEPS; k++) {
            double at = k == STEPS ? to : from + (to - from) * k / STEPS;
            if (all.stream().noneMatch(other -> Math.abs(other - at) < 1e-9 * (to - from))) {
                all.add(at);
            }
        }
        all.sort(Double::compare);
    }

    Curves.Axis axis() {
        return new Curves.Axis(variable.name(), variable.unit(), all);
    }

    boolean holds(double si) {
        return si >= all.get(0) && si <= all.get(all.size() - 1);
    }

    Curves.Curve curve(String name, Reading<?> reading, DoubleUnaryOperator value) {
        List<@Nullable Double> values = new ArrayList<>();
        for (double at : all) {
            double there = value.applyAsDouble(at);
            values.add(Double.isNaN(there) ? null : there);
        }
        return Curves.Curve.of(name, reading.unit(), reading.sides(), values);
    }

    /** One dot. */
    Curves.Curve point(String name, Reading<?> reading, double place, double value) {
        List<@Nullable Double> values = new ArrayList<>();
        for (double at : all) {
            values.add(at == place ? value : null);
        }
        return Curves.Curve.of(name, reading.unit(), reading.sides(), values);
    }
}
