package leverwright.run.cell;

import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.LOW_BACK;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;

import java.util.Map;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Exercises;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.run.wire.ResultBytes;

/** Loads what nearly every cell needs while a worker waits for its first one; what it computes is thrown away. */
public final class WarmUp {

    private WarmUp() {}

    /** Holds one posture and makes a figure and a table of it, on the calling thread. */
    public static void run() {
        CellSink sink = CellSink.open(0, Map.of(), true);
        try {
            HeldPosture held = Exercises.romanianDeadlift()
                    .barbell(kg(20))
                    .torsoLean(deg(45))
                    .by(Lifter.lifter("nobody").of(Sex.FEMALE, cm(170), kg(65)))
                    .posture();
            Words.figure(held).loadArms(HIP);
            Words.table(held.moments(HIP, LOW_BACK));
            sink.finish().forEach(ResultBytes::of);
        } finally {
            sink.close();
        }
    }
}
