package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.ReadingStatus;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Working;

/** The lever view of a joint, and the tilt rule. */
final class Levers {
    private static final double RIGHT_ANGLE = Measures.deg(90).si();
    private static final String RULE = "tilt rule: lean over 90°; common practice, no source";

    private Levers() {}

    /** The moment with the segment at the joint set level; kept on the body until another is asked for. */
    private static double levelMoment(HeldPosture held, Joint joint) {
        Performance performance = held.performance();
        Exercise<?> level = performance
                .exercise()
                .levelled(joint)
                .orElseThrow(() -> new IllegalArgumentException("the tilt rule needs a segment at the " + joint.words()
                        + " whose lean is set, so that it can be set level; here it follows or is not a segment's"
                        + " lean. Ask for another joint, or set that lean"));
        return held.layout()
                .body()
                .remembered(
                        level,
                        joint,
                        () -> performance.of(level).posture().cut(joint).reported());
    }

    static double tiltRuleSi(HeldPosture held, Joint joint) {
        return levelMoment(held, joint) * Math.abs(held.layout().lean(Layout.above(joint))) / RIGHT_ANGLE;
    }

    static Answer<Moment> tiltRule(HeldPosture held, Joint joint) {
        Moment value = Moment.of(tiltRuleSi(held, joint));
        Moment level = Moment.of(levelMoment(held, joint));
        String label = joint.words() + " moment by the tilt rule";
        return held.answer(
                label,
                value,
                joint.sides(),
                () -> ruleWorking(held, joint, label, level, value),
                posture -> tiltRuleSi(posture, joint),
                List.of("The tilt rule is common practice; no source gives it."));
    }

    private static Working ruleWorking(HeldPosture held, Joint joint, String label, Moment level, Moment value) {
        Hand hand = new Hand(held.layout());
        Expression.Symbol atLevel = hand.input(
                "M_level",
                level,
                "the same with the " + Layout.above(joint).words()
                        + " level, balance found anew; a working of its own");
        hand.step("M_rule", atLevel.times(tilt(hand, held, joint)), value, RULE);
        return Working.of(label + ", " + joint.sides().words(), hand.steps());
    }

    /** |lean| / 90°, as an expression. */
    private static Expression tilt(Hand hand, HeldPosture held, Joint joint) {
        Segment segment = beyond(held, joint);
        Expression lean = hand.lean(segment);
        Expression size = held.layout().lean(segment) < 0 ? lean.negated() : lean;
        return size.dividedBy(Expression.exactDegrees(90));
    }

    private static MuscleArm arm(HeldPosture held, Joint joint) {
        return held.muscleArm(joint)
                .orElseThrow(() -> new IllegalArgumentException("no muscle arm for the " + action(held, joint)
                        + " is on file; ask for hip extension, knee, ankle, low back, elbow or shoulder flexion"));
    }

    private static String action(HeldPosture held, Joint joint) {
        boolean positive = held.cut(joint).reported() >= 0;
        return joint.words() + " "
                + (positive ? held.plane().positiveAction(joint) : held.plane().negativeAction(joint));
    }

    static double forceSi(HeldPosture held, Joint joint) {
        return Math.abs(held.cut(joint).reported()) / arm(held, joint).arm().si();
    }

    static double ratioSi(HeldPosture held, Joint joint) {
        return Math.abs(held.cut(joint).loadArm()) / arm(held, joint).arm().si();
    }

    /** The force over the arm's own spread as well: least with the longest arm, greatest with the shortest. */
    static Answer<Force> force(HeldPosture held, Joint joint) {
        MuscleArm arm = arm(held, joint);
        Force value = Force.of(forceSi(held, joint));
        String label = "equivalent muscle force for " + action(held, joint);
        Answer<Force> answer = held.answer(
                label,
                value,
                joint.sides(),
                () -> forceWorking(held, joint, label, arm, value),
                posture -> forceSi(posture, joint),
                notes(arm, joint));
        return spread(answer, arm);
    }

    private static Working forceWorking(HeldPosture held, Joint joint, String label, MuscleArm arm, Force value) {
        HandMoments hand = new HandMoments(held.layout(), held.cut(joint));
        Expression moment = hand.moment();
        Expression size = held.cut(joint).reported() < 0 ? moment.negated() : moment;
        Expression.Symbol muscle = arm.rule().in(hand.hand(), arm);
        Expression.Symbol force = hand.hand()
                .step(
                        "F_muscle",
                        size.dividedBy(muscle),
                        value,
                        "one equivalent muscle; " + joint.sides().words());
        return hand.working(label + ", " + joint.sides().words(), force);
    }

    static Answer<Ratio> ratio(HeldPosture held, Joint joint) {
        MuscleArm arm = arm(held, joint);
        Ratio value = Ratio.of(ratioSi(held, joint));
        String label = "lever ratio of the " + joint.words();
        Answer<Ratio> answer = held.answer(
                label,
                value,
                Sides.NOT_SIDED,
                () -> ratioWorking(held, joint, label, arm, value),
                posture -> ratioSi(posture, joint),
                notes(arm, joint));
        return spread(answer, arm);
    }

    private static Working ratioWorking(HeldPosture held, Joint joint, String label, MuscleArm arm, Ratio value) {
        HandMoments hand = new HandMoments(held.layout(), held.cut(joint));
        Expression loadArm = hand.loadArm();
        Expression size = held.cut(joint).loadArm() < 0 ? loadArm.negated() : loadArm;
        Expression.Symbol ratio = hand.hand()
                .step("ratio", size.dividedBy(arm.rule().in(hand.hand(), arm)), value, "load arm over muscle arm");
        return hand.working(label, ratio);
    }

    private static <M extends Measure<M>> Answer<M> spread(Answer<M> answer, MuscleArm arm) {
        double centre = arm.arm().si();
        double half = arm.arm().error();
        return answer.between(
                answer.low().times(centre / (centre + half)), answer.high().times(centre / (centre - half)));
    }

    private static List<String> notes(MuscleArm arm, Joint joint) {
        List<String> notes = new ArrayList<>();
        if (!arm.remark().isEmpty()) {
            notes.add(arm.remark());
        }
        if (arm.status() == ReadingStatus.FROM_MEMORY) {
            notes.add("This number rests on a muscle arm from memory.");
        }
        notes.add(Cautions.CO_CONTRACTION);
        notes.addAll(HeldPosture.jointCautions(joint));
        return notes;
    }

    private static Answer<Length> armAnswer(HeldPosture held, Joint joint, MuscleArm arm) {
        Length value = Length.of(arm.arm().si());
        String label = "muscle arm of the " + arm.muscle();
        Answer<Length> answer = held.answer(
                label,
                value,
                Sides.NOT_SIDED,
                () -> armWorking(held, label, arm, value),
                posture -> arm(posture, joint).arm().si(),
                notes(arm, joint));
        return answer.between(
                answer.low().minus(Length.of(arm.arm().error())),
                answer.high().plus(Length.of(arm.arm().error())));
    }

    private static Working armWorking(HeldPosture held, String label, MuscleArm arm, Length value) {
        Hand hand = new Hand(held.layout());
        Expression.Symbol symbol = arm.rule().in(hand, arm);
        return hand.steps().isEmpty()
                ? Working.given(label, symbol.name(), value, arm.printed())
                : Working.of(label, hand.steps());
    }

    static LeverView view(HeldPosture held, Joint joint) {
        Optional<LeverView.Muscle> muscle = held.muscleArm(joint)
                .map(arm -> new LeverView.Muscle(
                        arm.muscle(),
                        armAnswer(held, joint, arm),
                        ratio(held, joint),
                        force(held, joint),
                        arm.source() + "; " + arm.status().words()));
        List<String> notes = new ArrayList<>(held.muscleArm(joint)
                .map(arm -> notes(arm, joint))
                .orElse(List.of("No muscle arm for the " + action(held, joint) + " is on file.")));
        notes.add(Cautions.GENERAL);
        boolean turned = held.cut(joint).reported() < 0;
        return new LeverView(
                joint,
                action(held, joint),
                held.load(joint),
                turned ? held.flexionLoadArm(joint) : held.loadArm(joint),
                turned ? held.flexionMoment(joint) : held.moment(joint),
                muscle,
                share(held, joint),
                shareByTilt(held, joint),
                notes);
    }

    /** The segment beyond the joint, on the side that is cut free. */
    private static Segment beyond(HeldPosture held, Joint joint) {
        Segment above = Layout.above(joint);
        return held.cut(joint).isAbove() ? above : Layout.SEGMENTS.get(above.ordinal() - 1);
    }

    private static Answer<Ratio> share(HeldPosture held, Joint joint) {
        Segment segment = beyond(held, joint);
        double sine = held.layout().sine(segment);
        Ratio value = Ratio.of(Math.abs(sine));
        String label = "share square to the " + segment.words();
        return held.answer(
                label,
                value,
                Sides.NOT_SIDED,
                () -> {
                    Hand hand = new Hand(held.layout());
                    Expression lean = Expression.sine(hand.lean(segment));
                    hand.step(
                            "share", sine < 0 ? lean.negated() : lean, value, "part of a weight square to the segment");
                    return Working.of(label, hand.steps());
                },
                posture -> Math.abs(posture.layout().sine(segment)),
                List.of());
    }

    private static Answer<Ratio> shareByTilt(HeldPosture held, Joint joint) {
        Segment segment = beyond(held, joint);
        Ratio value = Ratio.of(Math.abs(held.layout().lean(segment)) / RIGHT_ANGLE);
        String label = "share square to the " + segment.words() + " by the tilt rule";
        return held.answer(
                label,
                value,
                Sides.NOT_SIDED,
                () -> {
                    Hand hand = new Hand(held.layout());
                    hand.step("share_by_tilt", tilt(hand, held, joint), value, RULE);
                    return Working.of(label, hand.steps());
                },
                posture -> Math.abs(posture.layout().lean(segment)) / RIGHT_ANGLE,
                List.of());
    }
}
