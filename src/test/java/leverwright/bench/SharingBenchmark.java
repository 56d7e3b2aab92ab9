package leverwright.bench;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import leverwright.mechanics.muscle.CubicSharing;
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
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * Sharing problems a second, one at a time, through the solver of the cells: set, solved, two forces read. The peer, {@code
 * cpp_dual_newton_1} of {@code src/test/peers/share.cpp}, solves the same 4096; run it in the same minutes on the same core.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class SharingBenchmark {
    private static final int COUNT = 4096;

    private final CubicSharing solver = new CubicSharing(SharingProblems.MUSCLES);
    private SharingProblems problems;

    /** Reads the problems. */
    @Setup
    public void read() throws IOException {
        problems = new SharingProblems();
    }

    /** Solves all problems, one after another. */
    @Benchmark
    @OperationsPerInvocation(COUNT)
    public void solveOneAtATime(Blackhole consumer) {
        for (int i = 0; i < COUNT; i++) {
            problems.set(solver, i);
            if (!solver.solve()) {
                throw new IllegalStateException("problem " + i + " did not settle");
            }
            consumer.consume(solver.force(0) + solver.force(8));
        }
    }
}
