package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.deg;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Measure;

/**
 * An exercise told in a few lines: what carries the body, how its segments lean, what it holds. The catalogue's exercises are
 * made of these words, and a cell makes its own with them:
 *
 * <pre>{@code
 * var facePull = exercise("Face pull")
 *         .standing()
 *         .lean(UPPER_ARM, deg(80))
 *         .bend(ELBOW, ELBOW_FLEXION)
 *         .cableInHands(cm(120), cm(160))
 *         .path(ELBOW_FLEXION, deg(10), deg(110))
 *         .drives(ELBOW)
 *         .trains("elbow flexors, shoulder extensors");
 * facePull.stack(kg(20)).by(ines).posture().moment(ELBOW)
 * }</pre>
 *
 * <p><b>Posture.</b> Every segment has a lean from the vertical, forward positive (of the arms, from hanging): fixed, set by a
 * knob, or bent from its neighbour by an angle of the joint between them. Nothing said: legs and trunk upright, arms hanging,
 * forearm and hand in line. Where the body stands on its feet, the knobs of legs and trunk are those of {@link Knobs} and
 * balance finds what they leave open.
 *
 * <p><b>Loads</b> come with their knobs, which the words of {@link Setting} set: {@code barbell(kg(60))}, {@code stack(kg(20))}.
 *
 * <p>Values are immutable: every word returns another exercise.
 */
public final class Movement extends Setting<Movement> {
    private final Plan plan;

    Movement(String name) {
        this(new Plan(name), Settings.of(List.of()));
    }

    private Movement(Plan plan, Settings settings) {
        super(plan.name, settings);
        this.plan = plan;
    }

    @Override
    Movement with(Settings other) {
        return new Movement(plan, other);
    }

    Movement change(Consumer<Plan> change) {
        Plan copy = plan.copy();
        change.accept(copy);
        return new Movement(copy, settings());
    }

    Plan plan() {
        return plan;
    }

    /**
     * Returns this exercise with a knob of its own, or with another default for one it has.
     *
     * @param knob such as {@code knob("Box height", cm(10), cm(60), cm(40), "height of the box above the floor")}
     */
    public Movement knob(Knob<?> knob) {
        return new Movement(plan, settings().withKnob(knob));
    }

    /** Returns this exercise with a knob that it shares with others at a default of its own, and why it starts there. */
    <Q extends Measure<Q>> Movement knob(Knob<Q> knob, Q standard, String why) {
        return knob(knob.startingAt(standard, why));
    }

    /** Returns this exercise in a plane of the body; say it before what carries the body. */
    public Movement in(Plane plane) {
        return change(copy -> copy.plane = plane);
    }

    /**
     * Returns this exercise standing on both feet, upright with straight knees; the legs lean so that the pressure lies at the
     * chosen place of the foot. Seen from the front the feet stand apart and moments give their shares.
     */
    public Movement standing() {
        return Bases.standing(this);
    }

    /**
     * Returns this exercise standing on both feet, with two of {@link Knobs#TORSO_LEAN}, {@link Knobs#SHANK_LEAN},
     * {@link Knobs#THIGH_ABOVE_LEVEL} and {@link Knobs#KNEE_FLEXION} that count as set where nobody sets others.
     */
    public Movement standing(Knob<Angle> first, Knob<Angle> second) {
        return Bases.standing(this, first, second);
    }

    /** Returns this exercise standing on one leg, the working one; the other one hangs from its hip and is kept apart. */
    public Movement onOneLeg(Knob<Angle> first, Knob<Angle> second) {
        return Bases.onOneLeg(this, first, second);
    }

    /** Returns this exercise on a seat: hips at 50 cm, trunk upright, thighs level; seat and backrest hold thighs and trunk. */
    public Movement seated() {
        return Bases.seated(this);
    }

    /** Returns this exercise lying on the back on a bench of 45 cm, legs straight; the bench holds trunk and thighs. */
    public Movement lyingOnTheBack() {
        return Bases.lying(this, deg(-90));
    }

    /** Returns this exercise lying on the front on a bench of 45 cm; the bench holds trunk and thighs. */
    public Movement lyingOnTheFront() {
        return Bases.lying(this, deg(90));
    }

    /**
     * Returns this exercise held at these segments alone, of both sides: a trunk on a bench, say, with free legs. What is free
     * answers for its moments; say it after what carries the body.
     *
     * @param segments at least one
     * @throws IllegalArgumentException if none is named, or the feet carry the body
     */
    public Movement heldAt(Segment... segments) {
        if (plan.standing || plan.onFeet || segments.length == 0) {
            throw new IllegalArgumentException(
                    "heldAt(...) names one segment or more that seat or bench hold; where the"
                            + " feet carry the body they alone do: begin with seated() or lyingOnTheBack()");
        }
        return change(copy -> {
                    copy.held = 0;
                    for (Segment segment : segments) {
                        copy.held |= Member.of(segment).bit();
                        if (copy.parting.isSplit(segment)) {
                            copy.held |= Member.other(segment).bit();
                        }
                    }
                })
                .carriedBy(
                        "held at " + Arrays.stream(segments).map(Segment::words).collect(Collectors.joining(" and ")));
    }

    /** Returns this exercise with a segment at a lean from the vertical, forward positive; of the arms, from hanging. */
    public Movement lean(Segment segment, Angle angle) {
        if (plan.standing && segment == Segment.TRUNK) {
            return knob(Knobs.TORSO_LEAN, angle, "by the exercise");
        }
        return rule(Member.of(segment), LeanRule.fixed(angle));
    }

    /** Returns this exercise with a segment whose lean a knob sets; of the thigh, how far it stands above level. */
    public Movement lean(Segment segment, Knob<Angle> knob) {
        boolean aboveLevel = segment == Segment.THIGH && knob.equals(Knobs.THIGH_ABOVE_LEVEL);
        LeanRule rule = aboveLevel
                ? LeanRule.knob(knob, 1, -deg(90).si(), "thigh above level less 90°")
                : LeanRule.knob(knob, 1, 0, "");
        return knob(knob).rule(Member.of(segment), rule).moving(knob, Bases.moved(segment));
    }

    /** Returns this exercise with the other side's segment at a lean, where both sides are kept apart; say it after lean. */
    public Movement otherLean(Segment segment, Angle angle) {
        return ruleAlone(Member.other(segment), LeanRule.fixed(angle));
    }

    /** Returns this exercise with the other side's segment set by a knob; say it after lean. */
    public Movement otherLean(Segment segment, Knob<Angle> knob) {
        return knob(knob).ruleAlone(Member.other(segment), LeanRule.knob(knob, 1, 0, ""));
    }

    /**
     * Returns this exercise with a joint bent: the segment away from the trunk leans as its neighbour does, turned by the
     * flexion (abduction of the shoulder seen from the front).
     *
     * @throws IllegalArgumentException for low back and neck, inside the straight trunk
     */
    public Movement bend(Joint joint, Angle angle) {
        return rule(Bases.beyond(joint), Bases.bend(plan, joint, null, angle.si()));
    }

    /** Returns this exercise with a joint whose flexion a knob sets. */
    public Movement bend(Joint joint, Knob<Angle> knob) {
        return knob(knob)
                .rule(Bases.beyond(joint), Bases.bend(plan, joint, knob, 0))
                .moving(knob, Bases.moved(Bases.beyond(joint).segment()));
    }

    Movement rule(Member member, LeanRule rule) {
        requireFreeLegs(member);
        return change(copy -> {
            copy.leans.put(member, rule);
            if (copy.parting.isSplit(member.segment())) {
                copy.leans.put(member.twin(), copy.plane == Plane.SAGITTAL ? rule.copied() : rule.mirrored());
            }
        });
    }

    Movement ruleAlone(Member member, LeanRule rule) {
        if (!plan.parting.isSplit(member.segment())) {
            throw new IllegalArgumentException(
                    "both sides of the " + member.segment().words()
                            + " are alike in this exercise; use lean(...) and bend(...) for both of them");
        }
        return change(copy -> copy.leans.put(member, rule));
    }

    private void requireFreeLegs(Member member) {
        if (plan.standing && !member.isArm() && !member.isOther()) {
            throw new IllegalArgumentException(
                    "where the feet carry the body, the " + member.segment().words()
                            + " is set by the knobs Torso lean, Shank lean, Thigh above level and Knee flexion: use"
                            + " standing(TORSO_LEAN, KNEE_FLEXION) and knob(...) for other defaults");
        }
    }

    Movement moving(Knob<?> knob, Optional<Drawing.Moved> what) {
        return what.map(moved -> change(copy -> copy.moves.put(knob, moved))).orElse(this);
    }

    /** Returns this exercise with a barbell in the hands; its knob is {@link Knobs#BAR}. */
    public Movement barbellInHands() {
        return Holds.barbellInHands(this);
    }

    /** Returns this exercise with a dumbbell in each hand; its knob is {@link Knobs#DUMBBELL}. */
    public Movement dumbbellsInHands() {
        return Holds.dumbbellsInHands(this);
    }

    /**
     * Returns this exercise with a barbell on the shoulders; its knobs are {@link Knobs#BAR},
     * {@link Knobs#BAR_HEIGHT_ON_TRUNK} and {@link Knobs#BAR_BEHIND_TRUNK}, which start here.
     *
     * @param above along the trunk from the shoulder joint, towards the head positive
     * @param behind the line from hip to shoulder, square to it; negative in front
     */
    public Movement barbellOnShoulders(Length above, Length behind) {
        return Holds.barbellOnShoulders(this, above, behind);
    }

    /**
     * Returns this exercise with a cable in the hands; its knobs are {@link Knobs#STACK}, {@link SetupKnobs#PULLEY_AHEAD},
     * {@link SetupKnobs#PULLEY_HEIGHT}, and {@link SetupKnobs#PULL_DIRECTION}, which takes the pulley's place when it is set.
     *
     * @param ahead of the point from which places count: the heel, or the hips on a seat or bench
     * @param height above the floor
     */
    public Movement cableInHands(Length ahead, Length height) {
        return Holds.cable(this, "cable", Spot.grip(Member.HAND), ahead, height);
    }

    /**
     * Returns this exercise with a cable on a segment, so far from its joint nearer the trunk, on the foot from the heel along
     * the sole; knobs as in the hands.
     */
    public Movement cableOn(Segment segment, Length fromJoint, Length ahead, Length height) {
        return Holds.cable(this, "cable", Spot.at(Member.of(segment), fromJoint.si()), ahead, height);
    }

    /**
     * Returns this exercise with a given force on the hands, such as a partner's; its knobs are {@link SetupKnobs#PULL} and
     * {@link SetupKnobs#PULL_DIRECTION}.
     */
    public Movement forceOnHands() {
        return Holds.force(this, "pull", Spot.grip(Member.HAND));
    }

    /** Returns this exercise with a given force on a segment, so far from its joint nearer the trunk, on the foot from the heel. */
    public Movement forceOn(Segment segment, Length fromJoint) {
        return Holds.force(this, "pull", Spot.at(Member.of(segment), fromJoint.si()));
    }

    @Override
    Movement added(LoadRule rule) {
        return add(rule);
    }

    Movement add(LoadRule rule) {
        boolean mightSlip = plan.standing && rule.pushes() && !has(Knobs.FRICTION);
        Movement more = mightSlip ? knob(Knobs.FRICTION) : this;
        return more.change(copy -> {
            copy.add(rule);
            rule.leavesFree().ifPresent(copy.free::add);
        });
    }

    /** Adds a contact, which needs its own knobs and says what is free. */
    Movement contact(Contact contact) {
        return knob(contact.free()).knob(contact.friction()).change(copy -> {
            copy.add(contact);
            copy.free.add(contact.freeComponent());
        });
    }

    Movement check(Consumer<Work> check) {
        return change(copy -> copy.checks.add(check));
    }

    Movement remark(Function<Work, Optional<String>> remark) {
        return change(copy -> copy.remarks.add(remark));
    }

    /** Adds a limb that bends so that its end is at a place; where sides mirror, the other one's too. */
    Movement reach(Reach reach) {
        return change(copy -> {
            copy.reaches.add(reach);
            if (copy.parting.isSplit(reach.upper().segment()) && copy.plane != Plane.SAGITTAL) {
                Reach.Target mirror = new Targets.Mirrored(reach.target());
                copy.reaches.add(new Reach(reach.upper().twin(), mirror, reach.bend(), reach.toWrist()));
            }
        });
    }

    /**
     * Returns this exercise with all forces along the surface of its second contact that friction allows as the band of that
     * free force, so that every result carries its range while friction holds.
     *
     * @throws IllegalArgumentException if it has no second contact, or friction holds nowhere
     */
    public Movement whileFrictionHolds(Lifter lifter) {
        return FrictionHolds.of(this, lifter);
    }

    Movement show(Consumer<Work> shown) {
        return change(copy -> copy.scenery.add(shown));
    }

    Movement then(UnaryOperator<Movement> words) {
        return words.apply(this);
    }

    /** Returns this exercise with the knob that drives it, and the range in which it is usually moved. */
    public <Q extends Measure<Q>> Movement path(Knob<Q> knob, Q from, Q to) {
        return knob(has(knob) ? own(knob) : knob).change(copy -> {
            copy.path = knob;
            copy.pathFrom = from.si();
            copy.pathTo = to.si();
            copy.inStep.clear();
        });
    }

    /**
     * Returns this exercise with another knob that its way moves in step; say it after {@link #path}.
     *
     * @param knob the one that follows
     * @param from its value where the way starts
     * @param to its value where the way ends
     * @throws IllegalArgumentException if the exercise has no way yet, or not the knob
     */
    public <Q extends Measure<Q>> Movement with(Knob<Q> knob, Q from, Q to) {
        settings().indexOf(knob);
        if (plan.path == null) {
            throw new IllegalArgumentException("say first which knob the way turns: path(KNOB, from, to), then with("
                    + knob.name() + ", from, to)");
        }
        return change(copy -> copy.inStep.put(knob, new double[] {from.si(), to.si()}));
    }

    private boolean has(Knob<?> knob) {
        return settings().has(knob);
    }

    private Knob<?> own(Knob<?> knob) {
        return knobs().get(settings().indexOf(knob));
    }

    /** Returns this exercise with the joints that drive it. */
    public Movement drives(Joint... joints) {
        return change(copy -> copy.drives.addAll(Arrays.asList(joints)));
    }

    /** Returns this exercise with what it trains, in words. */
    public Movement trains(String what) {
        return change(copy -> copy.trains.add(what));
    }

    /** Returns this exercise with one more assumption of its model, in words. */
    public Movement assumes(String what) {
        return change(copy -> copy.assumptions.add(what));
    }

    /** Returns this exercise with one more caution, in words. */
    public Movement caution(String what) {
        return change(copy -> copy.cautions.add(what));
    }

    Movement cautions(String... what) {
        return change(copy -> copy.cautions.addAll(Arrays.asList(what)));
    }

    Movement carriedBy(String what) {
        return change(copy -> copy.supports.add(what));
    }

    Movement says(String follows) {
        return change(copy -> copy.follows.add(follows));
    }

    Movement of(Family family) {
        return change(copy -> copy.family = family);
    }

    @Override
    Layout arrange(Skeleton body) {
        return new Laying(plan, settings(), body, false).lay();
    }

    @Override
    Layout arrangeOther(Skeleton body) {
        return new Laying(plan, settings(), body, true).lay();
    }

    @Override
    public boolean keepsSidesApart() {
        return plan.parting.splitsAny();
    }

    @Override
    List<String> remarks(Layout layout) {
        return Laying.remarks(plan, settings(), layout);
    }

    @Override
    List<Knob<Angle>> preferredAngles() {
        return plan.standing ? plan.preferred : List.of();
    }

    @Override
    Optional<Drawing.Moved> moves(Knob<?> knob) {
        Drawing.Moved moved = plan.moves.get(knob);
        return moved != null ? Optional.of(moved) : plan.standing ? Drawing.usuallyMoved(this, knob) : Optional.empty();
    }

    @Override
    public Plane plane() {
        return plan.plane;
    }

    @Override
    public Family family() {
        return plan.family;
    }

    @Override
    public List<String> trains() {
        return List.copyOf(plan.trains);
    }

    @Override
    public List<Joint> drivenJoints() {
        return List.copyOf(plan.drives);
    }

    @Override
    public List<String> supports() {
        return List.copyOf(plan.supports);
    }

    @Override
    public List<String> loads() {
        return plan.loads.stream()
                .map(LoadRule::words)
                .filter(words -> !words.isEmpty())
                .toList();
    }

    @Override
    public Optional<Course> course() {
        return Optional.ofNullable(plan.path).map(knob -> {
            Course course = new Course(own(knob), plan.pathFrom, plan.pathTo);
            for (Map.Entry<Knob<?>, double[]> each : plan.inStep.entrySet()) {
                course = course.with(own(each.getKey()), each.getValue()[0], each.getValue()[1]);
            }
            return course;
        });
    }

    @Override
    public String follows() {
        return plan.follows.isEmpty()
                ? "Every lean is set by the exercise or by a knob; nothing is left open."
                : String.join(" ", plan.follows);
    }

    @Override
    public List<String> assumptions() {
        List<String> all = new ArrayList<>(plan.assumptions);
        all.add("the movement is planar, in the " + plan.plane.words() + " plane"
                + (plan.parting.splitsAny() ? "" : ", both sides alike"));
        all.add("the trunk with neck and head is straight");
        all.add("at rest: no force other than weights, what is named as load, and what the supports give back");
        return List.copyOf(all);
    }

    @Override
    public List<String> freeComponents() {
        return List.copyOf(plan.free);
    }

    @Override
    public List<String> cautions() {
        return List.copyOf(plan.cautions);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Movement that && plan == that.plan && settings().equals(that.settings());
    }

    @Override
    public int hashCode() {
        return Objects.hash(plan.name.toLowerCase(Locale.ROOT), settings());
    }
}
