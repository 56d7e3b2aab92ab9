package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which points of a long way are kept to be drawn: all of a short one; of a long one, for each of {@value #PARTS} equal parts of
 * the way, the first point and, curve by curve, the least, the greatest and the first without a value. So a chart of that many
 * pixels shows what the chart of all points would, and no peak between two kept points is higher than they are.
 */
final class KeptPoints {
    /** Ways of up to so many points are kept whole. */
    static final int WHOLE = 10_000;
    /** Parts of a longer way. */
    static final int PARTS = 1000;

    private final int count;
    private final int curves;
    private final boolean whole;
    private final Map<Integer, double[]> kept = new LinkedHashMap<>();
    private int part = -1;
    /** By curve: the whole points at which it is least and greatest in this part, which they are, and what was seen. */
    private final double[][] least;

    private final double[][] most;
    private final int[] leastAt;
    private final int[] mostAt;
    private final boolean[] seen;
    private final boolean[] gap;
    private final Map<Integer, double[]> ofPart = new LinkedHashMap<>();

    /**
     * Begins.
     *
     * @param count how many points there are
     * @param curves how many numbers each has
     */
    KeptPoints(int count, int curves) {
        this.count = count;
        this.curves = curves;
        this.whole = count <= WHOLE;
        least = new double[curves][curves];
        most = new double[curves][curves];
        leastAt = new int[curves];
        mostAt = new int[curves];
        seen = new boolean[curves];
        gap = new boolean[curves];
    }

    boolean isWhole() {
        return whole;
    }

    /** Takes the next point, with its values from a place of an array on. */
    void add(int point, double[] values, int from) {
        if (whole) {
            kept.put(point, Arrays.copyOfRange(values, from, from + curves));
            return;
        }
        int now = (int) ((long) point * PARTS / count);
        if (now != part) {
            closePart();
            part = now;
            openPart(point, values, from);
        }
        for (int c = 0; c < curves; c++) {
            look(point, c, values, from);
        }
    }

    private void openPart(int point, double[] values, int from) {
        Arrays.fill(seen, false);
        Arrays.fill(gap, false);
        ofPart.put(point, Arrays.copyOfRange(values, from, from + curves));
    }

    private void look(int point, int c, double[] values, int from) {
        double value = values[from + c];
        if (Double.isNaN(value)) {
            if (!gap[c]) {
                gap[c] = true;
                ofPart.put(point, Arrays.copyOfRange(values, from, from + curves));
            }
            return;
        }
        if (!seen[c] || value < least[c][c]) {
            System.arraycopy(values, from, least[c], 0, curves);
            leastAt[c] = point;
        }
        if (!seen[c] || value > most[c][c]) {
            System.arraycopy(values, from, most[c], 0, curves);
            mostAt[c] = point;
        }
        seen[c] = true;
    }

    private void closePart() {
        for (int c = 0; c < curves; c++) {
            if (seen[c]) {
                ofPart.put(leastAt[c], least[c].clone());
                ofPart.put(mostAt[c], most[c].clone());
            }
        }
        Arrays.fill(seen, false);
        ofPart.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> kept.put(entry.getKey(), entry.getValue()));
        ofPart.clear();
    }

    /** Ends, with the last point taken, and returns the points kept, in order. */
    List<Integer> points() {
        closePart();
        return new ArrayList<>(kept.keySet());
    }

    /** Returns the values of one curve at the points kept; null where there is none. */
    List<@Nullable Double> curve(int c) {
        List<@Nullable Double> values = new ArrayList<>(kept.size());
        for (double[] row : kept.values()) {
            values.add(Double.isNaN(row[c]) ? null : row[c]);
        }
        return values;
    }
}
