package leverwright.face.publish;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leverwright.face.draw.ValueText;
import leverwright.run.result.TableResult;
import org.jspecify.annotations.Nullable;

/** Tables as plain text in aligned columns; a table too wide for the lines becomes one entry a line. */
final class TextTable {
    private static final String GUTTER = "   ";

    private TextTable() {}

    static List<String> of(TableResult table, int width, PlainText form) {
        List<List<String>> rows = new ArrayList<>();
        TableSides sides = new TableSides(table);
        List<String> headings = new ArrayList<>();
        for (int i = 0; i < table.headings().size(); i++) {
            headings.add(sides.heading(i));
        }
        rows.add(inForm(form, headings, sides.hasColumn() ? "counts" : null));
        for (List<TableResult.Entry> row : table.rows()) {
            List<String> texts = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                texts.add(text(row.get(i), i, sides));
            }
            rows.add(inForm(form, texts, sides.hasColumn() ? sides.ofRow(row) : null));
        }
        List<Integer> widths = widths(rows);
        int whole = widths.stream().mapToInt(Integer::intValue).sum() + GUTTER.length() * (widths.size() - 1);
        return whole <= width ? aligned(table, rows, widths) : listed(rows, width);
    }

    private static List<String> inForm(PlainText form, List<String> texts, @Nullable String side) {
        List<String> row = new ArrayList<>();
        texts.forEach(text -> row.add(form.line(text)));
        if (side != null) {
            row.add(side);
        }
        return row;
    }

    private static String text(TableResult.Entry entry, int column, TableSides sides) {
        if (entry instanceof TableResult.NumberEntry number) {
            String side = sides.beside(column, number);
            String value = ValueText.value(number.quantity(), number.working()) + (side.isEmpty() ? "" : " " + side);
            return number.quantity().hasBand() ? value + " (" + ValueText.band(number.quantity()) + ")" : value;
        }
        return ((TableResult.TextEntry) entry).text();
    }

    private static List<Integer> widths(List<List<String>> rows) {
        List<Integer> widths = new ArrayList<>(Collections.nCopies(rows.get(0).size(), 0));
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                widths.set(i, Math.max(widths.get(i), PlainText.columns(row.get(i))));
            }
        }
        return widths;
    }

    private static List<String> aligned(TableResult table, List<List<String>> rows, List<Integer> widths) {
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                boolean number = i < table.headings().size() && isNumeric(table, i);
                line.append(i == 0 ? "" : GUTTER)
                        .append(
                                number
                                        ? PlainText.padLeft(row.get(i), widths.get(i))
                                        : PlainText.padRight(row.get(i), widths.get(i)));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private static boolean isNumeric(TableResult table, int column) {
        return table.rows().stream().anyMatch(row -> row.get(column) instanceof TableResult.NumberEntry);
    }

    private static List<String> listed(List<List<String>> rows, int width) {
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows.subList(1, rows.size())) {
            for (int i = 0; i < row.size(); i++) {
                String heading = rows.get(0).get(i);
                String text = i == 0 || heading.isEmpty() ? row.get(i) : heading + ": " + row.get(i);
                if (!row.get(i).isEmpty()) {
                    lines.addAll(PlainText.wrap(text, width, i == 0 ? "" : "  ", "    "));
                }
            }
        }
        return lines;
    }
}
