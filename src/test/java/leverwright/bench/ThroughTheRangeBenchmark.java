package leverwright.bench;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;

import java.util.List;
import java.util.concurrent.TimeUnit;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Exercises;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knobs;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.study.Repetition;
import leverwright.mechanics.study.Studies;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * One squat by one lifter through 201 settings: every joint's moment, compression and shear of the low back; and, apart, a
 * whole repetition in motion with its energy account. The goal of the first is 1 ms; nothing else is compared with it.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ThroughTheRangeBenchmark {
    private static final int POINTS = 201;

    private final Performance squat = Exercises.backSquat()
            .barbell(kg(60))
            .torsoLean(deg(40))
            .by(Lifter.lifter("Ines").of(Sex.FEMALE, cm(178), kg(71)));
    private final List<Reading<Moment>> moments =
            List.of(Joint.ANKLE, Joint.KNEE, Joint.HIP, Joint.LOW_BACK, Joint.SHOULDER, Joint.ELBOW, Joint.WRIST)
                    .stream()
                    .map(Readings::moment)
                    .toList();
    private final Reading<?> compression = Studies.compression(Joint.LOW_BACK);
    private final Repetition repetition = Studies.repetition(squat).through(Knobs.THIGH_ABOVE_LEVEL, deg(70), deg(0));

    /** All joints and the spine at 201 postures. */
    @Benchmark
    public void jointsAndSpine(Blackhole consumer) {
        double sum = 0;
        for (int k = 0; k < POINTS; k++) {
            HeldPosture held = squat.withSi(Knobs.THIGH_ABOVE_LEVEL, deg(70).si() * k / (POINTS - 1))
                    .posture();
            for (Reading<Moment> moment : moments) {
                sum += moment.si(held);
            }
            sum += compression.si(held);
        }
        consumer.consume(sum);
    }

    /** A repetition from its 65 postures to its energy account. */
    @Benchmark
    public void repetitionWithItsEnergyAccount(Blackhole consumer) {
        consumer.consume(repetition.tempo(repetition.tempo()).energies());
    }
}
