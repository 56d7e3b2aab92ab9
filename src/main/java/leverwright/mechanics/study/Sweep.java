package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.ImpossibleSetting;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.numeric.Recent;
import leverwright.mechanics.working.Curves;
import org.jspecify.annotations.Nullable;

/**
 * One knob turned through a range, everything else set the same; immutable.
 *
 * <pre>{@code
 * sweep(TORSO_LEAN).from(deg(10)).to(deg(80)).of(hinge.by(ines)).curves(moment(HIP), tiltRule(HIP))
 * }</pre>
 *
 * @param <Q> the kind of quantity that the knob sets
 */
public final class Sweep<Q extends Measure<Q>> {
    /** How many settings a sweep has unless it says otherwise, both ends counted. */
    public static final int POINTS = 200;
    /** Greatest number of settings of a sweep. */
    public static final int MOST_POINTS = 10_000;

    /** Turning the knob that is swept changes no curve: those made last are kept. */
    private static final Recent<Asked, Made> RECENT = new Recent<>(8);

    private final Knob<Q> knob;
    private final Q from;
    private final Q to;
    private final int points;

    private Sweep(Knob<Q> knob, Q from, Q to, int points) {
        this.knob = knob;
        this.from = from;
        this.to = to;
        this.points = points;
    }

    /** Begins a sweep of a knob over its whole range. */
    public static <Q extends Measure<Q>> Sweep<Q> sweep(Knob<Q> knob) {
        return new Sweep<>(knob, knob.least(), knob.most(), POINTS);
    }

    /** Returns this sweep from another lower end; it is checked when the sweep is made. */
    public Sweep<Q> from(Q least) {
        return new Sweep<>(knob, least, to, points);
    }

    /** Returns this sweep to another upper end; it is checked when the sweep is made. */
    public Sweep<Q> to(Q most) {
        return new Sweep<>(knob, from, most, points);
    }

    /**
     * Returns this sweep with another number of settings, both ends counted.
     *
     * @throws IllegalArgumentException if there are fewer than 2 or more than {@link #MOST_POINTS}
     */
    public Sweep<Q> points(int count) {
        if (count < 2 || count > MOST_POINTS) {
            throw new IllegalArgumentException("a sweep has " + count + " settings; allowed: 2 to " + MOST_POINTS);
        }
        return new Sweep<>(knob, from, to, count);
    }

    /**
     * Returns the sweep of a performance, ready to be read.
     *
     * @throws IllegalArgumentException if the ends do not rise or leave the knob's range, or if the exercise does not have the
     *     knob
     */
    public Swept of(Performance performance) {
        if (!(from.si() < to.si())) {
            throw new IllegalArgumentException("a sweep of " + knob.name() + " goes from " + knob.text(from) + " to "
                    + knob.text(to) + "; allowed: from a smaller to a larger value within " + knob.range());
        }
        performance.with(knob, from.with(from.si(), 0));
        performance.with(knob, to.with(to.si(), 0));
        return new Swept(performance, knob, settings());
    }

    private List<Double> settings() {
        List<Double> settings = new ArrayList<>(points);
        double span = to.si() - from.si();
        for (int k = 0; k < points - 1; k++) {
            settings.add(from.si() + span * k / (points - 1));
        }
        settings.add(to.si());
        return settings;
    }

    /** A sweep of a performance. */
    public static final class Swept {
        private final Performance performance;
        private final Knob<?> knob;
        private final List<Double> settings;

        private Swept(Performance performance, Knob<?> knob, List<Double> settings) {
            this.performance = performance;
            this.knob = knob;
            this.settings = List.copyOf(settings);
        }

        /** Returns what is swept. */
        public Performance performance() {
            return performance;
        }

        /** Returns the knob that turns. */
        public Knob<?> knob() {
            return knob;
        }

        /**
         * Reads quantities off every posture on the way. The present setting is marked if it lies on the way. Curves have
         * bands where an input other than the swept knob carries an error, and gaps where no posture has the setting, where
         * the lifter would fall, or where the quantity has no value; notes say where and why.
         *
         * @param readings at least one
         */
        public Curves curves(Reading<?>... readings) {
            Made made = RECENT.get(asked(readings), () -> make(readings));
            Set<String> notes = new LinkedHashSet<>(made.notes());
            notes.addAll(performance.exercise().cautions());
            performance.lifter().notes().forEach(note -> notes.add(note.text()));
            return new Curves(
                    performance + ", through " + knob.name(),
                    new Curves.Axis(knob.name(), knob.unit(), settings),
                    made.curves(),
                    current(),
                    List.copyOf(notes));
        }

        /** What the curves depend on: all but the present setting of the knob that turns. */
        private Asked asked(Reading<?>... readings) {
            return new Asked(
                    performance.withSi(knob, settings.get(0)),
                    knob,
                    settings,
                    Arrays.stream(readings).map(Reading::label).toList());
        }

        private Made make(Reading<?>... readings) {
            List<Line> lines = new ArrayList<>();
            for (Reading<?> reading : readings) {
                lines.add(new Line(reading, reading.label(performance)));
            }
            boolean bands =
                    !performance.withSi(knob, settings.get(0)).uncertainInputs().isEmpty();
            Gaps gaps = new Gaps(knob);
            for (double setting : settings) {
                @Nullable HeldPosture held = posture(setting, gaps);
                for (Line line : lines) {
                    line.read(held, setting, bands, gaps);
                }
            }
            return new Made(lines.stream().map(line -> line.curve(bands)).toList(), gaps.notes());
        }

        private @Nullable HeldPosture posture(double setting, Gaps gaps) {
            try {
                HeldPosture held = performance.withSi(knob, setting).posture();
                if (!held.standing().wouldFall()) {
                    return held;
                }
                gaps.add("", setting, held.standing().words());
            } catch (ImpossibleSetting nowhere) {
                gaps.add("", setting, String.valueOf(nowhere.getMessage()));
            }
            return null;
        }

        private @Nullable Double current() {
            if (!performance.exercise().decides(knob)) {
                return null;
            }
            double present = performance.exercise().get(knob).si();
            boolean onTheWay = present >= settings.get(0) && present <= settings.get(settings.size() - 1);
            return onTheWay ? present : null;
        }
    }

    private record Asked(Performance start, Knob<?> knob, List<Double> settings, List<String> readings) {}

    private record Made(List<Curves.Curve> curves, List<String> notes) {}

    /** One reading through the sweep. */
    private static final class Line {
        private final Reading<?> reading;
        private final String label;
        private final List<@Nullable Double> values = new ArrayList<>();
        private final List<@Nullable Double> low = new ArrayList<>();
        private final List<@Nullable Double> high = new ArrayList<>();

        Line(Reading<?> reading, String label) {
            this.reading = reading;
            this.label = label;
        }

        void read(@Nullable HeldPosture held, double setting, boolean bands, Gaps gaps) {
            if (held == null) {
                add(null, null, null, bands);
                return;
            }
            try {
                double value = reading.si(held);
                if (bands) {
                    HeldPosture.Span span = held.span(reading);
                    add(value, span.low(), span.high(), true);
                } else {
                    add(value, null, null, false);
                }
            } catch (IllegalArgumentException none) {
                gaps.add(label, setting, String.valueOf(none.getMessage()));
                add(null, null, null, bands);
            }
        }

        private void add(@Nullable Double value, @Nullable Double least, @Nullable Double most, boolean bands) {
            values.add(value);
            if (bands) {
                low.add(least);
                high.add(most);
            }
        }

        Curves.Curve curve(boolean bands) {
            return bands
                    ? new Curves.Curve(label, reading.unit(), reading.sides(), values, low, high)
                    : Curves.Curve.of(label, reading.unit(), reading.sides(), values);
        }
    }
}
