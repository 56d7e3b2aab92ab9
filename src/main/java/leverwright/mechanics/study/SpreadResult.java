package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.numeric.Sampling;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listed;
import leverwright.mechanics.working.Listing;
import org.jspecify.annotations.Nullable;

/** What came of the draws of a {@link Spread}: quantiles, and in how many draws claims hold. */
public final class SpreadResult implements Listed {
    static final int BLOCK = 64;
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;
    private static final int STEPS = 200;

    private final Spread spread;
    private final List<Asked> asked;
    private final List<Tally> tallies;
    private final long[] held;
    private final long[] judged;
    private final int done;
    private final String reasons;
    private final List<SpreadInput> inputs;

    private SpreadResult(
            Spread spread,
            List<SpreadInput> inputs,
            List<Asked> asked,
            List<Tally> tallies,
            long[] held,
            long[] judged,
            int done,
            String reasons) {
        this.spread = spread;
        this.inputs = inputs;
        this.asked = asked;
        this.tallies = tallies;
        this.held = held;
        this.judged = judged;
        this.done = done;
        this.reasons = reasons;
    }

    /** Draws, with the first of several performances behind the claims. */
    static SpreadResult of(Spread spread, Crew crew, List<Asked> asked, List<Order> orders) {
        List<Asked> all = new ArrayList<>(asked);
        for (Order order : orders) {
            all.add(new Asked(0, order.reading()));
            Reading<?> less = order.less();
            all.add(new Asked(0, less == null ? order.reading() : less));
        }
        return of(spread, crew, all, asked.size(), orders);
    }

    /** Draws; behind the quantities asked for, two for every order: the reading and what is taken off it. */
    static SpreadResult of(Spread spread, Crew crew, List<Asked> all, int shown, List<Order> orders) {
        List<SpreadInput> inputs = spread.inputs();
        Trials trials = new Trials(spread.performances(), inputs, spread.links(), all);
        Sampling.Points points = spread.sampling().points(trials.axes(), spread.draws(), spread.seed());
        List<Tally> tallies = new ArrayList<>();
        for (int q = 0; q < shown; q++) {
            tallies.add(new Tally());
        }
        long[] held = new long[orders.size()];
        long[] judged = new long[orders.size()];
        int done = crew.inOrder(spread.draws(), BLOCK, (from, to) -> trials.values(points.rows(from, to)), rows -> {
            for (double[] row : rows) {
                for (int q = 0; q < shown; q++) {
                    tallies.get(q).add(row[q]);
                }
                judge(orders, shown, row, held, judged);
            }
        });
        return new SpreadResult(
                spread, inputs, List.copyOf(all.subList(0, shown)), tallies, held, judged, done, trials.reasons());
    }

    private static void judge(List<Order> orders, int from, double[] row, long[] held, long[] judged) {
        for (int k = 0; k < orders.size(); k++) {
            double value = row[from + 2 * k];
            double less = orders.get(k).less() == null ? 0 : row[from + 2 * k + 1];
            if (!Double.isNaN(value - less)) {
                judged[k]++;
                held[k] += orders.get(k).passes(value - less) ? 1 : 0;
            }
        }
    }

    /** Returns how many draws were made: fewer than asked for when it was stopped. */
    public int done() {
        return done;
    }

    /** Returns whether it was stopped before all draws were made. */
    public boolean isPartial() {
        return done < spread.draws();
    }

    Tally tally(int q) {
        return tallies.get(q);
    }

    /**
     * Returns the value below which a part of the draws lies.
     *
     * @param reading which of the quantities, from 0
     * @param part 0 to 1
     */
    public double quantile(int reading, double part) {
        return tallies.get(reading).quantile(part);
    }

    /** Returns the mean of one of the quantities, SI. */
    public double mean(int reading) {
        return tallies.get(reading).mean();
    }

    /** Returns the standard deviation of one of the quantities over the draws, SI. */
    public double deviation(int reading) {
        return tallies.get(reading).deviation();
    }

    /** Returns in how many draws one of the claims holds. */
    public long held(int order) {
        return held[order];
    }

    /** Returns in how many draws one of the claims could be judged. */
    public long judged(int order) {
        return judged[order];
    }

    /** Returns in which part of the draws one of the claims holds, 0 to 1. */
    public double probability(int order) {
        if (judged[order] == 0) {
            throw new IllegalArgumentException("no draw could be judged" + (reasons.isEmpty() ? "" : ": " + reasons));
        }
        return (double) held[order] / judged[order];
    }

    /** Returns twice the standard error of a probability if the draws were independent. */
    public double doubt(int order) {
        double part = probability(order);
        return 2 * Math.sqrt(Math.max(part * (1 - part), 1.0 / judged[order]) / judged[order]);
    }

    /** Returns one of the quantities as an answer: the median, with nine tenths of the draws as its band. */
    public Answer<?> answer(int q) {
        Asked each = asked.get(q);
        Tally tally = full(q);
        return Found.band(
                        label(each),
                        each.reading().unit(),
                        each.reading().sides(),
                        tally.quantile(0.5),
                        tally.quantile(LOW),
                        tally.quantile(HIGH),
                        "median of " + tally.count() + " draws; band: nine tenths of them")
                .noted(notes());
    }

    private Tally full(int q) {
        Tally tally = tallies.get(q);
        if (tally.count() == 0) {
            throw new IllegalArgumentException("no draw gave a value of the "
                    + asked.get(q).reading() + (reasons.isEmpty() ? "" : ": " + reasons));
        }
        return tally;
    }

    private String label(Asked each) {
        Performance of = spread.performances().get(each.of());
        String label = each.reading().label(of);
        return spread.performances().size() > 1 ? label + ", " + of.exercise() : label;
    }

    /** Returns the quantities with their quantiles, one a row. */
    @Override
    public Listing listing() {
        List<List<Object>> rows = new ArrayList<>();
        for (int q = 0; q < asked.size(); q++) {
            Asked each = asked.get(q);
            Tally tally = full(q);
            List<Object> row = new ArrayList<>();
            row.add(label(each));
            row.add(answer(q));
            row.add(span(each, tally, 0.25, 0.75));
            row.add(entry(each, tally.deviation()));
            rows.add(row);
        }
        return new Listing(
                "How sure: " + spread.performance(),
                List.of("what", "median, and nine tenths of the draws", "half of the draws", "standard deviation"),
                rows,
                notes());
    }

    private static Answer<?> entry(Asked each, double si) {
        return Found.value(
                each.reading().label(), each.reading().unit(), each.reading().sides(), si, "of the draws");
    }

    private static String span(Asked each, Tally tally, double low, double high) {
        Unit unit = each.reading().unit();
        return unit.format(tally.quantile(low), 4) + " to " + unit.format(tally.quantile(high), 4);
    }

    /** Returns which part of the draws lies below each value, as curves; all quantities must be of one kind. */
    public Curves distribution() {
        Asked first = asked.get(0);
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (int q = 0; q < asked.size(); q++) {
            Order.comparable(first.reading(), asked.get(q).reading());
            from = Math.min(from, full(q).least());
            to = Math.max(to, full(q).most());
        }
        if (!(from < to)) {
            throw new IllegalArgumentException(
                    "every draw gives the same " + first.reading() + ", so that there is nothing to draw a curve of");
        }
        List<Double> axis = new ArrayList<>();
        for (int k = 0; k <= STEPS; k++) {
            axis.add(k == STEPS ? to : from + (to - from) * k / STEPS);
        }
        List<Curves.Curve> curves = new ArrayList<>();
        for (int q = 0; q < asked.size(); q++) {
            List<@Nullable Double> parts = new ArrayList<>();
            for (double value : axis) {
                parts.add(tallies.get(q).below(value));
            }
            curves.add(Curves.Curve.of("draws below, " + label(asked.get(q)), Unit.PERCENT, Sides.NOT_SIDED, parts));
        }
        return new Curves(
                "How sure: " + spread.performance(),
                new Curves.Axis(
                        asked.size() == 1
                                ? first.reading().label(spread.performance())
                                : first.reading().unit().dimension().words(),
                        first.reading().unit(),
                        axis),
                curves,
                null,
                notes());
    }

    /** Returns what must be said of the draws: how many, of which inputs, what has no value, what is partial. */
    public List<String> notes() {
        Set<String> notes = new LinkedHashSet<>();
        notes.add(drawn(spread, inputs, done));
        long missing = tallies.stream().mapToLong(Tally::missing).max().orElse(0);
        for (long each : judged) {
            missing = Math.max(missing, done - each);
        }
        if (missing > 0) {
            notes.add(missing + " of " + done + " draws have no value and are left out: " + reasons + ".");
        }
        double grain = tallies.stream().mapToDouble(Tally::grain).max().orElse(0);
        if (grain > 0) {
            notes.add("More than " + Tally.KEPT + " draws: values are counted in " + Tally.BINS
                    + " bins, so that quantiles are known to the width of one.");
        }
        general(spread, notes);
        return List.copyOf(notes);
    }

    static String drawn(Spread spread, List<SpreadInput> inputs, int done) {
        List<String> words = new ArrayList<>();
        for (SpreadInput input : inputs) {
            words.add(input.name() + " " + input.words());
        }
        return String.format(
                Locale.ROOT,
                "%s%d draws, %s, seed %d. Unsure: %s.%s All else as set.",
                done < spread.draws() ? "Stopped: of " + spread.draws() + " draws these are the first " : "",
                done,
                spread.sampling().words(),
                spread.seed(),
                String.join("; ", words),
                spread.links().words());
    }

    static void general(Spread spread, Set<String> notes) {
        for (Performance performance : spread.performances()) {
            performance.lifter().notes().forEach(note -> notes.add(note.text()));
            notes.addAll(performance.exercise().cautions());
        }
        notes.add("What the model itself leaves out is not among these draws.");
    }
}
