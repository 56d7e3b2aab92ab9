package leverwright.face.desk.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.function.Supplier;
import leverwright.workbook.session.CellScript;
import leverwright.workbook.session.ScriptAdvisor;
import leverwright.workbook.session.Session;
import leverwright.workbook.session.Suggestion;
import leverwright.workbook.session.UnrunScripts;
import org.jspecify.annotations.Nullable;

/**
 * What the compiler knows about a script as it is written. Questions are answered on a thread of their own and the answers
 * arrive on the window's thread; a question that a newer one of its kind has overtaken is answered with nothing.
 */
public final class ScriptAdvice implements AutoCloseable {

    private static final long IDLE_SECONDS = 5;

    private final Supplier<@Nullable Session> session;
    private final Supplier<Optional<List<CellScript>>> asleep;
    private final Executor view;
    private final DeskLog log;
    private final ThreadPoolExecutor thread;
    private @Nullable UnrunScripts unrun;
    private volatile boolean reading;
    private final AtomicLong completions = new AtomicLong();
    private final AtomicLong signatures = new AtomicLong();
    private final AtomicLong details = new AtomicLong();

    /**
     * Makes advice.
     *
     * @param session runs the scripts; null while none does
     * @param asleep the scripts of a workbook that is not to run: they are compiled only, and only for advice; empty when it runs
     */
    ScriptAdvice(
            Supplier<@Nullable Session> session,
            Supplier<Optional<List<CellScript>>> asleep,
            Executor view,
            DeskLog log) {
        this.session = session;
        this.asleep = asleep;
        this.view = view;
        this.log = log;
        thread = new ThreadPoolExecutor(1, 1, IDLE_SECONDS, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), task -> {
            Thread made = new Thread(task, "desk advice");
            made.setDaemon(true);
            return made;
        });
        thread.allowCoreThreadTimeOut(true);
    }

    /**
     * Returns whether the compiler answers at once: scripts have been run or begun to, or those of a workbook that is not to run
     * have been compiled. Otherwise an answer takes a while, or is empty.
     */
    public boolean isReady() {
        return session.get() != null || reading;
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

    private <T> CompletableFuture<List<T>> ask(AtomicLong kind, Function<ScriptAdvisor, List<T>> question) {
        CompletableFuture<List<T>> answer = new CompletableFuture<>();
        long number = kind.incrementAndGet();
        Optional<List<CellScript>> scripts = asleep.get();
        try {
            thread.execute(() -> {
                List<T> found = kind.get() == number ? answer(question, scripts) : List.of();
                view.execute(() -> answer.complete(found));
            });
        } catch (RejectedExecutionException closed) {
            answer.complete(List.of());
        }
        return answer;
    }

    private <T> List<T> answer(Function<ScriptAdvisor, List<T>> question, Optional<List<CellScript>> scripts) {
        Session running = session.get();
        try {
            ScriptAdvisor open = running;
            if (running != null) {
                closeUnrun();
            } else if (scripts.isPresent()) {
                open = compiled(scripts.get());
            }
            return open == null ? List.of() : question.apply(open);
        } catch (RuntimeException unanswered) {
            // A session that was closed meanwhile need not answer.
            if (Objects.equals(running, session.get())) {
                log.failure("a question about a script was not answered", unanswered);
            }
            return List.of();
        }
    }

    private synchronized UnrunScripts compiled(List<CellScript> scripts) {
        UnrunScripts compiled = unrun;
        if (compiled == null) {
            compiled = new UnrunScripts();
            unrun = compiled;
        }
        compiled.take(scripts);
        reading = true;
        return compiled;
    }

    private synchronized void closeUnrun() {
        UnrunScripts compiled = unrun;
        if (compiled != null) {
            reading = false;
            unrun = null;
            compiled.close();
        }
    }

    @Override
    public void close() {
        thread.execute(this::closeUnrun);
        thread.shutdown();
    }
}
