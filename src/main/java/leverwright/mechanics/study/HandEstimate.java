package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.LeverView;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.numeric.Powers;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Listing;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;

/**
 * The quick estimate of the trade: body weight above the joint and bar, times the segment's tilt over 90°, times one lever
 * ratio, divided by two sides. Its defaults are common practice, no source; the shares of body mass above hip and knee are
 * Winter's (0.678 and 0.878).
 *
 * @param joint about which
 * @param shareAbove of body mass that rides on both joints together
 * @param bar what is carried besides
 * @param segment whose tilt counts
 * @param leverRatio muscle force over the part of the load square to the segment
 * @param sides by how many it is divided
 */
public record HandEstimate(Joint joint, Ratio shareAbove, Mass bar, Segment segment, Ratio leverRatio, int sides) {
    private static final double RIGHT_ANGLE = Measures.deg(90).si();
    private static final String PRACTICE = "common practice, no source";
    private static final String CAUTION =
            "A model's estimate: no medical or training advice. Licensed practice and local rules come first.";

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is outside its range
     */
    public HandEstimate {
        if (!(shareAbove.si() >= 0 && shareAbove.si() <= 1)) {
            throw new IllegalArgumentException(
                    "the share of body mass above the joint is " + shareAbove + "; allowed: 0 to 1");
        }
        if (sides != 1 && sides != 2) {
            throw new IllegalArgumentException("the estimate is divided by " + sides + " sides; allowed: 1 or 2");
        }
        if (!(leverRatio.si() > 0 && leverRatio.si() <= 100)) {
            throw new IllegalArgumentException(
                    "the lever ratio is " + leverRatio + "; allowed: greater than 0, at most 100");
        }
        if (!(bar.si() >= 0)) {
            throw new IllegalArgumentException("the bar is " + bar + "; allowed: 0 kg or more");
        }
    }

    static HandEstimate of(Joint joint) {
        double share = switch (joint) {
            case KNEE -> 0.878;
            case HIP -> 0.678;
            case ANKLE -> 0.971;
            case LOW_BACK -> 0.536;
            case NECK -> 0.081;
            case SHOULDER, ELBOW, WRIST -> 0;
        };
        Segment tilted = switch (joint) {
            case KNEE, ANKLE -> Segment.SHANK;
            case HIP, LOW_BACK, NECK -> Segment.TRUNK;
            case SHOULDER -> Segment.UPPER_ARM;
            case ELBOW -> Segment.FOREARM;
            case WRIST -> Segment.HAND;
        };
        return new HandEstimate(joint, Ratio.of(share), Mass.of(0), tilted, Ratio.of(10), 2);
    }

    /** Returns this with another share of body mass above the joint. */
    public HandEstimate shareAbove(Ratio share) {
        return new HandEstimate(joint, share, bar, segment, leverRatio, sides);
    }

    /** Returns this with a load carried. */
    public HandEstimate bar(Mass mass) {
        return new HandEstimate(joint, shareAbove, mass, segment, leverRatio, sides);
    }

    /** Returns this with the tilt of another segment. */
    public HandEstimate tiltRule(Segment tilted) {
        return new HandEstimate(joint, shareAbove, bar, tilted, leverRatio, sides);
    }

    /** Returns this with another lever ratio. */
    public HandEstimate leverRatio(double ratio) {
        return new HandEstimate(joint, shareAbove, bar, segment, Ratio.of(ratio), sides);
    }

    /** Returns this divided by one side or two. */
    public HandEstimate sides(int count) {
        return new HandEstimate(joint, shareAbove, bar, segment, leverRatio, count);
    }

    private double load(HeldPosture held) {
        return (shareAbove.si() * held.performance().lifter().bodyMass().si() + bar.si())
                * Measures.STANDARD_GRAVITY.si();
    }

    private double lean(HeldPosture held) {
        return Math.abs(Readings.lean(segment).si(held));
    }

    private double length(HeldPosture held) {
        return held.performance().lifter().body().segment(segment).length();
    }

    private List<Step> loadSteps(HeldPosture held) {
        Expression share =
                Expression.symbol("k_above", shareAbove, "share of body mass above the joint; set, or Winter");
        Expression mass =
                Expression.symbol("m_body", held.performance().lifter().bodyMass(), "of the lifter");
        Expression carried = Expression.symbol("m_bar", bar, "set");
        Expression gravity = Expression.exact("g", Measures.STANDARD_GRAVITY, "standard gravity");
        Step load = Step.of(
                "W",
                share.times(mass).plus(carried).times(gravity),
                Force.of(load(held)),
                "load above the joint, both sides");
        Step tilt = Step.of(
                "tilt",
                Expression.symbol("lean", Angle.of(lean(held)), "of the " + segment.words() + ", without its sign")
                        .dividedBy(Expression.exactDegrees(90)),
                Ratio.of(lean(held) / RIGHT_ANGLE),
                "tilt rule; " + PRACTICE);
        return List.of(load, tilt);
    }

    private Expression halved(Expression whole) {
        return sides == 2 ? whole.dividedBy(Expression.exact("2")) : whole;
    }

    /** Returns the muscle force that the estimate gives: load × tilt × lever ratio over sides. */
    public Answer<Force> force(HeldPosture held) {
        Force value = Force.of(load(held) * (lean(held) / RIGHT_ANGLE) * leverRatio.si() / sides);
        List<Step> steps = new ArrayList<>(loadSteps(held));
        Expression ratio = Expression.symbol("lever_ratio", leverRatio, "one number for the whole range; " + PRACTICE);
        steps.add(Step.of(
                "F",
                halved(steps.get(0).result().times(steps.get(1).result()).times(ratio)),
                value,
                sides == 2 ? "two sides carry alike" : "one side carries all"));
        return Answer.of(
                        "hand estimate of the muscle force at the " + joint.words(),
                        value,
                        Sides.PER_SIDE,
                        Working.of("Hand estimate, muscle force", steps))
                .noted(List.of("A hand estimate: tilt rule and lever ratio are " + PRACTICE + ".", CAUTION));
    }

    /** Returns the moment that the estimate gives: load × segment length × tilt over sides. */
    public Answer<Moment> moment(HeldPosture held) {
        Moment value = Moment.of(load(held) * length(held) * (lean(held) / RIGHT_ANGLE) / sides);
        List<Step> steps = new ArrayList<>(loadSteps(held));
        Expression length = Expression.symbol("L", Length.of(length(held)), "length of the " + segment.words());
        steps.add(Step.of(
                "M",
                halved(steps.get(0).result().times(length).times(steps.get(1).result())),
                value,
                sides == 2 ? "two sides carry alike" : "one side carries all"));
        return Answer.of(
                        "hand estimate of the moment at the " + joint.words(),
                        value,
                        Sides.PER_SIDE,
                        Working.of("Hand estimate, moment", steps))
                .noted(List.of("A hand estimate: the tilt rule is " + PRACTICE + ".", CAUTION));
    }

    /** One swap on the way from the estimate to statics: the value after it. */
    private record Swap(String what, double after) {}

    private List<Swap> swaps(HeldPosture held) {
        double load = load(held);
        double length = length(held);
        double lean = lean(held);
        double actualLoad = Readings.load(joint).si(held);
        double sine = Math.abs(Trigonometry.sine(lean));
        double arm = Math.abs(Readings.loadArm(joint).si(held));
        double moment = Math.abs(Readings.moment(joint).si(held));
        double counted = joint.sides() == Sides.PER_SIDE ? 2 : 1;
        List<Swap> swaps = new ArrayList<>();
        swaps.add(new Swap("the estimate", load * length * lean / RIGHT_ANGLE / sides));
        swaps.add(new Swap("the sine for the tilt rule", load * length * sine / sides));
        swaps.add(new Swap("the mass above this joint", actualLoad * length * sine / sides));
        swaps.add(new Swap("where the force line and the segments' weights lie", actualLoad * arm / sides));
        swaps.add(new Swap("how many sides carry", actualLoad * arm / counted));
        swaps.add(new Swap("what rounding and other forces leave", moment));
        return swaps;
    }

    /** The way of the muscle force, which puts the muscle's own arm for the one lever ratio. */
    private List<Swap> forceSwaps(HeldPosture held) {
        double load = load(held);
        double sine = Math.abs(Trigonometry.sine(lean(held)));
        double actualLoad = Readings.load(joint).si(held);
        double loadArm = Math.abs(Readings.loadArm(joint).si(held));
        double muscleArm = muscleArm(held);
        double counted = joint.sides() == Sides.PER_SIDE ? 2 : 1;
        double ratio = leverRatio.si();
        double bySegment = length(held) / muscleArm;
        List<Swap> swaps = new ArrayList<>();
        swaps.add(new Swap("the estimate", load * lean(held) / RIGHT_ANGLE * ratio / sides));
        swaps.add(new Swap("the sine for the tilt rule", load * sine * ratio / sides));
        swaps.add(new Swap(
                "this segment's length over this posture's muscle arm for the lever ratio",
                load * sine * bySegment / sides));
        swaps.add(new Swap("the mass above this joint", actualLoad * sine * bySegment / sides));
        swaps.add(new Swap(
                "where the force line and the segments' weights lie", actualLoad * loadArm / muscleArm / sides));
        swaps.add(new Swap("how many sides carry", actualLoad * loadArm / muscleArm / counted));
        swaps.add(new Swap(
                "what rounding and other forces leave",
                Math.abs(Readings.moment(joint).si(held)) / muscleArm));
        return swaps;
    }

    /** The arm of one equivalent muscle in the posture, m. */
    private double muscleArm(HeldPosture held) {
        LeverView view = held.leverView(joint);
        return view.muscle()
                .orElseThrow(() -> new IllegalArgumentException("no muscle arm for the " + view.action()
                        + " is on file; trace the moment instead, by trace(held)"))
                .arm()
                .value()
                .si();
    }

    /**
     * Returns term by term how the estimate's moment becomes that of the statics of the same posture, in the stated order; the
     * column "factor" multiplies up to the whole, its logarithms add.
     */
    public Listing trace(HeldPosture held) {
        return traced(
                "From the hand estimate to statics: ",
                held,
                "moment",
                swaps(held),
                Moment::of,
                "Moments without their sign; the statics say "
                        + Moment.of(Readings.moment(joint).si(held)) + " of " + joint.positiveAction() + ".");
    }

    /**
     * Returns term by term how the estimate's muscle force becomes that of one equivalent muscle by the statics of the same
     * posture; among the terms the muscle's own arm for the lever ratio.
     *
     * @throws IllegalArgumentException if no muscle arm for the action is on file
     */
    public Listing traceForce(HeldPosture held) {
        return traced(
                "From the hand estimate to the muscle force by statics: ",
                held,
                "muscle force, per side",
                forceSwaps(held),
                Force::of,
                "One equivalent muscle, its arm " + Length.of(muscleArm(held))
                        + "; what several muscles share is another question, see shares(…).");
    }

    private Listing traced(
            String title,
            HeldPosture held,
            String quantity,
            List<Swap> swaps,
            DoubleFunction<Measure<?>> measure,
            String remark) {
        List<List<Object>> rows = new ArrayList<>();
        double before = swaps.get(0).after();
        double up = 0;
        double down = 0;
        rows.add(List.of(swaps.get(0).what(), measure.apply(before), measure.apply(0), Ratio.of(1), Ratio.of(0)));
        for (Swap swap : swaps.subList(1, swaps.size())) {
            double change = swap.after() - before;
            double factor = before > 0 && swap.after() > 0 ? swap.after() / before : 0;
            rows.add(List.of(
                    swap.what(),
                    measure.apply(swap.after()),
                    measure.apply(change),
                    Ratio.of(factor),
                    Ratio.of(factor > 0 ? Powers.logarithm(factor) : 0)));
            up += Math.max(0, change);
            down += Math.max(0, -change);
            before = swap.after();
        }
        double net = before - swaps.get(0).after();
        return new Listing(
                title + joint.words() + ", " + held.performance(),
                List.of("after putting in", quantity, "change", "factor", "logarithm"),
                rows,
                List.of(
                        "Errors that cancel: " + shown(measure.apply(up)) + " up and " + shown(measure.apply(down))
                                + " down leave " + shown(measure.apply(net))
                                + "; one correction alone does not make the estimate right.",
                        remark,
                        "The order of the swaps is stated; another order splits the same whole otherwise.",
                        CAUTION));
    }

    /**
     * Returns which assumption, changed alone, makes a claimed muscle force: the value that each would need.
     *
     * @param claimed per side, greater than 0
     */
    public Listing explain(Force claimed, HeldPosture held) {
        double tilt = lean(held) / RIGHT_ANGLE;
        double factor = claimed.si() / force(held).value().si();
        double mass = held.performance().lifter().bodyMass().si();
        double gravity = Measures.STANDARD_GRAVITY.si();
        double neededLoad = load(held) * factor;
        List<List<Object>> rows = new ArrayList<>();
        rows.add(List.of(
                "lever ratio", leverRatio, Ratio.of(leverRatio.si() * factor), note(leverRatio.si() * factor, 1, 20)));
        double share = (neededLoad / gravity - bar.si()) / mass;
        rows.add(List.of("share of body mass above the joint", shareAbove, Ratio.of(share), note(share, 0, 1)));
        double bars = neededLoad / gravity - shareAbove.si() * mass;
        rows.add(List.of("load carried", bar, Mass.of(bars), note(bars, 0, 500)));
        rows.add(List.of("tilt over 90°", Ratio.of(tilt), Ratio.of(tilt * factor), note(tilt * factor, 0, 1)));
        rows.add(List.of("sides", Ratio.of(sides), Ratio.of(sides / factor), note(sides / factor, 1, 2)));
        List<String> notes = new ArrayList<>();
        notes.add(String.format(Locale.ROOT, "The claim is %.2f times the estimate.", factor));
        String able = String.join(
                ", ",
                rows.stream()
                        .filter(row -> row.get(3).toString().startsWith("within"))
                        .map(row -> row.get(0).toString())
                        .toList());
        notes.add(
                able.isEmpty()
                        ? "No assumption makes the claim alone; several must be off together, or another posture is meant."
                        : "Alone, each of these could make the claim: " + able + ".");
        armNote(claimed, held, notes);
        notes.add(CAUTION);
        return new Listing(
                "What makes the claimed " + claimed + " at the " + joint.words() + ": one assumption changed alone",
                List.of("assumption", "as set", "needed for the claim", "can it be?"),
                rows,
                notes);
    }

    /** Adds what the statics of the posture say of the claim, where a muscle arm is on file. */
    private void armNote(Force claimed, HeldPosture held, List<String> notes) {
        if (held.leverView(joint).muscle().isEmpty()) {
            return;
        }
        double arm = muscleArm(held);
        double moment = Math.abs(Readings.moment(joint).si(held));
        notes.add("Statics of this posture with one equivalent muscle: " + shown(Force.of(moment / arm))
                + " by an arm of " + shown(Length.of(arm)) + "; the claim would need an arm of "
                + shown(Length.of(moment / claimed.si())) + ".");
    }

    private static String shown(Measure<?> value) {
        return value.with(NumberText.rounded(value.si(), 4).doubleValue(), 0).toString();
    }

    private static String note(double value, double least, double most) {
        return value >= least && value <= most
                ? "within " + least + " to " + most
                : "no: beyond " + least + " to " + most;
    }
}
