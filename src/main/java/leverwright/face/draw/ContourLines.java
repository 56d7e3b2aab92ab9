package leverwright.face.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Traces the lines along which a map has a value. Between neighbouring nodes values are taken as linear; each cell between four
 * nodes is crossed by straight pieces, which are joined at the cells' edges. Where a cell has two opposite corners above the
 * value and two below, the mean of the four tells which pair is joined. A cell with a missing corner is crossed by none.
 */
final class ContourLines {
    private static final double NOWHERE = Double.NEGATIVE_INFINITY;
    private static final int SIDES = 4;

    private final NodeGrid grid;
    private final double level;
    /** By edge: the one or two edges that pieces of the line lead to from there. */
    private final Map<Integer, int[]> ways = new HashMap<>();

    private final List<Integer> order = new ArrayList<>();

    /**
     * A line in the units of the grid.
     *
     * @param x the places across
     * @param y the places upwards
     */
    record Line(double[] x, double[] y) {
        boolean isClosed() {
            int last = x.length - 1;
            return last > 1 && x[0] == x[last] && y[0] == y[last];
        }
    }

    private ContourLines(NodeGrid grid, double level) {
        this.grid = grid;
        this.level = level;
    }

    /** Returns the lines of a value: open ones from edge to edge, closed ones with their first point at the end again. */
    static List<Line> at(NodeGrid grid, double level) {
        return new ContourLines(grid, level).traced();
    }

    /** Returns the borders of the part where values reach a level; all are closed. Missing values reach none. */
    static List<Line> borders(NodeGrid grid, double level) {
        return at(padded(grid), level);
    }

    /** Puts nodes that reach no level around a grid and where values are missing, so that every line is closed. */
    private static NodeGrid padded(NodeGrid grid) {
        int columns = grid.columns() + 2;
        int rows = grid.rows() + 2;
        double[] x = new double[columns];
        double[] y = new double[rows];
        for (int i = 0; i < columns; i++) {
            x[i] = grid.x()[Math.max(0, Math.min(grid.columns() - 1, i - 1))];
        }
        for (int i = 0; i < rows; i++) {
            y[i] = grid.y()[Math.max(0, Math.min(grid.rows() - 1, i - 1))];
        }
        double[] values = new double[columns * rows];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                boolean edge = column == 0 || row == 0 || column == columns - 1 || row == rows - 1;
                double value = edge ? NOWHERE : grid.at(column - 1, row - 1);
                values[row * columns + column] = Double.isNaN(value) ? NOWHERE : value;
            }
        }
        return new NodeGrid(x, y, values);
    }

    private List<Line> traced() {
        for (int row = 0; row + 1 < grid.rows(); row++) {
            for (int column = 0; column + 1 < grid.columns(); column++) {
                cross(column, row);
            }
        }
        List<Line> lines = new ArrayList<>();
        for (int edge : order) {
            int[] ends = ways.get(edge);
            if (ends != null && ends.length == 1) {
                lines.add(follow(edge));
            }
        }
        for (int edge : order) {
            if (ways.containsKey(edge)) {
                lines.add(follow(edge));
            }
        }
        return lines;
    }

    private boolean isAbove(int column, int row) {
        return grid.at(column, row) >= level;
    }

    /** Adds the pieces that cross a cell. Its edges are counted from its foot on, counter-clockwise. */
    private void cross(int column, int row) {
        double sum = grid.at(column, row)
                + grid.at(column + 1, row)
                + grid.at(column + 1, row + 1)
                + grid.at(column, row + 1);
        if (Double.isNaN(sum)) {
            return;
        }
        boolean[] above = {
            isAbove(column, row), isAbove(column + 1, row), isAbove(column + 1, row + 1), isAbove(column, row + 1)
        };
        int[] edges = {across(column, row), upwards(column + 1, row), across(column, row + 1), upwards(column, row)};
        int[] crossed = new int[SIDES];
        int count = 0;
        for (int side = 0; side < SIDES; side++) {
            if (above[side] != above[(side + 1) % SIDES]) {
                crossed[count++] = side;
            }
        }
        if (count == 2) {
            join(edges[crossed[0]], edges[crossed[1]]);
        } else if (count == SIDES) {
            // a piece cuts off each corner that the middle does not belong to
            boolean first = above[0] == sum / SIDES >= level;
            join(edges[0], edges[first ? 1 : 3]);
            join(edges[2], edges[first ? 3 : 1]);
        }
    }

    private int across(int column, int row) {
        return 2 * (row * grid.columns() + column);
    }

    private int upwards(int column, int row) {
        return 2 * (row * grid.columns() + column) + 1;
    }

    private void join(int one, int other) {
        lead(one, other);
        lead(other, one);
    }

    private void lead(int from, int to) {
        int[] before = ways.get(from);
        if (before == null) {
            order.add(from);
        }
        ways.put(from, before == null ? new int[] {to} : new int[] {before[0], to});
    }

    /** Follows a line from an edge to its end, or around, and takes its pieces away. */
    private Line follow(int start) {
        List<Integer> passed = new ArrayList<>(List.of(start));
        int from = start;
        int[] ends = ways.get(start);
        while (ends != null) {
            int to = ends[ends.length - 1];
            drop(from, to);
            drop(to, from);
            passed.add(to);
            from = to;
            ends = ways.get(from);
        }
        double[] x = new double[passed.size()];
        double[] y = new double[passed.size()];
        for (int i = 0; i < x.length; i++) {
            place(passed.get(i), x, y, i);
        }
        return new Line(x, y);
    }

    private void drop(int from, int to) {
        int[] ends = ways.get(from);
        if (ends == null || ends.length == 1) {
            ways.remove(from);
        } else {
            ways.put(from, new int[] {ends[0] == to ? ends[1] : ends[0]});
        }
    }

    private void place(int edge, double[] x, double[] y, int i) {
        int node = edge / 2;
        int column = node % grid.columns();
        int row = node / grid.columns();
        int nextColumn = edge % 2 == 0 ? column + 1 : column;
        int nextRow = edge % 2 == 0 ? row : row + 1;
        double one = grid.at(column, row);
        double other = grid.at(nextColumn, nextRow);
        double share = one == NOWHERE ? 1 : other == NOWHERE ? 0 : (level - one) / (other - one);
        x[i] = grid.x()[column] + share * (grid.x()[nextColumn] - grid.x()[column]);
        y[i] = grid.y()[row] + share * (grid.y()[nextRow] - grid.y()[row]);
    }
}
