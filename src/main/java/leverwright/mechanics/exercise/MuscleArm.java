package leverwright.mechanics.exercise;

import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.ReadingStatus;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.working.Expression;

/**
 * The muscle arm of the one equivalent muscle that stands for all muscles of a joint action.
 *
 * <p>Sources, all per side (spine in total): effective quadriceps arm at 10° and 50° of flexion, 45.5 and 32.9 mm in 30
 * women, 47.1 and 31.5 mm in 10 men, PMC4662057 (abstract); semitendinosus 40 to 55 mm, Tözeren, Human Body Dynamics,
 * appendix; Achilles tendon 47.9 mm by imaging at rest, Wolfram 2018, with 35 to 64 mm among methods, Manal 2013 table 2;
 * tibialis anterior 29 to 45 mm, Maganaris 2000; erector spinae 60 mm, Cholewicki 1991, 50 mm in other models, Gungor 2013;
 * rectus abdominis at L5/S1 98 mm, Jorgensen 2005; biceps and triceps by polynomials in the elbow's flexion, as printed by
 * the Bulgarian Academy of Sciences (biomed.bas.bg, MuscleArms); deltoid 31 mm = 12 cm · sin 15°, a textbook example,
 * Giancoli, Physics, 7th edition, chapter 9, problem 34; hip extensors 60 ± 20 mm, from memory.
 *
 * @param muscle its name in print
 * @param arm the arm with the half width of its spread
 * @param source where it comes from
 * @param status how it was read
 * @param remark what must be said beside it; may be empty
 * @param rule how it enters a hand calculation
 */
record MuscleArm(String muscle, Length arm, String source, ReadingStatus status, String remark, Rule rule) {
    private static final double[] BICEPS = {1.963, -1.44, 3.031, 0.887, -1.418, 0.285};
    private static final double[] TRICEPS = {-2.365, -1.015, 1.92, -1.035, 0.257, -0.0262};
    private static final String POLYNOMIAL = "polynomial in the elbow's flexion, biomed.bas.bg MuscleArms";
    private static final double LOW = Measures.deg(10).si();
    private static final double HIGH = Measures.deg(50).si();

    /** How an arm enters a hand calculation. */
    interface Rule {
        /** Returns the arm's symbol, after adding the steps that it needs. */
        Expression.Symbol in(Hand hand, MuscleArm arm);
    }

    /** The arm as a given number. */
    private static Expression.Symbol given(Hand hand, MuscleArm arm) {
        return hand.input("r_muscle", Length.of(arm.arm().si()), arm.printed());
    }

    /** Returns muscle, source, status and remark in one line for workings. */
    String printed() {
        return Sources.clean(muscle + "; " + source + "; " + status.words());
    }

    /**
     * Returns the arm for a joint's positive or negative action in a posture; empty where no number is on file.
     */
    static Optional<MuscleArm> of(Layout layout, Joint joint, boolean positive) {
        if (layout.plane() != Plane.SAGITTAL) {
            boolean raises = layout.plane() == Plane.FRONTAL && joint == Joint.SHOULDER && positive;
            boolean bends = joint == Joint.ELBOW && Flexions.of(layout, Joint.ELBOW) >= 0;
            return raises ? Optional.of(deltoid()) : bends ? Optional.of(elbow(layout, positive)) : Optional.empty();
        }
        return switch (joint) {
            case ANKLE -> Optional.of(positive ? achilles() : tibialis());
            case KNEE -> Optional.of(positive ? quadriceps(layout) : hamstring());
            case HIP -> positive ? Optional.of(hipExtensors()) : Optional.empty();
            case LOW_BACK -> Optional.of(positive ? erectorSpinae() : rectusAbdominis());
            case SHOULDER -> positive ? Optional.empty() : Optional.of(deltoid());
            case ELBOW -> Optional.of(elbow(layout, positive));
            case NECK, WRIST -> Optional.empty();
        };
    }

    private static MuscleArm fixed(
            String muscle, double arm, double spread, String source, ReadingStatus status, String remark) {
        return new MuscleArm(muscle, new Length(arm, spread), source, status, remark, MuscleArm::given);
    }

    private static MuscleArm achilles() {
        return fixed(
                "calf muscles by the Achilles tendon",
                0.0479,
                0.0129,
                "Wolfram 2018, imaging at rest, neutral foot",
                ReadingStatus.READ_ONCE,
                "Achilles arm: 35 to 64 mm among methods, Manal 2013; the largest uncertainty of an ankle's muscle force.");
    }

    private static MuscleArm tibialis() {
        return fixed(
                "tibialis anterior",
                0.037,
                0.008,
                "Maganaris 2000, at rest, middle of 29 to 45 mm",
                ReadingStatus.READ_ONCE,
                "");
    }

    private static MuscleArm hamstring() {
        return fixed(
                "hamstrings, by the semitendinosus",
                0.0475,
                0.0075,
                "Tözeren, Human Body Dynamics, appendix, middle of 40 to 55 mm",
                ReadingStatus.READ_ONCE,
                "");
    }

    private static MuscleArm hipExtensors() {
        return fixed(
                "hip extensors",
                0.06,
                0.02,
                "gluteus maximus, hamstrings and adductor magnus together",
                ReadingStatus.FROM_MEMORY,
                "The hip extensors' arm is from memory, 6 ± 2 cm; it changes with the hip's angle.");
    }

    private static MuscleArm erectorSpinae() {
        return fixed(
                "erector spinae",
                0.06,
                0.01,
                "Cholewicki 1991, 6 cm; other models assume 5 cm, Gungor 2013",
                ReadingStatus.READ_ONCE,
                "Low back: abdominal pressure 0, no muscle working against it, no bending of the lumbar spine.");
    }

    private static MuscleArm rectusAbdominis() {
        return fixed("rectus abdominis", 0.098, 0, "Jorgensen 2005, L5/S1, standing", ReadingStatus.READ_ONCE, "");
    }

    private static MuscleArm deltoid() {
        return fixed(
                "deltoid",
                0.0311,
                0,
                "a textbook's example, Giancoli, Physics, 7th edition, chapter 9, problem 34: 12 cm at 15°",
                ReadingStatus.READ_ONCE,
                "");
    }

    private static MuscleArm quadriceps(Layout layout) {
        boolean women = layout.body().lifter().sex() == Sex.FEMALE;
        double bent = women ? 0.0455 : 0.0471;
        double deep = women ? 0.0329 : 0.0315;
        double flexion = Flexions.of(layout, Joint.KNEE);
        double held = Math.max(LOW, Math.min(HIGH, flexion));
        boolean beyond = flexion < LOW || flexion > HIGH;
        String remark = beyond
                ? "The effective quadriceps arm was read at 10° and 50° of knee flexion only; beyond, the nearer value is held:"
                        + " an extrapolation."
                : "";
        double part = (held - LOW) / (HIGH - LOW);
        return new MuscleArm(
                "quadriceps",
                Length.of(bent + (deep - bent) * part),
                "effective arm of " + (women ? "30 women" : "10 men") + ", PMC4662057, straight between 10° and 50°",
                ReadingStatus.READ_ONCE,
                remark,
                beyond ? MuscleArm::given : (hand, arm) -> between(hand, layout, arm, bent, deep));
    }

    /** r = r_10 + (r_50 − r_10)·(φ − 10°)/(50° − 10°). */
    private static Expression.Symbol between(Hand hand, Layout layout, MuscleArm arm, double bent, double deep) {
        Expression at10 = hand.input("r_10", Length.of(bent), "effective quadriceps arm at 10° of flexion; PMC4662057");
        Expression at50 = hand.input("r_50", Length.of(deep), "effective quadriceps arm at 50° of flexion; PMC4662057");
        Expression turn = Flexions.in(hand, layout, Joint.KNEE).minus(Expression.exactDegrees(10));
        Expression span = Expression.exactDegrees(50).minus(Expression.exactDegrees(10));
        Expression rise = at50.minus(at10).times(turn).dividedBy(span);
        return hand.step("r_muscle", at10.plus(rise), arm.arm(), arm.printed());
    }

    private static MuscleArm elbow(Layout layout, boolean extension) {
        double[] centimetres = extension ? TRICEPS : BICEPS;
        double flexion = Flexions.of(layout, Joint.ELBOW);
        double sum = 0;
        for (int k = centimetres.length - 1; k >= 0; k--) {
            sum = sum * flexion + centimetres[k];
        }
        int sign = extension ? -1 : 1;
        return new MuscleArm(
                extension ? "triceps" : "biceps",
                Length.of(sign * sum / 100),
                POLYNOMIAL,
                ReadingStatus.READ_ONCE,
                "",
                (hand, arm) -> polynomial(hand, layout, arm, centimetres, sign));
    }

    private static Expression.Symbol polynomial(
            Hand hand, Layout layout, MuscleArm arm, double[] centimetres, int sign) {
        Expression.Symbol flexion = Flexions.in(hand, layout, Joint.ELBOW);
        Expression sum = coefficient(centimetres[centimetres.length - 1]);
        for (int k = centimetres.length - 2; k >= 0; k--) {
            sum = sum.times(flexion).plus(coefficient(centimetres[k]));
        }
        Expression metres = sum.dividedBy(Expression.exact("100"));
        return hand.step("r_muscle", sign < 0 ? metres.negated() : metres, arm.arm(), arm.printed());
    }

    private static Expression coefficient(double value) {
        Expression size = Expression.exact(String.valueOf(Math.abs(value)));
        return value < 0 ? size.negated() : size;
    }
}
