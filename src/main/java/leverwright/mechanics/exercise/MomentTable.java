package leverwright.mechanics.exercise;

import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.working.Answer;

/**
 * What some joints bear, row by row.
 *
 * @param title exercise and lifter
 * @param rows one per joint, in the order asked for
 * @param closure whether the moments of both cuts of every joint agree
 * @param notes what must be said beside the table
 */
public record MomentTable(String title, List<Row> rows, BothCuts closure, List<String> notes) {
    /** Copies the lists. */
    public MomentTable {
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /**
     * A joint's row. The moment counts the joint's positive action and says whether it is per side or in total.
     *
     * @param joint which joint
     * @param action what the moment is of, such as "hip extension"
     * @param moment of that action; negative where the opposite action is asked for
     * @param load what pulls on the part beyond the joint: the weight of all of it, both sides together
     * @param loadArm arm of that load, positive where it asks for the joint's positive action
     */
    public record Row(Joint joint, String action, Answer<Moment> moment, Answer<Force> load, Answer<Length> loadArm) {}
}
