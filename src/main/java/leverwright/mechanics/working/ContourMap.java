package leverwright.mechanics.working;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * One quantity over two settings, at every node of a grid: what a contour map shows. All numbers are in the SI unit of their
 * kind (radians for angles); the units say how to show them.
 *
 * @param title what is mapped
 * @param name the quantity, such as "hip extension moment"
 * @param unit how its values are shown
 * @param sides per side, total or neither
 * @param across the settings from left to right, at least 2
 * @param up the settings from the foot to the top, at least 2
 * @param values one for each node, row by row from the foot, each row from left to right; null where there is no value
 * @param levels values to draw contours at, rising; empty where the drawing chooses round ones
 * @param presentAcross where on the axis across the present setting lies; null if it lies outside the map
 * @param presentUp where on the axis upwards it lies; null together with the other
 * @param notes cautions and remarks that travel with the map
 */
public record ContourMap(
        String title,
        String name,
        Unit unit,
        Sides sides,
        Curves.Axis across,
        Curves.Axis up,
        List<@Nullable Double> values,
        List<Double> levels,
        @Nullable Double presentAcross,
        @Nullable Double presentUp,
        List<String> notes) {

    /**
     * Copies the lists and checks their lengths and numbers.
     *
     * @throws IllegalArgumentException if an axis has fewer than two settings, if there is not one value for each node, if a
     *     number is not finite, or if the levels do not rise
     */
    public ContourMap {
        int columns = across.values().size();
        int rows = up.values().size();
        if (columns < 2 || rows < 2) {
            throw new IllegalArgumentException("the map “" + title + "” has " + columns + " by " + rows
                    + " settings; allowed: at least 2 each way");
        }
        if (values.size() != columns * rows) {
            throw new IllegalArgumentException("the map “" + title + "” has " + values.size() + " values for " + columns
                    + " by " + rows + " settings; it needs one for each");
        }
        List<@Nullable Double> copy = new ArrayList<>(values.size());
        for (Double value : values) {
            if (value != null && !Double.isFinite(value)) {
                throw new IllegalArgumentException(
                        "the map “" + title + "” holds " + value + "; leave a gap where there is no value");
            }
            copy.add(value == null ? null : value + 0.0);
        }
        values = Collections.unmodifiableList(copy);
        levels = List.copyOf(levels);
        for (int i = 0; i < levels.size(); i++) {
            if (!Double.isFinite(levels.get(i)) || (i > 0 && levels.get(i) <= levels.get(i - 1))) {
                throw new IllegalArgumentException(
                        "the map “" + title + "” needs finite levels that rise; level " + (i + 1) + " does not");
            }
        }
        notes = List.copyOf(notes);
    }

    /**
     * Returns this map with contours at chosen values.
     *
     * @param chosen in the SI unit, rising; empty lets the drawing choose
     */
    public ContourMap withLevels(List<Double> chosen) {
        return new ContourMap(title, name, unit, sides, across, up, values, chosen, presentAcross, presentUp, notes);
    }

    /** Returns how many settings there are from left to right. */
    public int columns() {
        return across.values().size();
    }

    /** Returns how many settings there are from the foot to the top. */
    public int rows() {
        return up.values().size();
    }

    /**
     * Returns the value at a node, in the SI unit; null where there is none.
     *
     * @param column from 0 at the left
     * @param row from 0 at the foot
     */
    public @Nullable Double at(int column, int row) {
        return values.get(row * columns() + column);
    }

    /**
     * Returns the value between nodes, in the SI unit: linear along each setting between the four nodes around; null outside
     * the map, and where one of the four has no value.
     *
     * @param x the setting across, in the SI unit
     * @param y the setting upwards, in the SI unit
     */
    public @Nullable Double between(double x, double y) {
        int column = cell(across.values(), x);
        int row = cell(up.values(), y);
        if (column < 0 || row < 0) {
            return null;
        }
        Double lowLeft = at(column, row);
        Double lowRight = at(column + 1, row);
        Double highLeft = at(column, row + 1);
        Double highRight = at(column + 1, row + 1);
        if (lowLeft == null || lowRight == null || highLeft == null || highRight == null) {
            return null;
        }
        double right = share(across.values(), column, x);
        double above = share(up.values(), row, y);
        double low = lowLeft + right * (lowRight - lowLeft);
        double high = highLeft + right * (highRight - highLeft);
        return low + above * (high - low);
    }

    private static double share(List<Double> settings, int cell, double setting) {
        return (setting - settings.get(cell)) / (settings.get(cell + 1) - settings.get(cell));
    }

    private static int cell(List<Double> settings, double setting) {
        int last = settings.size() - 1;
        if (!(setting >= settings.get(0) && setting <= settings.get(last))) {
            return -1;
        }
        int place = Collections.binarySearch(settings, setting);
        return Math.min(place >= 0 ? place : -place - 2, last - 1);
    }
}
