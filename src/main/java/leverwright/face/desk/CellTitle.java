package leverwright.face.desk;

import java.util.List;
import leverwright.face.desk.model.CellView;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.Result;
import leverwright.run.result.Verdict;

/** What the outline calls a cell, and what it says about it. */
final class CellTitle {

    private static final int LONGEST = 60;

    private CellTitle() {}

    static String of(CellView cell) {
        if (cell.isScript() && !cell.title().get().isBlank()) {
            return cell.title().get();
        }
        String first = cell.text()
                .get()
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .findFirst()
                .orElse(cell.isScript() ? "Empty script" : "Empty note");
        String plain =
                cell.isScript() ? first : first.replaceFirst("^#+\\s*", "").replaceAll("[*_`]", "");
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST - 1) + "…";
    }

    static String state(CellView cell) {
        if (!cell.isScript()) {
            return "note";
        }
        String words = cell.shown().get().state().words();
        List<Result> results = cell.shown().get().results();
        long claims = results.stream().filter(ClaimResult.class::isInstance).count();
        long hold = results.stream()
                .filter(result -> result instanceof ClaimResult claim && claim.verdict() == Verdict.HOLDS)
                .count();
        return claims == 0
                ? words
                : words + ", " + hold + " of " + claims + (claims == 1 ? " claim" : " claims") + " hold"
                        + (hold == 1 && claims == 1 ? "s" : "");
    }
}
