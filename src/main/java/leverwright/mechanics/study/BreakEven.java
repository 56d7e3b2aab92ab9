package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.numeric.Crossings;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listed;
import leverwright.mechanics.working.Listing;

/**
 * Where two exercises ask the same as one setting that both have is turned: {@code breakEven(BAR).between(squat.by(ines),
 * hinge.by(ines)).on(moment(HIP))}.
 *
 * @param <Q> the kind of the setting
 */
public final class BreakEven<Q extends Measure<Q>> {
    private final Variable<Q> variable;

    private BreakEven(Variable<Q> variable) {
        this.variable = variable;
    }

    static <Q extends Measure<Q>> BreakEven<Q> of(Variable<Q> variable) {
        return new BreakEven<>(variable);
    }

    /** Returns the same within a smaller range of the setting. */
    public BreakEven<Q> within(Q least, Q most) {
        return new BreakEven<>(variable.between(least, most));
    }

    /**
     * Names the two performances.
     *
     * @throws IllegalArgumentException if one of them has no such setting
     */
    public Pair<Q> between(Performance one, Performance other) {
        if (variable.isOwn()) {
            throw new IllegalArgumentException(variable
                    + " makes a whole performance; for two exercises give a function for each, as in"
                    + " breakEven(\"Load\", kg(2), kg(20)).between(load -> …, load -> …)");
        }
        variable.requireOf(one);
        variable.requireOf(other);
        return new Pair<>(variable, variable, variable, one, other);
    }

    /**
     * A setting of a cell's own, of which two exercises are made.
     *
     * @param <Q> its kind
     */
    public static final class Own<Q extends Measure<Q>> {
        private final String name;
        private final Q least;
        private final Q most;

        Own(String name, Q least, Q most) {
            Variable.partOfOwn(name, least, most);
            this.name = name;
            this.least = least;
            this.most = most;
        }

        /**
         * Names the two performances by how they are made of the setting.
         *
         * @param one makes the first; called by several threads, so it must not change anything
         * @param other makes the second
         */
        public Pair<Q> between(Function<? super Q, Performance> one, Function<? super Q, Performance> other) {
            Variable<Q> ofOne = Variable.setting(name, least, most, one);
            Variable<Q> ofOther = Variable.setting(name, least, most, other);
            Q middle = least.with((least.si() + most.si()) / 2, 0);
            return new Pair<>(ofOne, ofOne, ofOther, one.apply(middle), other.apply(middle));
        }
    }

    /**
     * Two performances with a setting in common.
     *
     * @param <Q> the kind of the setting
     */
    public static final class Pair<Q extends Measure<Q>> {
        private final Variable<Q> variable;
        private final Variable<Q> ofOne;
        private final Variable<Q> ofOther;
        private final Performance one;
        private final Performance other;

        private Pair(Variable<Q> variable, Variable<Q> ofOne, Variable<Q> ofOther, Performance one, Performance other) {
            this.variable = variable;
            this.ofOne = ofOne;
            this.ofOther = ofOther;
            this.one = one;
            this.other = other;
        }

        /** Returns where both ask the same of a reading. */
        public Even<Q> on(Reading<?> reading) {
            return new Even<>(this, reading);
        }
    }

    /**
     * What was found.
     *
     * @param <Q> the kind of the setting
     */
    public static final class Even<Q extends Measure<Q>> implements Listed {
        private final Variable<Q> variable;
        private final Performance one;
        private final Performance other;
        private final Reading<?> reading;
        private final DoubleUnaryOperator ofOne;
        private final DoubleUnaryOperator ofOther;
        private final Crossings found;
        private final List<String> names;

        private Even(Pair<Q> pair, Reading<?> reading) {
            this.variable = pair.variable;
            this.one = pair.one;
            this.other = pair.other;
            this.reading = reading;
            this.names = Named.of(List.of(one, other));
            this.ofOne = SolveFor.function(pair.ofOne, one, reading);
            this.ofOther = SolveFor.function(pair.ofOther, other, reading);
            this.found = Crossings.of(
                    Crew.ofCaller(),
                    si -> ofOne.applyAsDouble(si) - ofOther.applyAsDouble(si),
                    variable.least().si(),
                    variable.most().si());
            if (!found.hasValues()) {
                SolveFor.requireLooked(found);
                throw new IllegalArgumentException(
                        "at no " + variable + " do both " + one + " and " + other + " have a " + reading);
            }
        }

        /** Returns all settings at which both ask the same, from small to large. */
        public List<Q> all() {
            return found.roots().stream().map(variable::value).toList();
        }

        private String sentence(double from, double to) {
            double middle = (from + to) / 2;
            double away = ofOne.applyAsDouble(middle) - ofOther.applyAsDouble(middle);
            String more = Double.isNaN(away)
                    ? "one of them has no value in the middle of it"
                    : names.get(away > 0 ? 0 : 1) + " asks more";
            return "From " + variable.rounded(from) + " to " + variable.rounded(to) + " " + more + ".";
        }

        /** Returns one row for every setting at which both ask the same, and who asks more between them. */
        @Override
        public Listing listing() {
            List<List<Object>> rows = new ArrayList<>();
            Set<String> notes = new LinkedHashSet<>();
            double before = variable.least().si();
            for (double root : found.roots()) {
                rows.add(List.of(
                        "both ask the same at",
                        Found.value(variable.name(), variable.unit(), Sides.NOT_SIDED, root, "found by search"),
                        Found.value(
                                reading.label(one),
                                reading.unit(),
                                reading.sides(),
                                ofOne.applyAsDouble(root),
                                "there")));
                notes.add(sentence(before, root));
                before = root;
            }
            if (rows.isEmpty()) {
                double nearest = found.nearest();
                double gap = Math.abs(ofOne.applyAsDouble(nearest) - ofOther.applyAsDouble(nearest));
                rows.add(List.of(
                        "nowhere the same; closest at",
                        Found.value(variable.name(), variable.unit(), Sides.NOT_SIDED, nearest, "found by search"),
                        Found.value("gap", reading.unit(), reading.sides(), gap, "between them there")));
            }
            notes.add(sentence(
                    before,
                    found.isPartial() ? found.reached() : variable.most().si()));
            notes.add("Equal: " + variable + ". All else as set in each.");
            notes.add(SolveFor.looked(found, variable));
            notes.addAll(SolveFor.cautions(one));
            notes.addAll(SolveFor.cautions(other));
            return new Listing(title(), List.of("", variable.name(), reading.label(one)), rows, List.copyOf(notes));
        }

        private String title() {
            return "Break-even of " + names.get(0) + " and " + names.get(1);
        }

        /** Returns both over the setting, with a dot where they ask the same. */
        public Curves curves() {
            FoundPlaces places = new FoundPlaces(variable, found.roots());
            List<Curves.Curve> curves = new ArrayList<>();
            curves.add(places.curve(reading.label(one) + ", " + names.get(0), reading, ofOne));
            curves.add(places.curve(reading.label(other) + ", " + names.get(1), reading, ofOther));
            for (double root : found.roots()) {
                curves.add(places.point(
                        "the same at " + variable.rounded(root), reading, root, ofOne.applyAsDouble(root)));
            }
            Set<String> notes = new LinkedHashSet<>(SolveFor.cautions(one));
            notes.addAll(SolveFor.cautions(other));
            return new Curves(title(), places.axis(), curves, null, List.copyOf(notes));
        }
    }
}
