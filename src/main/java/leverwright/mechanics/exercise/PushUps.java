package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;

import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Sketch;

/** Push-ups with hands or feet raised or on the knees, and the plank. Postures are from memory where no source is named. */
final class PushUps {
    private static final double RIGHT_ANGLE = deg(90).si();
    private static final String FOUND = "found: the straight body turns, see the check";
    /** Height of the knee joint over the floor when it rests there, m, from memory. */
    private static final double KNEE = 0.05;

    static final Movement HANDS_RAISED =
            pushUp("Push-up, hands raised", 40, 0).trains("pectoralis major, anterior deltoid, triceps");

    static final Movement FEET_RAISED =
            pushUp("Push-up, feet raised", 0, 40).trains("pectoralis major, anterior deltoid, triceps");

    static final Movement ON_KNEES = onKnees();

    static final Movement PLANK = onBalls("Plank")
            .of(Family.TRUNK)
            .rule(Member.UPPER_ARM, LeanRule.fixed(deg(0)))
            .lean(Segment.FOREARM, deg(90))
            .knob(SetupKnobs.ELBOW_HEIGHT)
            .knob(SetupKnobs.FEET_HEIGHT)
            .change(plan -> plan.search = new Search(
                    deg(30).si(),
                    deg(110).si(),
                    8,
                    new Search.Height(Joint.ELBOW, SetupKnobs.ELBOW_HEIGHT),
                    "no lean of the straight body brings the elbows to their height; set them or the feet otherwise"))
            .contact(new Contact(
                    "forearms",
                    Spot.at(Member.FOREARM, 0.05),
                    new Pull.Fixed(RIGHT_ANGLE),
                    new Pivot.On(Spot.onSole(Member.FOOT, Knobs.BALL_OF_FOOT), "ball_of_foot"),
                    -1,
                    Knobs.HAND_FORCE,
                    Knobs.FRICTION,
                    "0 by default, forearms that press straight down; forward positive."))
            .carriedBy("forearms and balls of the feet on the floor")
            .says(
                    "The straight body leans so that the elbows are at their height, under the shoulders; moments about the balls"
                            + " of the feet give what the forearms carry.")
            .drives(Joint.LOW_BACK, Joint.HIP)
            .trains("abdominal muscles, hip flexors, serratus anterior")
            .cautions(Cautions.LOW_BACK, Cautions.SHOULDER);

    private PushUps() {}

    /** A straight body that turns about the balls of the feet. */
    private static Movement onBalls(String name) {
        return new Movement(name)
                .change(plan -> {
                    Bases.all(plan, deg(0), deg(0), deg(0), deg(0));
                    plan.leans.put(Member.TRUNK, LeanRule.searched(0, FOUND));
                    for (Member member : List.of(Member.THIGH, Member.SHANK, Member.FOOT)) {
                        plan.leans.put(member, LeanRule.from(Member.TRUNK, 1, null, 0, 0, FOUND));
                    }
                    plan.palmsBack = true;
                    plan.anchor = Anchor.HEEL;
                    plan.anchorX = work -> -ball(work) * work.layout().cosine(Member.FOOT);
                    plan.anchorY = work -> work.si(SetupKnobs.FEET_HEIGHT)
                            + ball(work) * work.layout().sine(Member.FOOT);
                    plan.held = Member.FOOT.bit();
                })
                .knob(Knobs.BALL_OF_FOOT)
                .show(PushUps::floor);
    }

    private static double ball(Work work) {
        return work.si(Knobs.BALL_OF_FOOT) * work.layout().body().length(Segment.FOOT);
    }

    private static void floor(Work work) {
        double feet = work.si(SetupKnobs.FEET_HEIGHT);
        work.layout().show(new Sketch.GroundLine(new Sketch.Point(-0.3, feet), new Sketch.Point(0.2, feet)));
        double hands = work.settings().has(SetupKnobs.HANDS_HEIGHT) ? work.si(SetupKnobs.HANDS_HEIGHT) : 0;
        double x = work.layout().jointX(Joint.WRIST);
        work.layout().show(new Sketch.GroundLine(new Sketch.Point(x - 0.5, hands), new Sketch.Point(x + 0.3, hands)));
    }

    private static Movement pushUp(String name, int hands, int feet) {
        return bending(
                        onBalls(name)
                                .knob(SetupKnobs.HANDS_HEIGHT, cm(hands), "by this exercise")
                                .knob(SetupKnobs.FEET_HEIGHT, cm(feet), "by this exercise"),
                        PushUps::fromBall)
                .then(movement ->
                        hands(movement, new Pivot.On(Spot.onSole(Member.FOOT, Knobs.BALL_OF_FOOT), "ball_of_foot")))
                .assumes(
                        "with hands and feet at different heights, the share of the hands depends on the horizontal force that"
                                + " balance leaves free")
                .carriedBy("hands and balls of the feet");
    }

    /** From the ball of the foot to the shoulder, along the straight body, m. */
    private static double fromBall(Work work) {
        Skeleton body = work.layout().body();
        return body.ankleAcross()
                + body.length(Segment.SHANK)
                + body.length(Segment.THIGH)
                + body.length(Segment.TRUNK);
    }

    private static Movement onKnees() {
        return bending(
                        new Movement("Push-up on the knees")
                                .change(plan -> {
                                    Bases.all(plan, deg(0), deg(0), deg(90), deg(165));
                                    plan.leans.put(Member.THIGH, LeanRule.from(Member.TRUNK, 1, null, 0, 0, FOUND));
                                    plan.palmsBack = true;
                                    plan.anchor = Anchor.KNEE;
                                    plan.anchorY = work -> work.si(SetupKnobs.FEET_HEIGHT) + KNEE;
                                    plan.anchorWords = "on the floor, from which x counts";
                                    plan.held = Member.SHANK.bit();
                                })
                                .knob(SetupKnobs.HANDS_HEIGHT)
                                .knob(SetupKnobs.FEET_HEIGHT)
                                .show(PushUps::floor),
                        work -> work.layout().body().length(Segment.THIGH)
                                + work.layout().body().length(Segment.TRUNK))
                .then(movement -> hands(movement, new Pivot.At(Joint.KNEE)))
                .carriedBy("hands and knees")
                .trains("pectoralis major, anterior deltoid, triceps, with less of the body's weight");
    }

    /** The hands stay where straight arms square to the body put them; the elbow's bend is set, and the body turns. */
    private static Movement bending(Movement base, Plan.Coordinate toShoulder) {
        return base.of(Family.PUSH)
                .knob(
                        Knobs.ELBOW_FLEXION,
                        deg(90),
                        "the low position as it is often judged (common practice, no source)")
                .knob(Knobs.HANDS_AHEAD, cm(0), "0: straight arms square to the body")
                .knob(Knobs.WRIST_HEIGHT)
                .rule(Member.HAND, LeanRule.fixed(deg(90)))
                .reach(new Reach(
                        Member.UPPER_ARM,
                        new Targets.Point(
                                "hands_set",
                                work -> handsX(work, toShoulder),
                                PushUps::wristY,
                                "where straight arms square to the body put the wrists, and what is set ahead of that"),
                        1,
                        true))
                .rule(Member.TRUNK, LeanRule.worked(work -> lean(work, toShoulder), FOUND))
                .change(plan -> plan.confirmations.add((hand, work) -> List.of(bent(hand, work))))
                .moving(Knobs.ELBOW_FLEXION, java.util.Optional.of(Drawing.Moved.SHOULDER))
                .assumes("hands flat, fingers forward; the body is straight")
                .says("The elbow's bend is set; the straight body turns until the hands, which stay in their place, are"
                        + " reached with it.")
                .path(Knobs.ELBOW_FLEXION, deg(0), deg(90))
                .drives(Joint.ELBOW, Joint.SHOULDER)
                .cautions(Cautions.SHOULDER, Cautions.LOW_BACK);
    }

    private static double wristY(Work work) {
        return work.si(SetupKnobs.HANDS_HEIGHT) + work.si(Knobs.WRIST_HEIGHT);
    }

    /**
     * Where the wrists stand: straight arms square to the body reach them. With the shoulder so far along the body and behind
     * its front from what it turns on, A·cos(lean) − B·sin(lean) = height, where B is the arm less what lies behind.
     */
    private static double handsX(Work work, Plan.Coordinate toShoulder) {
        Skeleton body = work.layout().body();
        boolean onBalls = work.settings().has(Knobs.BALL_OF_FOOT);
        double arm = body.length(Segment.UPPER_ARM) + body.length(Segment.FOREARM);
        double along = toShoulder.of(work);
        double ahead = arm + (onBalls ? body.ankleAlong() - ball(work) : 0);
        double height = wristY(work) - work.si(SetupKnobs.FEET_HEIGHT) - (onBalls ? 0 : KNEE);
        double size = Math.sqrt(along * along + ahead * ahead);
        if (Math.abs(height) >= size) {
            throw new ImpossibleSetting(
                    "the hands would be " + Measures.m(height) + " above the feet, but the straight body"
                            + " with its arms is " + Measures.m(size) + " long; set the hands lower");
        }
        double lean = Trigonometry.arcCosine(height / size) - Trigonometry.arcTangent(ahead, along);
        return along * Trigonometry.sine(lean) + ahead * Trigonometry.cosine(lean) + work.si(Knobs.HANDS_AHEAD);
    }

    private static Movement hands(Movement movement, Pivot pivot) {
        return movement.contact(
                new Contact(
                        "hands",
                        Spot.at(Member.HAND, 0.08),
                        new Pull.Fixed(RIGHT_ANGLE),
                        pivot,
                        -1,
                        Knobs.HAND_FORCE,
                        Knobs.FRICTION,
                        "0 by default, hands that press straight down, because no measurement says otherwise; forward positive."));
    }

    /**
     * The lean of the straight body. With C what it turns on, S the shoulder and W the wrist, CS and CW are known lengths and
     * the elbow's bend gives SW; the law of cosines gives the angle at C.
     */
    private static double lean(Work work, Plan.Coordinate toShoulder) {
        Skeleton body = work.layout().body();
        boolean onBalls = work.settings().has(Knobs.BALL_OF_FOOT);
        double along = toShoulder.of(work);
        double behind = onBalls ? body.ankleAlong() - ball(work) : 0;
        double x = handsX(work, toShoulder);
        double y = wristY(work) - work.si(SetupKnobs.FEET_HEIGHT) - (onBalls ? 0 : KNEE);
        double shoulder = Math.sqrt(along * along + behind * behind);
        double wrist = Math.sqrt(x * x + y * y);
        double upper = body.length(Segment.UPPER_ARM);
        double fore = body.length(Segment.FOREARM);
        double bend = Trigonometry.cosine(work.si(Knobs.ELBOW_FLEXION));
        double arm = upper * upper + fore * fore + 2 * upper * fore * bend;
        double cosine = (shoulder * shoulder + wrist * wrist - arm) / (2 * shoulder * wrist);
        if (!(Math.abs(cosine) <= 1)) {
            throw new ImpossibleSetting("no lean of the straight body gives an elbow bend of "
                    + Angle.of(work.si(Knobs.ELBOW_FLEXION))
                    + " with hands and feet at these heights; set another bend, or"
                    + " other heights");
        }
        double toWrist = Trigonometry.arcTangent(x, y);
        return toWrist - Trigonometry.arcCosine(cosine) - Trigonometry.arcTangent(behind, along);
    }

    /** The elbow bends by the angle that was set: a line that vanishes. */
    private static Expression.Symbol bent(Hand hand, Work work) {
        Angle set = Angle.of(work.si(Knobs.ELBOW_FLEXION));
        return hand.step(
                "φ_elbow_less_set",
                Flexions.in(hand, work.layout(), Joint.ELBOW)
                        .minus(hand.input("φ_set", set, "flexion of the elbow; set")),
                Angle.of(Flexions.of(work.layout(), Joint.ELBOW) - set.si()),
                "vanishes: this decided the lean of the body");
    }
}
