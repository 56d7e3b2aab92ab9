package leverwright.mechanics.numeric;

/** Sums whose order is fixed, so that no digit depends on who adds. */
public final class Sums {
    private Sums() {}

    /** Returns the sum in index order; 0 for no numbers. */
    public static double inOrder(double... terms) {
        double sum = 0;
        for (double term : terms) {
            sum += term;
        }
        return sum;
    }

    /**
     * Returns the sum by halves: the sum of the lower half plus that of the upper half, and so on down to single numbers.
     * Its error grows with the logarithm of the count; its order depends on the count alone.
     */
    public static double byHalves(double... terms) {
        return terms.length == 0 ? 0 : byHalves(terms, 0, terms.length);
    }

    private static double byHalves(double[] terms, int from, int to) {
        if (to - from == 1) {
            return terms[from];
        }
        int middle = (from + to) >>> 1;
        return byHalves(terms, from, middle) + byHalves(terms, middle, to);
    }
}
