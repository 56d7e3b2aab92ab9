package leverwright.face.draw;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds places for words near the points they speak of, so that they cover neither each other nor the lines that matter.
 * It tries places in several directions and distances and takes the one that covers least; of equal ones the first tried.
 */
final class Placer {
    private static final double[] DISTANCES = {0, 7, 16, 28, 44, 64};
    /** Directions tried, as x and y to the right and downwards; those first are liked best. */
    private static final double[][] DIRECTIONS = {
        {1, 0},
        {1, -0.7},
        {1, 0.7},
        {-1, 0},
        {-1, -0.7},
        {-1, 0.7},
        {0, -1},
        {0, 1},
        {0.4, -1},
        {-0.4, -1},
        {0.4, 1},
        {-0.4, 1}
    };

    private static final double WORDS_WEIGHT = 12;
    private static final double OUTSIDE_WEIGHT = 40;
    private static final double FLATNESS = 0.5;

    private final Rectangle2D bounds;
    private final List<Obstacle> obstacles = new ArrayList<>();
    private final List<Rectangle2D> taken = new ArrayList<>();

    /** A straight piece of a line with the box it lies in, so that most boxes of words pass it over at once. */
    private record Obstacle(Line2D line, double weight, double left, double right, double top, double bottom) {
        Obstacle(Line2D line, double weight) {
            this(
                    line,
                    weight,
                    Math.min(line.getX1(), line.getX2()),
                    Math.max(line.getX1(), line.getX2()),
                    Math.min(line.getY1(), line.getY2()),
                    Math.max(line.getY1(), line.getY2()));
        }
    }

    /** Keeps the words inside the bounds as far as possible. */
    Placer(Rectangle2D bounds) {
        this.bounds = bounds;
    }

    /** Makes words avoid a line; a greater weight is avoided more. */
    void avoid(Shape shape, double weight) {
        double[] at = new double[6];
        double startX = 0;
        double startY = 0;
        double x = 0;
        double y = 0;
        for (PathIterator way = shape.getPathIterator(null, FLATNESS); !way.isDone(); way.next()) {
            int kind = way.currentSegment(at);
            if (kind == PathIterator.SEG_MOVETO) {
                startX = at[0];
                startY = at[1];
            } else {
                double endX = kind == PathIterator.SEG_CLOSE ? startX : at[0];
                double endY = kind == PathIterator.SEG_CLOSE ? startY : at[1];
                obstacles.add(new Obstacle(new Line2D.Double(x, y, endX, endY), weight));
                at[0] = endX;
                at[1] = endY;
            }
            x = at[0];
            y = at[1];
        }
    }

    /** Makes words avoid an area. */
    void avoid(Rectangle2D area) {
        taken.add(area);
    }

    /**
     * Places words near a point and keeps their place for them.
     *
     * @param text the words
     * @param type their type
     * @param x the point
     * @param y the point
     * @param gap the least distance between point and words
     */
    Mark.Words place(String text, Mark.Type type, double x, double y, double gap) {
        return place(text, type, x, y, gap, 0);
    }

    /**
     * Places words as the other method does, but begins with another direction.
     *
     * @param first which of the directions to like best: 0 right, 3 left, 6 above, 7 below
     */
    Mark.Words place(String text, Mark.Type type, double x, double y, double gap, int first) {
        double best = Double.MAX_VALUE;
        Mark.Words chosen = at(text, type, x, y, DIRECTIONS[first], gap);
        for (double distance : DISTANCES) {
            for (int i = 0; i < DIRECTIONS.length; i++) {
                double[] direction = DIRECTIONS[(first + i) % DIRECTIONS.length];
                Mark.Words words = at(text, type, x, y, direction, gap + distance);
                double cost = cover(box(words)) + distance * 0.6 + i * 0.5;
                if (cost < best) {
                    best = cost;
                    chosen = words;
                }
            }
        }
        Mark.Words whole = inside(chosen);
        taken.add(box(whole));
        return whole;
    }

    /** Words that found room only beyond an edge are moved back, so that they can be read whole. */
    private Mark.Words inside(Mark.Words words) {
        Rectangle2D box = box(words);
        double right = Math.max(0, bounds.getMinX() - box.getMinX());
        double left = Math.max(0, box.getMaxX() - bounds.getMaxX());
        double down = Math.max(0, bounds.getMinY() - box.getMinY());
        double up = Math.max(0, box.getMaxY() - bounds.getMaxY());
        if (right == 0 && left == 0 && down == 0 && up == 0) {
            return words;
        }
        double x = words.x() + (right > 0 ? right : -left);
        double y = words.y() + (down > 0 ? down : -up);
        return new Mark.Words(words.text(), x, y, words.anchor(), words.type());
    }

    private static Mark.Words at(String text, Mark.Type type, double x, double y, double[] direction, double distance) {
        double length = Math.sqrt(direction[0] * direction[0] + direction[1] * direction[1]);
        double toX = x + direction[0] / length * distance;
        double toY = y + direction[1] / length * distance;
        Mark.Anchor anchor = Mark.Anchor.MIDDLE;
        if (Math.abs(direction[0]) > 0.5) {
            anchor = direction[0] > 0 ? Mark.Anchor.START : Mark.Anchor.END;
        }
        double rise = direction[1] / length * 0.5;
        return new Mark.Words(text, toX, toY + type.size() * (0.35 + rise * 0.7), anchor, type);
    }

    /** Returns the box that words take, with a little air around them. */
    static Rectangle2D box(Mark.Words words) {
        double size = words.type().size();
        double width = words.type().width(words.text());
        return new Rectangle2D.Double(words.left() - 4, words.y() - size * 0.85, width + 8, size * 1.15);
    }

    private double cover(Rectangle2D box) {
        double cost = 0;
        double left = box.getMinX();
        double right = box.getMaxX();
        double top = box.getMinY();
        double bottom = box.getMaxY();
        for (Obstacle obstacle : obstacles) {
            if (obstacle.left() <= right
                    && obstacle.right() >= left
                    && obstacle.top() <= bottom
                    && obstacle.bottom() >= top) {
                cost += obstacle.weight() * lengthInside(obstacle.line(), box);
            }
        }
        for (Rectangle2D other : taken) {
            if (other.intersects(box)) {
                Rectangle2D common = other.createIntersection(box);
                cost += WORDS_WEIGHT * (common.getWidth() + common.getHeight());
            }
        }
        Rectangle2D inside = bounds.createIntersection(box);
        double outside =
                box.getWidth() - Math.max(0, inside.getWidth()) + box.getHeight() - Math.max(0, inside.getHeight());
        return cost + OUTSIDE_WEIGHT * outside;
    }

    /** How much of a line lies in a box, by clipping it at the box's four sides in turn. */
    private static double lengthInside(Line2D line, Rectangle2D box) {
        double dx = line.getX2() - line.getX1();
        double dy = line.getY2() - line.getY1();
        double[] run = {-dx, dx, -dy, dy};
        double[] room = {
            line.getX1() - box.getMinX(),
            box.getMaxX() - line.getX1(),
            line.getY1() - box.getMinY(),
            box.getMaxY() - line.getY1()
        };
        double from = 0;
        double to = 1;
        for (int side = 0; side < 4; side++) {
            if (run[side] == 0 && room[side] < 0) {
                return 0;
            }
            if (run[side] < 0) {
                from = Math.max(from, room[side] / run[side]);
            } else if (run[side] > 0) {
                to = Math.min(to, room[side] / run[side]);
            }
        }
        return from < to ? (to - from) * Math.sqrt(dx * dx + dy * dy) : 0;
    }
}
