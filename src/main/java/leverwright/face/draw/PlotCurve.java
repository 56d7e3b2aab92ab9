package leverwright.face.draw;

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

    /** Returns the index of the last value that is no gap, or −1. */
    int last() {
        int last = y.length - 1;
        while (last >= 0 && Double.isNaN(y[last])) {
            last--;
        }
        return last;
    }

    /** Returns the value at a setting, on the straight line between neighbours; NaN in a gap or outside. */
    double at(double setting) {
        for (int i = 0; i + 1 < x.length; i++) {
            if (x[i] <= setting && setting <= x[i + 1]) {
                double share = x[i + 1] > x[i] ? (setting - x[i]) / (x[i + 1] - x[i]) : 0;
                return y[i] + share * (y[i + 1] - y[i]);
            }
        }
        return Double.NaN;
    }
}
