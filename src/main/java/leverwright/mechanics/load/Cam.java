package leverwright.mechanics.load;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.numeric.Require;

/**
 * The arm at which a machine's cable pulls, over the travel of its lever: round, or by measured points with straight lines
 * between and nothing said beyond.
 *
 * @param points travel of the lever, rad, and arm, m; one point is a round wheel
 */
public record Cam(List<Point> points) {
    /**
     * A measured arm.
     *
     * @param travel of the lever from its start, rad
     * @param radius arm of the cable about the axis, m, greater than 0
     */
    public record Point(double travel, double radius) {
        /**
         * Makes a point.
         *
         * @throws IllegalArgumentException if a number is outside its range or not a number
         */
        public Point {
            Require.within(travel, -2 * Math.PI, 2 * Math.PI, "travel of a machine's lever", "rad");
            Require.positive(radius, 2, "arm of a cam", "m");
        }
    }

    /**
     * Makes the cam.
     *
     * @throws IllegalArgumentException if there is no point or the travels do not rise
     */
    public Cam {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a cam has no points; allowed: at least one arm");
        }
        for (int k = 1; k < points.size(); k++) {
            if (!(points.get(k).travel() > points.get(k - 1).travel())) {
                throw new IllegalArgumentException("a cam was measured at a travel of "
                        + Angle.of(points.get(k - 1).travel()) + " and then of "
                        + Angle.of(points.get(k).travel()) + "; allowed: travels that rise");
            }
        }
    }

    /** Returns a round wheel. */
    public static Cam round(Length radius) {
        return new Cam(List.of(new Point(0, radius.si())));
    }

    /** Returns this cam with one more measured arm, further round. */
    public Cam point(Angle travel, Length radius) {
        List<Point> more = new ArrayList<>(points);
        more.add(new Point(travel.si(), radius.si()));
        return new Cam(more);
    }

    private int piece(double travel) {
        double first = points.get(0).travel();
        double last = points.get(points.size() - 1).travel();
        if (!(travel >= first && travel <= last)) {
            throw new IllegalArgumentException("the cam was measured from a travel of " + Angle.of(first) + " to "
                    + Angle.of(last) + ", and is asked for at " + Angle.of(travel)
                    + "; allowed: within what was measured");
        }
        int k = 0;
        while (k < points.size() - 2 && travel > points.get(k + 1).travel()) {
            k++;
        }
        return k;
    }

    /** Returns the arm at a travel, m. */
    public double radius(double travel) {
        if (points.size() == 1) {
            return points.get(0).radius();
        }
        Point from = points.get(piece(travel));
        return from.radius() + slope(travel) * (travel - from.travel());
    }

    /** Returns how the arm grows with the travel, m per rad. */
    double slope(double travel) {
        if (points.size() == 1) {
            return 0;
        }
        int k = piece(travel);
        Point from = points.get(k);
        Point to = points.get(k + 1);
        return (to.radius() - from.radius()) / (to.travel() - from.travel());
    }

    /** Returns the cable taken up from the first point to a travel, m. */
    double cable(double travel) {
        if (points.size() == 1) {
            return points.get(0).radius() * travel;
        }
        int k = piece(travel);
        double taken = 0;
        for (int i = 0; i < k; i++) {
            Point from = points.get(i);
            Point to = points.get(i + 1);
            taken += 0.5 * (from.radius() + to.radius()) * (to.travel() - from.travel());
        }
        Point from = points.get(k);
        return taken + 0.5 * (from.radius() + radius(travel)) * (travel - from.travel());
    }
}
