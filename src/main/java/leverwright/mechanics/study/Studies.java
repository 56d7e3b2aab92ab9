package leverwright.mechanics.study;

import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Population;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Duration;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Power;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.measure.Work;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Listing;

/** The words with which a cell begins a study, as in {@code repetition(squat.by(ines)).through(TORSO_LEAN, …)}. */
public final class Studies {
    private Studies() {}

    /** Returns the women or men of the survey: {@code population(FEMALE).random(7, 100)}. */
    public static Population population(Sex sex) {
        return Population.population(sex);
    }

    /** Returns two bodies side by side: lengths and masses, and their ratios. */
    public static Listing people(Lifter one, Lifter other) {
        return People.bodies(one, other);
    }

    /**
     * Returns what one exercise asks of two people at the same settings.
     *
     * @param readings at least one
     */
    public static Listing people(Exercise<?> exercise, Lifter one, Lifter other, Reading<?>... readings) {
        return People.at(exercise, one, other, readings);
    }

    /** Begins a repetition: tell which knob moves, from where to where, and the tempo. */
    public static Repetition.Of repetition(Performance performance) {
        return new Repetition.Of(performance);
    }

    /** Returns the low back's model with the published inputs: {@code spine().extensorArm(cm(5)).of(held)}. */
    public static Spine spine() {
        return Spine.standard();
    }

    /** Returns what the joint's surfaces press on each other with, by one equivalent muscle, as a table. */
    public static Listing contact(HeldPosture held, Joint joint) {
        return joint == Joint.LOW_BACK ? Spine.standard().of(held) : Contact.listing(held, joint);
    }

    /** Returns the compression of a joint as a reading: along the bone; of the low back across the disc. */
    public static Reading<Force> compression(Joint joint) {
        return joint == Joint.LOW_BACK ? Spine.standard().compression() : Contact.compression(joint);
    }

    /**
     * Returns the shear of a joint as a reading: the force of the near segment's face on the far part along that face, to the
     * right of the bone seen along it (forward, for a bone that points up). At the knee positive means that the shank tends to
     * slide forward under the thigh, negative that it tends to slide backward. Of the low back it is what would push the trunk
     * forward over the pelvis.
     */
    public static Reading<Force> shear(Joint joint) {
        return joint == Joint.LOW_BACK ? Spine.standard().shear() : Contact.shear(joint);
    }

    /** Returns the whole contact force of a joint as a reading. */
    public static Reading<Force> contactForce(Joint joint) {
        return Contact.force(joint);
    }

    /**
     * Begins a resistance curve: {@code resistance(extend.by(ines), KNEE_FLEXION, deg(10), deg(90)).extension(KNEE)}.
     *
     * @param knob that is turned
     * @param from smaller setting
     * @param to larger setting
     */
    public static <Q extends Measure<Q>> ResistanceCurve.Through resistance(
            Performance performance, Knob<Q> knob, Q from, Q to) {
        return new ResistanceCurve.Through(performance, knob, from, to);
    }

    /** Begins a measured strength curve: say what it is, then add its points. */
    public static StrengthCurve strength(Joint joint) {
        return StrengthCurve.of(joint);
    }

    /** Asks whether the plane is enough: tell how far legs or arms are turned out, then {@code check()} or {@code posture()}. */
    public static OutOfPlane turnedOut(Performance performance) {
        return OutOfPlane.of(performance);
    }

    /**
     * Returns a comparison of two postures joint by joint: one in which the limb's far end stands still and one in which it
     * moves. What differs is told apart into what acts on the limb from outside and the limb's own weight.
     *
     * @param joints of a limb, at least one
     */
    public static Listing whichEndMoves(HeldPosture one, HeldPosture other, Joint... joints) {
        return WhichEnd.moves(one, other, List.of(joints));
    }

    /** Begins the ledger of a training session; 90 s between sets unless told. */
    public static TrainingSession session(String name) {
        return new TrainingSession(name, List.of(), Duration.of(90));
    }

    /**
     * Returns what a parallel squat costs in energy while light sets last, by the regression of Robergs 2007.
     *
     * @param load 20 to 80 kg
     * @param distance way of the bar, 0.3 to 0.8 m
     * @throws IllegalArgumentException outside those limits
     */
    public static Answer<Power> energyCostOfSquat(Mass load, Length distance) {
        return EnergyCost.squat(load, distance);
    }

    /**
     * Returns what a bench press costs in energy while light sets last, by the regression of Robergs 2007.
     *
     * @param load 20 to 60 kg
     * @param distance way of the bar, 0.2 to 0.6 m
     * @throws IllegalArgumentException outside those limits
     */
    public static Answer<Power> energyCostOfBenchPress(Mass load, Length distance) {
        return EnergyCost.benchPress(load, distance);
    }

    /** Returns the greatest value of a reading on the way of the exercise as a reading: {@code peak(moment(HIP))}. */
    public static <M extends Measure<M>> Reading<M> peak(Reading<M> reading) {
        return Measured.peak(reading);
    }

    /** Returns the least value of a reading on the way of the exercise as a reading. */
    public static <M extends Measure<M>> Reading<M> least(Reading<M> reading) {
        return Measured.least(reading);
    }

    /** Returns the mean of a reading over evenly spaced postures on the way of the exercise as a reading. */
    public static <M extends Measure<M>> Reading<M> mean(Reading<M> reading) {
        return Measured.mean(reading);
    }

    /**
     * Returns two readings together as one: {@code sum(moment(KNEE), moment(HIP))}.
     *
     * @throws IllegalArgumentException if they are of different kinds or sides
     */
    public static <M extends Measure<M>> Reading<M> sum(Reading<M> one, Reading<M> other) {
        return Measured.sum(one, other);
    }

    /**
     * Returns one reading less another as one.
     *
     * @throws IllegalArgumentException if they are of different kinds or sides
     */
    public static <M extends Measure<M>> Reading<M> difference(Reading<M> one, Reading<M> other) {
        return Measured.difference(one, other);
    }

    /**
     * Begins to look for the settings of a knob that give a wanted value: {@code solveFor(BAR).in(hinge.by(ines))
     * .gives(moment(HIP), newtonMetres(120))}.
     */
    public static <Q extends Measure<Q>> SolveFor<Q> solveFor(Knob<Q> knob) {
        return SolveFor.of(Variable.of(knob));
    }

    /** Begins to look for the settings of a variable that give a wanted value: {@code solveFor(lengthOf(THIGH))}. */
    public static <Q extends Measure<Q>> SolveFor<Q> solveFor(Variable<Q> variable) {
        return SolveFor.of(variable);
    }

    /** Begins to look for where two exercises ask the same while a knob that both have is turned. */
    public static <Q extends Measure<Q>> BreakEven<Q> breakEven(Knob<Q> knob) {
        return BreakEven.of(Variable.of(knob));
    }

    /** Begins to look for where two performances ask the same while a variable is turned, such as the body mass. */
    public static <Q extends Measure<Q>> BreakEven<Q> breakEven(Variable<Q> variable) {
        return BreakEven.of(variable);
    }

    /**
     * Begins to look for where two exercises ask the same while something of a cell's own is turned: {@code breakEven("Load",
     * kg(2), kg(20)).between(load -> curl.dumbbells(load).by(ines), load -> onCable(load).by(ines))}.
     *
     * @param name what it is, for print
     * @param least its smallest value
     * @param most its largest value
     * @throws IllegalArgumentException if the name is blank or the limits do not rise
     */
    public static <Q extends Measure<Q>> BreakEven.Own<Q> breakEven(String name, Q least, Q most) {
        return new BreakEven.Own<>(name, least, most);
    }

    /** Begins a search for the best setting under limits: say what may be turned, what must be kept, what shall be most. */
    public static BestSetting search(Performance performance) {
        return BestSetting.of(performance);
    }

    /**
     * Returns the match of strength and resistance of a joint on the way of the exercise as a reading: least over mean of
     * strength ÷ resistance, with the strength of the muscles on file.
     */
    public static Reading<Ratio> match(Joint joint) {
        return MatchReading.of(joint, MuscleModel.standard());
    }

    /** Returns the match of strength and resistance of a joint by a model of the muscles as a reading. */
    public static Reading<Ratio> match(Joint joint, MuscleModel model) {
        return MatchReading.of(joint, model);
    }

    /**
     * Returns the work against weights and loads where they are lifted, in one repetition along the way of the exercise at its
     * usual tempo, as a reading; both sides together.
     */
    public static Reading<Work> liftingWork() {
        return Reading.of(
                "lifting work",
                Unit.JOULE,
                Sides.TOTAL,
                held -> repetition(held.performance()).alongItsWay().energies().lifting(),
                held -> repetition(held.performance()).alongItsWay().liftingWork());
    }
}
