package leverwright.face.draw;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Unit;
import org.jspecify.annotations.Nullable;

/** One plot with its grid, axis words, curve names and present setting; a chart has one for every unit of its curves. */
final class Panel {
    private static final int LEFT = 52;
    private static final int TOP = 30;
    private static final int BOTTOM = 42;
    private static final double SMALL = 11;
    private static final double NAMES = 12;
    private static final double LINE = 14;

    /** How much of its ink the band of a curve of before takes. */
    private static final double GHOST_BAND = 0.3;

    private static final int NAME_LETTERS = 23;
    /** "per side" as one word, which no line break parts. */
    private static final String SIDE = "per\u00a0side";

    private static final Double[][] DASHES = {{}, {7.0, 4.0}, {2.0, 3.5}, {10.0, 3.0, 2.0, 3.0}, {14.0, 4.0}};

    private final PanelData data;
    private final double top;
    private final double width;
    private final double plotHeight;
    private final boolean beside;
    private final List<List<String>> names = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private @Nullable PlotArea area;

    /**
     * What a panel shows.
     *
     * @param setting the name of the setting along the bottom
     * @param settingUnit the unit in which the setting is read
     * @param byRatio whether the settings go by equal ratios, and so does their axis
     * @param unit the unit in which the values are read
     * @param curves the curves, in those units
     * @param firstInk which curve of the whole chart the first one is, so that no two panels share a look
     * @param present the setting now in force; NaN when there is none
     * @param ghosts the curves of before, drawn pale behind, each with the place among {@code curves} of its successor
     */
    record PanelData(
            String setting,
            Unit settingUnit,
            boolean byRatio,
            Unit unit,
            List<PlotCurve> curves,
            int firstInk,
            double present,
            List<Ghost> ghosts) {}

    /**
     * A curve of before.
     *
     * @param of the place of the curve that stands there now
     * @param curve the curve, in the units of the panel
     * @param present the setting of before; NaN when there was none
     */
    record Ghost(int of, PlotCurve curve, double present) {}

    /**
     * Prepares a panel.
     *
     * @param plotHeight the height of the plot with its words; names that find no place beside the plot go below it
     */
    Panel(PanelData data, double top, double width, double plotHeight) {
        this.data = data;
        this.top = top;
        this.width = width;
        this.plotHeight = plotHeight;
        int lines = 0;
        for (PlotCurve curve : data.curves()) {
            names.add(wrap(curve.name()));
            lines += names.get(names.size() - 1).size();
        }
        beside = widestName() < width * 0.32 && lines * LINE < plotHeight - TOP - BOTTOM;
    }

    private double widestName() {
        double widest = 0;
        for (List<String> name : names) {
            for (String line : name) {
                widest = Math.max(widest, type(0, false).width(line));
            }
        }
        return widest;
    }

    /** Returns the height that the panel takes. */
    double height() {
        return plotHeight + (beside ? 0 : data.curves().size() * (LINE + 2) + 8);
    }

    /** Returns the pen of a chart's curve, counted from 0: colour and dash both tell it from the others. */
    static Mark.Pen pen(int index) {
        Double[] dash = DASHES[dash(index)];
        return new Mark.Pen(Ink.curve(index), 2, List.of(dash), dash.length == 0);
    }

    private static int dash(int index) {
        return (index + index / Ink.CURVES) % DASHES.length;
    }

    /** Returns the marks of the panel. */
    List<Mark> marks() {
        int right = (int) Math.ceil(beside ? widestName() + 22 : 18);
        Plot.Frame frame = new Plot.Frame(
                LEFT, (int) Math.round(top) + TOP, (int) width - LEFT - right, (int) (plotHeight - TOP - BOTTOM));
        Scale x = settingScale();
        Scale y = valueScale();
        List<PlotCurve> all = new ArrayList<>(data.curves());
        data.ghosts().forEach(ghost -> all.add(ghost.curve()));
        Plot plot = new Plot(frame, x, y, all);
        area = new PlotArea(
                frame,
                x,
                y,
                data.settingUnit(),
                data.unit(),
                data.firstInk(),
                data.curves().size());
        drawGrid(frame, plot, x, y);
        drawCurves(plot);
        drawPresent(frame, plot);
        if (beside) {
            drawNamesBeside(frame, plot);
        } else {
            drawNamesBelow(frame);
        }
        return marks;
    }

    /** Returns where the values lie, once {@link #marks()} were asked for. */
    PlotArea area() {
        return Objects.requireNonNull(area, "the marks of the panel were not asked for");
    }

    private Scale settingScale() {
        double least = Double.MAX_VALUE;
        double greatest = -Double.MAX_VALUE;
        for (PlotCurve curve : data.curves()) {
            for (double x : curve.x()) {
                least = Math.min(least, x);
                greatest = Math.max(greatest, x);
            }
        }
        return data.byRatio() ? Scale.byRatio(least, greatest, 8) : Scale.tight(least, greatest, 8);
    }

    private Scale valueScale() {
        double least = Double.MAX_VALUE;
        double greatest = -Double.MAX_VALUE;
        List<PlotCurve> all = new ArrayList<>(data.curves());
        data.ghosts().forEach(ghost -> all.add(ghost.curve()));
        for (PlotCurve curve : all) {
            for (int i = 0; i < curve.y().length; i++) {
                if (!Double.isNaN(curve.y()[i])) {
                    least = Math.min(least, curve.low()[i]);
                    greatest = Math.max(greatest, curve.high()[i]);
                }
            }
        }
        return least > greatest ? Scale.round(0, 1, 5) : Scale.round(least, greatest, 5);
    }

    private void drawGrid(Plot.Frame frame, Plot plot, Scale x, Scale y) {
        Mark.Type quiet = new Mark.Type(Ink.QUIET, SMALL, false, false);
        for (BigDecimal tick : y.ticks()) {
            double down = plot.down(tick.doubleValue());
            boolean base = tick.signum() == 0;
            stroke(
                    new Line2D.Double(frame.left(), down, frame.right(), down),
                    Mark.Pen.solid(base ? Ink.QUIET : Ink.RULE, 1));
            words(Scale.words(tick), frame.left() - 8, down + 4, Mark.Anchor.END, quiet);
        }
        for (BigDecimal tick : x.ticks()) {
            double across = plot.across(tick.doubleValue());
            stroke(
                    new Line2D.Double(across, frame.bottom() + 4, across, frame.bottom() + 8),
                    Mark.Pen.solid(Ink.QUIET, 1));
            words(
                    inAxis(data.settingUnit(), Scale.words(tick)),
                    across,
                    frame.bottom() + 20,
                    Mark.Anchor.MIDDLE,
                    quiet);
        }
        stroke(
                new Line2D.Double(frame.left(), frame.bottom() + 4, frame.right(), frame.bottom() + 4),
                Mark.Pen.solid(Ink.QUIET, 1));
        words(settingWords(), frame.right(), frame.bottom() + 36, Mark.Anchor.END, quiet);
        String unit = data.unit() == Unit.ONE ? "" : data.unit().symbol();
        words(unit, frame.left() - 8, top + 14, Mark.Anchor.END, new Mark.Type(Ink.TEXT, SMALL, true, false));
    }

    private static String inAxis(Unit unit, String number) {
        return unit.symbol().startsWith("°") ? number + "°" : number;
    }

    private String settingWords() {
        String symbol = data.settingUnit().symbol();
        String words =
                symbol.isEmpty() || symbol.startsWith("°") ? data.setting() : data.setting() + " (" + symbol + ")";
        return data.byRatio() ? words + ", by equal ratios" : words;
    }

    private void drawCurves(Plot plot) {
        for (int i = 0; i < data.ghosts().size(); i++) {
            Ghost ghost = data.ghosts().get(i);
            Double[] dash = DASHES[dash(data.firstInk() + ghost.of())];
            if (ghost.curve().hasBand()) {
                marks.add(new Mark.Fill(plot.band(data.curves().size() + i), Ink.GHOST, GHOST_BAND));
            }
            stroke(plot.line(data.curves().size() + i), new Mark.Pen(Ink.GHOST, 2, List.of(dash), dash.length == 0));
            double value = ghost.curve().at(ghost.present());
            if (!Double.isNaN(value)) {
                double across = plot.across(ghost.present());
                double down = plot.down(value);
                marks.add(new Mark.Fill(new Ellipse2D.Double(across - 4, down - 4, 8, 8), Ink.GHOST, 1));
            }
        }
        for (int i = 0; i < data.curves().size(); i++) {
            if (data.curves().get(i).hasBand()) {
                marks.add(new Mark.Fill(plot.band(i), Ink.curve(data.firstInk() + i), 0.18));
            }
        }
        for (int i = data.curves().size() - 1; i >= 0; i--) {
            stroke(plot.line(i), pen(data.firstInk() + i));
            drawLonely(plot, i);
        }
    }

    /** Values with a gap to either side, such as the points at which two curves cross, are dots. */
    private void drawLonely(Plot plot, int index) {
        PlotCurve curve = data.curves().get(index);
        for (int i = 0; i < curve.y().length; i++) {
            if (curve.isLonely(i) && !plot.isOutside(curve.x()[i])) {
                dot(plot.across(curve.x()[i]), plot.down(curve.y()[i]), index);
            }
        }
    }

    private void dot(double x, double y, int index) {
        marks.add(new Mark.Fill(new Ellipse2D.Double(x - 5.5, y - 5.5, 11, 11), Ink.WARM, 1));
        marks.add(new Mark.Fill(new Ellipse2D.Double(x - 4, y - 4, 8, 8), Ink.curve(data.firstInk() + index), 1));
    }

    private void drawPresent(Plot.Frame frame, Plot plot) {
        double present = data.present();
        if (Double.isNaN(present) || plot.isOutside(present)) {
            return;
        }
        double across = plot.across(present);
        stroke(
                new Line2D.Double(across, frame.top() - 6, across, frame.bottom() + 4),
                Mark.Pen.dashed(Ink.TEXT, 1, 1.5, 3.0));
        String setting = data.settingUnit().attach(NumberText.general(present, 4));
        Mark.Type type = new Mark.Type(Ink.TEXT, SMALL, true, false);
        // At the left end it would stand in the unit of the values, at the right beyond the picture.
        double half = type.width(setting) / 2;
        double centre = Math.max(frame.left() - 4 + half, Math.min(width - 2 - half, across));
        words(setting, centre, frame.top() - 12, Mark.Anchor.MIDDLE, type);
        Placer placer =
                new Placer(new Rectangle2D.Double(frame.left() + 2, frame.top(), frame.width() - 2, frame.height()));
        for (int i = 0; i < data.curves().size(); i++) {
            placer.avoid(plot.line(i), 3);
        }
        placer.avoid(new Line2D.Double(across, frame.top() - 6, across, frame.bottom()), 1.5);
        for (int i = 0; i < data.curves().size(); i++) {
            double value = data.curves().get(i).at(present);
            if (!Double.isNaN(value)) {
                drawDot(
                        placer,
                        i,
                        across,
                        plot.down(value),
                        data.unit().attach(NumberText.significant(value, ValueText.DIGITS)));
            }
        }
    }

    private void drawDot(Placer placer, int index, double x, double y, String value) {
        Mark.Type type = type(data.firstInk() + index, true);
        dot(x, y, index);
        placer.avoid(new Rectangle2D.Double(x - 5, y - 5, 10, 10));
        marks.add(placer.place(value, type, x, y, 10, 3));
    }

    private static Mark.Type type(int index, boolean halo) {
        return new Mark.Type(Ink.curveWords(index), NAMES, false, halo);
    }

    /** Names at the curves' ends, moved apart where they would touch. */
    private void drawNamesBeside(Plot.Frame frame, Plot plot) {
        List<Name> ends = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            PlotCurve curve = data.curves().get(i);
            int last = curve.last();
            double x = last < 0 ? frame.right() : plot.across(curve.x()[last]);
            double y = last < 0 ? frame.bottom() : plot.down(curve.y()[last]);
            ends.add(new Name(i, names.get(i), x, y, y));
        }
        ends.sort(Comparator.comparingDouble(Name::endY));
        for (Name name : spread(ends, frame)) {
            Ink ink = Ink.curve(data.firstInk() + name.index());
            if (Math.abs(name.middle() - name.endY()) > 3 || name.endX() < frame.right() - 1) {
                double[] from = {Math.min(name.endX() + 3, frame.right() + 2), name.endY()};
                stroke(
                        new Line2D.Double(from[0], from[1], frame.right() + 12, name.middle()),
                        Mark.Pen.dashed(ink, 0.8, 1.5, 2.0));
            }
            double y = name.middle() - (name.lines().size() - 1) * LINE / 2 + 4;
            for (String line : name.lines()) {
                words(line, frame.right() + 15, y, Mark.Anchor.START, type(data.firstInk() + name.index(), false));
                y += LINE;
            }
        }
    }

    private record Name(int index, List<String> lines, double endX, double endY, double middle) {
        double half() {
            return lines.size() * LINE / 2 + 1;
        }

        Name at(double place) {
            return new Name(index, lines, endX, endY, place);
        }
    }

    /** Moves names down, then up again from the foot of the plot, so that none covers another. */
    private static List<Name> spread(List<Name> names, Plot.Frame frame) {
        List<Name> moved = new ArrayList<>();
        double free = frame.top() - TOP * 0.5;
        for (Name name : names) {
            double middle = Math.max(name.endY(), free + name.half());
            moved.add(name.at(middle));
            free = middle + name.half();
        }
        double floor = frame.bottom() + 4;
        for (int i = moved.size() - 1; i >= 0; i--) {
            Name name = moved.get(i);
            double middle = Math.min(name.middle(), floor - name.half());
            moved.set(i, name.at(middle));
            floor = middle - name.half();
        }
        return moved;
    }

    /** Names under the plot, each after a piece of its curve. */
    private void drawNamesBelow(Plot.Frame frame) {
        double y = frame.bottom() + BOTTOM + 10;
        for (int i = 0; i < data.curves().size(); i++) {
            stroke(new Line2D.Double(LEFT, y - 4, LEFT + 34, y - 4), pen(data.firstInk() + i));
            words(data.curves().get(i).name(), LEFT + 42, y, Mark.Anchor.START, type(data.firstInk() + i, false));
            y += LINE + 2;
        }
    }

    /** Breaks a name into lines of about two dozen letters at its spaces. */
    private static List<String> wrap(String name) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : name.replace("per side", SIDE).split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > NAME_LETTERS) {
                lines.add(line.toString().replace(SIDE, "per side"));
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString().replace(SIDE, "per side"));
        return lines;
    }

    private void stroke(Shape shape, Mark.Pen pen) {
        marks.add(new Mark.Stroke(shape, pen));
    }

    private void words(String text, double x, double y, Mark.Anchor anchor, Mark.Type type) {
        if (!text.isEmpty()) {
            marks.add(new Mark.Words(text, x, y, anchor, type));
        }
    }
}
