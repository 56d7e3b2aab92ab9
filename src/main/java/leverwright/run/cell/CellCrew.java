package leverwright.run.cell;

import java.util.Locale;
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

    /** Lets studies that a cell begins without naming a crew have this one. */
    static void appoint() {
        Crew.appoint(() -> CellSink.isOpen() ? crew() : Crew.alone());
    }

    /** Returns the crew for the cell that runs on this thread. */
    static Crew crew() {
        CellSink sink = CellSink.current();
        return new Crew(Lazily.POOL, THREADS, () -> isStopped(sink), new Told(sink));
    }

    private static boolean isStopped(CellSink sink) {
        boolean asked = StopCheck.isAsked();
        if (asked) {
            sink.cutShort();
        }
        return asked;
    }

    /** Tells the cell's reader now and then how far a study is and how long it still takes. */
    private static final class Told implements Crew.Progress {
        private static final long FIRST = 700_000_000L;
        private static final long EVERY = 400_000_000L;

        private final CellSink sink;
        private final long start = System.nanoTime();
        private long next = start + FIRST;

        Told(CellSink sink) {
            this.sink = sink;
        }

        @Override
        public void done(long done, long all) {
            long now = System.nanoTime();
            if (now < next || done >= all) {
                return;
            }
            next = now + EVERY;
            double left = (now - start) / 1e9 * (all - done) / done;
            sink.progress(String.format(
                    Locale.ROOT,
                    "%d of %d, about %s left",
                    done,
                    all,
                    left < 90 ? Math.max(1, Math.round(left)) + " s" : Math.round(left / 60) + " minutes"));
        }
    }
}
