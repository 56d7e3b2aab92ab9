package leverwright.mechanics.numeric;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Keeps the answers to the last few questions, for answers that depend on the question alone. Safe for several threads.
 *
 * @param <Q> the question, with equality by value
 * @param <A> the answer, which never changes
 */
public final class Recent<Q, A> {

    private final Map<Q, A> answers;

    /**
     * Keeps the answers to some questions.
     *
     * @param most to how many, at least 1
     */
    public Recent(int most) {
        answers = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Q, A> eldest) {
                return size() > most;
            }
        };
    }

    /**
     * Returns the answer to a question: the one that is kept, or else the one that the work gives.
     *
     * @param question the question
     * @param work finds the answer, the same for equal questions
     */
    public A get(Q question, Supplier<A> work) {
        return get(question, work, made -> true);
    }

    /**
     * Returns the answer to a question: the one that is kept, or else the one that the work gives.
     *
     * @param question the question
     * @param work finds the answer
     * @param lasting whether an answer is to be kept, as one that was stopped is not
     */
    public A get(Q question, Supplier<A> work, Predicate<A> lasting) {
        synchronized (answers) {
            A known = answers.get(question);
            if (known != null) {
                return known;
            }
        }
        A made = work.get();
        if (lasting.test(made)) {
            synchronized (answers) {
                answers.put(question, made);
            }
        }
        return made;
    }
}
