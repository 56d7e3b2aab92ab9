package leverwright.face.draw;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leverwright.mechanics.working.Sketch;
import leverwright.run.result.FigureResult;
import org.jspecify.annotations.Nullable;

/**
 * Draws a posture. The body is a quiet shape behind; what the figure is about stands in front: lines of action, load arms
 * with their right angle and length, and forces as arrows. Words find places where they cover neither each other nor
 * those lines.
 */
public final class FigureDrawing {
    /** The width of a figure for a page. */
    public static final int PAGE_WIDTH = 460;

    private static final double WORDS = 12.5;
    private static final double FAR = 18;
    private static final double SHAFT = 3;
    /** Width of the least pull of a muscle that is drawn, and of the greatest in the figure. */
    private static final double THINNEST = 1.6;

    private static final double BROADEST = 9;

    private final FigureView view;
    private final Placer placer;
    private final List<Mark> body = new ArrayList<>();
    private final List<Mark> lines = new ArrayList<>();
    private final List<Mark> front = new ArrayList<>();
    private final List<Wanted> wanted = new ArrayList<>();
    /** The greatest pull of a muscle in the figure, N; widths are its parts. */
    private double greatestPull;

    /** Words to be placed once all lines are known. */
    private record Wanted(String text, Mark.Type type, Line2D about, double gap, int first) {
        double x() {
            return (about.getX1() + about.getX2()) / 2;
        }

        double y() {
            return (about.getY1() + about.getY2()) / 2;
        }

        /** The point of what the words speak of that is nearest to another point. */
        Point2D nearest(double toX, double toY) {
            double dx = about.getX2() - about.getX1();
            double dy = about.getY2() - about.getY1();
            double square = dx * dx + dy * dy;
            double along = square == 0 ? 0 : ((toX - about.getX1()) * dx + (toY - about.getY1()) * dy) / square;
            double share = Math.max(0, Math.min(1, along));
            return new Point2D.Double(about.getX1() + share * dx, about.getY1() + share * dy);
        }
    }

    private FigureDrawing(FigureView view) {
        this.view = view;
        placer = new Placer(view.bounds());
    }

    /** Returns the figure in the size of a page. */
    public static Picture of(FigureResult result) {
        return of(result, PAGE_WIDTH);
    }

    /**
     * Returns the figure in a size.
     *
     * @param result the figure
     * @param width in picture units, at least 260; the height follows from the posture
     * @throws IllegalArgumentException when the width is too small to be read
     */
    public static Picture of(FigureResult result, int width) {
        if (width < 260) {
            throw new IllegalArgumentException("a figure needs a width of at least 260, not " + width);
        }
        return draw(result, FigureFrame.of(result.sketch()), width, FigureView.TALLEST, null)
                .picture();
    }

    /**
     * Returns the figure as a window shows it.
     *
     * @param result the figure
     * @param frame which part of the plane to show
     * @param width in picture units, at least 200; the height follows from the frame
     * @param tallest the greatest height in picture units
     * @param ghost the figure of before, drawn pale behind, or null when there is none
     */
    public static DrawnFigure draw(
            FigureResult result, FigureFrame frame, int width, double tallest, @Nullable Sketch ghost) {
        Sketch sketch = result.sketch();
        FigureDrawing drawing = new FigureDrawing(new FigureView(frame, width, tallest));
        drawing.greatestPull =
                sketch.shapes().stream().mapToDouble(FigureDrawing::pull).max().orElse(0);
        sketch.shapes().forEach(drawing::draw);
        List<Mark> marks = new ArrayList<>();
        if (ghost != null) {
            ghost.shapes().forEach(shape -> drawing.drawGhost(shape, marks));
        }
        marks.addAll(drawing.body);
        marks.addAll(drawing.lines);
        marks.addAll(drawing.front);
        drawing.wanted.forEach(wanted -> drawing.placeWords(wanted, marks));
        String title = result.title().isEmpty() ? sketch.title() : result.title();
        Picture picture = new Picture(width, drawing.view.height(), title, FigureWords.of(result), marks);
        return new DrawnFigure(picture, drawing.view);
    }

    /** Body and gear of before, as outlines without words. */
    private void drawGhost(Sketch.Shape shape, List<Mark> marks) {
        if (shape instanceof Sketch.Bone bone) {
            double width = Math.max(3, view.length(breadth(bone.name())));
            marks.add(new Mark.Stroke(view.line(bone.from(), bone.to()), Mark.Pen.solid(Ink.GHOST, width)));
            marks.add(new Mark.Stroke(view.line(bone.from(), bone.to()), Mark.Pen.solid(Ink.WARM, width - 2.5)));
        } else if (shape instanceof Sketch.HeadOutline head) {
            marks.add(new Mark.Stroke(outline(head), Mark.Pen.solid(Ink.GHOST, 1.3)));
        } else if (shape instanceof Sketch.Disc disc) {
            Shape rim = circle(view.place(disc.centre()), view.length(disc.radius()));
            marks.add(new Mark.Stroke(rim, Mark.Pen.dashed(Ink.GHOST, 1.3, 4.0, 3.0)));
        } else if (shape instanceof Sketch.LoadArm arm) {
            marks.add(new Mark.Stroke(view.line(arm.from(), arm.to()), Mark.Pen.solid(Ink.GHOST, 3)));
        }
    }

    private Shape outline(Sketch.HeadOutline head) {
        Point2D centre = view.place(head.centre());
        double along = view.length(head.along());
        double across = view.length(head.across());
        AffineTransform turn = AffineTransform.getRotateInstance(-head.direction(), centre.getX(), centre.getY());
        return turn.createTransformedShape(
                new Ellipse2D.Double(centre.getX() - along, centre.getY() - across, 2 * along, 2 * across));
    }

    /** Places words; those that found no place near get a thin line to what they speak of. */
    private void placeWords(Wanted wanted, List<Mark> marks) {
        Mark.Words words =
                placer.place(wanted.text(), wanted.type(), wanted.x(), wanted.y(), wanted.gap(), wanted.first());
        Rectangle2D box = Placer.box(words);
        Point2D from = wanted.nearest(box.getCenterX(), box.getCenterY());
        double x = Math.max(box.getMinX(), Math.min(from.getX(), box.getMaxX()));
        double y = Math.max(box.getMinY(), Math.min(from.getY(), box.getMaxY()));
        if (from.distance(x, y) > FAR) {
            Line2D leader = new Line2D.Double(from.getX(), from.getY(), x, y);
            marks.add(new Mark.Stroke(leader, Mark.Pen.solid(wanted.type().ink(), 0.8)));
        }
        marks.add(words);
    }

    private void draw(Sketch.Shape shape) {
        if (shape instanceof Sketch.Bone bone) {
            drawBone(bone);
        } else if (shape instanceof Sketch.HeadOutline head) {
            drawHead(head);
        } else if (shape instanceof Sketch.JointMark joint) {
            drawJoint(joint);
        } else if (shape instanceof Sketch.Disc disc) {
            drawDisc(disc);
        } else if (shape instanceof Sketch.GroundLine ground) {
            drawGround(ground);
        } else if (shape instanceof Sketch.Line line) {
            stroke(lines, view.line(line.from(), line.to()), Mark.Pen.solid(Ink.GEAR, 1.5), 1.5);
        } else if (shape instanceof Sketch.LineOfAction line) {
            Mark.Pen pen = Mark.Pen.dashed(Ink.ACCENT, 1.3, 9.0, 3.0, 1.5, 3.0);
            stroke(lines, view.across(line), pen, 2.5);
        } else if (shape instanceof Sketch.LoadArm arm) {
            drawLoadArm(arm);
        } else if (shape instanceof Sketch.AngleArc arc) {
            drawAngle(arc);
        } else if (shape instanceof Sketch.Arrow arrow) {
            drawArrow(arrow);
        } else if (shape instanceof Sketch.Label label) {
            Point2D at = view.place(label.at());
            want(label.words(), Ink.QUIET, false, at.getX(), at.getY(), 4, 0);
        }
    }

    private void drawBone(Sketch.Bone bone) {
        Line2D line = view.line(bone.from(), bone.to());
        double width = Math.max(3, view.length(breadth(bone.name())));
        body.add(new Mark.Stroke(line, Mark.Pen.solid(Ink.WARM, width + 3)));
        body.add(new Mark.Stroke(line, Mark.Pen.solid(Ink.BODY, width)));
        double length = line.getP1().distance(line.getP2());
        double across = length == 0 ? 0 : width / 3 / length;
        double sideX = -(line.getY2() - line.getY1()) * across;
        double sideY = (line.getX2() - line.getX1()) * across;
        for (int side = -1; side <= 1; side++) {
            placer.avoid(
                    new Line2D.Double(
                            line.getX1() + side * sideX,
                            line.getY1() + side * sideY,
                            line.getX2() + side * sideX,
                            line.getY2() + side * sideY),
                    0.8);
        }
    }

    /** How broad a segment is drawn, in metres; only for the eye. */
    private static double breadth(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.contains("trunk") || lower.contains("torso") || lower.contains("pelvis")) {
            return 0.13;
        }
        if (lower.contains("thigh")) {
            return 0.1;
        }
        if (lower.contains("shank")) {
            return 0.075;
        }
        return lower.contains("upper arm") || lower.contains("foot") ? 0.055 : 0.045;
    }

    private void drawHead(Sketch.HeadOutline head) {
        Shape outline = outline(head);
        body.add(new Mark.Stroke(outline, Mark.Pen.solid(Ink.WARM, 3)));
        body.add(new Mark.Fill(outline, Ink.BODY, 1));
        placer.avoid(outline.getBounds2D());
    }

    private void drawJoint(Sketch.JointMark joint) {
        Point2D at = view.place(joint.at());
        front.add(new Mark.Fill(circle(at, 4.5), Ink.WARM, 1));
        stroke(front, circle(at, 4.5), Mark.Pen.solid(Ink.TEXT, 1.6), 0);
        placer.avoid(square(at, 6));
    }

    private void drawDisc(Sketch.Disc disc) {
        Point2D centre = view.place(disc.centre());
        Shape rim = circle(centre, view.length(disc.radius()));
        lines.add(new Mark.Fill(rim, Ink.GEAR, 0.08));
        stroke(lines, rim, Mark.Pen.solid(Ink.GEAR, 1.3), 1);
        lines.add(new Mark.Fill(circle(centre, 3), Ink.GEAR, 1));
    }

    private void drawGround(Sketch.GroundLine ground) {
        Line2D line = view.line(ground.from(), ground.to());
        stroke(body, line, Mark.Pen.solid(Ink.QUIET, 1.5), 2);
    }

    private void drawLoadArm(Sketch.LoadArm arm) {
        Line2D line = view.line(arm.from(), arm.to());
        stroke(front, line, Mark.Pen.solid(Ink.ACCENT, 3), 4);
        double length = line.getP1().distance(line.getP2());
        if (length > 16) {
            double alongX = (line.getX1() - line.getX2()) / length * 7;
            double alongY = (line.getY1() - line.getY2()) / length * 7;
            Path2D corner = new Path2D.Double();
            corner.moveTo(line.getX2() + alongX, line.getY2() + alongY);
            corner.lineTo(line.getX2() + alongX - alongY, line.getY2() + alongY + alongX);
            corner.lineTo(line.getX2() - alongY, line.getY2() + alongX);
            stroke(front, corner, Mark.Pen.solid(Ink.ACCENT, 1.2), 2);
        }
        want(arm.label(), Ink.ACCENT, true, line, 9, 6);
    }

    private void drawAngle(Sketch.AngleArc arc) {
        Point2D centre = view.place(arc.centre());
        double radius = view.length(arc.radius());
        double from = Math.toDegrees(arc.fromDirection());
        double sweep = Math.toDegrees(arc.toDirection()) - from;
        Shape curve = new Arc2D.Double(
                centre.getX() - radius, centre.getY() - radius, 2 * radius, 2 * radius, from, sweep, Arc2D.OPEN);
        Line2D leg = new Line2D.Double(centre, along(centre, arc.fromDirection(), radius + 8));
        stroke(lines, leg, Mark.Pen.dashed(Ink.QUIET, 1, 3.0, 3.0), 1);
        stroke(lines, curve, Mark.Pen.solid(Ink.TEXT, 1.3), 2);
        Point2D middle = along(centre, (arc.fromDirection() + arc.toDirection()) / 2, radius);
        want(arc.label(), Ink.TEXT, false, middle.getX(), middle.getY(), 7, 6);
    }

    private static Point2D along(Point2D from, double direction, double length) {
        return new Point2D.Double(
                from.getX() + Math.cos(direction) * length, from.getY() - Math.sin(direction) * length);
    }

    /** The pull of a muscle, N; 0 for everything else. */
    private static double pull(Sketch.Shape shape) {
        return shape instanceof Sketch.Arrow arrow && arrow.kind() == Sketch.ForceKind.MUSCLE
                ? Math.hypot(arrow.newtons().x(), arrow.newtons().y())
                : 0;
    }

    /** How broad an arrow is: forces from outside alike, pulls of muscles by their force. */
    private double breadth(Sketch.Arrow arrow) {
        double pull = pull(arrow);
        return pull == 0 ? SHAFT : THINNEST + (BROADEST - THINNEST) * pull / greatestPull;
    }

    private void drawArrow(Sketch.Arrow arrow) {
        Line2D line = view.arrow(arrow);
        double length = line.getP1().distance(line.getP2());
        Ink ink = switch (arrow.kind()) {
            case LOAD -> Ink.LOAD;
            case REACTION -> Ink.SUPPORT;
            case MUSCLE -> Ink.TEXT;
            case JOINT -> Ink.QUIET;
        };
        if (length == 0) {
            return;
        }
        double dx = (line.getX2() - line.getX1()) / length;
        double dy = (line.getY2() - line.getY1()) / length;
        double breadth = breadth(arrow);
        double wing = breadth / 2 + 4;
        double neckX = line.getX2() - dx * 2 * wing;
        double neckY = line.getY2() - dy * 2 * wing;
        Line2D shaft = new Line2D.Double(line.getX1(), line.getY1(), neckX, neckY);
        Mark.Pen pen = arrow.kind() == Sketch.ForceKind.MUSCLE
                ? Mark.Pen.dashed(ink, breadth, 5.0, 3.0)
                : new Mark.Pen(ink, breadth, List.of(), false);
        stroke(front, shaft, pen, breadth / 2 + 2.5);
        Path2D head = new Path2D.Double();
        head.moveTo(line.getX2(), line.getY2());
        head.lineTo(neckX - dy * wing, neckY + dx * wing);
        head.lineTo(neckX + dy * wing, neckY - dx * wing);
        head.closePath();
        front.add(new Mark.Fill(head, ink, 1));
        placer.avoid(head, 4);
        boolean reaction = arrow.kind() == Sketch.ForceKind.REACTION;
        want(
                arrow.label(),
                ink,
                true,
                reaction ? line.getX1() + dx * 8 : line.getX2() - dx * 6,
                reaction ? line.getY1() + dy * 8 : line.getY2() - dy * 6,
                10,
                0);
    }

    private void want(String text, Ink ink, boolean bold, double x, double y, double gap, int first) {
        want(text, ink, bold, new Line2D.Double(x, y, x, y), gap, first);
    }

    private void want(String text, Ink ink, boolean bold, Line2D about, double gap, int first) {
        if (!text.isBlank()) {
            wanted.add(new Wanted(text, new Mark.Type(ink, WORDS, bold, true), about, gap, first));
        }
    }

    private void stroke(List<Mark> layer, Shape shape, Mark.Pen pen, double avoided) {
        layer.add(new Mark.Stroke(shape, pen));
        if (avoided > 0) {
            placer.avoid(shape, avoided);
        }
    }

    private static Ellipse2D circle(Point2D centre, double radius) {
        return new Ellipse2D.Double(centre.getX() - radius, centre.getY() - radius, 2 * radius, 2 * radius);
    }

    private static Rectangle2D square(Point2D centre, double half) {
        return new Rectangle2D.Double(centre.getX() - half, centre.getY() - half, 2 * half, 2 * half);
    }
}
