package leverwright.mechanics.numeric;

/**
 * The smooth curve through values at evenly spaced places: cubic pieces with continuous slope and curvature; the slopes at its
 * ends are those of the quartic through the five values next to them. Immutable.
 */
public final class CubicSpline {
    private static final int LEAST_POINTS = 5;

    private final double from;
    private final double step;
    private final double[] values;
    private final double[] slopes;

    /**
     * Lays the curve.
     *
     * @param from first place
     * @param to last place, greater than {@code from}
     * @param values at places evenly from one to the other, at least 5
     * @throws IllegalArgumentException if there are fewer or the places do not rise
     */
    public CubicSpline(double from, double to, double... values) {
        if (values.length < LEAST_POINTS || !(to > from)) {
            throw new IllegalArgumentException("a smooth curve from " + from + " to " + to + " has " + values.length
                    + " values; allowed: at least 5, at places that rise");
        }
        this.from = from;
        this.step = (to - from) / (values.length - 1);
        this.values = values.clone();
        this.slopes = slopes();
    }

    private static double endSlope(double a, double b, double c, double d, double e) {
        return (-25 * a + 48 * b - 36 * c + 16 * d - 3 * e) / 12;
    }

    /** Slopes per step: m[i−1] + 4·m[i] + m[i+1] = 3·(y[i+1] − y[i−1]), solved from both known ends (Thomas). */
    private double[] slopes() {
        int n = values.length;
        double[] y = values;
        double[] slope = new double[n];
        double[] share = new double[n];
        slope[0] = endSlope(y[0], y[1], y[2], y[3], y[4]);
        slope[n - 1] = -endSlope(y[n - 1], y[n - 2], y[n - 3], y[n - 4], y[n - 5]);
        for (int i = 1; i < n - 1; i++) {
            double pivot = 4 - share[i - 1];
            double right = 3 * (y[i + 1] - y[i - 1]) - slope[i - 1];
            if (i == n - 2) {
                right -= slope[n - 1];
            }
            share[i] = 1 / pivot;
            slope[i] = right / pivot;
        }
        for (int i = n - 3; i > 0; i--) {
            slope[i] -= share[i] * slope[i + 1];
        }
        return slope;
    }

    /** Returns how many pieces it has. */
    public int pieces() {
        return values.length - 1;
    }

    private int piece(double at) {
        double pieces = (at - from) / step;
        return (int) Math.max(0, Math.min(values.length - 2, Math.floor(pieces)));
    }

    /** Returns the value at a place; beyond the ends the end pieces go on. */
    public double value(double at) {
        int k = piece(at);
        double u = (at - from) / step - k;
        double rise = values[k + 1] - values[k];
        double c = 3 * rise - 2 * slopes[k] - slopes[k + 1];
        double d = slopes[k] + slopes[k + 1] - 2 * rise;
        return values[k] + u * (slopes[k] + u * (c + u * d));
    }

    /** Returns the first derivative at a place. */
    public double slope(double at) {
        int k = piece(at);
        double u = (at - from) / step - k;
        double rise = values[k + 1] - values[k];
        double c = 3 * rise - 2 * slopes[k] - slopes[k + 1];
        double d = slopes[k] + slopes[k + 1] - 2 * rise;
        return (slopes[k] + u * (2 * c + u * 3 * d)) / step;
    }

    /** Returns the second derivative at a place. */
    public double curvature(double at) {
        int k = piece(at);
        double u = (at - from) / step - k;
        double rise = values[k + 1] - values[k];
        double c = 3 * rise - 2 * slopes[k] - slopes[k + 1];
        double d = slopes[k] + slopes[k + 1] - 2 * rise;
        return (2 * c + 6 * u * d) / (step * step);
    }
}
