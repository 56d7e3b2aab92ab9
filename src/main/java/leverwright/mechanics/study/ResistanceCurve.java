package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Listing;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * What an exercise asks of one joint action through its range, each posture held still: where it peaks, its mean, how flat it
 * is, and how a strength curve matches it.
 *
 * <p>Means are over evenly spaced settings of the knob. Flatness is mean over peak: 1 for a load that is even. Match is the
 * least of strength ÷ resistance over its mean: 1 when strength runs out everywhere at once, small when one angle decides.
 */
public final class ResistanceCurve {
    private static final int POINTS = 201;

    private final Performance performance;
    private final Knob<?> knob;
    private final Joint joint;
    private final boolean positive;
    private final List<Double> settings;
    private final List<HeldPosture> postures = new ArrayList<>();
    private final List<Double> moments = new ArrayList<>();
    private final List<Double> flexions = new ArrayList<>();

    private ResistanceCurve(
            Performance performance, Knob<?> knob, double from, double to, Joint joint, boolean positive) {
        this.performance = performance;
        this.knob = knob;
        this.joint = joint;
        this.positive = positive;
        this.settings = new ArrayList<>();
        Reading<Moment> moment = Readings.moment(joint);
        Reading<Angle> flexion = Readings.flexion(joint);
        for (int k = 0; k < POINTS; k++) {
            double setting = from + (to - from) * k / (POINTS - 1);
            HeldPosture held = performance.withSi(knob, setting).posture();
            if (held.standing().wouldFall()) {
                throw new IllegalArgumentException("the range passes a posture that cannot be held: "
                        + held.standing().words() + "; choose a smaller range");
            }
            settings.add(setting);
            postures.add(held);
            moments.add(moment.si(held) * (positive ? 1 : -1));
            flexions.add(joint == Joint.LOW_BACK ? 0 : flexion.si(held));
        }
    }

    /** An exercise by a lifter through a range, waiting for the joint action. */
    public static final class Through {
        private final Performance performance;
        private final Knob<?> knob;
        private final double from;
        private final double to;

        <Q extends Measure<Q>> Through(Performance performance, Knob<Q> knob, Q from, Q to) {
            if (!(from.si() < to.si())) {
                throw new IllegalArgumentException("a resistance curve goes from " + knob.text(from) + " to "
                        + knob.text(to) + " of " + knob.name() + "; allowed: from a smaller to a larger value");
            }
            performance.with(knob, from.with(from.si(), 0));
            performance.with(knob, to.with(to.si(), 0));
            this.performance = performance;
            this.knob = knob;
            this.from = from.si();
            this.to = to.si();
        }

        /** Returns the curve of a joint's extension (plantarflexion at the ankle). */
        public ResistanceCurve extension(Joint joint) {
            return new ResistanceCurve(performance, knob, from, to, joint, true);
        }

        /** Returns the curve of a joint's flexion (dorsiflexion at the ankle). */
        public ResistanceCurve flexion(Joint joint) {
            return new ResistanceCurve(performance, knob, from, to, joint, false);
        }
    }

    private int peak() {
        int peak = 0;
        for (int k = 1; k < POINTS; k++) {
            if (moments.get(k) > moments.get(peak)) {
                peak = k;
            }
        }
        return peak;
    }

    private static double mean(List<Double> values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.size();
    }

    private String action() {
        return joint.words() + " " + (positive ? joint.positiveAction() : joint.negativeAction());
    }

    private Set<String> notes() {
        Set<String> notes = new LinkedHashSet<>();
        notes.add("Each posture held still, 201 even settings of " + knob.name() + ".");
        if (joint == Joint.LOW_BACK) {
            notes.add("The trunk is straight in this model: flexion of the low back counts as 0.");
        }
        notes.addAll(performance.exercise().cautions());
        return notes;
    }

    private static <M extends Measure<M>> Answer<M> found(
            String label, M value, Sides sides, String source, Set<String> notes) {
        return Answer.of(label, value, sides, () -> Working.given(label, "found", value, source))
                .noted(notes);
    }

    /** Returns the greatest moment of the action in the range. */
    public Answer<Moment> peakMoment() {
        HeldPosture at = postures.get(peak());
        Answer<Moment> moment = positive ? at.moment(joint) : at.flexionMoment(joint);
        return Answer.of("peak " + action() + " moment", moment.value(), joint.sides(), moment::working)
                .noted(notes());
    }

    /** Returns the joint's flexion where the moment is greatest. */
    public Answer<Angle> peakAt() {
        return found(
                joint.words() + " flexion at the peak of the " + action() + " moment",
                Angle.of(flexions.get(peak())),
                Sides.NOT_SIDED,
                "found among 201 settings",
                notes());
    }

    /** Returns the mean moment over the range. */
    public Answer<Moment> meanMoment() {
        return found(
                "mean " + action() + " moment",
                Moment.of(mean(moments)),
                joint.sides(),
                "mean over 201 even settings",
                notes());
    }

    /** Returns mean over peak: 1 for an even load. */
    public Answer<Ratio> flatness() {
        double flat = mean(moments) / moments.get(peak());
        String label = "flatness of the " + action() + " moment";
        return Answer.of(
                        label,
                        Ratio.of(flat),
                        Sides.NOT_SIDED,
                        () -> Working.of(
                                label,
                                List.of(Step.of(
                                        "flatness",
                                        Expression.symbol(
                                                        "M_mean",
                                                        Moment.of(mean(moments)),
                                                        "mean over 201 even settings")
                                                .dividedBy(Expression.symbol(
                                                        "M_peak", Moment.of(moments.get(peak())), "greatest of them")),
                                        Ratio.of(flat),
                                        "mean over peak"))))
                .noted(notes());
    }

    /** Returns the summary as a table: peak, where, mean, flatness. */
    public Listing summary() {
        return Listing.of(
                "Resistance: " + performance,
                List.of(peakMoment(), peakAt(), meanMoment(), flatness()),
                List.copyOf(notes()));
    }

    /** Returns the moment over the knob's settings. */
    public Curves curves() {
        return curves(List.of(), List.copyOf(notes()));
    }

    private Curves curves(List<Curves.Curve> more, List<String> notes) {
        List<Curves.Curve> all = new ArrayList<>();
        all.add(Curves.Curve.of(
                action() + " moment, resistance", Unit.NEWTON_METRE, joint.sides(), new ArrayList<>(moments)));
        all.addAll(more);
        return new Curves(
                "Resistance through the range: " + performance,
                new Curves.Axis(knob.name(), knob.unit(), settings),
                all,
                null,
                notes);
    }

    /**
     * Returns how a strength curve matches this resistance.
     *
     * @throws IllegalArgumentException if it is of another joint or action, or the resistance never asks for the action
     */
    public Match against(StrengthCurve strength) {
        if (strength.joint() != joint || strength.positive() != positive) {
            throw new IllegalArgumentException("the strength curve is of another joint or action (" + strength.words()
                    + "); allowed: that of the " + action());
        }
        return new Match(strength);
    }

    /** Strength and resistance together. */
    public final class Match {
        private final StrengthCurve strength;
        private final List<@Nullable Double> strengths = new ArrayList<>();
        private final List<Double> ratios = new ArrayList<>();
        private final Set<String> notes = notes();
        private int least = -1;

        private Match(StrengthCurve strength) {
            this.strength = strength;
            notes.add(strength.words());
            notes.add("Strength ÷ resistance is not a load to attempt; a qualified coach, spotter and safety bars come"
                    + " first.");
            double lowest = Double.POSITIVE_INFINITY;
            int left = 0;
            for (int k = 0; k < POINTS; k++) {
                @Nullable Double value = measured(k);
                strengths.add(value);
                if (value == null || !(moments.get(k) > 0)) {
                    left++;
                    continue;
                }
                double ratio = value / moments.get(k);
                ratios.add(ratio);
                if (ratio < lowest) {
                    lowest = ratio;
                    least = k;
                }
            }
            if (least < 0) {
                throw new IllegalArgumentException("nowhere in the range does the exercise ask for " + action()
                        + " where strength was measured; choose another range or measure there");
            }
            if (left > 0) {
                notes.add(
                        "At " + left + " of 201 settings strength was not measured or the exercise does not ask for the"
                                + " action; they are left out.");
            }
        }

        private @Nullable Double measured(int k) {
            try {
                return strength.si(flexions.get(k));
            } catch (IllegalArgumentException beyond) {
                if (strength.points().size() < 2) {
                    throw beyond;
                }
                return null;
            }
        }

        /** Returns the match: least over mean of strength ÷ resistance. */
        public Answer<Ratio> match() {
            double lowest = lowest();
            double mean = mean(ratios);
            String label = "match of strength and resistance";
            return Answer.of(
                            label,
                            Ratio.of(lowest / mean),
                            Sides.NOT_SIDED,
                            () -> Working.of(
                                    label,
                                    List.of(Step.of(
                                            "match",
                                            Expression.symbol(
                                                            "q_least",
                                                            Ratio.of(lowest),
                                                            "least strength over resistance")
                                                    .dividedBy(Expression.symbol(
                                                            "q_mean", Ratio.of(mean), "mean of them")),
                                            Ratio.of(lowest / mean),
                                            "1 when strength runs out everywhere at once"))))
                    .noted(notes);
        }

        private double lowest() {
            return value(least) / moments.get(least);
        }

        private double value(int k) {
            Double value = strengths.get(k);
            return value == null ? Double.NaN : value;
        }

        /** Returns the joint's flexion where strength runs out first as the load grows. */
        public Answer<Angle> runsOutAt() {
            return found(
                    "flexion where " + joint.words() + " strength runs out first",
                    Angle.of(flexions.get(least)),
                    Sides.NOT_SIDED,
                    "where strength over resistance is least among 201 settings",
                    notes);
        }

        /** Returns how many times the moment there the strength is: less than 1 means that it cannot be held. */
        public Answer<Ratio> leastStrengthOverResistance() {
            String label = "least strength over resistance";
            return Answer.of(
                            label,
                            Ratio.of(lowest()),
                            Sides.NOT_SIDED,
                            () -> Working.of(
                                    label,
                                    List.of(Step.of(
                                            "q_least",
                                            Expression.symbol(
                                                            "M_strength",
                                                            Moment.of(value(least)),
                                                            "measured strength there")
                                                    .dividedBy(Expression.symbol(
                                                            "M_asked",
                                                            Moment.of(moments.get(least)),
                                                            "what is asked there")),
                                            Ratio.of(lowest()),
                                            "where strength runs out first"))))
                    .noted(notes);
        }

        /** Returns both curves over the knob's settings. */
        public Curves curves() {
            Curves.Curve measured =
                    Curves.Curve.of("strength, " + strength.sample(), Unit.NEWTON_METRE, joint.sides(), strengths);
            return ResistanceCurve.this.curves(List.of(measured), List.copyOf(notes));
        }

        /** Returns match, where strength runs out, and how much is left there. */
        public Listing summary() {
            return Listing.of(
                    "Strength and resistance: " + performance,
                    List.of(match(), runsOutAt(), leastStrengthOverResistance(), peakMoment(), flatness()),
                    List.copyOf(notes));
        }
    }
}
