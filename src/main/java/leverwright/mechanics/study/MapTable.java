package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listing;

/** A map as a table: a few of its settings each way, the greatest setting upwards in the first row, as it is drawn. */
final class MapTable {
    private static final int MOST = 9;
    private static final int DIGITS = 4;

    private MapTable() {}

    static Listing of(ContourMap map) {
        List<Integer> columns = map.across().chosen(MOST);
        List<Integer> rows = map.up().chosen(MOST);
        List<String> notes = new ArrayList<>(map.notes());
        if (columns.size() < map.columns() || rows.size() < map.rows()) {
            notes.add(
                    0,
                    String.format(
                            Locale.ROOT,
                            "Of %,d by %,d settings, %d by %d that lie about evenly.",
                            map.columns(),
                            map.rows(),
                            columns.size(),
                            rows.size()));
        }
        List<String> headings =
                new ArrayList<>(List.of(map.up().name() + ", by " + map.across().name()));
        for (int column : columns) {
            Unit unit = map.across().unit();
            headings.add(unit.attach(
                    NumberText.general(unit.fromSi(map.across().values().get(column)), DIGITS)));
        }
        List<List<Object>> lines = new ArrayList<>();
        for (int i = rows.size() - 1; i >= 0; i--) {
            lines.add(row(map, rows.get(i), columns));
        }
        return new Listing(map.title() + ": " + map.name(), headings, lines, notes);
    }

    private static List<Object> row(ContourMap map, int row, List<Integer> columns) {
        List<Object> line = new ArrayList<>();
        Curves.Axis up = map.up();
        line.add(Found.value(up.name(), up.unit(), Sides.NOT_SIDED, up.values().get(row), "set"));
        for (int column : columns) {
            Double value = map.at(column, row);
            line.add(
                    value == null
                            ? "–"
                            : Found.value(map.name(), map.unit(), map.sides(), value, "read off the posture"));
        }
        return line;
    }
}
