package leverwright.face.draw;

import java.util.Arrays;

/**
 * A curve in the units in which it is read.
 *
 * @param name what it shows
 * @param x the setting, rising
 * @param y the value; NaN where there is none
 * @param low the lower limit of the band; equals {@code y} where there is none
 * @param high the upper limit of the band; equals {@code y} where there is none
 */
record PlotCurve(String name, double[] x, double[] y, double[] low, double[] high) {

    /** Returns whether the band has some width anywhere. */
    boolean hasBand() {
        for (int i = 0; i < y.length; i++) {
            if (high[i] > low[i]) {
                return true;
            }
        }
        return false;
    }

    /** Returns whether there is a value at an index, with a gap to either side. */
    boolean isLonely(int i) {
        return !Double.isNaN(y[i])
                && (i == 0 || Double.isNaN(y[i - 1]))
                && (i == y.length - 1 || Double.isNaN(y[i + 1]));
    }

    /** Returns the index of the last value that is no gap, or −1. */
    int last() {
        int last = y.length - 1;
        while (last >= 0 && Double.isNaN(y[last])) {
            last--;
        }
        return last;
    }

    /** Returns the part of the curve between two settings, NaN for no limit; its ends lie on the lines between neighbours. */
    PlotCurve between(double from, double to) {
        double first = Math.max(Double.isNaN(from) ? -Double.MAX_VALUE : from, x[0]);
        double last = Math.min(Double.isNaN(to) ? Double.MAX_VALUE : to, x[x.length - 1]);
        if (first >= last) {
            return this;
        }
        double[] inside = Arrays.stream(x).filter(at -> at > first && at < last).toArray();
        double[] settings = new double[inside.length + 2];
        settings[0] = first;
        System.arraycopy(inside, 0, settings, 1, inside.length);
        settings[settings.length - 1] = last;
        return new PlotCurve(name, settings, at(settings, y), at(settings, low), at(settings, high));
    }

    private double[] at(double[] settings, double[] values) {
        return Arrays.stream(settings).map(setting -> at(setting, values)).toArray();
    }

    /** Returns the value at a setting, on the straight line between neighbours; NaN in a gap or outside. */
    double at(double setting) {
        return at(setting, y);
    }

    private double at(double setting, double[] values) {
        for (int i = 0; i < x.length; i++) {
            if (x[i] == setting) {
                return values[i];
            }
            if (i + 1 < x.length && x[i] < setting && setting < x[i + 1]) {
                double share = (setting - x[i]) / (x[i + 1] - x[i]);
                return values[i] + share * (values[i + 1] - values[i]);
            }
        }
        return Double.NaN;
    }
}
