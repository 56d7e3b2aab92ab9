package leverwright.face.draw;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.ContourMap;
import org.jspecify.annotations.Nullable;

/** The plot of a map with its ground, contours, their values, axis words and present setting. */
final class MapPanel {
    private static final int LEFT = 56;
    private static final int RIGHT = 24;
    private static final int TOP = 62;
    private static final int BOTTOM = 42;
    private static final double SMALL = 11;
    private static final int LEVELS = 9;
    private static final double GROUND = 0.34;
    /** Where along a contour its value is tried, as a share of its length. */
    private static final double[] PLACES = {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9};
    /** Contours shorter than this many times their value's width go without. */
    private static final double SHORT = 1.6;

    private final ContourMap map;
    private final NodeGrid grid;
    private final Unit acrossUnit;
    private final Unit upUnit;
    private final @Nullable NodeGrid before;
    private final @Nullable ContourMap ghost;
    private final Plot.Frame frame;
    private final Scale x;
    private final Scale y;
    private final List<Level> levels;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Rectangle2D> taken = new ArrayList<>();
    private final List<Shape> contours = new ArrayList<>();

    MapPanel(ContourMap map, MapWish wish) {
        this.map = map;
        acrossUnit = map.across().unit();
        upUnit = map.up().unit();
        grid = NodeGrid.of(map, acrossUnit, upUnit, map.unit()).within(wish.window(), acrossUnit, upUnit);
        ContourMap old = wish.ghost();
        ghost = old != null && isAlike(old, map) && !old.equals(map) ? old : null;
        before = ghost == null || ghost.values().equals(map.values())
                ? null
                : NodeGrid.of(ghost, acrossUnit, upUnit, map.unit()).within(wish.window(), acrossUnit, upUnit);
        frame = new Plot.Frame(LEFT, TOP, wish.width() - LEFT - RIGHT, wish.height() - TOP - BOTTOM);
        x = Scale.tight(grid.x()[0], grid.x()[grid.columns() - 1], Math.max(2, frame.width() / 60));
        y = Scale.tight(grid.y()[0], grid.y()[grid.rows() - 1], Math.max(2, frame.height() / 45));
        levels = levels();
    }

    private static boolean isAlike(ContourMap one, ContourMap other) {
        return one.name().equals(other.name())
                && one.unit().dimension() == other.unit().dimension()
                && one.across().name().equals(other.across().name())
                && one.up().name().equals(other.up().name());
    }

    /**
     * A value at which contours are drawn.
     *
     * @param value in the unit of the map
     * @param words as it is written on them
     */
    private record Level(double value, String words) {}

    /** The chosen levels, or round ones between the least and the greatest value. */
    private List<Level> levels() {
        List<Level> found = new ArrayList<>();
        for (double level : map.levels()) {
            double value = map.unit().fromSi(level);
            found.add(new Level(value, NumberText.general(value, ValueText.DIGITS)));
        }
        double least = grid.least();
        double greatest = grid.greatest();
        if (found.isEmpty() && least < greatest && !MapDrawing.isLevel(least, greatest)) {
            for (BigDecimal tick : Scale.tight(least, greatest, LEVELS).ticks()) {
                found.add(new Level(tick.doubleValue(), Scale.words(tick)));
            }
        }
        return found;
    }

    PlotArea area() {
        return new PlotArea(frame, x, y, acrossUnit, upUnit, 0, 0);
    }

    List<Mark> marks() {
        drawGround();
        drawAxes();
        List<List<ContourLines.Line>> lines = new ArrayList<>();
        levels.forEach(level -> lines.add(ContourLines.at(grid, level.value())));
        NodeGrid old = before;
        if (old != null) {
            levels.forEach(level -> {
                for (ContourLines.Line line : ContourLines.at(old, level.value())) {
                    marks.add(new Mark.Stroke(path(line), Mark.Pen.dashed(Ink.GHOST, 1.5, 6.0, 4.0)));
                }
            });
        }
        drawContours(lines);
        drawPresent();
        drawValues(lines);
        return marks;
    }

    private double across(double value) {
        return frame.left() + (value - x.from()) / (x.to() - x.from()) * frame.width();
    }

    private double down(double value) {
        return frame.bottom() - (value - y.from()) / (y.to() - y.from()) * frame.height();
    }

    private Path2D path(ContourLines.Line line) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < line.x().length; i++) {
            if (i == 0) {
                path.moveTo(across(line.x()[i]), down(line.y()[i]));
            } else {
                path.lineTo(across(line.x()[i]), down(line.y()[i]));
            }
        }
        if (line.isClosed()) {
            path.closePath();
        }
        return path;
    }

    private Path2D part(double level) {
        Path2D part = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (ContourLines.Line line : ContourLines.borders(grid, level)) {
            part.append(path(line), false);
        }
        return part;
    }

    /** One grey over all values, and one more for each contour that they lie beyond. */
    private void drawGround() {
        if (grid.least() > grid.greatest()) {
            gap(frame.left() + frame.width() / 2.0, frame.top() + frame.height() / 2.0);
            return;
        }
        double each = GROUND / (levels.size() + 1);
        Path2D valued = part(-Double.MAX_VALUE);
        marks.add(new Mark.Fill(valued, Ink.QUIET, each));
        for (Level level : levels) {
            if (level.value() <= grid.greatest()) {
                marks.add(new Mark.Fill(part(level.value()), Ink.QUIET, each));
            }
        }
        if (grid.hasGaps()) {
            marks.add(new Mark.Stroke(valued, Mark.Pen.dashed(Ink.QUIET, 1, 2.0, 3.0)));
            drawGapWords();
        }
    }

    /** Says in the middle of the longest row of nodes without a value that there is none. */
    private void drawGapWords() {
        int longest = 0;
        int atColumn = 0;
        int atRow = 0;
        for (int row = 0; row < grid.rows(); row++) {
            int run = 0;
            for (int column = 0; column < grid.columns(); column++) {
                run = Double.isNaN(grid.at(column, row)) ? run + 1 : 0;
                if (run > longest) {
                    longest = run;
                    atColumn = column;
                    atRow = row;
                }
            }
        }
        double right = across(grid.x()[atColumn]);
        double left = across(grid.x()[atColumn - longest + 1]);
        if (right - left > new Mark.Type(Ink.QUIET, SMALL, false, true).width("no value")) {
            gap(
                    (left + right) / 2,
                    Math.max(frame.top() + 14, Math.min(frame.bottom() - 6, down(grid.y()[atRow]) + 4)));
        }
    }

    private void gap(double middle, double base) {
        Mark.Words words = new Mark.Words(
                "no value", middle, base, Mark.Anchor.MIDDLE, new Mark.Type(Ink.QUIET, SMALL, false, true));
        marks.add(words);
        taken.add(Placer.box(words));
    }

    private void drawAxes() {
        Mark.Type quiet = new Mark.Type(Ink.QUIET, SMALL, false, false);
        Mark.Pen pen = Mark.Pen.solid(Ink.QUIET, 1);
        for (BigDecimal tick : y.ticks()) {
            double at = down(tick.doubleValue());
            marks.add(new Mark.Stroke(new Line2D.Double(frame.left() - 8, at, frame.left() - 4, at), pen));
            words(inAxis(upUnit, tick), frame.left() - 12, at + 4, Mark.Anchor.END, quiet);
        }
        for (BigDecimal tick : x.ticks()) {
            double at = across(tick.doubleValue());
            marks.add(new Mark.Stroke(new Line2D.Double(at, frame.bottom() + 4, at, frame.bottom() + 8), pen));
            words(inAxis(acrossUnit, tick), at, frame.bottom() + 20, Mark.Anchor.MIDDLE, quiet);
        }
        marks.add(new Mark.Stroke(
                new Line2D.Double(frame.left(), frame.bottom() + 4, frame.right(), frame.bottom() + 4), pen));
        marks.add(new Mark.Stroke(
                new Line2D.Double(frame.left() - 4, frame.top(), frame.left() - 4, frame.bottom()), pen));
        words(named(map.across().name(), acrossUnit), frame.right(), frame.bottom() + 36, Mark.Anchor.END, quiet);
        words(named(map.up().name(), upUnit), 8, frame.top() - 12, Mark.Anchor.START, quiet);
        words(
                named(MapDrawing.name(map), map.unit()) + (levels.isEmpty() ? alike() : ""),
                8,
                16,
                Mark.Anchor.START,
                new Mark.Type(Ink.TEXT, 12, true, false));
    }

    /** What is said where a map has no contour. */
    private String alike() {
        return grid.least() > grid.greatest()
                ? ""
                : ": " + map.unit().attach(NumberText.significant(grid.least(), ValueText.DIGITS)) + " everywhere";
    }

    private static String named(String name, Unit unit) {
        return unit.symbol().isEmpty() || unit.symbol().startsWith("°") ? name : name + " (" + unit.symbol() + ")";
    }

    private static String inAxis(Unit unit, BigDecimal tick) {
        return unit.symbol().startsWith("°") ? Scale.words(tick) + "°" : Scale.words(tick);
    }

    private void words(String text, double atX, double atY, Mark.Anchor anchor, Mark.Type type) {
        marks.add(new Mark.Words(text, atX, atY, anchor, type));
    }

    /** Draws the contours by the chart library, one series a level; zero is drawn broad. */
    private void drawContours(List<List<ContourLines.Line>> lines) {
        List<PlotCurve> series = new ArrayList<>();
        for (List<ContourLines.Line> level : lines) {
            series.add(series(level));
        }
        Plot plot = new Plot(frame, x, y, series);
        for (int i = 0; i < series.size(); i++) {
            boolean zero = levels.get(i).value() == 0;
            marks.add(new Mark.Stroke(plot.line(i), Mark.Pen.solid(Ink.TEXT, zero ? 2.4 : 1.2)));
            contours.add(plot.line(i));
        }
    }

    /** The lines of one level one after the other, with a gap between. */
    private static PlotCurve series(List<ContourLines.Line> lines) {
        int size = 1;
        for (ContourLines.Line line : lines) {
            size += line.x().length + 1;
        }
        double[] atX = new double[size];
        double[] atY = new double[size];
        int i = 0;
        for (ContourLines.Line line : lines) {
            System.arraycopy(line.x(), 0, atX, i, line.x().length);
            System.arraycopy(line.y(), 0, atY, i, line.y().length);
            i += line.x().length;
            atX[i] = atX[i - 1];
            atY[i++] = Double.NaN;
        }
        while (i < size) {
            atY[i++] = Double.NaN;
        }
        return new PlotCurve("", atX, atY, atY, atY);
    }

    /** Writes each level on its longest line, where it covers nothing written before. */
    private void drawValues(List<List<ContourLines.Line>> lines) {
        Mark.Type type = new Mark.Type(Ink.TEXT, SMALL, false, true);
        Rectangle2D inside = new Rectangle2D.Double(frame.left(), frame.top(), frame.width(), frame.height());
        for (int i = 0; i < lines.size(); i++) {
            String text = levels.get(i).words();
            List<Track> tracks = new ArrayList<>();
            lines.get(i).forEach(line -> tracks.add(Track.of(path(line))));
            tracks.sort((one, other) -> Double.compare(other.length(), one.length()));
            for (Track track : tracks) {
                if (track.length() > SHORT * type.width(text)) {
                    write(text, type, track, inside);
                    break;
                }
            }
        }
    }

    private void write(String text, Mark.Type type, Track track, Rectangle2D inside) {
        for (double place : PLACES) {
            double[] at = track.at(place);
            Mark.Words words = new Mark.Words(text, at[0], at[1] + 4, Mark.Anchor.MIDDLE, type);
            Rectangle2D box = Placer.box(words);
            if (inside.contains(box) && taken.stream().noneMatch(box::intersects)) {
                marks.add(words);
                taken.add(box);
                return;
            }
        }
    }

    private void drawPresent() {
        ContourMap old = ghost;
        if (old != null) {
            mark(old, Ink.GHOST, false);
        }
        mark(map, Ink.TEXT, true);
    }

    private void mark(ContourMap of, Ink ink, boolean isPresent) {
        Double settingAcross = of.presentAcross();
        Double settingUp = of.presentUp();
        if (settingAcross == null || settingUp == null) {
            return;
        }
        double atX = across(acrossUnit.fromSi(settingAcross));
        double atY = down(upUnit.fromSi(settingUp));
        if (atX < frame.left() - 1 || atX > frame.right() + 1 || atY < frame.top() - 1 || atY > frame.bottom() + 1) {
            return;
        }
        Mark.Pen dotted = Mark.Pen.dashed(ink, 1, 1.5, 3.0);
        marks.add(new Mark.Stroke(new Line2D.Double(atX, frame.top() - 4, atX, frame.bottom() + 4), dotted));
        marks.add(new Mark.Stroke(new Line2D.Double(frame.left() - 4, atY, frame.right(), atY), dotted));
        marks.add(new Mark.Fill(new Ellipse2D.Double(atX - 6.5, atY - 6.5, 13, 13), Ink.WARM, 1));
        marks.add(new Mark.Fill(new Ellipse2D.Double(atX - 5, atY - 5, 10, 10), isPresent ? Ink.LOAD : ink, 1));
        taken.add(new Rectangle2D.Double(atX - 8, atY - 8, 16, 16));
        if (isPresent) {
            say(of, settingAcross, settingUp, atX, atY);
        }
    }

    private void say(ContourMap of, double settingAcross, double settingUp, double atX, double atY) {
        Mark.Type bold = new Mark.Type(Ink.TEXT, SMALL, true, true);
        String where = acrossUnit.attach(NumberText.general(acrossUnit.fromSi(settingAcross), 4)) + ", "
                + upUnit.attach(NumberText.general(upUnit.fromSi(settingUp), 4));
        Double value = of.between(settingAcross, settingUp);
        String what = value == null ? "no value" : of.unit().format(value, ValueText.DIGITS);
        Placer placer = new Placer(new Rectangle2D.Double(frame.left(), frame.top(), frame.width(), frame.height()));
        placer.avoid(new Rectangle2D.Double(atX - 7, atY - 7, 14, 14));
        placer.avoid(new Line2D.Double(atX, frame.top(), atX, frame.bottom()), 1.5);
        placer.avoid(new Line2D.Double(frame.left(), atY, frame.right(), atY), 1.5);
        contours.forEach(contour -> placer.avoid(contour, 3));
        Mark.Words words = placer.place(what + " at " + where, bold, atX, atY, 12, 1);
        marks.add(words);
        taken.add(Placer.box(words));
    }

    /** A contour in the picture, by the way along it. */
    private record Track(double[] x, double[] y, double[] way) {
        static Track of(Shape shape) {
            List<double[]> points = new ArrayList<>();
            double[] at = new double[6];
            for (PathIterator step = shape.getPathIterator(null); !step.isDone(); step.next()) {
                if (step.currentSegment(at) != PathIterator.SEG_CLOSE) {
                    points.add(new double[] {at[0], at[1]});
                }
            }
            double[] x = new double[points.size()];
            double[] y = new double[x.length];
            double[] way = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                x[i] = points.get(i)[0];
                y[i] = points.get(i)[1];
                way[i] = i == 0 ? 0 : way[i - 1] + Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
            }
            return new Track(x, y, way);
        }

        double length() {
            return way.length == 0 ? 0 : way[way.length - 1];
        }

        double[] at(double share) {
            double wanted = share * length();
            int i = 0;
            while (i + 1 < way.length && way[i + 1] < wanted) {
                i++;
            }
            int next = Math.min(i + 1, way.length - 1);
            double step = way[next] - way[i];
            double part = step > 0 ? (wanted - way[i]) / step : 0;
            return new double[] {x[i] + part * (x[next] - x[i]), y[i] + part * (y[next] - y[i])};
        }
    }
}
