package leverwright.mechanics.numeric;

/**
 * A linear program with bounds, minimise c·x with A·x = b and 0 ≤ x ≤ u, by the simplex method on a dense table with Bland's
 * rule (R. G. Bland, "New finite pivoting rules for the simplex method", Math. Oper. Res. 2 (1977) 103-107, from memory), which
 * never goes round in circles. For some tens of unknowns; rows and columns should be of size 1 or so.
 */
public final class LinearProgram {
    private static final double SMALL = 1e-11;
    private static final double MET = 1e-9;
    private static final int MOST_PIVOTS = 20_000;

    private final int rows;
    private final int columns;
    private final double[][] original;
    private final double[] right;
    private final double[] upper;
    private final double[][] table;
    private final double[] basic;
    private final int[] basis;
    private final boolean[] inBasis;
    private final boolean[] atUpper;

    private LinearProgram(double[][] a, double[] b, double[] u) {
        rows = a.length;
        int unknowns = u.length;
        columns = unknowns + rows;
        original = new double[rows][columns];
        right = b.clone();
        upper = new double[columns];
        table = new double[rows][];
        basic = new double[rows];
        basis = new int[rows];
        inBasis = new boolean[columns];
        atUpper = new boolean[columns];
        System.arraycopy(u, 0, upper, 0, unknowns);
        for (int i = 0; i < rows; i++) {
            double sign = b[i] < 0 ? -1 : 1;
            for (int j = 0; j < unknowns; j++) {
                original[i][j] = a[i][j] * sign;
            }
            right[i] = b[i] * sign;
            original[i][unknowns + i] = 1;
            upper[unknowns + i] = Double.MAX_VALUE;
            table[i] = original[i].clone();
            basic[i] = right[i];
            basis[i] = unknowns + i;
            inBasis[unknowns + i] = true;
        }
    }

    /**
     * What was found.
     *
     * @param feasible whether there is any x
     * @param x the best one, empty without one
     * @param y prices of the rows, by which c·x falls when a row's right side falls by one; empty without x
     * @param value c·x
     */
    public record Optimum(boolean feasible, double[] x, double[] y, double value) {}

    /**
     * Returns the best x.
     *
     * @param c costs
     * @param a rows of the equations
     * @param b right sides
     * @param u upper bounds, not negative; {@link Double#MAX_VALUE} for none
     * @throws IllegalArgumentException if c·x falls without end, or the search does not settle
     */
    public static Optimum minimise(double[] c, double[][] a, double[] b, double[] u) {
        LinearProgram program = new LinearProgram(a, b, u);
        int unknowns = u.length;
        double[] first = new double[program.columns];
        for (int j = unknowns; j < program.columns; j++) {
            first[j] = 1;
        }
        program.search(first);
        if (program.cost(first) > MET) {
            return new Optimum(false, new double[0], new double[0], Double.POSITIVE_INFINITY);
        }
        for (int j = unknowns; j < program.columns; j++) {
            program.upper[j] = 0;
        }
        double[] second = new double[program.columns];
        System.arraycopy(c, 0, second, 0, unknowns);
        program.search(second);
        return program.optimum(second, b, unknowns);
    }

    private double cost(double[] c) {
        double sum = 0;
        for (int i = 0; i < rows; i++) {
            sum += c[basis[i]] * basic[i];
        }
        return sum;
    }

    private void search(double[] c) {
        for (int pivots = 0; pivots < MOST_PIVOTS; pivots++) {
            int entering = entering(c);
            if (entering < 0) {
                return;
            }
            move(entering);
        }
        throw new IllegalArgumentException("the linear program did not settle in " + MOST_PIVOTS + " steps");
    }

    /** The first column that makes the cost smaller. */
    private int entering(double[] c) {
        for (int j = 0; j < columns; j++) {
            if (!inBasis[j] && upper[j] > 0) {
                double reduced = c[j];
                for (int i = 0; i < rows; i++) {
                    reduced -= c[basis[i]] * table[i][j];
                }
                if (atUpper[j] ? reduced > SMALL : reduced < -SMALL) {
                    return j;
                }
            }
        }
        return -1;
    }

    private void move(int entering) {
        double sense = atUpper[entering] ? -1 : 1;
        double step = upper[entering];
        int leaving = -1;
        boolean leavesAtUpper = false;
        for (int i = 0; i < rows; i++) {
            double rate = sense * table[i][entering];
            double room;
            boolean up = false;
            if (rate > SMALL) {
                room = Math.max(0, basic[i]) / rate;
            } else if (rate < -SMALL && upper[basis[i]] < Double.MAX_VALUE) {
                room = Math.max(0, upper[basis[i]] - basic[i]) / -rate;
                up = true;
            } else {
                continue;
            }
            if (room < step - SMALL || (room < step + SMALL && leaving >= 0 && basis[i] < basis[leaving])) {
                step = Math.min(room, step);
                leaving = i;
                leavesAtUpper = up;
            }
        }
        if (step == Double.MAX_VALUE) {
            throw new IllegalArgumentException("the linear program has no least value: it falls without end");
        }
        for (int i = 0; i < rows; i++) {
            basic[i] -= sense * step * table[i][entering];
        }
        if (leaving < 0) {
            atUpper[entering] = !atUpper[entering];
            return;
        }
        double value = (atUpper[entering] ? upper[entering] : 0) + sense * step;
        int out = basis[leaving];
        inBasis[out] = false;
        atUpper[out] = leavesAtUpper;
        pivot(leaving, entering);
        basis[leaving] = entering;
        inBasis[entering] = true;
        atUpper[entering] = false;
        basic[leaving] = value;
    }

    private void pivot(int row, int column) {
        double[] line = table[row];
        double by = 1 / line[column];
        for (int j = 0; j < columns; j++) {
            line[j] *= by;
        }
        line[column] = 1;
        for (int i = 0; i < rows; i++) {
            double part = table[i][column];
            if (i != row && part != 0) {
                for (int j = 0; j < columns; j++) {
                    table[i][j] -= part * line[j];
                }
                table[i][column] = 0;
            }
        }
    }

    /** Solves for the basic unknowns and the prices anew from the first numbers, so that no rounding has piled up. */
    private Optimum optimum(double[] c, double[] b, int unknowns) {
        double[] rest = right.clone();
        for (int j = 0; j < columns; j++) {
            if (!inBasis[j] && atUpper[j]) {
                for (int i = 0; i < rows; i++) {
                    rest[i] -= original[i][j] * upper[j];
                }
            }
        }
        double[][] square = new double[rows][rows];
        double[][] turned = new double[rows][rows];
        double[] costs = new double[rows];
        for (int i = 0; i < rows; i++) {
            for (int k = 0; k < rows; k++) {
                square[i][k] = original[i][basis[k]];
                turned[k][i] = original[i][basis[k]];
            }
            costs[i] = c[basis[i]];
        }
        double[] values = LinearSystem.solve(square, rest);
        double[] y = LinearSystem.solve(turned, costs);
        double[] x = new double[unknowns];
        for (int j = 0; j < unknowns; j++) {
            x[j] = !inBasis[j] && atUpper[j] ? upper[j] : 0;
        }
        for (int i = 0; i < rows; i++) {
            if (basis[i] < unknowns) {
                x[basis[i]] = Math.max(0, Math.min(values[i], upper[basis[i]]));
            }
        }
        double value = 0;
        for (int j = 0; j < unknowns; j++) {
            value += c[j] * x[j];
        }
        for (int i = 0; i < rows; i++) {
            y[i] *= b[i] < 0 ? -1 : 1;
        }
        return new Optimum(true, x, y, value);
    }
}
