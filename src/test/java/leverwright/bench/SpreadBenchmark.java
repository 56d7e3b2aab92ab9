package leverwright.bench;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Exercises;
import leverwright.mechanics.exercise.Knobs;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.muscle.MuscleGroup;
import leverwright.mechanics.muscle.MuscleInput;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.study.MuscleWords;
import leverwright.mechanics.study.Spread;
import leverwright.mechanics.study.Uncertainty;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Spreads of 100,000 draws of a squat with two unsure settings: a moment, a muscle's share, a share with muscles drawn too. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 3)
@Fork(1)
public class SpreadBenchmark {
    private static final int DRAWS = 100_000;

    /** How many threads work. */
    @Param({"1", "2"})
    private int threads;

    private ExecutorService pool;
    private Crew crew;
    private Spread spread;

    /** Makes the threads and the spread. */
    @Setup
    public void make() {
        pool = Executors.newFixedThreadPool(threads);
        crew = new Crew(pool, threads, () -> false, (done, all) -> {});
        Lifter ines = Lifter.lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));
        spread = Spread.of(Exercises.backSquat()
                        .barbell(kg(30))
                        .thighAboveLevel(deg(20))
                        .torsoLean(deg(40))
                        .by(ines))
                .vary(Knobs.TORSO_LEAN, Uncertainty.withinLimits(deg(5)))
                .vary(Knobs.BAR, Uncertainty.withinLimits(kg(2)))
                .draws(DRAWS);
    }

    /** Ends the threads. */
    @TearDown
    public void end() {
        pool.shutdownNow();
    }

    /** A joint's moment. */
    @Benchmark
    public double moment() {
        return spread.of(crew, Readings.moment(Joint.HIP)).mean(0);
    }

    /** The share of capacity of some muscles: sharing in every draw. */
    @Benchmark
    public double capacityUsed() {
        return spread.of(crew, MuscleWords.capacityUsed(MuscleGroup.VASTI)).mean(0);
    }

    /** The same with areas, arms and tensions drawn too. */
    @Benchmark
    public double capacityUsedOfDrawnMuscles() {
        return spread.vary(MuscleInput.MUSCLE_AREAS)
                .vary(MuscleInput.MUSCLE_ARMS)
                .vary(MuscleInput.SPECIFIC_TENSIONS)
                .of(crew, MuscleWords.capacityUsed(MuscleGroup.VASTI))
                .mean(0);
    }
}
