package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Note;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Sketch;
import leverwright.mechanics.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A lifter held still in a posture, and what can be asked of it. Signs, sides and names of actions: {@link Joint}.
 *
 * <p>Every answer carries its band, when an input carried an error, and its working. Nothing is computed before it is asked
 * for, and what was is kept; so one posture is not for several threads at once.
 */
public final class HeldPosture {
    /** Dorsiflexion that many people do not pass, standing: from memory. */
    private static final Angle ANKLE_REACH = Measures.deg(40);

    /** Half the breadth of a foot, m: mean breadth 0.10 m (ANSUR II 2012, foot breadth, men, rounded). */
    private static final double HALF_FOOT = 0.05;

    /** What a comparison with a limit leaves to rounding. */
    private static final double ROUNDING = 1e-9;

    private static final int JOINTS = Joint.values().length;

    private final Performance performance;
    private final Layout layout;
    private final @Nullable Cut[] cuts = new Cut[JOINTS];
    private final @Nullable HandMoments[] hands = new HandMoments[JOINTS];
    private @Nullable Hand hand;
    private @Nullable Variations variations;
    private @Nullable BothCuts bothCuts;

    HeldPosture(Performance performance, Layout layout) {
        this.performance = performance;
        this.layout = layout;
    }

    /** Returns the exercise and lifter that this is the posture of. */
    public Performance performance() {
        return performance;
    }

    Layout layout() {
        return layout;
    }

    private Hand hand() {
        Hand made = hand;
        if (made == null) {
            made = new Hand(layout);
            hand = made;
        }
        return made;
    }

    /** The hand calculation at a joint; all joints of this posture share what they have in common. */
    private HandMoments hand(Joint joint) {
        HandMoments made = hands[joint.ordinal()];
        if (made == null) {
            made = new HandMoments(layout, cut(joint), hand());
            hands[joint.ordinal()] = made;
        }
        return made;
    }

    Cut cut(Joint joint) {
        Cut made = cuts[joint.ordinal()];
        if (made == null) {
            made = new Cut(layout, joint);
            cuts[joint.ordinal()] = made;
        }
        return made;
    }

    /** Returns what a reading says of this posture: {@code held.read(moment(HIP))}. */
    public <M extends Measure<M>> Answer<M> read(Reading<M> reading) {
        return reading.of(this);
    }

    /**
     * Returns the moments of some joints as a table.
     *
     * @param joints at least one
     */
    public MomentTable moments(Joint... joints) {
        List<MomentTable.Row> rows = new ArrayList<>();
        for (Joint joint : joints) {
            String action = sideWords() + joint.words() + " " + layout.plane().positiveAction(joint);
            rows.add(new MomentTable.Row(joint, action, moment(joint), load(joint), loadArm(joint)));
        }
        return new MomentTable(performance.toString(), rows, bothCuts(), notes());
    }

    /**
     * Returns the moment of a joint's positive action: extension, plantarflexion at the ankle. Per side for limbs, in total
     * for spine and neck.
     *
     * @throws IllegalArgumentException if a seat's unknown share decides it
     */
    public Answer<Moment> moment(Joint joint) {
        Cut cut = cut(joint);
        String label = momentLabel(joint, layout.plane().positiveAction(joint));
        return answer(
                label,
                Moment.of(cut.reported()),
                joint.sides(),
                () -> hand(joint)
                        .working(label + words(joint.sides()), hand(joint).moment()),
                held -> held.cut(joint).reported(),
                jointCautions(joint));
    }

    /** Returns the extension moment (plantarflexion at the ankle): the same as {@link #moment}. */
    public Answer<Moment> extensionMoment(Joint joint) {
        return moment(joint);
    }

    /** Returns the flexion moment (dorsiflexion at the ankle): {@link #moment} with the other sign. */
    public Answer<Moment> flexionMoment(Joint joint) {
        Cut cut = cut(joint);
        Moment turned = Moment.of(-cut.reported());
        String label = momentLabel(joint, layout.plane().negativeAction(joint));
        return answer(
                label,
                turned,
                joint.sides(),
                () -> {
                    Expression.Symbol flexion = hand().step(
                                    "M_flex_" + Hand.name(joint),
                                    hand(joint).moment().negated(),
                                    turned,
                                    layout.plane().negativeAction(joint));
                    return hand(joint).working(label + words(joint.sides()), flexion);
                },
                held -> -held.cut(joint).reported(),
                jointCautions(joint));
    }

    /**
     * Returns the part of a limb joint's moment that the limb's own weight asks for: all that hangs beyond the joint, away from
     * the trunk, without what it holds. It is the whole difference between an exercise in which the foot or hand moves and one
     * in which the body does, when the same force acts on foot or hand.
     *
     * @throws IllegalArgumentException for low back and neck, which belong to no limb
     */
    public Answer<Moment> ownWeight(Joint joint) {
        String label = momentLabel(joint, layout.plane().positiveAction(joint)) + " of the limb's own weight";
        return answer(
                label,
                Moment.of(new Limb(layout, joint).ownWeight()),
                joint.sides(),
                () -> Working.of(
                        label + words(joint.sides()),
                        hand().leadingTo(List.of(new Limb(layout, joint).ownWeight(hand())))),
                held -> new Limb(held.layout, joint).ownWeight(),
                jointCautions(joint));
    }

    /**
     * Returns the part of a limb joint's moment that is asked for from outside: by floor, plate, bar or cable on the limb. With
     * {@link #ownWeight} it makes the whole moment.
     *
     * @throws IllegalArgumentException for low back and neck, or if a seat's unknown share decides the moment
     */
    public Answer<Moment> fromOutside(Joint joint) {
        String label = momentLabel(joint, layout.plane().positiveAction(joint)) + " from outside";
        return answer(
                label,
                Moment.of(outsideSi(joint)),
                joint.sides(),
                () -> {
                    Expression.Symbol outside = hand().step(
                                    "M_outside_" + Hand.name(joint),
                                    hand(joint).moment().minus(new Limb(layout, joint).ownWeight(hand())),
                                    Moment.of(outsideSi(joint)),
                                    "what acts on the limb from outside" + words(joint.sides()));
                    return hand(joint).working(label + words(joint.sides()), outside);
                },
                held -> held.outsideSi(joint),
                jointCautions(joint));
    }

    /**
     * Returns a leg joint's moment computed from below: the floor's force at its arm and the weight of the leg under the joint.
     * Trunk, arms and bar do not enter; it equals {@link #moment}, which is computed from above.
     *
     * @throws IllegalArgumentException for other joints, or where not the feet alone carry the body
     */
    public Answer<Moment> fromTheFloor(Joint joint) {
        String label = momentLabel(joint, layout.plane().positiveAction(joint)) + " from the floor's side";
        return answer(
                label,
                Moment.of(new FloorCut(layout, joint).moment()),
                joint.sides(),
                () -> Working.of(
                        label + words(joint.sides()),
                        hand().leadingTo(List.of(new FloorCut(layout, joint).moment(hand())))),
                held -> new FloorCut(held.layout, joint).moment(),
                jointCautions(joint));
    }

    /**
     * Returns the arm of the floor's force about a leg's joint, positive where it asks for the joint's positive action. At the
     * hip it is the thigh's horizontal length less the part of the shank's that lies ahead of the force line.
     *
     * @throws IllegalArgumentException for other joints, or where not the feet alone carry the body
     */
    public Answer<Length> floorArm(Joint joint) {
        String label = "arm of the floor's force at the " + joint.words();
        return answer(
                label,
                Length.of(new FloorCut(layout, joint).arm()),
                Sides.NOT_SIDED,
                () -> Working.of(label, hand().leadingTo(List.of(new FloorCut(layout, joint).arm(hand())))),
                held -> new FloorCut(held.layout, joint).arm(),
                List.of());
    }

    /**
     * Returns how far a segment reaches forward, from its end nearer the feet (of the arms, nearer the trunk) to the other.
     *
     * @throws IllegalArgumentException where the plane does not show the segment: trunk and legs seen from the head
     */
    public Answer<Length> reach(Segment segment) {
        String label = "forward reach of the " + segment.words();
        return answer(
                label,
                Length.of(reachSi(segment)),
                Sides.NOT_SIDED,
                () -> {
                    Expression formula = segment == Segment.FOOT
                            ? hand().length(segment).times(Expression.cosine(hand().lean(segment)))
                            : hand().length(segment).times(Expression.sine(hand().lean(segment)));
                    Expression.Symbol reach = hand().step(
                                    "r_" + Hand.name(segment) + "_forward",
                                    formula,
                                    Length.of(reachSi(segment)),
                                    "forward positive");
                    return Working.of(label, hand().leadingTo(List.of(reach)));
                },
                held -> held.reachSi(segment),
                List.of());
    }

    double reachSi(Segment segment) {
        if (layout.parting().armsAlone() && !Member.of(segment).isArm()) {
            throw new IllegalArgumentException("seen from the head the " + segment.words()
                    + " has no length in this plane; ask for upper arm, forearm or hand");
        }
        double length = layout.body().length(segment);
        return length * (segment == Segment.FOOT ? layout.cosine(segment) : layout.sine(segment));
    }

    /**
     * Returns the forward part of the force that what lies below a joint gives to what lies above it, out along the arms; both
     * sides together where they are alike, N.
     *
     * @throws IllegalArgumentException if a seat's unknown share decides it
     */
    public double forceForwardSi(Joint joint) {
        Cut cut = cut(joint);
        return cut.isAbove() ? -cut.otherX() : cut.otherX();
    }

    /** Returns the upward part of the same force, N. */
    public double forceUpwardSi(Joint joint) {
        Cut cut = cut(joint);
        double up = cut.otherY() - cut.weight();
        return cut.isAbove() ? -up : up;
    }

    double floorMomentSi(Joint joint) {
        return new FloorCut(layout, joint).moment();
    }

    double floorArmSi(Joint joint) {
        return new FloorCut(layout, joint).arm();
    }

    double ownWeightSi(Joint joint) {
        return new Limb(layout, joint).ownWeight();
    }

    double outsideSi(Joint joint) {
        return cut(joint).reported() - ownWeightSi(joint);
    }

    /** Returns what a joint's moment is called here: side, joint, action. */
    String momentLabel(Joint joint, String action) {
        return sideWords() + joint.words() + " " + action + " moment";
    }

    /** Returns "other " where the other of two sides that differ is reported. */
    private String sideWords() {
        return performance.isOtherSide() ? "other " : "";
    }

    /** Returns the plane of the body that the exercise moves in. */
    public Plane plane() {
        return layout.plane();
    }

    /**
     * Returns the same posture with the other side reported, where an exercise keeps both sides apart.
     *
     * @throws IllegalArgumentException if both sides are alike
     */
    public HeldPosture otherSide() {
        return performance.otherSide().posture();
    }

    /** Returns the load beyond a joint, both sides together: the weight of all that lies beyond it, or all forces together. */
    public Answer<Force> load(Joint joint) {
        String label = "load beyond the " + joint.words();
        return answer(
                label,
                Force.of(cut(joint).load()),
                Sides.TOTAL,
                () -> Working.of(
                        label + ", both sides",
                        hand().leadingTo(List.of(hand(joint).load()))),
                held -> held.cut(joint).load(),
                List.of());
    }

    /** Returns the arm of that load about the joint, positive where it asks for the joint's positive action. */
    public Answer<Length> loadArm(Joint joint) {
        String label = "load arm of the " + joint.words();
        return answer(
                label,
                Length.of(cut(joint).loadArm()),
                Sides.NOT_SIDED,
                () -> hand(joint).working(label, hand(joint).loadArm()),
                held -> held.cut(joint).loadArm(),
                List.of());
    }

    /** Returns that arm positive where the load asks for the joint's other action: {@link #loadArm} with the other sign. */
    Answer<Length> flexionLoadArm(Joint joint) {
        String label = "load arm of the " + joint.words();
        Length turned = Length.of(-cut(joint).loadArm());
        return answer(
                label,
                turned,
                Sides.NOT_SIDED,
                () -> {
                    Expression.Symbol arm = hand().step(
                                    "d_flex_" + Hand.name(joint),
                                    hand(joint).loadArm().negated(),
                                    turned,
                                    "positive asks for " + layout.plane().negativeAction(joint));
                    return hand(joint).working(label, arm);
                },
                held -> -held.cut(joint).loadArm(),
                List.of());
    }

    /**
     * Returns a joint's moment by the tilt rule: the moment that a level segment would give, all else set the same and
     * balance found anew, times the segment's lean over 90°. Common practice, no source.
     *
     * @throws IllegalArgumentException if the lean of the segment at this joint follows and cannot be set level
     */
    public Answer<Moment> tiltRule(Joint joint) {
        return Levers.tiltRule(this, joint);
    }

    double tiltRuleSi(Joint joint) {
        return Levers.tiltRuleSi(this, joint);
    }

    /** Returns a joint as a lever: load, load arm, muscle arm, lever ratio, muscle force, share square to the segment. */
    public LeverView leverView(Joint joint) {
        return Levers.view(this, joint);
    }

    /**
     * Returns the force of the one muscle that stands for all muscles of the action that a joint needs.
     *
     * @throws IllegalArgumentException if no muscle arm of that action is on file
     */
    public Answer<Force> muscleForce(Joint joint) {
        return Levers.force(this, joint);
    }

    double muscleForceSi(Joint joint) {
        return Levers.forceSi(this, joint);
    }

    /**
     * Returns how many times the load the equivalent muscle pulls: load arm over muscle arm, never negative.
     *
     * @throws IllegalArgumentException if no muscle arm of that action is on file
     */
    public Answer<Ratio> leverRatio(Joint joint) {
        return Levers.ratio(this, joint);
    }

    double leverRatioSi(Joint joint) {
        return Levers.ratioSi(this, joint);
    }

    /** Returns the lean of a segment from the vertical, forward positive; of the arms, from hanging. */
    public Answer<Angle> lean(Segment segment) {
        Angle lean = Angle.of(layout.lean(segment));
        String label = "lean of the " + segment.words();
        return answer(
                label,
                lean,
                Sides.NOT_SIDED,
                () -> leanWorking(label, segment, lean),
                held -> held.layout.lean(segment),
                List.of());
    }

    /**
     * Returns the flexion of a joint: the angle between its segments, 0 in the upright stance.
     *
     * @throws IllegalArgumentException for low back and neck, inside the straight trunk of this model
     */
    public Answer<Angle> flexion(Joint joint) {
        String label = sideWords() + Flexions.label(layout, joint);
        return answer(
                label,
                Angle.of(Flexions.of(layout, joint)),
                Sides.NOT_SIDED,
                () -> Working.of(label, hand().leadingTo(List.of(Flexions.in(hand(), layout, joint)))),
                held -> Flexions.of(held.layout, joint),
                List.of());
    }

    private void requireFeet() {
        if (!layout.endsAtFeet() && layout.support() != Layout.Support.SEAT) {
            throw new IllegalArgumentException("here the feet do not carry what nothing else does: "
                    + performance.exercise().name() + " is held elsewhere; ask for a joint's moment or load");
        }
    }

    /** Returns where the pressure of the feet lies, ahead of the heel. */
    public Answer<Length> pressure() {
        requireFeet();
        return answer(
                "centre of pressure ahead of the heel",
                Length.of(pressureSi()),
                Sides.NOT_SIDED,
                () -> {
                    HandGround ground = new HandGround(layout);
                    ground.pressure();
                    return Working.of("centre of pressure ahead of the heel", ground.steps());
                },
                HeldPosture::pressureSi,
                List.of());
    }

    double pressureSi() {
        return HandGround.pressureSi(layout);
    }

    /** Returns the upward force of the ground on the feet, both together. */
    public Answer<Force> groundReaction() {
        requireFeet();
        return answer(
                "ground reaction",
                Force.of(HandGround.reactionSi(layout)),
                Sides.TOTAL,
                () -> {
                    HandGround ground = new HandGround(layout);
                    ground.reaction();
                    return Working.of("ground reaction, both feet", ground.steps());
                },
                held -> HandGround.reactionSi(held.layout),
                List.of());
    }

    /** Returns how the posture stands: balanced, on the foot, would fall, or carried by a seat. */
    public Standing standing() {
        if (!layout.standsOnFeet()) {
            return Standing.SUPPORTED;
        }
        double x = pressureSi();
        boolean frontal = layout.plane() == Plane.FRONTAL;
        if (x < (frontal ? -HALF_FOOT : 0)) {
            return frontal ? Standing.WOULD_FALL_SIDEWAYS : Standing.WOULD_FALL_BACKWARD;
        }
        if (x > (frontal ? HALF_FOOT : layout.body().length(Segment.FOOT))) {
            return frontal ? Standing.WOULD_FALL_SIDEWAYS : Standing.WOULD_FALL_FORWARD;
        }
        Layout.Found found = layout.found();
        boolean balanced = layout.isKeptInBalance() || (found != null && found.balanced());
        return balanced ? Standing.BALANCED : Standing.ON_THE_FOOT;
    }

    /** Returns whether the moments of both cuts of every joint agree. */
    public BothCuts bothCuts() {
        BothCuts made = bothCuts;
        if (made == null) {
            made = CrossCheck.of(layout);
            bothCuts = made;
        }
        return made;
    }

    /** Returns this posture as a general linkage with its loads and support, for motion, spine and joint forces. */
    public Mechanism mechanism() {
        return CrossCheck.mechanism(layout);
    }

    /**
     * Returns a figure of the posture with the load arms of some joints.
     *
     * @param loadArms joints whose load arm is drawn
     */
    public Sketch sketch(Joint... loadArms) {
        return new Drawing(this).sketch(List.of(loadArms));
    }

    /** Returns what is amiss with this posture: that it is not balanced as chosen, that a contact slides or would have to pull. */
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        if (!standing().asChosen()) {
            remarks.add(new StandingWords(this).text());
        }
        feetSlip().ifPresent(remarks::add);
        for (Load load : layout.loads()) {
            if (load.name().startsWith("band") && load.forceX() == 0 && load.forceY() == 0) {
                remarks.add("The " + load.name() + " is slack in this posture: it is no longer than at rest and pulls"
                        + " nothing. Tie it farther away, or take a shorter one.");
            }
        }
        remarks.addAll(performance.exercise().remarks(layout));
        return List.copyOf(remarks);
    }

    /** Returns what must be said beside every result of this posture: how it stands, the lifter's notes, the cautions. */
    public List<String> notes() {
        Set<String> notes = new LinkedHashSet<>(remarks());
        notes.addAll(performance.exercise().freeComponents());
        ankleNote().ifPresent(notes::add);
        for (Note note : performance.lifter().notes()) {
            notes.add(note.text());
        }
        notes.addAll(performance.exercise().cautions());
        return List.copyOf(notes);
    }

    /** Feet that must push along the floor with more than friction holds. */
    private Optional<String> feetSlip() {
        int feet = Member.FOOT.bit() | Member.OTHER_FOOT.bit();
        // a foot on a plate that tilts, or on its ball, is held otherwise
        boolean flat = layout.standsOnFeet() || layout.sine(Member.FOOT) == 0;
        boolean onFeet = flat && (layout.held() & ~feet) == 0 && layout.support() != Layout.Support.HANDS_AND_FEET;
        double along = Math.abs(HandGround.forwardSi(layout));
        if (!onFeet || along == 0) {
            return Optional.empty();
        }
        Settings settings = performance.exercise().settings();
        double friction = settings.has(Knobs.FRICTION)
                ? settings.si(Knobs.FRICTION)
                : Knobs.FRICTION.standard().si();
        double down = HandGround.reactionSi(layout);
        double holds = Math.max(0, friction * down);
        if (along <= holds * (1 + ROUNDING)) {
            return Optional.empty();
        }
        return Optional.of("The feet would slip: along the floor they must hold "
                + MeasureText.print(Force.of(along), Unit.NEWTON, 3) + ", friction holds "
                + MeasureText.print(Force.of(holds), Unit.NEWTON, 3) + " (" + Knobs.FRICTION.name() + " "
                + MeasureText.print(Ratio.of(friction), Unit.ONE, 3)
                + "). Take less, a steeper pull, or something to push against.");
    }

    /** The ankle's reach limits many postures, and no data of this lifter say where it ends. */
    private Optional<String> ankleNote() {
        double flexion = Flexions.of(layout, Joint.ANKLE);
        if (!layout.standsOnFeet() || layout.plane() != Plane.SAGITTAL || flexion <= ANKLE_REACH.si()) {
            return Optional.empty();
        }
        return Optional.of("The ankle bends " + MeasureText.print(Angle.of(flexion), Unit.DEGREE, 3)
                + "; many people reach no more than " + ANKLE_REACH
                + " with the heel on the floor (from memory). Measure it, or raise the heel.");
    }

    private static String words(Sides sides) {
        return sides.words().isEmpty() ? "" : ", " + sides.words();
    }

    static List<String> jointCautions(Joint joint) {
        return switch (joint) {
            case LOW_BACK -> List.of(Cautions.LOW_BACK);
            case KNEE -> List.of(Cautions.KNEE);
            case SHOULDER -> List.of(Cautions.SHOULDER);
            default -> List.of();
        };
    }

    private Working leanWorking(String label, Segment segment, Angle lean) {
        Working working = Working.given(label, "θ_" + Hand.name(segment), lean, Sources.clean(layout.origin(segment)));
        return layout.support() == Layout.Support.SEAT
                ? working
                : working.checked(hand(aKnownJoint()).checks(List.of()));
    }

    /** A joint whose moment is known here, for the checks that are the same at all of them. */
    private Joint aKnownJoint() {
        return Cut.isKnown(layout, Joint.ANKLE) ? Joint.ANKLE : Joint.NECK;
    }

    /** Returns an answer with its band and the notes that travel with it; the working is made when it is asked for. */
    <M extends Measure<M>> Answer<M> answer(
            String label,
            M value,
            Sides sides,
            Supplier<Working> working,
            ToDoubleFunction<HeldPosture> again,
            List<String> extra) {
        Variations.Band band = variations().band(value.si(), again);
        Answer<M> answer =
                Answer.of(label, value, sides, working).between(value.with(band.low(), 0), value.with(band.high(), 0));
        Set<String> notes = new LinkedHashSet<>();
        if (!standing().asChosen()) {
            notes.add(new StandingWords(this).text());
        }
        notes.addAll(extra);
        band.remark().ifPresent(notes::add);
        notes.add(Cautions.GENERAL);
        return answer.noted(notes);
    }

    /**
     * The ends of a value's band.
     *
     * @param low lower end, SI
     * @param high upper end, SI
     */
    public record Span(double low, double high) {}

    /** Returns the band of a reading over the inputs' bands, SI; both ends are the value when no input carries an error. */
    public Span span(Reading<?> reading) {
        Variations.Band band = variations().band(reading.si(this), reading::si);
        return new Span(band.low(), band.high());
    }

    private Variations variations() {
        Variations made = variations;
        if (made == null) {
            made = Variations.of(performance);
            variations = made;
        }
        return made;
    }

    Optional<MuscleArm> muscleArm(Joint joint) {
        return MuscleArm.of(layout, joint, cut(joint).reported() >= 0);
    }
}
