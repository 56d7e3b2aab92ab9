package leverwright.face.desk.sheet;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyEvent;
import javafx.scene.shape.Circle;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DialView;
import leverwright.face.draw.DrawnMap;
import leverwright.face.draw.MapDrawing;
import leverwright.face.draw.MapWindow;
import leverwright.face.draw.MapWish;
import leverwright.face.draw.PlotArea;
import leverwright.face.draw.ValueText;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.MapResult;
import org.jspecify.annotations.Nullable;

/**
 * A map that answers: it reads out the computed node nearest to the mouse or, with the arrow keys, to a mark; a click or Enter
 * sets the dials behind its sides to that node; dragging a rectangle shows that part alone.
 */
final class MapPane extends ReadingPane<DrawnMap> {

    private static final double HEIGHT_SHARE = 0.68;
    private static final int LOWEST = 260;
    private static final int HIGHEST = 440;
    private static final int FEWEST_IN_PART = 3;
    private static final int LEAP = 10;
    private static final double AIR = 12;

    private final Circle dot = new Circle(4);
    private @Nullable MapResult result;
    private @Nullable ContourMap ghost;
    private @Nullable MapWindow window;
    private @Nullable Node at;

    /** A node of the map, counted from 0 at the left and at the foot. */
    private record Node(int column, int row) {}

    MapPane(DeskModel model) {
        super(model, DrawnMap::picture);
        getStyleClass().add("map");
        dot.getStyleClass().add("readout-dot");
        dot.setManaged(false);
        dot.setVisible(false);
        over().getChildren().add(1, dot);
    }

    /** Shows a map, and the one of before behind it. */
    void show(MapResult now, @Nullable ContourMap before) {
        if (now.equals(result) && Objects.equals(before, ghost)) {
            return;
        }
        MapResult last = result;
        if (last != null
                && !(last.map().across().equals(now.map().across())
                        && last.map().up().equals(now.map().up()))) {
            window = null;
            setWhole(true);
            at = null;
        }
        boolean moved = last != null
                && !(Objects.equals(last.map().presentAcross(), now.map().presentAcross())
                        && Objects.equals(last.map().presentUp(), now.map().presentUp()));
        result = now;
        ghost = before;
        if (moved && !isByMouse() && !present(now.map()).equals(at)) {
            // A dial went elsewhere: the keys go on from there.
            forget();
        }
        redraw();
    }

    @Override
    void showWhole() {
        window = null;
        setWhole(true);
        redraw();
    }

    @Override
    @Nullable
    Supplier<DrawnMap> drawing(int width) {
        MapResult now = result;
        if (now == null) {
            return null;
        }
        MapWish wish = new MapWish(width, height(width), window, ghost);
        return () -> MapDrawing.draw(now, wish);
    }

    private static int height(int width) {
        return Math.max(LOWEST, Math.min(HIGHEST, (int) (width * HEIGHT_SHARE)));
    }

    @Override
    double guess(int width) {
        return height(width);
    }

    @Override
    void shown(DrawnMap drawing) {
        Node marked = at;
        if (marked != null && isReadOut()) {
            mark(marked);
        }
    }

    @Override
    boolean reaches(double x, double y) {
        DrawnMap drawn = drawn();
        return drawn != null && result != null && drawn.area().reaches(x / factor(), y / factor());
    }

    @Override
    void read(double x, double y) {
        DrawnMap drawn = drawn();
        MapResult now = result;
        if (drawn != null && now != null) {
            mark(nearest(
                    now.map(),
                    drawn.area().settingAt(x / factor()),
                    drawn.area().valueAt(y / factor())));
        }
    }

    /** The node nearest to two settings within the part that is shown. */
    private Node nearest(ContourMap map, double across, double up) {
        MapWindow shown = window;
        return new Node(
                nearest(
                        map.across().values(),
                        across,
                        shown == null ? null : new double[] {shown.left(), shown.right()}),
                nearest(map.up().values(), up, shown == null ? null : new double[] {shown.foot(), shown.top()}));
    }

    private static int nearest(List<Double> settings, double wanted, double @Nullable [] ends) {
        int best = -1;
        for (int i = 0; i < settings.size(); i++) {
            double setting = settings.get(i);
            boolean inside = ends == null || (setting >= ends[0] && setting <= ends[1]);
            if (inside && (best < 0 || Math.abs(setting - wanted) < Math.abs(settings.get(best) - wanted))) {
                best = i;
            }
        }
        return Math.max(0, best);
    }

    private void mark(Node node) {
        DrawnMap drawn = drawn();
        MapResult now = result;
        if (drawn == null
                || now == null
                || node.column() >= now.map().columns()
                || node.row() >= now.map().rows()) {
            return;
        }
        at = node;
        ContourMap map = now.map();
        double x = drawn.area().across(map.across().values().get(node.column())) * factor();
        double y = drawn.area().down(map.up().values().get(node.row())) * factor();
        dot.setCenterX(x);
        dot.setCenterY(y);
        dot.setVisible(true);
        say(words(map, node), x, height -> y + AIR + height > getHeight() ? y - AIR - height : y + AIR);
    }

    private static String words(ContourMap map, Node node) {
        Double value = map.at(node.column(), node.row());
        String side = map.name().contains(map.sides().words())
                ? ""
                : " " + map.sides().words();
        return setting(map.across(), node.column()) + "\n" + setting(map.up(), node.row()) + "\n" + map.name() + " "
                + (value == null ? "no value" : map.unit().format(value, ValueText.DIGITS) + side);
    }

    private static String setting(Curves.Axis axis, int index) {
        return axis.name() + " " + axis.unit().format(axis.values().get(index), ValueText.DIGITS);
    }

    @Override
    void hide() {
        super.hide();
        dot.setVisible(false);
    }

    @Override
    void forget() {
        super.forget();
        at = null;
    }

    @Override
    Bounds dragged(Point2D from, Point2D to) {
        PlotArea area = Objects.requireNonNull(drawn()).area();
        return between(
                from,
                to,
                new BoundingBox(
                        area.left() * factor(),
                        area.top() * factor(),
                        (area.right() - area.left()) * factor(),
                        (area.bottom() - area.top()) * factor()));
    }

    @Override
    void showDragged(Point2D from, Point2D to) {
        PlotArea area = Objects.requireNonNull(drawn()).area();
        double x = area.settingAt(to.getX() / factor());
        double y = area.valueAt(to.getY() / factor());
        double fromX = area.settingAt(from.getX() / factor());
        double fromY = area.valueAt(from.getY() / factor());
        showPart(Math.min(x, fromX), Math.max(x, fromX), Math.min(y, fromY), Math.max(y, fromY));
    }

    /** Shows a part of the map alone, if a few computed nodes lie in it each way. */
    void showPart(double left, double right, double foot, double top) {
        MapResult now = result;
        if (now != null
                && inside(now.map().across(), left, right) >= FEWEST_IN_PART
                && inside(now.map().up(), foot, top) >= FEWEST_IN_PART) {
            window = new MapWindow(left, right, foot, top);
            setWhole(false);
            redraw();
        }
    }

    private static long inside(Curves.Axis axis, double least, double greatest) {
        return axis.values().stream()
                .filter(setting -> setting >= least && setting <= greatest)
                .count();
    }

    @Override
    void setDials() {
        MapResult now = result;
        Node node = at;
        if (now == null || node == null) {
            return;
        }
        ContourMap map = now.map();
        Optional<DialView> across = DialMatch.of(model().dials(), map.across(), map.presentAcross());
        Optional<DialView> up = DialMatch.of(model().dials(), map.up(), map.presentUp());
        across.ifPresent(dial -> model().turn(dial.name(), map.across().values().get(node.column())));
        up.filter(dial -> across.filter(dial::equals).isEmpty())
                .ifPresent(dial -> model().turn(dial.name(), map.up().values().get(node.row())));
    }

    @Override
    void key(KeyEvent event) {
        MapResult now = result;
        if (now == null || event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        ContourMap map = now.map();
        Node marked = at;
        Node start = marked == null ? present(map) : marked;
        int step = marked == null ? 0 : 1;
        boolean used = true;
        switch (event.getCode()) {
            case LEFT -> move(map, start.column() - step, start.row());
            case RIGHT -> move(map, start.column() + step, start.row());
            case UP -> move(map, start.column(), start.row() + step);
            case DOWN -> move(map, start.column(), start.row() - step);
            case PAGE_UP -> move(map, start.column(), start.row() + Math.max(1, map.rows() / LEAP));
            case PAGE_DOWN -> move(map, start.column(), start.row() - Math.max(1, map.rows() / LEAP));
            case HOME -> move(map, 0, start.row());
            case END -> move(map, map.columns() - 1, start.row());
            case ENTER, SPACE -> setDials();
            case PLUS, ADD, EQUALS -> zoomAround(map, start);
            case MINUS, SUBTRACT -> showWhole();
            case ESCAPE -> used = escape();
            default -> used = false;
        }
        if (used) {
            event.consume();
        }
    }

    private Node present(ContourMap map) {
        Double across = map.presentAcross();
        Double up = map.presentUp();
        return across == null || up == null ? new Node(map.columns() / 2, map.rows() / 2) : nearest(map, across, up);
    }

    private void move(ContourMap map, int column, int row) {
        int inColumn = Math.max(0, Math.min(map.columns() - 1, column));
        int inRow = Math.max(0, Math.min(map.rows() - 1, row));
        mark(nearest(map, map.across().values().get(inColumn), map.up().values().get(inRow)));
    }

    /** Shows a quarter of what is shown now, around a node. */
    private void zoomAround(ContourMap map, Node node) {
        MapWindow now = window;
        List<Double> across = map.across().values();
        List<Double> up = map.up().values();
        double[] wide = now == null
                ? new double[] {across.get(0), across.get(across.size() - 1)}
                : new double[] {now.left(), now.right()};
        double[] tall =
                now == null ? new double[] {up.get(0), up.get(up.size() - 1)} : new double[] {now.foot(), now.top()};
        double[] nearX = half(wide[0], wide[1], across.get(node.column()));
        double[] nearY = half(tall[0], tall[1], up.get(node.row()));
        showPart(nearX[0], nearX[1], nearY[0], nearY[1]);
    }

    private boolean escape() {
        if (!whole().get()) {
            showWhole();
            return true;
        }
        boolean shown = isReadOut();
        forget();
        return shown;
    }

    /** Returns the point of the pane at which a node is read out; for tests and tools. */
    Optional<Point2D> placeOf(int column, int row) {
        DrawnMap drawn = drawn();
        MapResult now = result;
        if (drawn == null || now == null) {
            return Optional.empty();
        }
        return Optional.of(new Point2D(
                drawn.area().across(now.map().across().values().get(column)) * factor(),
                drawn.area().down(now.map().up().values().get(row)) * factor()));
    }
}
