package leverwright.mechanics.study;

import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Landmark;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.muscle.MuscleNumber;
import leverwright.mechanics.muscle.Muscles;
import org.jspecify.annotations.Nullable;

/**
 * A number that a study sets: a knob, a length or mass of the lifter, a number of the muscles, or anything that a cell can make a
 * performance of.
 *
 * <pre>{@code
 * lengthOf(THIGH)
 * areaOf(VASTI)
 * setting("Cable", kg(5), kg(40), load -> curlOn(cable(load)).by(ines))
 * }</pre>
 *
 * @param <Q> its kind
 */
public final class Variable<Q extends Measure<Q>> {
    private final String name;
    private final Unit unit;
    private final Q least;
    private final Q most;
    private final @Nullable Knob<Q> knob;
    private final ToDoubleFunction<Performance> present;
    private final Setter setter;
    private final boolean own;

    /** Puts an SI value into a performance. */
    private interface Setter {
        Performance set(Performance start, double si);
    }

    private Variable(
            String name,
            Unit unit,
            Q least,
            Q most,
            @Nullable Knob<Q> knob,
            ToDoubleFunction<Performance> present,
            Setter setter,
            boolean own) {
        this.own = own;
        this.name = name;
        this.unit = unit;
        this.least = least;
        this.most = most;
        this.knob = knob;
        this.present = present;
        this.setter = setter;
    }

    static <Q extends Measure<Q>> Variable<Q> of(Knob<Q> knob) {
        return new Variable<>(
                knob.name(),
                knob.unit(),
                knob.least(),
                knob.most(),
                knob,
                at -> at.exercise().decides(knob) ? at.exercise().get(knob).si() : Double.NaN,
                (at, si) -> at.withSi(knob, si),
                false);
    }

    /** Returns the length of a segment of the lifter, both sides alike. */
    public static Variable<Length> lengthOf(Segment segment) {
        return ofLifter(
                "Length of the " + segment.words(),
                Unit.CENTIMETRE,
                Length.of(0.05),
                Length.of(1),
                lifter -> lifter.body().segment(segment).length(),
                si -> lifter -> lifter.length(segment, Length.of(si)));
    }

    /** Returns the mass of a segment of the lifter: of one, for a pair. */
    public static Variable<Mass> massOf(Segment segment) {
        return ofLifter(
                "Mass of " + segment.oneOf(),
                Unit.KILOGRAM,
                Mass.of(0.1),
                Mass.of(150),
                lifter -> lifter.body().segment(segment).mass() / segment.sides(),
                si -> lifter -> lifter.mass(segment, Mass.of(si)));
    }

    /** Returns a place on the lifter's body, such as the ankle over the foot. */
    public static Variable<Length> placeOf(Landmark place) {
        return ofLifter(
                place.words(),
                Unit.CENTIMETRE,
                Length.of(0),
                Length.of(0.5),
                lifter -> lifter.body().place(place).si(),
                si -> lifter -> lifter.place(place, Length.of(si)));
    }

    /** Returns the lifter's stature; measured lengths stay. */
    public static Variable<Length> statureOfLifter() {
        return ofLifter(
                "Stature",
                Unit.CENTIMETRE,
                Length.of(Lifter.SHORTEST),
                Length.of(Lifter.TALLEST),
                lifter -> lifter.stature().si(),
                si -> lifter -> lifter.stature(Length.of(si)));
    }

    /** Returns the lifter's body mass. */
    public static Variable<Mass> massOfLifter() {
        return ofLifter(
                "Body mass",
                Unit.KILOGRAM,
                Mass.of(Lifter.LIGHTEST),
                Mass.of(Lifter.HEAVIEST),
                lifter -> lifter.bodyMass().si(),
                si -> lifter -> lifter.bodyMass(Mass.of(si)));
    }

    private static <Q extends Measure<Q>> Variable<Q> ofLifter(
            String name,
            Unit unit,
            Q least,
            Q most,
            ToDoubleFunction<Lifter> present,
            DoubleFunction<Function<Lifter, Lifter>> changes) {
        return new Variable<>(
                name,
                unit,
                least,
                most,
                null,
                at -> present.applyAsDouble(at.lifter()),
                (at, si) -> at.by(changes.apply(si).apply(at.lifter())),
                false);
    }

    /** Returns the area of some muscles over that on file: {@code sweep(areaOf(VASTI)).from(percent(50)).to(percent(150))}. */
    public static Variable<Ratio> areaOf(Muscles muscles) {
        return ofMuscles(MuscleNumber.of(MuscleNumber.Kind.AREA, muscles), Unit.PERCENT);
    }

    /** Returns the specific tension of some muscles over that on file. */
    public static Variable<Ratio> tensionOf(Muscles muscles) {
        return ofMuscles(MuscleNumber.of(MuscleNumber.Kind.TENSION, muscles), Unit.PERCENT);
    }

    /** Returns the arms of some muscles over those on file, about every joint that they cross; fibres lengthen with them. */
    public static Variable<Ratio> armOf(Muscles muscles) {
        return ofMuscles(MuscleNumber.of(MuscleNumber.Kind.ARM, muscles), Unit.PERCENT);
    }

    /** Returns the arms of some muscles about one joint over those on file; fibres lengthen with them. */
    public static Variable<Ratio> armOf(Muscles muscles, Joint joint) {
        return ofMuscles(MuscleNumber.armAbout(joint, muscles), Unit.PERCENT);
    }

    /** Returns the optimum length of some muscles' fibres over that on file. */
    public static Variable<Ratio> optimumLengthOf(Muscles muscles) {
        return ofMuscles(MuscleNumber.of(MuscleNumber.Kind.OPTIMUM_LENGTH, muscles), Unit.PERCENT);
    }

    /** Returns how much of the length factor of all muscles counts: at 0 they pull alike at every length. */
    public static Variable<Ratio> partOfLengthFactor() {
        return ofMuscles(MuscleNumber.of(MuscleNumber.Kind.LENGTH_FACTOR), Unit.PERCENT);
    }

    /** Returns the exponent of a sharing rule that sums powers; other rules have none and do not change. */
    public static Variable<Ratio> sharingExponent() {
        return ofMuscles(MuscleNumber.of(MuscleNumber.Kind.EXPONENT), Unit.ONE);
    }

    /** Returns what muscles against a joint's moment make of it, 0 to 100 %. */
    public static Variable<Ratio> coContraction() {
        return ofMuscles(MuscleNumber.of(MuscleNumber.Kind.CO_CONTRACTION), Unit.PERCENT);
    }

    private static Variable<Ratio> ofMuscles(MuscleNumber number, Unit unit) {
        return new Variable<>(
                number.words(),
                unit,
                Ratio.of(number.kind().least()),
                Ratio.of(number.kind().most()),
                null,
                at -> at.muscles().value(number).orElse(number.standard()),
                (at, si) -> at.withMuscles(number, si),
                false);
    }

    /**
     * Returns a setting of a cell's own: whatever it can make a performance of.
     *
     * @param name what it is, for print
     * @param least its smallest value
     * @param most its largest value
     * @param performance makes the performance at a value; called by several threads, so it must not change anything
     * @throws IllegalArgumentException if the name is blank or the limits do not rise
     */
    public static <Q extends Measure<Q>> Variable<Q> setting(
            String name, Q least, Q most, Function<? super Q, Performance> performance) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a setting needs a name, such as \"Cable\"");
        }
        Uncertainty.withinLimits(least, most);
        Dimension dimension = least.dimension();
        return new Variable<>(
                name,
                dimension == Dimension.LENGTH ? Unit.CENTIMETRE : dimension.shown(),
                least,
                most,
                null,
                at -> Double.NaN,
                (at, si) -> performance.apply(least.with(si, 0)),
                true);
    }

    /** A setting that makes no performance by itself: one of several that make one together. */
    static <Q extends Measure<Q>> Variable<Q> partOfOwn(String name, Q least, Q most) {
        return setting(name, least, most, alone -> {
            throw new IllegalStateException(name + " is set together with others only");
        });
    }

    /** Returns its name. */
    public String name() {
        return name;
    }

    Optional<Knob<Q>> knob() {
        return Optional.ofNullable(knob);
    }

    Unit unit() {
        return unit;
    }

    Q least() {
        return least;
    }

    Q most() {
        return most;
    }

    /** Returns a value of its kind. */
    Q value(double si) {
        return least.with(si, 0);
    }

    /** Returns it within other limits. */
    Variable<Q> between(Q from, Q to) {
        if (!(from.si() < to.si())
                || from.si() < least.si()
                || to.si() > most.si()
                || !Double.isFinite(to.si() - from.si())) {
            throw new IllegalArgumentException(name + " goes from " + text(from.si()) + " to " + text(to.si())
                    + "; allowed: from a smaller to a larger value within " + text(least.si()) + " to "
                    + text(most.si()));
        }
        return new Variable<>(name, unit, from, to, knob, present, setter, own);
    }

    /** Returns where it stands in a performance, SI; NaN where nothing says. */
    double present(Performance at) {
        return present.applyAsDouble(at);
    }

    /** Tells whether it is a cell's own setting, which puts a whole performance in the place of another. */
    boolean isOwn() {
        return own;
    }

    /** Tells whether a performance has it. */
    boolean isOf(Performance at) {
        return knob == null || at.exercise().knobs().contains(knob);
    }

    /**
     * Refuses a performance that does not have it.
     *
     * @throws IllegalArgumentException naming the knobs that there are
     */
    void requireOf(Performance at) {
        if (knob != null && !isOf(at)) {
            at.exercise().get(knob);
        }
    }

    /**
     * Returns a performance with a value of it.
     *
     * @throws IllegalArgumentException if the value may not be set
     */
    Performance set(Performance start, double si) {
        return setter.set(start, si);
    }

    /**
     * Returns a performance with a value of it: {@code areaOf(VASTI).in(squat.by(ines), percent(120))}.
     *
     * @throws IllegalArgumentException if the value may not be set
     */
    public Performance in(Performance start, Q value) {
        return set(start, value.si());
    }

    String text(double si) {
        return MeasureText.exact(value(si), unit);
    }

    /** Returns a value in print, rounded. */
    String rounded(double si) {
        return MeasureText.print(value(si), unit, 4);
    }

    @Override
    public String toString() {
        return name;
    }
}
