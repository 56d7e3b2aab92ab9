package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import leverwright.mechanics.numeric.NormalCurve;

/**
 * Which inputs of a spread go together: pairs with a correlation. The normal scores of the inputs, each the value below which a
 * part of all draws of a normal distribution lies, have these correlations (a normal copula), whatever the distributions are;
 * between two normal inputs it is their own correlation. Pairs that are not named are independent of each other.
 */
record Links(List<Link> all) {
    /** None. */
    static final Links NONE = new Links(List.of());

    private static final double LEAST = 1e-15;

    /** Two inputs that go together. */
    record Link(String one, String other, double correlation) {
        boolean has(String name) {
            return one.equalsIgnoreCase(name) || other.equalsIgnoreCase(name);
        }
    }

    Links {
        all = List.copyOf(all);
    }

    Links with(String one, String other, double correlation) {
        if (!(correlation > -1 && correlation < 1)) {
            throw new IllegalArgumentException("the correlation of " + one + " and " + other + " is " + correlation
                    + "; allowed: greater than -1, less than 1");
        }
        boolean known = all.stream().anyMatch(link -> link.has(one) && link.has(other));
        if (one.equalsIgnoreCase(other) || known) {
            throw new IllegalArgumentException(
                    one + " and " + other + " go together twice, or are one input; allowed: two inputs, once");
        }
        List<Link> more = new ArrayList<>(all);
        more.add(new Link(one, other, correlation));
        return new Links(more);
    }

    /** The inputs with those that go together side by side, in the order of their first. */
    List<SpreadInput> ordered(List<SpreadInput> inputs) {
        for (Link link : all) {
            require(inputs, link.one());
            require(inputs, link.other());
        }
        if (all.isEmpty()) {
            return inputs;
        }
        int[] group = groups(inputs);
        List<SpreadInput> ordered = new ArrayList<>();
        for (int g = 0; g < group.length; g++) {
            for (int i = 0; i < group.length; i++) {
                if (group[i] == g) {
                    ordered.add(inputs.get(i));
                }
            }
        }
        return ordered;
    }

    private static void require(List<SpreadInput> inputs, String name) {
        SpreadInput found = inputs.stream()
                .filter(input -> input.name().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name
                        + " is not an input of this spread; its inputs are "
                        + String.join(
                                ", ", inputs.stream().map(SpreadInput::name).toList())));
        if (found.axes() != 1) {
            throw new IllegalArgumentException(
                    found.name() + " stands for many numbers; allowed: inputs that are one number each");
        }
    }

    /** For each input the place of the first that it goes together with, straight or through others; its own where it is alone. */
    int[] groups(List<SpreadInput> inputs) {
        int[] group = new int[inputs.size()];
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
        }
        for (Link link : all) {
            int one = group[place(inputs, link.one())];
            int other = group[place(inputs, link.other())];
            for (int i = 0; i < group.length; i++) {
                group[i] = group[i] == Math.max(one, other) ? Math.min(one, other) : group[i];
            }
        }
        return group;
    }

    private static int place(List<SpreadInput> inputs, String name) {
        for (int i = 0; i < inputs.size(); i++) {
            if (inputs.get(i).name().equalsIgnoreCase(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException(name + " is not an input of this spread");
    }

    /** What the pairs are, in words; empty without any. */
    String words() {
        List<String> words = new ArrayList<>();
        for (Link link : all) {
            words.add(String.format(
                    Locale.ROOT,
                    "%s and %s go together, correlation %s",
                    link.one(),
                    link.other(),
                    link.correlation()));
        }
        return words.isEmpty() ? "" : " " + String.join("; ", words) + ".";
    }

    /**
     * Returns what makes independent points of the unit cube into ones that go together.
     *
     * @param inputs in order
     * @param from where each one's numbers begin in a point
     * @throws IllegalArgumentException if no distribution has all these correlations
     */
    Joined joined(List<SpreadInput> inputs, int... from) {
        Map<Integer, Integer> rows = new LinkedHashMap<>();
        for (int i = 0; i < inputs.size(); i++) {
            String name = inputs.get(i).name();
            if (all.stream().anyMatch(link -> link.has(name))) {
                rows.put(i, rows.size());
            }
        }
        int n = rows.size();
        double[][] matrix = new double[n][n];
        for (int i = 0; i < n; i++) {
            matrix[i][i] = 1;
        }
        for (Link link : all) {
            int one = rows.getOrDefault(place(inputs, link.one()), 0);
            int other = rows.getOrDefault(place(inputs, link.other()), 0);
            matrix[one][other] = link.correlation();
            matrix[other][one] = link.correlation();
        }
        int[] axes = rows.keySet().stream().mapToInt(input -> from[input]).toArray();
        return new Joined(axes, root(matrix));
    }

    /** The lower triangular square root (Cholesky). */
    private static double[][] root(double[]... matrix) {
        int n = matrix.length;
        double[][] root = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * root[j][k];
                }
                if (i == j && !(sum > 1e-12)) {
                    throw new IllegalArgumentException(
                            "no inputs go together in all these ways at once; bring some correlations closer to 0");
                }
                root[i][j] = i == j ? Math.sqrt(sum) : sum / root[j][j];
            }
        }
        return root;
    }

    /** Makes some numbers of independent points go together. */
    record Joined(int[] axes, double[][] root) {
        double[] of(double... unit) {
            if (axes.length == 0) {
                return unit;
            }
            double[] normal = new double[axes.length];
            for (int k = 0; k < axes.length; k++) {
                normal[k] = NormalCurve.at(unit[axes[k]]);
            }
            double[] joined = unit.clone();
            for (int i = 1; i < axes.length; i++) {
                double sum = 0;
                for (int k = 0; k <= i; k++) {
                    sum += root[i][k] * normal[k];
                }
                joined[axes[i]] = Math.max(LEAST, Math.min(1 - LEAST, NormalCurve.below(sum)));
            }
            return joined;
        }
    }
}
