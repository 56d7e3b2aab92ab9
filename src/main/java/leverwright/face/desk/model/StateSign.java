package leverwright.face.desk.model;

import java.util.Locale;
import leverwright.run.result.CellState;
import leverwright.run.result.Verdict;

/** Signs that tell a state or a verdict by their shape, beside the words for it. */
public final class StateSign {

    private StateSign() {}

    /**
     * Returns the sign of a state, one character.
     *
     * @param state the state
     */
    public static String of(CellState state) {
        return switch (state) {
            case FRESH -> "✓";
            case STALE -> "◌";
            case RUNNING -> "▸";
            case FAILED -> "✕";
            case REFUSED -> "⊘";
            case NOT_RUN -> "○";
        };
    }

    /**
     * Returns the sign of a verdict, one character.
     *
     * @param verdict the verdict
     */
    public static String of(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> "✓";
            case DOES_NOT_HOLD -> "✕";
            case OUTSIDE_THIS_MODEL -> "◇";
            case CANNOT_TELL -> "?";
        };
    }

    /**
     * Returns the style class of a state, for example {@code "state-not-run"}.
     *
     * @param state the state
     */
    public static String styleClass(CellState state) {
        return "state-" + state.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
