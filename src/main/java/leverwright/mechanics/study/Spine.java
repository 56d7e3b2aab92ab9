package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Measures;
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
 * Compression and shear at the low back by one equivalent muscle, with all inputs in sight.
 *
 * <p>The force of the pelvis on the trunk is resolved across and along the disc, whose tilt follows the pelvis: its tilt in
 * the upright stance plus the pelvis' part of the torso's lean. Where the moment asks for flexion, the abdominal muscle pulls
 * instead of the extensors.
 *
 * <p>Sources: extensor arm 6 cm, inclined by 5°, Cholewicki, McGill and Norman 1991; rectus abdominis at L5/S1 9.8 cm,
 * Jorgensen 2005; tilt of the disc in the upright stance 35°, from memory; 3400 N, the design criterion of NIOSH 1994 as
 * Arjmand 2015 quotes it. Abdominal pressure and bending of the lumbar spine are left out.
 *
 * @param extensorArm 2 to 12 cm
 * @param inclination of the extensors' pull behind the disc's normal, −30° to 45°
 * @param discTilt forward tilt of the disc in the upright stance, 0 to 60°
 * @param pelvisShare which part of the torso's lean the pelvis takes, 0 to 1
 * @param coContraction moment of the muscles on the other side over the net moment, 0 to 1
 */
public record Spine(Length extensorArm, Angle inclination, Angle discTilt, Ratio pelvisShare, Ratio coContraction) {
    /** The design criterion for compression, N: NIOSH 1994. */
    public static final double NIOSH_CRITERION = 3400;

    /** What goes with every result of the low back. */
    public static final String CAUTION =
            "NIOSH 3400 N: a design criterion for lifting at work; neither a safe limit nor an injury threshold; a static"
                    + " estimate.";

    private static final double ABDOMINAL_ARM = 0.098;
    private static final String GENERAL =
            "A model's estimate: no medical or training advice. Licensed practice and local rules come first.";

    /**
     * Makes the inputs.
     *
     * @throws IllegalArgumentException if one is outside its range
     */
    public Spine {
        within(extensorArm, 0.02, 0.12, "arm of the back's extensors");
        within(inclination, -Math.PI / 6, Math.PI / 4, "inclination of the back's extensors");
        within(discTilt, 0, Math.PI / 3, "tilt of the low back's disc in the upright stance");
        within(pelvisShare, 0, 1, "the pelvis' part of the torso's lean");
        within(coContraction, 0, 1, "co-contraction at the low back");
    }

    private static <M extends Measure<M>> void within(M value, double least, double most, String what) {
        if (!(value.si() >= least && value.si() <= most)) {
            throw new IllegalArgumentException(
                    what + " is " + value + "; allowed: " + value.with(least, 0) + " to " + value.with(most, 0));
        }
    }

    /** Returns the inputs as published or, for the disc's tilt, from memory. */
    public static Spine standard() {
        return new Spine(Length.of(0.06), Measures.deg(5), Measures.deg(35), Ratio.of(1), Ratio.of(0));
    }

    /** Returns this with another arm of the extensors. */
    public Spine extensorArm(Length arm) {
        return new Spine(arm, inclination, discTilt, pelvisShare, coContraction);
    }

    /** Returns this with another inclination of the extensors' pull behind the disc's normal. */
    public Spine inclination(Angle behindNormal) {
        return new Spine(extensorArm, behindNormal, discTilt, pelvisShare, coContraction);
    }

    /** Returns this with another tilt of the disc in the upright stance. */
    public Spine discTilt(Angle upright) {
        return new Spine(extensorArm, inclination, upright, pelvisShare, coContraction);
    }

    /** Returns this with another part of the torso's lean that the pelvis takes. */
    public Spine pelvisShare(Ratio ofLean) {
        return new Spine(extensorArm, inclination, discTilt, ofLean, coContraction);
    }

    /** Returns this with muscles that work against the needed ones: their moment over the net moment. */
    public Spine coContraction(Ratio ofMoment) {
        return new Spine(extensorArm, inclination, discTilt, pelvisShare, ofMoment);
    }

    private static final Reading<Angle> LEAN = Readings.lean(Segment.TRUNK);
    private static final Reading<Moment> MOMENT = Readings.moment(Joint.LOW_BACK);

    /** What acts at the low back in a posture. */
    private record Forces(
            double x, double y, double moment, double tilt, double extensors, double abdominals, DiscLoad disc) {}

    private Forces forces(HeldPosture held) {
        double lean = LEAN.si(held);
        double moment = MOMENT.si(held);
        return forces(
                held.forceForwardSi(Joint.LOW_BACK),
                held.forceUpwardSi(Joint.LOW_BACK),
                moment,
                discTilt.si() + pelvisShare.si() * lean);
    }

    private Forces forces(double x, double y, double moment, double tilt) {
        double against = Math.abs(moment) * coContraction.si();
        // muscles on the other side add to the needed moment what they work against it
        double extensors = (Math.max(0, moment) + against) / extensorArm.si();
        double abdominals = (Math.max(0, -moment) + against) / ABDOMINAL_ARM;
        return new Forces(
                x,
                y,
                moment,
                tilt,
                extensors,
                abdominals,
                DiscLoad.of(x, y, tilt, extensors, inclination.si(), abdominals));
    }

    /** Across and along the disc in a posture, with the pulls of muscles that were shared, N in total. */
    DiscLoad shared(HeldPosture held, double extensors, double abdominals) {
        Forces forces = forces(held);
        return DiscLoad.of(forces.x(), forces.y(), forces.tilt(), extensors, inclination.si(), abdominals);
    }

    /**
     * Returns compression and shear for a force and moment found elsewhere, such as in a textbook.
     *
     * @param forward force of the pelvis on the trunk, forward
     * @param up the same, upward
     * @param extension moment of the extensors
     * @param lean of the torso
     */
    public Listing of(Force forward, Force up, Moment extension, Angle lean) {
        Forces forces = forces(forward.si(), up.si(), extension.si(), discTilt.si() + pelvisShare.si() * lean.si());
        return listing(
                "Low back",
                List.of(
                        answer("compression", forces.disc().compression(), forces, lean.si(), true),
                        answer("forward shear", forces.disc().shear(), forces, lean.si(), false),
                        muscle(forces)));
    }

    /** Returns compression, shear and muscle force in a posture, with the inputs behind them. */
    public Listing of(HeldPosture held) {
        Forces forces = forces(held);
        double lean = Readings.lean(Segment.TRUNK).si(held);
        List<Answer<?>> answers = new ArrayList<>();
        answers.add(held.moment(Joint.LOW_BACK));
        answers.add(compression().of(held));
        answers.add(shear().of(held));
        answers.add(muscle(forces));
        answers.add(given("torso lean", Angle.of(lean), "of the posture"));
        return listing("Low back: " + held.performance(), answers);
    }

    private Listing listing(String title, List<Answer<?>> answers) {
        List<Answer<?>> all = new ArrayList<>(answers);
        all.add(given("extensor arm", extensorArm, "input; Cholewicki 1991 has 6 cm"));
        all.add(given("extensor inclination", inclination, "input; Cholewicki 1991 has 5°"));
        all.add(given("disc tilt in the upright stance", discTilt, "input; 35° is from memory"));
        all.add(given("pelvis' part of the torso's lean", pelvisShare, "input"));
        all.add(given("co-contraction", coContraction, "input; 0: no muscle works against"));
        all.add(given("design criterion, NIOSH", Force.of(NIOSH_CRITERION), "NIOSH 1994, as Arjmand 2015 quotes it"));
        return Listing.of(title, all, notes());
    }

    private static <M extends Measure<M>> Answer<M> given(String label, M value, String source) {
        return Answer.of(label, value, Sides.NOT_SIDED, Working.given(label, "input", value, source));
    }

    private static String text(Measure<?> value, Unit unit) {
        return MeasureText.print(value, unit, 3);
    }

    private List<String> notes() {
        Set<String> notes = new LinkedHashSet<>();
        notes.add(CAUTION);
        notes.add("Low back: extensor arm " + text(extensorArm, Unit.CENTIMETRE) + ", inclined "
                + text(inclination, Unit.DEGREE) + "; disc tilt " + text(discTilt, Unit.DEGREE)
                + " upright (from memory unless set), the pelvis takes " + text(pelvisShare, Unit.PERCENT)
                + " of the lean; co-contraction " + text(coContraction, Unit.PERCENT)
                + "; abdominal pressure 0; no bending of the lumbar spine.");
        notes.add(GENERAL);
        return List.copyOf(notes);
    }

    private Answer<Force> muscle(Forces forces) {
        boolean extending = forces.moment() >= 0;
        double value = extending ? forces.extensors() : forces.abdominals();
        double arm = extending ? extensorArm.si() : ABDOMINAL_ARM;
        String label = extending ? "force of the back's extensors" : "force of the abdominal muscle";
        return Answer.of(
                        label,
                        Force.of(value),
                        Sides.TOTAL,
                        () -> Working.of(label + ", in total", List.of(muscleStep(forces, arm, value))))
                .noted(new LinkedHashSet<>(notes()));
    }

    private Step muscleStep(Forces forces, double arm, double value) {
        Expression moment = Expression.symbol(
                "M_back", Moment.of(Math.abs(forces.moment())), "the moment's size; ask for its own working");
        Expression r = Expression.symbol("r", Length.of(arm), "muscle arm; input");
        Expression c = Expression.symbol("c", coContraction, "co-contraction; input");
        Expression whole = coContraction.si() == 0
                ? moment
                : moment.times(Expression.exact("1").plus(c));
        return Step.of("F_muscle", whole.dividedBy(r), Force.of(value), "one equivalent muscle, in total");
    }

    private Answer<Force> answer(String label, double value, Forces forces, double lean, boolean across) {
        return Answer.of(label, Force.of(value), Sides.TOTAL, () -> working(label, value, forces, lean, across))
                .noted(new LinkedHashSet<>(notes()));
    }

    private Working working(String label, double value, Forces forces, double lean, boolean across) {
        List<Step> steps = new ArrayList<>();
        Expression share = Expression.symbol("k", pelvisShare, "pelvis' part of the lean; input");
        Step tilt = Step.of(
                "delta",
                Expression.symbol("delta_0", discTilt, "disc's tilt upright; input, from memory unless set")
                        .plus(share.times(Expression.symbol("lean", Angle.of(lean), "of the torso"))),
                Angle.of(forces.tilt()),
                "tilt of the disc");
        steps.add(tilt);
        Expression x = Expression.symbol("R_x", Force.of(forces.x()), "pelvis on trunk, forward");
        Expression y = Expression.symbol("R_y", Force.of(forces.y()), "pelvis on trunk, upward");
        Expression iota = Expression.symbol("iota", inclination, "extensors behind the disc's normal; input");
        Expression sine = Expression.sine(tilt.result());
        Expression cosine = Expression.cosine(tilt.result());
        Expression f = muscleIn(steps, "F_back", forces.extensors(), extensorArm.si(), forces);
        Expression total;
        if (across) {
            Expression a = muscleIn(steps, "F_front", forces.abdominals(), ABDOMINAL_ARM, forces);
            total = x.times(sine)
                    .plus(y.times(cosine))
                    .plus(f.times(Expression.cosine(iota)))
                    .plus(a);
        } else {
            total = y.times(sine).minus(x.times(cosine)).minus(f.times(Expression.sine(iota)));
        }
        steps.add(Step.of(across ? "C" : "S", total, Force.of(value), across ? "across the disc" : "along the disc"));
        return Working.of(label + ", in total", steps);
    }

    /** A muscle's force as a step, or a given 0 where it rests. */
    private Expression muscleIn(List<Step> steps, String symbol, double value, double arm, Forces forces) {
        if (value == 0) {
            return Expression.symbol(symbol, Force.of(0), "at rest");
        }
        boolean needed = symbol.equals("F_back") == (forces.moment() >= 0);
        Expression moment = Expression.symbol(
                "M_back", Moment.of(Math.abs(forces.moment())), "the moment's size; ask for its own working");
        Expression c = Expression.symbol("c", coContraction, "co-contraction; input");
        Expression r = Expression.symbol("r_" + symbol, Length.of(arm), "muscle arm; input");
        Expression whole = needed
                ? (coContraction.si() == 0
                        ? moment
                        : moment.times(Expression.exact("1").plus(c)))
                : moment.times(c);
        Step step = Step.of(symbol, whole.dividedBy(r), Force.of(value), "in total");
        steps.add(step);
        return step.result();
    }

    /** Returns the compression of the low back as a reading, for sweeps, tables and comparisons. */
    public Reading<Force> compression() {
        return reading("low back compression", true);
    }

    /** Returns the forward shear of the low back as a reading: what would push the trunk forward over the pelvis. */
    public Reading<Force> shear() {
        return reading("low back forward shear", false);
    }

    private Reading<Force> reading(String label, boolean across) {
        return Reading.of(
                label,
                Unit.NEWTON,
                Sides.TOTAL,
                held -> across
                        ? forces(held).disc().compression()
                        : forces(held).disc().shear(),
                held -> {
                    Forces forces = forces(held);
                    double value =
                            across ? forces.disc().compression() : forces.disc().shear();
                    double lean = Readings.lean(Segment.TRUNK).si(held);
                    HeldPosture.Span span = held.span(reading(label, across));
                    return answer(label, value, forces, lean, across)
                            .between(Force.of(span.low()), Force.of(span.high()));
                });
    }

    /**
     * Returns compression and shear through a range, with NIOSH's design criterion as a labelled line.
     *
     * @param knob that turns
     * @throws IllegalArgumentException if the exercise does not have the knob
     */
    public <Q extends Measure<Q>> Curves through(Performance performance, Knob<Q> knob, Q from, Q to) {
        Curves swept = Sweep.sweep(knob).from(from).to(to).of(performance).curves(compression(), shear());
        List<Curves.Curve> curves = new ArrayList<>(swept.curves());
        List<@Nullable Double> line = new ArrayList<>();
        swept.axis().values().forEach(at -> line.add(NIOSH_CRITERION));
        curves.add(
                Curves.Curve.of("NIOSH design criterion for lifting at work, 3400 N", Unit.NEWTON, Sides.TOTAL, line));
        Set<String> notes = new LinkedHashSet<>(notes());
        notes.addAll(swept.notes());
        return new Curves("Low back, " + swept.title(), swept.axis(), curves, swept.current(), List.copyOf(notes));
    }
}
