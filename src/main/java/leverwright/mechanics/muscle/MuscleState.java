package leverwright.mechanics.muscle;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leverwright.mechanics.body.ReadingStatus;

/**
 * What a muscle can do in a posture. One side; muscles of the trunk both sides together.
 *
 * @param muscle which
 * @param arms m, by axis; positive for the positive action
 * @param area m², scaled to the lifter
 * @param tension Pa, calibrated
 * @param length of its fibres over their optimum
 * @param lengthFactor 0.1 to 1
 * @param pennation rad
 * @param cosine of the pennation, or 1 where that is switched off
 * @param speedFactor 1 when held still
 * @param capacity N, the product of it all
 * @param status the least sure number behind it
 * @param marks what must be said beside it: extrapolated, from memory
 */
public record MuscleState(
        Muscle muscle,
        Map<Axis, Double> arms,
        double area,
        double tension,
        double length,
        double lengthFactor,
        double pennation,
        double cosine,
        double speedFactor,
        double capacity,
        ReadingStatus status,
        List<String> marks) {
    /** Copies the arms. */
    public MuscleState {
        Map<Axis, Double> copy = new EnumMap<>(Axis.class);
        copy.putAll(arms);
        arms = Collections.unmodifiableMap(copy);
        marks = List.copyOf(marks);
    }
}
