package leverwright.workbook.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.FoldedWorkings;
import leverwright.run.result.Result;
import leverwright.run.result.Verdict;
import org.jspecify.annotations.Nullable;

/** Goes through the cells of two records and gathers the lines of their comparison. */
final class CellComparer {

    private static final String OWN = "the script's own setting";

    private final Workbook workbook;
    private final List<String> differences = new ArrayList<>();
    private final List<String> unmetClaims = new ArrayList<>();
    private int compared;

    CellComparer(Workbook workbook) {
        this.workbook = workbook;
    }

    List<String> differences() {
        return differences;
    }

    List<String> unmetClaims() {
        return unmetClaims;
    }

    int compared() {
        return compared;
    }

    /** Compares the dial settings that the two runs were given. */
    void settings(Map<String, String> recorded, Map<String, String> recomputed) {
        TreeSet<String> names = new TreeSet<>(recorded.keySet());
        names.addAll(recomputed.keySet());
        for (String name : names) {
            String before = recorded.getOrDefault(name, OWN);
            String now = recomputed.getOrDefault(name, OWN);
            if (!before.equals(now)) {
                differences.add("dial \"" + name + "\": recorded with " + before + ", recomputed with " + now);
            }
        }
    }

    /** Compares one cell; a side that has no such cell is null. */
    void cell(String id, @Nullable CellRecord recorded, @Nullable CellRecord recomputed) {
        String label = label(id);
        if (recorded == null || recomputed == null) {
            if (recorded != null || recomputed != null) {
                differences.add(label + ": " + onlyOnce(recorded == null));
            }
        } else {
            state(label, recorded, recomputed);
            dials(label, recorded.dials(), recomputed.dials());
            results(label, recorded.results(), recomputed.results());
        }
        if (recomputed != null) {
            claims(label, recomputed.results());
        }
    }

    private String label(String id) {
        boolean titled = workbook.cell(id).orElse(null) instanceof ScriptCell script
                && !script.title().isEmpty();
        return titled
                ? "cell " + id + " (" + ((ScriptCell) workbook.cell(id).orElseThrow()).title() + ")"
                : "cell " + id;
    }

    private void state(String label, CellRecord recorded, CellRecord recomputed) {
        if (recorded.state() != recomputed.state() || !recorded.problem().equals(recomputed.problem())) {
            differences.add(label + ": recorded " + words(recorded) + ", recomputed " + words(recomputed));
        }
    }

    private static String words(CellRecord cell) {
        String problem = cell.problem().lines().findFirst().orElse("");
        return cell.state().words() + (problem.isEmpty() ? "" : " (" + problem + ")");
    }

    private void dials(String label, List<DialDeclared> recorded, List<DialDeclared> recomputed) {
        for (int index = 0; index < Math.max(recorded.size(), recomputed.size()); index++) {
            if (index >= recorded.size()) {
                differences.add(dialLabel(label, recomputed.get(index)) + ": " + onlyOnce(true));
            } else if (index >= recomputed.size()) {
                differences.add(dialLabel(label, recorded.get(index)) + ": " + onlyOnce(false));
            } else {
                dial(dialLabel(label, recorded.get(index)), recorded.get(index), recomputed.get(index));
            }
        }
    }

    private static String dialLabel(String label, DialDeclared dial) {
        return label + ", dial \"" + dial.name() + "\"";
    }

    private void dial(String label, DialDeclared recorded, DialDeclared recomputed) {
        List<TreeDifferences.Difference> found =
                TreeDifferences.between(ResultCodec.write(recorded), ResultCodec.write(recomputed));
        if (!found.isEmpty()) {
            differences.add(
                    label + ", " + found.get(0).path() + ": " + found.get(0).sides());
        }
    }

    private static String onlyOnce(boolean onlyNow) {
        return onlyNow ? "computed now, but not in the record" : "recorded, but not computed now";
    }

    private void results(String label, List<Result> recorded, List<Result> recomputed) {
        for (int index = 0; index < Math.max(recorded.size(), recomputed.size()); index++) {
            if (index >= recorded.size()) {
                differences.add(label + ", " + name(index, recomputed.get(index)) + ": " + onlyOnce(true));
            } else if (index >= recomputed.size()) {
                differences.add(label + ", " + name(index, recorded.get(index)) + ": " + onlyOnce(false));
            } else {
                compared++;
                Result before = recorded.get(index);
                boolean kept = !before.equals(FoldedWorkings.without(before));
                Result now = kept ? recomputed.get(index) : FoldedWorkings.without(recomputed.get(index));
                differences.addAll(ResultComparison.compare(label + ", " + name(index, before), before, now));
            }
        }
    }

    private static String name(int index, Result result) {
        return "result " + (index + 1) + (result.title().isEmpty() ? "" : " \"" + result.title() + "\"");
    }

    private void claims(String label, List<Result> results) {
        for (Result result : results) {
            if (result instanceof ClaimResult claim && !claim.countsByRecord() && claim.verdict() != Verdict.HOLDS) {
                unmetClaims.add(label + ", claim \"" + claim.title() + "\": "
                        + claim.verdict().words() + (claim.reason().isEmpty() ? "" : " (" + claim.reason() + ")"));
            }
        }
    }
}
