package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;

import java.util.List;
import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.working.Expression;

/**
 * The squat with a bar on the back, held at any depth.
 *
 * <p>The bar lies along and behind the line from hip to shoulder ({@link Knobs#BAR_HEIGHT_ON_TRUNK},
 * {@link Knobs#BAR_BEHIND_TRUNK}). The upper arms lie along the trunk, elbows down, and the forearms point to the bar; the
 * hands carry none of it.
 */
public final class BackSquat extends Exercise<BackSquat> {
    private static final List<Knob<?>> KNOBS = List.of(
            Knobs.BAR,
            Knobs.THIGH_ABOVE_LEVEL,
            Knobs.TORSO_LEAN,
            Knobs.SHANK_LEAN.startingAt(deg(30), "a shank as it often leans in squats (from memory)"),
            Knobs.KNEE_FLEXION.startingAt(deg(110), "near level thighs (from memory)"),
            Knobs.BAR_HEIGHT_ON_TRUNK,
            Knobs.BAR_BEHIND_TRUNK,
            Knobs.PRESSURE,
            Knobs.HEEL_HEIGHT);
    /** Lean of the shank at level thighs on the usual way, in degrees: with the torso near 45° (from memory). */
    private static final int SHANK_AT_LEVEL = 25;

    private static final List<Knob<Angle>> PREFERRED = List.of(Knobs.THIGH_ABOVE_LEVEL, Knobs.TORSO_LEAN);

    BackSquat() {
        this(Settings.of(KNOBS));
    }

    private BackSquat(Settings settings) {
        super("Back squat", settings);
    }

    @Override
    BackSquat with(Settings other) {
        return new BackSquat(other);
    }

    /** Sets the bar with its plates; see {@link Knobs#BAR}. */
    public BackSquat barbell(Mass mass) {
        return with(Knobs.BAR, mass);
    }

    /** Sets the depth: the angle of the thighs above level, {@link Exercises#LEVEL} for level ones. */
    public BackSquat thighs(Angle aboveLevel) {
        return with(Knobs.THIGH_ABOVE_LEVEL, aboveLevel);
    }

    /** Sets the depth; the same as {@link #thighs}. */
    public BackSquat thighAboveLevel(Angle angle) {
        return with(Knobs.THIGH_ABOVE_LEVEL, angle);
    }

    /** Sets the lean of the torso; see {@link Knobs#TORSO_LEAN}. */
    public BackSquat torsoLean(Angle lean) {
        return with(Knobs.TORSO_LEAN, lean);
    }

    /** Sets the lean of the shank; see {@link Knobs#SHANK_LEAN}. */
    public BackSquat shankLean(Angle lean) {
        return with(Knobs.SHANK_LEAN, lean);
    }

    /** Sets the bend of the knee; see {@link Knobs#KNEE_FLEXION}. */
    public BackSquat kneeFlexion(Angle angle) {
        return with(Knobs.KNEE_FLEXION, angle);
    }

    /** Puts the bar on the upper back: 2 cm above the shoulder joint, 6 cm behind the trunk's line (from memory). */
    public BackSquat highBar() {
        return barOnTrunk(cm(2), cm(6));
    }

    /** Puts the bar across the shoulder blades: 5 cm below the shoulder joint, 9 cm behind the trunk's line (from memory). */
    public BackSquat lowBar() {
        return barOnTrunk(cm(-5), cm(9));
    }

    /**
     * Puts the bar on the trunk.
     *
     * @param above along the trunk from the shoulder joint, towards the head positive
     * @param behind the line from hip to shoulder, square to it
     */
    public BackSquat barOnTrunk(Length above, Length behind) {
        return with(Knobs.BAR_HEIGHT_ON_TRUNK, above).with(Knobs.BAR_BEHIND_TRUNK, behind);
    }

    @Override
    List<Knob<Angle>> preferredAngles() {
        return PREFERRED;
    }

    @Override
    Layout arrange(Skeleton body) {
        Settings s = settings();
        double above = s.si(Knobs.BAR_HEIGHT_ON_TRUNK);
        double behind = s.si(Knobs.BAR_BEHIND_TRUNK);
        Layout layout = new Layout(body);
        Beside arms = new Beside(
                layout, s, placing -> placeArms(placing, above, behind), (placed, x) -> bar(placed, x, above, behind));
        double barX = new Stance(layout, s, s.si(Knobs.BAR), arms).stand(PREFERRED);
        layout.settle(Segment.UPPER_ARM);
        layout.settle(Segment.FOREARM);
        layout.leanLike(Segment.HAND, Segment.FOREARM);
        layout.origin(Segment.UPPER_ARM, "the upper arm lies along the trunk, elbow down");
        layout.origin(Segment.FOREARM, "the forearm points from the elbow to the bar");
        layout.origin(Segment.HAND, "in line with the forearm");
        arms.finish(layout, barX);
        return layout;
    }

    private void bar(Layout layout, double barX, double above, double behind) {
        layout.add(Load.weight(
                "bar",
                Member.TRUNK,
                settings().si(Knobs.BAR),
                "set on the exercise",
                barX,
                barY(layout, above, behind),
                hand -> barFormula(hand, above, behind, true),
                hand -> barFormula(hand, above, behind, false)));
    }

    private static double placeArms(Layout layout, double above, double behind) {
        double barX = layout.jointX(Joint.SHOULDER)
                + above * layout.sine(Segment.TRUNK)
                - behind * layout.cosine(Segment.TRUNK);
        layout.leanBySine(Segment.UPPER_ARM, -layout.sine(Segment.TRUNK), layout.cosine(Segment.TRUNK));
        layout.placeArms();
        double dx = barX - layout.jointX(Joint.ELBOW);
        double dy = barY(layout, above, behind) - layout.jointY(Joint.ELBOW);
        double span = Math.sqrt(dx * dx + dy * dy);
        layout.leanBySine(Segment.FOREARM, dx / span, -dy / span);
        layout.leanBySine(Segment.HAND, dx / span, -dy / span);
        layout.placeArms();
        return barX;
    }

    private static double barY(Layout layout, double above, double behind) {
        return layout.jointY(Joint.SHOULDER)
                + above * layout.cosine(Segment.TRUNK)
                + behind * layout.sine(Segment.TRUNK);
    }

    private static Expression barFormula(Hand hand, double above, double behind, boolean isX) {
        Expression up = hand.input("u_bar", Length.of(above), "bar above the shoulder joint, along the trunk; set");
        Expression back = hand.input("b_bar", Length.of(behind), "bar behind the line from hip to shoulder; set");
        Expression sine = Expression.sine(hand.lean(Segment.TRUNK));
        Expression cosine = Expression.cosine(hand.lean(Segment.TRUNK));
        return isX
                ? hand.x(Joint.SHOULDER).plus(up.times(sine)).minus(back.times(cosine))
                : hand.y(Joint.SHOULDER).plus(up.times(cosine)).plus(back.times(sine));
    }

    @Override
    public Family family() {
        return Family.SQUAT;
    }

    @Override
    public List<String> trains() {
        return List.of("quadriceps, gluteus maximus and adductors; the back muscles hold the trunk");
    }

    @Override
    public List<Joint> drivenJoints() {
        return List.of(Joint.KNEE, Joint.HIP, Joint.ANKLE);
    }

    @Override
    public List<String> loads() {
        return withAdded(List.of("bar on the trunk"));
    }

    @Override
    public List<String> supports() {
        return List.of("both feet on the floor");
    }

    @Override
    public Optional<Course> course() {
        return Optional.of(new Course(Knobs.THIGH_ABOVE_LEVEL, deg(90).si(), deg(0).si())
                .with(Knobs.SHANK_LEAN, deg(3).si(), deg(SHANK_AT_LEVEL).si()));
    }

    @Override
    public String follows() {
        return "Thigh above level and torso lean are set; the shank follows, so that the pressure lies at the chosen place of"
                + " the foot. Set two of thigh above level, torso lean, shank lean and knee flexion, and the rest follows; set"
                + " three, and the posture is held as set and the pressure falls where it falls. The shank is sought between "
                + Knobs.SHANK_LEAN.range() + ", the torso between " + Knobs.TORSO_LEAN.range()
                + ", the thigh between level and straight knees.";
    }

    @Override
    public List<String> assumptions() {
        return List.of(
                "both sides move alike; the movement is planar, seen from the side: thighs that point outwards are shorter in"
                        + " this view, and this model does not shorten them",
                "the trunk with neck and head is straight",
                atRest(),
                "the hands carry none of the bar; upper arms along the trunk, forearms towards the bar");
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
