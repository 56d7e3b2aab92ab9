package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.percent;

import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Sketch;

/** Leg press, leg curls, calf raises, and the hip by cable or on one leg. Postures are from memory where no source is named. */
final class LegMachines {
    private static final double RIGHT_ANGLE = deg(90).si();
    private static final String MACHINE = "Strength and anchors of the machine are not checked.";
    /** How far the free leg is held to its side, clear of the standing one, rad, from memory. */
    private static final double FREE_LEG = deg(15).si();

    private static final String CUFF = "Strength and anchor of the cable are not checked.";

    static final Movement LEG_PRESS = new Movement("Leg press")
            .of(Family.SQUAT)
            .change(plan -> {
                Bases.all(plan, deg(-45), deg(-90), deg(0), deg(0));
                plan.held = Member.TRUNK.bit();
                plan.anchor = Anchor.HIP;
                plan.anchorY = work -> work.si(SetupKnobs.SEAT_HEIGHT);
                plan.anchorWords = "on the seat, from which x counts";
            })
            .knob(SetupKnobs.SEAT_HEIGHT, cm(35), "a low seat (from memory); it moves the figure only")
            .knob(SetupKnobs.RAIL)
            .knob(SetupKnobs.SLED)
            .knob(SetupKnobs.PLATES, kg(100), "a middling load (from memory)")
            .knob(SetupKnobs.RAIL_FRICTION)
            .knob(SetupKnobs.PLATE_PRESSURE)
            .knob(SetupKnobs.ACROSS_RAIL)
            .bend(Joint.SHOULDER, deg(0))
            .knob(Knobs.KNEE_FLEXION, deg(90), "a right angle")
            .moving(Knobs.KNEE_FLEXION, Optional.of(Drawing.Moved.KNEE))
            .rule(
                    Member.FOOT,
                    LeanRule.knob(SetupKnobs.RAIL, -1, -RIGHT_ANGLE, "flat on the plate, square to the rail"))
            .reach(new Reach(Member.THIGH, new Targets.AlongRail(), 1))
            .add(new Pull(
                    "plate",
                    Spot.onSole(Member.FOOT, SetupKnobs.PLATE_PRESSURE),
                    new Sizes.OnRail(),
                    new Pull.ByKnob(SetupKnobs.RAIL, 2 * RIGHT_ANGLE)))
            .add(new Pull(
                    "plate across",
                    Spot.onSole(Member.FOOT, SetupKnobs.PLATE_PRESSURE),
                    new Sizes.Given(SetupKnobs.ACROSS_RAIL, 1),
                    new Pull.ByKnob(SetupKnobs.RAIL, RIGHT_ANGLE)))
            .change(plan -> plan.free.add(SetupKnobs.ACROSS_RAIL.meaning() + " (" + SetupKnobs.ACROSS_RAIL.name()
                    + "): 0 by default, feet that press along the rail. The place of pressure on the plate ("
                    + SetupKnobs.PLATE_PRESSURE.name() + ") is free as well."))
            .remark(LegMachines::holdsItself)
            .show(LegMachines::rail)
            .carriedBy("seat and backrest hold the trunk; the feet press a sled on a rail")
            .says("The bend of the knee is set; the ankles lie on a line through the hips along the rail.")
            .assumes(
                    "held still or moved up slowly: friction adds to what the feet bear; the sled carries no other force")
            .path(Knobs.KNEE_FLEXION, deg(100), deg(10))
            .drives(Joint.KNEE, Joint.HIP)
            .trains("quadriceps, gluteus maximus")
            .cautions(Cautions.KNEE, MACHINE);

    static final Movement SEATED_LEG_CURL =
            curl(new Movement("Seated leg curl").of(Family.LEG).seated(), 90);

    static final Movement LYING_LEG_CURL = curl(
                    new Movement("Lying leg curl").of(Family.LEG).lyingOnTheFront(), 60)
            .bend(Joint.SHOULDER, deg(150));

    static final Movement STANDING_CALF_RAISE = new Movement("Standing calf raise")
            .of(Family.LEG)
            .standing()
            .knob(
                    Knobs.PRESSURE,
                    percent(74),
                    "the ball of the foot (ANSUR II 2012, ball of foot length over foot length)")
            .knob(Knobs.HEEL_HEIGHT, cm(4), "half way up (from memory)")
            .knob(Knobs.BAR, kg(60), "shoulder pads of a machine, or a bar (from memory)")
            .barbellOnShoulders(cm(4), cm(0))
            .knob(Knobs.BAR, kg(60), "shoulder pads of a machine, or a bar (from memory)")
            .then(arms -> Holds.forearmsToTheBar(arms, deg(0)))
            .path(Knobs.HEEL_HEIGHT, cm(0), cm(8))
            .drives(Joint.ANKLE)
            .trains("gastrocnemius and soleus");

    static final Movement SEATED_CALF_RAISE = new Movement("Seated calf raise")
            .of(Family.LEG)
            .seated()
            .change(plan -> plan.held = Member.TRUNK.bit())
            .bend(Joint.ANKLE, SetupKnobs.ANKLE_FLEXION.startingAt(deg(-10), "a little above level (from memory)"))
            .knob(Knobs.BALL_OF_FOOT)
            .knob(SetupKnobs.PLATES, kg(40), "a middling load (from memory)")
            .add(new Pull(
                    "knee pad",
                    Spot.at(Member.THIGH, 0.36),
                    new Sizes.Weight(SetupKnobs.PLATES, 1, null),
                    new Pull.Fixed(3 * RIGHT_ANGLE)))
            .contact(new Contact(
                    "block",
                    Spot.onSole(Member.FOOT, Knobs.BALL_OF_FOOT),
                    new Pull.Fixed(RIGHT_ANGLE),
                    new Pivot.At(Joint.HIP),
                    Parting.LEG,
                    SetupKnobs.FLOOR_FORCE,
                    Knobs.FRICTION,
                    "0 by default, a foot that presses straight down; forward positive."))
            .show(LegMachines::block)
            .carriedBy("seat and backrest hold the trunk; the balls of the feet stand on a block")
            .assumes("the muscles of the hip are at rest: moments about the hip give what the block carries")
            .says("The bend of the ankle is set; thigh level, shank upright.")
            .path(SetupKnobs.ANKLE_FLEXION, deg(15), deg(-35))
            .drives(Joint.ANKLE)
            .trains("soleus, more than gastrocnemius, which the bent knee shortens")
            .cautions(MACHINE);

    static final Movement CABLE_HIP_EXTENSION = new Movement("Cable hip extension")
            .of(Family.LEG)
            .change(plan -> {
                plan.parting = Parting.LEGS;
                Bases.all(plan, deg(15), deg(0), deg(0), deg(0));
                plan.held = Member.OTHER_FOOT.bit() | Member.HAND.bit();
                plan.anchor = Anchor.HIP;
                plan.anchorY = LegMachines::hipOverFloor;
                plan.anchorWords = "over the standing leg, from which x counts";
            })
            .bend(Joint.HIP, SetupKnobs.HIP_FLEXION.startingAt(deg(15), "the leg in line with the vertical"))
            .bend(Joint.KNEE, deg(10))
            .otherLean(Segment.THIGH, deg(0))
            .otherLean(Segment.SHANK, deg(0))
            .otherLean(Segment.FOOT, deg(0))
            .lean(Segment.UPPER_ARM, deg(60))
            .bend(Joint.ELBOW, deg(20))
            .cableOn(Segment.SHANK, cm(36), cm(90), cm(15))
            .knob(Knobs.STACK, kg(10), "a light stack (from memory)")
            .show(work -> Bases.floor(work, 0))
            .carriedBy("the other foot on the floor, the hands on a frame")
            .assumes("hands and standing foot share what balance asks for; only the leg that swings is computed")
            .path(SetupKnobs.HIP_FLEXION, deg(45), deg(0))
            .drives(Joint.HIP)
            .trains("gluteus maximus, hamstrings of the leg that swings")
            .cautions(CUFF);

    static final Movement HIP_ABDUCTION = abduction("Standing hip abduction");

    static final Movement CABLE_HIP_ABDUCTION = abduction("Cable hip abduction")
            .then(movement -> Holds.oneCable(movement, "cable", Spot.at(Member.SHANK, 0.36), cm(-100), cm(15), 1))
            .knob(Knobs.STACK, kg(5), "a light stack (from memory)")
            .cautions(CUFF);

    static final Movement SINGLE_LEG_STANCE = oneLeg("Single-leg stance")
            .trains("gluteus medius and minimus of the standing leg")
            .drives(Joint.HIP)
            .lean(Segment.TRUNK, SetupKnobs.SIDE_LEAN)
            .path(SetupKnobs.SIDE_LEAN, deg(-10), deg(20));

    private LegMachines() {}

    /** Standing on the left leg, seen from the front; the leg leans so that all is balanced over the foot. */
    static Movement oneLeg(String name) {
        return Bases.sideways(new Movement(name).of(Family.LEG))
                .change(plan -> {
                    Bases.all(plan, deg(0), deg(0), deg(0), deg(0));
                    plan.onFeet = true;
                    plan.anchor = Anchor.HEEL;
                    plan.held = Member.FOOT.bit();
                    plan.leans.put(Member.SHANK, LeanRule.searched(0, "found by balance, see the check"));
                    plan.leans.put(Member.THIGH, LeanRule.searched(0, "found by balance, in line with the shank"));
                    plan.leans.put(
                            Member.OTHER_THIGH,
                            LeanRule.worked(
                                    LegMachines::freeLeg,
                                    "held to its side, clear of the standing leg and of the floor (from memory)"));
                    plan.leans.put(Member.OTHER_SHANK, LeanRule.from(Member.OTHER_THIGH, 1, null, 0, 0, "in line"));
                    plan.search = new Search(
                            -RIGHT_ANGLE / 2,
                            RIGHT_ANGLE / 2,
                            1,
                            new Search.Balanced(new Pivot.Pressure(), "foot"),
                            "no lean of the standing leg between -45° and 45° balances this; set the trunk's lean or the"
                                    + " loads otherwise");
                })
                .show(work -> Bases.floor(work, 0))
                .carriedBy("one foot on the floor")
                .says("The standing leg leans so that everything is balanced over the middle of its foot.");
    }

    private static Movement abduction(String name) {
        return Bases.sideways(new Movement(name).of(Family.LEG))
                .change(plan -> {
                    Bases.all(plan, deg(0), deg(0), deg(0), deg(0));
                    plan.held = Member.OTHER_FOOT.bit() | Member.OTHER_HAND.bit();
                    plan.anchor = Anchor.HIP;
                    plan.anchorY = LegMachines::hipOverFloor;
                    plan.anchorWords = "from which places count";
                })
                .bend(Joint.HIP, SetupKnobs.HIP_ABDUCTION)
                .rule(Member.SHANK, LeanRule.from(Member.THIGH, 1, null, 0, 0, "in line with the thigh"))
                .rule(Member.FOOT, LeanRule.from(Member.SHANK, 1, null, 0, 0, "square to the shank"))
                .otherLean(Segment.THIGH, deg(0))
                .otherLean(Segment.SHANK, deg(0))
                .otherLean(Segment.FOOT, deg(0))
                .show(work -> Bases.floor(work, 0))
                .carriedBy("the other foot on the floor, a hand on a frame")
                .assumes("hand and standing foot share what balance asks for; only the leg that is spread is computed")
                .path(SetupKnobs.HIP_ABDUCTION, deg(0), deg(40))
                .drives(Joint.HIP)
                .trains("gluteus medius and minimus of the leg that is spread");
    }

    /** A pelvis that drops on the side of the free leg asks for a leg held farther out. */
    private static double freeLeg(Work work) {
        return FREE_LEG + Math.max(0, -work.layout().lean(Member.TRUNK));
    }

    private static double hipOverFloor(Work work) {
        Skeleton body = work.layout().body();
        return body.length(Segment.THIGH) + body.length(Segment.SHANK) + body.ankleAcross();
    }

    private static Movement curl(Movement base, int flexion) {
        return base.knob(Knobs.KNEE_FLEXION, deg(flexion), "the middle of the range")
                .bend(Joint.KNEE, Knobs.KNEE_FLEXION.startingAt(deg(flexion), "the middle of the range"))
                .change(plan -> plan.held = Member.TRUNK.bit() | Member.THIGH.bit())
                .rule(Member.FOOT, LeanRule.from(Member.SHANK, 1, null, 0, 0, "square to the shank"))
                .then(movement -> Holds.pad(
                        movement.knob(Knobs.PAD, cm(34), "just above the ankle (from memory): measure it"),
                        Spot.at(Member.SHANK, Knobs.PAD),
                        1))
                .assumes(
                        "the machine's axis stands at the knee; the cable pulls at one arm all the way, without friction")
                .path(Knobs.KNEE_FLEXION, deg(10), deg(110))
                .drives(Joint.KNEE)
                .trains("hamstrings; gastrocnemius")
                .cautions(Cautions.KNEE, MACHINE);
    }

    private static Optional<String> holdsItself(Work work) {
        double rail = work.si(SetupKnobs.RAIL);
        double friction = work.si(SetupKnobs.RAIL_FRICTION);
        boolean holds = Trigonometry.sine(rail) <= friction * Trigonometry.cosine(rail);
        return holds && friction > 0
                ? Optional.of("Friction holds the sled: at a rail of "
                        + leverwright.mechanics.measure.MeasureText.print(
                                leverwright.mechanics.measure.Angle.of(rail),
                                leverwright.mechanics.measure.Unit.DEGREE,
                                3)
                        + " it stays by itself, and the force shown is what pushes it up.")
                : Optional.empty();
    }

    /** The top of the block under the balls of the feet. */
    private static void block(Work work) {
        Spot ball = Spot.onSole(Member.FOOT, Knobs.BALL_OF_FOOT);
        double x = ball.x(work);
        double y = ball.y(work);
        work.layout().show(Bases.line(x - 0.04, x + 0.2, y));
    }

    /** The plate under the soles, and the rail behind it. */
    private static void rail(Work work) {
        Layout layout = work.layout();
        Spot heel = new Spot(Member.FOOT, Spot.From.HEEL, null, -0.2, null, 1, 0);
        Spot toe = new Spot(Member.FOOT, Spot.From.HEEL, null, 1.3, null, 1, 0);
        layout.show(new Sketch.GroundLine(
                new Sketch.Point(heel.x(work), heel.y(work)), new Sketch.Point(toe.x(work), toe.y(work))));
        double hipX = layout.startX(Member.TRUNK);
        double hipY = layout.startY(Member.TRUNK);
        double lean = layout.lean(Member.TRUNK);
        double sine = Trigonometry.sine(lean);
        double cosine = Trigonometry.cosine(lean);
        layout.show(new Sketch.GroundLine(
                new Sketch.Point(hipX - 0.1 * cosine, hipY + 0.1 * sine),
                new Sketch.Point(hipX + 0.6 * sine - 0.1 * cosine, hipY + 0.6 * cosine + 0.1 * sine)));
    }
}
