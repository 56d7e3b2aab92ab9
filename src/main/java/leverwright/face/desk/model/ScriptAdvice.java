package leverwright.face.desk.model;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.function.Supplier;
import leverwright.workbook.session.Session;
import leverwright.workbook.session.Suggestion;
import org.jspecify.annotations.Nullable;

/**
 * What the compiler knows about a script as it is written. Questions are answered on a thread of their own and the answers
 * arrive on the window's thread; a question that a newer one of its kind has overtaken is answered with nothing.
 */
public final class ScriptAdvice implements AutoCloseable {

    private static final long IDLE_SECONDS = 5;

    private final Supplier<@Nullable Session> session;
    private final Executor view;
    private final DeskLog log;
    private final ThreadPoolExecutor thread;
    private final AtomicLong completions = new AtomicLong();
    private final AtomicLong signatures = new AtomicLong();
    private final AtomicLong details = new AtomicLong();

    ScriptAdvice(Supplier<@Nullable Session> session, Executor view, DeskLog log) {
        this.session = session;
        this.view = view;
        this.log = log;
        thread = new ThreadPoolExecutor(1, 1, IDLE_SECONDS, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), task -> {
            Thread made = new Thread(task, "desk advice");
            made.setDaemon(true);
            return made;
        });
        thread.allowCoreThreadTimeOut(true);
    }

    /** Returns whether the compiler can be asked: scripts have been run or begun to. Otherwise every answer is empty. */
    public boolean isReady() {
        return session.get() != null;
    }

    /**
     * Asks what may be written at a caret.
     *
     * @param cell the script's id
     * @param text the script as it is being written
     * @param caret the caret's offset in it
     */
    public CompletableFuture<List<Suggestion>> completions(String cell, String text, int caret) {
        return ask(completions, open -> open.completions(cell, text, caret));
    }

    /**
     * Asks for the signatures of the method whose brackets a caret stands in, or of the name it stands behind.
     *
     * @param cell the script's id
     * @param text the script as it is being written
     * @param caret the caret's offset in it
     */
    public CompletableFuture<List<String>> signatures(String cell, String text, int caret) {
        return ask(signatures, open -> open.signatures(cell, text, caret));
    }

    /**
     * Asks for the signatures of several things that could be written at a caret.
     *
     * @param cell the script's id
     * @param texts the script with each of them written
     * @param carets the offsets behind each
     * @return the signatures in the same order
     */
    public CompletableFuture<List<List<String>>> signatures(String cell, List<String> texts, List<Integer> carets) {
        return ask(details, open -> {
            List<List<String>> all = new java.util.ArrayList<>();
            for (int i = 0; i < texts.size(); i++) {
                all.add(open.signatures(cell, texts.get(i), carets.get(i)));
            }
            return all;
        });
    }

    private <T> CompletableFuture<List<T>> ask(AtomicLong kind, Function<Session, List<T>> question) {
        CompletableFuture<List<T>> answer = new CompletableFuture<>();
        long number = kind.incrementAndGet();
        try {
            thread.execute(() -> {
                List<T> found = kind.get() == number ? answer(question) : List.of();
                view.execute(() -> answer.complete(found));
            });
        } catch (RejectedExecutionException closed) {
            answer.complete(List.of());
        }
        return answer;
    }

    private <T> List<T> answer(Function<Session, List<T>> question) {
        Session open = session.get();
        if (open == null) {
            return List.of();
        }
        try {
            return question.apply(open);
        } catch (RuntimeException unanswered) {
            // A session that was closed meanwhile need not answer.
            if (open.equals(session.get())) {
                log.failure("a question about a script was not answered", unanswered);
            }
            return List.of();
        }
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
