package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.numeric.Recent;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listing;
import org.jspecify.annotations.Nullable;

/**
 * A sweep of a performance, or a family of sweeps that differ in one more setting; immutable.
 *
 * <p>Up to {@value KeptPoints#WHOLE} settings are all drawn. Of more, each of {@value KeptPoints#PARTS} equal parts of the way
 * keeps the settings where a curve is least, greatest or without a value, so that the drawn chart is that of all settings.
 */
public final class Swept {
    /** Turning the variable that is swept changes no curve: those made last are kept. */
    private static final Recent<Question, Made> RECENT = new Recent<>(8);

    private static final int MOST_MEMBERS = 100;
    /** Most postures that bands of a long way may ask for. */
    private static final double MOST_MOVED = 500_000;

    private final Performance performance;
    private final Variable<?> turned;
    private final Places places;
    private final List<Member> members;
    private final String across;

    /** One sweep of a family: what it differs in, in words, and its performance. */
    private record Member(String words, Performance performance) {}

    private Swept(Performance performance, Variable<?> turned, Places places, List<Member> members, String across) {
        this.performance = performance;
        this.turned = turned;
        this.places = places;
        this.members = members;
        this.across = across;
    }

    static Swept of(Performance performance, Variable<?> turned, Places places) {
        return new Swept(performance, turned, places, List.of(new Member("", performance)), "");
    }

    /** Returns what is swept. */
    public Performance performance() {
        return performance;
    }

    /** Returns what is turned. */
    public Variable<?> turned() {
        return turned;
    }

    /** Returns how many settings it has. */
    public int points() {
        return places.count();
    }

    /** Returns a family: this sweep once for each value of another knob. */
    @SafeVarargs
    public final <R extends Measure<R>> Swept family(Knob<R> knob, R... values) {
        return family(Variable.of(knob), values);
    }

    /**
     * Returns a family: this sweep once for each value of another variable.
     *
     * @param variable what the curves differ in
     * @param values 1 to 100 of them
     * @throws IllegalArgumentException if it is the variable that is swept, or a value may not be set
     */
    @SafeVarargs
    public final <R extends Measure<R>> Swept family(Variable<R> variable, R... values) {
        if (variable.name().equals(turned.name())) {
            throw new IllegalArgumentException("the sweep turns " + turned
                    + " already; allowed: a family over another knob, so that its curves differ");
        }
        if (values.length < 1 || values.length > MOST_MEMBERS) {
            throw new IllegalArgumentException("a family over " + variable + " has " + values.length
                    + " curves for each reading; allowed: 1 to " + MOST_MEMBERS);
        }
        List<Member> all = new ArrayList<>();
        for (R value : values) {
            all.add(new Member(
                    ", " + variable + " " + variable.text(value.si()), variable.set(performance, value.si())));
        }
        return new Swept(performance, turned, places, List.copyOf(all), ", for " + variable);
    }

    /** Reads quantities off every posture on the way, on the caller's thread: see {@link #curves(Crew, Reading...)}. */
    public Curves curves(Reading<?>... readings) {
        return curves(Crew.alone(), readings);
    }

    /**
     * Reads quantities off every posture on the way. The present setting is marked if it lies on the way. Curves have bands
     * where an input other than the swept one carries an error, and gaps where no posture has the setting, where the lifter
     * would fall, or where the quantity has no value; notes say where and why. Once stopped, the curves end where the work
     * did, and a note says so.
     *
     * @param crew who works
     * @param readings at least one
     */
    public Curves curves(Crew crew, Reading<?>... readings) {
        Made made = made(crew, readings);
        Set<String> notes = new LinkedHashSet<>(made.notes());
        notes.addAll(performance.exercise().cautions());
        performance.lifter().notes().forEach(note -> notes.add(note.text()));
        return new Curves(
                performance + ", through " + turned + across,
                new Curves.Axis(turned.name(), turned.unit(), made.settings()),
                made.curves(),
                current(made),
                List.copyOf(notes));
    }

    /**
     * Returns the same as a table with units: every setting of a short way; of a long one every twentieth part of it, and the
     * settings where a curve is least or greatest.
     *
     * @param crew who works
     * @param readings at least one
     */
    public Listing table(Crew crew, Reading<?>... readings) {
        return SweptTable.of(curves(crew, readings), places.count());
    }

    private Made made(Crew crew, Reading<?>... readings) {
        return RECENT.get(question(readings), () -> make(crew, readings), made -> !made.stopped());
    }

    /** What the curves depend on: all but the present setting of what is turned. */
    private Question question(Reading<?>... readings) {
        List<Performance> starts = new ArrayList<>();
        for (Member member : members) {
            starts.add(turned.set(member.performance(), places.from()));
        }
        return new Question(
                starts,
                turned.name(),
                places,
                Arrays.stream(readings).map(Reading::label).toList());
    }

    private record Question(List<Performance> starts, String turned, Places places, List<String> readings) {}

    /**
     * The curves of a sweep.
     *
     * @param settings those kept, SI
     * @param stopped whether settings are missing at the end
     */
    private record Made(List<Double> settings, List<Curves.Curve> curves, List<String> notes, boolean stopped) {}

    private Made make(Crew crew, Reading<?>... readings) {
        boolean whole = places.count() <= KeptPoints.WHOLE;
        boolean uncertain = false;
        for (Member member : members) {
            uncertain |= !turned.set(member.performance(), places.from())
                    .uncertainInputs()
                    .isEmpty();
        }
        Lines lines = new Lines(readings, uncertain && whole);
        StudyPoints points = new StudyPoints(List.of(readings), lines.bands);
        StudySize.check((double) members.size() * places.count(), 1, "this family of sweeps");
        int all = members.size() * places.count();
        int done = points.work(
                crew,
                all,
                point -> turned.set(
                        members.get(point % members.size()).performance(), places.at(point / members.size())),
                lines::take);
        int settings = done / members.size();
        if (settings < 2) {
            throw new IllegalArgumentException("the sweep was stopped before two settings were done");
        }
        List<String> notes = new ArrayList<>();
        if (done < all) {
            notes.add(String.format(
                    Locale.ROOT,
                    "Stopped: %,d of %,d settings are done, from the first on.",
                    settings,
                    places.count()));
        }
        if (!whole) {
            notes.add(String.format(
                    Locale.ROOT,
                    "%,d settings are computed. Kept of each thousandth part of the way: its first setting, and those where"
                            + " a curve is least, greatest or has no value.",
                    settings));
        }
        if (uncertain && !whole) {
            boolean drawn = done == all && lines.bandsOfKept(crew);
            notes.add(
                    drawn
                            ? "Bands are those at the settings kept."
                            : "Inputs carry errors whose bands are not drawn on so long a way; take up to "
                                    + KeptPoints.WHOLE + " settings for them.");
        }
        notes.addAll(lines.gaps.notes());
        return lines.made(notes, done < all);
    }

    private @Nullable Double current(Made made) {
        double present = turned.present(performance);
        List<Double> settings = made.settings();
        boolean onTheWay = present >= settings.get(0) && present <= settings.get(settings.size() - 1);
        return onTheWay ? present : null;
    }

    /** Gathers the curves of all members, setting by setting. */
    private final class Lines {
        private final Reading<?>[] readings;
        private final boolean bands;
        private final int width;
        private final double[] row;
        private final KeptPoints kept;
        private final Gaps gaps = new Gaps(turned.name(), turned.unit());
        /** Ends of the bands at the settings kept of a long way, curve by curve; empty without. */
        private double[][] low = new double[0][];

        private double[][] high = new double[0][];

        Lines(Reading<?>[] readings, boolean bands) {
            this.readings = readings;
            this.bands = bands;
            this.width = readings.length * members.size();
            this.row = new double[bands ? 3 * width : width];
            this.kept = new KeptPoints(places.count(), row.length);
        }

        void take(StudyPoints.Block block) {
            for (int i = 0; i < block.count; i++) {
                int point = block.from + i;
                int member = point % members.size();
                int at = member * readings.length;
                System.arraycopy(block.values, i * readings.length, row, at, readings.length);
                if (bands) {
                    System.arraycopy(block.low, i * readings.length, row, width + at, readings.length);
                    System.arraycopy(block.high, i * readings.length, row, 2 * width + at, readings.length);
                }
                if (member == members.size() - 1) {
                    kept.add(point / members.size(), row, 0);
                }
            }
            block.missing.forEach(this::miss);
        }

        /** Works out the bands at the settings kept, where that is little work beside the way's; tells whether it was all done. */
        boolean bandsOfKept(Crew crew) {
            List<Integer> at = kept.points();
            int inputs = 0;
            for (Member member : members) {
                inputs = Math.max(
                        inputs,
                        turned.set(member.performance(), places.from())
                                .uncertainInputs()
                                .size());
            }
            double moved = inputs == 1 ? 21 : inputs == 2 ? 81 : (1 << Math.min(20, inputs)) + 4 * inputs;
            int count = at.size() * members.size();
            if (count * moved > MOST_MOVED) {
                return false;
            }
            double[][] lows = new double[width][at.size()];
            double[][] highs = new double[width][at.size()];
            int done = new StudyPoints(List.of(readings), true)
                    .work(
                            crew,
                            count,
                            point -> turned.set(
                                    members.get(point % members.size()).performance(),
                                    places.at(at.get(point / members.size()))),
                            block -> {
                                for (int i = 0; i < block.count * readings.length; i++) {
                                    int point = block.from + i / readings.length;
                                    int curve = point % members.size() * readings.length + i % readings.length;
                                    lows[curve][point / members.size()] = block.low[i];
                                    highs[curve][point / members.size()] = block.high[i];
                                }
                            });
            if (done == count) {
                low = lows;
                high = highs;
            }
            return done == count;
        }

        private List<@Nullable Double> ends(double... values) {
            List<@Nullable Double> ends = new ArrayList<>();
            for (double value : values) {
                ends.add(Double.isNaN(value) ? null : value);
            }
            return ends;
        }

        /** Of a long stretch without values the first and the last say enough. */
        private void miss(StudyPoints.Missing missing) {
            int point = missing.point() / members.size();
            String what = missing.reading() < 0
                    ? members.get(missing.point() % members.size()).words().replaceFirst("^, ", "")
                    : label(missing.point() % members.size(), missing.reading());
            gaps.add(what, places.at(point), missing.reason());
        }

        private String label(int member, int reading) {
            return readings[reading].label(performance) + members.get(member).words();
        }

        Made made(List<String> notes, boolean stopped) {
            List<Double> axis = new ArrayList<>();
            for (int point : kept.points()) {
                axis.add(places.at(point));
            }
            List<Curves.Curve> curves = new ArrayList<>();
            for (int member = 0; member < members.size(); member++) {
                for (int r = 0; r < readings.length; r++) {
                    curves.add(curve(member, r));
                }
            }
            return new Made(axis, curves, notes, stopped);
        }

        private Curves.Curve curve(int member, int r) {
            int at = member * readings.length + r;
            Reading<?> reading = readings[r];
            String label = label(member, r);
            if (low.length > 0) {
                return new Curves.Curve(
                        label, reading.unit(), reading.sides(), kept.curve(at), ends(low[at]), ends(high[at]));
            }
            return bands
                    ? new Curves.Curve(
                            label,
                            reading.unit(),
                            reading.sides(),
                            kept.curve(at),
                            kept.curve(width + at),
                            kept.curve(2 * width + at))
                    : Curves.Curve.of(label, reading.unit(), reading.sides(), kept.curve(at));
        }
    }
}
