package leverwright.mechanics.exercise;

import java.util.List;
import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.working.Answer;

/**
 * A joint seen as a lever: the load on its arm against one equivalent muscle on its own.
 *
 * @param joint which joint
 * @param action which action carries the load, such as "knee extension": the one the moment asks for
 * @param load what pulls on the part beyond the joint, both sides together
 * @param loadArm its arm, never negative: it asks for that action
 * @param moment the moment of that action, never negative, per side or in total as it says
 * @param muscle the equivalent muscle; empty where no muscle arm is on file
 * @param squareShare part of a load on the segment beyond the joint that pulls square to it: the sine of its lean
 * @param squareShareByTilt the same by the tilt rule, lean over 90° (common practice, no source)
 * @param notes what must be said beside it
 */
public record LeverView(
        Joint joint,
        String action,
        Answer<Force> load,
        Answer<Length> loadArm,
        Answer<Moment> moment,
        Optional<Muscle> muscle,
        Answer<Ratio> squareShare,
        Answer<Ratio> squareShareByTilt,
        List<String> notes) {
    /** Copies the notes. */
    public LeverView {
        notes = List.copyOf(notes);
    }

    /**
     * The muscle's side of the lever.
     *
     * @param name the equivalent muscle
     * @param arm its arm, with its spread as a band
     * @param leverRatio muscle force over load: load arm over muscle arm
     * @param force the muscle's force, per side or in total as the moment
     * @param source where the arm comes from and how it was read
     */
    public record Muscle(
            String name, Answer<Length> arm, Answer<Ratio> leverRatio, Answer<Force> force, String source) {}
}
