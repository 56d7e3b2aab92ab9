package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;

/** Raises of the arm. Postures are from memory where no source is named. */
final class Raises {
    static final Movement LATERAL_RAISE = standing("Lateral raise")
            .bend(Joint.SHOULDER, SetupKnobs.SHOULDER_ABDUCTION)
            .dumbbellsInHands()
            .knob(Knobs.DUMBBELL, kg(5), "a light dumbbell (from memory)")
            .path(SetupKnobs.SHOULDER_ABDUCTION, deg(10), deg(90))
            .trains("deltoid, its middle part; supraspinatus");

    static final Movement LYING_LATERAL_RAISE = Bases.sideways(new Movement("Side-lying lateral raise"))
            .of(Family.RAISE)
            .knob(SetupKnobs.SEAT_HEIGHT, cm(55), "a bench (from memory)")
            .change(plan -> {
                Bases.all(plan, deg(-90), deg(-90), deg(-90), deg(-90));
                plan.leans.put(Member.OTHER_THIGH, LeanRule.fixed(deg(-90)));
                plan.leans.put(Member.OTHER_SHANK, LeanRule.fixed(deg(-90)));
                plan.leans.put(Member.OTHER_FOOT, LeanRule.fixed(deg(-90)));
                plan.anchor = Anchor.HIP;
                plan.anchorY = work -> work.si(SetupKnobs.SEAT_HEIGHT);
                plan.anchorWords = "on the bench, from which x counts";
                plan.held = Member.TRUNK.bit() | Parting.LEG | Parting.OTHER_LEG | Parting.OTHER_ARM;
            })
            .bend(
                    Joint.SHOULDER,
                    SetupKnobs.SHOULDER_ABDUCTION.startingAt(deg(20), "soon after the start, where it is hardest"))
            .otherLean(Segment.UPPER_ARM, deg(90))
            .then(Holds::dumbbellInOneHand)
            .knob(Knobs.DUMBBELL, kg(5), "a light dumbbell (from memory)")
            .show(work -> work.layout().show(Bases.line(-0.7, 0.7, work.si(SetupKnobs.SEAT_HEIGHT) - 0.22)))
            .carriedBy("a bench holds the lower side of the body")
            .path(SetupKnobs.SHOULDER_ABDUCTION, deg(0), deg(80))
            .drives(Joint.SHOULDER)
            .trains("deltoid, its middle part; supraspinatus, most where the arm lies along the body")
            .cautions(Cautions.SHOULDER);

    static final Movement CABLE_LATERAL_RAISE = standing("Cable lateral raise")
            .bend(Joint.SHOULDER, SetupKnobs.SHOULDER_ABDUCTION.startingAt(deg(45), "half way"))
            .then(movement -> Holds.oneCable(movement, "cable", Spot.grip(Member.HAND), cm(-50), cm(20), 1))
            .knob(Knobs.STACK, kg(6), "a light stack (from memory)")
            .otherLean(Segment.UPPER_ARM, deg(-5))
            .path(SetupKnobs.SHOULDER_ABDUCTION, deg(10), deg(90))
            .trains("deltoid, its middle part; supraspinatus")
            .cautions("Strength and anchor of the cable are not checked.");

    static final Movement FRONT_RAISE = new Movement("Front raise")
            .of(Family.RAISE)
            .change(plan -> plan.palmsBack = true)
            .standing()
            .bend(
                    Joint.SHOULDER,
                    SetupKnobs.SHOULDER_FLEXION.startingAt(deg(90), "level arms, where a weight's arm is longest"))
            .dumbbellsInHands()
            .knob(Knobs.DUMBBELL, kg(5), "a light dumbbell (from memory)")
            .path(SetupKnobs.SHOULDER_FLEXION, deg(10), deg(90))
            .drives(Joint.SHOULDER)
            .trains("anterior deltoid; pectoralis major, its upper part")
            .cautions(Cautions.SHOULDER, Cautions.LOW_BACK);

    static final Movement UPRIGHT_ROW = standing("Upright row")
            .knob(SetupKnobs.GRIP_WIDTH, cm(40), "narrower than the shoulders (from memory)")
            .knob(SetupKnobs.BAR_HEIGHT, cm(-12), "near the top (from memory)")
            .reach(new Reach(Member.UPPER_ARM, new Targets.OnBar(), -1))
            .barbellInHands()
            .then(Presses::alongTheBar)
            .moving(SetupKnobs.BAR_HEIGHT, java.util.Optional.of(Drawing.Moved.BAR))
            .says("Grip width and the bar's height are set; the arms bend outwards so that the hands are on the bar.")
            .path(SetupKnobs.BAR_HEIGHT, cm(-55), cm(-8))
            .trains("deltoid, its middle part; trapezius, elbow flexors");

    private Raises() {}

    private static Movement standing(String name) {
        return new Movement(name)
                .of(Family.RAISE)
                .in(Plane.FRONTAL)
                .standing()
                .drives(Joint.SHOULDER)
                .cautions(Cautions.SHOULDER);
    }
}
