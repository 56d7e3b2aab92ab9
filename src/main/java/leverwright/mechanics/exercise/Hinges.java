package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;

import java.util.LinkedHashMap;
import java.util.Map;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Sketch;

/** Hinges and bridges. Postures are from memory where no source is named. */
final class Hinges {
    private static final double RIGHT_ANGLE = deg(90).si();
    /** Place of the bench under the shoulder blades, from the hip along the trunk, m, from memory. */
    private static final double BLADES = 0.4;
    /** Half the depth of the back, m, from memory. */
    private static final double BACK = 0.1;

    private static final double HIPS_OVER_FLOOR = 0.95;
    private static final Spot ON_THE_CHEST = Spot.at(Member.TRUNK, 0.35, 0.15);

    static final Movement GOOD_MORNING = new Movement("Good morning")
            .of(Family.HINGE)
            .standing(Knobs.TORSO_LEAN, Knobs.KNEE_FLEXION)
            .knob(Knobs.TORSO_LEAN, deg(70), "near the low position (from memory)")
            .knob(Knobs.KNEE_FLEXION, deg(15), "soft knees (from memory)")
            .barbellOnShoulders(cm(2), cm(6))
            .then(arms -> Holds.forearmsToTheBar(arms, deg(0)))
            .path(Knobs.TORSO_LEAN, deg(10), deg(80))
            .drives(Joint.HIP)
            .trains("hamstrings, gluteus maximus; the back muscles hold the trunk")
            .cautions(Cautions.LOW_BACK);

    static final Movement HIP_THRUST = new Movement("Hip thrust")
            .of(Family.HINGE)
            .change(plan -> Bases.all(plan, deg(-90), deg(-90), deg(0), deg(0)))
            .then(Squats::onFrontFoot)
            .knob(SetupKnobs.BENCH_HEIGHT)
            .knob(SetupKnobs.HIPS_BELOW_LEVEL)
            .rule(
                    Member.TRUNK,
                    LeanRule.knob(SetupKnobs.HIPS_BELOW_LEVEL, 1, -RIGHT_ANGLE, "trunk below level less 90°"))
            .moving(SetupKnobs.HIPS_BELOW_LEVEL, java.util.Optional.of(Drawing.Moved.HIP))
            .bend(Joint.SHOULDER, deg(0))
            .change(plan -> {
                plan.anchor = Anchor.HIP;
                plan.anchorX = work -> hip(work, true);
                plan.anchorY = work -> hip(work, false);
                plan.anchorWords = "from the edge of the bench and the trunk's lean";
                plan.pressure = work -> ankleX(work)
                        - work.layout().body().ankleAlong()
                        + work.si(Knobs.PRESSURE) * work.layout().body().length(Segment.FOOT);
                plan.scenery.clear();
            })
            .reach(new Reach(
                    Member.THIGH,
                    new Targets.Point(
                            "ankle_set",
                            Hinges::ankleX,
                            work -> work.layout().body().ankleAcross(),
                            "the feet stand where the shanks are upright under level thighs"),
                    1))
            .knob(Knobs.BAR, kg(60), "a middling load (from memory)")
            .knob(SetupKnobs.BAR_ON_HIPS)
            .add(new Hung(
                    "bar", new Spot(Member.TRUNK, Spot.From.NEAR, null, 0, SetupKnobs.BAR_ON_HIPS, 1, 0), Knobs.BAR, 1))
            .contact(new Contact(
                    "bench",
                    Spot.at(Member.TRUNK, BLADES, -BACK),
                    new Pull.Fixed(RIGHT_ANGLE),
                    new Pivot.On(Spot.onSole(Member.FOOT, Knobs.PRESSURE), "pressure_of_feet"),
                    -1,
                    SetupKnobs.BENCH_FORCE,
                    Knobs.FRICTION,
                    "0 by default; forward positive."))
            .show(work -> {
                double height = work.si(SetupKnobs.BENCH_HEIGHT);
                work.layout().show(new Sketch.GroundLine(new Sketch.Point(-0.5, 0), new Sketch.Point(1.3, 0)));
                work.layout()
                        .show(new Sketch.GroundLine(new Sketch.Point(-0.35, height), new Sketch.Point(0.02, height)));
            })
            .carriedBy("both feet on the floor, a bench under the shoulder blades")
            .says(
                    "The trunk's lean is set; it turns on the bench, and the legs bend so that the feet stay where they are;"
                            + " moments about the pressure of the feet give what the bench carries.")
            .path(SetupKnobs.HIPS_BELOW_LEVEL, deg(45), deg(0))
            .drives(Joint.HIP)
            .trains("gluteus maximus; hamstrings")
            .cautions(Cautions.LOW_BACK);

    static final Movement BACK_EXTENSION = new Movement("Inclined back extension")
            .of(Family.HINGE)
            .change(plan -> Bases.all(plan, deg(45), deg(45), deg(45), deg(45)))
            .knob(SetupKnobs.BENCH_INCLINE, deg(45), "a bench of 45° (common practice, no source)")
            .rule(Member.THIGH, LeanRule.knob(SetupKnobs.BENCH_INCLINE, -1, RIGHT_ANGLE, "along the bench"))
            .rule(Member.SHANK, LeanRule.knob(SetupKnobs.BENCH_INCLINE, -1, RIGHT_ANGLE, "along the bench"))
            .rule(Member.FOOT, LeanRule.knob(SetupKnobs.BENCH_INCLINE, -1, RIGHT_ANGLE, "square to the shank"))
            .knob(SetupKnobs.HIP_FLEXION, deg(20), "a little below the line of the legs")
            .rule(
                    Member.TRUNK,
                    LeanRule.from(Member.THIGH, 1, SetupKnobs.HIP_FLEXION, 1, 0, "lean of the thigh plus hip flexion"))
            .moving(SetupKnobs.HIP_FLEXION, java.util.Optional.of(Drawing.Moved.SHOULDER))
            .change(Hinges::thighFirst)
            .reach(new Reach(Member.UPPER_ARM, new Targets.On("plate", ON_THE_CHEST), -1))
            .change(plan -> {
                plan.anchor = Anchor.HIP;
                plan.anchorY = work -> HIPS_OVER_FLOOR;
                plan.anchorWords = "over the pad, from which x counts";
                plan.held = Member.FOOT.bit();
            })
            .knob(SetupKnobs.PLATES, kg(10), "one plate held at the chest (from memory)")
            .add(new Hung("plate", ON_THE_CHEST, SetupKnobs.PLATES, 1))
            .contact(new Contact(
                    "pad",
                    Spot.at(Member.THIGH, 0.12, 0.08),
                    new Pull.Square(Member.THIGH, -1),
                    new Pivot.At(Joint.ANKLE),
                    -1,
                    SetupKnobs.BENCH_FORCE,
                    Knobs.FRICTION,
                    "0 by default: the foot plate carries what runs along the legs; along the legs upwards positive."))
            .show(work ->
                    work.layout().show(new Sketch.GroundLine(new Sketch.Point(-1.1, 0), new Sketch.Point(0.7, 0))))
            .show(Hinges::pad)
            .carriedBy("a pad in front of the thighs, rollers and a plate at the feet")
            .says("The bench and the bend of the hip are set; moments about the ankles give what the pad carries.")
            .path(SetupKnobs.HIP_FLEXION, deg(80), deg(0))
            .drives(Joint.HIP, Joint.LOW_BACK)
            .trains("gluteus maximus, hamstrings, back muscles")
            .cautions(Cautions.LOW_BACK);

    private Hinges() {}

    private static void pad(Work work) {
        Spot spot = Spot.at(Member.THIGH, 0.12, 0.08);
        double lean = work.layout().lean(Member.THIGH);
        double x = spot.x(work);
        double y = spot.y(work);
        double alongX = 0.12 * Trigonometry.sine(lean);
        double alongY = 0.12 * Trigonometry.cosine(lean);
        work.layout()
                .show(new Sketch.GroundLine(
                        new Sketch.Point(x - alongX, y - alongY), new Sketch.Point(x + alongX, y + alongY)));
    }

    /** The thigh's rule comes before the trunk's, which follows it. */
    private static void thighFirst(Plan plan) {
        Map<Member, LeanRule> ordered = new LinkedHashMap<>();
        LeanRule thigh = plan.leans.get(Member.THIGH);
        if (thigh != null) {
            ordered.put(Member.THIGH, thigh);
        }
        ordered.putAll(plan.leans);
        plan.leans = ordered;
    }

    /** The hip seen from the edge of the bench, at x = 0: along the trunk and half its depth. */
    private static double hip(Work work, boolean isX) {
        double lean = work.si(SetupKnobs.HIPS_BELOW_LEVEL) - RIGHT_ANGLE;
        double sine = Trigonometry.sine(lean);
        double cosine = Trigonometry.cosine(lean);
        return isX ? -BLADES * sine + BACK * cosine : work.si(SetupKnobs.BENCH_HEIGHT) - BLADES * cosine - BACK * sine;
    }

    private static double ankleX(Work work) {
        return BLADES + FORWARD * work.layout().body().length(Segment.THIGH);
    }

    /** Part of the thigh's length that the ankles stand ahead of the lifted hips. */
    private static final double FORWARD = 0.98;
}
