package leverwright.face.publish;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;
import java.util.regex.Pattern;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.TableResult;
import org.jspecify.annotations.Nullable;

/**
 * Tables, curves and maps as rows of separated values, for other programs: as many digits of each number as give the same double again, in the unit that its heading
 * names, and the caution as the last row. Fields are quoted as RFC 4180 (2005) says; lines end with a line feed.
 */
public final class Csv {
    private static final Pattern NUMBER = Pattern.compile("-?[0-9.]+(?:e[+-]?[0-9]+)?(?: [^=+@]*)?");

    private final char separator;
    private final StringBuilder text = new StringBuilder();

    private Csv(char separator) {
        this.separator = separator;
    }

    /**
     * Returns a table with one line a row.
     *
     * @param table the table
     * @param separator between fields: a comma for files, a tab for the clipboard
     */
    public static String of(TableResult table, char separator) {
        Csv csv = new Csv(separator);
        TableSides sides = new TableSides(table);
        List<String> head = new ArrayList<>();
        for (int i = 0; i < table.headings().size(); i++) {
            Unit unit = unit(table, i);
            String heading =
                    sides.heading(i) + (unit == null || unit.symbol().isEmpty() ? "" : " (" + unit.symbol() + ")");
            head.add(heading);
            if (hasBand(table, i)) {
                head.add(heading + ", low");
                head.add(heading + ", high");
            }
        }
        if (sides.hasColumn()) {
            head.add("counts");
        }
        csv.line(head);
        for (List<TableResult.Entry> row : table.rows()) {
            List<String> fields = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                addEntry(fields, row.get(i), unit(table, i), hasBand(table, i), sides, i);
            }
            if (sides.hasColumn()) {
                fields.add(sides.ofRow(row));
            }
            csv.line(fields);
        }
        return csv.ended();
    }

    private static void addEntry(
            List<String> fields,
            TableResult.Entry entry,
            @Nullable Unit unit,
            boolean band,
            TableSides sides,
            int column) {
        if (entry instanceof TableResult.NumberEntry number) {
            Unit read = number.quantity().unit();
            String beside = sides.beside(column, number);
            String end = (unit == null ? " " + read.symbol() : "") + (beside.isEmpty() ? "" : " " + beside);
            fields.add(number(read, number.quantity().value()) + end);
            if (band) {
                fields.add(number(read, number.quantity().low()));
                fields.add(number(read, number.quantity().high()));
            }
        } else if (entry instanceof TableResult.TextEntry words) {
            fields.add(words.text());
            if (band) {
                fields.addAll(List.of("", ""));
            }
        }
    }

    /** The unit that all numbers of a column are read in; null when they differ or there are none. */
    private static @Nullable Unit unit(TableResult table, int column) {
        Set<Unit> units = new LinkedHashSet<>();
        for (List<TableResult.Entry> row : table.rows()) {
            if (row.get(column) instanceof TableResult.NumberEntry number) {
                units.add(number.quantity().unit());
            }
        }
        return units.size() == 1 ? units.iterator().next() : null;
    }

    private static boolean hasBand(TableResult table, int column) {
        return table.rows().stream()
                .anyMatch(row -> row.get(column) instanceof TableResult.NumberEntry number
                        && number.quantity().hasBand());
    }

    /**
     * Returns curves with one line a setting; a gap is an empty field.
     *
     * @param curves the curves
     * @param separator between fields: a comma for files, a tab for the clipboard
     */
    public static String of(Curves curves, char separator) {
        Csv csv = new Csv(separator);
        List<String> head = new ArrayList<>();
        head.add(heading(curves.axis().name(), curves.axis().unit()));
        for (Curves.Curve curve : curves.curves()) {
            String side = curve.sides() == Sides.NOT_SIDED
                            || curve.name().contains(curve.sides().words())
                    ? ""
                    : ", " + curve.sides().words();
            head.add(heading(curve.name() + side, curve.unit()));
            if (!curve.low().isEmpty()) {
                head.add(heading(curve.name() + side, curve.unit()) + ", low");
                head.add(heading(curve.name() + side, curve.unit()) + ", high");
            }
        }
        csv.line(head);
        for (int i = 0; i < curves.axis().values().size(); i++) {
            List<String> fields = new ArrayList<>();
            fields.add(number(curves.axis().unit(), curves.axis().values().get(i)));
            for (Curves.Curve curve : curves.curves()) {
                fields.add(value(curve.values(), i, curve.unit()));
                if (!curve.low().isEmpty()) {
                    fields.add(value(curve.low(), i, curve.unit()));
                    fields.add(value(curve.high(), i, curve.unit()));
                }
            }
            csv.line(fields);
        }
        return csv.ended();
    }

    /**
     * Returns a map with one line a node: both settings and the value; a gap is an empty field.
     *
     * @param map the map
     * @param separator between fields: a comma for files, a tab for the clipboard
     */
    public static String of(ContourMap map, char separator) {
        Csv csv = new Csv(separator);
        String side = map.sides() == Sides.NOT_SIDED
                        || map.name().contains(map.sides().words())
                ? ""
                : ", " + map.sides().words();
        csv.line(List.of(
                heading(map.across().name(), map.across().unit()),
                heading(map.up().name(), map.up().unit()),
                heading(map.name() + side, map.unit())));
        for (int node = 0; node < map.values().size(); node++) {
            csv.line(List.of(
                    number(map.across().unit(), map.across().values().get(node % map.columns())),
                    number(map.up().unit(), map.up().values().get(node / map.columns())),
                    value(map.values(), node, map.unit())));
        }
        return csv.ended();
    }

    private static String value(List<@Nullable Double> values, int index, Unit unit) {
        Double value = values.get(index);
        return value == null ? "" : number(unit, value);
    }

    private static String heading(String name, Unit unit) {
        return unit.symbol().isEmpty() ? name : name + " (" + unit.symbol() + ")";
    }

    private static String number(Unit unit, double si) {
        return unit.decimal(si + 0.0).toPlainString();
    }

    private String ended() {
        line(List.of(Cautions.SHORT));
        return text.toString();
    }

    private void line(List<String> fields) {
        StringJoiner line = new StringJoiner(String.valueOf(separator), "", "\n");
        fields.forEach(field -> line.add(quoted(field)));
        text.append(line);
    }

    /** A field; one that a spreadsheet would take for a formula gets an apostrophe, since workbooks come from strangers. */
    private String quoted(String field) {
        boolean formula = !field.isEmpty()
                && "=+-@\t\r".indexOf(field.charAt(0)) >= 0
                && !NUMBER.matcher(field).matches();
        String safe = formula ? "'" + field : field;
        boolean plain = safe.indexOf(separator) < 0
                && safe.indexOf('"') < 0
                && safe.indexOf('\n') < 0
                && safe.indexOf('\r') < 0;
        return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }
}
