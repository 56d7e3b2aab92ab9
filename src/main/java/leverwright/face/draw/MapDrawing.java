package leverwright.face.draw;

import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.MapResult;

/**
 * Draws a map as contours with their values written on them, on a grey ground that grows darker with the value; where the model
 * has no value the ground is bare and says so. The present setting is a dot with its value where two dotted lines cross.
 */
public final class MapDrawing {
    private static final int PLOT_HEIGHT = 400;
    private static final double ROUNDING = 1e-9;

    private MapDrawing() {}

    /** Returns the map in the size of a page. */
    public static Picture of(MapResult result) {
        return of(result, ChartDrawing.PAGE_WIDTH, PLOT_HEIGHT);
    }

    /**
     * Returns the map in a size.
     *
     * @param result the map
     * @param width in picture units, at least 240
     * @param height in picture units, at least 200
     * @throws IllegalArgumentException when the size is too small to be read
     */
    public static Picture of(MapResult result, int width, int height) {
        return draw(result, MapWish.whole(width, height)).picture();
    }

    /**
     * Returns the map as a window shows it, with the places of its settings.
     *
     * @param result the map
     * @param wish the size, the part to show, and the map of before
     */
    public static DrawnMap draw(MapResult result, MapWish wish) {
        MapPanel panel = new MapPanel(result.map(), wish);
        String title = result.title().isEmpty() ? result.map().title() : result.title();
        Picture picture = new Picture(
                wish.width(),
                wish.height(),
                title + ": " + name(result.map()),
                description(result.map()),
                panel.marks());
        return new DrawnMap(picture, panel.area());
    }

    /** Returns the mapped quantity with its side, unless its name says it. */
    static String name(ContourMap map) {
        String side = map.sides().words();
        boolean said = map.sides() == Sides.NOT_SIDED || map.name().contains(side);
        return said ? map.name() : map.name() + ", " + side;
    }

    /** Returns the map in words: its sides, the least and the greatest value and where, and the value at the present setting. */
    public static String description(ContourMap map) {
        return name(map) + " over " + side(map.across()) + " and " + side(map.up()) + ": " + values(map);
    }

    private static String side(Curves.Axis axis) {
        return axis.name() + " from " + setting(axis, 0) + " to "
                + setting(axis, axis.values().size() - 1);
    }

    private static String values(ContourMap map) {
        int least = -1;
        int greatest = -1;
        int gaps = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < map.values().size(); i++) {
            Double value = map.values().get(i);
            if (value == null) {
                gaps++;
                continue;
            }
            least = value < low ? i : least;
            low = Math.min(low, value);
            greatest = value > high ? i : greatest;
            high = Math.max(high, value);
        }
        if (least < 0) {
            return "no value anywhere.";
        }
        Unit unit = map.unit();
        String words = isLevel(low, high)
                ? unit.format(low, ValueText.DIGITS) + " everywhere"
                : "least " + unit.format(low, ValueText.DIGITS) + " at " + place(map, least) + ", greatest "
                        + unit.format(high, ValueText.DIGITS) + " at " + place(map, greatest) + present(map);
        return words
                + (gaps == 0
                        ? "."
                        : "; no value at " + gaps + " of " + map.values().size() + " settings.");
    }

    private static String present(ContourMap map) {
        Double x = map.presentAcross();
        Double y = map.presentUp();
        Double now = x == null || y == null ? null : map.between(x, y);
        return x == null || y == null || now == null
                ? ""
                : ", at the present " + ValueText.setting(map.across().unit(), x) + " and "
                        + ValueText.setting(map.up().unit(), y) + " about "
                        + map.unit().format(now, ValueText.DIGITS);
    }

    private static String setting(Curves.Axis axis, int index) {
        return ValueText.setting(axis.unit(), axis.values().get(index));
    }

    private static String place(ContourMap map, int node) {
        return map.across().name() + " " + setting(map.across(), node % map.columns()) + ", "
                + map.up().name() + " " + setting(map.up(), node / map.columns());
    }

    /** Returns whether two values differ by no more than rounding does. */
    static boolean isLevel(double least, double greatest) {
        return greatest - least <= ROUNDING * Math.max(Math.abs(least), Math.abs(greatest));
    }
}
