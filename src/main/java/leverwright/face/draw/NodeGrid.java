package leverwright.face.draw;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.ContourMap;
import org.jspecify.annotations.Nullable;

/**
 * The nodes of a map in the units in which it is read.
 *
 * @param x the settings across, rising
 * @param y the settings upwards, rising
 * @param values row by row from the foot; NaN where there is none
 */
record NodeGrid(double[] x, double[] y, double[] values) {

    /** Returns the nodes of a map, in the units of another one. */
    static NodeGrid of(ContourMap map, Unit across, Unit up, Unit unit) {
        double[] values = new double[map.values().size()];
        for (int i = 0; i < values.length; i++) {
            Double value = map.values().get(i);
            values[i] = value == null ? Double.NaN : unit.fromSi(value);
        }
        return new NodeGrid(shown(map.across().values(), across), shown(map.up().values(), up), values);
    }

    private static double[] shown(List<Double> settings, Unit unit) {
        return settings.stream().mapToDouble(unit::fromSi).toArray();
    }

    int columns() {
        return x.length;
    }

    int rows() {
        return y.length;
    }

    double at(int column, int row) {
        return values[row * x.length + column];
    }

    double least() {
        double least = Double.POSITIVE_INFINITY;
        for (double value : values) {
            least = value < least ? value : least;
        }
        return least;
    }

    double greatest() {
        double greatest = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            greatest = value > greatest ? value : greatest;
        }
        return greatest;
    }

    boolean hasGaps() {
        for (double value : values) {
            if (Double.isNaN(value)) {
                return true;
            }
        }
        return false;
    }

    /** Returns the nodes within a window, with new ones along its edges, linear between their neighbours. */
    NodeGrid within(@Nullable MapWindow window, Unit across, Unit up) {
        if (window == null) {
            return this;
        }
        double[] columns = cut(x, across.fromSi(window.left()), across.fromSi(window.right()));
        double[] rows = cut(y, up.fromSi(window.foot()), up.fromSi(window.top()));
        double[] inside = new double[columns.length * rows.length];
        for (int row = 0; row < rows.length; row++) {
            for (int column = 0; column < columns.length; column++) {
                inside[row * columns.length + column] = between(columns[column], rows[row]);
            }
        }
        return new NodeGrid(columns, rows, inside);
    }

    private static double[] cut(double[] settings, double from, double to) {
        double first = Math.max(from, settings[0]);
        double last = Math.min(to, settings[settings.length - 1]);
        if (!(first < last)) {
            return settings;
        }
        List<Double> kept = new ArrayList<>(List.of(first));
        for (double setting : settings) {
            if (setting > first && setting < last) {
                kept.add(setting);
            }
        }
        kept.add(last);
        return kept.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private double between(double atX, double atY) {
        int column = cell(x, atX);
        int row = cell(y, atY);
        double right = (atX - x[column]) / (x[column + 1] - x[column]);
        double above = (atY - y[row]) / (y[row + 1] - y[row]);
        double low = mix(at(column, row), at(column + 1, row), right);
        double high = mix(at(column, row + 1), at(column + 1, row + 1), right);
        return mix(low, high, above);
    }

    /** A node's own value is kept although its neighbour has none. */
    private static double mix(double one, double other, double share) {
        return share == 0 ? one : share == 1 ? other : one + share * (other - one);
    }

    private static int cell(double[] settings, double setting) {
        int cell = 0;
        while (cell + 2 < settings.length && settings[cell + 1] <= setting) {
            cell++;
        }
        return cell;
    }
}
