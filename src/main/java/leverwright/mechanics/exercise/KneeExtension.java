package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.deg;

import java.util.List;
import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.load.LeverLoad;
import leverwright.mechanics.load.MachineLever;
import leverwright.mechanics.load.PadLoad;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.working.Expression;

/**
 * The machine knee extension, seated: a pad pushes square to the shanks, held at any bend of the knee.
 *
 * <p><b>A stack is not a force.</b> The cable pulls with the stack's weight at the arm of the machine's wheel; the pad, at its
 * own distance from the machine's axis, which stands at the knee, pushes with stack · g · wheel arm ÷ pad distance
 * ({@link Knobs#WHEEL_ARM}, {@link Knobs#PAD}). The wheel is round, without friction and the lever without weight: where pad
 * forces were measured, set {@link Knobs#PAD_FORCE} instead.
 *
 * <p>Seat and backrest share the rest of the body in a way this model does not know, so that only knee and ankle have an
 * answer here. The ankle keeps its neutral angle, the foot goes with the shank.
 */
public final class KneeExtension extends Exercise<KneeExtension> {
    private static final List<Knob<?>> KNOBS = List.of(
            Knobs.STACK,
            Knobs.KNEE_FLEXION.startingAt(deg(60), "a middle of the range of motion"),
            Knobs.PAD,
            Knobs.WHEEL_ARM,
            Knobs.PAD_FORCE,
            Knobs.THIGH_ABOVE_LEVEL,
            Knobs.TORSO_LEAN.startingAt(deg(-10), "a backrest leaning a little back; it changes the figure only"));
    private static final double RIGHT_ANGLE = deg(90).si();
    /** Clearance of the sole from the floor when the shank hangs, m: it places the knee. */
    private static final double CLEARANCE = 0.05;

    KneeExtension() {
        this(Settings.of(KNOBS));
    }

    private KneeExtension(Settings settings) {
        super("Machine knee extension", settings);
    }

    @Override
    KneeExtension with(Settings other) {
        return new KneeExtension(other);
    }

    /** Sets the mass of the stack, lifted by both legs; takes back a pad force. */
    public KneeExtension stack(Mass mass) {
        return without(Knobs.PAD_FORCE).with(Knobs.STACK, mass);
    }

    /** Sets the distance of the pad from the knee, along the shank. */
    public KneeExtension pad(Length fromKnee) {
        return with(Knobs.PAD, fromKnee);
    }

    /** Sets the arm at which the cable pulls on the machine's wheel. */
    public KneeExtension wheelArm(Length arm) {
        return with(Knobs.WHEEL_ARM, arm);
    }

    /** Sets the measured force of the pad on both shanks, square to them, instead of a stack. */
    public KneeExtension padForce(Force force) {
        return without(Knobs.STACK).with(Knobs.PAD_FORCE, force);
    }

    /** Sets the bend of the knee, 0 when straight. */
    public KneeExtension kneeFlexion(Angle angle) {
        return with(Knobs.KNEE_FLEXION, angle);
    }

    /** Sets how far the thigh stands above level on the seat, hip higher than knee positive. */
    public KneeExtension thighAboveLevel(Angle angle) {
        return with(Knobs.THIGH_ABOVE_LEVEL, angle);
    }

    @Override
    Optional<KneeExtension> levelled(Joint joint) {
        return Optional.empty();
    }

    @Override
    Layout arrange(Skeleton body) {
        Settings s = settings();
        Layout layout = new Layout(body);
        layout.supportedBy(Layout.Support.SEAT);
        double thigh = s.si(Knobs.THIGH_ABOVE_LEVEL) - RIGHT_ANGLE;
        double shank = thigh + s.si(Knobs.KNEE_FLEXION);
        layout.lean(Segment.THIGH, thigh);
        layout.lean(Segment.SHANK, shank);
        layout.lean(Segment.FOOT, shank);
        layout.lean(Segment.TRUNK, s.si(Knobs.TORSO_LEAN));
        for (Segment arm : List.of(Segment.UPPER_ARM, Segment.FOREARM, Segment.HAND)) {
            layout.lean(arm, 0);
        }
        layout.placeFromKnee(0, body.length(Segment.SHANK) + body.ankleAcross() + CLEARANCE);
        layout.placeArms();
        layout.origin(Segment.THIGH, "thigh above level less 90°");
        layout.origin(Segment.SHANK, "lean of the thigh plus knee flexion");
        layout.origin(Segment.FOOT, "square to the shank");
        if (s.given(Knobs.PAD_FORCE)) {
            layout.add(pad(layout));
        } else {
            LeverLoad moving = inMotion(layout);
            layout.add(pad(layout), Optional.of((link, at) -> moving));
        }
        Beside.addTo(layout, s);
        return layout;
    }

    /** In motion the stack pulls with its own acceleration. */
    private LeverLoad inMotion(Layout layout) {
        Settings s = settings();
        MachineLever lever = MachineLever.stack(Mass.of(s.si(Knobs.STACK)), Length.of(s.si(Knobs.WHEEL_ARM)))
                .startsAt(deg(-90));
        return new LeverLoad(
                "shank",
                new LeverLoad.Pad(s.si(Knobs.PAD), PadLoad.Side.LEFT, true),
                new Vector(layout.jointX(Joint.KNEE), layout.jointY(Joint.KNEE)),
                lever);
    }

    private Load pad(Layout layout) {
        Settings s = settings();
        double distance = s.si(Knobs.PAD);
        double shank = layout.body().length(Segment.SHANK);
        if (!(distance <= shank)) {
            throw new ImpossibleSetting("the pad is " + Measures.m(distance) + " from the knee, but the shank is "
                    + Measures.m(shank) + " long; set the pad nearer to the knee");
        }
        if (s.given(Knobs.STACK) && s.given(Knobs.PAD_FORCE)) {
            throw new IllegalArgumentException(
                    "stack and pad force are both set, but either decides the other; take one of"
                            + " them back with without(...)");
        }
        boolean measured = s.given(Knobs.PAD_FORCE);
        double force = measured
                ? s.si(Knobs.PAD_FORCE)
                : s.si(Knobs.STACK) * Layout.GRAVITY * s.si(Knobs.WHEEL_ARM) / distance;
        double sine = layout.sine(Segment.SHANK);
        double cosine = layout.cosine(Segment.SHANK);
        return Load.force(
                "pad",
                Member.SHANK,
                layout.jointX(Joint.KNEE) - distance * sine,
                layout.jointY(Joint.KNEE) - distance * cosine,
                -force * cosine,
                force * sine,
                hand -> hand.x(Joint.KNEE).minus(distance(hand).times(shankSine(hand))),
                hand -> hand.y(Joint.KNEE).minus(distance(hand).times(shankCosine(hand))),
                hand -> padForce(hand, force, measured).times(shankCosine(hand)).negated(),
                hand -> padForce(hand, force, measured).times(shankSine(hand)));
    }

    private static Expression shankSine(Hand hand) {
        return Expression.sine(hand.lean(Segment.SHANK));
    }

    private static Expression shankCosine(Hand hand) {
        return Expression.cosine(hand.lean(Segment.SHANK));
    }

    private Expression.Symbol distance(Hand hand) {
        return hand.input("d_pad", Length.of(settings().si(Knobs.PAD)), "pad from the knee along the shank; set");
    }

    private Expression.Symbol padForce(Hand hand, double force, boolean measured) {
        if (measured) {
            return hand.input("F_pad", Force.of(force), "measured force of the pad on both shanks; set");
        }
        Expression stack = hand.input("m_stack", Mass.of(settings().si(Knobs.STACK)), "stack; set on the exercise");
        Expression arm = hand.input("r_wheel", Length.of(settings().si(Knobs.WHEEL_ARM)), "arm of the cable; set");
        Expression formula = stack.times(hand.gravity()).times(arm).dividedBy(distance(hand));
        return hand.step("F_pad", formula, Force.of(force), "force of the pad on both shanks, square to them");
    }

    @Override
    public Family family() {
        return Family.LEG;
    }

    @Override
    public List<String> trains() {
        return List.of("quadriceps");
    }

    @Override
    public List<Joint> drivenJoints() {
        return List.of(Joint.KNEE);
    }

    @Override
    public List<String> loads() {
        return withAdded(List.of("pad on the shank"));
    }

    @Override
    public List<String> supports() {
        return List.of("seat and backrest hold thighs and trunk");
    }

    @Override
    public Optional<Course> course() {
        return Optional.of(new Course(Knobs.KNEE_FLEXION, deg(90).si(), deg(0).si()));
    }

    @Override
    public String follows() {
        return "Knee flexion and the seat's thigh angle are set; the shank and the foot follow. Seat and backrest carry the"
                + " rest, so that nothing has to balance.";
    }

    @Override
    public List<String> assumptions() {
        return List.of(
                "both legs push alike; the movement is planar, seen from the side",
                "the machine's axis stands at the knee and the pad does not slide along the shank",
                "the cable pulls at one arm all the way, without friction, and the machine's lever has no weight of its own:"
                        + " on a machine with a cam or a heavy lever set the measured pad force",
                "at rest; the ankle keeps its neutral angle",
                "the quadriceps alone extends the knee: how the angle of the hip changes the share of the rectus femoris is"
                        + " not modelled");
    }

    @Override
    public List<String> cautions() {
        return List.of(Cautions.GENERAL, Cautions.KNEE, "Strength and anchors of the machine are not checked.");
    }
}
