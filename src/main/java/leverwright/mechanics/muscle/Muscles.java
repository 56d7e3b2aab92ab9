package leverwright.mechanics.muscle;

import java.util.List;

/** One muscle, or several that are named together. */
public sealed interface Muscles permits Muscle, MuscleGroup {
    /** Returns the muscles, at least one. */
    List<Muscle> members();

    /** Returns the name for print. */
    String words();
}
