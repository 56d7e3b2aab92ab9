package leverwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Catalogue;
import leverwright.mechanics.exercise.Course;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.study.Studies;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One exercise of the catalogue by one lifter: 201 points of its usual way, all in step, the moments of all
 * joints that are known and the compression of the low back. The goal is 1 ms.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class CatalogueBenchmark {
    private static final int POINTS = 201;

    /** The exercise: standing with balance, a machine, a search for what hangs balanced, two contacts, a plane of its own. */
    @Param({
        "Back squat",
        "Front squat",
        "Leg press",
        "Cable curl",
        "Overhead press",
        "Hip thrust",
        "Pull-up",
        "Push-up, hands raised",
        "Bench press",
        "Lateral raise",
        "Split squat",
        "Low-bar squat",
        "Goblet squat",
        "Loaded carry",
        "Straight-arm pulldown"
    })
    public String name = "";

    private Performance performance;
    private Course course;
    private final List<Reading<?>> readings = new ArrayList<>();

    /** Finds the exercise and which of its joints are known. */
    @Setup(Level.Trial)
    public void find() {
        Exercise<?> exercise = Catalogue.named(name);
        performance = exercise.by(Lifter.lifter("Ines").of(Sex.FEMALE, Measures.cm(178), Measures.kg(71)))
                .alongItsWay();
        course = exercise.course().orElseThrow();
        HeldPosture held = performance.posture();
        for (Joint joint : Joint.values()) {
            add(held, Readings.moment(joint));
        }
        add(held, Studies.compression(Joint.LOW_BACK));
    }

    private void add(HeldPosture held, Reading<?> reading) {
        try {
            reading.si(held);
            readings.add(reading);
        } catch (IllegalArgumentException shared) {
            return;
        }
    }

    /** Sums the moments, so that none is left out. */
    @Benchmark
    public double throughTheRange() {
        double sum = 0;
        for (int k = 0; k < POINTS; k++) {
            double setting = course.from() + (course.to() - course.from()) * k / (POINTS - 1);
            HeldPosture held = performance.withSi(course.knob(), setting).posture();
            for (Reading<?> reading : readings) {
                sum += reading.si(held);
            }
        }
        return sum;
    }
}
