package leverwright.mechanics.study;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.muscle.Axis;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;

/**
 * How well what an exercise asks of a joint follows what the muscles could give, over the whole way: the least over the mean of
 * strength ÷ resistance. 1 when strength would run out everywhere at once; 0 when somewhere on the way the exercise asks nothing
 * of the action, or asks the other one. The strength is the greatest moment that the muscles on file can make about the joint
 * alone at each angle.
 */
final class MatchReading {
    private MatchReading() {}

    /** Least and mean of strength ÷ resistance on the way. */
    private record Found(double least, double mean) {
        double match() {
            return Double.isInfinite(mean) ? 0 : least / mean;
        }
    }

    static Reading<Ratio> of(Joint joint, MuscleModel model) {
        String label = "match of the " + joint.words();
        ToDoubleFunction<HeldPosture> si = held -> found(held, joint, model).match();
        Reading<Ratio> reading = Reading.of(label, Unit.PERCENT, Sides.NOT_SIDED, si, held -> {
            Found found = found(held, joint, model);
            Ratio value = Ratio.of(found.match());
            return Answer.of(label, value, Sides.NOT_SIDED, () -> working(label, found, value))
                    .shownIn(Unit.PERCENT)
                    .noted(List.of(
                            "Match: least over mean of strength ÷ resistance at " + Measured.PLACES + " postures, "
                                    + Measured.course(held.performance()) + ".",
                            "Strength: the greatest moment of the muscles on file about this joint alone. "
                                    + model.basis(held.performance().lifter())));
        });
        return reading.ofMuscles(change -> of(joint, change.apply(model)));
    }

    private static Working working(String label, Found found, Ratio value) {
        if (found.match() == 0) {
            return Working.given(label, "match", value, "somewhere on the way nothing is asked of the action");
        }
        return Working.of(
                label,
                List.of(Step.of(
                        "match",
                        Expression.symbol("q_least", Ratio.of(found.least()), "least strength over resistance")
                                .dividedBy(Expression.symbol("q_mean", Ratio.of(found.mean()), "mean of them")),
                        value,
                        "1 when strength runs out everywhere at once")));
    }

    private static Found found(HeldPosture held, Joint joint, MuscleModel model) {
        List<HeldPosture> way = Measured.way(held.performance());
        Axis axis = axis(held, joint);
        Reading<?> moment = Readings.moment(joint);
        double together = 0;
        double[] moments = new double[way.size()];
        for (int k = 0; k < moments.length; k++) {
            moments[k] = moment.si(way.get(k));
            together += moments[k];
        }
        boolean positive = together >= 0;
        MuscleModel own = Shares.own(held, model);
        double least = Double.POSITIVE_INFINITY;
        double sum = 0;
        for (int k = 0; k < moments.length; k++) {
            double asked = positive ? moments[k] : -moments[k];
            double angle = axis == Axis.LOW_BACK ? 0 : Readings.flexion(joint).si(way.get(k));
            double strength = own.greatestMoment(held.performance().lifter(), axis, positive, angle);
            double ratio = asked > 0 ? strength / asked : Double.POSITIVE_INFINITY;
            least = Math.min(least, ratio);
            sum += ratio;
        }
        if (Double.isInfinite(least)) {
            throw new IllegalArgumentException(
                    "the exercise asks nothing of the " + joint.words() + " anywhere on its way");
        }
        return new Found(least, sum / moments.length);
    }

    private static Axis axis(HeldPosture held, Joint joint) {
        Map<Joint, Axis> byJoint = new EnumMap<>(Joint.class);
        Shares.axes(held).forEach(part -> part.forEach(axis -> byJoint.put(axis.joint(), axis)));
        Axis axis = byJoint.get(joint);
        if (axis == null) {
            throw new IllegalArgumentException("no muscle on file turns the " + joint.words()
                    + " in this plane; ask for" + " the match of another joint");
        }
        return axis;
    }
}
