package leverwright.face.draw;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.working.Sketch;

/**
 * Which part of the mechanics plane a figure shows, in metres, x forward and y up, and how long its forces are drawn. A
 * frame that holds several figures shows each at the same place and size, so that one can be seen before the other.
 *
 * @param left the least x
 * @param bottom the least y
 * @param right the greatest x
 * @param top the greatest y
 * @param metresPerNewton the length of a force of one newton; 0 where there is none
 */
public record FigureFrame(double left, double bottom, double right, double top, double metresPerNewton) {
    private static final double ARROW_SHARE = 0.24;

    /** Returns the frame of one figure: its largest force is a quarter as long as the figure. */
    public static FigureFrame of(Sketch sketch) {
        double greatest = 0;
        for (Sketch.Shape shape : sketch.shapes()) {
            if (shape instanceof Sketch.Arrow arrow) {
                greatest = Math.max(greatest, FigureView.size(arrow.newtons()));
            }
        }
        Rectangle2D body = extent(sketch, 0);
        double length = greatest > 0 ? ARROW_SHARE * Math.max(body.getWidth(), body.getHeight()) / greatest : 0;
        Rectangle2D all = extent(sketch, length);
        return new FigureFrame(all.getMinX(), all.getMinY(), all.getMaxX(), all.getMaxY(), length);
    }

    /** Returns the frame that holds this one and another. */
    public FigureFrame with(FigureFrame other) {
        double length = metresPerNewton == 0 || other.metresPerNewton == 0
                ? Math.max(metresPerNewton, other.metresPerNewton)
                : Math.min(metresPerNewton, other.metresPerNewton);
        return new FigureFrame(
                Math.min(left, other.left),
                Math.min(bottom, other.bottom),
                Math.max(right, other.right),
                Math.max(top, other.top),
                length);
    }

    /** Returns the area in square metres. */
    public double area() {
        return (right - left) * (top - bottom);
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
