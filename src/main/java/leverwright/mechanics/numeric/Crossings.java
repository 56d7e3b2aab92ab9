package leverwright.mechanics.numeric;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Finds every place at which a function of one number vanishes, between two ends: it is looked at in many places, changes of sign
 * are closed in on by {@link RootFinder}, places where it only touches zero by {@link Minimum}. The function may have gaps, where
 * it is NaN; their edges are found by halving. Two crossings that lie within one step of each other can be missed.
 */
public final class Crossings {
    /** How many steps there are between the ends. */
    public static final int STEPS = 256;

    private static final int HALVINGS = 40;
    private static final double TOUCH = 1e-9;

    private final DoubleUnaryOperator function;
    private final double from;
    private final double to;
    private final double accuracy;
    private final List<Double> places = new ArrayList<>();
    private final List<Double> values = new ArrayList<>();
    private final List<Double> roots = new ArrayList<>();
    private final List<Double> jumps = new ArrayList<>();
    private double scale;

    private Crossings(DoubleUnaryOperator function, double from, double to) {
        this.function = function;
        this.from = from;
        this.to = to;
        this.accuracy = 1e-12 * (to - from);
    }

    /**
     * Looks for all crossings.
     *
     * @param function what shall vanish; NaN where it has no value
     * @param from one end
     * @param to the other end, greater
     * @throws IllegalArgumentException if the ends do not rise
     */
    public static Crossings of(DoubleUnaryOperator function, double from, double to) {
        Require.finite(from, "lower end of a search", "");
        if (!(to > from) || !Double.isFinite(to)) {
            throw new IllegalArgumentException(
                    "a search goes from " + from + " to " + to + "; allowed: from a smaller to a larger finite number");
        }
        Crossings found = new Crossings(function, from, to);
        found.look();
        found.close();
        return found;
    }

    /** Returns where the function vanishes, rising. */
    public List<Double> roots() {
        return List.copyOf(roots);
    }

    /** Returns where it changes its sign in a jump, without vanishing. */
    public List<Double> jumps() {
        return List.copyOf(jumps);
    }

    /** Returns whether it has a value anywhere. */
    public boolean hasValues() {
        return !places.isEmpty();
    }

    /** Returns the place where it comes closest to zero. */
    public double nearest() {
        int best = 0;
        for (int i = 1; i < places.size(); i++) {
            if (Math.abs(values.get(i)) < Math.abs(values.get(best))) {
                best = i;
            }
        }
        double left = places.get(Math.max(0, best - 1));
        double right = places.get(Math.min(places.size() - 1, best + 1));
        double middle = places.get(best);
        double refined = left < right ? Minimum.of(this::away, left, right) : middle;
        return away(refined) < Math.abs(values.get(best)) ? refined : middle;
    }

    private double away(double place) {
        double value = Math.abs(function.applyAsDouble(place));
        return Double.isNaN(value) ? Double.MAX_VALUE : value;
    }

    private void look() {
        double before = Double.NaN;
        double beforeAt = from;
        for (int k = 0; k <= STEPS; k++) {
            double at = k == STEPS ? to : from + (to - from) * k / STEPS;
            double value = function.applyAsDouble(at);
            if (k > 0 && Double.isNaN(before) != Double.isNaN(value)) {
                edge(Double.isNaN(before) ? at : beforeAt, Double.isNaN(before) ? beforeAt : at);
            }
            if (!Double.isNaN(value)) {
                add(at, value);
            }
            before = value;
            beforeAt = at;
        }
        for (double value : values) {
            scale = Math.max(scale, Math.abs(value));
        }
    }

    /** The last place with a value between one that has and one that has none. */
    private void edge(double with, double without) {
        double inside = with;
        double outside = without;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (inside + outside) / 2;
            if (Double.isNaN(function.applyAsDouble(middle))) {
                outside = middle;
            } else {
                inside = middle;
            }
        }
        if (inside != with) {
            add(inside, function.applyAsDouble(inside));
        }
    }

    private void add(double at, double value) {
        int place = places.size();
        while (place > 0 && places.get(place - 1) > at) {
            place--;
        }
        places.add(place, at);
        values.add(place, value);
    }

    private boolean isZero(double value) {
        return Math.abs(value) <= TOUCH * scale;
    }

    private void close() {
        for (int i = 0; i < places.size(); i++) {
            double value = values.get(i);
            if (value == 0) {
                root(places.get(i));
            } else if (i + 1 < places.size() && value * values.get(i + 1) < 0) {
                cross(places.get(i), places.get(i + 1));
            } else if (i > 0
                    && i + 1 < places.size()
                    && value * values.get(i - 1) > 0
                    && value * values.get(i + 1) > 0) {
                dip(i);
            }
        }
        roots.sort(Double::compare);
    }

    private void cross(double left, double right) {
        try {
            RootFinder.Root root = RootFinder.between("crossing", "", this::orRefuse, left, right, accuracy);
            if (Math.abs(root.residual()) <= 1e-6 * scale) {
                root(root.at());
            } else {
                jumps.add(root.at());
            }
        } catch (IllegalArgumentException hole) {
            jumps.add((left + right) / 2);
        }
    }

    private double orRefuse(double at) {
        double value = function.applyAsDouble(at);
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException("no value at " + at);
        }
        return value;
    }

    /** A place whose neighbours lie farther from zero, all on one side: it may touch zero, or cross it twice. */
    private void dip(int i) {
        double sign = values.get(i) > 0 ? 1 : -1;
        double left = places.get(i - 1);
        double right = places.get(i + 1);
        if (sign * values.get(i) > sign * values.get(i - 1) || sign * values.get(i) > sign * values.get(i + 1)) {
            return;
        }
        double lowest = Minimum.of(
                at -> {
                    double value = sign * function.applyAsDouble(at);
                    return Double.isNaN(value) ? Double.MAX_VALUE : value;
                },
                left,
                right);
        double value = sign * function.applyAsDouble(lowest);
        if (isZero(value)) {
            root(lowest);
        } else if (value < 0) {
            cross(left, lowest);
            cross(lowest, right);
        }
    }

    private void root(double at) {
        for (double other : roots) {
            if (Math.abs(other - at) <= 1e-9 * (to - from)) {
                return;
            }
        }
        roots.add(at);
    }
}
