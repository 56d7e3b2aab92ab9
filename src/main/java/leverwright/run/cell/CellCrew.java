package leverwright.run.cell;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import leverwright.mechanics.numeric.Crew;
import leverwright.run.gate.woven.StopCheck;

/** The threads of this process that work on the studies of its cells; a stop of the cell stops the study. */
final class CellCrew {
    private static final int THREADS = Runtime.getRuntime().availableProcessors();

    /** Threads are made when the first long study begins. */
    private static final class Lazily {
        private static final ExecutorService POOL = Executors.newFixedThreadPool(THREADS, work -> {
            Thread thread = new Thread(work, "study");
            thread.setDaemon(true);
            return thread;
        });
    }

    private CellCrew() {}

    /** Returns the crew for the cell that runs on this thread. */
    static Crew crew() {
        return new Crew(Lazily.POOL, THREADS, StopCheck::isAsked, (done, all) -> {});
    }
}
