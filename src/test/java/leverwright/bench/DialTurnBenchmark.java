package leverwright.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import leverwright.run.result.CellState;
import leverwright.workbook.document.WorkbookFiles;
import leverwright.workbook.session.CellScript;
import leverwright.workbook.session.RunReport;
import leverwright.workbook.session.Session;
import leverwright.workbook.session.SessionOptions;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One turn of the dial "Torso lean" of the demo workbook: the setting goes to the worker, the cells are computed, their
 * results encoded, sent and decoded. The first 50 turns are not counted. The session's Java has the flags of the
 * launcher; the worker's are those of the house.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 5, time = 2)
@Fork(
        value = 2,
        jvmArgsAppend = {"-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"})
public class DialTurnBenchmark {

    private static final int FIRST_TURNS = 50;

    /** How many script cells of the demo take part, from the top: a chain of five, or all. */
    @Param({"5", "100"})
    public int cells;

    private Session session;
    private int turn;

    /** Opens the demo and turns the dial a while. */
    @Setup(Level.Trial)
    public void open() throws IOException {
        List<CellScript> scripts =
                WorkbookFiles.onDisk()
                        .read(Path.of("workbooks", "the-torso-leans.leverwright.json"))
                        .workbook()
                        .scripts()
                        .stream()
                        .limit(cells)
                        .map(cell -> new CellScript(cell.id(), cell.text()))
                        .toList();
        session = Session.open(SessionOptions.standard());
        session.run(scripts);
        for (int i = 0; i < FIRST_TURNS; i++) {
            shortWay();
            require(replay(), RunReport.Way.REPLAY);
        }
    }

    private static void require(RunReport report, RunReport.Way way) {
        boolean fresh = report.outcomes().stream().allMatch(outcome -> outcome.state() == CellState.FRESH);
        if (report.way() != way || !fresh || !report.differences().isEmpty()) {
            throw new IllegalStateException("a turn by " + report.way() + " gave " + report);
        }
    }

    /** Turns the dial: the cells that depend on it run again in the classes that are loaded. */
    @Benchmark
    public RunReport shortWay() {
        turn++;
        RunReport report = session.setDial("Torso lean", 20 + turn % 50 + " deg");
        require(report, RunReport.Way.SHORT);
        return report;
    }

    /** Confirms: every cell runs in fresh classes, and all bits are compared. */
    @Benchmark
    public RunReport replay() {
        return session.confirm();
    }

    /** Ends the worker. */
    @TearDown(Level.Trial)
    public void close() {
        session.close();
    }
}
