package leverwright.face.desk.model;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import java.util.Optional;
import leverwright.workbook.document.Workbook;
import org.jspecify.annotations.Nullable;

/**
 * The one history of text and structure: whole workbooks, of which neighbours share all cells that did not change. Dials
 * are no part of it: going back and forth leaves them where they stand.
 */
final class History {

    private static final int MOST_STEPS = 500;

    private record Step(
            Workbook before,
            Workbook after,
            Caret from,
            Caret to,
            @Nullable String typing) {}

    private final Deque<Step> done = new ArrayDeque<>();
    private final Deque<Step> undone = new ArrayDeque<>();
    private final Duration pause;
    private long lastTyped;
    private boolean open;

    History(Duration typingPause) {
        pause = typingPause;
    }

    /** Keeps a step; one of typing joins the step before when that was typing in the same cell just now. */
    void keep(Workbook before, Workbook after, Caret from, Caret to, @Nullable String typing, long now) {
        undone.clear();
        Step last = done.peekLast();
        boolean joins = open
                && typing != null
                && last != null
                && Objects.equals(last.typing(), typing)
                && now - lastTyped <= pause.toNanos();
        if (joins && last != null) {
            done.removeLast();
            done.addLast(new Step(last.before(), after, last.from(), to, typing));
        } else {
            done.addLast(new Step(before, after, from, to, typing));
            if (done.size() > MOST_STEPS) {
                done.removeFirst();
            }
        }
        lastTyped = now;
        open = typing != null;
    }

    /** Lets the next typing begin a step of its own. */
    void endTyping() {
        open = false;
    }

    boolean canUndo() {
        return !done.isEmpty();
    }

    boolean canRedo() {
        return !undone.isEmpty();
    }

    /** A workbook to go to, and the place where it differs. */
    record Place(Workbook workbook, Caret caret) {}

    Optional<Place> undo() {
        open = false;
        Step step = done.pollLast();
        if (step == null) {
            return Optional.empty();
        }
        undone.addLast(step);
        return Optional.of(new Place(step.before(), step.from()));
    }

    Optional<Place> redo() {
        open = false;
        Step step = undone.pollLast();
        if (step == null) {
            return Optional.empty();
        }
        done.addLast(step);
        return Optional.of(new Place(step.after(), step.to()));
    }
}
