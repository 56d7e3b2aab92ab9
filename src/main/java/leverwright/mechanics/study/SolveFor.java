package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.numeric.Crossings;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listed;
import leverwright.mechanics.working.Listing;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;

/**
 * The settings of a variable at which a reading has a wanted value: all of them, or the nearest that can be reached.
 *
 * <pre>{@code solveFor(BAR).in(hinge.by(ines)).gives(moment(HIP), newtonMetres(120))}</pre>
 *
 * @param <Q> the kind of the variable
 */
public final class SolveFor<Q extends Measure<Q>> {
    private static final String CAUTION =
            "A setting that was found is not a load to attempt; a qualified coach, spotter and"
                    + " safety bars come first.";

    private final Variable<Q> variable;

    private SolveFor(Variable<Q> variable) {
        this.variable = variable;
    }

    static <Q extends Measure<Q>> SolveFor<Q> of(Variable<Q> variable) {
        return new SolveFor<>(variable);
    }

    /**
     * Returns the same within a smaller range.
     *
     * @throws IllegalArgumentException if the ends do not rise or leave the variable's range
     */
    public SolveFor<Q> between(Q least, Q most) {
        return new SolveFor<>(variable.between(least, most));
    }

    /**
     * Names the performance whose variable is set; all else stays.
     *
     * @throws IllegalArgumentException if it has no such setting
     */
    public In<Q> in(Performance performance) {
        variable.requireOf(performance);
        return new In<>(variable, performance);
    }

    /**
     * A performance whose variable is to be found.
     *
     * @param <Q> the kind of the variable
     */
    public static final class In<Q extends Measure<Q>> {
        private final Variable<Q> variable;
        private final Performance performance;

        private In(Variable<Q> variable, Performance performance) {
            this.variable = variable;
            this.performance = performance;
        }

        /** Returns the settings at which a reading has a value. */
        public <M extends Measure<M>> Solved<Q> gives(Reading<M> reading, M wanted) {
            if (wanted.dimension() != reading.unit().dimension()) {
                throw new IllegalArgumentException(
                        "the " + reading + " is asked to be " + wanted + ", which is of another kind; give a value in "
                                + reading.unit().symbol());
            }
            String words = MeasureText.print(wanted, reading.unit(), 4);
            return new Solved<>(variable, performance, reading, wanted.si(), words, "wanted: " + words);
        }

        /** Returns the settings at which a reading has the value that it has in another performance. */
        public Solved<Q> gives(Reading<?> reading, Performance like) {
            double wanted = reading.si(like.posture());
            String words = reading.unit().format(wanted, 4);
            return new Solved<>(variable, performance, reading, wanted, words, "wanted: " + words + ", as in " + like);
        }
    }

    /** Refuses a search that was stopped before anything was found. */
    static void requireLooked(Crossings found) {
        if (found.isPartial()) {
            throw new IllegalArgumentException("the search was stopped before a posture that can be held was found");
        }
    }

    /** Where settings were looked for, in words. */
    static String looked(Crossings found, Variable<?> variable) {
        String from = variable.rounded(variable.least().si());
        String to = variable.rounded(variable.most().si());
        if (found.isPartial()) {
            return "Stopped: looked for from " + from + " to " + variable.rounded(found.reached()) + " only, of up to "
                    + to + ".";
        }
        return "Looked for at " + (Crossings.STEPS + 1) + " settings from " + from + " to " + to
                + ", with slopes; where a curve turns more than once between two of these, some can be missed.";
    }

    /** What a reading is over the variable; NaN where the posture cannot be held. */
    static DoubleUnaryOperator function(Variable<?> variable, Performance performance, Reading<?> reading) {
        return si -> {
            try {
                HeldPosture held = variable.set(performance, si).posture();
                return held.standing().wouldFall() ? Double.NaN : reading.si(held);
            } catch (IllegalArgumentException none) {
                return Double.NaN;
            }
        };
    }

    /**
     * What was found.
     *
     * @param <Q> the kind of the variable
     */
    public static final class Solved<Q extends Measure<Q>> implements Listed {
        private final Variable<Q> variable;
        private final Performance performance;
        private final Reading<?> reading;
        private final double wanted;
        private final String wantedWords;
        private final String wantedCurve;
        private final DoubleUnaryOperator value;
        private final Crossings found;

        private Solved(
                Variable<Q> variable,
                Performance performance,
                Reading<?> reading,
                double wanted,
                String wantedWords,
                String wantedCurve) {
            this.variable = variable;
            this.performance = performance;
            this.reading = reading;
            this.wanted = wanted;
            this.wantedWords = wantedWords;
            this.wantedCurve = wantedCurve;
            this.value = function(variable, performance, reading);
            this.found = Crossings.of(
                    Crew.ofCaller(),
                    si -> value.applyAsDouble(si) - wanted,
                    variable.least().si(),
                    variable.most().si());
            if (!found.hasValues()) {
                requireLooked(found);
                throw new IllegalArgumentException(
                        "no " + variable + " from " + text(variable.least().si()) + " to "
                                + text(variable.most().si()) + " has a posture that can be held and a " + reading
                                + "; ask for the posture itself to see why");
            }
        }

        /** Returns all settings that give the value, from small to large; none where it cannot be reached. */
        public List<Q> all() {
            return found.roots().stream().map(variable::value).toList();
        }

        /**
         * Returns the one setting that gives the value.
         *
         * @throws IllegalArgumentException if none does, naming the nearest that can be reached, or if several do
         */
        public Answer<Q> only() {
            List<Double> roots = found.roots();
            if (roots.size() > 1) {
                throw new IllegalArgumentException(roots.size() + " settings give " + wantedWords + ": "
                        + String.join(", ", roots.stream().map(this::text).toList())
                        + "; take all() or narrow the range");
            }
            if (roots.isEmpty()) {
                throw new IllegalArgumentException(nearestWords());
            }
            return answer(roots.get(0));
        }

        private Answer<Q> answer(double root) {
            String label = variable + " for " + wantedWords;
            double there = value.applyAsDouble(root);
            Working working = Working.of(
                            label, List.of(Step.given("x", variable.value(root), "found by search, all else as set")))
                    .checked(List.of(Step.given(
                            "there", reading.unit().dimension().of(there, 0), reading + " at this setting")));
            return Answer.of(label, variable.value(root), Sides.NOT_SIDED, working)
                    .shownIn(variable.unit())
                    .noted(CAUTION);
        }

        private String text(double si) {
            return variable.rounded(si);
        }

        private String nearestWords() {
            double nearest = found.nearest();
            return "no " + variable + " from " + text(variable.least().si()) + " to "
                    + text(variable.most().si()) + " gives " + wantedWords + "; the nearest that can be reached is "
                    + reading.unit().format(value.applyAsDouble(nearest), 4) + ", at " + text(nearest);
        }

        /** Returns one row a setting that gives the value, or the nearest that can be reached. */
        @Override
        public Listing listing() {
            List<List<Object>> rows = new ArrayList<>();
            for (double root : found.roots()) {
                rows.add(row("gives it", root));
            }
            Set<String> notes = new LinkedHashSet<>();
            if (rows.isEmpty()) {
                rows.add(row("nearest that can be reached", found.nearest()));
                notes.add("Not reached: " + nearestWords() + ".");
            }
            for (double jump : found.jumps()) {
                notes.add(
                        "At " + text(jump) + " the " + reading + " jumps past " + wantedWords + " without having it.");
            }
            notes.add(looked(found, variable) + " All else as set.");
            notes.addAll(cautions(performance));
            return new Listing(
                    title(), List.of("", variable.name(), reading.label(performance)), rows, List.copyOf(notes));
        }

        private List<Object> row(String word, double si) {
            return List.of(
                    word,
                    Found.value(variable.name(), variable.unit(), Sides.NOT_SIDED, si, "found by search"),
                    Found.value(
                            reading.label(performance),
                            reading.unit(),
                            reading.sides(),
                            value.applyAsDouble(si),
                            "at this setting"));
        }

        private String title() {
            return variable + " for " + wantedWords + " of " + reading.label(performance) + ": " + performance;
        }

        /** Returns the reading over the variable, the wanted value, and a dot at every setting that gives it. */
        public Curves curves() {
            FoundPlaces places = new FoundPlaces(variable, found.roots());
            List<Curves.Curve> curves = new ArrayList<>();
            curves.add(places.curve(reading.label(performance), reading, value));
            curves.add(places.curve(wantedCurve, reading, si -> wanted));
            for (double root : found.roots()) {
                curves.add(places.point(variable + " " + text(root), reading, root, wanted));
            }
            double present = variable.present(performance);
            return new Curves(
                    title(), places.axis(), curves, places.holds(present) ? present : null, cautions(performance));
        }
    }

    static List<String> cautions(Performance performance) {
        Set<String> notes = new LinkedHashSet<>();
        performance.lifter().notes().forEach(note -> notes.add(note.text()));
        notes.addAll(performance.exercise().cautions());
        notes.add(CAUTION);
        return List.copyOf(notes);
    }
}
