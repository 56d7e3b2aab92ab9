package leverwright.mechanics.muscle;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.ReadingStatus;
import leverwright.mechanics.body.Sex;
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
 * tendon and pennation take the rest; that all muscles do so is assumed. Speed factor: A. V. Hill's curve with
 * a/F0 = 0.25 (from memory) and 10 optimum lengths a second (PMC3217276, fig. 2), up to 1.4 when lengthening (from memory;
 * at most 1.5, the same figure).
 *
 * <p><b>Size.</b> Arms go with stature over 1.75 m; areas with body mass over 75 kg and 1.75 m over stature, and for women
 * times 0.757, the ratio of the pooled knee strengths per kilogram in Sarabon 2021, mid-range (2.08 to 2.74 over 2.92 to 3.45
 * N·m/kg); that all muscles follow it is assumed.
 */
public final class MuscleModel {
    /** What stands over every result without a tested lift. */
    public static final String POPULATION = "Population estimate: no lift of this lifter was tested.";

    private static final double STATURE = 1.75;
    private static final double MASS = 75;
    private static final double WOMEN = (2.08 + 2.74) / (2.92 + 3.45);
    private static final double WIDTH = 0.5;
    private static final double FIBRE_SHARE = 0.55;
    private static final double LEAST_FACTOR = 0.1;
    private static final double CONTRADICTION = 1.35;
    private static final double DEGREE = Math.PI / 180;

    private final MuscleData data;
    private final SharingRule rule;
    private final boolean byCapacity;
    private final boolean lengthFactor;
    private final boolean pennation;
    private final Speed speed;
    private final double coContraction;
    private final List<TestedStrength> tests;
    private final Draw draw;
    /** What tests say of lifters; a drawn model has it from the one that it was drawn from. */
    private final Recent<Lifter, Map<String, Double>> calibrated;

    private MuscleModel(
            MuscleData data,
            SharingRule rule,
            boolean byCapacity,
            boolean lengthFactor,
            boolean pennation,
            Speed speed,
            double coContraction,
            List<TestedStrength> tests,
            Draw draw) {
        this(data, rule, byCapacity, lengthFactor, pennation, speed, coContraction, tests, draw, new Recent<>(2));
    }

    private MuscleModel(
            MuscleData data,
            SharingRule rule,
            boolean byCapacity,
            boolean lengthFactor,
            boolean pennation,
            Speed speed,
            double coContraction,
            List<TestedStrength> tests,
            Draw draw,
            Recent<Lifter, Map<String, Double>> calibrated) {
        this.calibrated = calibrated;
        this.data = data;
        this.rule = rule;
        this.byCapacity = byCapacity;
        this.lengthFactor = lengthFactor;
        this.pennation = pennation;
        this.speed = speed;
        this.coContraction = coContraction;
        this.tests = List.copyOf(tests);
        this.draw = draw;
    }

    /** Returns the model with the program's numbers, cubes of force over area, held still, nothing working against. */
    public static MuscleModel standard() {
        return new MuscleModel(
                MuscleData.standard(), SharingRule.cubic(), false, true, true, Speed.STILL, 0, List.of(), Draw.CENTRE);
    }

    /** Returns the model with other numbers. */
    public MuscleModel data(MuscleData other) {
        return new MuscleModel(other, rule, byCapacity, lengthFactor, pennation, speed, coContraction, tests, draw);
    }

    /** Returns the model with another rule of sharing. */
    public MuscleModel rule(SharingRule other) {
        return new MuscleModel(data, other, byCapacity, lengthFactor, pennation, speed, coContraction, tests, draw);
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
        return new MuscleModel(data, rule, true, lengthFactor, pennation, speed, coContraction, tests, draw);
    }

    /** Returns the model in which a muscle can pull alike at every length. */
    public MuscleModel withoutLengthFactor() {
        return new MuscleModel(data, rule, byCapacity, false, pennation, speed, coContraction, tests, draw);
    }

    /** Returns the model in which fibres pull along the muscle. */
    public MuscleModel withoutPennation() {
        return new MuscleModel(data, rule, byCapacity, lengthFactor, false, speed, coContraction, tests, draw);
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
        return new MuscleModel(
                data, rule, byCapacity, lengthFactor, pennation, Speed.all(lengthsASecond), coContraction, tests, draw);
    }

    /**
     * Returns the model in which every muscle shortens or lengthens as the joints that it crosses turn: fibres take 0.55 of arm
     * times angular velocity, as they do of the change of length.
     *
     * @param rates angular velocity of flexion of each axis, rad/s; axes that are left out stand still
     */
    public MuscleModel turning(Map<Axis, Double> rates) {
        return new MuscleModel(
                data,
                rule,
                byCapacity,
                lengthFactor,
                pennation,
                Speed.turning(rates),
                coContraction,
                tests,
                draw,
                calibrated);
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
        return new MuscleModel(data, rule, byCapacity, lengthFactor, pennation, speed, ofMoment.si(), tests, draw);
    }

    /** Returns the model with a dynamometer reading of the lifter: {@code tested(Axis.KNEE, newtonMetres(180), deg(60))}. */
    public MuscleModel tested(Axis axis, Moment moment, Angle angle) {
        return tested(new TestedStrength(axis, moment, angle, "dynamometer"));
    }

    /** Returns the model with one more test of the lifter. */
    public MuscleModel tested(TestedStrength test) {
        List<TestedStrength> more = new ArrayList<>(tests);
        more.removeIf(mean -> mean.how().startsWith(PublishedStrength.MARK)
                && mean.axis() == test.axis()
                && mean.moment().si() > 0 == test.moment().si() > 0);
        more.add(test);
        return new MuscleModel(data, rule, byCapacity, lengthFactor, pennation, speed, coContraction, more, draw);
    }

    /**
     * Returns the model with muscles as strong as people on average were measured to be, where that was read: knee, ankle,
     * elbow, extension of the back, flexion and horizontal adduction of the shoulder. Still a population estimate; a test of
     * this lifter that is added stands in the place of the mean.
     */
    public MuscleModel publishedStrength(Lifter lifter) {
        List<TestedStrength> more = new ArrayList<>(tests);
        for (TestedStrength mean : PublishedStrength.of(lifter)) {
            boolean known = tests.stream()
                    .anyMatch(test -> test.axis() == mean.axis()
                            && test.moment().si() > 0 == mean.moment().si() > 0);
            if (!known) {
                more.add(mean);
            }
        }
        return new MuscleModel(data, rule, byCapacity, lengthFactor, pennation, speed, coContraction, more, draw);
    }

    /** Returns whether no test of this lifter is among what it rests on. */
    public boolean isPopulationEstimate() {
        return tests.stream().allMatch(test -> test.how().startsWith(PublishedStrength.MARK));
    }

    /** Returns the model with numbers drawn from their spreads, and for one draw in two another exponent from 2 to 5. */
    public MuscleModel drawn(RandomStream random, Sex sex) {
        Draw other = Draw.from(random, data, sex);
        double exponent = 2 + random.nextIndex(4);
        SharingRule drawnRule =
                rule instanceof SharingRule.Power && random.nextUnit() < 0.5 ? SharingRule.power(exponent) : rule;
        return new MuscleModel(
                data, drawnRule, byCapacity, lengthFactor, pennation, speed, coContraction, tests, other);
    }

    /** Returns the model with numbers drawn already. */
    MuscleModel with(Draw other) {
        return new MuscleModel(
                data, rule, byCapacity, lengthFactor, pennation, speed, coContraction, tests, other, calibrated);
    }

    /** Returns the model with numbers that a study has set in place of those on file; of a rule without an exponent that one stays. */
    public MuscleModel changed(MuscleChanges changes) {
        if (changes.isEmpty()) {
            return this;
        }
        OptionalDouble exponent = changes.whole(MuscleNumber.Kind.EXPONENT);
        boolean powers = rule instanceof SharingRule.Power && exponent.isPresent();
        return new MuscleModel(
                data,
                powers ? SharingRule.power(exponent.getAsDouble()) : rule,
                byCapacity,
                lengthFactor,
                pennation,
                speed,
                changes.whole(MuscleNumber.Kind.CO_CONTRACTION).orElse(coContraction),
                tests,
                draw.changed(changes),
                calibrated);
    }

    /** Returns the rule of sharing. */
    public SharingRule rule() {
        return rule;
    }

    /** Returns what a force is divided by in the rule: "area" or "capacity". */
    public String divisor() {
        return byCapacity ? "capacity" : "area";
    }

    /** Returns the co-contraction knob. */
    public Ratio coContraction() {
        return Ratio.of(coContraction);
    }

    /** Returns the tests that calibrate it. */
    public List<TestedStrength> tests() {
        return tests;
    }

    /** Returns the numbers. */
    public MuscleData data() {
        return data;
    }

    double speedFactor() {
        return speed.factor(0);
    }

    /** How fast a muscle shortens by the turning of one axis, in 0.55 m/s of its arm; size is left out, as it cancels. */
    double shortening(Axis axis, double arm) {
        return -axis.lengthens() * arm * speed.rate(axis);
    }

    /** The speed factor of a muscle. */
    double speedFactor(double shortening, double optimumCentimetres) {
        return speed.factor(FIBRE_SHARE * shortening / (optimumCentimetres / 100));
    }

    /**
     * Returns what each muscle of some axes could do at these angles.
     *
     * @param angles flexion of each axis, rad; muscles of no such axis are left out
     * @throws IllegalArgumentException if two tests of one action contradict each other
     */
    public List<MuscleState> states(Lifter lifter, Map<Axis, Double> angles) {
        Map<String, Double> strengths = calibrated.get(lifter, () -> calibrations(lifter));
        List<MuscleState> states = new ArrayList<>();
        for (Muscle muscle : Muscle.values()) {
            state(lifter, muscle, angles, strengths).ifPresent(states::add);
        }
        return states;
    }

    private Optional<MuscleState> state(
            Lifter lifter, Muscle muscle, Map<Axis, Double> angles, Map<String, Double> strengths) {
        Sex sex = lifter.sex();
        MuscleChanges changes = draw.changes();
        Map<Axis, Double> arms = new EnumMap<>(Axis.class);
        List<String> marks = new ArrayList<>();
        double size = size(lifter);
        double longer = 0;
        double shortening = 0;
        ReadingStatus worst = ReadingStatus.READ_TWICE;
        double factor = Double.NaN;
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
            double tested = strengths.getOrDefault(axis.name() + (arm > 0 ? "+" : "-"), Double.NaN);
            factor = Double.isNaN(factor) ? tested : factor;
        }
        if (arms.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                state(lifter, muscle, arms, longer, shortening, marks, worst, Double.isNaN(factor) ? 1 : factor));
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
        double length = 1 + FIBRE_SHARE * longer / (optimum / 100 * stature);
        double off = (length - 1) / WIDTH;
        double byLength = byLength(off);
        if (lengthFactor && 1 - off * off < LEAST_FACTOR) {
            marks.add("length factor held at 0.1");
        }
        double slant = Trigonometry.cosine(angle);
        double cosine = pennation ? slant : 1;
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
                speedFactor(shortening, optimum),
                capacity(lifter, muscle, squareMetres, tension.value(), tested, longer, shortening, optimum, slant),
                worst,
                List.copyOf(marks));
    }

    /** By axis and direction: tested moment over what the model makes there. */
    private Map<String, Double> calibrations(Lifter lifter) {
        Map<String, Double> factors = new LinkedHashMap<>();
        Map<String, TestedStrength> first = new LinkedHashMap<>();
        for (TestedStrength test : tests) {
            MuscleModel untested = new MuscleModel(
                    data, rule, byCapacity, lengthFactor, pennation, Speed.STILL, 0, List.of(), Draw.CENTRE);
            double most = untested.greatestMoment(
                    lifter, test.axis(), test.moment().si() > 0, test.angle().si());
            String key = test.axis().name() + (test.moment().si() > 0 ? "+" : "-");
            double factor = Math.abs(test.moment().si()) / most;
            Double before = factors.get(key);
            if (before != null && (factor > before * CONTRADICTION || before > factor * CONTRADICTION)) {
                throw new IllegalArgumentException("two tests contradict each other: " + first.get(key) + " and " + test
                        + " ask for muscles of " + Math.rint(before * 100) + " % and " + Math.rint(factor * 100)
                        + " % of the model's; leave one out");
            }
            factors.merge(key, factor, (a, b) -> (a + b) / 2);
            first.putIfAbsent(key, test);
        }
        return factors;
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
        double sum = new QuickForces(this, lifter, angles, angles).greatestMoment(positive);
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
        return byCapacity ? capacity : area;
    }

    /**
     * Returns forces without words and checks, where the rule allows the quick way.
     *
     * @param moments N·m of each axis' positive action; per side, low back in total
     * @param angles flexion of each of these axes, rad
     */
    public Optional<QuickForces> quick(Lifter lifter, Map<Axis, Double> moments, Map<Axis, Double> angles) {
        boolean plain = coContraction == 0 && rule instanceof SharingRule.Power power && power.exponent() == 3;
        return plain ? Optional.of(new QuickForces(this, lifter, moments, angles)) : Optional.empty();
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
        double factor = lengthFactor ? Math.max(LEAST_FACTOR, 1 - off * off) : 1;
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
        double length = 1 + FIBRE_SHARE * longer / (optimum / 100 * size(lifter));
        double off = (length - 1) / WIDTH;
        double byLength = byLength(off);
        double pascals = tension * 1e4 * strength(muscle) * tested;
        return area * pascals * byLength * (pennation ? cosine : 1) * speedFactor(shortening, optimum);
    }

    /** By how much a test says that muscles of one direction are stronger than the data's; NaN without a test. */
    double tested(Lifter lifter, Axis axis, double arm) {
        if (tests.isEmpty()) {
            return Double.NaN;
        }
        return calibrated
                .get(lifter, () -> calibrations(lifter))
                .getOrDefault(axis.name() + (arm > 0 ? "+" : "-"), Double.NaN);
    }
}
