package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.measure.Duration;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.motion.Tempo;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.muscle.Muscles;
import leverwright.mechanics.study.TargetComparison.Entry;
import leverwright.mechanics.study.TargetComparison.Place;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listing;
import org.jspecify.annotations.Nullable;

/** Charts and tables of a comparison for a target: measures through the ranges, as bars, over a set, and at equal what. */
final class TargetTables {
    private static final int BAR = 10;

    private TargetTables() {}

    private static @Nullable Double value(TargetMeasure measure, HeldPosture held, MuscleModel model, Muscles target) {
        try {
            return measure.of(held, model, target);
        } catch (IllegalArgumentException notKnownHere) {
            return null;
        }
    }

    static Curves curves(TargetComparison comparison, List<TargetMeasure> measures) {
        if (measures.isEmpty()) {
            throw new IllegalArgumentException("a chart of exercises needs a measure, such as TargetMeasure.SHARE");
        }
        int count = TargetComparison.PLACES;
        List<Double> parts = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            parts.add(k / (count - 1.0));
        }
        List<Curves.Curve> curves = new ArrayList<>();
        for (TargetMeasure measure : measures) {
            for (Entry entry : comparison.entries()) {
                List<Place> places = comparison.places(entry);
                List<@Nullable Double> values = new ArrayList<>();
                for (int k = 0; k < count; k++) {
                    HeldPosture held =
                            places.get(Math.min(k, places.size() - 1)).held();
                    values.add(value(measure, held, comparison.model(), comparison.target()));
                }
                String exercise = entry.performance().exercise().toString();
                curves.add(Curves.Curve.of(
                        measures.size() == 1 ? exercise : exercise + ": " + measure.words(),
                        measure.unit(),
                        measure.sides(),
                        values));
            }
        }
        String title = measures.size() == 1
                ? capital(measures.get(0).words())
                        + (measures.get(0) == TargetMeasure.SHARE || measures.get(0) == TargetMeasure.FORCE
                                ? ": the " + comparison.target().words()
                                : "")
                : "For the " + comparison.target().words();
        return new Curves(
                title,
                new Curves.Axis("part of each exercise's own range", Unit.PERCENT, parts),
                curves,
                null,
                List.of(
                        comparison.basis(),
                        Shares.ruleNote(comparison.model()),
                        "Equal: nothing but the lifter and the model; loads are as set. Above 100 % of capacity muscles of this model"
                                + " cannot hold it.",
                        TargetComparison.CAUTION));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    static Listing bars(TargetComparison comparison) {
        List<List<Object>> rows = new ArrayList<>();
        for (TargetMeasure measure : TargetMeasure.values()) {
            List<@Nullable Double> values = new ArrayList<>();
            double most = 0;
            for (Entry entry : comparison.entries()) {
                Double value = value(measure, comparison.peak(entry).held(), comparison.model(), comparison.target());
                values.add(value);
                most = value == null ? most : Math.max(most, Math.abs(value));
            }
            bars(
                    rows,
                    comparison,
                    measure.sides() == Sides.NOT_SIDED
                            ? measure.words()
                            : measure.words() + ", " + measure.sides().words(),
                    measure.unit(),
                    most,
                    values);
        }
        List<@Nullable Double> work = new ArrayList<>();
        double most = 0;
        for (Entry entry : comparison.entries()) {
            Double lifted = entry.lifting();
            work.add(lifted);
            most = lifted == null ? most : Math.max(most, lifted);
        }
        bars(rows, comparison, "lifting work, both sides", Unit.JOULE, most, work);
        return new Listing(
                "For the " + comparison.target().words() + ", each at the peak of its target's force",
                List.of("measure", "exercise", "the largest is whole", "value"),
                rows,
                List.of(
                        comparison.basis(),
                        Shares.ruleNote(comparison.model()),
                        "Equal: nothing but the lifter and the model; loads are as set.",
                        TargetComparison.CAUTION));
    }

    private static void bars(
            List<List<Object>> rows,
            TargetComparison comparison,
            String words,
            Unit unit,
            double most,
            List<@Nullable Double> values) {
        for (int k = 0; k < values.size(); k++) {
            Double value = values.get(k);
            String exercise =
                    comparison.entries().get(k).performance().exercise().toString();
            if (value == null) {
                rows.add(List.of(words, exercise, "", "not known here"));
                continue;
            }
            int steps = most > 0 ? (int) Math.rint(BAR * Math.abs(value) / most) : 0;
            rows.add(List.of(words, exercise, "█".repeat(steps), unit.format(rounded(value))));
        }
    }

    private static double rounded(double value) {
        return NumberText.rounded(value, 3).doubleValue();
    }

    /** The target's mean force over the time of one repetition, N; held still where the exercise has one posture. */
    static double meanOverTime(TargetComparison comparison, Entry entry, Tempo tempo) {
        Knob<?> turned = entry.knob();
        if (turned == null) {
            return TargetMeasure.FORCE.of(entry.performance().posture(), comparison.model(), comparison.target());
        }
        Repetition way = new Repetition(entry.performance(), turned, entry.from(), entry.to(), tempo);
        return new MusclesInMotion(way, comparison.model()).meanForce(comparison.target());
    }

    static Listing overSet(TargetComparison comparison, Tempo tempo, double repetitions) {
        if (!(repetitions >= 1 && repetitions <= 1000)) {
            throw new IllegalArgumentException("a set has " + repetitions + " repetitions; allowed: 1 to 1000");
        }
        List<List<Object>> rows = new ArrayList<>();
        for (Entry entry : comparison.entries()) {
            String exercise = entry.performance().exercise().toString();
            double seconds = tempo.total();
            double mean = 0;
            double peak = 0;
            double peakUsed = 0;
            Knob<?> turned = entry.knob();
            if (turned == null) {
                HeldPosture held = entry.performance().posture();
                mean = TargetMeasure.FORCE.of(held, comparison.model(), comparison.target());
                peak = mean;
                peakUsed = TargetMeasure.SHARE.of(held, comparison.model(), comparison.target());
            } else {
                MusclesInMotion motion = new MusclesInMotion(
                        new Repetition(entry.performance(), turned, entry.from(), entry.to(), tempo),
                        comparison.model());
                mean = motion.meanForce(comparison.target());
                peak = motion.peakForce(comparison.target());
                peakUsed = motion.peakUsed(comparison.target());
            }
            rows.add(List.of(
                    exercise,
                    turned == null ? "held" : "moving",
                    Force.of(mean),
                    Force.of(peak),
                    Ratio.of(peakUsed),
                    Duration.of(seconds * repetitions),
                    String.format(Locale.ROOT, "%.0f N·s", mean * seconds * repetitions)));
        }
        return new Listing(
                "A set of " + Math.round(repetitions) + " for the "
                        + comparison.target().words(),
                List.of("exercise", "", "mean over time", "peak", "peak of capacity used", "time", "force × time"),
                rows,
                List.of(
                        comparison.basis(),
                        Shares.ruleNote(comparison.model()),
                        "Equal: the tempo, the repetitions, the lifter and the model; loads are as set. Forces per side, by inverse dynamics,"
                                + " capacities by the speed of the fibres; an exercise in one posture counts as held for the same time.",
                        TargetComparison.CAUTION));
    }

    static Listing equalWhat(TargetComparison comparison, List<Knob<?>> loads) {
        List<Entry> entries = comparison.entries();
        if (loads.size() != entries.size()) {
            throw new IllegalArgumentException("equalWhat has " + loads.size() + " knobs of loads; it needs "
                    + entries.size() + ", one for each exercise in their order");
        }
        List<List<Object>> rows = new ArrayList<>();
        double first = Double.NaN;
        for (int k = 0; k < entries.size(); k++) {
            double set = si(entries.get(k), loads.get(k));
            first = k == 0 ? set : first;
            row(rows, comparison, "equal load", entries.get(k), loads.get(k), first);
        }
        double wanted = comparison.force(entries.get(0), false);
        for (int k = 0; k < entries.size(); k++) {
            Entry entry = entries.get(k);
            Knob<?> load = loads.get(k);
            try {
                double si = k == 0 ? si(entry, load) : comparison.loadFor(entry, load, wanted, false);
                row(rows, comparison, "equal peak force of the target", entry, load, si);
            } catch (IllegalArgumentException noLoad) {
                rows.add(refused("equal peak force of the target", entry, noLoad));
            }
        }
        for (int k = 0; k < entries.size(); k++) {
            Entry entry = entries.get(k);
            Knob<?> load = loads.get(k);
            try {
                row(
                        rows,
                        comparison,
                        "each at its greatest load",
                        entry,
                        load,
                        entry.greatest(load, comparison.model()));
            } catch (IllegalArgumentException noLoad) {
                rows.add(refused("each at its greatest load", entry, noLoad));
            }
        }
        return new Listing(
                "The " + comparison.target().words() + " at equal what",
                List.of(
                        "equal",
                        "exercise",
                        "load, in total",
                        "peak force, per side",
                        "most of its capacity used",
                        "hardest other",
                        "low back, total"),
                rows,
                List.of(
                        comparison.basis(),
                        Shares.ruleNote(comparison.model()),
                        "Equal load is that of the first exercise as set, in total; equal peak force is the target's, per side, each exercise over"
                                + " its own range; greatest is what the model holds still through the range. Others and low back at"
                                + " the posture of the target's peak force; most of its capacity may be used elsewhere in the range.",
                        TargetComparison.CAUTION));
    }

    private static double si(Entry entry, Knob<?> load) {
        return entry.performance().exercise().get(load).si();
    }

    private static List<Object> refused(String equal, Entry entry, IllegalArgumentException why) {
        return List.of(equal, entry.performance().exercise().name(), String.valueOf(why.getMessage()), "", "", "", "");
    }

    private static void row(
            List<List<Object>> rows, TargetComparison comparison, String equal, Entry entry, Knob<?> load, double si) {
        Entry loaded = entry.with(entry.performance().withSi(load, si));
        HeldPosture held = comparison.peak(loaded).held();
        Measure<?> shown = load.least().with(NumberText.rounded(si, 4).doubleValue(), 0);
        Double back = value(TargetMeasure.BACK, held, comparison.model(), comparison.target());
        rows.add(List.of(
                equal,
                entry.performance().exercise().name(),
                shown,
                Force.of(TargetMeasure.FORCE.of(held, comparison.model(), comparison.target())),
                percent(comparison.places(loaded).stream()
                        .mapToDouble(
                                place -> TargetMeasure.SHARE.of(place.held(), comparison.model(), comparison.target()))
                        .max()
                        .orElseThrow()),
                TargetMeasure.other(held, comparison.model(), comparison.target())
                        .map(other -> other.muscle().words() + " " + percent(other.used()))
                        .orElse("none"),
                back == null ? "not known here" : Force.of(back)));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}
