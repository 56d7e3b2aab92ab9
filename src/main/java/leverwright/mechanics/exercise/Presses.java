package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.working.Sketch;

/** Presses, dips and flies. Postures are from memory where no source is named. */
final class Presses {
    private static final double RIGHT_ANGLE = deg(90).si();
    private static final double BARS = 1.25;

    static final Movement BENCH_PRESS = onBench("Bench press")
            .knob(Knobs.BAR, kg(40), "a middling load (from memory)")
            .barbellInHands()
            .knob(Knobs.BAR, kg(40), "a middling load (from memory)")
            .knob(SetupKnobs.GRIP_WIDTH)
            .knob(SetupKnobs.BAR_HEIGHT, cm(15), "near the chest, the low position (from memory)")
            .reach(new Reach(Member.UPPER_ARM, new Targets.OnBar(), 1))
            .then(Presses::alongTheBar)
            .moving(SetupKnobs.BAR_HEIGHT, java.util.Optional.of(Drawing.Moved.BAR))
            .says("Grip width and the bar's height are set; the arms bend so that the hands are on the bar.")
            .path(SetupKnobs.BAR_HEIGHT, cm(12), cm(55))
            .drives(Joint.SHOULDER, Joint.ELBOW)
            .trains("pectoralis major, anterior deltoid, triceps")
            .cautions(Cautions.SHOULDER);

    static final Movement DUMBBELL_BENCH_PRESS = onBench("Dumbbell bench press")
            .dumbbellsInHands()
            .knob(Knobs.DUMBBELL, kg(16), "a middling load (from memory)")
            .lean(Segment.UPPER_ARM, SetupKnobs.UPPER_ARM_OUT.startingAt(deg(80), "elbows a little below the bench"))
            .lean(Segment.FOREARM, deg(180))
            .assumes("the forearms stand upright: dumbbells press straight down, without a force to the side")
            .path(SetupKnobs.UPPER_ARM_OUT, deg(70), deg(170))
            .drives(Joint.SHOULDER, Joint.ELBOW)
            .trains("pectoralis major, anterior deltoid")
            .cautions(Cautions.SHOULDER);

    static final Movement FLY = fly(onBench("Fly"), "pectoralis major, anterior deltoid");

    static final Movement INCLINE_FLY = fly(
                    onBench("Incline fly").knob(SetupKnobs.BENCH_INCLINE).change(plan -> {
                        plan.gravity = Plan.Gravity.TILTED;
                        plan.tilt = SetupKnobs.BENCH_INCLINE;
                    }),
                    "pectoralis major, its upper part; anterior deltoid")
            .assumes(
                    "the arms move in the body's transverse plane, which leans with the bench: gravity's part along the trunk"
                            + " is borne out of this plane and not shown");

    static final Movement CABLE_FLY = new Movement("Cable fly")
            .of(Family.PUSH)
            .in(Plane.TRANSVERSE)
            .standing()
            .lean(Segment.UPPER_ARM, SetupKnobs.UPPER_ARM_OUT.startingAt(deg(100), "hands a little ahead"))
            .bend(Joint.ELBOW, deg(20))
            .cableInHands(cm(150), cm(-30))
            .path(SetupKnobs.UPPER_ARM_OUT, deg(80), deg(170))
            .drives(Joint.SHOULDER)
            .assumes("gravity acts square to this plane: what holds the arms up is not shown")
            .trains("pectoralis major, anterior deltoid")
            .cautions(Cautions.SHOULDER, "Strength and anchor of the cable are not checked.");

    static final Movement OVERHEAD_PRESS = new Movement("Overhead press")
            .of(Family.PUSH)
            .standing()
            .barbellInHands()
            .knob(Knobs.BAR_AHEAD, cm(2), "the bar over the middle of the foot (from memory)")
            .knob(SetupKnobs.BAR_HEIGHT, cm(25), "at the height of the eyes (from memory)")
            .reach(new Reach(Member.UPPER_ARM, new Targets.OverFoot(), 1))
            .moving(SetupKnobs.BAR_HEIGHT, java.util.Optional.of(Drawing.Moved.BAR))
            .path(SetupKnobs.BAR_HEIGHT, cm(8), cm(55))
            .drives(Joint.SHOULDER, Joint.ELBOW)
            .trains("anterior and middle deltoid, triceps, serratus anterior")
            .cautions(Cautions.SHOULDER, Cautions.LOW_BACK);

    static final Movement DUMBBELL_SHOULDER_PRESS = new Movement("Dumbbell shoulder press")
            .of(Family.PUSH)
            .in(Plane.FRONTAL)
            .standing()
            .bend(
                    Joint.SHOULDER,
                    SetupKnobs.SHOULDER_ABDUCTION.startingAt(deg(80), "elbows a little below the shoulders"))
            .lean(Segment.FOREARM, deg(180))
            .dumbbellsInHands()
            .assumes("the forearms stand upright")
            .path(SetupKnobs.SHOULDER_ABDUCTION, deg(60), deg(170))
            .drives(Joint.SHOULDER, Joint.ELBOW)
            .trains("middle and anterior deltoid, triceps")
            .cautions(Cautions.SHOULDER);

    static final Movement DIP = new Movement("Dip")
            .of(Family.PUSH)
            .change(plan -> {
                Bases.all(plan, deg(20), deg(20), deg(80), deg(80));
                Bases.carriedByHands(plan, BARS, "on the bars, from which x counts", deg(-120), deg(45), "over");
            })
            .lean(Segment.TRUNK, Knobs.TORSO_LEAN.startingAt(deg(20), "from memory"))
            .rule(Member.THIGH, LeanRule.from(Member.TRUNK, 1, null, 0, 0, "in line with the trunk"))
            .bend(Joint.KNEE, deg(80))
            .rule(Member.FOOT, LeanRule.from(Member.SHANK, 1, null, 0, 0, "square to the shank"))
            .rule(Member.UPPER_ARM, LeanRule.searched(0, "found by balance over the hands, see the check"))
            .bend(Joint.ELBOW, Knobs.ELBOW_FLEXION)
            .moving(Knobs.ELBOW_FLEXION, java.util.Optional.of(Drawing.Moved.SHOULDER))
            .then(Bases::vest)
            .show(work -> work.layout()
                    .show(new Sketch.GroundLine(new Sketch.Point(-0.3, BARS), new Sketch.Point(0.3, BARS))))
            .carriedBy("both hands on bars")
            .says("Elbow flexion and torso lean are set; the upper arms lean so that the weight lies over the hands.")
            .path(Knobs.ELBOW_FLEXION, deg(10), deg(95))
            .drives(Joint.ELBOW, Joint.SHOULDER)
            .trains("triceps, pectoralis major, anterior deltoid")
            .cautions(Cautions.SHOULDER);

    private Presses() {}

    private static Movement onBench(String name) {
        return Bases.seenFromTheHead(new Movement(name).of(Family.PUSH), true)
                .show(work -> work.layout()
                        .show(new Sketch.GroundLine(new Sketch.Point(-0.15, -0.12), new Sketch.Point(0.15, -0.12))));
    }

    private static Movement fly(Movement base, String trains) {
        return base.dumbbellsInHands()
                .lean(Segment.UPPER_ARM, SetupKnobs.UPPER_ARM_OUT)
                .bend(Joint.ELBOW, deg(20))
                .path(SetupKnobs.UPPER_ARM_OUT, deg(80), deg(170))
                .drives(Joint.SHOULDER)
                .trains(trains)
                .cautions(Cautions.SHOULDER);
    }

    /** The force of each hand along a bar, which balance leaves free. */
    static Movement alongTheBar(Movement movement) {
        return movement.knob(SetupKnobs.OUTWARD_FORCE)
                .add(new Pull(
                        "bar along",
                        Spot.grip(Member.HAND),
                        new Sizes.Given(SetupKnobs.OUTWARD_FORCE, 1),
                        new Pull.Fixed(0)))
                .add(new Pull(
                        "other bar along",
                        Spot.grip(Member.OTHER_HAND),
                        new Sizes.Given(SetupKnobs.OUTWARD_FORCE, 1),
                        new Pull.Fixed(2 * RIGHT_ANGLE)))
                .change(plan -> plan.free.add(SetupKnobs.OUTWARD_FORCE.meaning() + " ("
                        + SetupKnobs.OUTWARD_FORCE.name()
                        + "): 0 by default, because no measurement was read that says otherwise. A bar holds the hands"
                        + " together or apart; dumbbells do not."));
    }
}
