package leverwright.mechanics.body;

import java.util.List;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Ratio;

/**
 * A person who lifts: sex, stature, body mass, one segment table, and whatever was measured instead. Immutable; every word
 * returns a new lifter.
 *
 * <pre>{@code
 * var ines = lifter("Ines").of(FEMALE, cm(178), kg(71));
 * var oda = lifter("Oda").of(FEMALE, cm(169), kg(62)).segments(WINTER).thigh(cm(44.5));
 * }</pre>
 *
 * <p><b>Masses.</b> The trunk is what the scale leaves: body mass less all other segments, so that the parts always sum to
 * the body mass, also where a table's rounding or a measured mass would change it. Only when the mass of the trunk itself is
 * given does the sum become the body mass, and a note says so.
 *
 * <p><b>Lengths.</b> A measured length moves the mass centre and the radius of gyration of that segment in proportion; no
 * other segment changes, so that stature and the standing chain may then differ.
 */
public final class Lifter {
    /** Least stature, m: below it no adult is on record (from memory), so that the tables' adults cannot be scaled. */
    public static final double SHORTEST = 0.5;
    /** Greatest stature, m: above it no adult is on record (2.72 m, from memory). */
    public static final double TALLEST = 2.8;
    /** Least body mass, kg: below it lie children, whose proportions are not those of the tables' adults. */
    public static final double LIGHTEST = 20;
    /** Greatest body mass, kg: beyond it mass centres of the tables' lean adults say nothing. */
    public static final double HEAVIEST = 350;

    private static final double SHORTEST_LIMBS = 0.8;
    private static final double LONGEST_LIMBS = 1.25;

    private final LifterInputs inputs;
    private final Body body;

    private Lifter(LifterInputs inputs) {
        this.inputs = inputs;
        this.body = new BodyMaker(inputs).make();
    }

    /** Returns the lifter with these inputs. */
    static Lifter from(LifterInputs inputs) {
        return new Lifter(inputs);
    }

    /** A lifter's name, waiting for the body. */
    public static final class Named {
        private final String name;

        private Named(String name) {
            this.name = name;
        }

        /**
         * Returns the lifter with segments after de Leva 1996.
         *
         * @param stature {@value #SHORTEST} to {@value #TALLEST} m
         * @param bodyMass {@value #LIGHTEST} to {@value #HEAVIEST} kg
         * @throws IllegalArgumentException if a value is outside its range or the name is blank
         */
        public Lifter of(Sex sex, Length stature, Mass bodyMass) {
            return new Lifter(LifterInputs.of(name, sex, stature, bodyMass));
        }
    }

    /** Begins a lifter with a name for print. */
    public static Named lifter(String name) {
        return new Named(name);
    }

    /** Returns this lifter by another segment table; measured values stay. */
    public Lifter segments(SegmentTable table) {
        return new Lifter(inputs.withTable(table));
    }

    /** Returns this lifter with another stature; measured lengths stay. */
    public Lifter stature(Length stature) {
        return new Lifter(inputs.withStature(stature));
    }

    /** Returns this lifter with another body mass; measured masses stay. */
    public Lifter bodyMass(Mass mass) {
        return new Lifter(inputs.withBodyMass(mass));
    }

    /**
     * Returns this lifter with the measured length of a segment.
     *
     * @param length between the ends that {@link Segment} names, 1 cm up to the stature
     * @throws IllegalArgumentException if the length is outside that range
     */
    public Lifter length(Segment segment, Length length) {
        return new Lifter(inputs.withLength(segment, length));
    }

    /**
     * Returns this lifter with the measured mass of a segment: of one, for a pair. The trunk takes up the difference.
     *
     * @param mass greater than 0; all of them must leave the trunk at least {@value BodyMaker#LEAST_TRUNK} of body mass
     * @throws IllegalArgumentException if the mass is outside that range
     */
    public Lifter mass(Segment segment, Mass mass) {
        return new Lifter(inputs.withMass(segment, mass));
    }

    /**
     * Returns this lifter with the measured place of a mass centre.
     *
     * @param fromStart from the start that {@link Segment} names, along the axis, 0 up to the segment's length
     * @throws IllegalArgumentException if the centre lies outside the segment
     */
    public Lifter centre(Segment segment, Length fromStart) {
        return new Lifter(inputs.withCentre(segment, fromStart));
    }

    /** Returns this lifter with a measured foot length, heel to longest toe. */
    public Lifter foot(Length length) {
        return length(Segment.FOOT, length);
    }

    /** Returns this lifter with a measured shank length, knee to ankle. */
    public Lifter shank(Length length) {
        return length(Segment.SHANK, length);
    }

    /** Returns this lifter with a measured thigh length, hip to knee. */
    public Lifter thigh(Length length) {
        return length(Segment.THIGH, length);
    }

    /** Returns this lifter with a measured trunk length, hip to shoulder. */
    public Lifter trunk(Length length) {
        return length(Segment.TRUNK, length);
    }

    /** Returns this lifter with a measured upper arm length, shoulder to elbow. */
    public Lifter upperArm(Length length) {
        return length(Segment.UPPER_ARM, length);
    }

    /** Returns this lifter with a measured forearm length, elbow to wrist. */
    public Lifter forearm(Length length) {
        return length(Segment.FOREARM, length);
    }

    /** Returns this lifter with a measured hand length, wrist to tip of the middle finger. */
    public Lifter hand(Length length) {
        return length(Segment.HAND, length);
    }

    /**
     * Returns this lifter with limbs that are longer or shorter than the table's by a ratio: foot and hand stay, and the trunk
     * takes up what the legs gain, so that the stature stays.
     *
     * @param ratio of thigh, shank, upper arm and forearm to the table's lengths, 0.8 to 1.25
     * @throws IllegalArgumentException if the ratio is outside that range
     */
    public Lifter limbs(Ratio ratio) {
        if (!(ratio.si() >= SHORTEST_LIMBS && ratio.si() <= LONGEST_LIMBS)) {
            throw new IllegalArgumentException("limbs of " + name() + " are " + ratio.si()
                    + " of the table's; allowed: " + SHORTEST_LIMBS + " to " + LONGEST_LIMBS
                    + "; give single lengths in cm for more");
        }
        Lifter changed = this;
        double legs = 0;
        for (Segment segment : List.of(Segment.THIGH, Segment.SHANK, Segment.UPPER_ARM, Segment.FOREARM)) {
            double usual = tableLength(segment);
            changed = changed.length(segment, Length.of(usual * ratio.si()));
            if (segment == Segment.THIGH || segment == Segment.SHANK) {
                legs += usual * (ratio.si() - 1);
            }
        }
        return changed.trunk(Length.of(tableLength(Segment.TRUNK) - legs));
    }

    private double tableLength(Segment segment) {
        return table().proportions(sex()).row(segment).length().value()
                * stature().si();
    }

    /**
     * Returns this lifter with a measured place on the body.
     *
     * @param distance greater than 0 and within the segment it lies on
     * @throws IllegalArgumentException if the place lies off its segment
     */
    public Lifter place(Landmark landmark, Length distance) {
        return new Lifter(inputs.withPlace(landmark, distance));
    }

    /** Returns this lifter with the ankle so far ahead of the back of the heel. */
    public Lifter ankleFromHeel(Length distance) {
        return place(Landmark.ANKLE_FROM_HEEL, distance);
    }

    /** Returns this lifter with the ankle so high above the sole. */
    public Lifter ankleHeight(Length height) {
        return place(Landmark.ANKLE_HEIGHT, height);
    }

    /** Returns this lifter with the low back so far above the hip, on the line from hip to shoulder. */
    public Lifter lowBackAboveHip(Length distance) {
        return place(Landmark.LOW_BACK_ABOVE_HIP, distance);
    }

    /**
     * Returns this lifter at an age; below 18 a note goes to every result.
     *
     * @param years full years, 0 to 120
     */
    public Lifter aged(int years) {
        return new Lifter(inputs.withAge(years));
    }

    /** Returns this lifter with something that must be said on every result. */
    public Lifter with(Circumstance circumstance) {
        return new Lifter(inputs.with(circumstance));
    }

    /**
     * Returns this lifter with a measured strength, by which every word about muscles then calibrates them: {@code
     * ines.tested(KNEE, newtonMetres(180), deg(60))}.
     *
     * @param joint about which, seen from the side
     * @param moment one side, held still (low back: in total); positive for the joint's positive action: extension,
     *     plantarflexion at the ankle; negative for flexion
     * @param angle flexion of the joint (dorsiflexion at the ankle) at which it was measured
     * @throws IllegalArgumentException if the moment is 0 or beyond 2000 N·m, or the joint is the neck
     */
    public Lifter tested(Joint joint, Moment moment, Angle angle) {
        return tested(new StrengthTest(joint, moment, angle, "dynamometer"));
    }

    /** Returns this lifter with one more measured strength. */
    public Lifter tested(StrengthTest test) {
        return new Lifter(inputs.with(test));
    }

    /** Returns the measured strengths of this lifter, in the order in which they were given. */
    public List<StrengthTest> tests() {
        return inputs.tests();
    }

    /** Returns the name for print. */
    public String name() {
        return inputs.name();
    }

    /** Returns the sex, which chooses the sample of the tables. */
    public Sex sex() {
        return inputs.sex();
    }

    /** Returns the stature as given, with its band. */
    public Length stature() {
        return inputs.stature();
    }

    /** Returns the body mass as given, with its band; {@link Body#mass} is the sum of the segments. */
    public Mass bodyMass() {
        return inputs.bodyMass();
    }

    /** Returns the segment table. */
    public SegmentTable table() {
        return inputs.table();
    }

    /** Returns every number about this lifter that was given with an error; defaults of the tables are not among them. */
    public List<UncertainInput> uncertainInputs() {
        return UncertainInput.of(inputs);
    }

    /** Returns the segments and places made from all this. */
    public Body body() {
        return body;
    }

    /** Returns what must be said beside every result about this lifter. */
    public List<Note> notes() {
        return body.notes();
    }

    /** Returns every number of the body with its source. */
    public List<SourcedValue> numbers() {
        return body.numbers();
    }

    @Override
    public String toString() {
        return inputs.name() + ", " + inputs.sex().group() + "'s sample, " + inputs.stature() + ", " + inputs.bodyMass()
                + ", segments after " + inputs.table().name();
    }
}
