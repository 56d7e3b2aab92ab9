package leverwright.face.desk.model;

import java.util.List;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.Verdict;

/**
 * How many claims came to which verdict.
 *
 * @param holds how many hold
 * @param doesNotHold how many do not hold
 * @param outside how many lie outside this model
 * @param cannotTell how many cannot be told
 */
public record ClaimCount(int holds, int doesNotHold, int outside, int cannotTell) {

    /** Counts the verdicts of some claims. */
    static ClaimCount of(List<ClaimResult> claims) {
        return new ClaimCount(
                count(claims, Verdict.HOLDS),
                count(claims, Verdict.DOES_NOT_HOLD),
                count(claims, Verdict.OUTSIDE_THIS_MODEL),
                count(claims, Verdict.CANNOT_TELL));
    }

    private static int count(List<ClaimResult> claims, Verdict verdict) {
        return (int) claims.stream().filter(claim -> claim.verdict() == verdict).count();
    }

    /** Returns how many claims there are. */
    public int all() {
        return holds + doesNotHold + outside + cannotTell;
    }
}
