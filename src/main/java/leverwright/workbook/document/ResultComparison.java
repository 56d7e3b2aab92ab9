package leverwright.workbook.document;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.MapResult;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Quantity;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import leverwright.run.result.TextResult;
import leverwright.workbook.json.CanonicalNumber;
import leverwright.workbook.json.JsonObject;
import org.jspecify.annotations.Nullable;

/** Compares two results of one place and says in words where they differ; numbers are compared by their bits. */
final class ResultComparison {

    private static final int LONGEST_SHOWN = 80;

    private final String label;
    private final List<String> lines = new ArrayList<>();

    private ResultComparison(String label) {
        this.label = label;
    }

    /** Returns one line a difference, each starting with the label; empty when the results are the same. */
    static List<String> compare(String label, Result recorded, Result recomputed) {
        JsonObject one = ResultCodec.write(recorded);
        JsonObject other = ResultCodec.write(recomputed);
        if (one.equals(other)) {
            return List.of();
        }
        ResultComparison comparison = new ResultComparison(label);
        List<String> told = comparison.compareKinds(recorded, recomputed);
        comparison.compareRest(one.without(told), other.without(told));
        return comparison.lines;
    }

    /** Compares what the kind of result is about and returns the keys that were told of. */
    private List<String> compareKinds(Result recorded, Result recomputed) {
        if (recorded instanceof NumberResult one && recomputed instanceof NumberResult other) {
            quantity("", one.quantity(), other.quantity());
            return List.of("quantity");
        } else if (recorded instanceof TextResult one && recomputed instanceof TextResult other) {
            text(one.text(), other.text());
            return List.of("text");
        } else if (recorded instanceof TableResult one && recomputed instanceof TableResult other) {
            return table(one, other);
        } else if (recorded instanceof CurvesResult one && recomputed instanceof CurvesResult other) {
            return curves(one.curves(), other.curves());
        } else if (recorded instanceof MapResult one && recomputed instanceof MapResult other) {
            return map(one.map(), other.map());
        } else if (recorded instanceof ClaimResult one && recomputed instanceof ClaimResult other) {
            return claim(one, other);
        }
        return List.of();
    }

    private void say(String what) {
        lines.add(label + ": " + what);
    }

    private void quantity(String where, Quantity recorded, Quantity recomputed) {
        if (!same(recorded.value(), recomputed.value()) || recorded.unit() != recomputed.unit()) {
            say(where + "recorded " + shown(recorded.value(), recorded.unit()) + ", recomputed "
                    + shown(recomputed.value(), recomputed.unit()));
        } else if (!same(recorded.low(), recomputed.low()) || !same(recorded.high(), recomputed.high())) {
            say(where + "recorded band " + band(recorded) + ", recomputed band " + band(recomputed));
        }
    }

    private static boolean same(double one, double other) {
        return Double.doubleToRawLongBits(one) == Double.doubleToRawLongBits(other);
    }

    private static String shown(double si, Unit unit) {
        return unit.dimension().si().attach(CanonicalNumber.write(si));
    }

    private static String band(Quantity quantity) {
        return shown(quantity.low(), quantity.unit()) + " to " + shown(quantity.high(), quantity.unit());
    }

    private void text(String recorded, String recomputed) {
        List<String> one = List.of(recorded.split("\n", -1));
        List<String> other = List.of(recomputed.split("\n", -1));
        for (int index = 0; index < Math.max(one.size(), other.size()); index++) {
            String before = index < one.size() ? quoted(one.get(index)) : "no such line";
            String now = index < other.size() ? quoted(other.get(index)) : "no such line";
            if (!before.equals(now) || !one.get(index).equals(other.get(index))) {
                say("text line " + (index + 1) + ": recorded " + before + ", recomputed " + now);
                return;
            }
        }
    }

    private static String quoted(String text) {
        return "\"" + (text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text) + "\"";
    }

    private List<String> table(TableResult recorded, TableResult recomputed) {
        if (!recorded.headings().equals(recomputed.headings())
                || recorded.rows().size() != recomputed.rows().size()) {
            say("recorded " + size(recorded) + ", recomputed " + size(recomputed));
            return List.of("headings", "rows");
        }
        for (int row = 0; row < recorded.rows().size(); row++) {
            for (int column = 0; column < recorded.headings().size(); column++) {
                String where =
                        "row " + (row + 1) + ", " + quoted(recorded.headings().get(column)) + ": ";
                entry(
                        where,
                        recorded.rows().get(row).get(column),
                        recomputed.rows().get(row).get(column));
            }
        }
        return List.of("headings", "rows");
    }

    private static String size(TableResult table) {
        return table.rows().size() + " rows of " + table.headings();
    }

    private void entry(String where, TableResult.Entry recorded, TableResult.Entry recomputed) {
        if (recorded.equals(recomputed)) {
            return;
        }
        if (recorded instanceof TableResult.NumberEntry one && recomputed instanceof TableResult.NumberEntry other) {
            int before = lines.size();
            quantity(where, one.quantity(), other.quantity());
            if (lines.size() == before) {
                say(where + "the number is the same, but its sides or its working differ");
            }
            return;
        }
        say(where + "recorded " + words(recorded) + ", recomputed " + words(recomputed));
    }

    private static String words(TableResult.Entry entry) {
        if (entry instanceof TableResult.NumberEntry number) {
            return shown(number.quantity().value(), number.quantity().unit());
        }
        return quoted(((TableResult.TextEntry) entry).text());
    }

    private List<String> curves(Curves recorded, Curves recomputed) {
        points(
                "axis " + quoted(recorded.axis().name()),
                recorded.axis(),
                recorded.axis().values(),
                recomputed.axis().values(),
                recorded.axis().unit());
        List<Curves.Curve> one = recorded.curves();
        List<Curves.Curve> other = recomputed.curves();
        if (one.size() != other.size()) {
            say("recorded " + one.size() + " curves, recomputed " + other.size());
        }
        for (int index = 0; index < Math.min(one.size(), other.size()); index++) {
            Curves.Curve curve = one.get(index);
            points(
                    "curve " + quoted(curve.name()),
                    recorded.axis(),
                    curve.values(),
                    other.get(index).values(),
                    curve.unit());
            points(
                    "lower limit of curve " + quoted(curve.name()),
                    recorded.axis(),
                    curve.low(),
                    other.get(index).low(),
                    curve.unit());
            points(
                    "upper limit of curve " + quoted(curve.name()),
                    recorded.axis(),
                    curve.high(),
                    other.get(index).high(),
                    curve.unit());
        }
        return lines.isEmpty() ? List.of() : List.of("curves");
    }

    private List<String> map(ContourMap recorded, ContourMap recomputed) {
        points(
                "axis across",
                recorded.across(),
                recorded.across().values(),
                recomputed.across().values(),
                recorded.across().unit());
        points(
                "axis upwards",
                recorded.up(),
                recorded.up().values(),
                recomputed.up().values(),
                recorded.up().unit());
        int nodes = recorded.values().size();
        if (nodes != recomputed.values().size()) {
            say("recorded " + nodes + " nodes, recomputed "
                    + recomputed.values().size());
            return List.of("map");
        }
        int count = 0;
        int first = 0;
        for (int node = nodes - 1; node >= 0; node--) {
            if (!point(recorded.values().get(node), recorded.unit())
                    .equals(point(recomputed.values().get(node), recorded.unit()))) {
                count++;
                first = node;
            }
        }
        if (count > 0) {
            say("map of " + quoted(recorded.name()) + ": " + count + " of " + nodes + " nodes differ, first at "
                    + node(recorded, first) + ": recorded "
                    + point(recorded.values().get(first), recorded.unit())
                    + ", recomputed " + point(recomputed.values().get(first), recorded.unit()));
        }
        return lines.isEmpty() ? List.of() : List.of("map");
    }

    private static String node(ContourMap map, int node) {
        Curves.Axis across = map.across();
        Curves.Axis up = map.up();
        return across.name() + " " + shown(across.values().get(node % map.columns()), across.unit()) + ", " + up.name()
                + " " + shown(up.values().get(node / map.columns()), up.unit());
    }

    private void points(
            String what,
            Curves.Axis axis,
            List<? extends @Nullable Double> recorded,
            List<? extends @Nullable Double> recomputed,
            Unit unit) {
        if (recorded.size() != recomputed.size()) {
            say(what + ": recorded " + recorded.size() + " points, recomputed " + recomputed.size());
            return;
        }
        int count = 0;
        int first = 0;
        for (int index = recorded.size() - 1; index >= 0; index--) {
            if (!point(recorded.get(index), unit).equals(point(recomputed.get(index), unit))) {
                count++;
                first = index;
            }
        }
        if (count > 0) {
            say(what + ": " + count + " of " + recorded.size() + " points differ, first at " + axis.name() + " "
                    + point(axis.values().get(first), axis.unit()) + ": recorded " + point(recorded.get(first), unit)
                    + ", recomputed " + point(recomputed.get(first), unit));
        }
    }

    /** Two doubles have the same text exactly when they have the same bits; curves hold no negative zero. */
    private static String point(@Nullable Double value, Unit unit) {
        return value == null ? "a gap" : shown(value, unit);
    }

    private List<String> claim(ClaimResult recorded, ClaimResult recomputed) {
        List<String> told = new ArrayList<>();
        if (recorded.verdict() != recomputed.verdict()) {
            say("recorded verdict " + recorded.verdict().words() + ", recomputed "
                    + recomputed.verdict().words() + " (" + recomputed.reason() + ")");
            told.add("verdict");
        }
        Quantity before = recorded.computed();
        Quantity now = recomputed.computed();
        if (before != null && now != null) {
            quantity("", before, now);
            told.add("computed");
        }
        if (!lines.isEmpty()) {
            told.add("reason");
        }
        return told;
    }

    private void compareRest(JsonObject recorded, JsonObject recomputed) {
        List<TreeDifferences.Difference> rest = TreeDifferences.between(recorded, recomputed);
        if (!rest.isEmpty()) {
            String more = rest.size() == 1 ? "" : " (and " + (rest.size() - 1) + " more places)";
            say(rest.get(0).path() + ": " + rest.get(0).sides() + more);
        }
    }
}
