package leverwright.mechanics.exercise;

import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.exercise.Exercises.LEVEL;
import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.m;
import static leverwright.mechanics.measure.Measures.percent;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.SegmentTable;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.numeric.RandomStream;
import org.junit.jupiter.api.Test;

/** Statics of the squat that hold whatever the numbers are, derived by free bodies, and published directions. */
class SquatMechanicsTest {
    private static final long SEED = 9L;
    private static final double G = 9.80665;

    private static final Lifter OLE = Lifter.lifter("Ole").of(Sex.MALE, cm(180), kg(82));

    /**
     * Free body of everything above the knees, and of everything above the hips: the moments of knee and hip extension, both
     * sides together, sum to g·[(mass above the hips + bar)·(x_knee − x_hip) + mass of the thighs·(x_knee − x_thigh)].
     * Where the trunk's and the bar's mass lie cancels.
     */
    @Test
    void kneeAndHipMomentSumToWhatTheThighAloneDecides() {
        RandomStream random = new RandomStream(SEED);
        int balanced = 0;
        for (int k = 0; k < 500; k++) {
            Lifter lifter = Lifter.lifter("Random")
                    .of(
                            k % 2 == 0 ? Sex.FEMALE : Sex.MALE,
                            m(random.nextBetween(1.5, 2)),
                            kg(random.nextBetween(50, 110)))
                    .segments(k % 3 == 0 ? SegmentTable.WINTER : SegmentTable.DE_LEVA);
            double bar = random.nextBetween(0, 200);
            HeldPosture held = backSquat()
                    .barbell(kg(bar))
                    .thighs(deg(random.nextBetween(-10, 80)))
                    .torsoLean(deg(random.nextBetween(0, 70)))
                    .barOnTrunk(cm(random.nextBetween(-10, 5)), cm(random.nextBetween(-10, 10)))
                    .by(lifter)
                    .posture();
            balanced += held.standing() == Standing.BALANCED ? 1 : 0;
            double sum = 2 * held.moment(KNEE).value().si()
                    + 2 * held.moment(HIP).value().si();
            assertEquals(byTheThigh(held, lifter, bar), sum, 1e-9, "seed " + SEED + ", case " + k);
        }
        assertTrue(balanced > 100, "balanced: " + balanced);
    }

    private static double byTheThigh(HeldPosture held, Lifter lifter, double bar) {
        double lean = held.lean(Segment.THIGH).value().si();
        double thigh = lifter.body().segment(Segment.THIGH).length();
        double fromKnee = thigh - lifter.body().segment(Segment.THIGH).centre();
        double aboveHip = bar
                + lifter.body().segment(Segment.TRUNK).mass()
                + lifter.body().segment(Segment.UPPER_ARM).mass()
                + lifter.body().segment(Segment.FOREARM).mass()
                + lifter.body().segment(Segment.HAND).mass();
        double kneeLessHip = -thigh * StrictMath.sin(lean);
        double kneeLessCentre = -fromKnee * StrictMath.sin(lean);
        return G
                * (aboveHip * kneeLessHip + lifter.body().segment(Segment.THIGH).mass() * kneeLessCentre);
    }

    /** Fry 2003: keeping the knees behind the toes lowers the knee's moment and raises the hip's; the signs only. */
    @Test
    void keepingTheKneesBackMovesTheMomentFromKneeToHip() {
        BackSquat free = backSquat().barbell(kg(82)).thighs(LEVEL).shankLean(deg(35));
        HeldPosture unrestricted = free.by(OLE).posture();
        HeldPosture restricted = free.shankLean(deg(20)).by(OLE).posture();
        assertEquals(Standing.BALANCED, unrestricted.standing());
        assertEquals(Standing.BALANCED, restricted.standing());
        assertTrue(restricted.moment(KNEE).value().si()
                < unrestricted.moment(KNEE).value().si());
        assertTrue(restricted.moment(HIP).value().si()
                > unrestricted.moment(HIP).value().si());
    }

    /**
     * Seen from the ground, legs and pressure alone decide the moments of knee and hip: where the bar lies changes the torso's
     * lean that balances it, and nothing else.
     */
    @Test
    void placeOfTheBarAloneMovesNoMomentWhileTheLegsStandStill() {
        BackSquat squat = backSquat().barbell(kg(100)).thighs(LEVEL).shankLean(deg(28));
        HeldPosture high = squat.highBar().by(OLE).posture();
        HeldPosture low = squat.lowBar().by(OLE).posture();
        assertEquals(Standing.BALANCED, high.standing());
        assertEquals(Standing.BALANCED, low.standing());
        assertTrue(low.lean(Segment.TRUNK).value().si()
                > high.lean(Segment.TRUNK).value().si());
        assertEquals(high.moment(HIP).value().si(), low.moment(HIP).value().si(), 1e-9);
    }

    /**
     * Wretenberg 1996: the ratio of hip to knee moment is larger with the low bar; the ordering only. It takes the larger lean
     * with which the low bar is squatted (here 15° more, from memory), which lets the shanks stand more upright.
     */
    @Test
    void lowBarAsItIsSquattedLoadsTheHipMoreForEachUnitAtTheKnee() {
        BackSquat squat = backSquat().barbell(kg(100)).thighs(LEVEL);
        HeldPosture high = squat.highBar().torsoLean(deg(40)).by(OLE).posture();
        HeldPosture low = squat.lowBar().torsoLean(deg(55)).by(OLE).posture();
        assertEquals(Standing.BALANCED, high.standing());
        assertEquals(Standing.BALANCED, low.standing());
        assertTrue(ratio(low) > ratio(high), ratio(low) + " and " + ratio(high));
    }

    private static double ratio(HeldPosture held) {
        return held.moment(HIP).value().si() / held.moment(KNEE).value().si();
    }

    /**
     * The hip's load arm two ways. From the ground: what lies below the hip is in balance, so that (ground reaction)·(x_hip −
     * x_pressure) less the moments of thigh, shank and foot is the same as from above, trunk, arms and bar times their arms.
     * With a massless leg it would be the thigh's level length less the part of the shank that lies ahead of the force line.
     */
    @Test
    void foldingTheLegShortensTheHipsLeverTheSameSeenFromAboveAndFromBelow() {
        HeldPosture held = backSquat()
                .barbell(kg(60))
                .thighs(deg(10))
                .torsoLean(deg(45))
                .by(OLE)
                .posture();
        Layout layout = held.layout();
        double hipX = layout.jointX(HIP);
        double fromBelow =
                held.groundReaction().value().si() * (held.pressure().value().si() - hipX);
        for (Segment segment : new Segment[] {Segment.FOOT, Segment.SHANK, Segment.THIGH}) {
            fromBelow -= layout.body().mass(segment) * G * (layout.centreX(segment) - hipX);
        }
        assertEquals(2 * held.moment(HIP).value().si(), fromBelow, 1e-9);
        double thighLevel = -layout.body().length(Segment.THIGH) * layout.sine(Segment.THIGH);
        double shankAhead = layout.jointX(KNEE) - held.pressure().value().si();
        assertEquals(thighLevel - shankAhead, held.pressure().value().si() - hipX, 1e-12);
    }

    /**
     * The knee's load arm from the ground: shank length·sin(shank lean) − (centre of pressure − ankle), before the weight of
     * shank and foot; with that weight taken off, it is the load side's moment.
     */
    @Test
    void kneesLoadArmFromTheGroundEqualsThatOfTheLoad() {
        HeldPosture held = backSquat()
                .barbell(kg(60))
                .thighs(LEVEL)
                .torsoLean(deg(50))
                .by(OLE)
                .posture();
        Layout layout = held.layout();
        double arm = layout.body().length(Segment.SHANK) * layout.sine(Segment.SHANK)
                - (held.pressure().value().si() - layout.jointX(Joint.ANKLE));
        double moment = held.groundReaction().value().si() * arm;
        for (Segment segment : new Segment[] {Segment.FOOT, Segment.SHANK}) {
            moment -= layout.body().mass(segment) * G * (layout.jointX(KNEE) - layout.centreX(segment));
        }
        assertEquals(2 * held.moment(KNEE).value().si(), moment, 1e-9);
    }

    /** Winter, table 4.1: 0.678 of body mass rides on the hips, 0.878 on the knees. */
    @Test
    void massThatRidesOnEachJointIsThatOfTheTable() {
        Lifter lifter = OLE.segments(SegmentTable.WINTER);
        HeldPosture held = backSquat().barbell(kg(0)).by(lifter).posture();
        assertEquals(0.678 * 82, held.load(HIP).value().si() / G, 1e-9);
        assertEquals(0.878 * 82, held.load(KNEE).value().si() / G, 1e-9);
    }

    @Test
    void anyTwoAnglesLeadToTheSamePosture() {
        BackSquat plain = backSquat().barbell(kg(60)).highBar();
        HeldPosture held = plain.thighs(deg(5)).torsoLean(deg(42)).by(OLE).posture();
        double shank = held.lean(Segment.SHANK).value().si();
        double knee = held.flexion(KNEE).value().si();
        HeldPosture byLegs = plain.thighs(deg(5))
                .with(Knobs.SHANK_LEAN, deg(0).with(shank, 0))
                .by(OLE)
                .posture();
        HeldPosture byKnee = plain.torsoLean(deg(42))
                .with(Knobs.KNEE_FLEXION, deg(0).with(knee, 0))
                .by(OLE)
                .posture();
        HeldPosture byThigh = plain.torsoLean(deg(42))
                .with(Knobs.SHANK_LEAN, deg(0).with(shank, 0))
                .by(OLE)
                .posture();
        for (HeldPosture other : new HeldPosture[] {byLegs, byKnee, byThigh}) {
            assertEquals(Standing.BALANCED, other.standing());
            assertEquals(
                    held.moment(KNEE).value().si(), other.moment(KNEE).value().si(), 1e-9);
            assertEquals(
                    held.moment(HIP).value().si(), other.moment(HIP).value().si(), 1e-9);
        }
    }

    @Test
    void threeAnglesHoldThePostureAndSayWhereThePressureFalls() {
        BackSquat squat = backSquat().barbell(kg(60)).thighs(LEVEL).shankLean(deg(30));
        HeldPosture upright = squat.torsoLean(deg(-10)).by(OLE).posture();
        assertEquals(Standing.WOULD_FALL_BACKWARD, upright.standing());
        assertTrue(upright.moment(KNEE).notes().stream().anyMatch(note -> note.contains("would fall backward")));
        HeldPosture flat = squat.torsoLean(deg(95)).shankLean(deg(50)).by(OLE).posture();
        assertEquals(Standing.WOULD_FALL_FORWARD, flat.standing());
        assertTrue(flat.bothCuts().agree());
    }

    @Test
    void noBalancedPostureIsAnAnswer() {
        HeldPosture held = backSquat()
                .barbell(kg(20))
                .thighs(deg(-40))
                .shankLean(deg(-20))
                .by(OLE)
                .posture();
        assertTrue(held.standing().wouldFall());
        assertTrue(held.notes().get(0).startsWith("Not balanced"), held.notes().toString());
    }

    @Test
    void ankleBentBeyondWhatManyReachIsSaid() {
        BackSquat squat = backSquat().barbell(kg(60)).thighs(LEVEL);
        assertTrue(squat.shankLean(deg(48)).by(OLE).posture().notes().stream()
                .anyMatch(note -> note.contains("ankle bends")));
        HeldPosture wedge =
                squat.shankLean(deg(48)).with(Knobs.HEEL_HEIGHT, cm(5)).by(OLE).posture();
        assertTrue(
                wedge.notes().stream().noneMatch(note -> note.contains("ankle bends")),
                wedge.notes().toString());
        assertEquals(
                48 - wedge.lean(Segment.FOOT).value().degrees(),
                wedge.flexion(Joint.ANKLE).value().degrees(),
                1e-9);
    }

    @Test
    void shankThighAndKneeCannotAllBeSet() {
        BackSquat squat = backSquat().thighs(LEVEL).shankLean(deg(30)).kneeFlexion(deg(100));
        assertThrows(IllegalArgumentException.class, () -> squat.by(OLE).posture());
    }

    @Test
    void raisedHeelLetsTheTorsoStandMoreUpright() {
        BackSquat squat = backSquat().barbell(kg(60)).thighs(LEVEL).shankLean(deg(30));
        double flat = squat.by(OLE).posture().lean(Segment.TRUNK).value().degrees();
        HeldPosture wedge = squat.with(Knobs.HEEL_HEIGHT, cm(3)).by(OLE).posture();
        assertEquals(Standing.BALANCED, wedge.standing());
        assertTrue(wedge.bothCuts().agree());
        assertTrue(wedge.lean(Segment.TRUNK).value().degrees() < flat);
    }

    @Test
    void bandsSpanTheResultsOverTheInputsBands() {
        BackSquat squat = backSquat().barbell(kg(60)).thighs(LEVEL);
        var uncertain =
                squat.torsoLean(deg(45).plusOrMinus(deg(5))).by(OLE).posture().moment(KNEE);
        double low =
                squat.torsoLean(deg(50)).by(OLE).posture().moment(KNEE).value().si();
        double high =
                squat.torsoLean(deg(40)).by(OLE).posture().moment(KNEE).value().si();
        assertEquals(Math.min(low, high), uncertain.low().si(), 1e-9);
        assertEquals(Math.max(low, high), uncertain.high().si(), 1e-9);
        assertThrows(
                IllegalArgumentException.class,
                () -> squat.with(Knobs.PRESSURE, percent(98).plusOrMinus(percent(5))));
    }

    /** About 6 N·m at each knee for 1 cm with a 60 kg bar: force of the ground on one foot times 1 cm. */
    @Test
    void placeOfTheAnkleIsWorthAFewNewtonMetresAtTheKnee() {
        var spread = backSquat()
                .barbell(kg(60))
                .thighs(LEVEL)
                .shankLean(deg(30))
                .by(OLE)
                .spreading(leverwright.mechanics.body.Landmark.ANKLE_FROM_HEEL)
                .posture()
                .moment(KNEE);
        double half = (spread.high().si() - spread.low().si()) / 2;
        assertEquals(0.01 * (82 + 60) * G / 2, half, 1);
    }
}
