package leverwright.workbook.document;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A record held against a fresh computation of the same workbook. Every number, curve point, table entry, drawn place,
 * working and verdict counts, numbers by their bits; whether the seal fits is told beside it and changes nothing else.
 *
 * @param seal what the workbook's seal says
 * @param differences one line a difference, naming cell, result, recorded and recomputed value; empty when all is the same
 * @param unmetClaims one line for every recomputed claim that does not hold, is outside the model or cannot be told;
 *     claims marked for the reader or doubted are not among them, since only their recorded verdict counts
 * @param compared how many results were held against each other
 */
public record RecordComparison(Seal.State seal, List<String> differences, List<String> unmetClaims, int compared) {

    /** Copies the lines. */
    public RecordComparison {
        differences = List.copyOf(differences);
        unmetClaims = List.copyOf(unmetClaims);
    }

    /** Returns whether nothing differs and every claim that counts holds. */
    public boolean passes() {
        return differences.isEmpty() && unmetClaims.isEmpty();
    }

    /** Returns what came of the results in words, such as "all 41 results are the same to the last bit". */
    public String resultWords() {
        int count = differences.size();
        return count == 0
                ? "all " + compared + " results are the same to the last bit"
                : count + (count == 1 ? " difference" : " differences") + " in " + compared + " results";
    }

    /** Returns what came of the claims in words, such as "every claim that counts holds". */
    public String claimWords() {
        int unmet = unmetClaims.size();
        return unmet == 0
                ? "every claim that counts holds"
                : unmet + (unmet == 1 ? " claim does not hold" : " claims do not hold");
    }

    /**
     * Returns how a workbook's record compares with a fresh computation.
     *
     * @param workbook the workbook with its record
     * @param recomputed the record of a clean run of it
     * @throws IllegalArgumentException when the workbook has no record
     */
    public static RecordComparison compare(Workbook workbook, WorkbookRecord recomputed) {
        WorkbookRecord recorded = workbook.record()
                .orElseThrow(() -> new IllegalArgumentException(
                        "the workbook has no record to compare with; run it with --record first"));
        CellComparer comparer = new CellComparer(workbook);
        comparer.settings(recorded.dials(), recomputed.dials());
        for (String id : ids(workbook, recorded, recomputed)) {
            comparer.cell(id, recorded.cells().get(id), recomputed.cells().get(id));
        }
        return new RecordComparison(
                Seal.state(workbook), comparer.differences(), comparer.unmetClaims(), comparer.compared());
    }

    private static Set<String> ids(Workbook workbook, WorkbookRecord recorded, WorkbookRecord recomputed) {
        Set<String> ids = new LinkedHashSet<>();
        workbook.scripts().forEach(script -> ids.add(script.id()));
        ids.addAll(recorded.cells().keySet());
        ids.addAll(recomputed.cells().keySet());
        return ids;
    }
}
