package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.working.Sketch;

/** Rows, pulldowns and pull-ups. Postures are from memory where no source is named. */
final class Pulls {
    private static final double RIGHT_ANGLE = deg(90).si();
    private static final double BAR = 2.3;
    private static final String CABLE = "Strength and anchor of the cable are not checked.";

    static final Movement BENT_OVER_ROW = new Movement("Bent-over row")
            .of(Family.PULL)
            .change(plan -> plan.palmsBack = true)
            .standing(Knobs.TORSO_LEAN, Knobs.KNEE_FLEXION)
            .knob(Knobs.TORSO_LEAN, deg(60), "from memory")
            .knob(Knobs.KNEE_FLEXION, deg(25), "soft knees (from memory)")
            .lean(Segment.UPPER_ARM, Knobs.UPPER_ARM_LEAN.startingAt(deg(-30), "half way (from memory)"))
            .lean(Segment.FOREARM, deg(5))
            .barbellInHands()
            .knob(Knobs.BAR, kg(30), "a middling load (from memory)")
            .assumes("the forearms hang nearly plumb")
            .path(Knobs.UPPER_ARM_LEAN, deg(0), deg(-60))
            .drives(Joint.SHOULDER, Joint.ELBOW)
            .trains("latissimus dorsi, trapezius, elbow flexors; the back muscles hold the trunk")
            .cautions(Cautions.LOW_BACK, Cautions.SHOULDER);

    static final Movement CABLE_ROW = new Movement("Seated cable row")
            .of(Family.PULL)
            .seated()
            .change(plan -> plan.trunkHold = Layout.TrunkHold.PELVIS)
            .knob(SetupKnobs.SEAT_HEIGHT, cm(30), "a low bench (from memory)")
            .lean(Segment.TRUNK, Knobs.TORSO_LEAN.startingAt(deg(0), "upright"))
            .lean(Segment.THIGH, deg(-85))
            .bend(Joint.KNEE, deg(20))
            .rule(Member.FOOT, LeanRule.fixed(deg(-60)))
            .lean(Segment.UPPER_ARM, Knobs.UPPER_ARM_LEAN.startingAt(deg(10), "half way (from memory)"))
            .bend(Joint.ELBOW, Knobs.ELBOW_FLEXION.startingAt(deg(70), "half way (from memory)"))
            .cableInHands(cm(150), cm(45))
            .knob(Knobs.STACK, kg(30), "a middling stack (from memory)")
            .carriedBy("no backrest: the trunk holds itself")
            .path(Knobs.UPPER_ARM_LEAN, deg(65), deg(-30))
            .with(Knobs.ELBOW_FLEXION, deg(10), deg(110))
            .drives(Joint.SHOULDER, Joint.ELBOW)
            .trains("latissimus dorsi, trapezius, elbow flexors")
            .cautions(Cautions.LOW_BACK, Cautions.SHOULDER, CABLE);

    static final Movement PULLDOWN = seatedSideways("Pulldown")
            .knob(SetupKnobs.GRIP_WIDTH)
            .knob(SetupKnobs.BAR_HEIGHT, cm(25), "half way down (from memory)")
            .reach(new Reach(Member.UPPER_ARM, new Targets.OnBar(), 1))
            .knob(Knobs.STACK, kg(30), "a middling stack (from memory)")
            .add(new Pull("bar", Spot.grip(Member.HAND), new Sizes.Stack(Knobs.STACK, 2), new Pull.Fixed(RIGHT_ANGLE)))
            .add(new Pull(
                    "other bar",
                    Spot.grip(Member.OTHER_HAND),
                    new Sizes.Stack(Knobs.STACK, 2),
                    new Pull.Fixed(RIGHT_ANGLE)))
            .then(Presses::alongTheBar)
            .moving(SetupKnobs.BAR_HEIGHT, java.util.Optional.of(Drawing.Moved.BAR))
            .says("Grip width and the bar's height are set; the arms bend so that the hands are on the bar.")
            .path(SetupKnobs.BAR_HEIGHT, cm(50), cm(8))
            .drives(Joint.SHOULDER, Joint.ELBOW)
            .trains("latissimus dorsi, teres major, elbow flexors")
            .cautions(Cautions.SHOULDER, CABLE);

    static final Movement PULL_UP = new Movement("Pull-up")
            .of(Family.PULL)
            .change(plan -> {
                Bases.all(plan, deg(0), deg(0), deg(0), deg(30));
                Bases.carriedByHands(plan, BAR, "on the bar, from which x counts", deg(60), deg(200), "under");
            })
            .lean(Segment.TRUNK, Knobs.TORSO_LEAN.startingAt(deg(-5), "leaning back a little (from memory)"))
            .rule(Member.THIGH, LeanRule.from(Member.TRUNK, 1, null, 0, 0, "in line with the trunk"))
            .bend(Joint.KNEE, deg(20))
            .rule(Member.UPPER_ARM, LeanRule.searched(0, "found by balance under the hands, see the check"))
            .bend(Joint.ELBOW, Knobs.ELBOW_FLEXION)
            .moving(Knobs.ELBOW_FLEXION, java.util.Optional.of(Drawing.Moved.SHOULDER))
            .then(Bases::vest)
            .show(work -> work.layout().show(new Sketch.Disc("bar", new Sketch.Point(0, BAR), 0.02)))
            .carriedBy("both hands on a bar")
            .says("Elbow flexion and torso lean are set; the upper arms lean so that the weight hangs under the hands.")
            .path(Knobs.ELBOW_FLEXION, deg(10), deg(120))
            .drives(Joint.ELBOW, Joint.SHOULDER)
            .trains("latissimus dorsi, teres major, elbow flexors")
            .cautions(Cautions.SHOULDER);

    static final Movement STRAIGHT_ARM_PULLDOWN = new Movement("Straight-arm pulldown")
            .of(Family.PULL)
            .standing()
            .knob(Knobs.TORSO_LEAN, deg(20), "a little forward (from memory)")
            .bend(Joint.SHOULDER, SetupKnobs.SHOULDER_FLEXION.startingAt(deg(90), "half way (from memory)"))
            .bend(Joint.ELBOW, deg(10))
            .cableInHands(cm(80), cm(210))
            .knob(Knobs.STACK, kg(8), "a light stack (from memory)")
            .path(SetupKnobs.SHOULDER_FLEXION, deg(130), deg(20))
            .drives(Joint.SHOULDER)
            .trains("latissimus dorsi, teres major, long head of the triceps")
            .cautions(Cautions.SHOULDER, CABLE);

    private Pulls() {}

    /** On a seat, seen from the front: hips and thighs held, the trunk free above them. */
    static Movement seatedSideways(String name) {
        return Bases.sideways(new Movement(name).of(Family.PULL))
                .knob(SetupKnobs.SEAT_HEIGHT)
                .change(plan -> {
                    Bases.all(plan, deg(0), deg(0), deg(0), deg(0));
                    plan.anchor = Anchor.HIP;
                    plan.anchorY = work -> work.si(SetupKnobs.SEAT_HEIGHT);
                    plan.anchorWords = "on the seat, from which x counts";
                    plan.held = Member.TRUNK.bit() | Parting.LEG | Parting.OTHER_LEG;
                    plan.trunkHold = Layout.TrunkHold.PELVIS;
                })
                .show(work -> Bases.bench(work, -0.25, 0.25))
                .assumes("the legs are drawn below the hips; the seat carries them")
                .carriedBy("a seat holds hips and thighs");
    }
}
