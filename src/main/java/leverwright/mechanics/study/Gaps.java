package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Unit;

/** Where curves have no value, and why: the first reason of each stretch of neighbouring settings stands for it. */
final class Gaps {
    private static final int DIGITS = 3;
    private static final Pattern NUMBERS = Pattern.compile("[−0-9.]+");

    private final String name;
    private final Unit unit;
    private final Map<String, Stretch> stretches = new LinkedHashMap<>();

    private record Stretch(double from, double to, String reason) {}

    Gaps(String name, Unit unit) {
        this.name = name;
        this.unit = unit;
    }

    /**
     * Adds a setting without a value.
     *
     * @param what the curve that has none; empty when no curve has
     */
    void add(String what, double setting, String reason) {
        stretches.merge(
                what + "\n" + kind(reason),
                new Stretch(setting, setting, reason),
                (before, now) -> new Stretch(before.from(), now.to(), before.reason()));
    }

    /** Returns a reason without its numbers: the same for all places that have no value for this reason. */
    static String kind(String reason) {
        return NUMBERS.matcher(reason).replaceAll("#");
    }

    /** Returns one sentence per stretch. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        stretches.forEach((key, stretch) -> {
            String what = key.substring(0, key.indexOf('\n'));
            notes.add("No value" + (what.isEmpty() ? "" : " of " + what) + " within " + text(stretch.from()) + " to "
                    + text(stretch.to()) + " of " + name + ": " + stretch.reason());
        });
        return notes;
    }

    private String text(double si) {
        return MeasureText.print(unit.dimension().of(si, 0), unit, DIGITS);
    }
}
