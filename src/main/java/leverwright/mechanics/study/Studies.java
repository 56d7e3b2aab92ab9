package leverwright.mechanics.study;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Population;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Force;
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
}
