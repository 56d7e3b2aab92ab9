package leverwright.mechanics.load;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Step;

/** Measured forces over a position, straight between neighbours; nothing is said beyond the ends. */
final class ForceCurve {
    private final String what;
    private final List<ForcePoint> points;

    /**
     * Takes measured points.
     *
     * @param what what was measured, for messages
     * @throws IllegalArgumentException if there are fewer than two or their positions do not rise
     */
    ForceCurve(String what, List<ForcePoint> points) {
        this.what = what;
        this.points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException(what + " has " + points.size()
                    + " measured points; allowed: at least 2. Measure the force at more positions.");
        }
        for (int k = 1; k < points.size(); k++) {
            if (!(points.get(k).position() > points.get(k - 1).position())) {
                throw new IllegalArgumentException(what + " was measured at "
                        + points.get(k - 1).position() + " m and then at "
                        + points.get(k).position()
                        + " m; allowed: positions that rise, each one once");
            }
        }
    }

    double first() {
        return points.get(0).position();
    }

    double last() {
        return points.get(points.size() - 1).position();
    }

    List<ForcePoint> points() {
        return points;
    }

    /** Index of the point that begins the piece with a position. */
    private int piece(double position) {
        if (!(position >= first() && position <= last())) {
            throw new IllegalArgumentException(what + " was measured from " + first() + " m to " + last()
                    + " m, and is asked for at " + position
                    + " m; allowed: within what was measured. Measure further, or move less far.");
        }
        int k = 0;
        while (k < points.size() - 2 && position > points.get(k + 1).position()) {
            k++;
        }
        return k;
    }

    double at(double position) {
        int k = piece(position);
        ForcePoint from = points.get(k);
        ForcePoint to = points.get(k + 1);
        double part = (position - from.position()) / (to.position() - from.position());
        return from.force() + (to.force() - from.force()) * part;
    }

    /** The work from the first point to a position, J. */
    double workTo(double position) {
        int k = piece(position);
        double work = 0;
        for (int i = 0; i < k; i++) {
            ForcePoint from = points.get(i);
            ForcePoint to = points.get(i + 1);
            work += 0.5 * (from.force() + to.force()) * (to.position() - from.position());
        }
        ForcePoint from = points.get(k);
        return work + 0.5 * (from.force() + at(position)) * (position - from.position());
    }

    /** F = F_1 + (F_2 − F_1)·(x − x_1)/(x_2 − x_1). */
    List<Step> steps(String symbol, double position, String positionWords) {
        int k = piece(position);
        ForcePoint from = points.get(k);
        ForcePoint to = points.get(k + 1);
        Expression x = Expression.symbol("x", Length.of(position), positionWords);
        Expression x1 = Expression.symbol("x_1", Length.of(from.position()), "measured point below");
        Expression x2 = Expression.symbol("x_2", Length.of(to.position()), "measured point above");
        Expression f1 = Expression.symbol("F_1", Force.of(from.force()), "force measured at x_1");
        Expression f2 = Expression.symbol("F_2", Force.of(to.force()), "force measured at x_2");
        Expression rise = f2.minus(f1).times(x.minus(x1)).dividedBy(x2.minus(x1));
        List<Step> steps = new ArrayList<>();
        steps.add(Step.of(symbol, f1.plus(rise), Force.of(at(position)), "straight between measured points"));
        return steps;
    }
}
