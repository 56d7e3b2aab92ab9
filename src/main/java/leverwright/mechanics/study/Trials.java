package leverwright.mechanics.study;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import org.jspecify.annotations.Nullable;

/** Works out what is asked at points of the unit cube. Points may be worked out by several threads. */
final class Trials {
    private final List<Performance> performances;
    private final List<SpreadInput> inputs;
    private final List<Asked> asked;
    private final int[] from;
    /** For each quantity the first that is the same one. */
    private final int[] same;

    private final int axes;
    private final Links.Joined joined;
    private final Map<String, Integer> reasons = new LinkedHashMap<>();

    Trials(List<Performance> performances, List<SpreadInput> inputs, Links links, List<Asked> asked) {
        this.performances = performances;
        this.inputs = inputs;
        this.asked = asked;
        this.from = new int[inputs.size()];
        int next = 0;
        for (int i = 0; i < from.length; i++) {
            from[i] = next;
            next += inputs.get(i).axes();
        }
        axes = next;
        joined = links.joined(inputs, from);
        this.same = new int[asked.size()];
        Map<Asked, Integer> first = new LinkedHashMap<>();
        for (int q = 0; q < same.length; q++) {
            first.putIfAbsent(asked.get(q), q);
            same[q] = first.getOrDefault(asked.get(q), q);
        }
    }

    /** How many numbers a point has. */
    int axes() {
        return axes;
    }

    int from(int input) {
        return from[input];
    }

    /** What is asked at each point, row by row; NaN where there is none. */
    double[][] values(double[]... points) {
        double[][] values = new double[points.length][];
        for (int i = 0; i < points.length; i++) {
            values[i] = at(points[i]);
        }
        return values;
    }

    /** What is asked at one point; NaN where there is none. */
    double[] at(double... point) {
        double[] unit = joined.of(point);
        double[] values = new double[asked.size()];
        SpreadInput.Trial trial = new SpreadInput.Trial(performances);
        try {
            for (int stage = 0; stage <= 3; stage++) {
                for (int i = 0; i < from.length; i++) {
                    if (inputs.get(i).stage() == stage) {
                        inputs.get(i).draw(unit, from[i], trial);
                    }
                }
            }
        } catch (IllegalArgumentException impossible) {
            because(impossible);
            Arrays.fill(values, Double.NaN);
            return values;
        }
        @Nullable HeldPosture[] held = new HeldPosture[trial.performances.length];
        for (int q = 0; q < values.length; q++) {
            values[q] = same[q] < q ? values[same[q]] : value(asked.get(q), trial, held);
        }
        return values;
    }

    private double value(Asked each, SpreadInput.Trial trial, @Nullable HeldPosture[] held) {
        try {
            HeldPosture posture = held[each.of()];
            if (posture == null) {
                posture = trial.performances[each.of()].posture();
                held[each.of()] = posture;
            }
            if (posture.standing().wouldFall()) {
                throw new NoValue(posture.standing().words());
            }
            Reading<?> reading = trial.musclesDrawn ? each.reading().redrawn(trial.muscles) : each.reading();
            return reading.si(posture);
        } catch (IllegalArgumentException none) {
            because(none);
            return Double.NaN;
        }
    }

    /** A draw without a value whose reason is known without a search through the stack. */
    private static final class NoValue extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        NoValue(String message) {
            super(message);
        }

        @Override
        public synchronized Throwable fillInStackTrace() {
            return this;
        }
    }

    private void because(IllegalArgumentException none) {
        String kind = Gaps.kind(String.valueOf(none.getMessage()));
        synchronized (reasons) {
            reasons.merge(kind, 1, Integer::sum);
        }
    }

    /** Why draws have no value, in an order that does not depend on threads; empty when all have one. */
    String reasons() {
        synchronized (reasons) {
            return reasons.keySet().stream()
                    .sorted()
                    .limit(3)
                    .map(reason -> reason.length() > 160 ? reason.substring(0, 160) + "…" : reason)
                    .reduce((a, b) -> a + "; " + b)
                    .orElse("");
        }
    }
}
