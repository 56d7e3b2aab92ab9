package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.measure.MeasureText;

/** Where curves have no value, and why: the first reason of each stretch of neighbouring settings stands for it. */
final class Gaps {
    private static final int DIGITS = 3;

    private final Knob<?> knob;
    private final Map<String, Stretch> stretches = new LinkedHashMap<>();

    private record Stretch(double from, double to, String reason) {}

    Gaps(Knob<?> knob) {
        this.knob = knob;
    }

    /**
     * Adds a setting without a value.
     *
     * @param what the curve that has none; empty when no curve has
     */
    void add(String what, double setting, String reason) {
        String kind = reason.replaceAll("[−0-9.]+", "#");
        stretches.merge(
                what + "\n" + kind,
                new Stretch(setting, setting, reason),
                (before, now) -> new Stretch(before.from(), now.to(), before.reason()));
    }

    /** Returns one sentence per stretch. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        stretches.forEach((key, stretch) -> {
            String what = key.substring(0, key.indexOf('\n'));
            notes.add("No value" + (what.isEmpty() ? "" : " of " + what) + " within " + text(stretch.from()) + " to "
                    + text(stretch.to()) + " of " + knob.name() + ": " + stretch.reason());
        });
        return notes;
    }

    private String text(double si) {
        return MeasureText.print(knob.standard().dimension().of(si, 0), knob.unit(), DIGITS);
    }
}
