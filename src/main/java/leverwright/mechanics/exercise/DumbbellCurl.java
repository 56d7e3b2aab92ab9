package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.deg;

import java.util.List;
import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Mass;

/**
 * The standing curl with a dumbbell in each hand, held at any bend of the elbow.
 *
 * <p>The forearm's lean is the upper arm's plus the elbow's bend; the hand goes on in line with it, palm up, and the dumbbell's
 * middle lies in the grip. The legs are straight and lean so that the pressure lies at the chosen place of the foot.
 */
public final class DumbbellCurl extends Exercise<DumbbellCurl> {
    private static final List<Knob<?>> KNOBS = List.of(
            Knobs.DUMBBELL,
            Knobs.ELBOW_FLEXION.startingAt(deg(90), "the level forearm, where the weight's arm is longest"),
            Knobs.UPPER_ARM_LEAN,
            Knobs.TORSO_LEAN.startingAt(deg(0), "upright"),
            Knobs.KNEE_FLEXION.startingAt(deg(0), "straight knees"),
            Knobs.SHANK_LEAN.startingAt(deg(0), "upright"),
            Knobs.THIGH_ABOVE_LEVEL.startingAt(deg(90), "upright"),
            Knobs.PRESSURE,
            Knobs.HEEL_HEIGHT);
    private static final List<Knob<Angle>> PREFERRED = List.of(Knobs.TORSO_LEAN, Knobs.KNEE_FLEXION);

    DumbbellCurl() {
        this(Settings.of(KNOBS));
    }

    private DumbbellCurl(Settings settings) {
        super("Dumbbell curl", settings);
    }

    @Override
    DumbbellCurl with(Settings other) {
        return new DumbbellCurl(other);
    }

    /** Sets the mass of one dumbbell; there is one in each hand. */
    public DumbbellCurl dumbbells(Mass each) {
        return with(Knobs.DUMBBELL, each);
    }

    /** Sets the bend of the elbow, 0 when straight. */
    public DumbbellCurl elbowFlexion(Angle angle) {
        return with(Knobs.ELBOW_FLEXION, angle);
    }

    /** Sets the lean of the upper arm from the plumb line, elbow ahead positive. */
    public DumbbellCurl upperArmLean(Angle angle) {
        return with(Knobs.UPPER_ARM_LEAN, angle);
    }

    /** Sets the lean of the torso. */
    public DumbbellCurl torsoLean(Angle lean) {
        return with(Knobs.TORSO_LEAN, lean);
    }

    @Override
    List<Knob<Angle>> preferredAngles() {
        return PREFERRED;
    }

    @Override
    Layout arrange(Skeleton body) {
        Settings s = settings();
        double both = 2 * s.si(Knobs.DUMBBELL);
        double forearm = s.si(Knobs.UPPER_ARM_LEAN) + s.si(Knobs.ELBOW_FLEXION);
        Layout layout = new Layout(body);
        layout.lean(Segment.UPPER_ARM, s.si(Knobs.UPPER_ARM_LEAN));
        layout.lean(Segment.FOREARM, forearm);
        layout.lean(Segment.HAND, forearm);
        Beside arms = new Beside(
                layout,
                s,
                placing -> {
                    placing.placeArms();
                    return placing.gripX();
                },
                (placed, x) -> dumbbells(placed, x, both));
        double gripX = new Stance(layout, s, both, arms).stand(PREFERRED);
        layout.origin(Segment.UPPER_ARM, "set on the exercise");
        layout.origin(Segment.FOREARM, "lean of the upper arm plus elbow flexion");
        layout.origin(Segment.HAND, "in line with the forearm");
        arms.finish(layout, gripX);
        return layout;
    }

    private static void dumbbells(Layout layout, double gripX, double both) {
        layout.add(Load.weight(
                "dumbbells",
                Member.HAND,
                both,
                "both dumbbells, 2 × one, set on the exercise",
                gripX,
                layout.gripY(),
                Hand::gripX,
                Hand::gripY));
    }

    @Override
    public Family family() {
        return Family.ARM;
    }

    @Override
    public List<String> trains() {
        return List.of("elbow flexors");
    }

    @Override
    public List<Joint> drivenJoints() {
        return List.of(Joint.ELBOW);
    }

    @Override
    public List<String> loads() {
        return withAdded(List.of("dumbbells on the hand"));
    }

    @Override
    public List<String> supports() {
        return List.of("both feet on the floor");
    }

    @Override
    public Optional<Course> course() {
        return Optional.of(new Course(Knobs.ELBOW_FLEXION, deg(0).si(), deg(140).si()));
    }

    @Override
    public String follows() {
        return "Upper arm lean and elbow flexion are set; the arm follows. Torso lean and knee flexion are set; the straight"
                + " legs lean so that the pressure lies at the chosen place of the foot. Set three of torso lean, shank lean,"
                + " thigh above level and knee flexion, and the posture is held as set and the pressure falls where it falls.";
    }

    @Override
    public List<String> assumptions() {
        return List.of(
                "both arms lift alike; the movement is planar, seen from the side",
                "the dumbbell's mass centre lies in the middle of the grip, the wrist is straight",
                atRest(),
                "one equivalent muscle bends the elbow: brachialis and brachioradialis help the biceps in truth");
    }

    @Override
    public List<String> cautions() {
        return List.of(Cautions.GENERAL, Cautions.SHOULDER);
    }
}
