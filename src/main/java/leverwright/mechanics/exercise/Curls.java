package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.working.Sketch;

/** Curls and extensions of the arm. Postures are from memory where no source is named. */
final class Curls {
    private static final String CABLE = "Strength and anchor of the cable are not checked.";
    private static final String FLEXORS = "elbow flexors: biceps, brachialis, brachioradialis";

    static final Movement INCLINE_CURL = curl(
                    new Movement("Incline curl").of(Family.ARM).seated(), 70)
            .lean(Segment.TRUNK, deg(-45))
            .lean(Segment.UPPER_ARM, Knobs.UPPER_ARM_LEAN.startingAt(deg(-15), "behind the plumb line (from memory)"))
            .dumbbellsInHands()
            .show(Curls::backrest)
            .trains("biceps, its long head stretched over the shoulder; brachialis");

    static final Movement PREACHER_CURL = curl(
                    new Movement("Preacher curl").of(Family.ARM).seated(), 40)
            .lean(Segment.TRUNK, deg(20))
            .lean(
                    Segment.UPPER_ARM,
                    Knobs.UPPER_ARM_LEAN.startingAt(deg(45), "a pad of 45° (common practice, no source)"))
            .change(plan -> plan.held |= Member.UPPER_ARM.bit())
            .barbellInHands()
            .show(Curls::pad)
            .carriedBy("a pad holds the upper arms")
            .trains(FLEXORS);

    static final Movement CABLE_CURL = curl(
                    new Movement("Cable curl").of(Family.ARM).standing(), 60)
            .cableInHands(cm(50), cm(20))
            .knob(Knobs.STACK, kg(15), "a middling stack (from memory)")
            .trains(FLEXORS)
            .cautions(CABLE);

    static final Movement PUSHDOWN = curl(
                    new Movement("Triceps pushdown").of(Family.ARM).standing(), 90)
            .knob(Knobs.TORSO_LEAN, deg(10), "a little forward (from memory)")
            .cableInHands(cm(40), cm(210))
            .knob(Knobs.STACK, kg(15), "a middling stack (from memory)")
            .path(Knobs.ELBOW_FLEXION, deg(110), deg(5))
            .trains("triceps")
            .cautions(CABLE);

    static final Movement OVERHEAD_EXTENSION = curl(
                    new Movement("Overhead triceps extension").of(Family.ARM).standing(), 90)
            .bend(
                    Joint.SHOULDER,
                    SetupKnobs.SHOULDER_FLEXION.startingAt(deg(165), "upper arms beside the head (from memory)"))
            .knob(Knobs.DUMBBELL, kg(10), "one dumbbell in both hands (from memory)")
            .add(new Hung("dumbbell", Spot.grip(Member.HAND), Knobs.DUMBBELL, 1))
            .assumes("one dumbbell, held by both hands")
            .path(Knobs.ELBOW_FLEXION, deg(120), deg(5))
            .trains("triceps, its long head stretched over the shoulder");

    static final Movement LYING_EXTENSION = curl(
                    new Movement("Lying triceps extension").of(Family.ARM).lyingOnTheBack(), 80)
            .lean(Segment.UPPER_ARM, deg(180))
            .barbellInHands()
            .path(Knobs.ELBOW_FLEXION, deg(110), deg(5))
            .trains("triceps");

    static final Movement WRIST_CURL = new Movement("Wrist curl")
            .of(Family.ARM)
            .seated()
            .lean(Segment.TRUNK, deg(48))
            .lean(Segment.UPPER_ARM, deg(-15))
            .lean(Segment.FOREARM, deg(88))
            .bend(Joint.WRIST, SetupKnobs.WRIST_FLEXION.startingAt(deg(-40), "near the start (from memory)"))
            .change(plan -> plan.held |= Member.FOREARM.bit())
            .dumbbellsInHands()
            .carriedBy("the thighs hold the forearms, palms up")
            .path(SetupKnobs.WRIST_FLEXION, deg(-60), deg(60))
            .drives(Joint.WRIST)
            .trains("wrist flexors");

    private Curls() {}

    private static Movement curl(Movement base, int flexion) {
        return base.bend(Joint.ELBOW, Knobs.ELBOW_FLEXION.startingAt(deg(flexion), "where it is hard (from memory)"))
                .path(Knobs.ELBOW_FLEXION, deg(5), deg(130))
                .drives(Joint.ELBOW)
                .cautions(Cautions.SHOULDER);
    }

    private static void backrest(Work work) {
        Layout layout = work.layout();
        double length = 0.6;
        double behind = 0.12;
        double x = layout.startX(Member.TRUNK) - behind * layout.cosine(Member.TRUNK);
        double y = layout.startY(Member.TRUNK) + behind * layout.sine(Member.TRUNK);
        layout.show(new Sketch.GroundLine(
                new Sketch.Point(x, y),
                new Sketch.Point(x + length * layout.sine(Member.TRUNK), y + length * layout.cosine(Member.TRUNK))));
    }

    /** The pad under the upper arms. */
    private static void pad(Work work) {
        Spot near = Spot.at(Member.UPPER_ARM, 0.05, -0.05);
        Spot far = Spot.at(Member.UPPER_ARM, 0.32, -0.05);
        work.layout()
                .show(new Sketch.GroundLine(
                        new Sketch.Point(near.x(work), near.y(work)), new Sketch.Point(far.x(work), far.y(work))));
    }
}
