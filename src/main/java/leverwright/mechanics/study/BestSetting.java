package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.numeric.BoxSearch;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Listed;
import leverwright.mechanics.working.Listing;
import org.jspecify.annotations.Nullable;

/**
 * The best setting of a few variables under limits: {@code search(squat.by(ines)).turn(TORSO_LEAN, deg(20), deg(60)).turn(BAR,
 * kg(20), kg(100)).keepBelow(compression(LOW_BACK), newtons(3400)).most(force(VASTI))}. Immutable; every word returns another
 * search.
 */
public final class BestSetting {
    private static final double BINDS = 1e-3;
    private static final double MET = 1e-9;

    private final Performance performance;
    private final List<Variable<?>> turned;
    private final List<Limit> limits;
    /** What several settings of a cell's own make together; they stand first among those turned. */
    private final @Nullable Together together;

    /** Settings of a cell's own that make a performance together. */
    private record Together(int settings, Function<double[], Performance> maker) {}

    /**
     * Makes a performance of three settings.
     *
     * @param <A> the kind of the first
     * @param <B> the kind of the second
     * @param <C> the kind of the third
     */
    @FunctionalInterface
    public interface OfThree<A, B, C> {
        /** Returns the performance at three settings. */
        Performance at(A one, B other, C third);
    }

    /** A limit that is to be kept: a reading's least or greatest value. */
    private record Limit(Reading<?> reading, double value, boolean below, String words) {
        /** By how much it is broken, over the size of the limit; 0 or less where it is kept. */
        double breach(double there) {
            double away = below ? there - value : value - there;
            return away / Math.max(Math.abs(value), 1e-6);
        }
    }

    private BestSetting(
            Performance performance, List<Variable<?>> turned, List<Limit> limits, @Nullable Together together) {
        this.together = together;
        this.performance = performance;
        this.turned = List.copyOf(turned);
        this.limits = List.copyOf(limits);
    }

    static BestSetting of(Performance performance) {
        return new BestSetting(performance, List.of(), List.of(), null);
    }

    /** Returns this search with a knob that may be set anywhere in its range. */
    public <Q extends Measure<Q>> BestSetting turn(Knob<Q> knob) {
        return turn(Variable.of(knob));
    }

    /** Returns this search with a knob that may be set between two values. */
    public <Q extends Measure<Q>> BestSetting turn(Knob<Q> knob, Q least, Q most) {
        return turn(Variable.of(knob).between(least, most));
    }

    /** Returns this search with a variable that may be set between two values. */
    public <Q extends Measure<Q>> BestSetting turn(Variable<Q> variable, Q least, Q most) {
        return turn(variable.between(least, most));
    }

    /**
     * Returns this search with a variable that may be set anywhere in its range.
     *
     * @throws IllegalArgumentException if the performance has no such setting, or there are too many
     */
    public BestSetting turn(Variable<?> variable) {
        variable.requireOf(performance);
        if (turned.size() == BoxSearch.MOST_AXES
                || turned.stream().anyMatch(each -> each.name().equals(variable.name()))) {
            throw new IllegalArgumentException(variable + " is turned twice or is one setting too many; allowed: up to "
                    + BoxSearch.MOST_AXES + " different ones");
        }
        if (variable.isOwn() && turned.stream().anyMatch(Variable::isOwn)) {
            throw new IllegalArgumentException(variable
                    + " puts a whole performance in the place of another; give settings of one's own together, as in"
                    + " turn(\"Aside\", cm(-80), cm(-20), \"Height\", cm(0), cm(200), (x, y) -> …)");
        }
        List<Variable<?>> more = new ArrayList<>(turned);
        more.add(variable);
        return new BestSetting(performance, more, limits, together);
    }

    /**
     * Returns this search with two settings of a cell's own that make a performance together: {@code turn("Aside", cm(-80), cm(-20),
     * "Height", cm(0), cm(200), (x, y) -> curl.load(…).by(ines))}.
     *
     * @param performance makes the performance; called by several threads, so it must not change anything
     * @throws IllegalArgumentException if limits do not rise, or another setting of the cell's own is turned already
     */
    public <A extends Measure<A>, B extends Measure<B>> BestSetting turn(
            String name,
            A least,
            A most,
            String otherName,
            B otherLeast,
            B otherMost,
            BiFunction<? super A, ? super B, Performance> performance) {
        return own(
                List.of(Variable.partOfOwn(name, least, most), Variable.partOfOwn(otherName, otherLeast, otherMost)),
                si -> performance.apply(least.with(si[0], 0), otherLeast.with(si[1], 0)));
    }

    /**
     * Returns this search with three settings of a cell's own that make a performance together.
     *
     * @param performance makes the performance; called by several threads, so it must not change anything
     * @throws IllegalArgumentException if limits do not rise, or another setting of the cell's own is turned already
     */
    public <A extends Measure<A>, B extends Measure<B>, C extends Measure<C>> BestSetting turn(
            String name,
            A least,
            A most,
            String otherName,
            B otherLeast,
            B otherMost,
            String thirdName,
            C thirdLeast,
            C thirdMost,
            OfThree<? super A, ? super B, ? super C> performance) {
        return own(
                List.of(
                        Variable.partOfOwn(name, least, most),
                        Variable.partOfOwn(otherName, otherLeast, otherMost),
                        Variable.partOfOwn(thirdName, thirdLeast, thirdMost)),
                si -> performance.at(least.with(si[0], 0), otherLeast.with(si[1], 0), thirdLeast.with(si[2], 0)));
    }

    private BestSetting own(List<Variable<?>> settings, Function<double[], Performance> maker) {
        if (turned.stream().anyMatch(Variable::isOwn)) {
            throw new IllegalArgumentException(settings.get(0)
                    + " and what goes with it put a whole performance in the place of another, as " + turned.get(0)
                    + " does already; give all of them together");
        }
        List<Variable<?>> all = new ArrayList<>(settings);
        all.addAll(turned);
        Set<String> names = new LinkedHashSet<>(all.stream().map(Variable::name).toList());
        if (names.size() < all.size() || all.size() > BoxSearch.MOST_AXES) {
            throw new IllegalArgumentException("this search turns " + all.size() + " settings, "
                    + String.join(", ", names) + "; allowed: up to " + BoxSearch.MOST_AXES + " with different names");
        }
        return new BestSetting(performance, all, limits, new Together(settings.size(), maker));
    }

    /** Returns this search with a reading that must not rise above a limit. */
    public <M extends Measure<M>> BestSetting keepBelow(Reading<M> reading, M limit) {
        return and(reading, limit, true);
    }

    /** Returns this search with a reading that must not fall below a limit. */
    public <M extends Measure<M>> BestSetting keepAbove(Reading<M> reading, M limit) {
        return and(reading, limit, false);
    }

    private <M extends Measure<M>> BestSetting and(Reading<M> reading, M limit, boolean below) {
        if (!Double.isFinite(limit.si())) {
            throw new IllegalArgumentException("a limit of the " + reading + " is " + limit.si() + "; allowed: finite");
        }
        String words = reading + (below ? " at most " : " at least ") + MeasureText.print(limit, reading.unit(), 4);
        List<Limit> more = new ArrayList<>(limits);
        more.add(new Limit(reading, limit.si(), below, words));
        return new BestSetting(performance, turned, more, together);
    }

    /** Looks for the setting at which a reading is greatest. */
    public Best most(Reading<?> reading) {
        return search(reading, -1, "most");
    }

    /** Looks for the setting at which a reading is least. */
    public Best least(Reading<?> reading) {
        return search(reading, 1, "least");
    }

    private Best search(Reading<?> reading, int sign, String word) {
        if (turned.isEmpty()) {
            throw new IllegalArgumentException(
                    "this search turns nothing; say what may be set, as in .turn(TORSO_LEAN, deg(20), deg(60))");
        }
        BoxSearch.Best best =
                BoxSearch.of(Crew.ofCaller(), point -> score(point, reading, sign, limits), turned.size(), present());
        if (Double.isInfinite(best.score().breach())) {
            double[] point = best.point().stream().mapToDouble(each -> each).toArray();
            throw new IllegalArgumentException(
                    "no setting that was tried has a posture that can be held with all that is asked for; "
                            + why(point, reading));
        }
        return new Best(this, reading, word, best);
    }

    private BoxSearch.Score score(double[] point, Reading<?> reading, int sign, List<Limit> kept) {
        try {
            HeldPosture held = at(point).posture();
            if (held.standing().wouldFall()) {
                return new BoxSearch.Score(Double.POSITIVE_INFINITY, 0);
            }
            double breach = 0;
            for (Limit limit : kept) {
                double broken = limit.breach(limit.reading().si(held));
                breach += broken > MET ? broken : 0;
            }
            return new BoxSearch.Score(breach, sign * reading.si(held));
        } catch (IllegalArgumentException nowhere) {
            return new BoxSearch.Score(Double.POSITIVE_INFINITY, 0);
        }
    }

    /** Why a point is none, in words. */
    private String why(double[] point, Reading<?> reading) {
        try {
            HeldPosture held = at(point).posture();
            if (held.standing().wouldFall()) {
                return held.standing().words() + "; widen the ranges";
            }
            limits.forEach(limit -> limit.reading().si(held));
            reading.si(held);
            return "widen the ranges";
        } catch (IllegalArgumentException nowhere) {
            return "at one of them: " + nowhere.getMessage();
        }
    }

    private double setting(int k, double part) {
        double from = turned.get(k).least().si();
        double to = turned.get(k).most().si();
        return part == 1 ? to : from + part * (to - from);
    }

    private Performance at(double... point) {
        Performance at = performance;
        Together own = together;
        int first = 0;
        if (own != null) {
            double[] si = new double[own.settings()];
            for (int k = 0; k < si.length; k++) {
                si[k] = setting(k, point[k]);
            }
            at = own.maker().apply(si);
            first = si.length;
        }
        return turned(at, first, point);
    }

    private Performance turned(Performance start, int first, double... point) {
        Performance at = start;
        for (boolean own : new boolean[] {true, false}) {
            for (int k = first; k < point.length; k++) {
                if (turned.get(k).isOwn() == own) {
                    at = turned.get(k).set(at, setting(k, point[k]));
                }
            }
        }
        return at;
    }

    /** Where the settings stand now, as a point; empty where one has no present value in its range. */
    private double[] present() {
        double[] point = new double[turned.size()];
        for (int k = 0; k < point.length; k++) {
            double from = turned.get(k).least().si();
            double to = turned.get(k).most().si();
            point[k] = (turned.get(k).present(performance) - from) / (to - from);
            if (!(point[k] >= 0 && point[k] <= 1)) {
                return new double[] {};
            }
        }
        return point;
    }

    /** What was found: the best setting, or where no setting keeps the limits, which of them binds. */
    public static final class Best implements Listed {
        private final BestSetting search;
        private final Reading<?> reading;
        private final String word;
        private final double[] point;
        private final double breach;
        private final int tried;
        private final boolean partial;
        private final HeldPosture held;

        private Best(BestSetting search, Reading<?> reading, String word, BoxSearch.Best best) {
            this.search = search;
            this.reading = reading;
            this.word = word;
            this.point = best.point().stream().mapToDouble(each -> each).toArray();
            this.breach = best.score().breach();
            this.tried = best.evaluations();
            this.partial = best.partial();
            this.held = search.at(point).posture();
        }

        /** Returns whether it was stopped before its end. */
        public boolean isPartial() {
            return partial;
        }

        /** Returns whether a setting keeps all limits. */
        public boolean isFeasible() {
            return breach == 0;
        }

        /**
         * Returns the performance at the best setting.
         *
         * @throws IllegalArgumentException if no setting keeps the limits, naming those that bind
         */
        public Performance performance() {
            if (!isFeasible()) {
                throw new IllegalArgumentException("no setting keeps all limits: " + String.join(" ", binding()));
            }
            return held.performance();
        }

        /** Returns the value at the best setting, SI. */
        public double value() {
            return reading.si(performance().posture());
        }

        /** For every limit that no setting keeps: the nearest alone; or that they cannot be kept together. */
        private List<String> binding() {
            List<String> words = new ArrayList<>();
            for (Limit limit : search.limits) {
                BoxSearch.Best alone = BoxSearch.of(
                        Crew.ofCaller(),
                        at -> search.score(at, limit.reading(), limit.below() ? 1 : -1, List.of()),
                        point.length);
                double nearest =
                        limit.below() ? alone.score().value() : -alone.score().value();
                if (limit.breach(nearest) > MET) {
                    words.add("The limit \"" + limit.words() + "\" binds: the nearest is "
                            + limit.reading().unit().format(nearest, 4) + ".");
                }
            }
            if (words.isEmpty()) {
                List<String> broken = new ArrayList<>();
                for (Limit limit : search.limits) {
                    if (limit.breach(limit.reading().si(held)) > -BINDS) {
                        broken.add("\"" + limit.words() + "\"");
                    }
                }
                words.add("Each limit can be kept alone; what cannot be kept together is "
                        + String.join(" and ", broken) + ".");
            }
            return words;
        }

        /** Returns settings, result and limits, and which limits bind. */
        @Override
        public Listing listing() {
            List<List<Object>> rows = new ArrayList<>();
            Set<String> notes = new LinkedHashSet<>();
            if (partial) {
                notes.add(String.format(Locale.ROOT, "Stopped after %d settings: listed is the best of them.", tried));
            }
            if (!isFeasible()) {
                notes.add("No setting keeps all limits; listed is the one that breaks them least.");
                notes.addAll(binding());
            }
            for (int k = 0; k < point.length; k++) {
                Variable<?> variable = search.turned.get(k);
                rows.add(List.of(
                        variable.name(),
                        Found.value(
                                variable.name(),
                                variable.unit(),
                                Sides.NOT_SIDED,
                                search.setting(k, point[k]),
                                "found by search"),
                        end(variable, k)));
            }
            rows.add(List.of(word + " " + reading.label(held.performance()), entry(reading), ""));
            for (Limit limit : search.limits) {
                double broken = limit.breach(limit.reading().si(held));
                String state = Math.abs(broken) <= BINDS ? "binds" : broken > 0 ? "broken" : "kept";
                rows.add(List.of(limit.words(), entry(limit.reading()), state));
            }
            notes.add(String.format(
                    Locale.ROOT,
                    "Found by search at %d settings; a better one between them cannot be ruled out. All else as set.",
                    tried));
            notes.addAll(SolveFor.cautions(search.performance));
            return new Listing(
                    "Search: " + word + " " + reading.label(held.performance()) + ", " + search.performance,
                    List.of("what", "value", ""),
                    rows,
                    List.copyOf(notes));
        }

        private String end(Variable<?> variable, int k) {
            if (point[k] == 0) {
                return "at the lower end, " + variable.rounded(variable.least().si());
            }
            return point[k] == 1
                    ? "at the upper end, " + variable.rounded(variable.most().si())
                    : "";
        }

        private Answer<?> entry(Reading<?> of) {
            return Found.value(
                    of.label(held.performance()), of.unit(), of.sides(), of.si(held), "at the setting that was found");
        }
    }
}
