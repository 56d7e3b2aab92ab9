package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.percent;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.working.Sketch;

/** Squats with other bars and supports than the back squat's, and the step-up. Postures are from memory where no source is named. */
final class Squats {
    private static final double RIGHT_ANGLE = deg(90).si();
    /** Half the depth of the back, m, from memory. */
    private static final double BACK = 0.1;

    static final Movement LOW_BAR_SQUAT = squat("Low-bar squat", 52, 3, 24)
            .barbellOnShoulders(cm(-5), cm(9))
            .then(arms -> Holds.forearmsToTheBar(arms, deg(0)))
            .trains(
                    "gluteus maximus, hamstrings and adductors more than with the high bar, quadriceps; the back holds the trunk");

    static final Movement FRONT_SQUAT = squat("Front squat", 15, 0, 37)
            .barbellOnShoulders(cm(2), cm(-12))
            .then(arms -> Holds.forearmsToTheBar(arms, deg(95)))
            .trains("quadriceps, gluteus maximus; the upper back holds the bar up");

    static final Movement GOBLET_SQUAT = squat("Goblet squat", 25, 0, 32)
            .knob(Knobs.DUMBBELL, kg(16), "a middling dumbbell (from memory)")
            .knob(Knobs.BAR_HEIGHT_ON_TRUNK, cm(-15), "the dumbbell lies against the breastbone (from memory)")
            .knob(Knobs.BAR_BEHIND_TRUNK, cm(-18), "ahead of the trunk's line (from memory)")
            .add(new Hung(
                    "dumbbell", Spot.onShoulders(Knobs.BAR_HEIGHT_ON_TRUNK, Knobs.BAR_BEHIND_TRUNK), Knobs.DUMBBELL, 1))
            .reach(new Reach(
                    Member.UPPER_ARM,
                    new Targets.On("dumbbell", Spot.onShoulders(Knobs.BAR_HEIGHT_ON_TRUNK, Knobs.BAR_BEHIND_TRUNK)),
                    1))
            .assumes("one dumbbell, pressed against the chest; the arms bear none of it")
            .trains("quadriceps, gluteus maximus; the arms hold the dumbbell");

    static final Movement WALL_SQUAT = bent("Wall squat", Family.SQUAT, 10, 0)
            .knob(SetupKnobs.VEST)
            .add(new Hung("vest", Spot.at(Member.TRUNK, 0.35), SetupKnobs.VEST, 1))
            .contact(new Contact(
                    "wall",
                    Spot.at(Member.TRUNK, 0.35, -BACK),
                    new Pull.Fixed(0),
                    new Pivot.Pressure(),
                    -1,
                    SetupKnobs.WALL_FORCE,
                    Knobs.FRICTION,
                    "0 by default, a smooth wall or a ball."))
            .show(work -> {
                double x = work.layout().startX(Member.TRUNK) - BACK;
                work.layout().show(new Sketch.GroundLine(new Sketch.Point(x, 0), new Sketch.Point(x, 1.6)));
            })
            .carriedBy("both feet on the floor, the back against a wall")
            .assumes("the wall pushes square to itself 35 cm above the hips (from memory)")
            .trains("quadriceps");

    static final Movement SPLIT_SQUAT = new Movement("Split squat")
            .of(Family.SQUAT)
            .change(plan -> {
                plan.parting = Parting.LEGS;
                Bases.all(plan, deg(10), deg(-90), deg(0), deg(0));
            })
            .then(Squats::onFrontFoot)
            .lean(Segment.TRUNK, Knobs.TORSO_LEAN.startingAt(deg(10), "nearly upright (from memory)"))
            .lean(Segment.THIGH, Knobs.THIGH_ABOVE_LEVEL.startingAt(deg(10), "near the low position (from memory)"))
            .lean(Segment.SHANK, Knobs.SHANK_LEAN.startingAt(deg(8), "the knee near over the foot (from memory)"))
            .otherLean(Segment.FOOT, SetupKnobs.REAR_FOOT_PITCH)
            .knob(SetupKnobs.STEP_LENGTH, cm(60), "a short step (from memory)")
            .knob(SetupKnobs.REAR_HEIGHT)
            .knob(Knobs.BALL_OF_FOOT)
            .reach(new Reach(Member.OTHER_THIGH, rearAnkle(), 1))
            .dumbbellsInHands()
            .contact(new Contact(
                    "rear foot",
                    Spot.onSole(Member.OTHER_FOOT, Knobs.BALL_OF_FOOT),
                    new Pull.Fixed(RIGHT_ANGLE),
                    new Pivot.Pressure(),
                    -1,
                    SetupKnobs.REAR_FORCE,
                    Knobs.FRICTION,
                    "0 by default, a rear foot that presses straight down."))
            .show(work ->
                    work.layout().show(new Sketch.GroundLine(new Sketch.Point(-1.3, 0), new Sketch.Point(0.7, 0))))
            .carriedBy("the front foot, flat, and the ball of the rear foot")
            .says(
                    "Front shank and thigh and the torso are set; the rear leg bends so that its ball is on its place; moments"
                            + " about the pressure of the front foot give what the rear foot carries.")
            .path(Knobs.THIGH_ABOVE_LEVEL, deg(35), deg(0))
            .drives(Joint.KNEE, Joint.HIP)
            .trains("quadriceps and gluteus maximus of the front leg; rectus femoris of the rear leg")
            .cautions(Cautions.KNEE, Cautions.LOW_BACK);

    static final Movement STEP_UP = new Movement("Step-up")
            .of(Family.SQUAT)
            .onOneLeg(Knobs.THIGH_ABOVE_LEVEL, Knobs.TORSO_LEAN)
            .knob(Knobs.THIGH_ABOVE_LEVEL, deg(20), "soon after the rear foot left the floor (from memory)")
            .knob(Knobs.TORSO_LEAN, deg(30), "from memory")
            .knob(Knobs.SHANK_LEAN, deg(20), "from memory")
            .knob(Knobs.KNEE_FLEXION, deg(90), "from memory")
            .knob(SetupKnobs.STEP_HEIGHT)
            .otherLean(Segment.THIGH, deg(0))
            .otherLean(Segment.SHANK, deg(40))
            .otherLean(Segment.FOOT, deg(40))
            .dumbbellsInHands()
            .check(Squats::requireReachOfTheFloor)
            .show(work -> {
                double step = work.si(SetupKnobs.STEP_HEIGHT);
                work.layout().show(new Sketch.GroundLine(new Sketch.Point(-0.05, 0), new Sketch.Point(0.45, 0)));
                work.layout()
                        .show(new Sketch.GroundLine(new Sketch.Point(-0.9, -step), new Sketch.Point(-0.05, -step)));
            })
            .assumes("the other leg hangs and pushes no more; places count from the top of the step")
            .path(Knobs.THIGH_ABOVE_LEVEL, deg(10), deg(85))
            .with(Knobs.TORSO_LEAN, deg(35), deg(5))
            .drives(Joint.KNEE, Joint.HIP)
            .trains("quadriceps and gluteus maximus of the leg on the step")
            .cautions(Cautions.KNEE);

    private Squats() {}

    /** A squat on both feet whose shanks lean, on the usual way, from one angle to another; balance finds the torso. */
    private static Movement squat(String name, int lean, int shankAtTop, int shankAtLevel) {
        return new Movement(name)
                .of(Family.SQUAT)
                .standing(Knobs.THIGH_ABOVE_LEVEL, Knobs.TORSO_LEAN)
                .knob(Knobs.TORSO_LEAN, deg(lean), "as it often looks at level thighs (from memory)")
                .knob(Knobs.SHANK_LEAN, deg(30), "a shank as it often leans in squats (from memory)")
                .knob(Knobs.KNEE_FLEXION, deg(110), "near level thighs (from memory)")
                .path(Knobs.THIGH_ABOVE_LEVEL, deg(90), deg(0))
                .with(Knobs.SHANK_LEAN, deg(shankAtTop), deg(shankAtLevel))
                .drives(Joint.KNEE, Joint.HIP, Joint.ANKLE)
                .cautions(Cautions.LOW_BACK, Cautions.KNEE);
    }

    /** Both feet flat, thigh and shank set, trunk upright against something. */
    static Movement bent(String name, Family family, int thighAboveLevel, int shank) {
        return new Movement(name)
                .of(family)
                .change(plan -> Bases.all(plan, deg(0), deg(-90), deg(0), deg(0)))
                .then(Squats::onFrontFoot)
                .lean(Segment.THIGH, Knobs.THIGH_ABOVE_LEVEL.startingAt(deg(thighAboveLevel), "from memory"))
                .lean(Segment.SHANK, Knobs.SHANK_LEAN.startingAt(deg(shank), "upright shanks (from memory)"))
                .path(Knobs.THIGH_ABOVE_LEVEL, deg(80), deg(0))
                .drives(Joint.KNEE, Joint.HIP)
                .cautions(Cautions.KNEE);
    }

    /** The foot flat at the origin, what it gives left open, its pressure at the chosen place. */
    static Movement onFrontFoot(Movement movement) {
        return movement.knob(Knobs.PRESSURE)
                .change(plan -> {
                    plan.anchor = Anchor.HEEL;
                    plan.held = Member.FOOT.bit();
                    plan.pressure = work ->
                            work.si(Knobs.PRESSURE) * work.layout().body().length(Segment.FOOT);
                })
                .show(work ->
                        work.layout().show(new Sketch.GroundLine(new Sketch.Point(-0.6, 0), new Sketch.Point(0.6, 0))));
    }

    /** The ankle over a ball of the foot that stands behind the front heel: from the ball along and across the sole. */
    private static Reach.Target rearAnkle() {
        return new Targets.Point(
                "rear_ankle",
                work -> {
                    double pitch = work.si(SetupKnobs.REAR_FOOT_PITCH);
                    return -work.si(SetupKnobs.STEP_LENGTH)
                            + alongFromBall(work) * leverwright.mechanics.numeric.Trigonometry.cosine(pitch)
                            + work.layout().body().ankleAcross()
                                    * leverwright.mechanics.numeric.Trigonometry.sine(pitch);
                },
                work -> {
                    double pitch = work.si(SetupKnobs.REAR_FOOT_PITCH);
                    return work.si(SetupKnobs.REAR_HEIGHT)
                            - alongFromBall(work) * leverwright.mechanics.numeric.Trigonometry.sine(pitch)
                            + work.layout().body().ankleAcross()
                                    * leverwright.mechanics.numeric.Trigonometry.cosine(pitch);
                },
                "ankle over the ball of the rear foot, by its pitch");
    }

    private static double alongFromBall(Work work) {
        return work.layout().body().ankleAlong()
                - work.si(Knobs.BALL_OF_FOOT) * work.layout().body().length(Segment.FOOT);
    }

    /** A step that is taller than the leg cannot be begun from the floor. */
    private static void requireReachOfTheFloor(Work work) {
        Skeleton body = work.layout().body();
        double leg = body.length(Segment.THIGH) + body.length(Segment.SHANK);
        double step = work.si(SetupKnobs.STEP_HEIGHT);
        double most = MOST_OF_LEG * leg;
        if (step > most) {
            throw new ImpossibleSetting("the step is " + Measures.m(step) + " high, but thigh and shank are "
                    + Measures.m(leg) + " long; a foot comes up to " + percent(100 * MOST_OF_LEG)
                    + " of that at most: set the"
                    + " step no higher than " + Measures.m(most));
        }
    }

    /** Part of the leg's length that a step may have, so that the foot comes onto it: from memory. */
    private static final double MOST_OF_LEG = 0.85;
}
