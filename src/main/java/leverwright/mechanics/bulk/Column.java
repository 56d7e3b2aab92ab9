package leverwright.mechanics.bulk;

import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.numeric.RotationBlock;

/**
 * One input of many points: a number for each, or one for all, times a factor, plus an offset. The array is used as it is and
 * must not change while a column of it is in use.
 */
public final class Column {
    private static final double[] NOTHING = new double[RotationBlock.SIZE];

    private final double[] values;
    private final boolean constant;
    private final double least;
    private final double most;
    final double factor;
    final double offset;

    private Column(double[] values, boolean constant, double least, double most, double factor, double offset) {
        this.values = values;
        this.constant = constant;
        this.least = least;
        this.most = most;
        this.factor = factor;
        this.offset = offset;
    }

    /**
     * Returns a column with one number for each point.
     *
     * @param values SI, finite
     * @throws IllegalArgumentException if one is not finite
     */
    public static Column of(double... values) {
        double least = values.length == 0 ? 0 : Double.POSITIVE_INFINITY;
        double most = values.length == 0 ? 0 : Double.NEGATIVE_INFINITY;
        for (double value : values) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        Require.finite(least, "smallest number of a column", "");
        Require.finite(most, "largest number of a column", "");
        return new Column(values, false, least, most, 1, 0);
    }

    /** Returns a column with the same number, SI, for all points. */
    public static Column constant(double value) {
        return new Column(NOTHING, true, 0, 0, 0, Require.finite(value, "number of a column", ""));
    }

    /** Returns this column with every number times a factor; say it before {@link #plus}. */
    public Column times(double by) {
        Require.finite(by, "factor of a column", "");
        return new Column(values, constant, least, most, factor * by, offset * by);
    }

    /** Returns this column with a number added to every one. */
    public Column plus(double more) {
        Require.finite(more, "offset of a column", "");
        return new Column(values, constant, least, most, factor, offset + more);
    }

    /** Returns the number of a point: factor times the array's number, plus offset. */
    public double at(int point) {
        return constant ? offset : factor * values[point] + offset;
    }

    /** Whether it is the same for all points. */
    boolean isConstant() {
        return constant;
    }

    /** How many points it has a number for. */
    int size() {
        return constant ? Integer.MAX_VALUE : values.length;
    }

    double[] values() {
        return values;
    }

    /** The place in {@link #values} of the first point of a block. */
    int start(int point) {
        return constant ? 0 : point;
    }

    /** Returns this column if all its numbers lie within a range; else throws, naming the first end that does not. */
    Column within(double from, double to, String quantity, String unit) {
        double one = factor * least + offset;
        double other = factor * most + offset;
        Require.within(Math.min(one, other), from, to, quantity, unit);
        Require.within(Math.max(one, other), from, to, quantity, unit);
        return this;
    }
}
