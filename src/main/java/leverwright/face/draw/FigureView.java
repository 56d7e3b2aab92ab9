package leverwright.face.draw;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import leverwright.mechanics.working.Sketch;

/**
 * Which part of the mechanics plane a figure shows, and how large: metres, x forward and y up, become picture units, x to
 * the right and y down. Forces get a length of their own, so that the largest is a quarter of the figure.
 */
final class FigureView {
    private static final double SIDE_ROOM = 84;
    private static final double SIDE_ROOM_SHARE = 0.2;
    private static final double SIDE_ROOM_OF_BROAD = 34;
    private static final double ROOM = 22;
    /** The greatest height of a figure on a page. */
    static final double TALLEST = 440;

    private static final double LOWEST = 120;
    private static final double SHORTEST_ARROW = 16;

    private final double left;
    private final double bottom;
    private final double scale;
    private final double width;
    private final double height;
    private final double metresPerNewton;

    FigureView(FigureFrame frame, double width, double tallest) {
        this.width = width;
        metresPerNewton = frame.metresPerNewton();
        double sizeX = Math.max(frame.right() - frame.left(), 1e-6);
        double sizeY = Math.max(frame.top() - frame.bottom(), 1e-6);
        double sideRoom = sizeX > 1.2 * sizeY ? SIDE_ROOM_OF_BROAD : Math.min(SIDE_ROOM, SIDE_ROOM_SHARE * width);
        scale = Math.min((width - 2 * sideRoom) / sizeX, (tallest - 2 * ROOM) / sizeY);
        height = Math.max(sizeY * scale + 2 * ROOM, LOWEST);
        left = (frame.left() + frame.right()) / 2 - width / 2 / scale;
        bottom = (frame.bottom() + frame.top()) / 2 - height / 2 / scale;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    Rectangle2D bounds() {
        return new Rectangle2D.Double(2, 2, width - 4, height - 4);
    }

    Point2D place(Sketch.Point point) {
        return new Point2D.Double((point.x() - left) * scale, height - (point.y() - bottom) * scale);
    }

    /** Returns the point of the mechanics plane, in metres, that lies at a place of the picture. */
    Sketch.Point point(double x, double y) {
        return new Sketch.Point(x / scale + left, (height - y) / scale + bottom);
    }

    double length(double metres) {
        return metres * scale;
    }

    Line2D line(Sketch.Point from, Sketch.Point to) {
        return new Line2D.Double(place(from), place(to));
    }

    /** Returns where an arrow begins and ends; a reaction ends where it acts, every other force begins there. */
    Line2D arrow(Sketch.Arrow arrow) {
        Point2D at = place(arrow.at());
        double newtons = size(arrow.newtons());
        if (newtons == 0) {
            return new Line2D.Double(at, at);
        }
        double length = Math.max(SHORTEST_ARROW, length(newtons * metresPerNewton));
        double dx = arrow.newtons().x() / newtons * length;
        double dy = -arrow.newtons().y() / newtons * length;
        if (arrow.kind() == Sketch.ForceKind.REACTION) {
            return new Line2D.Double(at.getX() - dx, at.getY() - dy, at.getX(), at.getY());
        }
        return new Line2D.Double(at.getX(), at.getY(), at.getX() + dx, at.getY() + dy);
    }

    /** Returns the part of an unbounded line that the figure shows: from edge to edge, less a little air. */
    Line2D across(Sketch.LineOfAction line) {
        Point2D through = place(line.through());
        double size = size(line.direction());
        double dx = line.direction().x() / size;
        double dy = -line.direction().y() / size;
        double from = -Double.MAX_VALUE;
        double to = Double.MAX_VALUE;
        double[] run = {-dx, dx, -dy, dy};
        double[] room = {through.getX() - 8, width - 8 - through.getX(), through.getY() - 8, height - 8 - through.getY()
        };
        for (int side = 0; side < 4; side++) {
            if (run[side] < -1e-9) {
                from = Math.max(from, room[side] / run[side]);
            } else if (run[side] > 1e-9) {
                to = Math.min(to, room[side] / run[side]);
            }
        }
        if (from > to) {
            return new Line2D.Double(through, through);
        }
        return new Line2D.Double(
                through.getX() + from * dx,
                through.getY() + from * dy,
                through.getX() + to * dx,
                through.getY() + to * dy);
    }

    static double size(Sketch.Point vector) {
        return Math.sqrt(vector.x() * vector.x() + vector.y() * vector.y());
    }
}
