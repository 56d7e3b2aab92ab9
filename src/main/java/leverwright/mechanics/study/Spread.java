package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import leverwright.mechanics.body.Population;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.muscle.MuscleData;
import leverwright.mechanics.muscle.MuscleInput;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.numeric.Sampling;
import leverwright.mechanics.working.Curves;

/**
 * How sure results are: the inputs drawn many times within what is known of them, the results looked at together. Immutable;
 * every word returns another spread.
 *
 * <p>Errors typed with a value, on knobs or on the lifter, are inputs without another word: limits, evenly drawn. {@link #vary}
 * makes an input unsure in another way, {@link #people} draws the body from a survey, {@link #vary(MuscleInput)} the numbers of
 * the muscles. Inputs are independent of one another but for the dimensions of a drawn body, which go together as they did among
 * those measured, and for what {@link #together} names.
 */
public final class Spread {
    /** How many draws a spread has unless it says otherwise. */
    public static final int DRAWS = 2000;
    /** Greatest number of draws. */
    public static final int MOST_DRAWS = 20_000_000;

    private static final int LEAST_DRAWS = 10;
    private static final double SECONDS_A_DRAW = 1e-5;

    private final List<Performance> performances;
    /** Performances of one group have an input of one name in common. */
    private final List<Integer> groups;

    private final List<SpreadInput> varied;
    private final int draws;
    private final long seed;
    private final Sampling sampling;
    private final Links links;

    private Spread(
            List<Performance> performances,
            List<Integer> groups,
            List<SpreadInput> varied,
            int draws,
            long seed,
            Sampling sampling,
            Links links) {
        this.links = links;
        this.performances = List.copyOf(performances);
        this.groups = List.copyOf(groups);
        this.varied = List.copyOf(varied);
        this.draws = draws;
        this.seed = seed;
        this.sampling = sampling;
    }

    /** Begins a spread of a performance. */
    public static Spread of(Performance performance) {
        return new Spread(List.of(performance), List.of(0), List.of(), DRAWS, 1, Sampling.SOBOL, Links.NONE);
    }

    /**
     * Begins a spread of several performances that share lifter and muscles. Errors typed in one exercise are drawn in common
     * where several lifters do it, and apart from those of other exercises.
     */
    static Spread ofAll(List<Performance> performances) {
        List<Integer> groups = new ArrayList<>();
        for (int k = 0; k < performances.size(); k++) {
            int same = k;
            for (int other = k - 1; other >= 0; other--) {
                same = performances
                                .get(other)
                                .exercise()
                                .equals(performances.get(k).exercise())
                        ? other
                        : same;
            }
            groups.add(same);
        }
        return new Spread(performances, groups, List.of(), DRAWS, 1, Sampling.SOBOL, Links.NONE);
    }

    /** Returns the same spread of other performances, all of whose inputs are drawn in common. */
    Spread alongside(List<Performance> others) {
        if (hasOwn()) {
            throw new IllegalArgumentException(
                    "a setting of one's own puts a whole performance in the place of another, so"
                            + " that no knob of it can be turned through a range here; vary a knob instead");
        }
        return new Spread(others, others.stream().map(each -> 0).toList(), varied, draws, seed, sampling, links);
    }

    /** Returns this spread with an input that is unsure. */
    public <Q extends Measure<Q>> Spread vary(Knob<Q> knob, Uncertainty<Q> uncertainty) {
        return vary(Variable.of(knob), uncertainty);
    }

    /**
     * Returns this spread with an input that is unsure.
     *
     * @throws IllegalArgumentException if no performance has it, or it is varied already
     */
    public <Q extends Measure<Q>> Spread vary(Variable<Q> variable, Uncertainty<Q> uncertainty) {
        if (performances.stream().noneMatch(variable::isOf)) {
            variable.requireOf(performances.get(0));
        }
        if (variable.isOwn() && (performances.size() > 1 || hasOwn())) {
            throw new IllegalArgumentException(
                    variable + " puts a whole performance in the place of another; vary it alone,"
                            + " in a spread of one performance");
        }
        double present = variable.present(performances.get(0));
        uncertainty.about(variable, present);
        return and(new SpreadInput.OfVariable<>(variable, uncertainty));
    }

    /** Returns this spread with numbers of the muscles as unsure as their sources say. */
    public Spread vary(MuscleInput input) {
        return and(new SpreadInput.OfMuscles(
                input,
                input.of(MuscleData.standard(), performances.get(0).lifter().sex())));
    }

    /** Returns this spread with the lifter's body drawn from a survey. */
    public Spread people(Population population) {
        return and(new SpreadInput.People(population));
    }

    /**
     * Returns this spread with two of its inputs going together: {@code together(TORSO_LEAN, BAR, ratio(0.5))}. Inputs are
     * independent otherwise.
     *
     * @param one an input: a knob or a {@link Variable} that is varied, or whose error was typed
     * @param other another one
     * @param correlation of their normal scores, greater than −1 and less than 1
     * @throws IllegalArgumentException if it is not, or the two go together already
     */
    public Spread together(Object one, Object other, Ratio correlation) {
        Links more = links.with(named(one), named(other), correlation.si());
        return new Spread(performances, groups, varied, draws, seed, sampling, more);
    }

    private static String named(Object input) {
        if (input instanceof Knob<?> knob) {
            return knob.name();
        }
        if (input instanceof Variable<?> variable) {
            return variable.name();
        }
        throw new IllegalArgumentException(input
                + " is no input of a spread; name a knob such as TORSO_LEAN, or a variable such as lengthOf(THIGH)");
    }

    Links links() {
        return links;
    }

    private boolean hasOwn() {
        return varied.stream()
                .anyMatch(input -> input instanceof SpreadInput.OfVariable<?> each
                        && each.variable().isOwn());
    }

    private Spread and(SpreadInput input) {
        for (SpreadInput other : varied) {
            if (other.name().equals(input.name())) {
                throw new IllegalArgumentException(input.name() + " is varied twice; leave one of them out");
            }
        }
        List<SpreadInput> more = new ArrayList<>(varied);
        more.add(input);
        return new Spread(performances, groups, more, draws, seed, sampling, links);
    }

    /**
     * Returns this spread with another number of draws.
     *
     * @param count a whole number, 10 to {@value #MOST_DRAWS}
     * @throws IllegalArgumentException if it is not; beyond the most, with how long it would take
     */
    public Spread draws(double count) {
        if (count > MOST_DRAWS) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "a spread of %.3g draws would take about %s, at 10 µs for each result of a draw; allowed: up to %d",
                    count,
                    StudySize.time(count * SECONDS_A_DRAW),
                    MOST_DRAWS));
        }
        if (!(count >= LEAST_DRAWS) || count != Math.rint(count)) {
            throw new IllegalArgumentException("a spread has " + count + " draws; allowed: a whole number from "
                    + LEAST_DRAWS + " to " + MOST_DRAWS);
        }
        return new Spread(performances, groups, varied, (int) count, seed, sampling, links);
    }

    /** Returns this spread with another seed; equal seeds give equal draws. */
    public Spread seed(long other) {
        return new Spread(performances, groups, varied, draws, other, sampling, links);
    }

    /** Returns this spread drawn in another way. */
    public Spread drawnBy(Sampling other) {
        return new Spread(performances, groups, varied, draws, seed, other, links);
    }

    /** Returns how many draws it has. */
    public int draws() {
        return draws;
    }

    /** Returns the seed. */
    public long seed() {
        return seed;
    }

    /** Returns how it is drawn. */
    public Sampling sampling() {
        return sampling;
    }

    /** Returns the performance, or the first of several. */
    public Performance performance() {
        return performances.get(0);
    }

    List<Performance> performances() {
        return performances;
    }

    /** Returns whether any input is unsure. */
    boolean isUnsure() {
        return !varied.isEmpty() || !typed().isEmpty();
    }

    /** The inputs: errors typed first, then what is varied. */
    List<SpreadInput> inputs() {
        List<SpreadInput> all = new ArrayList<>(typed());
        all.addAll(varied);
        if (all.isEmpty()) {
            throw new IllegalArgumentException("nothing in this spread is unsure; type an error, as in"
                    + " deg(45).plusOrMinus(deg(5)), or say vary(TORSO_LEAN, withinLimits(deg(5)))");
        }
        return links.ordered(all);
    }

    private List<SpreadInput> typed() {
        List<SpreadInput> all = new ArrayList<>();
        if (hasOwn()) {
            return all;
        }
        List<String> known = new ArrayList<>();
        boolean people = varied.stream().anyMatch(SpreadInput.People.class::isInstance);
        for (int k = 0; k < performances.size(); k++) {
            for (Performance.Unsure unsure : performances.get(k).unsure()) {
                int group = unsure.ofExercise() ? groups.get(k) : -1;
                String key = group + " " + unsure.name();
                boolean replaced =
                        varied.stream().anyMatch(other -> other.name().equalsIgnoreCase(unsure.name()));
                if (!known.contains(key) && !replaced && !(people && !unsure.ofExercise())) {
                    known.add(key);
                    all.add(new SpreadInput.Typed(title(unsure, k), movers(unsure, group)));
                }
            }
        }
        return all;
    }

    private String title(Performance.Unsure unsure, int k) {
        Exercise<?> exercise = performances.get(k).exercise();
        boolean several = groups.stream().distinct().count() > 1;
        return several && unsure.ofExercise() ? unsure.name() + " of " + exercise.name() : unsure.name();
    }

    private List<Optional<Performance.Unsure.Mover>> movers(Performance.Unsure like, int group) {
        List<Optional<Performance.Unsure.Mover>> movers = new ArrayList<>();
        for (int k = 0; k < performances.size(); k++) {
            boolean concerned = group < 0 || groups.get(k) == group;
            movers.add(performances.get(k).unsure().stream()
                    .filter(each -> concerned
                            && each.ofExercise() == like.ofExercise()
                            && each.name().equals(like.name()))
                    .findFirst()
                    .map(Performance.Unsure::mover));
        }
        return movers;
    }

    /**
     * Draws and looks at results.
     *
     * @param crew who works
     * @param readings what is read off the performance, at least one
     */
    public SpreadResult of(Crew crew, Reading<?>... readings) {
        List<Asked> asked = new ArrayList<>();
        for (Reading<?> reading : readings) {
            asked.add(new Asked(0, reading));
        }
        return SpreadResult.of(this, crew, asked, List.of());
    }

    /**
     * Draws and counts in how many draws claims hold.
     *
     * @param crew who works
     * @param orders what the claims ask
     */
    public SpreadResult orders(Crew crew, List<Order> orders) {
        return SpreadResult.of(this, crew, List.of(), orders);
    }

    /**
     * Returns which inputs make results unsure.
     *
     * @param crew who works
     * @param readings what is read off the performance, at least one
     */
    public VarianceShares shares(Crew crew, Reading<?>... readings) {
        return VarianceShares.of(this, crew, List.of(readings));
    }

    /** Returns what becomes of a result while one input at a time goes through its spread. */
    public OneAtATime oneAtATime(Reading<?> reading) {
        return new OneAtATime(this, reading);
    }

    /**
     * Returns results over a knob, with the median of the draws as the curve and nine tenths of them as its band. Each draw is
     * the same all along the way.
     *
     * @param crew who works
     * @param knob the knob that is turned; if it is varied too, each setting is the middle of its draws
     * @param least its first setting
     * @param most its last setting
     * @param readings what is read, at least one
     */
    public <Q extends Measure<Q>> Curves curves(Crew crew, Knob<Q> knob, Q least, Q most, Reading<?>... readings) {
        return BandedCurves.of(this, crew, Variable.of(knob).between(least, most), readings);
    }
}
