package leverwright.face.publish;

import java.util.ArrayList;
import java.util.List;
import leverwright.face.draw.MapDrawing;
import leverwright.face.draw.ValueText;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.working.ContourMap;

/** A map as plain text: the values at some of its nodes, the greatest setting upwards in the first line, and the map in words. */
final class TextMap {
    private static final int MOST = 9;
    private static final String GUTTER = "  ";

    private TextMap() {}

    static List<String> of(ContourMap map, int width, PlainText form) {
        List<String> heads = new ArrayList<>();
        List<Integer> rows = map.up().chosen(MOST);
        for (int row : rows) {
            heads.add(form.line(
                    ValueText.setting(map.up().unit(), map.up().values().get(row))));
        }
        int head = heads.stream().mapToInt(PlainText::columns).max().orElse(0);
        List<Integer> columns = map.across().chosen(MOST);
        List<List<String>> cells = cells(map, rows, columns, form);
        while (columns.size() > 2 && head + whole(cells) > width) {
            columns = map.across().chosen(columns.size() - 1);
            cells = cells(map, rows, columns, form);
        }
        List<String> lines = new ArrayList<>(List.of(form.line(map.up().name())));
        List<Integer> widths = widths(cells);
        for (int i = rows.size() - 1; i >= 0; i--) {
            lines.add(line(PlainText.padLeft(heads.get(i), head), cells.get(i), widths));
        }
        lines.add(line(PlainText.padLeft("", head), cells.get(rows.size()), widths));
        String across = form.line(map.across().name());
        lines.add(PlainText.padLeft(across, Math.max(PlainText.columns(across), head + whole(cells))));
        lines.addAll(PlainText.wrap(form.line(MapDrawing.description(map)), width, "", ""));
        return lines;
    }

    private static String line(String head, List<String> cells, List<Integer> widths) {
        StringBuilder line = new StringBuilder(head);
        for (int i = 0; i < cells.size(); i++) {
            line.append(GUTTER).append(PlainText.padLeft(cells.get(i), widths.get(i)));
        }
        return line.toString().stripTrailing();
    }

    /** The values by row from the foot, and last the settings across. */
    private static List<List<String>> cells(ContourMap map, List<Integer> rows, List<Integer> columns, PlainText form) {
        List<List<String>> cells = new ArrayList<>();
        for (int row : rows) {
            List<String> line = new ArrayList<>();
            for (int column : columns) {
                Double value = map.at(column, row);
                line.add(form.line(
                        value == null
                                ? "none"
                                : NumberText.significant(map.unit().fromSi(value), ValueText.DIGITS)));
            }
            cells.add(line);
        }
        cells.add(columns.stream()
                .map(column -> form.line(ValueText.setting(
                        map.across().unit(), map.across().values().get(column))))
                .toList());
        return cells;
    }

    private static List<Integer> widths(List<List<String>> cells) {
        List<Integer> widths = new ArrayList<>();
        for (int i = 0; i < cells.get(0).size(); i++) {
            int column = i;
            widths.add(cells.stream()
                    .mapToInt(line -> PlainText.columns(line.get(column)))
                    .max()
                    .orElse(0));
        }
        return widths;
    }

    private static int whole(List<List<String>> cells) {
        return widths(cells).stream().mapToInt(width -> width + GUTTER.length()).sum();
    }
}
