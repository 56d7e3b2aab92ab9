package leverwright.mechanics.study;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.StrengthTest;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Plane;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.muscle.Axis;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.muscle.Muscles;
import leverwright.mechanics.muscle.TestedStrength;

/** The words about muscles: {@code table(shares(held))}, {@code chart(capacityUsed(VASTI))}, {@code greatestLoad(…)}. */
public final class MuscleWords {
    private MuscleWords() {}

    /** Returns the model of the muscles, to be told another rule, a test, co-contraction. */
    public static MuscleModel muscles() {
        return MuscleModel.standard();
    }

    /**
     * Returns a model calibrated by a tested lift: held for one repetition the joint would bear its moment in the posture that is
     * set times 1 + repetitions/30 (B. Epley's rule, common practice, from memory). The joint must have been what stopped the
     * lift, which the model cannot know.
     *
     * @param performance the lift at the load that was tested, in its hardest posture
     * @param joint what stopped it, as in a single-joint exercise
     * @param repetitions until no more could be done, 1 to 20
     * @throws IllegalArgumentException if the repetitions lie outside their range or the exercise is not seen from the side
     */
    public static MuscleModel testedLift(Performance performance, Joint joint, int repetitions) {
        return testedLift(MuscleModel.standard(), performance, joint, repetitions);
    }

    /** Returns a model with one more tested lift; see {@link #testedLift(Performance, Joint, int)}. */
    public static MuscleModel testedLift(MuscleModel model, Performance performance, Joint joint, int repetitions) {
        TestedStrength found = lifted(performance, joint, repetitions);
        return model.tested(found);
    }

    /**
     * Returns a lifter with one more tested lift, by which every word about muscles then calibrates them: {@code
     * testedBy(kneeExtension().stack(kg(45)).kneeFlexion(deg(60)).by(ines), KNEE, 8)}; see {@link #testedLift(Performance,
     * Joint, int)}.
     */
    public static Lifter testedBy(Performance performance, Joint joint, int repetitions) {
        TestedStrength found = lifted(performance, joint, repetitions);
        return performance.lifter().tested(new StrengthTest(joint, found.moment(), found.angle(), found.how()));
    }

    private static TestedStrength lifted(Performance performance, Joint joint, int repetitions) {
        if (repetitions < 1 || repetitions > 20) {
            throw new IllegalArgumentException("the tested lift has " + repetitions
                    + " repetitions; allowed: 1 to 20, beyond which the rule says nothing");
        }
        HeldPosture held = performance.posture();
        if (held.plane() != Plane.SAGITTAL || joint == Joint.NECK) {
            throw new IllegalArgumentException(
                    "a tested lift needs an exercise seen from the side and a joint with muscles on"
                            + " file; enter a dynamometer reading by tested(axis, moment, angle)");
        }
        double factor = repetitions == 1 ? 1 : 1 + repetitions / 30.0;
        double moment = Readings.moment(joint).si(held) * factor;
        double angle = joint == Joint.LOW_BACK ? 0 : Readings.flexion(joint).si(held);
        return new TestedStrength(
                Axis.valueOf(joint.name()),
                Moment.of(moment),
                Angle.of(angle),
                "tested lift, " + performance.exercise() + ", repetitions " + repetitions);
    }

    /** Returns how the muscles share the moments of a posture, by the standard model. */
    public static Shares shares(HeldPosture held) {
        return new Shares(held, MuscleModel.standard());
    }

    /** Returns how the muscles share the moments of a posture, by a model. */
    public static Shares shares(HeldPosture held, MuscleModel model) {
        return new Shares(held, model);
    }

    /** Returns the share of capacity of some muscles as a reading. */
    public static Reading<Ratio> capacityUsed(Muscles muscles) {
        return Shares.capacityUsed(muscles, MuscleModel.standard());
    }

    /** Returns the share of capacity of some muscles by a model as a reading. */
    public static Reading<Ratio> capacityUsed(Muscles muscles, MuscleModel model) {
        return Shares.capacityUsed(muscles, model);
    }

    /** Returns the force of some muscles as a reading. */
    public static Reading<Force> force(Muscles muscles) {
        return Shares.force(muscles, MuscleModel.standard());
    }

    /** Returns the force of some muscles by a model as a reading. */
    public static Reading<Force> force(Muscles muscles, MuscleModel model) {
        return Shares.force(muscles, model);
    }

    /** Returns the length of some muscles' fibres over their optimum as a reading. */
    public static Reading<Ratio> lengthOverOptimum(Muscles muscles) {
        return Shares.length(muscles, MuscleModel.standard());
    }

    /** Returns the greatest load that the model holds, to be asked through a range: {@code greatestLoad(squat.by(ines), BAR)}. */
    public static <Q extends Measure<Q>> GreatestLoad<Q> greatestLoad(Performance performance, Knob<Q> load) {
        return new GreatestLoad<>(performance, load, MuscleModel.standard(), null, 0, 0);
    }

    /** Returns the greatest load that the model holds in the posture that is set as a reading: {@code greatestLoad(BAR)}. */
    public static <Q extends Measure<Q>> Reading<Q> greatestLoad(Knob<Q> load) {
        return greatestLoad(load, MuscleModel.standard());
    }

    /** Returns the greatest load that a model holds in the posture that is set as a reading. */
    public static <Q extends Measure<Q>> Reading<Q> greatestLoad(Knob<Q> load, MuscleModel model) {
        Reading<Q> reading = Reading.of(
                "greatest " + load.name() + " that the model holds",
                load.unit(),
                Sides.TOTAL,
                held -> greatestLoad(held.performance(), load).with(model).si(),
                held -> greatestLoad(held.performance(), load)
                        .with(model)
                        .load()
                        .shownIn(load.unit()));
        return reading.ofMuscles(change -> greatestLoad(load, change.apply(model)));
    }

    /** Begins a comparison of exercises for a target: {@code forTarget(VASTI).of(squat.by(ines)).of(extend.by(ines))}. */
    public static TargetComparison forTarget(Muscles target) {
        return TargetComparison.of(target);
    }

    /** Begins the quick estimate of the trade: {@code handEstimate(KNEE).shareAbove(percent(88)).bar(kg(60)).by(ines)}. */
    public static HandEstimate handEstimate(Joint joint) {
        return HandEstimate.of(joint);
    }
}
