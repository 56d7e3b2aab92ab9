package leverwright.bench;

import java.util.LinkedHashMap;
import java.util.Map;
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
import leverwright.mechanics.measure.Moment;
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

/** One exercise of the catalogue by one lifter: 201 points of its usual range, the moments of all joints that are known. */
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
        "Split squat"
    })
    public String name = "";

    private Performance performance;
    private Course course;
    private final Map<Joint, Reading<Moment>> readings = new LinkedHashMap<>();

    /** Finds the exercise and which of its joints are known. */
    @Setup(Level.Trial)
    public void find() {
        Exercise<?> exercise = Catalogue.named(name);
        performance = exercise.by(Lifter.lifter("Ines").of(Sex.FEMALE, Measures.cm(178), Measures.kg(71)));
        course = exercise.course().orElseThrow();
        HeldPosture held = performance.posture();
        for (Joint joint : Joint.values()) {
            Reading<Moment> reading = Readings.moment(joint);
            try {
                reading.si(held);
                readings.put(joint, reading);
            } catch (IllegalArgumentException carried) {
                continue;
            }
        }
    }

    /** Sums the moments, so that none is left out. */
    @Benchmark
    public double throughTheRange() {
        double sum = 0;
        for (int k = 0; k < POINTS; k++) {
            double setting = course.from() + (course.to() - course.from()) * k / (POINTS - 1);
            HeldPosture held = performance.withSi(course.knob(), setting).posture();
            for (Reading<Moment> reading : readings.values()) {
                sum += reading.si(held);
            }
        }
        return sum;
    }
}
