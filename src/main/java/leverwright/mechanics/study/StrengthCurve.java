package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.AngularVelocity;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Curves;
import org.jspecify.annotations.Nullable;

/**
 * The greatest moment of a joint action over the joint's flexion, as measured: straight between points, nothing beyond. It says
 * what it is: sides, held still or at a speed, whether the limb's weight was taken out, the neighbouring joint's angle, and who
 * was measured.
 *
 * <pre>{@code
 * strength(KNEE).extension().heldStill().gravityCorrected(true).neighbour("hip at 85°").sample("Ines, 20 November")
 *     .at(deg(20), newtonMetres(90)).at(deg(60), newtonMetres(160)).at(deg(90), newtonMetres(130))
 * }</pre>
 *
 * @param joint which joint
 * @param positive whether it is the joint's positive action (extension, plantarflexion) or the other
 * @param sides per side or both together
 * @param speed at which it was measured, rad/s; empty when held still
 * @param gravityCorrected whether the weight of limb and machine was taken out
 * @param neighbour angle of the neighbouring joint, in words
 * @param sample who was measured
 * @param points flexion, rad, and moment, N·m; flexion rising
 */
public record StrengthCurve(
        Joint joint,
        boolean positive,
        Sides sides,
        Optional<Double> speed,
        boolean gravityCorrected,
        String neighbour,
        String sample,
        List<Point> points) {
    /**
     * A measured moment.
     *
     * @param flexion of the joint, rad
     * @param moment of the action, N·m, greater than 0
     */
    public record Point(double flexion, double moment) {}

    /**
     * Makes the curve.
     *
     * @throws IllegalArgumentException if points do not rise or a moment is not greater than 0
     */
    public StrengthCurve {
        points = List.copyOf(points);
        for (int k = 0; k < points.size(); k++) {
            if (!(points.get(k).moment() > 0)) {
                throw new IllegalArgumentException(
                        "a measured strength is " + points.get(k).moment() + " N·m; allowed: greater than 0");
            }
            if (k > 0 && !(points.get(k).flexion() > points.get(k - 1).flexion())) {
                throw new IllegalArgumentException("strength was measured at "
                        + Angle.of(points.get(k - 1).flexion()) + " and then at "
                        + Angle.of(points.get(k).flexion()) + "; allowed: angles that rise, each one once");
            }
        }
    }

    /** Begins a curve of a joint's positive action, per side, held still, not gravity-corrected, without points. */
    static StrengthCurve of(Joint joint) {
        return new StrengthCurve(
                joint, true, joint.sides(), Optional.empty(), false, "not said", "not said", List.of());
    }

    /** Returns this curve for the joint's positive action: extension, plantarflexion at the ankle. */
    public StrengthCurve extension() {
        return new StrengthCurve(joint, true, sides, speed, gravityCorrected, neighbour, sample, points);
    }

    /** Returns this curve for the other action: flexion, dorsiflexion at the ankle. */
    public StrengthCurve flexion() {
        return new StrengthCurve(joint, false, sides, speed, gravityCorrected, neighbour, sample, points);
    }

    /** Returns this curve as measured on both sides together. */
    public StrengthCurve bothSides() {
        return new StrengthCurve(joint, positive, Sides.TOTAL, speed, gravityCorrected, neighbour, sample, points);
    }

    /** Returns this curve as measured held still. */
    public StrengthCurve heldStill() {
        return new StrengthCurve(joint, positive, sides, Optional.empty(), gravityCorrected, neighbour, sample, points);
    }

    /** Returns this curve as measured at a speed, shortening positive. */
    public StrengthCurve at(AngularVelocity measured) {
        return new StrengthCurve(
                joint, positive, sides, Optional.of(measured.si()), gravityCorrected, neighbour, sample, points);
    }

    /** Returns this curve with or without the weight of limb and machine taken out. */
    public StrengthCurve gravityCorrected(boolean corrected) {
        return new StrengthCurve(joint, positive, sides, speed, corrected, neighbour, sample, points);
    }

    /** Returns this curve with the neighbouring joint's angle in words, such as "hip at 85°". */
    public StrengthCurve neighbour(String angle) {
        return new StrengthCurve(joint, positive, sides, speed, gravityCorrected, angle, sample, points);
    }

    /** Returns this curve with who was measured, when and how. */
    public StrengthCurve sample(String who) {
        return new StrengthCurve(joint, positive, sides, speed, gravityCorrected, neighbour, who, points);
    }

    /** Returns this curve with one more measured point, at a larger flexion. */
    public StrengthCurve at(Angle flexion, Moment moment) {
        List<Point> more = new ArrayList<>(points);
        more.add(new Point(flexion.si(), moment.si()));
        return new StrengthCurve(joint, positive, sides, speed, gravityCorrected, neighbour, sample, more);
    }

    /**
     * Returns the strength at a flexion, N·m, as the joint is reported: per side for limbs.
     *
     * @throws IllegalArgumentException beyond the measured angles, or with fewer than two points
     */
    public double si(double flexion) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("a strength curve has " + points.size()
                    + " points; allowed: at least 2. Add .at(deg(…), newtonMetres(…))");
        }
        double first = points.get(0).flexion();
        double last = points.get(points.size() - 1).flexion();
        if (!(flexion >= first - 1e-9 && flexion <= last + 1e-9)) {
            throw new IllegalArgumentException("strength was measured from " + Angle.of(first) + " to "
                    + Angle.of(last) + " of " + joint.words() + " flexion, and is asked for at "
                    + Angle.of(flexion) + "; allowed: within what was measured");
        }
        int k = 0;
        while (k < points.size() - 2 && flexion > points.get(k + 1).flexion()) {
            k++;
        }
        Point from = points.get(k);
        Point to = points.get(k + 1);
        double part = (flexion - from.flexion()) / (to.flexion() - from.flexion());
        double moment = from.moment() + (to.moment() - from.moment()) * part;
        return sides == Sides.TOTAL && joint.sides() == Sides.PER_SIDE ? moment / 2 : moment;
    }

    /** Returns what was measured, in words: the note of everything that uses it. */
    public String words() {
        String way = speed.map(v -> "at " + AngularVelocity.of(v)).orElse("held still");
        return "Strength of " + joint.words() + " " + action() + ": "
                + (sides.words().isEmpty() ? "" : sides.words() + ", ") + way + ", "
                + (gravityCorrected ? "gravity-corrected" : "not gravity-corrected") + ", neighbouring joint: "
                + neighbour + ", measured on: " + sample + ".";
    }

    private String action() {
        return positive ? joint.positiveAction() : joint.negativeAction();
    }

    /** Returns the measured points as a curve over the joint's flexion. */
    public Curves curves() {
        List<Double> axis = new ArrayList<>();
        List<@Nullable Double> values = new ArrayList<>();
        for (Point point : points) {
            axis.add(point.flexion());
            values.add(si(point.flexion()));
        }
        return new Curves(
                "Strength of " + joint.words() + " " + action(),
                new Curves.Axis(joint.words() + " flexion", Unit.DEGREE, axis),
                List.of(Curves.Curve.of(
                        joint.words() + " " + action() + " strength", Unit.NEWTON_METRE, joint.sides(), values)),
                null,
                List.of(words()));
    }
}
