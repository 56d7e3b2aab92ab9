package leverwright.mechanics.study;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.muscle.Muscles;

/** The words about muscles: {@code table(shares(held))}, {@code chart(capacityUsed(VASTI))}, {@code greatestLoad(…)}. */
public final class MuscleWords {
    private MuscleWords() {}

    /** Returns the model of the muscles, to be told another rule, a test, co-contraction. */
    public static MuscleModel muscles() {
        return MuscleModel.standard();
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

    /** Begins a comparison of exercises for a target: {@code forTarget(VASTI).of(squat.by(ines)).of(extend.by(ines))}. */
    public static TargetComparison forTarget(Muscles target) {
        return TargetComparison.of(target);
    }

    /** Begins the quick estimate of the trade: {@code handEstimate(KNEE).shareAbove(percent(88)).bar(kg(60)).by(ines)}. */
    public static HandEstimate handEstimate(Joint joint) {
        return HandEstimate.of(joint);
    }
}
