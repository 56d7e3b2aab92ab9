package leverwright.run.result;

import java.util.List;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * One named number, with the hand calculation behind it.
 *
 * @param title what the number is, with its direction, for example {@code "hip extension moment"}
 * @param quantity the value, its band and its unit
 * @param sides whether it counts one side or the whole body
 * @param working the hand calculation, or null when the number is the cell's own arithmetic
 * @param workingOpen whether the working is the point of the result and shown unfolded
 * @param notes cautions and remarks
 */
public record NumberResult(
        String title,
        Quantity quantity,
        Sides sides,
        @Nullable Working working,
        boolean workingOpen,
        List<String> notes)
        implements Result {

    /** Copies the notes. */
    public NumberResult {
        notes = List.copyOf(notes);
    }
}
