package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Expression;

/**
 * The hinge with a bar in hanging, straight arms.
 *
 * <p>The bar hangs a stated distance ahead of the centre of pressure ({@link Knobs#BAR_AHEAD}) or a stated gap from the leg
 * ({@link Knobs#BAR_CLEARANCE}), and the arms take the angle that brings the hands there; or the arms hang plumb
 * ({@link #plumbArms}) and the bar follows.
 */
public final class RomanianDeadlift extends Exercise<RomanianDeadlift> {
    /** Radius of the bar's grip: 28 mm across (common practice, no source). */
    private static final double BAR_RADIUS = 0.014;

    private static final List<Knob<?>> KNOBS = List.of(
            Knobs.BAR,
            Knobs.TORSO_LEAN,
            Knobs.SHANK_LEAN,
            Knobs.THIGH_ABOVE_LEVEL,
            Knobs.KNEE_FLEXION,
            Knobs.BAR_AHEAD,
            Knobs.BAR_CLEARANCE,
            Knobs.LEG_DEPTH,
            Knobs.PRESSURE,
            Knobs.HEEL_HEIGHT);
    private static final List<Knob<Angle>> PREFERRED = List.of(Knobs.TORSO_LEAN, Knobs.SHANK_LEAN);
    private static final List<Knob<Angle>> FROM_THE_FLOOR = List.of(Knobs.TORSO_LEAN, Knobs.THIGH_ABOVE_LEVEL);
    /** Radius of the plates that a bar rests on: 45 cm across (common practice, no source). */
    private static final double PLATE_RADIUS = 0.225;

    private final List<Knob<Angle>> preferred;

    /** How the arms hang. */
    private enum Arms {
        /** Towards a bar whose place is set. */
        TO_THE_BAR,
        /** Straight down; the bar follows. */
        PLUMB
    }

    RomanianDeadlift() {
        this(Settings.of(KNOBS));
    }

    private RomanianDeadlift(Settings settings) {
        this("Romanian deadlift", PREFERRED, settings);
    }

    private RomanianDeadlift(String name, List<Knob<Angle>> preferred, Settings settings) {
        super(name, settings);
        this.preferred = preferred;
    }

    /** The conventional deadlift: the same hang of the bar, with the thighs set instead of the shanks. */
    static RomanianDeadlift fromTheFloor() {
        List<Knob<?>> knobs = new ArrayList<>(KNOBS);
        start(knobs, Knobs.TORSO_LEAN.startingAt(Measures.deg(60), "as it often stays up to the knees (from memory)"));
        start(knobs, Knobs.THIGH_ABOVE_LEVEL.startingAt(Measures.deg(30), "near the floor (from memory)"));
        start(knobs, Knobs.BAR.startingAt(Measures.kg(60), "two plates of common size, 45 cm across, and a bar"));
        return new RomanianDeadlift("Deadlift", FROM_THE_FLOOR, Settings.of(knobs));
    }

    private static void start(List<Knob<?>> knobs, Knob<?> knob) {
        knobs.set(knobs.indexOf(knob), knob);
    }

    @Override
    RomanianDeadlift with(Settings other) {
        return new RomanianDeadlift(name(), preferred, other);
    }

    /** Sets the bar with its plates; see {@link Knobs#BAR}. */
    public RomanianDeadlift barbell(Mass mass) {
        return with(Knobs.BAR, mass);
    }

    /** Sets the lean of the torso; see {@link Knobs#TORSO_LEAN}. */
    public RomanianDeadlift torsoLean(Angle lean) {
        return with(Knobs.TORSO_LEAN, lean);
    }

    /** Sets the lean of the shank; see {@link Knobs#SHANK_LEAN}. */
    public RomanianDeadlift shankLean(Angle lean) {
        return with(Knobs.SHANK_LEAN, lean);
    }

    /** Sets how far the thigh stands above level; see {@link Knobs#THIGH_ABOVE_LEVEL}. */
    public RomanianDeadlift thighAboveLevel(Angle angle) {
        return with(Knobs.THIGH_ABOVE_LEVEL, angle);
    }

    /** Sets the bend of the knee; see {@link Knobs#KNEE_FLEXION}. */
    public RomanianDeadlift kneeFlexion(Angle angle) {
        return with(Knobs.KNEE_FLEXION, angle);
    }

    /** Sets how far ahead of the centre of pressure the bar hangs; takes back a clearance. */
    public RomanianDeadlift barAhead(Length distance) {
        return without(Knobs.BAR_CLEARANCE).with(Knobs.BAR_AHEAD, distance);
    }

    /** Sets the gap between bar and leg; takes back a distance ahead of the centre of pressure. */
    public RomanianDeadlift barClearance(Length gap) {
        return without(Knobs.BAR_AHEAD).with(Knobs.BAR_CLEARANCE, gap);
    }

    /** Lets the arms hang straight down, so that the bar follows the shoulders. */
    public RomanianDeadlift plumbArms() {
        return with(settings().choose(Arms.PLUMB));
    }

    @Override
    Layout arrange(Skeleton body) {
        Settings s = settings();
        Layout layout = new Layout(body);
        layout.palmsBack();
        double reach = body.length(Segment.UPPER_ARM) + body.length(Segment.FOREARM) + body.gripAlong();
        Hang hang = hang(reach, body);
        Beside beside = new Beside(layout, s, hang, this::bar);
        double barX = new Stance(layout, s, s.si(Knobs.BAR), beside).stand(preferred);
        hang.requireReach();
        layout.settle(Segment.UPPER_ARM);
        layout.leanLike(Segment.FOREARM, Segment.UPPER_ARM);
        layout.leanLike(Segment.HAND, Segment.UPPER_ARM);
        String arms = s.choice(Arms.TO_THE_BAR) == Arms.PLUMB
                ? "the arms hang straight down"
                : "follows: the straight arms bring the hands to the bar";
        ARMS.forEach(arm -> layout.origin(arm, arms));
        beside.finish(layout, barX);
        return layout;
    }

    private void bar(Layout layout, double barX) {
        layout.add(Load.weight(
                "bar",
                Member.HAND,
                settings().si(Knobs.BAR),
                "set on the exercise",
                barX,
                layout.gripY(),
                this::barX,
                Hand::gripY));
    }

    /** The bar lies where it was set ahead of the pressure, or else where the hands are. */
    private Expression barX(Hand hand) {
        if (settings().choice(Arms.TO_THE_BAR) == Arms.PLUMB || settings().given(Knobs.BAR_CLEARANCE)) {
            return hand.gripFormula(true);
        }
        Length ahead = Length.of(settings().si(Knobs.BAR_AHEAD));
        return hand.pressure().plus(hand.input("a_bar", ahead, "bar ahead of the chosen pressure; set"));
    }

    private boolean isFromTheFloor() {
        return preferred == FROM_THE_FLOOR;
    }

    @Override
    List<String> remarks(Layout layout) {
        double y = layout.gripY();
        return isFromTheFloor() && y < PLATE_RADIUS
                ? List.of("The bar lies " + Measures.m(y) + " above the floor, but plates of 45 cm keep it at "
                        + Measures.m(PLATE_RADIUS) + ": set the thighs or the torso higher.")
                : List.of();
    }

    @Override
    List<Knob<Angle>> preferredAngles() {
        return preferred;
    }

    private static final List<Segment> ARMS = List.of(Segment.UPPER_ARM, Segment.FOREARM, Segment.HAND);

    private Hang hang(double reach, Skeleton body) {
        Settings s = settings();
        boolean plumb = s.choice(Arms.TO_THE_BAR) == Arms.PLUMB;
        boolean clearance = s.given(Knobs.BAR_CLEARANCE);
        boolean ahead = s.given(Knobs.BAR_AHEAD);
        boolean twice = (clearance && ahead) || (plumb && (clearance || ahead));
        if (twice) {
            throw new IllegalArgumentException("the bar's place is set twice: by "
                    + (plumb ? "plumb arms" : Knobs.BAR_CLEARANCE.name()) + " and by "
                    + (ahead ? Knobs.BAR_AHEAD.name() : Knobs.BAR_CLEARANCE.name())
                    + "; take one of them back with without(...)");
        }
        if (plumb) {
            return new Hang(reach, layout -> 0);
        }
        if (clearance) {
            double gap = s.si(Knobs.BAR_CLEARANCE) + s.si(Knobs.LEG_DEPTH) + BAR_RADIUS;
            return new Hang(reach, layout -> besideLeg(layout, reach, gap));
        }
        double x = s.si(Knobs.PRESSURE) * body.length(Segment.FOOT) + s.si(Knobs.BAR_AHEAD);
        return new Hang(reach, layout -> (x - layout.jointX(Joint.SHOULDER)) / reach);
    }

    /** The arms' sine from the vertical, forward positive, as a rule; beyond ±1 the bar is out of reach. */
    private interface ArmRule {
        double sine(Layout layout);
    }

    /** Straight arms that swing about the shoulder. */
    private static final class Hang implements Stance.Upper {
        private final double reach;
        private final ArmRule rule;
        private double sine;

        Hang(double reach, ArmRule rule) {
            this.reach = reach;
            this.rule = rule;
        }

        @Override
        public double place(Layout layout) {
            sine = rule.sine(layout);
            double cosine = Math.sqrt(Math.max(0, 1 - sine * sine));
            for (Segment arm : ARMS) {
                layout.leanBySine(arm, sine, cosine);
            }
            layout.placeArms();
            return layout.jointX(Joint.SHOULDER) + reach * sine;
        }

        void requireReach() {
            if (!(Math.abs(sine) <= 1)) {
                double away = Math.abs(sine * reach);
                throw new ImpossibleSetting("the bar is " + Measures.m(away)
                        + " from the shoulder, measured level, but the" + " arms reach " + Measures.m(reach)
                        + "; set the bar nearer to the feet or the torso less far away");
            }
        }
    }

    /**
     * The arms' sine where the bar keeps a distance from the leg: from the thigh where it hangs above the knee, from the shank
     * where below, and between them from the knee itself. On the line through P with direction (sin φ, cos φ) the distance
     * ahead is n·(B − P), n = (cos φ, −sin φ); with B = S + r·(sin a, −cos a) it is n·(S − P) + r·sin(a + φ).
     */
    private static double besideLeg(Layout layout, double reach, double distance) {
        double arm = armAngle(layout, Segment.THIGH, reach, distance);
        if (alongLeg(layout, Segment.THIGH, reach, arm) < 0) {
            arm = armAngle(layout, Segment.SHANK, reach, distance);
            if (alongLeg(layout, Segment.SHANK, reach, arm) > layout.body().length(Segment.SHANK)) {
                arm = armAroundKnee(layout, reach, distance);
            }
        }
        return Trigonometry.sine(arm);
    }

    /** How far up a segment of the leg from its start the bar lies, m. */
    private static double alongLeg(Layout layout, Segment leg, double reach, double arm) {
        double x = layout.jointX(Joint.SHOULDER) + reach * Trigonometry.sine(arm) - layout.startX(leg);
        double y = layout.jointY(Joint.SHOULDER) - reach * Trigonometry.cosine(arm) - layout.startY(leg);
        return x * layout.sine(leg) + y * layout.cosine(leg);
    }

    /** The triangle of shoulder, knee and bar: its sides are the reach, the distance and the way from shoulder to knee. */
    private static double armAroundKnee(Layout layout, double reach, double distance) {
        double x = layout.jointX(Joint.KNEE) - layout.jointX(Joint.SHOULDER);
        double y = layout.jointY(Joint.KNEE) - layout.jointY(Joint.SHOULDER);
        double way = Math.sqrt(x * x + y * y);
        double cosine = (reach * reach + way * way - distance * distance) / (2 * reach * way);
        return Trigonometry.arcTangent(x, -y) + Trigonometry.arcCosine(Math.max(-1, Math.min(1, cosine)));
    }

    private static double armAngle(Layout layout, Segment leg, double reach, double distance) {
        double sine = layout.sine(leg);
        double cosine = layout.cosine(leg);
        double shoulder = (layout.jointX(Joint.SHOULDER) - layout.startX(leg)) * cosine
                - (layout.jointY(Joint.SHOULDER) - layout.startY(leg)) * sine;
        double turned = Math.max(-1, Math.min(1, (distance - shoulder) / reach));
        return Trigonometry.arcSine(turned) - Trigonometry.arcTangent(sine, cosine);
    }

    @Override
    public Family family() {
        return Family.HINGE;
    }

    @Override
    public List<String> trains() {
        return List.of("gluteus maximus and hamstrings; the back muscles hold the trunk");
    }

    @Override
    public List<Joint> drivenJoints() {
        return isFromTheFloor() ? List.of(Joint.HIP, Joint.KNEE) : List.of(Joint.HIP);
    }

    @Override
    public List<String> loads() {
        return withAdded(List.of("bar on the hand"));
    }

    @Override
    public List<String> supports() {
        return List.of("both feet on the floor");
    }

    @Override
    public Optional<Course> course() {
        return Optional.of(
                isFromTheFloor()
                        ? new Course(
                                        Knobs.THIGH_ABOVE_LEVEL,
                                        Measures.deg(25).si(),
                                        Measures.deg(85).si())
                                .with(
                                        Knobs.TORSO_LEAN,
                                        Measures.deg(62).si(),
                                        Measures.deg(12).si())
                        : new Course(
                                Knobs.TORSO_LEAN,
                                Measures.deg(10).si(),
                                Measures.deg(80).si()));
    }

    @Override
    public String follows() {
        if (isFromTheFloor()) {
            return "Torso lean and the thighs are set; the shanks follow, so that the pressure lies at the chosen place of the"
                    + " foot; the arms take the angle that brings the hands to the bar.";
        }
        return "Torso lean and shank lean are set; the thigh follows, so that the pressure lies at the chosen place of the"
                + " foot. Set two of torso lean, shank lean, thigh above level and knee flexion, and the rest follows; set"
                + " three, and the posture is held as set and the pressure falls where it falls. The thigh is sought between"
                + " level (hip behind the knee) and straight knees: the hip is never below the knee. The arms take the angle"
                + " that brings the hands to the bar.";
    }

    @Override
    public List<String> assumptions() {
        return List.of(
                "both sides move alike; the movement is planar, seen from the side",
                "the trunk with neck and head is straight, the elbows and wrists too; overhand grip, palms back",
                atRest(),
                "grip width and stance width are not modelled");
    }

    @Override
    public List<String> freeComponents() {
        return withAddedFree(List.of());
    }

    @Override
    public List<String> cautions() {
        return List.of(Cautions.GENERAL, Cautions.LOW_BACK, Cautions.KNEE);
    }
}
