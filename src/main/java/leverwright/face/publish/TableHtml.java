package leverwright.face.publish;

import java.util.List;
import leverwright.face.draw.Markup;
import leverwright.face.draw.ValueText;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.TableResult;
import org.jspecify.annotations.Nullable;

/** Tables as markup: headings with scope, numbers set right, a column that says which side a row counts. */
final class TableHtml {
    private static final int MOST_ROWS = 15;
    private static final int MOST_NODES = 9;
    /** Tables with more columns become one line an entry on narrow screens. */
    private static final int FEW_COLUMNS = 3;
    /** Tables with more columns take the whole width of a page. */
    private static final int HALF_WIDTH_COLUMNS = 5;

    private TableHtml() {}

    static String of(TableResult table) {
        TableSides sides = new TableSides(table);
        StringBuilder html = new StringBuilder("<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\""
                + Markup.text(table.title().isEmpty() ? "table" : table.title()) + "\"><table"
                + (table.headings().size() > FEW_COLUMNS ? " class=\"many\"" : "") + ">\n");
        if (!table.title().isEmpty()) {
            html.append("<caption>" + Markup.text(table.title()) + "</caption>\n");
        }
        html.append("<thead><tr>");
        for (int i = 0; i < table.headings().size(); i++) {
            html.append("<th scope=\"col\"" + (isNumeric(table, i) ? " class=\"right\"" : "") + ">"
                    + Markup.text(sides.heading(i)) + "</th>");
        }
        html.append(sides.hasColumn() ? "<th scope=\"col\">counts</th>" : "").append("</tr></thead>\n<tbody>\n");
        for (List<TableResult.Entry> row : table.rows()) {
            html.append(row(row, sides));
            html.append(
                            sides.hasColumn()
                                    ? "<td class=\"side\" data-label=\"counts\">" + sides.ofRow(row) + "</td>"
                                    : "")
                    .append("</tr>\n");
        }
        return html.append("</tbody></table></div>\n" + workings(table)).toString();
    }

    /** Tells whether the table has more columns than half of a page's width shows. */
    static boolean isBroad(TableResult table) {
        return table.headings().size() > HALF_WIDTH_COLUMNS;
    }

    private static boolean isNumeric(TableResult table, int column) {
        return table.rows().stream().anyMatch(row -> row.get(column) instanceof TableResult.NumberEntry);
    }

    private static String row(List<TableResult.Entry> row, TableSides sides) {
        StringBuilder html = new StringBuilder("<tr>");
        for (int i = 0; i < row.size(); i++) {
            String label = " data-label=\"" + Markup.text(sides.heading(i)) + "\"";
            if (row.get(i) instanceof TableResult.NumberEntry number) {
                html.append("<td class=\"right\"" + label + ">"
                        + ResultHtml.value(number.quantity(), sides.beside(i, number), number.working()) + "</td>");
            } else if (row.get(i) instanceof TableResult.TextEntry text) {
                html.append(i == 0 ? "<th scope=\"row\">" : "<td" + label + ">")
                        .append(Markup.text(text.text()))
                        .append(i == 0 ? "</th>" : "</td>");
            }
        }
        return html.toString();
    }

    /** The hand calculations of a table, folded one in another: there are as many as numbers. */
    private static String workings(TableResult table) {
        StringBuilder html = new StringBuilder();
        for (List<TableResult.Entry> row : table.rows()) {
            for (int i = 0; i < row.size(); i++) {
                if (row.get(i) instanceof TableResult.NumberEntry number && number.working() != null) {
                    html.append(ResultHtml.working(
                            number.working(), label(row, table.headings().get(i)), false));
                }
            }
        }
        if (html.isEmpty()) {
            return "";
        }
        return "<details class=\"workings\"><summary>By hand</summary>\n" + html + "</details>\n";
    }

    private static String label(List<TableResult.Entry> row, String heading) {
        return row.get(0) instanceof TableResult.TextEntry text ? text.text() + ", " + heading : heading;
    }

    /** Returns the numbers of a chart, at most fifteen settings, in a table that unfolds. */
    static String numbers(Curves curves) {
        List<Integer> chosen = curves.axis().chosen(MOST_ROWS);
        StringBuilder html = new StringBuilder("<details class=\"numbers\"><summary>The numbers</summary>\n"
                + "<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"The numbers\"><table>\n<thead><tr>"
                + "<th scope=\"col\" class=\"right\">"
                + Markup.text(heading(curves.axis().name(), curves.axis().unit()))
                + "</th>");
        for (Curves.Curve curve : curves.curves()) {
            String side =
                    curve.sides() == Sides.NOT_SIDED ? "" : ", " + curve.sides().words();
            html.append("<th scope=\"col\" class=\"right\">" + Markup.text(heading(curve.name() + side, curve.unit()))
                    + "</th>");
        }
        html.append("</tr></thead>\n<tbody>\n");
        for (int index : chosen) {
            html.append("<tr><th scope=\"row\" class=\"right\">"
                    + NumberText.general(
                            curves.axis().unit().fromSi(curves.axis().values().get(index)), 4) + "</th>");
            for (Curves.Curve curve : curves.curves()) {
                html.append("<td class=\"right\">" + entry(curve.values().get(index), curve.unit()) + "</td>");
            }
            html.append("</tr>\n");
        }
        return html.append("</tbody></table></div></details>\n").toString();
    }

    /** Returns the numbers of a map, at most nine settings each way, in a table that unfolds; its top row is the map's. */
    static String numbers(ContourMap map) {
        StringBuilder html = new StringBuilder("<details class=\"numbers\"><summary>The numbers</summary>\n"
                + "<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"The numbers\"><table>\n<caption>"
                + Markup.text(heading(map.name(), map.unit())) + "</caption>\n<thead><tr><th scope=\"col\">"
                + Markup.text(map.up().name() + " \\ " + map.across().name()) + "</th>");
        List<Integer> columns = map.across().chosen(MOST_NODES);
        List<Integer> rows = map.up().chosen(MOST_NODES);
        for (int column : columns) {
            html.append("<th scope=\"col\" class=\"right\">"
                    + Markup.text(
                            map.across().unit().format(map.across().values().get(column))) + "</th>");
        }
        html.append("</tr></thead>\n<tbody>\n");
        for (int i = rows.size() - 1; i >= 0; i--) {
            html.append("<tr><th scope=\"row\">"
                    + Markup.text(
                            ValueText.setting(map.up().unit(), map.up().values().get(rows.get(i)))) + "</th>");
            for (int column : columns) {
                html.append("<td class=\"right\">" + entry(map.at(column, rows.get(i)), map.unit()) + "</td>");
            }
            html.append("</tr>\n");
        }
        return html.append("</tbody></table></div></details>\n").toString();
    }

    private static String entry(@Nullable Double value, Unit unit) {
        return value == null ? "none" : NumberText.significant(unit.fromSi(value), ValueText.DIGITS);
    }

    private static String heading(String name, Unit unit) {
        return unit.symbol().isEmpty() ? name : name + " (" + unit.symbol() + ")";
    }
}
