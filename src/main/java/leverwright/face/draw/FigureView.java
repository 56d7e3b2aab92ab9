package leverwright.face.draw;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.working.Sketch;

/**
 * Which part of the mechanics plane a figure shows, and how large: metres, x forward and y up, become picture units, x to
 * the right and y down. Forces get a length of their own, so that the largest is a quarter of the figure.
 */
final class FigureView {
    private static final double SIDE_ROOM = 84;
    private static final double SIDE_ROOM_OF_BROAD = 34;
    private static final double ROOM = 22;
    private static final double TALLEST = 440;
    private static final double LOWEST = 120;
    private static final double ARROW_SHARE = 0.24;
    private static final double SHORTEST_ARROW = 16;

    private final double left;
    private final double bottom;
    private final double scale;
    private final double width;
    private final double height;
    private final double metresPerNewton;

    FigureView(Sketch sketch, double width) {
        this.width = width;
        double greatest = 0;
        for (Sketch.Shape shape : sketch.shapes()) {
            if (shape instanceof Sketch.Arrow arrow) {
                greatest = Math.max(greatest, size(arrow.newtons()));
            }
        }
        Rectangle2D body = extent(sketch, 0);
        metresPerNewton = greatest > 0 ? ARROW_SHARE * Math.max(body.getWidth(), body.getHeight()) / greatest : 0;
        Rectangle2D all = extent(sketch, metresPerNewton);
        double sizeX = Math.max(all.getWidth(), 1e-6);
        double sizeY = Math.max(all.getHeight(), 1e-6);
        double sideRoom = sizeX > 1.2 * sizeY ? SIDE_ROOM_OF_BROAD : SIDE_ROOM;
        scale = Math.min((width - 2 * sideRoom) / sizeX, (TALLEST - 2 * ROOM) / sizeY);
        height = Math.max(sizeY * scale + 2 * ROOM, LOWEST);
        left = all.getCenterX() - width / 2 / scale;
        bottom = all.getCenterY() - height / 2 / scale;
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

    private static double size(Sketch.Point vector) {
        return Math.sqrt(vector.x() * vector.x() + vector.y() * vector.y());
    }

    private static Rectangle2D extent(Sketch sketch, double metresPerNewton) {
        List<Sketch.Point> points = new ArrayList<>();
        for (Sketch.Shape shape : sketch.shapes()) {
            addPoints(points, shape, metresPerNewton);
        }
        if (points.isEmpty()) {
            return new Rectangle2D.Double(0, 0, 1, 1);
        }
        Rectangle2D extent =
                new Rectangle2D.Double(points.get(0).x(), points.get(0).y(), 0, 0);
        points.forEach(point -> extent.add(point.x(), point.y()));
        return extent;
    }

    private static void addPoints(List<Sketch.Point> points, Sketch.Shape shape, double metresPerNewton) {
        if (shape instanceof Sketch.Bone bone) {
            points.addAll(List.of(bone.from(), bone.to()));
        } else if (shape instanceof Sketch.JointMark joint) {
            points.add(joint.at());
        } else if (shape instanceof Sketch.LoadArm arm) {
            points.addAll(List.of(arm.from(), arm.to()));
        } else if (shape instanceof Sketch.GroundLine ground) {
            points.addAll(List.of(ground.from(), ground.to()));
        } else if (shape instanceof Sketch.Line line) {
            points.addAll(List.of(line.from(), line.to()));
        } else if (shape instanceof Sketch.Disc disc) {
            addAround(points, disc.centre(), disc.radius());
        } else if (shape instanceof Sketch.HeadOutline head) {
            addAround(points, head.centre(), Math.max(head.along(), head.across()));
        } else if (shape instanceof Sketch.Label label) {
            points.add(label.at());
        } else if (shape instanceof Sketch.AngleArc arc) {
            points.add(arc.centre());
        } else if (shape instanceof Sketch.LineOfAction line) {
            points.add(line.through());
        } else if (shape instanceof Sketch.Arrow arrow) {
            double sign = arrow.kind() == Sketch.ForceKind.REACTION ? -metresPerNewton : metresPerNewton;
            points.add(arrow.at());
            points.add(new Sketch.Point(
                    arrow.at().x() + sign * arrow.newtons().x(),
                    arrow.at().y() + sign * arrow.newtons().y()));
        }
    }

    private static void addAround(List<Sketch.Point> points, Sketch.Point centre, double radius) {
        points.add(new Sketch.Point(centre.x() - radius, centre.y() - radius));
        points.add(new Sketch.Point(centre.x() + radius, centre.y() + radius));
    }
}
