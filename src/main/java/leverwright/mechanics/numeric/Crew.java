package leverwright.mechanics.numeric;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.FutureTask;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Who works on a long study: an executor with its number of threads, a way to be stopped, and who is told how far it is. Work
 * comes in blocks whose size does not depend on the threads, and results are taken in the order of the blocks, so that no digit
 * depends on how many threads there are.
 *
 * @param executor runs blocks; with one thread, the caller's own is used
 * @param threads at least 1
 * @param stopped asked between blocks; once true, no further block begins
 * @param progress told after each block
 */
public record Crew(Executor executor, int threads, BooleanSupplier stopped, Progress progress) {
    private static final int AHEAD = 3;
    private static volatile Supplier<Crew> appointed = Crew::alone;

    /** Is told how far a study is. */
    @FunctionalInterface
    public interface Progress {
        /**
         * Takes how much is done.
         *
         * @param done parts done
         * @param all all parts
         */
        void done(long done, long all);
    }

    /**
     * One block of work.
     *
     * @param <R> what it yields
     */
    @FunctionalInterface
    public interface Block<R> {
        /**
         * Works on the parts from one number up to another.
         *
         * @param from the first part
         * @param to the part after the last
         */
        R work(int from, int to);
    }

    /** Checks the number of threads. */
    public Crew {
        Require.within(threads, 1, 1024, "number of threads", "");
    }

    /** Returns the caller alone: one thread, never stopped, nobody told. */
    public static Crew alone() {
        return new Crew(Runnable::run, 1, () -> false, (done, all) -> {});
    }

    /** Returns the crew for a study that is begun without naming one: as appointed, or else the caller alone. */
    public static Crew ofCaller() {
        return appointed.get();
    }

    /**
     * Appoints who works on studies that are begun without naming anybody.
     *
     * @param crew asked at the beginning of each study, on the thread that begins it
     */
    public static void appoint(Supplier<Crew> crew) {
        appointed = crew;
    }

    /** Returns the same crew, which tells nobody how far it is. */
    Crew quiet() {
        return new Crew(executor, threads, stopped, (done, all) -> {});
    }

    /**
     * Works block by block and takes the results in order.
     *
     * @param count how many parts there are
     * @param size parts of a block
     * @param block works on one; called by several threads
     * @param taker takes each result on the caller's thread, in order
     * @return how many parts were done: all of them unless stopped
     */
    public <R> int inOrder(int count, int size, Block<R> block, Consumer<? super R> taker) {
        Deque<FutureTask<R>> ahead = new ArrayDeque<>();
        int next = 0;
        int done = 0;
        try {
            while (done < count && !stopped.getAsBoolean()) {
                while (next < count && ahead.size() < (threads == 1 ? 1 : AHEAD * threads)) {
                    int from = next;
                    next = Math.min(count, from + size);
                    int to = next;
                    FutureTask<R> task = new FutureTask<>(() -> block.work(from, to));
                    ahead.add(task);
                    if (threads > 1) {
                        executor.execute(task);
                    }
                }
                FutureTask<R> first = ahead.remove();
                if (threads == 1) {
                    first.run();
                }
                taker.accept(first.get());
                done = Math.min(count, done + size);
                progress.done(done, count);
            }
        } catch (InterruptedException stop) {
            if (!stopped.getAsBoolean()) {
                throw new IllegalStateException("the study was interrupted", stop);
            }
            return done;
        } catch (CancellationException cancelled) {
            throw new IllegalStateException(cancelled);
        } catch (ExecutionException failed) {
            throw unwrapped(failed);
        } finally {
            ahead.forEach(task -> task.cancel(false));
        }
        return done;
    }

    private static RuntimeException unwrapped(ExecutionException failed) {
        if (failed.getCause() instanceof RuntimeException cause) {
            return cause;
        }
        if (failed.getCause() instanceof Error error) {
            throw error;
        }
        return new IllegalStateException(failed);
    }
}
