package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;

/** Exercises that bend the trunk or hold it. Postures are from memory where no source is named. */
final class TrunkExercises {
    private static final double RIGHT_ANGLE = deg(90).si();
    private static final double LYING = 0.1;
    /** Where the ankles stand ahead of the hips of somebody lying, parts of the thigh's length, from memory. */
    private static final double HEELS = 1.1;

    private static final Spot ON_THE_CHEST = Spot.at(Member.TRUNK, 0.35, 0.12);

    static final Movement CRUNCH = new Movement("Crunch")
            .of(Family.TRUNK)
            .change(plan -> {
                Bases.all(plan, deg(-90), deg(-45), deg(45), deg(0));
                plan.anchor = Anchor.HIP;
                plan.anchorY = work -> LYING;
                plan.anchorWords = "on the floor, from which x counts";
                plan.held = Member.TRUNK.bit() | Member.FOOT.bit();
                plan.trunkHold = Layout.TrunkHold.PELVIS;
            })
            .reach(new Reach(
                    Member.THIGH,
                    new Targets.Point(
                            "ankle_set",
                            work -> HEELS * work.layout().body().length(Segment.THIGH),
                            work -> work.layout().body().ankleAcross(),
                            "the feet stand flat, so far ahead of the hips as bent knees leave them (from memory)"),
                    1))
            .knob(SetupKnobs.TRUNK_LIFT)
            .rule(Member.TRUNK, LeanRule.knob(SetupKnobs.TRUNK_LIFT, 1, -RIGHT_ANGLE, "lift of the trunk less 90°"))
            .moving(SetupKnobs.TRUNK_LIFT, java.util.Optional.of(Drawing.Moved.SHOULDER))
            .reach(new Reach(Member.UPPER_ARM, new Targets.On("plate", ON_THE_CHEST), -1))
            .knob(SetupKnobs.PLATES, kg(0), "nothing held; the hands lie on the chest")
            .add(new Hung("plate", ON_THE_CHEST, SetupKnobs.PLATES, 1))
            .show(work -> work.layout().show(Bases.line(-0.9, 0.8, 0)))
            .assumes(
                    "the trunk is straight from hip to head and turns at the hip; a curled trunk has shorter arms: an upper"
                            + " bound for the low back's flexion moment")
            .carriedBy("pelvis and feet on the floor")
            .path(SetupKnobs.TRUNK_LIFT, deg(5), deg(45))
            .drives(Joint.LOW_BACK)
            .trains("rectus abdominis")
            .cautions(Cautions.LOW_BACK);

    static final Movement SIDE_BEND = new Movement("Side bend")
            .of(Family.TRUNK)
            .in(Plane.FRONTAL)
            .standing()
            .lean(Segment.TRUNK, SetupKnobs.SIDE_LEAN.startingAt(deg(12), "towards the dumbbell (from memory)"))
            .change(Bases::plumbArms)
            .then(Holds::dumbbellInOneHand)
            .knob(Knobs.DUMBBELL, kg(16), "a middling dumbbell (from memory)")
            .assumes("the pelvis tilts with the trunk, so that the sole on the higher side is drawn above the floor")
            .path(SetupKnobs.SIDE_LEAN, deg(14), deg(-14))
            .drives(Joint.LOW_BACK)
            .trains("quadratus lumborum and obliques of the side without the dumbbell")
            .cautions(Cautions.LOW_BACK);

    static final Movement LOADED_CARRY = LegMachines.oneLeg("Loaded carry")
            .of(Family.TRUNK)
            .lean(Segment.TRUNK, SetupKnobs.SIDE_LEAN)
            .change(Bases::plumbArms)
            .knob(Knobs.DUMBBELL, kg(24), "a heavy dumbbell in one hand (from memory)")
            .add(new Hung("dumbbell", Spot.grip(Member.OTHER_HAND), Knobs.DUMBBELL, 1))
            .assumes(
                    "the moment of walking when one leg carries all, held still; the load is on the side of the other leg")
            .path(SetupKnobs.SIDE_LEAN, deg(-10), deg(20))
            .drives(Joint.HIP, Joint.LOW_BACK)
            .trains("hip abductors of the standing leg; quadratus lumborum and obliques against the load; grip")
            .cautions(Cautions.LOW_BACK);

    private TrunkExercises() {}
}
