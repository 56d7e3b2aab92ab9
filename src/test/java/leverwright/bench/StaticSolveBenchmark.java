package leverwright.bench;

import java.util.concurrent.TimeUnit;
import leverwright.mechanics.equilibrium.LinkageSolver;
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
 * Static solves a second, one at a time, of the linkage in {@code src/test/peers/model.h}: inputs set, solved by
 * {@link LinkageSolver#solve}, both cuts of all joints and the centre of pressure read. The peer in
 * {@code src/test/peers/bench.sh} computes one cut; run it in the same minutes on the same core.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class StaticSolveBenchmark {
    private LinkageSolver solver;
    private double[][] scenarios;

    /** Builds the linkage at run time and draws the inputs. */
    @Setup
    public void build() {
        solver = StandingPerson.solver();
        double[][] rows = StandingPerson.inputs(1);
        scenarios = new double[StandingPerson.COUNT][10];
        for (int i = 0; i < StandingPerson.COUNT; i++) {
            for (int k = 0; k < 10; k++) {
                scenarios[i][k] = rows[k][i];
            }
        }
    }

    /** Solves all scenarios, one after another, and consumes every result. */
    @Benchmark
    @OperationsPerInvocation(StandingPerson.COUNT)
    public void solveOneAtATime(Blackhole consumer) {
        for (double[] scenario : scenarios) {
            StandingPerson.set(solver, scenario);
            solver.solve();
            double sum = solver.centreOfPressure();
            for (int joint = 1; joint < 7; joint++) {
                sum += solver.moment(joint) + solver.supportSideMoment(joint);
            }
            consumer.consume(sum);
        }
    }
}
