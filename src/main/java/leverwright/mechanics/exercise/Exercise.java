package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.load.Band;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Measures;

/**
 * An exercise with its settings; an immutable value. Every change returns another exercise.
 *
 * <p>An exercise says which angle follows when which are set ({@link #follows}), which force components balance leaves free
 * ({@link #freeComponents}) and which cautions belong to it.
 *
 * @param <E> the exercise itself, so that chained settings keep its own words
 */
public abstract class Exercise<E extends Exercise<E>> {
    private final String name;
    private final Settings settings;

    Exercise(String name, Settings settings) {
        this.name = name;
        this.settings = settings;
    }

    /** Returns the same exercise with other settings. */
    abstract E with(Settings other);

    /**
     * Returns where everything lies for a body: segments, loads, support, and what was found by balance.
     *
     * @throws ImpossibleSetting if no posture has these settings, such as a bar out of the arms' reach
     */
    abstract Layout arrange(Skeleton body);

    /** Returns the same as {@link #arrange} with the other side reported. */
    Layout arrangeOther(Skeleton body) {
        throw new IllegalArgumentException("both sides are alike in the " + name);
    }

    /** Tells whether both sides are kept apart: a split, one-sided or sideways exercise. */
    public boolean keepsSidesApart() {
        return false;
    }

    /** Returns the plane of the body that it moves in. */
    public Plane plane() {
        return Plane.SAGITTAL;
    }

    /** Returns which point of a figure a knob moves, for the knobs that a reader may drag; none where no point follows. */
    Optional<Drawing.Moved> moves(Knob<?> knob) {
        return Drawing.usuallyMoved(this, knob);
    }

    /** Returns the angles that count as set, in this order, where too few were given; none where balance finds no angle. */
    List<Knob<Angle>> preferredAngles() {
        return List.of();
    }

    /**
     * Returns this exercise with the segment that starts at a joint set level, for the tilt rule; empty where that lean
     * follows or is not one that the rule is used with.
     */
    Optional<E> levelled(Joint joint) {
        return switch (joint) {
            case HIP, LOW_BACK ->
                decides(Knobs.TORSO_LEAN) ? Optional.of(with(Knobs.TORSO_LEAN, Measures.deg(90))) : Optional.empty();
            case KNEE ->
                decides(Knobs.THIGH_ABOVE_LEVEL)
                        ? Optional.of(with(Knobs.THIGH_ABOVE_LEVEL, Measures.deg(0)))
                        : Optional.empty();
            default -> Optional.empty();
        };
    }

    /** Tells whether a knob decides the posture: not where its angle follows from balance. */
    public boolean decides(Knob<?> knob) {
        if (!settings.has(knob)) {
            return false;
        }
        boolean isAngle = Stance.ANGLES.contains(knob) && !preferredAngles().isEmpty();
        return !isAngle || Stance.decided(settings, preferredAngles()).contains(knob);
    }

    /** Returns in words which angle follows when which are set, and the rule where more than one posture would do. */
    public abstract String follows();

    /** Returns, each in words, the assumptions of this exercise's model. */
    public abstract List<String> assumptions();

    /** Returns, each in words with its default and why, the force components that balance leaves free; often none. */
    public List<String> freeComponents() {
        return List.of();
    }

    /** Returns what must be said of one posture beside its results, such as hands that would slide; often nothing. */
    List<String> remarks(Layout layout) {
        return List.of();
    }

    /** Returns the cautions that travel with every result of this exercise. */
    public List<String> cautions() {
        return List.of(Cautions.GENERAL);
    }

    /** Returns the family in which the catalogue lists it. */
    public Family family() {
        return Family.OWN;
    }

    /** Returns, each in words, what it trains. */
    public List<String> trains() {
        return List.of();
    }

    /** Returns the joints that drive it. */
    public List<Joint> drivenJoints() {
        return List.of();
    }

    /** Returns, each in words, what carries the body. */
    public List<String> supports() {
        return List.of();
    }

    /** Returns, each in words, what it is loaded with and where that is held; none where the body's weight is all. */
    public List<String> loads() {
        return List.of();
    }

    /** Returns the knob that drives it and the range in which it is usually moved; empty where it is held still. */
    public Optional<Course> course() {
        return Optional.empty();
    }

    /**
     * Returns this exercise with a knob that moves in step with another one: the shank leans from 3° to 28° while the thighs
     * come down from upright to level, and balance finds the torso. A knob that somebody sets stays where it is set; so do
     * all, where an angle is set that balance would need.
     *
     * @param knob the one that follows
     * @param from its value where the driver starts
     * @param to its value where the driver ends
     * @param driver the one that is turned
     * @param driverFrom where the driver starts
     * @param driverTo where the driver ends
     * @throws IllegalArgumentException if a value lies outside its knob's range, or the driver does not move
     */
    public <P extends Measure<P>, Q extends Measure<Q>> E inStep(
            Knob<P> knob, P from, P to, Knob<Q> driver, Q driverFrom, Q driverTo) {
        return with(settings.following(new InStep(knob, from.si(), to.si(), driver, driverFrom.si(), driverTo.si())));
    }

    /**
     * Returns this exercise with all that its usual way moves in step with the knob that drives it, as the catalogue lists it:
     * a squat's trunk then leans as balance asks while it goes down. Without such knobs, the same exercise.
     */
    public E alongItsWay() {
        Settings along = settings;
        for (InStep way : course().map(Course::inStep).orElse(List.of())) {
            along = along.following(way);
        }
        return with(along);
    }

    /** Returns the name, such as "Romanian deadlift". */
    public String name() {
        return name;
    }

    /** Returns the knobs in the order in which they are listed. */
    public List<Knob<?>> knobs() {
        return settings.knobs();
    }

    Settings settings() {
        return settings;
    }

    /**
     * Returns this exercise with a knob set; the value may carry an error, which travels to every result.
     *
     * @throws IllegalArgumentException if the exercise has no such knob or the value lies outside its range
     */
    public <Q extends Measure<Q>> E with(Knob<Q> knob, Q value) {
        return with(settings.with(knob, value));
    }

    /** Returns this exercise with a knob back at its default, as if nobody had set it. */
    public E without(Knob<?> knob) {
        return with(settings.without(knob));
    }

    /** Returns what a knob is set to, or its default. An angle that follows has no setting: ask the posture for it. */
    public <Q extends Measure<Q>> Q get(Knob<Q> knob) {
        return settings.get(knob);
    }

    /** Tells whether somebody set a knob. */
    public boolean isSet(Knob<?> knob) {
        return settings.given(knob);
    }

    /** Returns this exercise with one more load beside its own. */
    E added(LoadRule load) {
        Settings more = settings.adding(load);
        return with(load.pushes() && !more.has(Knobs.FRICTION) ? more.withKnob(Knobs.FRICTION) : more);
    }

    /**
     * Returns this exercise with a load of another kind beside its own: a band, a cable, a machine's lever, measured forces of
     * {@code leverwright.mechanics.load}, whose link is named as the segment, such as "forearm". Its force enters workings as a
     * given number.
     *
     * @throws IllegalArgumentException if no segment has the name of its link
     */
    public E load(leverwright.mechanics.load.Load load) {
        return added(Given.of(load, loads().size()));
    }

    /** Returns this exercise with a weight vest, worn on the trunk 20 cm above the hips (from memory); see {@link SetupKnobs#VEST}. */
    public E vest(Mass mass) {
        Settings own = settings;
        E worn = own.has(SetupKnobs.VEST)
                ? with(own)
                : with(own.withKnob(SetupKnobs.VEST)).added(Hung.vest());
        return worn.with(SetupKnobs.VEST, mass);
    }

    /**
     * Returns this exercise with chains that hang from the bar or dumbbells to the floor: what lies on the floor is not carried.
     *
     * @param all mass of all chains together
     * @param each length of each chain from its upper end
     * @throws IllegalArgumentException when the posture is asked for, if the hands or shoulders hold no weight to hang them from
     */
    public E chains(Mass all, Length each) {
        return added(Tied.chains(all, each));
    }

    /**
     * Returns this exercise with a band from the bar or dumbbells to an anchor.
     *
     * @param band as measured, both sides together
     * @param ahead of the point from which places count: the heel, or the hips on a seat or bench
     * @param height of the anchor above the floor
     * @throws IllegalArgumentException when the posture is asked for, if the hands or shoulders hold no weight to tie it to
     */
    public E band(Band band, Length ahead, Length height) {
        return added(Tied.band(band, ahead, height));
    }

    /**
     * Returns this exercise with its bar guided upright, as in a machine of two rails: a horizontal force of the guide on the
     * bar is free ({@link SetupKnobs#GUIDE_FORCE}). Not set, it is 0 where balance finds an angle; where three angles are set,
     * it is what keeps the pressure at its place.
     *
     * @throws IllegalArgumentException if it has no bar, or does not stand, seen from the side
     */
    public E guidedBar() {
        if (!settings.has(Knobs.BAR)
                || plane() != Plane.SAGITTAL
                || preferredAngles().isEmpty()) {
            throw new IllegalArgumentException(
                    "a guided bar belongs to an exercise that stands with a bar, seen from the" + " side; " + name
                            + " does not");
        }
        return with(settings.withKnob(SetupKnobs.GUIDE_FORCE)).added(new Guide(preferredAngles()));
    }

    /** The exercise's own loads in words, and those that were added. */
    List<String> withAdded(List<String> own) {
        List<String> all = new ArrayList<>(own);
        settings.added().forEach(load -> all.add(load.words()));
        return List.copyOf(all);
    }

    /** What the exercise's model takes the forces to be. */
    String atRest() {
        return settings.added().stream().anyMatch(LoadRule::pushes)
                ? "at rest: no force other than weights, what is named as load, and the ground's"
                : "at rest: no force other than weights and the ground's, which is vertical";
    }

    /** The free components, and those of what was added. */
    List<String> withAddedFree(List<String> own) {
        List<String> all = new ArrayList<>(own);
        settings.added().forEach(load -> load.leavesFree().ifPresent(all::add));
        return List.copyOf(all);
    }

    /** Returns this exercise done by a lifter. */
    public Performance by(Lifter lifter) {
        return new Performance(this, lifter);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Exercise<?> that && name.equals(that.name) && settings.equals(that.settings);
    }

    @Override
    public int hashCode() {
        return settings.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
