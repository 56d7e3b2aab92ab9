package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.deg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Working;

/**
 * The push-up, held still: hands and the balls of the feet on the floor, the body straight from ankle to head.
 *
 * <p><b>Geometry.</b> The hands stay where straight arms put them: under the shoulders, or a set distance ahead of that
 * ({@link Knobs#HANDS_AHEAD}). Bending the elbow brings the shoulder nearer to the hand; body and feet turn together about
 * the balls of the feet, the ankle at a right angle. The elbow bends towards the feet, in the plane of the picture.
 *
 * <p><b>Two contacts.</b> Both lie on one level floor, so that the moments about the balls of the feet give the vertical force
 * of the hands whatever the horizontal forces are. The horizontal force of the hands is free ({@link #freeComponents}); all
 * moments are linear in it.
 */
public final class PushUp extends Exercise<PushUp> {
    private static final List<Knob<?>> KNOBS = List.of(
            Knobs.ELBOW_FLEXION.startingAt(
                    deg(90), "the low position as it is often judged (common practice, no source)"),
            Knobs.HANDS_AHEAD,
            Knobs.HAND_FORCE,
            Knobs.FRICTION,
            Knobs.PALM_PRESSURE,
            Knobs.WRIST_HEIGHT,
            Knobs.BALL_OF_FOOT);
    /** Hand forces up to this part above what friction holds are rounding. */
    private static final double ROUNDING = 1e-9;

    private static final double RIGHT_ANGLE = deg(90).si();

    PushUp() {
        this(Settings.of(KNOBS));
    }

    private PushUp(Settings settings) {
        super("Push-up", settings);
    }

    @Override
    PushUp with(Settings other) {
        return new PushUp(other);
    }

    /** Sets the bend of the elbow, 0 when straight. */
    public PushUp elbowFlexion(Angle angle) {
        return with(Knobs.ELBOW_FLEXION, angle);
    }

    /** Sets how far ahead of the shoulders the wrists stand when the arms are straight. */
    public PushUp handsAhead(Length distance) {
        return with(Knobs.HANDS_AHEAD, distance);
    }

    /** Sets the horizontal force of the floor on both hands, forward positive; balance leaves it free. */
    public PushUp handForce(Force forward) {
        return with(Knobs.HAND_FORCE, forward);
    }

    /** Sets the friction between floor and hands, and floor and feet. */
    public PushUp friction(Ratio coefficient) {
        return with(Knobs.FRICTION, coefficient);
    }

    /**
     * Returns this push-up with all horizontal hand forces that friction allows as the band of {@link Knobs#HAND_FORCE}, so
     * that every result carries its range while friction holds. The band lies around 0.
     */
    public PushUp whileFrictionHolds(Lifter lifter) {
        return with(Knobs.HAND_FORCE, new Force(0, greatestHandForce(lifter).si()));
    }

    /** Returns the greatest horizontal force of the floor on both hands before hands or feet slide, N. */
    public Force greatestHandForce(Lifter lifter) {
        return Force.of(settings().si(Knobs.FRICTION) * lesserPush(arrange(new Skeleton(lifter))));
    }

    /** The smaller of the vertical forces on hands and on feet, N; 0 where one of them would have to pull. */
    private static double lesserPush(Layout layout) {
        double hands = layout.hands().forceY();
        double feet = HandGround.reactionSi(layout);
        return Math.max(0, Math.min(hands, feet));
    }

    @Override
    List<String> remarks(Layout layout) {
        double force = Math.abs(settings().si(Knobs.HAND_FORCE));
        double holds = settings().si(Knobs.FRICTION) * lesserPush(layout);
        if (force <= holds * (1 + ROUNDING)) {
            return List.of();
        }
        return List.of("Hands or feet would slide: the horizontal hand force is " + newtons(force) + ", friction holds "
                + newtons(holds) + ".");
    }

    private static String newtons(double force) {
        return MeasureText.print(Force.of(force), Unit.NEWTON, 3);
    }

    /** Returns the part of the body's weight that the hands carry, both together, with its working. */
    public Answer<Ratio> shareOnHands(Lifter lifter) {
        Skeleton body = new Skeleton(lifter);
        Layout layout = arrange(body);
        Load hands = layout.hands();
        Hand hand = new Hand(layout);
        double weight = massOf(body) * Layout.GRAVITY;
        Expression push = handPush(hand, layout);
        Ratio share = Ratio.of(hands.forceY() / weight);
        hand.step("q_hands", push.dividedBy(weight(hand, layout)), share, "both hands together, of body weight");
        String title = "Share of body weight on the hands";
        return Answer.of(title, share, Sides.TOTAL, Working.of(title, hand.steps()));
    }

    @Override
    Layout arrange(Skeleton body) {
        Settings s = settings();
        Layout layout = new Layout(body);
        layout.supportedBy(Layout.Support.HANDS_AND_FEET);
        layout.palmsBack();
        Frame frame = Frame.of(body, s);
        for (Segment segment : List.of(Segment.FOOT, Segment.SHANK, Segment.THIGH, Segment.TRUNK)) {
            layout.lean(segment, frame.bodyLean);
        }
        layout.placeLegsAndTrunk(frame.ball * layout.sine(Segment.FOOT));
        layout.lean(Segment.UPPER_ARM, frame.upperArmLean);
        layout.lean(Segment.FOREARM, frame.upperArmLean + s.si(Knobs.ELBOW_FLEXION));
        layout.lean(Segment.HAND, RIGHT_ANGLE);
        layout.placeArms();
        layout.pressureAt(frame.ball * layout.cosine(Segment.FOOT));
        origins(layout);
        Beside.addTo(layout, s);
        layout.add(hands(layout));
        layout.confirm(hand -> confirm(hand, layout, frame));
        return layout;
    }

    /** The wrist lies at its height, and as far ahead of the balls of the feet as straight arms put it. */
    private List<Expression.Symbol> confirm(Hand hand, Layout layout, Frame frame) {
        double wristY = settings().si(Knobs.WRIST_HEIGHT);
        Expression height = hand.input("h_wrist", Length.of(wristY), "height of the wrist above the floor; set");
        Expression.Symbol atHeight = hand.step(
                "y_wrist_less_h_wrist",
                hand.y(Joint.WRIST).minus(height),
                Length.of(layout.jointY(Joint.WRIST) - wristY),
                "vanishes: this, with the next line, decided the leans of body and upper arm");
        Expression place = hand.input(
                "s_wrist",
                Length.of(frame.wristX),
                "wrist ahead of the balls of the feet with straight arms; from the same body by Pythagoras");
        double ahead = layout.jointX(Joint.WRIST) - layout.pressureX();
        Expression reached = hand.step(
                "x_wrist_ahead",
                hand.x(Joint.WRIST).minus(ball(hand, layout)),
                Length.of(ahead),
                "wrist ahead of the balls of the feet");
        Expression.Symbol atPlace = hand.step(
                "x_wrist_ahead_less_s_wrist", reached.minus(place), Length.of(ahead - frame.wristX), "vanishes");
        return List.of(atHeight, atPlace);
    }

    private static void origins(Layout layout) {
        String straight =
                "found: the body is straight and turns about the balls of the feet until the wrist is on its place";
        layout.origin(Segment.TRUNK, straight);
        layout.origin(Segment.THIGH, straight);
        layout.origin(Segment.SHANK, straight);
        layout.origin(Segment.FOOT, "square to the shank");
        layout.origin(Segment.UPPER_ARM, "found: the elbow bends by the set angle, towards the feet");
        layout.origin(Segment.FOREARM, "lean of the upper arm plus elbow flexion");
        layout.origin(Segment.HAND, "flat on the floor, fingers forward");
    }

    private Load hands(Layout layout) {
        double part = settings().si(Knobs.PALM_PRESSURE);
        double x = layout.alongX(Segment.HAND, part * layout.body().length(Segment.HAND));
        double forward = settings().si(Knobs.HAND_FORCE);
        return Load.force(
                        "hands",
                        Member.HAND,
                        x,
                        0,
                        forward,
                        push(layout, x),
                        hand -> hand.x(Joint.WRIST).plus(palm(hand).times(hand.length(Segment.HAND))),
                        hand -> hand.input("y_hands", Length.of(0), "on the floor"),
                        hand -> hand.input(
                                "H_hands", Force.of(forward), "horizontal force of the floor on the hands, free; set"),
                        hand -> pushFormula(hand, layout))
                .asReaction();
    }

    private Expression palm(Hand hand) {
        Ratio part = Ratio.of(settings().si(Knobs.PALM_PRESSURE));
        return hand.input("q_palm", part, "pressure under the palm from the wrist, of the hand's length; set");
    }

    /** Vertical force of both hands: moments about the balls of the feet, both contacts at the height of the floor. */
    private static double push(Layout layout, double handX) {
        double toes = layout.pressureX();
        double moment = layout.massMomentAbout(toes) * Layout.GRAVITY;
        for (Load load : layout.loads()) {
            moment -= load.reaction() ? 0 : load.momentAbout(toes, 0);
        }
        return moment / (handX - toes);
    }

    private static double massOf(Skeleton body) {
        double mass = 0;
        for (Segment segment : Layout.SEGMENTS) {
            mass += body.mass(segment);
        }
        return mass;
    }

    private Expression pushFormula(Hand hand, Layout layout) {
        Expression weight = weight(hand, layout);
        Expression centre = centre(hand, layout);
        Expression toes = ball(hand, layout);
        Expression lever = hand.x(layout.hands()).minus(toes);
        List<Expression> terms = new ArrayList<>(List.of(weight.times(centre.minus(toes))));
        for (Load load : layout.loads()) {
            if (!load.reaction()) {
                terms.add(hand.x(load).minus(toes).times(hand.forceY(load)).negated());
                if (!load.isWeight()) {
                    terms.add(hand.y(load).times(hand.forceX(load)));
                }
            }
        }
        return (terms.size() == 1 ? terms.get(0) : Expression.sum(terms)).dividedBy(lever);
    }

    private Expression.Symbol handPush(Hand hand, Layout layout) {
        Force push = Force.of(layout.hands().forceY());
        return hand.step("Fy_hands", pushFormula(hand, layout), push, "moments about the balls of the feet");
    }

    private Expression.Symbol ball(Hand hand, Layout layout) {
        Expression part = hand.input(
                "q_ball",
                Ratio.of(settings().si(Knobs.BALL_OF_FOOT)),
                "ball of the foot from the heel, of the foot's length; set");
        Expression along = part.times(hand.length(Segment.FOOT));
        return hand.step(
                "x_ball",
                along.times(Expression.cosine(hand.lean(Segment.FOOT))),
                Length.of(layout.pressureX()),
                "where the feet push");
    }

    private static Expression.Symbol weight(Hand hand, Layout layout) {
        List<Expression> masses = new ArrayList<>();
        for (Part part : layout.pieces().all()) {
            masses.add(hand.mass(part));
        }
        Force weight = Force.of(massOf(layout.body()) * Layout.GRAVITY);
        return hand.step("W_body", Expression.sum(masses).times(hand.gravity()), weight, "the whole body");
    }

    private static Expression.Symbol centre(Hand hand, Layout layout) {
        List<Expression> masses = new ArrayList<>();
        List<Expression> moments = new ArrayList<>();
        for (Part part : layout.pieces().all()) {
            masses.add(hand.mass(part));
            moments.add(hand.mass(part).times(hand.x(part)));
        }
        Length centre = Length.of(layout.massMomentAbout(0) / massOf(layout.body()));
        Expression formula = Expression.sum(moments).dividedBy(Expression.sum(masses));
        return hand.step("x_body", formula, centre, "its mass centre");
    }

    /**
     * Lean of the straight body and of the upper arm. With C the ball of the foot, S the shoulder and W the wrist, CS and CW
     * are known lengths, and the elbow's bend gives SW; the angle at C follows from the law of cosines, likewise that at S.
     */
    private record Frame(double bodyLean, double upperArmLean, double ball, double wristX) {
        static Frame of(Skeleton body, Settings s) {
            double upper = body.length(Segment.UPPER_ARM);
            double fore = body.length(Segment.FOREARM);
            double ball = s.si(Knobs.BALL_OF_FOOT) * body.length(Segment.FOOT);
            double behind = body.ankleAlong() - ball;
            double along = body.ankleAcross()
                    + body.length(Segment.SHANK)
                    + body.length(Segment.THIGH)
                    + body.length(Segment.TRUNK);
            double shoulder = Math.sqrt(behind * behind + along * along);
            double tilt = Trigonometry.arcTangent(behind, along);
            double ahead = s.si(Knobs.HANDS_AHEAD);
            double wristY = s.si(Knobs.WRIST_HEIGHT);
            double high = wristY + Math.sqrt((upper + fore) * (upper + fore) - ahead * ahead);
            double wristX = Math.sqrt(shoulder * shoulder - high * high) + ahead;
            double wrist = Math.sqrt(wristX * wristX + wristY * wristY);
            double bend = s.si(Knobs.ELBOW_FLEXION);
            double arm = Math.sqrt(upper * upper + fore * fore + 2 * upper * fore * Trigonometry.cosine(bend));
            double turn = Trigonometry.arcTangent(wristX, wristY) - corner(shoulder, wrist, arm);
            double toWrist = Trigonometry.arcTangent(
                    wristX - shoulder * Trigonometry.sine(turn), shoulder * Trigonometry.cosine(turn) - wristY);
            double lean = turn - tilt;
            double upperArm = toWrist - corner(upper, arm, fore);
            if (!(Math.abs(lean) + Math.abs(upperArm) < Double.MAX_VALUE)) {
                throw new ImpossibleSetting("with hands " + Measures.m(ahead) + " ahead of the shoulders and arms of "
                        + Measures.m(upper + fore) + " no straight body reaches the floor at an elbow bend of "
                        + new Angle(bend, 0) + "; set the hands nearer to the shoulders or another bend");
            }
            return new Frame(lean, upperArm, ball, wristX);
        }

        /** The angle between two sides of a triangle that lies opposite the third, rad; no number if there is none. */
        private static double corner(double one, double other, double opposite) {
            double cosine = (one * one + other * other - opposite * opposite) / (2 * one * other);
            return Trigonometry.arcCosine(Math.abs(cosine - 1) < 1e-12 ? 1 : cosine);
        }
    }

    @Override
    public Family family() {
        return Family.PUSH;
    }

    @Override
    public List<String> trains() {
        return List.of("pectoralis major, anterior deltoid and triceps; the trunk muscles hold the body straight");
    }

    @Override
    public List<Joint> drivenJoints() {
        return List.of(Joint.ELBOW, Joint.SHOULDER);
    }

    @Override
    public List<String> loads() {
        return withAdded(List.of());
    }

    @Override
    public List<String> supports() {
        return List.of("hands and balls of the feet on the floor");
    }

    @Override
    public Optional<Course> course() {
        return Optional.of(new Course(Knobs.ELBOW_FLEXION, deg(0).si(), deg(90).si()));
    }

    @Override
    public String follows() {
        return "Elbow flexion and the place of the hands are set; the straight body turns about the balls of the feet until"
                + " the wrists are on their place. The elbow bends towards the feet.";
    }

    @Override
    public List<String> freeComponents() {
        return List.of("The horizontal force of the hands, forward on the body positive (" + Knobs.HAND_FORCE.name()
                + "): 0 by default, hands that press straight down, because no measurement says otherwise; the feet take the"
                + " opposite force. It may lie anywhere while friction holds (" + Knobs.FRICTION.name() + ").");
    }

    @Override
    public List<String> assumptions() {
        return List.of(
                "both sides move alike; the movement is planar, seen from the side: elbows that point outwards bend less in"
                        + " this view, and this model does not shorten them",
                "the body is straight from ankle to head, the ankle at a right angle, the toes carry nothing but the balls of"
                        + " the feet",
                "at rest; the hands lie flat, fingers forward");
    }

    @Override
    public List<String> cautions() {
        return List.of(Cautions.GENERAL, Cautions.SHOULDER, Cautions.LOW_BACK);
    }
}
