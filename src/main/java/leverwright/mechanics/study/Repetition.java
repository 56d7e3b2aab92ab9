package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.exercise.Course;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.ImpossibleSetting;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Mechanism;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Duration;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.measure.Work;
import leverwright.mechanics.motion.Energies;
import leverwright.mechanics.motion.LinkagePath;
import leverwright.mechanics.motion.Repeating;
import leverwright.mechanics.motion.Tempo;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.muscle.Muscles;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Listing;
import leverwright.mechanics.working.Sketch;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * One repetition of an exercise: a knob turned from one setting to another and back at a tempo, each way by minimum jerk, every
 * joint's moment by inverse dynamics.
 *
 * <pre>{@code
 * repetition(backSquat().barbell(kg(60)).by(ines)).through(THIGH_ABOVE_LEVEL, deg(80), deg(0)).tempo(seconds(2), seconds(1))
 * }</pre>
 *
 * <p>Postures are found at 65 settings and joined by a smooth curve. Where inputs carry an error, the whole
 * repetition is computed all over their bands as well, and results carry the ends. Not for several threads at once.
 */
public final class Repetition {
    private static final int SAMPLES = 65;
    private static final int INSTANTS = 201;
    /** Change of energy, J, below which it counts as back where it was. */
    private static final double BACK = 1e-6;

    /** Into how many parts one way is divided where it is played. */
    private static final int BEATS = 24;

    private static final String BY_MOTION = "minimum jerk between rest and rest; inverse dynamics of rigid segments";

    private final Performance performance;
    private final Knob<?> knob;
    private final double first;
    private final double last;
    private final Tempo tempo;
    private @Nullable Repeating repeating;
    private @Nullable Mechanism mechanism;
    private @Nullable Energies energies;
    private @Nullable List<Repetition> moved;

    Repetition(Performance performance, Knob<?> knob, double first, double last, Tempo tempo) {
        this.performance = performance;
        this.knob = knob;
        this.first = first;
        this.last = last;
        this.tempo = tempo;
    }

    /**
     * An exercise by a lifter, waiting for the knob that moves.
     *
     * @param performance what moves
     */
    public record Of(Performance performance) {
        /**
         * Returns the repetition that turns a knob from one setting to another and back; 2 s out and 1 s back unless told.
         *
         * @param first where it starts and ends
         * @param last where it turns
         * @throws IllegalArgumentException if both are the same, or the exercise does not have the knob
         */
        public <Q extends Measure<Q>> Repetition through(Knob<Q> knob, Q first, Q last) {
            if (first.si() == last.si()) {
                throw new IllegalArgumentException("a repetition goes from " + knob.text(first) + " to "
                        + knob.text(last) + " of " + knob.name() + "; allowed: two different settings");
            }
            performance.with(knob, first.with(first.si(), 0));
            performance.with(knob, last.with(last.si(), 0));
            return new Repetition(performance, knob, first.si(), last.si(), Tempo.of(Duration.of(2), Duration.of(1)));
        }

        /**
         * Returns the repetition along the exercise's own way, as the catalogue lists it; 2 s out and 1 s back unless told.
         *
         * @throws IllegalArgumentException if the exercise does not tell its way
         */
        public Repetition alongItsWay() {
            Course course = performance
                    .exercise()
                    .course()
                    .orElseThrow(() ->
                            new IllegalArgumentException(performance.exercise().name()
                                    + " does not tell its way; say which knob moves with through(KNOB, first, last)"));
            return new Repetition(
                    performance.alongItsWay(),
                    course.knob(),
                    course.from(),
                    course.to(),
                    Tempo.of(Duration.of(2), Duration.of(1)));
        }
    }

    /** Returns this repetition at another tempo. */
    public Repetition tempo(Tempo other) {
        return new Repetition(performance, knob, first, last, other);
    }

    /** Returns this repetition with other times for the way out and back, without pauses. */
    public Repetition tempo(Duration out, Duration back) {
        return tempo(Tempo.of(out, back));
    }

    /** Returns this repetition with a pause where it turns. */
    public Repetition pause(Duration atTheTurn) {
        return tempo(tempo.pause(atTheTurn));
    }

    /** Returns what moves. */
    public Performance performance() {
        return performance;
    }

    /** Returns the tempo. */
    public Tempo tempo() {
        return tempo;
    }

    /** Returns how the moving knob passes through its settings in time, each way by minimum jerk. */
    public Sketch.Play play() {
        List<Double> times = new ArrayList<>();
        double out = tempo.out().si();
        double begins = out + tempo.pauseOut().si();
        for (int k = 0; k <= BEATS; k++) {
            times.add(out * k / BEATS);
        }
        for (int k = begins > out ? 0 : 1; k <= BEATS; k++) {
            times.add(begins + tempo.back().si() * k / BEATS);
        }
        if (tempo.pauseBack().si() > 0) {
            times.add(tempo.total());
        }
        List<Sketch.Beat> beats = new ArrayList<>();
        for (double time : times) {
            beats.add(new Sketch.Beat(time, first + (last - first) * tempo.wayDone(time)));
        }
        return new Sketch.Play(knob.name(), tempo.words(), beats);
    }

    private Mechanism mechanism() {
        Mechanism made = mechanism;
        if (made == null) {
            made = held(first).mechanism();
            mechanism = made;
        }
        return made;
    }

    private HeldPosture held(double setting) {
        try {
            HeldPosture held = performance.withSi(knob, setting).posture();
            if (held.standing().wouldFall()) {
                throw new IllegalArgumentException(knob.name() + " at " + text(setting) + ": "
                        + held.standing().words() + "; move through a smaller range");
            }
            return held;
        } catch (ImpossibleSetting nowhere) {
            throw new IllegalArgumentException(
                    "the way passes a setting that no posture has, " + knob.name() + " at " + text(setting) + ": "
                            + nowhere.getMessage(),
                    nowhere);
        }
    }

    private String text(double si) {
        return leverwright.mechanics.measure.MeasureText.print(
                knob.standard().dimension().of(si, 0), knob.unit(), 3);
    }

    private Repeating repeating() {
        Repeating made = repeating;
        if (made == null) {
            double low = Math.min(first, last);
            double high = Math.max(first, last);
            List<LinkagePath.Sample> samples = new ArrayList<>();
            for (int k = 0; k < SAMPLES; k++) {
                Mechanism at = held(low + (high - low) * k / (SAMPLES - 1)).mechanism();
                samples.add(new LinkagePath.Sample(at.configuration(), at.loads()));
            }
            Mechanism any = mechanism();
            LinkagePath path = LinkagePath.through(any.linkage(), any.support(), any.gravity(), low, high, samples);
            made = new Repeating(path, tempo, first > last);
            repeating = made;
        }
        return made;
    }

    /** The same repetition all over the bands of its uncertain inputs; those whose way is impossible are left out. */
    private List<Repetition> moved() {
        List<Repetition> made = moved;
        if (made == null) {
            made = new ArrayList<>();
            for (Performance other : performance.variations()) {
                Repetition repetition = new Repetition(other, knob, first, last, tempo);
                try {
                    repetition.repeating();
                    made.add(repetition);
                } catch (IllegalArgumentException impossible) {
                    continue;
                }
            }
            moved = made;
        }
        return made;
    }

    /** An answer between the ends that its value has all over the inputs' bands. */
    private <M extends Measure<M>> Answer<M> banded(Answer<M> answer, ToDoubleFunction<Repetition> si) {
        double low = answer.value().si();
        double high = low;
        for (Repetition other : moved()) {
            double value = si.applyAsDouble(other);
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return low == high
                ? answer
                : answer.between(answer.value().with(low, 0), answer.value().with(high, 0));
    }

    /** Returns the energy account in bare numbers, J, both sides together. */
    public Energies energies() {
        Energies made = energies;
        if (made == null) {
            made = repeating().energies();
            energies = made;
        }
        return made;
    }

    LinkagePath.State stateAt(double time) {
        return repeating().at(time);
    }

    private double reported(Joint joint, LinkagePath.State state) {
        return mechanism().reported(joint, state.solver());
    }

    /** The instant of the greatest moment, and the moment in motion and held still there. */
    private record Peak(double time, double moving, double held) {}

    private Peak peak(Joint joint) {
        Peak peak = new Peak(0, 0, 0);
        for (double time : times()) {
            double moving = reported(joint, repeating().at(time));
            if (Math.abs(moving) > Math.abs(peak.moving())) {
                peak = new Peak(time, moving, reported(joint, repeating().heldAt(time)));
            }
        }
        return peak;
    }

    private List<Double> times() {
        List<Double> times = new ArrayList<>();
        for (int k = 0; k < INSTANTS; k++) {
            times.add(tempo.total() * k / (INSTANTS - 1));
        }
        return times;
    }

    /** Returns the moment of greatest size at a joint in motion, with its sign; per side for limbs. */
    public Answer<Moment> peakMoment(Joint joint) {
        Peak peak = peak(joint);
        double motion = peak.moving() - peak.held();
        String label = "peak " + joint.words() + " " + joint.positiveAction() + " moment in motion";
        Answer<Moment> answer = Answer.of(label, Moment.of(peak.moving()), joint.sides(), () -> {
                    Expression held = Expression.symbol(
                            "M_held", Moment.of(peak.held()), "the posture held still; ask for its own working");
                    Expression moved = Expression.symbol(
                            "M_motion", Moment.of(motion), "of the segments' and loads' accelerations; " + BY_MOTION);
                    return Working.of(
                            label + ", " + joint.sides().words(),
                            List.of(
                                    Step.given("t", Duration.of(peak.time()), "from the start of the way out"),
                                    Step.of("M_peak", held.plus(moved), Moment.of(peak.moving()), "at that instant")));
                })
                .noted(cautions());
        return banded(answer, other -> other.peak(joint).moving());
    }

    /** Returns which part of a joint's peak moment comes from accelerations; negative where they relieve it. */
    public Answer<Ratio> inertiaShare(Joint joint) {
        Peak peak = peak(joint);
        if (peak.moving() == 0) {
            throw new IllegalArgumentException("the " + joint.words() + " carries no moment in this repetition, so that"
                    + " no part of it comes from motion");
        }
        String label = "inertia's share of the peak " + joint.words() + " moment";
        double share = (peak.moving() - peak.held()) / peak.moving();
        Answer<Ratio> answer = Answer.of(label, Ratio.of(share), Sides.NOT_SIDED, () -> {
                    Expression moving =
                            Expression.symbol("M_peak", Moment.of(peak.moving()), "peak in motion; " + BY_MOTION);
                    Expression held =
                            Expression.symbol("M_held", Moment.of(peak.held()), "the same posture held still");
                    return Working.of(
                            label,
                            List.of(Step.of(
                                    "share", moving.minus(held).dividedBy(moving), Ratio.of(share), "of the peak")));
                })
                .noted(cautions());
        return banded(answer, other -> {
            Peak there = other.peak(joint);
            return there.moving() == 0 ? 0 : (there.moving() - there.held()) / there.moving();
        });
    }

    /** Returns moments over time, in motion and, for comparison, of each posture held still. */
    public Curves moments(Joint... joints) {
        List<Curves.Curve> curves = new ArrayList<>();
        for (Joint joint : joints) {
            String name = joint.words() + " " + joint.positiveAction() + " moment";
            curves.add(curve(
                    name,
                    Unit.NEWTON_METRE,
                    joint.sides(),
                    (of, time) -> of.reported(joint, of.repeating().at(time))));
            curves.add(curve(
                    name + ", held still",
                    Unit.NEWTON_METRE,
                    joint.sides(),
                    (of, time) -> of.reported(joint, of.repeating().heldAt(time))));
        }
        return curves("Moments in motion", curves);
    }

    /**
     * Returns a limb joint's moment over time, taken apart: what acts on the limb from outside, and the limb's own weight and
     * inertia, which alone tell an exercise in which the foot or hand moves from one in which the body does.
     *
     * @throws IllegalArgumentException for low back and neck, which belong to no limb
     */
    public Curves whichEndMoves(Joint joint) {
        String name = joint.words() + " " + joint.positiveAction() + " moment";
        OwnMoment own = new OwnMoment(mechanism(), joint);
        return curves(
                "What acts on the limb and what the limb itself asks for",
                List.of(
                        curve(
                                name,
                                Unit.NEWTON_METRE,
                                joint.sides(),
                                (of, time) -> of.reported(joint, of.repeating().at(time))),
                        curve(name + " from outside", Unit.NEWTON_METRE, joint.sides(), (of, time) -> {
                            LinkagePath.State state = of.repeating().at(time);
                            return of.reported(joint, state)
                                    - of.own(joint, own, this).of(state);
                        }),
                        curve(
                                name + " of the limb's own weight and inertia",
                                Unit.NEWTON_METRE,
                                joint.sides(),
                                (of, time) -> of.own(joint, own, this)
                                        .of(of.repeating().at(time)))));
    }

    /** What a limb's own weight and inertia ask for here; what was made for the centre serves it alone. */
    private OwnMoment own(Joint joint, OwnMoment atCentre, Repetition centre) {
        return this == centre ? atCentre : new OwnMoment(mechanism(), joint);
    }

    /**
     * Returns how much of their capacity muscles use over time, by the standard model: moments in motion over capacities that
     * follow the speed of the fibres; beside them the same postures held still. The low back is taken not to bend.
     *
     * @param muscles at least one
     */
    public Curves capacityUsed(Muscles... muscles) {
        return capacityUsed(MuscleModel.standard(), muscles);
    }

    /** Returns how much of their capacity muscles use over time, by a model of the muscles. */
    public Curves capacityUsed(MuscleModel model, Muscles... muscles) {
        return new MusclesInMotion(this, model).curves(muscles);
    }

    HeldPosture postureAt(double time) {
        return held(repeating().setting(time));
    }

    double momentAt(Joint joint, double time) {
        return reported(joint, repeating().at(time));
    }

    /** Returns joint powers over time, per side for limbs: positive where the joint gives energy. */
    public Curves powers(Joint... joints) {
        List<Curves.Curve> curves = new ArrayList<>();
        for (Joint joint : joints) {
            Mechanism.JointLink at = mechanism().joint(joint);
            int link = mechanism().linkage().indexOf(at.link());
            curves.add(curve(
                    joint.words() + " power",
                    Unit.WATT,
                    joint.sides(),
                    (of, time) -> of.repeating().at(time).jointPower(link) / at.divisor()));
        }
        return curves("Joint powers", curves);
    }

    /** Returns the knob's setting over time. */
    public Curves setting() {
        return curves(
                "The way",
                List.of(curve(
                        knob.name(),
                        knob.unit(),
                        Sides.NOT_SIDED,
                        (of, time) -> of.repeating().setting(time))));
    }

    /** A value of a repetition at a time. */
    private interface InMotion {
        double at(Repetition repetition, double time);
    }

    private Curves.Curve curve(String name, Unit unit, Sides sides, InMotion value) {
        List<@Nullable Double> values = new ArrayList<>();
        for (double time : times()) {
            values.add(value.at(this, time));
        }
        if (moved().isEmpty()) {
            return Curves.Curve.of(name, unit, sides, values);
        }
        List<@Nullable Double> low = new ArrayList<>();
        List<@Nullable Double> high = new ArrayList<>();
        for (double time : times()) {
            double least = value.at(this, time);
            double most = least;
            for (Repetition other : moved()) {
                double there = value.at(other, time);
                least = Math.min(least, there);
                most = Math.max(most, there);
            }
            low.add(least);
            high.add(most);
        }
        return new Curves.Curve(name, unit, sides, values, low, high);
    }

    private Curves curves(String title, List<Curves.Curve> curves) {
        return new Curves(
                title + ": " + performance, new Curves.Axis("time", Unit.SECOND, times()), curves, null, cautionList());
    }

    /** Returns the work against weights and loads while it is done against them, both sides together. */
    public Answer<Work> liftingWork() {
        return work("lifting work", Energies::lifting, "work against weights and loads, where they are lifted");
    }

    /** Returns the work that weights and loads give back while they are lowered, negative, both sides together. */
    public Answer<Work> loweringWork() {
        return work("lowering work", Energies::lowering, "work against weights and loads, where they are lowered");
    }

    /** Returns the work of all joints where they give energy, both sides together. */
    public Answer<Work> positiveJointWork() {
        return work("positive joint work", Energies::totalPositiveJointWork, "joint power where it is positive");
    }

    /** Returns the work of all joints where they take energy up, negative, both sides together. */
    public Answer<Work> negativeJointWork() {
        return work(
                "negative joint work",
                all -> all.totalJointWork() - all.totalPositiveJointWork(),
                "joint power where it is negative");
    }

    private Answer<Work> work(String label, ToDoubleFunction<Energies> part, String of) {
        Energies all = energies();
        double value = part.applyAsDouble(all);
        double account = all.growth() + all.heat() - all.given() - all.support();
        Answer<Work> answer = Answer.of(
                        label,
                        Work.of(value),
                        Sides.TOTAL,
                        () -> Working.given(
                                        label + ", in total",
                                        "W",
                                        Work.of(value),
                                        of + ", summed over time by Gauss' rule; " + BY_MOTION)
                                .checked(List.of(
                                        Step.given(
                                                "W_joints",
                                                Work.of(all.totalJointWork()),
                                                "all joints, one repetition"),
                                        Step.of(
                                                "W_account",
                                                Expression.symbol("dE", Work.of(all.growth()), "growth of energy")
                                                        .plus(Expression.symbol(
                                                                "Q", Work.of(all.heat()), "heat in loads"))
                                                        .minus(Expression.symbol(
                                                                "W_given",
                                                                Work.of(all.given()),
                                                                "work of given forces"))
                                                        .minus(Expression.symbol(
                                                                "W_held",
                                                                Work.of(all.support()),
                                                                "work of what holds the body")),
                                                Work.of(account),
                                                "must equal W_joints"))))
                .noted(cautions());
        return banded(answer, other -> part.applyAsDouble(other.energies()));
    }

    /** Returns the energy account of one repetition: every joint's positive and negative work, and where it goes. */
    public Listing energyAccount() {
        Energies all = energies();
        List<List<Object>> rows = new ArrayList<>();
        mechanism().joints().forEach((joint, at) -> {
            int link = mechanism().linkage().indexOf(at.link());
            double positive = all.positiveJointWork().get(link);
            double negative = all.jointWork().get(link) - positive;
            rows.add(List.of(joint.words() + ", both sides", Work.of(positive), Work.of(negative)));
        });
        rows.add(List.of("all joints", positiveJointWork(), negativeJointWork()));
        rows.add(List.of("against weights and loads", liftingWork(), loweringWork()));
        rows.add(List.of("given from outside", Work.of(all.given()), Work.of(0)));
        rows.add(List.of("heat in loads", Work.of(0), Work.of(-all.heat())));
        Set<String> notes = new LinkedHashSet<>();
        notes.add(String.format(
                Locale.ROOT,
                "The account closes to %.0e of its parts; after the whole repetition %s.",
                all.residual(),
                Math.abs(all.growth()) < BACK
                        ? "the energy is back where it was"
                        : String.format(Locale.ROOT, "the energy has grown by %.3g J", all.growth())));
        notes.addAll(cautionList());
        return new Listing(
                "Energy account of one repetition: " + performance,
                List.of("what", "gives (lifting)", "takes (lowering)"),
                rows,
                List.copyOf(notes));
    }

    /**
     * Sums a reading over the time of one repetition, postures taken as held still.
     *
     * @return the reading's size times time, SI·s
     */
    double exposure(Reading<?> reading) {
        int instants = 2 * SAMPLES;
        double sum = 0;
        for (int k = 0; k < instants; k++) {
            double time = tempo.total() * (k + 0.5) / instants;
            sum += Math.abs(reading.si(held(repeating().setting(time)))) * tempo.total() / instants;
        }
        return sum;
    }

    /** Sums the size of a joint's moment over the time of one repetition, in motion, N·m·s as reported. */
    double exposure(Joint joint) {
        double[] sum = new double[1];
        repeating().integrate((time, weight, state) -> sum[0] += weight * Math.abs(reported(joint, state)));
        return sum[0];
    }

    private Set<String> cautions() {
        return new LinkedHashSet<>(cautionList());
    }

    List<String> cautionList() {
        Set<String> notes = new LinkedHashSet<>();
        boolean unsure = !performance.uncertainInputs().isEmpty();
        notes.add("In motion: rigid segments, minimum jerk, inputs "
                + (unsure ? "all over their bands. Work" : "at the centres of their bands. Work")
                + " of muscles that cross two joints cannot be told from joint work, and holding costs energy without"
                + " work.");
        mechanism().loads().forEach(load -> notes.addAll(load.notes()));
        notes.addAll(performance.exercise().cautions());
        return Collections.unmodifiableList(new ArrayList<>(notes));
    }

    @Override
    public String toString() {
        return performance + ", " + knob.name() + " " + text(first) + " to " + text(last) + " and back in "
                + Duration.of(tempo.total());
    }
}
