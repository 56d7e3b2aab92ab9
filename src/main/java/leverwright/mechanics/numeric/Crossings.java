package leverwright.mechanics.numeric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Finds every place at which a function of one number vanishes, between two ends. The function and its slope are looked at in many
 * places. Where it changes its sign, {@link RootFinder} closes in; where it turns between two places towards zero, {@link Minimum}
 * looks whether it touches zero or goes through it twice; where the cubic through values and slopes turns on the way through zero,
 * its turning points are looked at too. The function may have gaps, where it is NaN; their edges are found by halving. What turns
 * several times within one step can be missed.
 */
public final class Crossings {
    /** How many steps there are between the ends. */
    public static final int STEPS = 256;

    private static final int BLOCK = 8;
    private static final int HALVINGS = 40;
    private static final double TOUCH = 1e-9;
    private static final double ROUNDING = 1e-12;
    /** The part of a step over which slopes are taken. */
    private static final double NEAR = 1e-3;
    /** How much deeper than its slopes tell a function may dip between two places, and be looked at. */
    private static final double DEEPER = 4;

    private final DoubleUnaryOperator function;
    private final double from;
    private final double to;
    private final double accuracy;
    private final List<Place> places = new ArrayList<>();
    private final List<Double> roots = new ArrayList<>();
    private final List<Double> jumps = new ArrayList<>();
    private double scale;
    private int looked;

    /**
     * A place with a value.
     *
     * @param at where
     * @param value of the function there
     * @param slope of the function there; 0 where none can be taken
     * @param open whether the function has a gap before the next place
     */
    private record Place(double at, double value, double slope, boolean open) {}

    private Crossings(DoubleUnaryOperator function, double from, double to) {
        this.function = function;
        this.from = from;
        this.to = to;
        this.accuracy = 1e-12 * (to - from);
    }

    /** Looks for all crossings on the caller's thread: see {@link #of(Crew, DoubleUnaryOperator, double, double)}. */
    public static Crossings of(DoubleUnaryOperator function, double from, double to) {
        return of(Crew.alone(), function, from, to);
    }

    /**
     * Looks for all crossings. Once stopped, those up to where it came are found; see {@link #isPartial}.
     *
     * @param crew who looks
     * @param function what shall vanish; NaN where it has no value; asked by several threads
     * @param from one end
     * @param to the other end, greater
     * @throws IllegalArgumentException if the ends do not rise
     */
    public static Crossings of(Crew crew, DoubleUnaryOperator function, double from, double to) {
        Require.finite(from, "lower end of a search", "");
        if (!(to > from) || !Double.isFinite(to)) {
            throw new IllegalArgumentException(
                    "a search goes from " + from + " to " + to + "; allowed: from a smaller to a larger finite number");
        }
        Crossings found = new Crossings(function, from, to);
        found.look(crew);
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

    /** Returns whether it was stopped before all places were looked at. */
    public boolean isPartial() {
        return looked <= STEPS;
    }

    /** Returns up to where it was looked at. */
    public double reached() {
        return looked == 0 ? from : place(looked - 1);
    }

    /** Returns the place where it comes closest to zero. */
    public double nearest() {
        int best = 0;
        for (int i = 1; i < places.size(); i++) {
            if (Math.abs(places.get(i).value()) < Math.abs(places.get(best).value())) {
                best = i;
            }
        }
        double left = places.get(Math.max(0, best - 1)).at();
        double right = places.get(Math.min(places.size() - 1, best + 1)).at();
        double middle = places.get(best).at();
        double refined = left < right ? Minimum.of(this::away, left, right) : middle;
        return away(refined) < Math.abs(places.get(best).value()) ? refined : middle;
    }

    private double away(double place) {
        double value = Math.abs(function.applyAsDouble(place));
        return Double.isNaN(value) ? Double.MAX_VALUE : value;
    }

    private double place(int k) {
        return k == STEPS ? to : from + (to - from) * k / STEPS;
    }

    private void look(Crew crew) {
        double[] values = new double[STEPS + 1];
        double[] slopes = new double[STEPS + 1];
        looked = crew.inOrder(STEPS + 1, BLOCK, this::seen, rows -> {
            for (double[] row : rows) {
                values[(int) row[0]] = row[1];
                slopes[(int) row[0]] = row[2];
            }
        });
        for (int k = 0; k < looked; k++) {
            double at = place(k);
            boolean gap = k > 0 && Double.isNaN(values[k - 1]) != Double.isNaN(values[k]);
            if (gap) {
                edge(Double.isNaN(values[k - 1]) ? at : place(k - 1), Double.isNaN(values[k - 1]) ? place(k - 1) : at);
            }
            if (!Double.isNaN(values[k])) {
                boolean open = k + 1 < looked && Double.isNaN(values[k + 1]);
                places.add(new Place(at, values[k], slopes[k], open));
                scale = Math.max(scale, Math.abs(values[k]));
            }
        }
        // the edge after a place lies beyond it, so that the place itself is not open
        for (int i = 0; i + 1 < places.size(); i++) {
            Place each = places.get(i);
            if (each.open() && places.get(i + 1).at() < each.at() + 0.999 * (to - from) / STEPS) {
                places.set(i, new Place(each.at(), each.value(), each.slope(), false));
            }
        }
    }

    private double[][] seen(int first, int end) {
        double[][] rows = new double[end - first][];
        for (int k = first; k < end; k++) {
            double at = place(k);
            double value = function.applyAsDouble(at);
            rows[k - first] = new double[] {k, value, Double.isNaN(value) ? Double.NaN : slope(at, value)};
        }
        return rows;
    }

    /** The slope at a place, from the side on which the function has a value; 0 where there is none. */
    private double slope(double at, double value) {
        double near = NEAR * (to - from) / STEPS;
        double ahead = at + near > to ? Double.NaN : (function.applyAsDouble(at + near) - value) / near;
        if (!Double.isNaN(ahead)) {
            return ahead;
        }
        double behind = at - near < from ? Double.NaN : (value - function.applyAsDouble(at - near)) / near;
        return Double.isNaN(behind) ? 0 : behind;
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
            double value = function.applyAsDouble(inside);
            places.add(new Place(inside, value, slope(inside, value), without > with));
        }
    }

    private void close() {
        for (int i = 0; i < places.size(); i++) {
            Place left = places.get(i);
            if (left.value() == 0) {
                root(left.at());
            }
            if (i + 1 < places.size()) {
                Place right = places.get(i + 1);
                if (left.open()) {
                    if (left.value() * right.value() < 0) {
                        jumps.add((left.at() + right.at()) / 2);
                    }
                } else {
                    between(off(left, true), off(right, false));
                }
            }
        }
        roots.sort(Double::compare);
    }

    /** A place a little beside one where the function vanishes already. */
    private Place off(Place place, boolean after) {
        double near = NEAR * (to - from) / STEPS;
        double at = after ? place.at() + near : place.at() - near;
        double value = place.value() == 0 ? function.applyAsDouble(at) : Double.NaN;
        return Double.isNaN(value) ? place : new Place(at, value, place.slope(), place.open());
    }

    private void between(Place left, Place right) {
        double sign = Math.signum(left.value());
        double width = right.at() - left.at();
        if (sign * right.value() > 0) {
            boolean turns = sign * left.slope() < 0 && sign * right.slope() > 0;
            boolean comesNear = Math.abs(left.value()) <= DEEPER * Math.abs(left.slope()) * width
                    || Math.abs(right.value()) <= DEEPER * Math.abs(right.slope()) * width;
            if (turns && comesNear) {
                dip(left.at(), right.at(), sign);
                return;
            }
        }
        List<Double> at = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        at.add(left.at());
        values.add(left.value());
        for (double part : turns(left, right, width)) {
            double value = function.applyAsDouble(left.at() + part * width);
            if (!Double.isNaN(value)) {
                at.add(left.at() + part * width);
                values.add(value);
            }
        }
        at.add(right.at());
        values.add(right.value());
        for (int k = 0; k + 1 < at.size(); k++) {
            if (values.get(k) * values.get(k + 1) < 0) {
                cross(at.get(k), at.get(k + 1));
            }
        }
    }

    /** Where the cubic through two places with their slopes turns between them, as parts of the way, rising. */
    private static double[] turns(Place left, Place right, double width) {
        double rise = right.value() - left.value();
        double one = left.slope() * width;
        double other = right.slope() * width;
        double a = 3 * (one + other - 2 * rise);
        double b = 2 * (3 * rise - 2 * one - other);
        double root = b * b - 4 * a * one;
        if (!(root > 0) || a == 0) {
            return new double[0];
        }
        double first = (-b - Math.sqrt(root)) / (2 * a);
        double second = (-b + Math.sqrt(root)) / (2 * a);
        return Arrays.stream(new double[] {Math.min(first, second), Math.max(first, second)})
                .filter(part -> part > 0 && part < 1)
                .toArray();
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

    /** The function comes towards zero and turns back between two places: it may touch zero, or cross it twice. */
    private void dip(double left, double right, double sign) {
        double lowest = Minimum.of(
                at -> {
                    double value = sign * function.applyAsDouble(at);
                    return Double.isNaN(value) ? Double.MAX_VALUE : value;
                },
                left,
                right);
        double value = sign * function.applyAsDouble(lowest);
        if (value < -ROUNDING * scale) {
            cross(left, lowest);
            cross(lowest, right);
        } else if (value <= TOUCH * scale) {
            root(lowest);
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
