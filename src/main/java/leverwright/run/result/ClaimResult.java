package leverwright.run.result;

import java.util.List;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A sentence with a number, checked by computation at settings of its own.
 *
 * @param title the sentence
 * @param computed what the model gives, or null when the claim lies outside the model and nothing was computed
 * @param computedLabel what was computed, for example {@code "hip extension moment"}
 * @param sides whether the computed value counts one side or the whole body
 * @param test what the claim asks of the value, in words, for example {@code "equals 120 N·m within 1 %"}
 * @param verdict what the check came to
 * @param reason why, in words with numbers
 * @param forReader whether the reader is meant to complete it; then its recorded verdict counts in a recheck
 * @param doubted whether the author doubts it; then its recorded verdict counts in a recheck
 * @param source where the claim comes from; empty when it is the author's own
 * @param settings the settings the claim was computed at, one a line, for example {@code "Torso lean 45 deg"}
 * @param working the hand calculation, or null when there is none
 * @param notes cautions and remarks
 */
public record ClaimResult(
        String title,
        @Nullable Quantity computed,
        String computedLabel,
        Sides sides,
        String test,
        Verdict verdict,
        String reason,
        boolean forReader,
        boolean doubted,
        String source,
        List<String> settings,
        @Nullable Working working,
        List<String> notes)
        implements Result {

    /**
     * Copies settings and notes.
     *
     * @throws IllegalArgumentException when nothing was computed but the verdict is about a value
     */
    public ClaimResult {
        if ((computed == null) != (verdict == Verdict.OUTSIDE_THIS_MODEL)) {
            throw new IllegalArgumentException("the claim \"" + title
                    + "\" needs a computed value exactly when its verdict is not \"outside this model\"");
        }
        settings = List.copyOf(settings);
        notes = List.copyOf(notes);
    }

    /**
     * Returns whether only the recorded verdict counts when the workbook is rechecked: for claims marked for the reader,
     * doubted ones, and those that say themselves that they lie outside the model.
     */
    public boolean countsByRecord() {
        return forReader || doubted || verdict == Verdict.OUTSIDE_THIS_MODEL;
    }
}
