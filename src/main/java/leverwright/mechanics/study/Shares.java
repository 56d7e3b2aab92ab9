package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Area;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Stress;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.muscle.Axis;
import leverwright.mechanics.muscle.Muscle;
import leverwright.mechanics.muscle.MuscleForces;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.muscle.MuscleState;
import leverwright.mechanics.muscle.Muscles;
import leverwright.mechanics.muscle.QuickForces;
import leverwright.mechanics.muscle.TestedStrength;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Listed;
import leverwright.mechanics.working.Listing;
import leverwright.mechanics.working.Sketch;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;

/**
 * What the muscles do in a held posture: force, share of capacity, fibre length. Leg, low back and arm are shared apart, since
 * no muscle on file joins them; what one of them cannot make leaves the answers of the others standing.
 *
 * <p>Bands: the middle nine tenths of 100 draws of areas, arms, specific tensions and exponent, joined with the band that
 * uncertain inputs of the posture give. Per side; muscles of the trunk both sides together.
 */
public final class Shares implements Listed {
    /** How many draws make a band. */
    public static final int DRAWS = 100;

    private static final List<List<Axis>> PARTS = List.of(
            List.of(Axis.ANKLE, Axis.KNEE, Axis.HIP),
            List.of(Axis.LOW_BACK),
            List.of(Axis.SHOULDER, Axis.ELBOW, Axis.WRIST),
            List.of(Axis.HIP_ABDUCTION),
            List.of(Axis.SHOULDER_ABDUCTION),
            List.of(Axis.SHOULDER_HORIZONTAL, Axis.ELBOW));

    private static final String CAUTION =
            "Muscle forces are a model's estimate: no medical or training advice; after injury or surgery ask a clinician."
                    + " Licensed practice and local rules come first.";

    private static final int BAR = 10;
    private static final double FULL = 1 + 1e-6;
    private static final double NOTHING = 5e-4;

    private final HeldPosture held;
    private final MuscleModel model;

    Shares(HeldPosture held, MuscleModel model) {
        this.held = held;
        this.model = own(held, model);
    }

    static List<List<Axis>> axes(HeldPosture held) {
        return switch (held.plane()) {
            case SAGITTAL -> PARTS.subList(0, 3);
            case FRONTAL -> PARTS.subList(3, 5);
            case TRANSVERSE -> PARTS.subList(5, 6);
        };
    }

    /** Moments and angles of the axes of a part that are known in a posture. */
    record Part(Map<Axis, Double> moments, Map<Axis, Double> angles) {
        static Part of(HeldPosture held, List<Axis> axes) {
            Map<Axis, Double> moments = new EnumMap<>(Axis.class);
            Map<Axis, Double> angles = new EnumMap<>(Axis.class);
            for (Axis axis : axes) {
                try {
                    double moment = Readings.moment(axis.joint()).si(held);
                    double angle = axis == Axis.LOW_BACK
                            ? 0
                            : Readings.flexion(axis.joint()).si(held);
                    moments.put(axis, Math.abs(moment) < 1e-9 ? 0 : moment);
                    angles.put(axis, angle);
                } catch (IllegalArgumentException unknownHere) {
                    continue;
                }
            }
            return new Part(moments, angles);
        }
    }

    /** The forces in each part of the body whose moments are known. */
    static List<MuscleForces> parts(HeldPosture held, MuscleModel model) {
        List<MuscleForces> all = new ArrayList<>();
        for (List<Axis> axes : axes(held)) {
            Part part = Part.of(held, axes);
            if (!part.moments().isEmpty()) {
                all.add(own(held, model).share(held.performance().lifter(), part.moments(), part.angles()));
            }
        }
        return all;
    }

    /** The forces in the part of the body where some muscles work. */
    static MuscleForces of(HeldPosture held, MuscleModel model, Muscles muscles) {
        for (List<Axis> axes : axes(held)) {
            Part part = Part.of(held, axes);
            if (!part.moments().isEmpty()) {
                MuscleModel own = own(held, model);
                List<MuscleState> states = own.states(held.performance().lifter(), part.angles());
                if (states.stream().anyMatch(state -> muscles.members().contains(state.muscle()))) {
                    return own.share(states, part.moments());
                }
            }
        }
        throw new IllegalArgumentException("the " + muscles.words()
                + " cross no joint whose moment is known in this posture; ask for other muscles");
    }

    /** The forces without words, where the rule allows and the quick search settles; else empty. */
    private static Optional<QuickForces> quick(HeldPosture held, MuscleModel model, Muscles muscles) {
        for (List<Axis> axes : axes(held)) {
            Part part = Part.of(held, axes);
            if (!part.moments().isEmpty()) {
                Optional<QuickForces> quick =
                        own(held, model).quick(held.performance().lifter(), part.moments(), part.angles());
                if (quick.isEmpty() || quick.get().has(muscles)) {
                    return quick.filter(QuickForces::isSettled);
                }
            }
        }
        return Optional.empty();
    }

    /** A model with the numbers that the performance sets for its lifter's muscles. */
    static MuscleModel own(HeldPosture held, MuscleModel model) {
        return model.changed(held.performance().muscles());
    }

    /** Returns the model of the muscles behind it. */
    public MuscleModel model() {
        return model;
    }

    /** Returns the force of some muscles together. */
    public Answer<Force> force(Muscles muscles) {
        return force(muscles, model).of(held);
    }

    /** Returns force over capacity of some muscles together. */
    public Answer<Ratio> capacityUsed(Muscles muscles) {
        return capacityUsed(muscles, model).of(held);
    }

    /**
     * Returns a figure with the pull of the muscle groups that work, each with force and share of capacity.
     *
     * @throws IllegalArgumentException for exercises that are not seen from the side
     */
    public Sketch onto(Sketch sketch) {
        return LinesOfPull.onto(sketch, held, model);
    }

    /**
     * Returns what ankle, knee or hip press together with along the bone below, shoulder or elbow along the upper arm, per side, and
     * the low back across its disc, in total.
     */
    public Answer<Force> compression(Joint joint) {
        return MuscleContact.of(held, model, joint);
    }

    /** Returns the length of a muscle's fibres over their optimum; of several, the mean. */
    public Answer<Ratio> length(Muscles muscles) {
        return length(muscles, model).of(held);
    }

    static Reading<Force> force(Muscles muscles, MuscleModel model) {
        ToDoubleFunction<HeldPosture> si = held -> {
            Optional<QuickForces> quick = quick(held, model, muscles);
            return quick.isPresent()
                    ? quick.get().force(muscles)
                    : of(held, model, muscles).asked().force(muscles);
        };
        Reading<Force> reading = Reading.of(
                "force of the " + muscles.words(),
                Unit.NEWTON,
                sides(muscles),
                si,
                held -> answer(
                        "force of the " + muscles.words(),
                        Force.of(si.applyAsDouble(held)),
                        held,
                        muscles,
                        model,
                        forces -> forces.force(muscles),
                        si,
                        forces -> forceSteps(forces, muscles)));
        return reading.ofMuscles(change -> force(muscles, change.apply(model)));
    }

    static Reading<Ratio> capacityUsed(Muscles muscles, MuscleModel model) {
        ToDoubleFunction<HeldPosture> si = held -> {
            Optional<QuickForces> quick = quick(held, model, muscles);
            return quick.isPresent()
                    ? quick.get().capacityUsed(muscles)
                    : of(held, model, muscles).asked().capacityUsed(muscles);
        };
        String label = "capacity used of the " + muscles.words();
        Reading<Ratio> reading = Reading.of(
                label,
                Unit.PERCENT,
                Sides.NOT_SIDED,
                si,
                held -> answer(
                                label,
                                Ratio.of(si.applyAsDouble(held)),
                                held,
                                muscles,
                                model,
                                forces -> forces.capacityUsed(muscles),
                                si,
                                forces -> usedSteps(forces, muscles))
                        .shownIn(Unit.PERCENT));
        return reading.ofMuscles(change -> capacityUsed(muscles, change.apply(model)));
    }

    static Reading<Ratio> length(Muscles muscles, MuscleModel model) {
        ToDoubleFunction<HeldPosture> si = held -> meanLength(of(held, model, muscles), muscles);
        String label = "fibre length over optimum of the " + muscles.words();
        Reading<Ratio> reading = Reading.of(
                label,
                Unit.ONE,
                Sides.NOT_SIDED,
                si,
                held -> answer(
                        label,
                        Ratio.of(si.applyAsDouble(held)),
                        held,
                        muscles,
                        model,
                        forces -> meanLength(forces, muscles),
                        si,
                        forces -> List.of(
                                Step.given(
                                        "length",
                                        Ratio.of(meanLength(forces, muscles)),
                                        "1 + the fibres' part (all in the vasti, 0.55 elsewhere) of the integral of the muscle arms from the angles of optimum, over the optimum length"))));
        return reading.ofMuscles(change -> length(muscles, change.apply(model)));
    }

    private static double meanLength(MuscleForces forces, Muscles muscles) {
        return forces.states(muscles).stream()
                .mapToDouble(MuscleState::length)
                .average()
                .orElseThrow();
    }

    private static Sides sides(Muscles muscles) {
        return muscles.members().stream().allMatch(Muscle::isOfTheTrunk) ? Sides.TOTAL : Sides.PER_SIDE;
    }

    /** Makes the steps of a working from the forces. */
    private interface Steps {
        List<Step> of(MuscleForces forces);
    }

    private static <M extends Measure<M>> Answer<M> answer(
            String label,
            M value,
            HeldPosture held,
            Muscles muscles,
            MuscleModel model,
            ToDoubleFunction<MuscleForces> drawn,
            ToDoubleFunction<HeldPosture> again,
            Steps steps) {
        MuscleForces own = of(held, model, muscles);
        MuscleForces forces = own.asked();
        double[] draws = draws(held, model, muscles, drawn);
        HeldPosture.Span span = held.span(Reading.<M>of(
                label,
                Unit.ONE,
                Sides.NOT_SIDED,
                again,
                any -> Answer.of(label, value, Sides.NOT_SIDED, Working.given(label, "v", value, label))));
        double low = Math.min(value.si(), span.low());
        double high = Math.max(value.si(), span.high());
        if (draws.length > 0) {
            low = Math.min(low, draws[draws.length / 20]);
            high = Math.max(high, draws[draws.length - 1 - draws.length / 20]);
        }
        Set<String> notes = new LinkedHashSet<>();
        beyond(own).ifPresent(words -> notes.add(words + greatest(held, model)));
        notes.addAll(basis(held, model, own));
        notes.addAll(forces.marks(muscles));
        notes.addAll(held.performance().muscles().words());
        notes.add(ruleNote(own(held, model)));
        notes.add("Band: middle nine tenths of " + draws.length
                + " draws of areas, arms, specific tensions and exponent, seed 1"
                + (draws.length < DRAWS
                        ? "; in the other " + (DRAWS - draws.length) + " the muscles could not make the moments."
                        : "."));
        notes.add(CAUTION);
        return Answer.of(
                        label,
                        value,
                        label.startsWith("force") ? sides(muscles) : Sides.NOT_SIDED,
                        () -> Working.of(label, steps.of(forces)).checked(checks(forces, muscles)))
                .between(value.with(low, 0), value.with(high, 0))
                .noted(notes);
    }

    private Lifter lifter() {
        return held.performance().lifter();
    }

    /** What the strength of the muscles in play rests on: tests of the lifter, published means, or areas alone. */
    private static List<String> basis(HeldPosture held, MuscleModel model, MuscleForces forces) {
        Lifter lifter = held.performance().lifter();
        List<String> notes = new ArrayList<>();
        if (model.isPopulationEstimate(lifter)) {
            notes.add(MuscleModel.POPULATION);
        }
        model.tests(lifter)
                .forEach(test -> notes.add("Calibrated by " + test.how() + ": " + told(test)
                        + "; actions not tested stay a population estimate."));
        List<String> means = new ArrayList<>();
        for (TestedStrength mean : model.means(lifter)) {
            double moment = forces.moments().getOrDefault(mean.axis(), 0.0);
            if (moment * mean.moment().si() > 0) {
                means.add(told(mean) + " (" + mean.how().substring(mean.how().indexOf(", ") + 2) + ")");
            }
        }
        if (!means.isEmpty()) {
            notes.add("As strong as people on average: " + String.join("; ", means) + ".");
        }
        return notes;
    }

    private static String told(TestedStrength test) {
        return test.axis().action(test.moment().si()) + " "
                + NumberText.print(NumberText.rounded(Math.abs(test.moment().si()), 3)) + " N·m at " + test.angle();
    }

    /** Says that the muscles cannot hold this, and what the numbers then mean; empty if they can. */
    static Optional<String> beyond(MuscleForces forces) {
        return forces.feasible()
                ? Optional.empty()
                : Optional.of("Beyond this model: " + forces.solution().shortage()
                        + ". What is shown is what is asked: above 100 % of capacity, muscles that much stronger.");
    }

    /** The greatest load that the model holds in the posture, where the exercise has a load to change. */
    private static String greatest(HeldPosture held, MuscleModel model) {
        String found = GreatestLoad.inWords(held, model);
        return (found.isEmpty() ? "" : " " + found)
                + " A test of the lifter, tested(…), takes the place of this estimate.";
    }

    static String ruleNote(MuscleModel model) {
        return "Shared by " + model.rule().words() + ", divided by " + model.divisor()
                + (model.coContraction().si() > 0
                        ? "; muscles against a moment make at least " + model.coContraction() + " of it."
                        : "; the rule predicts little co-contraction, which would raise force and contact load: set"
                                + " coContraction(…).");
    }

    /** Values by draws, sorted; those that cannot be made are left out. */
    static double[] draws(HeldPosture held, MuscleModel model, Muscles muscles, ToDoubleFunction<MuscleForces> value) {
        RandomStream random = new RandomStream(1);
        List<Double> values = new ArrayList<>();
        for (int k = 0; k < DRAWS; k++) {
            MuscleModel drawn = model.drawn(random, held.performance().lifter().sex());
            try {
                values.add(value.applyAsDouble(of(held, drawn, muscles).asked()));
            } catch (IllegalArgumentException cannot) {
                continue;
            }
        }
        double[] sorted = values.stream().mapToDouble(v -> v).toArray();
        Arrays.sort(sorted);
        return sorted;
    }

    private static String symbol(Muscle muscle) {
        return muscle.name().toLowerCase(Locale.ROOT);
    }

    private static Step forceStep(MuscleForces forces, MuscleState state) {
        return Step.given(
                "F_" + symbol(state.muscle()),
                Force.of(forces.force(state.muscle())),
                "found by search, " + forces.model().rule().words() + " by "
                        + forces.model().divisor() + "; checks below");
    }

    private static List<Step> forceSteps(MuscleForces forces, Muscles muscles) {
        List<Step> steps = new ArrayList<>();
        List<Expression> terms = new ArrayList<>();
        for (MuscleState state : forces.states(muscles)) {
            Step step = forceStep(forces, state);
            steps.add(step);
            terms.add(step.result());
        }
        if (terms.size() > 1) {
            steps.add(Step.of("F_all", Expression.sum(terms), Force.of(forces.force(muscles)), muscles.words()));
        }
        return steps;
    }

    private static List<Step> usedSteps(MuscleForces forces, Muscles muscles) {
        List<Step> steps = new ArrayList<>();
        List<Expression> pulls = new ArrayList<>();
        List<Expression> capacities = new ArrayList<>();
        for (MuscleState state : forces.states(muscles)) {
            String name = symbol(state.muscle());
            Step byLength = lengthStep(state, name);
            Expression product = Expression.product(
                    Expression.symbol("A_" + name, Area.of(state.area()), "area, scaled to the lifter"),
                    Expression.symbol(
                            "s_" + name, Stress.of(state.tension()), "specific tension of the same source, calibrated"),
                    byLength.result());
            steps.add(byLength);
            if (state.cosine() != 1) {
                product = product.times(
                        Expression.cosine(Expression.symbol("p_" + name, Angle.of(state.pennation()), "pennation")));
            }
            if (state.speedFactor() != 1) {
                product = product.times(
                        Expression.symbol("v_" + name, Ratio.of(state.speedFactor()), "speed factor, Hill's curve"));
            }
            Step capacity = Step.of("C_" + name, product, Force.of(state.capacity()), "capacity");
            steps.add(capacity);
            capacities.add(capacity.result());
            Step force = forceStep(forces, state);
            steps.add(force);
            pulls.add(force.result());
        }
        steps.add(Step.of(
                "used",
                Expression.sum(pulls).dividedBy(Expression.sum(capacities)),
                Ratio.of(forces.capacityUsed(muscles)),
                "force over capacity"));
        return steps;
    }

    private static Step lengthStep(MuscleState state, String name) {
        Ratio value = Ratio.of(state.lengthFactor());
        double off = (state.length() - 1) / 0.5;
        if (state.lengthFactor() == 1 || 1 - off * off != state.lengthFactor()) {
            return Step.given(
                    "f_" + name, value, state.lengthFactor() == 1 ? "length factor" : "length factor, held at 0.1");
        }
        Expression length = Expression.symbol(
                "l_" + name, Ratio.of(state.length()), "fibre length over optimum, by the integral of the arms");
        return Step.of(
                "f_" + name,
                Expression.exact("1")
                        .minus(length.minus(Expression.exact("1"))
                                .dividedBy(Expression.exact("0.5"))
                                .squared()),
                value,
                "length factor");
    }

    /** What the forces make at each axis that the muscles cross, less the moment, and how far from optimal they are. */
    private static List<Step> checks(MuscleForces forces, Muscles muscles) {
        if (!forces.feasible()) {
            return List.of();
        }
        List<Step> checks = new ArrayList<>();
        for (Map.Entry<Axis, Double> moment : forces.moments().entrySet()) {
            Axis axis = moment.getKey();
            String name = axis.name().toLowerCase(Locale.ROOT);
            if (forces.states(muscles).stream().noneMatch(state -> state.arms().containsKey(axis))) {
                continue;
            }
            List<Expression> terms = new ArrayList<>();
            double sum = 0;
            for (MuscleState state : forces.states()) {
                Double arm = state.arms().get(axis);
                double force = forces.force(state.muscle());
                if (arm != null && force > 0) {
                    terms.add(Expression.symbol(
                                    "r_" + symbol(state.muscle()) + "_" + name,
                                    Length.of(arm),
                                    "muscle arm about the " + axis.joint().words())
                            .times(Expression.symbol(
                                    "F_" + symbol(state.muscle()), Force.of(force), "found by search")));
                    sum += arm * force;
                }
            }
            if (terms.isEmpty()) {
                continue;
            }
            terms.add(Expression.symbol("M_" + name, Moment.of(moment.getValue()), "the moment's own working says why")
                    .negated());
            checks.add(Step.of(
                    "made_less_needed_" + name, Expression.sum(terms), Moment.of(sum - moment.getValue()), "vanishes"));
        }
        checks.add(Step.given(
                "optimality", Ratio.of(forces.solution().optimality()), "0: no other forces cost less by the rule"));
        return checks;
    }

    /** Returns force, share of capacity, fibre length and what stands behind them, muscle by muscle. */
    @Override
    public Listing listing() {
        List<List<Object>> rows = new ArrayList<>();
        Set<String> notes = new LinkedHashSet<>();
        notes.add(model.basis(lifter()));
        notes.addAll(held.performance().muscles().words());
        notes.add(ruleNote(model));
        for (MuscleForces own : parts(held, model)) {
            beyond(own).ifPresent(words -> notes.add(words + greatest(held, model)));
            MuscleForces forces = own.asked();
            if (!forces.feasible()) {
                continue;
            }
            double[][] bands = bands(forces);
            for (int k = 0; k < forces.states().size(); k++) {
                MuscleState state = forces.states().get(k);
                double used = forces.capacityUsed(state.muscle());
                rows.add(List.of(
                        state.muscle().words() + (sides(state.muscle()) == Sides.TOTAL ? ", both sides" : ""),
                        bar(used, state.marks().isEmpty()),
                        banded(used, bands[k]),
                        Force.of(forces.force(state.muscle())),
                        Ratio.of(state.length()),
                        numbers(state)));
            }
        }
        notes.add(
                "Share: 10 % of capacity a step; whole where every number was read and lies within what was measured, shaded where one is"
                        + " from memory or extrapolated. Used: of capacity, and the middle nine tenths of " + DRAWS
                        + " draws of areas, arms and specific tensions, seed 1. Force per side, of the trunk both sides together;"
                        + " length of the fibres over their optimum.");
        notes.add(CAUTION);
        return new Listing(
                "Muscles: " + held.performance(),
                List.of("muscle", "share", "used", "force", "length", "numbers"),
                rows,
                List.copyOf(notes));
    }

    /** Least and greatest of the middle nine tenths of what each muscle uses of its capacity, over draws of its numbers. */
    private double[][] bands(MuscleForces forces) {
        int muscles = forces.states().size();
        double[][] values = new double[muscles][DRAWS];
        Map<Axis, Double> angles = new EnumMap<>(Axis.class);
        for (List<Axis> axes : axes(held)) {
            Part part = Part.of(held, axes);
            if (part.moments().equals(forces.moments())) {
                angles.putAll(part.angles());
            }
        }
        RandomStream random = new RandomStream(1);
        for (int draw = 0; draw < DRAWS; draw++) {
            MuscleModel drawn = model.drawnNumbers(random, lifter().sex());
            Optional<QuickForces> quick =
                    drawn.quick(lifter(), forces.moments(), angles).filter(QuickForces::isSettled);
            MuscleForces full = quick.isPresent()
                    ? forces
                    : drawn.share(lifter(), forces.moments(), angles).asked();
            for (int k = 0; k < muscles; k++) {
                Muscle muscle = forces.states().get(k).muscle();
                values[k][draw] = quick.isPresent() ? quick.get().capacityUsed(muscle) : full.capacityUsed(muscle);
            }
        }
        double[][] bands = new double[muscles][];
        for (int k = 0; k < muscles; k++) {
            Arrays.sort(values[k]);
            bands[k] = new double[] {values[k][DRAWS / 20], values[k][DRAWS - 1 - DRAWS / 20]};
        }
        return bands;
    }

    /** What a muscle's numbers rest on, in few words. */
    private static String numbers(MuscleState state) {
        List<String> words = new ArrayList<>();
        if (state.marks().stream().anyMatch(mark -> mark.contains("memory"))) {
            words.add("memory");
        }
        if (state.marks().stream().anyMatch(mark -> mark.contains("extrapolated"))) {
            words.add("extrapolated");
        }
        if (state.marks().stream().anyMatch(mark -> mark.contains("held at"))) {
            words.add("far from optimum");
        }
        return words.isEmpty() ? "read" : String.join(", ", words);
    }

    /**
     * A bar of one step for each tenth of capacity, begun ones counted to the nearest; its pattern tells what it rests on, and
     * a mark at its end that more than all of capacity is asked.
     */
    static String bar(double share, boolean read) {
        int steps = (int) Math.rint(BAR * Math.max(0, Math.min(1, share)));
        return (read ? "█" : "▒").repeat(steps) + "·".repeat(BAR - steps) + (share > FULL ? "▶" : "");
    }

    private static String banded(double used, double... band) {
        double low = Math.min(used, band[0]);
        double high = Math.max(used, band[1]);
        return high < NOTHING
                ? "0 %, rests"
                : percent(used) + ", " + percent(low).replace(" %", "") + " to " + percent(high);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, share < 0.0995 ? "%.1f %%" : "%.0f %%", 100 * share);
    }

    /** Returns the action that limits each part of the body here, and the share of the moments that could be made. */
    public Listing limits() {
        List<List<Object>> rows = new ArrayList<>();
        for (MuscleForces forces : parts(held, model)) {
            Map<Axis, Double> moments = new LinkedHashMap<>(forces.moments());
            if (Double.isInfinite(forces.greatestScale())) {
                continue;
            }
            Axis axis = forces.limiting();
            rows.add(List.of(
                    axis.action(moments.getOrDefault(axis, 0.0)),
                    Ratio.of(forces.greatestScale()),
                    forces.feasible() ? "can be held" : forces.solution().shortage()));
        }
        return new Listing(
                "What limits: " + held.performance(),
                List.of("limiting joint action", "greatest share of these moments", "verdict in this model"),
                rows,
                List.of(model.basis(lifter()), CAUTION));
    }
}
