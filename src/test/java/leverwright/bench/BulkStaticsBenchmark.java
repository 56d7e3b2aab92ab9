package leverwright.bench;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import leverwright.mechanics.bulk.BulkSolution;
import leverwright.mechanics.bulk.BulkStatics;
import leverwright.mechanics.bulk.Column;
import leverwright.mechanics.equilibrium.GroundSupport;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Static solves a second over arrays, of the linkage in {@code src/test/peers/model.h} built at run time: ten inputs and seven
 * results a scenario. Held against numpy over a million scenarios and plain C over 4,096 in {@code src/test/peers/bench.sh};
 * columns are made, and with that checked, beforehand. Pin one core ({@code taskset -c 1}) but for the two threads.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class BulkStaticsBenchmark {
    private static final int MILLION = 1_000_000;
    private static final double UP = 1.5707963267948966;

    private final ExecutorService threads = Executors.newFixedThreadPool(2);
    private final Crew two = new Crew(threads, 2, () -> false, (done, all) -> {});
    private BulkStatics few;
    private BulkSolution fewFound;
    private BulkStatics many;
    private BulkSolution manyFound;

    /** Builds the linkage and draws the inputs. */
    @Setup
    public void build() {
        Linkage linkage = StandingPerson.solver().linkage();
        few = statics(linkage, StandingPerson.COUNT);
        fewFound = BulkSolution.moments(linkage, StandingPerson.COUNT);
        many = statics(linkage, MILLION);
        manyFound = BulkSolution.moments(linkage, MILLION);
    }

    /** Ends the threads. */
    @TearDown
    public void end() {
        threads.shutdown();
    }

    private static BulkStatics statics(Linkage linkage, int count) {
        double[][] drawn = StandingPerson.inputs(1);
        double[][] inputs = new double[drawn.length][count];
        for (int k = 0; k < drawn.length; k++) {
            for (int i = 0; i < count; i++) {
                inputs[k][i] = drawn[k][i % StandingPerson.COUNT] + (k < 6 ? 1e-7 * (i / StandingPerson.COUNT) : 0);
            }
        }
        BulkStatics statics = BulkStatics.of(
                linkage,
                List.of(
                        new MassLoad("trunk", Place.along(StandingPerson.LENGTHS[3]), 20),
                        new ForceLoad("hand", Place.along(StandingPerson.CENTRES[6]), 0, 0)),
                new GroundSupport("foot"));
        for (int k = 0; k < 6; k++) {
            Column lean = Column.of(inputs[k]);
            statics.direction(k + 1, k < 3 ? lean.times(-1).plus(UP) : lean.plus(-UP));
        }
        for (int k = 0; k < StandingPerson.FRACTIONS.length; k++) {
            statics.mass(k, Column.of(inputs[6]).times(StandingPerson.FRACTIONS[k]));
        }
        return statics.loadMass(0, Column.of(inputs[7])).loadForce(1, Column.of(inputs[8]), Column.of(inputs[9]));
    }

    /** 4,096 scenarios, whose arrays stay in the second cache. */
    @Benchmark
    @OperationsPerInvocation(StandingPerson.COUNT)
    public BulkSolution inCache() {
        few.solve(Crew.alone(), fewFound);
        return fewFound;
    }

    /** A million scenarios on one thread. */
    @Benchmark
    @OperationsPerInvocation(MILLION)
    public BulkSolution million() {
        many.solve(Crew.alone(), manyFound);
        return manyFound;
    }

    /** A million scenarios on two threads. */
    @Benchmark
    @OperationsPerInvocation(MILLION)
    public BulkSolution millionByTwoThreads() {
        many.solve(two, manyFound);
        return manyFound;
    }
}
