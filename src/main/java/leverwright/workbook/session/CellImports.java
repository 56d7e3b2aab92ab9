package leverwright.workbook.session;

import java.util.List;

/**
 * What every cell may say without an import of its own. The names are text, so that this room sees neither the words of a
 * cell nor the mechanics.
 */
final class CellImports {

    /** The imports, in the order in which the compiler sees them. */
    static final List<String> STANDARD = List.of(
            "import java.util.*;",
            "import java.util.function.*;",
            "import java.util.stream.*;",
            "import leverwright.mechanics.measure.*;",
            "import leverwright.mechanics.working.*;",
            "import leverwright.mechanics.body.*;",
            "import leverwright.mechanics.exercise.*;",
            "import leverwright.mechanics.load.*;",
            "import leverwright.mechanics.motion.*;",
            "import leverwright.mechanics.numeric.Vector;",
            "import leverwright.mechanics.posture.Place;",
            "import leverwright.mechanics.muscle.*;",
            "import leverwright.mechanics.study.*;",
            "import static leverwright.mechanics.measure.Measures.*;",
            "import static leverwright.mechanics.measure.Sides.*;",
            "import static leverwright.mechanics.body.Lifter.lifter;",
            "import static leverwright.mechanics.body.Sex.*;",
            "import static leverwright.mechanics.body.Joint.*;",
            "import static leverwright.mechanics.body.Segment.*;",
            "import static leverwright.mechanics.body.Landmark.*;",
            "import static leverwright.mechanics.body.SegmentTable.*;",
            "import static leverwright.mechanics.load.Resistances.*;",
            "import static leverwright.mechanics.exercise.Exercises.*;",
            "import static leverwright.mechanics.exercise.Knobs.*;",
            "import static leverwright.mechanics.exercise.SetupKnobs.*;",
            "import static leverwright.mechanics.exercise.Plane.*;",
            "import static leverwright.mechanics.exercise.Readings.*;",
            "import static leverwright.mechanics.muscle.Muscle.*;",
            "import static leverwright.mechanics.muscle.MuscleGroup.*;",
            "import static leverwright.mechanics.muscle.MuscleInput.*;",
            "import static leverwright.mechanics.numeric.Sampling.*;",
            "import static leverwright.mechanics.study.Uncertainty.*;",
            "import static leverwright.mechanics.study.Variable.*;",
            "import static leverwright.mechanics.study.Studies.*;",
            "import static leverwright.mechanics.study.MuscleWords.*;",
            "import static leverwright.run.cell.Words.*;",
            "import static leverwright.run.cell.StudyWords.*;");

    private CellImports() {}
}
