package leverwright.face.desk.model;

import java.util.List;
import leverwright.run.result.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * What came of computing a workbook anew in a clean worker and holding its record against that.
 *
 * @param passes whether nothing differs and every claim that counts holds
 * @param words the whole in one sentence
 * @param seal what the seal says, in words
 * @param differences one line for each value that differs
 * @param unmet one line for each claim that counts and does not hold
 * @param claims every claim with both verdicts, in order of the sheet
 */
public record RecheckReport(
        boolean passes, String words, String seal, List<String> differences, List<String> unmet, List<Claim> claims) {

    /**
     * One claim.
     *
     * @param cell the id of its script
     * @param sentence the claim
     * @param recorded its verdict in the record, or null when the record has no such claim
     * @param recomputed its verdict now, or null when the script no longer makes it
     * @param counts whether its fresh verdict counts; otherwise only its recorded one
     * @param reason why, in words with numbers
     */
    public record Claim(
            String cell,
            String sentence,
            @Nullable Verdict recorded,
            @Nullable Verdict recomputed,
            boolean counts,
            String reason) {}

    /** Copies the lists. */
    public RecheckReport {
        differences = List.copyOf(differences);
        unmet = List.copyOf(unmet);
        claims = List.copyOf(claims);
    }
}
