package leverwright.mechanics.muscle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.ReadingStatus;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.body.StrengthTest;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.numeric.Recent;
import leverwright.mechanics.numeric.Trigonometry;

/**
 * What muscles can pull and by which rule they share; an immutable value whose words each return another one.
 *
 * <p><b>Capacity</b> = area × specific tension × length factor × cos pennation × speed factor, each factor but the first two
 * with a switch. Length factor: 1 − ((l − 1)/0.5)² of the fibres' length over its optimum l, 0 at 0.5 and 1.5 of it (range as
 * drawn in Biomedical Engineering and Design Handbook, fig. 7.3, after Zajac; the parabola is assumed), held at 0.1 at least.
 * Fibres take 0.55 of what the integral of the arm says that the muscle lengthens: derived from Maganaris 1998 (fibres of the
 * calf 15 to 28 mm shorter from 15° dorsiflexion to 30° plantarflexion) over the integral of the Achilles arm there, 38.9 mm;
 * tendon and pennation take the rest; that all muscles do so is assumed, but for the vasti, whose fibres take all: with 0.55 the
 * extended knee would be stronger than the bent one, while people's is about half as strong (Sarabon 2021: 1.34 to 2.23 against
 * 2.92 to 3.45 N·m/kg). Speed factor: A. V. Hill's curve with
 * a/F0 = 0.25 (from memory) and 10 optimum lengths a second (PMC3217276, fig. 2), up to 1.4 when lengthening (from memory;
 * at most 1.5, the same figure).
 *
 * <p><b>Strength.</b> Areas and tensions of the sets on file make some actions weaker than people are; each muscle is therefore as
 * much stronger, or weaker, as tests of the lifter say, and where there is none, as published means of people say
 * ({@link #areasAlone} leaves these out).
 *
 * <p><b>Size.</b> Arms go with stature over 1.75 m; areas with body mass over 75 kg and 1.75 m over stature, and for women
 * times 0.757, the ratio of the pooled knee strengths per kilogram in Sarabon 2021, mid-range (2.08 to 2.74 over 2.92 to 3.45
 * N·m/kg); that all muscles follow it is assumed.
 */
public final class MuscleModel {
    /** What stands over every result without a tested lift. */
    public static final String POPULATION = "Population estimate: no lift of this lifter was tested.";

    private static final int LIFTERS = 2;
    private static final double STATURE = 1.75;
    private static final double MASS = 75;
    private static final double WOMEN = (2.08 + 2.74) / (2.92 + 3.45);
    private static final double WIDTH = 0.5;
    private static final double FIBRE_SHARE = 0.55;
    private static final double LEAST_FACTOR = 0.1;
    private static final double DEGREE = Math.PI / 180;

    private final MuscleData data;
    private final SharingRule rule;
    private final Factors factors;
    private final Speed speed;
    private final double coContraction;
    private final List<TestedStrength> tests;
    private final Draw draw;
    /** How much stronger than the data muscles of lifters are; models that differ in nothing that it rests on share it. */
    private final Recent<Lifter, double[]> calibrated;

    /**
     * What makes a muscle's capacity.
     *
     * @param byCapacity whether the rule divides by capacity
     * @param length whether the length of the fibres counts
     * @param pennation whether their slant counts
     * @param bending of the back from full extension for its published mean strength, deg; NaN: no published mean counts
     */
    private record Factors(boolean byCapacity, boolean length, boolean pennation, double bending) {}

    private MuscleModel(
            MuscleData data,
            SharingRule rule,
            Factors factors,
            Speed speed,
            double coContraction,
            List<TestedStrength> tests,
            Draw draw,
            Recent<Lifter, double[]> calibrated) {
        this.data = data;
        this.rule = rule;
        this.factors = factors;
        this.speed = speed;
        this.coContraction = coContraction;
        this.tests = List.copyOf(tests);
        this.draw = draw;
        this.calibrated = calibrated;
    }

    /**
     * Returns the model with the program's numbers, cubes of force over area, held still, nothing working against, as strong as
     * people on average were measured to be where that was read.
     */
    public static MuscleModel standard() {
        return Standard.MODEL;
    }

    /** Made when first asked for. */
    private static final class Standard {
        static final MuscleModel MODEL = new MuscleModel(
                MuscleData.standard(),
                SharingRule.cubic(),
                new Factors(false, true, true, PublishedStrength.MIDDLE_BENDING),
                Speed.STILL,
                0,
                List.of(),
                Draw.CENTRE,
                new Recent<>(LIFTERS));
    }

    private MuscleModel with(Factors other) {
        return new MuscleModel(data, rule, other, speed, coContraction, tests, draw, new Recent<>(LIFTERS));
    }

    private MuscleModel with(SharingRule otherRule, Speed otherSpeed, double otherContraction, Draw otherDraw) {
        return new MuscleModel(data, otherRule, factors, otherSpeed, otherContraction, tests, otherDraw, calibrated);
    }

    /** Returns the model with other numbers. */
    public MuscleModel data(MuscleData other) {
        return new MuscleModel(other, rule, factors, speed, coContraction, tests, draw, new Recent<>(LIFTERS));
    }

    /** Returns the model with another rule of sharing. */
    public MuscleModel rule(SharingRule other) {
        return with(other, speed, coContraction, draw);
    }

    /** Returns the model with the sum of (force/area)^p. */
    public MuscleModel power(double exponent) {
        return rule(SharingRule.power(exponent));
    }

    /** Returns the model in which muscles share as evenly as their arms allow. */
    public MuscleModel equalShare() {
        return rule(SharingRule.equalShare());
    }

    /** Returns the model in which as few muscles as can be do the work. */
    public MuscleModel singleMuscle() {
        return rule(SharingRule.singleMuscle());
    }

    /** Returns the model whose rule divides by capacity, which changes with length and speed, instead of area. */
    public MuscleModel dividedByCapacity() {
        return with(new Factors(true, factors.length, factors.pennation, factors.bending));
    }

    /** Returns the model in which a muscle can pull alike at every length. */
    public MuscleModel withoutLengthFactor() {
        return with(new Factors(factors.byCapacity, false, factors.pennation, factors.bending));
    }

    /** Returns the model in which fibres pull along the muscle. */
    public MuscleModel withoutPennation() {
        return with(new Factors(factors.byCapacity, factors.length, false, factors.bending));
    }

    /**
     * Returns the model as weak or strong as areas, specific tensions and arms alone make it, without the published means of
     * people's strength; tests of the lifter still count.
     */
    public MuscleModel areasAlone() {
        return with(new Factors(factors.byCapacity, factors.length, factors.pennation, Double.NaN));
    }

    /**
     * Returns the model whose back is as strong as people's on average with the back bent so far: the published curve rises from
     * 170 N·m stretched to 355 N·m bent 72° (men). Without this word the middle of it counts, 36°. A test of the lifter's back
     * takes its place. Moments and levers are those of the straight trunk all the same.
     *
     * @param fromExtension bending of the lumbar spine from full extension, 0° to 72°
     * @throws IllegalArgumentException if the bending lies outside what was measured
     */
    public MuscleModel backBent(Angle fromExtension) {
        double degrees = fromExtension.si() / DEGREE;
        if (!(degrees >= 0 && degrees <= PublishedStrength.MOST_BENDING + 1e-9)) {
            throw new IllegalArgumentException("the back is bent " + fromExtension
                    + " from full extension; allowed: 0° to 72°, where its strength was measured");
        }
        return with(new Factors(factors.byCapacity, factors.length, factors.pennation, degrees));
    }

    /**
     * Returns the model in which fibres shorten at a speed.
     *
     * @param lengthsASecond optimum lengths a second, positive shortening, −5 to 9
     */
    public MuscleModel shortening(double lengthsASecond) {
        if (!(lengthsASecond >= -5 && lengthsASecond <= 9)) {
            throw new IllegalArgumentException("fibres shorten at " + lengthsASecond
                    + " optimum lengths a second; allowed: -5 (lengthening) to 9");
        }
        return with(rule, Speed.all(lengthsASecond), coContraction, draw);
    }

    /**
     * Returns the model in which every muscle shortens or lengthens as the joints that it crosses turn: fibres take the
     * same part of arm times angular velocity as of the change of length.
     *
     * @param rates angular velocity of flexion of each axis, rad/s; axes that are left out stand still
     */
    public MuscleModel turning(Map<Axis, Double> rates) {
        return with(rule, Speed.turning(rates), coContraction, draw);
    }

    /**
     * Returns the model in which the muscles that work against a joint's moment make at least a part of it.
     *
     * @param ofMoment their moment over the net moment, 0 to 1
     */
    public MuscleModel coContraction(Ratio ofMoment) {
        if (!(ofMoment.si() >= 0 && ofMoment.si() <= 1)) {
            throw new IllegalArgumentException("co-contraction is " + ofMoment + "; allowed: 0 to 1 of the moment");
        }
        return with(rule, speed, ofMoment.si(), draw);
    }

    /** Returns the model with a dynamometer reading of the lifter: {@code tested(Axis.KNEE, newtonMetres(180), deg(60))}. */
    public MuscleModel tested(Axis axis, Moment moment, Angle angle) {
        return tested(new TestedStrength(axis, moment, angle, "dynamometer"));
    }

    /** Returns the model with one more test of the lifter, which takes the place of the published mean of that action. */
    public MuscleModel tested(TestedStrength test) {
        List<TestedStrength> more = new ArrayList<>(tests);
        more.add(test);
        return new MuscleModel(data, rule, factors, speed, coContraction, more, draw, new Recent<>(LIFTERS));
    }

    /** Returns the tests of a lifter that calibrate it: the model's own and the lifter's. */
    public List<TestedStrength> tests(Lifter lifter) {
        if (lifter.tests().isEmpty()) {
            return tests;
        }
        List<TestedStrength> all = new ArrayList<>(tests);
        for (StrengthTest test : lifter.tests()) {
            all.add(new TestedStrength(Axis.valueOf(test.joint().name()), test.moment(), test.angle(), test.how()));
        }
        return all;
    }

    /** Returns the published mean strengths that count for a lifter, for actions without a test. */
    public List<TestedStrength> means(Lifter lifter) {
        if (Double.isNaN(factors.bending)) {
            return List.of();
        }
        List<TestedStrength> tested = tests(lifter);
        return PublishedStrength.of(lifter, factors.bending).stream()
                .filter(mean -> tested.stream()
                        .noneMatch(test -> test.axis() == mean.axis()
                                && test.moment().si() > 0 == mean.moment().si() > 0))
                .toList();
    }

    /** Returns whether no test of this lifter is among what it rests on. */
    public boolean isPopulationEstimate(Lifter lifter) {
        return tests(lifter).isEmpty();
    }

    /** Returns what stands over results for a lifter: a population estimate, or calibrated. */
    public String basis(Lifter lifter) {
        return isPopulationEstimate(lifter) ? POPULATION : "Calibrated by tested strength.";
    }

    /** Returns the model with numbers drawn from their spreads, and for one draw in two another exponent from 2 to 5. */
    public MuscleModel drawn(RandomStream random, Sex sex) {
        Draw other = Draw.from(random, data, sex);
        double exponent = 2 + random.nextIndex(4);
        SharingRule drawnRule =
                rule instanceof SharingRule.Power && random.nextUnit() < 0.5 ? SharingRule.power(exponent) : rule;
        return with(drawnRule, speed, coContraction, other);
    }

    /** Returns the model with areas, arms and tensions drawn from their spreads, its rule kept. */
    public MuscleModel drawnNumbers(RandomStream random, Sex sex) {
        return with(rule, speed, coContraction, Draw.from(random, data, sex));
    }

    /** Returns the model with numbers drawn already. */
    MuscleModel with(Draw other) {
        return with(rule, speed, coContraction, other);
    }

    /** Returns the model with numbers that a study has set in place of those on file; of a rule without an exponent that one stays. */
    public MuscleModel changed(MuscleChanges changes) {
        if (changes.isEmpty()) {
            return this;
        }
        OptionalDouble exponent = changes.whole(MuscleNumber.Kind.EXPONENT);
        boolean powers = rule instanceof SharingRule.Power && exponent.isPresent();
        return with(
                powers ? SharingRule.power(exponent.getAsDouble()) : rule,
                speed,
                changes.whole(MuscleNumber.Kind.CO_CONTRACTION).orElse(coContraction),
                draw.changed(changes));
    }

    /** Returns the rule of sharing. */
    public SharingRule rule() {
        return rule;
    }

    /** Returns what a force is divided by in the rule: "area" or "capacity". */
    public String divisor() {
        return factors.byCapacity ? "capacity" : "area";
    }

    /** Returns the co-contraction knob. */
    public Ratio coContraction() {
        return Ratio.of(coContraction);
    }

    /** Returns the numbers. */
    public MuscleData data() {
        return data;
    }

    double speedFactor() {
        return speed.factor(0);
    }

    /** How fast a muscle shortens by the turning of one axis, in m/s of its arm; size is left out, as it cancels. */
    double shortening(Axis axis, double arm) {
        return -axis.lengthens() * arm * speed.rate(axis);
    }

    /** Returns how much of a muscle's change of length its fibres take: all in the vasti, 0.55 elsewhere. */
    public static double fibreShare(Muscle muscle) {
        return MuscleGroup.VASTI.members().contains(muscle) ? 1 : FIBRE_SHARE;
    }

    /** The speed factor of a muscle. */
    double speedFactor(Muscle muscle, double shortening, double optimumCentimetres) {
        return speed.factor(fibreShare(muscle) * shortening / (optimumCentimetres / 100));
    }

    /**
     * Returns what each muscle of some axes could do at these angles.
     *
     * @param angles flexion of each axis, rad; muscles of no such axis are left out
     * @throws IllegalArgumentException if two tests of one action contradict each other
     */
    public List<MuscleState> states(Lifter lifter, Map<Axis, Double> angles) {
        double[] strengths = strengths(lifter);
        List<MuscleState> states = new ArrayList<>();
        for (Muscle muscle : Muscle.values()) {
            state(lifter, muscle, angles, strengths[muscle.ordinal()]).ifPresent(states::add);
        }
        return states;
    }

    private Optional<MuscleState> state(Lifter lifter, Muscle muscle, Map<Axis, Double> angles, double tested) {
        Sex sex = lifter.sex();
        MuscleChanges changes = draw.changes();
        Map<Axis, Double> arms = new EnumMap<>(Axis.class);
        List<String> marks = new ArrayList<>();
        double size = size(lifter);
        double longer = 0;
        double shortening = 0;
        ReadingStatus worst = ReadingStatus.READ_TWICE;
        for (Map.Entry<Axis, Double> at : angles.entrySet()) {
            Axis axis = at.getKey();
            Optional<ArmCurve> found = data.curve(muscle, axis, sex);
            if (found.isEmpty()) {
                continue;
            }
            ArmCurve curve = found.get();
            double angle = at.getValue();
            double arm = curve.at(angle);
            shortening += shortening(axis, arm * changes.arm(muscle, axis));
            arms.put(axis, shifted(muscle, axis, arm, curve.spread()) * size);
            worst = worst.worse(curve.status());
            boolean single = curve.first() == curve.last();
            if (curve.isBeyond(angle) && !single) {
                marks.add("arm about the " + axis.joint().words() + " extrapolated");
            }
            List<MuscleData.Row> optimum = data.of(muscle, axis.name(), "optimum_angle", sex);
            if (!optimum.isEmpty()) {
                double from = optimum.get(0).value() * DEGREE;
                longer += axis.lengthens() * curve.lengthening(from, angle) * size * changes.arm(muscle, axis);
            }
        }
        if (arms.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(state(lifter, muscle, arms, longer, shortening, marks, worst, tested));
    }

    private MuscleState state(
            Lifter lifter,
            Muscle muscle,
            Map<Axis, Double> arms,
            double longer,
            double shortening,
            List<String> marks,
            ReadingStatus armStatus,
            double tested) {
        Sex sex = lifter.sex();
        MuscleData.Row area = data.one(muscle, "area", sex);
        MuscleData.Row tension = data.one(muscle, "tension", sex);
        double optimum = optimum(muscle, data.one(muscle, "optimum_length", sex).value());
        double angle = data.one(muscle, "pennation", sex).value() * DEGREE;
        double stature = size(lifter);
        double squareMetres = area(lifter, muscle, area.value());
        double length = 1 + fibreShare(muscle) * longer / (optimum / 100 * stature);
        double off = (length - 1) / WIDTH;
        double byLength = byLength(off);
        if (factors.length && 1 - off * off < LEAST_FACTOR) {
            marks.add("length factor held at 0.1");
        }
        double slant = Trigonometry.cosine(angle);
        double cosine = factors.pennation ? slant : 1;
        double pascals = tension.value() * 1e4 * strength(muscle) * tested;
        ReadingStatus worst = armStatus.worse(area.status()).worse(tension.status());
        if (area.status() == ReadingStatus.FROM_MEMORY || tension.status() == ReadingStatus.FROM_MEMORY) {
            marks.add("area or tension from memory");
        }
        if (armStatus == ReadingStatus.FROM_MEMORY) {
            marks.add("an arm from memory");
        }
        return new MuscleState(
                muscle,
                new LinkedHashMap<>(arms),
                squareMetres,
                pascals,
                length,
                byLength,
                angle,
                cosine,
                speedFactor(muscle, shortening, optimum),
                capacity(lifter, muscle, squareMetres, tension.value(), tested, longer, shortening, optimum, slant),
                worst,
                List.copyOf(marks));
    }

    /** How much stronger than the data each muscle of a lifter is, by its place. */
    double[] strengths(Lifter lifter) {
        return calibrated.get(lifter, () -> {
            Factors plain = new Factors(false, factors.length, factors.pennation, Double.NaN);
            MuscleModel bare =
                    new MuscleModel(data, rule, plain, Speed.STILL, 0, List.of(), Draw.CENTRE, new Recent<>(LIFTERS));
            return Calibration.of(bare, lifter, tests(lifter), means(lifter));
        });
    }

    /** What each muscle makes of one action at an angle, at its capacity, N·m by its place; without any test or mean. */
    double[] pulls(Lifter lifter, Axis axis, boolean positive, double angle) {
        Map<Axis, Double> angles = new EnumMap<>(Axis.class);
        angles.put(axis, angle);
        double[] ones = new double[Muscle.values().length];
        Arrays.fill(ones, 1);
        return new QuickForces(this, lifter, angles, angles, ones).greatestMoments(positive);
    }

    /** About how many axes of the side view, the low back's among them, a muscle works. */
    int axes(Lifter lifter, Muscle muscle) {
        int count = 0;
        for (Axis axis : Axis.values()) {
            count += axis.ordinal() <= Axis.WRIST.ordinal()
                            && data.curve(muscle, axis, lifter.sex()).isPresent()
                    ? 1
                    : 0;
        }
        return Math.max(1, count);
    }

    /**
     * Returns the greatest moment about one axis alone, held still, with every muscle of that action at its capacity, N·m.
     *
     * @param positive whether of the axis' positive action
     * @param angle flexion, rad; muscles of two joints at their optimum angle of the other
     */
    public double greatestMoment(Lifter lifter, Axis axis, boolean positive, double angle) {
        Map<Axis, Double> angles = new EnumMap<>(Axis.class);
        angles.put(axis, angle);
        double sum = Arrays.stream(
                        new QuickForces(this, lifter, angles, angles, strengths(lifter)).greatestMoments(positive))
                .sum();
        if (sum == 0) {
            throw new IllegalArgumentException(
                    "no muscle on file makes " + axis.action(positive ? 1 : -1) + "; test another action");
        }
        return sum;
    }

    /**
     * Returns how a lifter's muscles share moments.
     *
     * @param moments N·m of each axis' positive action; per side, low back in total
     * @param angles flexion of each of these axes, rad
     */
    public MuscleForces share(Lifter lifter, Map<Axis, Double> moments, Map<Axis, Double> angles) {
        return MuscleForces.of(this, states(lifter, angles), moments);
    }

    /**
     * Returns how muscles share moments whose states are known already.
     *
     * @param states as {@link #states} gave them for the angles
     * @param moments N·m of each axis' positive action; per side, low back in total
     */
    public MuscleForces share(List<MuscleState> states, Map<Axis, Double> moments) {
        return MuscleForces.of(this, states, moments);
    }

    double divisorOf(MuscleState state) {
        return divisorOf(state.area(), state.capacity());
    }

    double divisorOf(double area, double capacity) {
        return factors.byCapacity ? capacity : area;
    }

    /**
     * Returns forces without words and checks, where the rule allows the quick way.
     *
     * @param moments N·m of each axis' positive action; per side, low back in total
     * @param angles flexion of each of these axes, rad
     */
    public Optional<QuickForces> quick(Lifter lifter, Map<Axis, Double> moments, Map<Axis, Double> angles) {
        boolean plain = coContraction == 0 && rule instanceof SharingRule.Power power && power.exponent() == 3;
        return plain
                ? Optional.of(new QuickForces(this, lifter, moments, angles, strengths(lifter)))
                : Optional.empty();
    }

    MuscleTable table(Sex sex) {
        return data.table(sex);
    }

    /** How long a lifter's arms are, over those of the data. */
    double size(Lifter lifter) {
        return lifter.stature().si() / STATURE;
    }

    /** An arm moved within its half width by the draw, unless it would turn round. */
    double shifted(Muscle muscle, Axis axis, double arm, double spread) {
        double shifted = arm + draw.arm(muscle, axis) * spread;
        return (shifted * arm > 0 ? shifted : arm) * draw.changes().arm(muscle, axis);
    }

    /** A muscle's area scaled to the lifter, m². */
    double area(Lifter lifter, Muscle muscle, double squareCentimetres) {
        double body = lifter.bodyMass().si() / MASS / size(lifter) * (lifter.sex() == Sex.FEMALE ? WOMEN : 1);
        double sides = muscle.isOfTheTrunk() ? 2 : 1;
        return squareCentimetres * 1e-4 * body * sides * draw.changes().area(muscle);
    }

    /** By what the product of area and tension is multiplied beside the area. */
    private double strength(Muscle muscle) {
        return draw.strength(muscle) * draw.changes().tension(muscle);
    }

    /** A muscle's optimum length as set, in the unit given. */
    double optimum(Muscle muscle, double onFile) {
        return onFile * draw.changes().optimum(muscle);
    }

    /** How far an arm is set off the one on file. */
    double armFactor(Muscle muscle, Axis axis) {
        return draw.changes().arm(muscle, axis);
    }

    /** The length factor at a length so many half widths off its optimum. */
    private double byLength(double off) {
        double factor = factors.length ? Math.max(LEAST_FACTOR, 1 - off * off) : 1;
        double part = draw.changes().lengthPart();
        return part == 1 ? factor : 1 - part * (1 - factor);
    }

    /** What a muscle can pull, N. */
    double capacity(
            Lifter lifter,
            Muscle muscle,
            double area,
            double tension,
            double tested,
            double longer,
            double shortening,
            double optimum,
            double cosine) {
        double length = 1 + fibreShare(muscle) * longer / (optimum / 100 * size(lifter));
        double off = (length - 1) / WIDTH;
        double byLength = byLength(off);
        double pascals = tension * 1e4 * strength(muscle) * tested;
        return area * pascals * byLength * (factors.pennation ? cosine : 1) * speedFactor(muscle, shortening, optimum);
    }
}
