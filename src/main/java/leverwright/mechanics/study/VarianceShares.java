package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.numeric.Sampling;
import leverwright.mechanics.working.Listed;
import leverwright.mechanics.working.Listing;

/**
 * Which inputs make a result unsure: first-order and total Sobol' indices of every input.
 *
 * <p><b>Method.</b> Two independent matrices of draws A and B, and for every input one like A with that input's columns from B.
 * With f the result and V its variance, the share alone is mean(f(B)·(f(A with B's input) − f(A)))/V (A. Saltelli and others,
 * "Variance based sensitivity analysis of model output", Computer Physics Communications 181 (2010) 259-270), the total share
 * mean((f(A) − f(A with B's input))²)/(2V) (M. J. W. Jansen, "Analysis of variance designs for model output", Computer Physics
 * Communications 117 (1999) 35-43). Both from memory; checked by functions whose indices are known. Inputs drawn together, such
 * as the dimensions of a body, count as one, and so do inputs that go together.
 */
public final class VarianceShares implements Listed {
    private static final int BATCHES = 16;
    private static final int BLOCK = 16;

    private final String title;
    private final List<String> names;
    private final List<String> labels;
    private final Sums[] sums;
    private final List<String> notes;

    private VarianceShares(String title, List<String> names, List<String> labels, Sums[] sums, List<String> notes) {
        this.title = title;
        this.names = List.copyOf(names);
        this.labels = List.copyOf(labels);
        this.sums = sums;
        this.notes = List.copyOf(notes);
    }

    /** Works out results at points of the unit cube: a row of them for every point. */
    @FunctionalInterface
    interface Model {
        double[][] values(double[]... points);
    }

    /** What is gathered of one result. */
    private static final class Sums {
        private final double[][] alone;
        private final double[][] total;
        private final long[] rows = new long[BATCHES];
        private double centre = Double.NaN;
        private double mean;
        private double squares;
        private long count;
        private long left;

        Sums(int inputs) {
            alone = new double[BATCHES][inputs];
            total = new double[BATCHES][inputs];
        }

        void add(int batch, double a, double b, double... mixed) {
            boolean whole = !Double.isNaN(a + b);
            for (double value : mixed) {
                whole &= !Double.isNaN(value);
            }
            if (!whole) {
                left++;
                return;
            }
            if (Double.isNaN(centre)) {
                centre = a;
            }
            one(a);
            one(b);
            rows[batch]++;
            for (int i = 0; i < mixed.length; i++) {
                alone[batch][i] += (b - centre) * (mixed[i] - a);
                total[batch][i] += (a - mixed[i]) * (a - mixed[i]);
            }
        }

        private void one(double value) {
            count++;
            double away = value - mean;
            mean += away / count;
            squares += away * (value - mean);
        }

        private long used() {
            long all = 0;
            for (long each : rows) {
                all += each;
            }
            return all;
        }

        double variance() {
            return squares / count;
        }

        double alone(int input) {
            double sum = 0;
            for (double[] batch : alone) {
                sum += batch[input];
            }
            return sum / used() / variance();
        }

        double total(int input) {
            double sum = 0;
            for (double[] batch : total) {
                sum += batch[input];
            }
            return sum / used() / (2 * variance());
        }

        /** Twice the standard error by how batches differ. */
        double doubt(int input, boolean ofTotal) {
            double middle = ofTotal ? total(input) : alone(input);
            double sum = 0;
            int batches = 0;
            for (int k = 0; k < BATCHES; k++) {
                if (rows[k] > 0) {
                    double each = (ofTotal ? total[k][input] / 2 : alone[k][input]) / rows[k] / variance();
                    sum += (each - middle) * (each - middle);
                    batches++;
                }
            }
            return batches > 1 ? 2 * Math.sqrt(sum / (batches - 1) / batches) : 0;
        }
    }

    static VarianceShares of(Spread spread, Crew crew, List<Reading<?>> readings) {
        List<Asked> asked = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        for (Reading<?> reading : readings) {
            asked.add(new Asked(0, reading));
            labels.add(reading.label(spread.performance()));
        }
        List<SpreadInput> inputs = spread.inputs();
        Trials trials = new Trials(spread.performances(), inputs, spread.links(), asked);
        int[] group = spread.links().groups(inputs);
        List<String> names = new ArrayList<>();
        List<Integer> widths = new ArrayList<>();
        for (int i = 0; i < group.length; i++) {
            String name = inputs.get(i).name() + ", " + inputs.get(i).words();
            int last = names.size() - 1;
            if (group[i] < i) {
                names.set(last, names.get(last) + ", with " + name);
                widths.set(last, widths.get(last) + inputs.get(i).axes());
            } else {
                names.add(name);
                widths.add(inputs.get(i).axes());
            }
        }
        int[] sizes = widths.stream().mapToInt(width -> width).toArray();
        Sums[] sums = new Sums[labels.size()];
        int done = gather(trials::values, sizes, spread.sampling(), spread.draws(), spread.seed(), crew, sums);
        Set<String> notes = new LinkedHashSet<>();
        notes.add(SpreadResult.drawn(spread, inputs, done) + " Each draw stands for " + (sizes.length + 2)
                + " computations.");
        notes.add(
                "Share alone: by which part the variance would shrink if this input were known. Share in all: which part"
                        + " would be left if all others were known; larger where inputs work together. ±: twice the standard error.");
        long left = 0;
        for (Sums each : sums) {
            left = Math.max(left, each.left);
        }
        if (left > 0) {
            notes.add(left + " of " + done + " draws have no value and are left out: " + trials.reasons() + ".");
        }
        SpreadResult.general(spread, notes);
        return new VarianceShares(spread.performance().toString(), names, labels, sums, List.copyOf(notes));
    }

    /** Returns the shares of a function of the unit cube, for tests against functions whose shares are known. */
    static VarianceShares of(Model model, int[] sizes, Sampling sampling, int draws, long seed, Crew crew) {
        Sums[] sums = new Sums[1];
        gather(model, sizes, sampling, draws, seed, crew, sums);
        List<String> names = new ArrayList<>();
        for (int k = 0; k < sizes.length; k++) {
            names.add("input " + (k + 1));
        }
        return new VarianceShares("shares", names, List.of("value"), sums, List.of());
    }

    private static int gather(
            Model model, int[] sizes, Sampling sampling, int draws, long seed, Crew crew, Sums... sums) {
        int axes = 0;
        for (int size : sizes) {
            axes += size;
        }
        int all = axes;
        Sampling.Points points = sampling.points(2 * axes, draws, seed);
        for (int q = 0; q < sums.length; q++) {
            sums[q] = new Sums(sizes.length);
        }
        int[] row = {0};
        return crew.inOrder(
                draws, BLOCK, (from, to) -> model.values(mixed(points.rows(from, to), sizes, all)), values -> {
                    int each = sizes.length + 2;
                    for (int at = 0; at < values.length; at += each) {
                        take(values, at, (int) ((long) row[0] * BATCHES / draws), sums);
                        row[0]++;
                    }
                });
    }

    private static void take(double[][] values, int at, int batch, Sums... sums) {
        for (int q = 0; q < sums.length; q++) {
            double[] mixed = new double[values.length > at ? inputsOf(sums[q]) : 0];
            for (int i = 0; i < mixed.length; i++) {
                mixed[i] = values[at + 2 + i][q];
            }
            sums[q].add(batch, values[at][q], values[at + 1][q], mixed);
        }
    }

    private static int inputsOf(Sums sums) {
        return sums.alone[0].length;
    }

    /** For every row its A, its B, and A with each input from B. */
    private static double[][] mixed(double[][] rows, int[] sizes, int axes) {
        double[][] all = new double[rows.length * (sizes.length + 2)][];
        int next = 0;
        for (double[] row : rows) {
            double[] a = Arrays.copyOfRange(row, 0, axes);
            double[] b = Arrays.copyOfRange(row, axes, 2 * axes);
            all[next++] = a;
            all[next++] = b;
            int from = 0;
            for (int size : sizes) {
                double[] changed = a.clone();
                System.arraycopy(b, from, changed, from, size);
                all[next++] = changed;
                from += size;
            }
        }
        return all;
    }

    /** Returns the share that an input makes alone, 0 to 1 but for the draws' error: the first-order index. */
    public double alone(int reading, int input) {
        return sums[reading].alone(input);
    }

    /** Returns the share that an input has a part in: the total index. */
    public double total(int reading, int input) {
        return sums[reading].total(input);
    }

    /** Returns the shares in the first result. */
    @Override
    public Listing listing() {
        return listing(0);
    }

    /** Returns the shares in each result, a table each. */
    public List<Listing> listings() {
        List<Listing> all = new ArrayList<>();
        for (int q = 0; q < labels.size(); q++) {
            all.add(listing(q));
        }
        return List.copyOf(all);
    }

    /** One row for every input, the one that has the largest part in it first. */
    private Listing listing(int q) {
        Sums own = sums[q];
        List<List<Object>> rows = new ArrayList<>();
        if (own.count > 0 && own.variance() > 0) {
            List<Integer> order = new ArrayList<>();
            for (int i = 0; i < names.size(); i++) {
                order.add(i);
            }
            order.sort(Comparator.comparingDouble(input -> -own.total(input)));
            for (int i : order) {
                rows.add(List.of(
                        names.get(i),
                        share(own.alone(i), own.doubt(i, false)),
                        share(own.total(i), own.doubt(i, true))));
            }
        } else {
            rows.add(List.of("no draw changes it, or none has a value", "", ""));
        }
        return new Listing(
                "What makes the " + labels.get(q) + " unsure: " + title,
                List.of("input", "share alone", "share in all"),
                rows,
                notes);
    }

    private static Object share(double value, double doubt) {
        return Found.band(
                "share of the variance",
                Unit.PERCENT,
                Sides.NOT_SIDED,
                value,
                value - doubt,
                value + doubt,
                "of the draws");
    }
}
