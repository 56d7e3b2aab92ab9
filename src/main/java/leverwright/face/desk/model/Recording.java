package leverwright.face.desk.model;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.run.result.CellState;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.Result;
import leverwright.workbook.document.CellRecord;
import leverwright.workbook.document.RecordComparison;
import leverwright.workbook.document.Seal;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookRecord;
import leverwright.workbook.session.CleanRun;
import leverwright.workbook.session.Halt;
import leverwright.workbook.session.SessionListener;

/** Records of what the window shows, and what a clean run says about them. None of it runs on the window's thread. */
final class Recording {

    private static final Duration PATIENCE = Duration.ofSeconds(3);

    private final RunQueue queue;

    Recording(RunQueue queue) {
        this.queue = queue;
    }

    /** The workbook as it goes into its file: with the results of its last run where that fits, and sealed. */
    Workbook toKeep(Workbook now, boolean asleep) {
        Workbook recorded = asleep ? now : withRecord(now);
        Workbook kept = recorded.record()
                .map(record -> recorded.withRecord(record.toKeep()))
                .orElse(recorded);
        return kept.record().isPresent() ? Seal.seal(kept) : kept;
    }

    /** The workbook as it is published: with every working. */
    Workbook toPublish(Workbook now, boolean asleep) {
        Workbook recorded = asleep ? now : withRecord(now);
        return recorded.record().isPresent() ? Seal.seal(recorded) : recorded;
    }

    /** Returns the workbook with the results of its last run, when that was a run of exactly this and all is fresh. */
    private Workbook withRecord(Workbook now) {
        try {
            RunQueue.Done done = queue.settled(PATIENCE);
            boolean fits = done != null
                    && done.confirmed()
                    && done.target().scripts().equals(SheetChange.scripts(now))
                    && done.target().dials().equals(now.dials())
                    && done.report().outcomes().stream().allMatch(outcome -> outcome.state() == CellState.FRESH);
            return fits && done != null
                    ? now.withRecord(
                            CleanRun.record(now, done.report(), done.target().seed()))
                    : now;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return now;
        }
    }

    /** Computes a workbook in a clean worker and holds its record against that. */
    static RecheckReport recheck(Workbook workbook, boolean trusted, Halt halt, SessionListener listener) {
        WorkbookRecord fresh = CleanRun.of(workbook, trusted, CleanRun.MOST_PER_CELL, halt, listener);
        RecordComparison comparison = RecordComparison.compare(workbook, fresh);
        String results = comparison.resultWords();
        return new RecheckReport(
                comparison.passes(),
                Character.toUpperCase(results.charAt(0)) + results.substring(1) + "; " + comparison.claimWords() + ".",
                comparison.seal().words(),
                comparison.differences(),
                comparison.unmetClaims(),
                claims(workbook.record().orElseThrow(), fresh));
    }

    private static List<RecheckReport.Claim> claims(WorkbookRecord recorded, WorkbookRecord fresh) {
        Map<String, RecheckReport.Claim> all = new LinkedHashMap<>();
        fresh.cells().forEach((id, cell) -> numbered(id, cell).forEach((key, claim) -> all.put(key, claim(id, claim))));
        recorded.cells()
                .forEach((id, cell) -> numbered(id, cell).forEach((key, before) -> {
                    RecheckReport.Claim now = all.get(key);
                    all.put(
                            key,
                            new RecheckReport.Claim(
                                    id,
                                    before.title(),
                                    before.verdict(),
                                    now == null ? null : now.recomputed(),
                                    !before.countsByRecord(),
                                    now == null ? "the script no longer makes this claim" : now.reason()));
                }));
        return new ArrayList<>(all.values());
    }

    private static RecheckReport.Claim claim(String cell, ClaimResult claim) {
        return new RecheckReport.Claim(
                cell, claim.title(), null, claim.verdict(), !claim.countsByRecord(), claim.reason());
    }

    /** The claims of a cell, each by cell, sentence and which of several equal sentences it is. */
    private static Map<String, ClaimResult> numbered(String id, CellRecord cell) {
        Map<String, ClaimResult> claims = new LinkedHashMap<>();
        for (Result result : cell.results()) {
            if (result instanceof ClaimResult claim) {
                int number = 0;
                while (claims.containsKey(id + " " + number + " " + claim.title())) {
                    number++;
                }
                claims.put(id + " " + number + " " + claim.title(), claim);
            }
        }
        return claims;
    }
}
