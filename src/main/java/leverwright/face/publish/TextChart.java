package leverwright.face.publish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leverwright.face.draw.ChartDrawing;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Curves;
import org.jspecify.annotations.Nullable;

/**
 * Curves as a small chart of letters, for the eye only: each curve has a letter of its own, the present setting is a
 * column of colons, and the numbers stand in words below.
 */
final class TextChart {
    private static final int ROWS = 12;
    private static final int WIDEST = 72;
    private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz";

    private final Curves curves;
    private final PlainText form;
    private final int columns;
    private final List<String> lines = new ArrayList<>();

    private TextChart(Curves curves, int width, PlainText form) {
        this.curves = curves;
        this.form = form;
        this.columns = Math.max(20, Math.min(WIDEST, width - 12));
    }

    /** Returns the lines of the chart; curves of another unit than the first stand in a chart of their own. */
    static List<String> of(Curves curves, int width, PlainText form) {
        TextChart chart = new TextChart(curves, width, form);
        curves.curves().stream().map(Curves.Curve::unit).distinct().forEach(chart::plot);
        for (int i = 0; i < curves.curves().size(); i++) {
            String sentence = chart.form.line(
                    ChartDrawing.description(curves, curves.curves().get(i)));
            chart.lines.addAll(PlainText.wrap(sentence, width, LETTERS.charAt(i % LETTERS.length()) + "  ", "   "));
        }
        return chart.lines;
    }

    private void plot(Unit unit) {
        double least = Double.MAX_VALUE;
        double greatest = -Double.MAX_VALUE;
        for (Curves.Curve curve : curves.curves()) {
            for (Double value : curve.values()) {
                if (curve.unit() == unit && value != null) {
                    least = Math.min(least, value);
                    greatest = Math.max(greatest, value);
                }
            }
        }
        if (least > greatest) {
            return;
        }
        if (least > 0 && least < 0.75 * greatest) {
            least = 0;
        }
        if (least == greatest) {
            least -= 1;
            greatest += 1;
        }
        print(unit, least, greatest, cells(unit, least, greatest));
    }

    private char[][] cells(Unit unit, double least, double greatest) {
        char[][] cells = new char[ROWS][columns];
        for (char[] row : cells) {
            Arrays.fill(row, ' ');
        }
        Double current = curves.current();
        if (current != null) {
            int column = column(current);
            for (int row = 0; row < ROWS && column >= 0 && column < columns; row++) {
                cells[row][column] = ':';
            }
        }
        for (int i = curves.curves().size() - 1; i >= 0; i--) {
            if (curves.curves().get(i).unit() == unit) {
                trace(cells, i, least, greatest);
            }
        }
        return cells;
    }

    private void trace(char[][] cells, int index, double least, double greatest) {
        List<@Nullable Double> values = curves.curves().get(index).values();
        for (int column = 0; column < columns; column++) {
            Double value =
                    values.get((int) Math.round((double) column * (values.size() - 1) / Math.max(1, columns - 1)));
            if (value != null) {
                long row = Math.round((greatest - value) / (greatest - least) * (ROWS - 1));
                cells[(int) row][column] = LETTERS.charAt(index % LETTERS.length());
            }
        }
        lonely(cells, index, least, greatest);
    }

    /** Values with a gap to either side stand where they lie, also between two columns' settings. */
    private void lonely(char[][] cells, int index, double least, double greatest) {
        List<@Nullable Double> values = curves.curves().get(index).values();
        for (int i = 0; i < values.size(); i++) {
            Double value = values.get(i);
            boolean alone =
                    (i == 0 || values.get(i - 1) == null) && (i == values.size() - 1 || values.get(i + 1) == null);
            if (value != null && alone) {
                long row = Math.round((greatest - value) / (greatest - least) * (ROWS - 1));
                int column = column(curves.axis().values().get(i));
                cells[(int) row][column] = LETTERS.charAt(index % LETTERS.length());
            }
        }
    }

    private int column(double setting) {
        List<Double> axis = curves.axis().values();
        double first = axis.get(0);
        double last = axis.get(axis.size() - 1);
        return last == first ? 0 : (int) Math.round((setting - first) / (last - first) * (columns - 1));
    }

    private void print(Unit unit, double least, double greatest, char[][] cells) {
        for (int row = 0; row < ROWS; row++) {
            String label = "";
            if (row == 0) {
                label = shortly(unit, greatest);
            } else if (row == ROWS - 1) {
                label = shortly(unit, least);
            }
            lines.add((PlainText.padLeft(label, 10) + " |" + new String(cells[row])).stripTrailing());
        }
        lines.add(" ".repeat(11) + "+" + "-".repeat(columns));
        Unit axisUnit = curves.axis().unit();
        List<Double> axis = curves.axis().values();
        String from = form.line(axisUnit.format(axis.get(0)));
        String to = form.line(axisUnit.format(axis.get(axis.size() - 1)));
        String name = form.line(curves.axis().name());
        int room = columns - PlainText.columns(from) - PlainText.columns(to);
        String middle = PlainText.columns(name) + 2 > room ? "" : name;
        int before = (room - PlainText.columns(middle)) / 2;
        lines.add(" ".repeat(12)
                + from
                + " ".repeat(Math.max(1, before))
                + middle
                + " ".repeat(Math.max(1, room - before - PlainText.columns(middle)))
                + to);
    }

    private String shortly(Unit unit, double si) {
        return form.line(unit.format(si, 3));
    }
}
