package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listing;
import org.jspecify.annotations.Nullable;

/** Curves as a table: all settings of a short way, a choice of a long one's. */
final class SweptTable {
    /** Ways of up to so many settings are listed whole. */
    private static final int WHOLE = 60;

    private static final int PARTS = 20;

    private SweptTable() {}

    static Listing of(Curves curves, int computed) {
        List<Double> settings = curves.axis().values();
        List<String> notes = new ArrayList<>(curves.notes());
        TreeSet<Integer> rows = new TreeSet<>();
        if (settings.size() <= WHOLE && settings.size() == computed) {
            for (int k = 0; k < settings.size(); k++) {
                rows.add(k);
            }
        } else {
            choose(curves, rows);
            notes.add(
                    0,
                    String.format(
                            Locale.ROOT,
                            "Of %,d settings: the nearest to each twentieth part of the way, and those where a column is least or"
                                    + " greatest.",
                            computed));
        }
        List<String> headings = new ArrayList<>(List.of(curves.axis().name()));
        curves.curves().forEach(curve -> headings.add(curve.name()));
        List<List<Object>> lines = new ArrayList<>();
        rows.forEach(k -> lines.add(row(curves, k)));
        return new Listing(curves.title(), headings, lines, notes);
    }

    private static void choose(Curves curves, TreeSet<Integer> rows) {
        List<Double> settings = curves.axis().values();
        double from = settings.get(0);
        double to = settings.get(settings.size() - 1);
        int k = 0;
        for (int part = 0; part <= PARTS; part++) {
            double wanted = from + (to - from) * part / PARTS;
            while (k + 1 < settings.size()
                    && Math.abs(settings.get(k + 1) - wanted) <= Math.abs(settings.get(k) - wanted)) {
                k++;
            }
            rows.add(k);
        }
        for (Curves.Curve curve : curves.curves()) {
            extremes(curve.values(), rows);
        }
    }

    private static void extremes(List<@Nullable Double> values, TreeSet<Integer> rows) {
        int least = -1;
        int most = -1;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < values.size(); k++) {
            Double value = values.get(k);
            if (value != null && value < low) {
                low = value;
                least = k;
            }
            if (value != null && value > high) {
                high = value;
                most = k;
            }
        }
        if (least >= 0) {
            rows.add(least);
            rows.add(most);
        }
    }

    private static List<Object> row(Curves curves, int k) {
        List<Object> row = new ArrayList<>();
        Curves.Axis axis = curves.axis();
        row.add(Found.value(
                axis.name(), axis.unit(), Sides.NOT_SIDED, axis.values().get(k), "set"));
        for (Curves.Curve curve : curves.curves()) {
            Double value = curve.values().get(k);
            if (value == null) {
                row.add("–");
            } else if (curve.low().isEmpty()) {
                row.add(Found.value(curve.name(), curve.unit(), curve.sides(), value, "read off the posture"));
            } else {
                row.add(Found.band(
                        curve.name(),
                        curve.unit(),
                        curve.sides(),
                        value,
                        end(curve.low().get(k), value),
                        end(curve.high().get(k), value),
                        "read off the posture"));
            }
        }
        return row;
    }

    private static double end(@Nullable Double end, double value) {
        return end == null ? value : end;
    }
}
