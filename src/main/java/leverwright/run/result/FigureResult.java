package leverwright.run.result;

import java.util.List;
import leverwright.mechanics.working.Sketch;

/**
 * A drawing of the lifter in a posture: segments, joints, forces and load arms.
 *
 * @param title what the figure shows
 * @param description the figure in words, for readers who do not see it
 * @param sketch the shapes, in metres, x forward and y up
 * @param notes cautions and remarks
 */
public record FigureResult(String title, String description, Sketch sketch, List<String> notes) implements Result {

    /** Copies the notes. */
    public FigureResult {
        notes = List.copyOf(notes);
    }
}
