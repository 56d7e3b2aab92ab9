package leverwright.mechanics.exercise;

import static leverwright.mechanics.body.Joint.ANKLE;
import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Joint.LOW_BACK;
import static leverwright.mechanics.body.Joint.SHOULDER;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import leverwright.mechanics.body.Body;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.working.Sketch;
import org.junit.jupiter.api.Test;

class HingeMechanicsTest {
    private static final double G = 9.80665;
    private static final Lifter INES = Lifter.lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));
    private static final RomanianDeadlift HINGE =
            romanianDeadlift().barbell(kg(50)).barAhead(cm(3)).torsoLean(deg(45));

    /** Lee 2018 (PMC6323186): in the Romanian deadlift the net moment of the knee is one of flexion; the sign only. */
    @Test
    void kneeIsBentByItsMusclesInTheHinge() {
        HeldPosture held = HINGE.by(INES).posture();
        assertTrue(held.moment(KNEE).value().si() < 0);
        assertTrue(held.moment(ANKLE).value().si() > 0);
    }

    /** The level posture's hip moment, 168.780 N·m, from the same separate program as the other numbers of its lifter. */
    @Test
    void tiltRuleIsTheLevelTrunksMomentTimesLeanOverARightAngle() {
        HeldPosture held = SketchNumbersTest.hinge()
                .barAhead(cm(3))
                .by(SketchNumbersTest.lifter())
                .posture();
        assertEquals(168.77983457526133 / 2, held.tiltRule(HIP).value().si(), 1e-9);
        assertTrue(held.tiltRule(HIP).value().si() < held.moment(HIP).value().si());
        assertThrows(IllegalArgumentException.class, () -> held.tiltRule(ANKLE));
        assertThrows(IllegalArgumentException.class, () -> held.tiltRule(KNEE));
    }

    /** Ratio of tilt to sine: 0.637 near 0° (2/π), 1 at 90°; largest gap 0.21 near 50°: closed forms. */
    @Test
    void tiltShareLiesBelowTheSine() {
        double widest = 0;
        for (int degrees = 1; degrees <= 90; degrees++) {
            LeverView view = HINGE.torsoLean(deg(degrees)).by(INES).posture().leverView(HIP);
            double sine = view.squareShare().value().si();
            double tilt = view.squareShareByTilt().value().si();
            assertEquals(StrictMath.sin(StrictMath.toRadians(degrees)), sine, 1e-12);
            assertEquals(degrees / 90.0, tilt, 1e-12);
            widest = Math.max(widest, sine - tilt);
        }
        assertEquals(0.21, widest, 0.005);
    }

    /** Free body above the low back: trunk above it with head, arms and bar, each times its level distance. */
    @Test
    void lowBackIsAJointOfTheTrunkAndIsReportedInTotal() {
        HeldPosture held = HINGE.by(INES).posture();
        Layout layout = held.layout();
        Body body = INES.body();
        double at = layout.jointX(HIP) + body.pelvis().length() * StrictMath.sin(deg(45).si());
        double trunkAt = at + body.trunkAboveLowBack().centre() * StrictMath.sin(deg(45).si());
        double expected = body.trunkAboveLowBack().mass() * G * (trunkAt - at);
        for (Segment arm : new Segment[] {Segment.UPPER_ARM, Segment.FOREARM, Segment.HAND}) {
            expected += body.segment(arm).mass() * G * (layout.centreX(arm) - at);
        }
        expected += 50
                * G
                * (held.performance().exercise().get(Knobs.BAR_AHEAD).si()
                        + held.pressure().value().si()
                        - at);
        assertEquals(expected, held.moment(LOW_BACK).value().si(), 1e-9);
        assertEquals(Sides.TOTAL, held.moment(LOW_BACK).sides());
        assertTrue(held.moment(LOW_BACK).notes().contains(Cautions.LOW_BACK));
    }

    @Test
    void tableSaysActionAndSidesOfEveryRow() {
        MomentTable table = HINGE.by(INES).posture().moments(HIP, KNEE, ANKLE, LOW_BACK);
        assertEquals(
                "[hip extension, knee extension, ankle plantarflexion, low back extension]",
                table.rows().stream().map(MomentTable.Row::action).toList().toString());
        assertEquals(
                "[PER_SIDE, PER_SIDE, PER_SIDE, TOTAL]",
                table.rows().stream().map(row -> row.moment().sides()).toList().toString());
        assertEquals("both cuts agree", table.closure().words());
        for (MomentTable.Row row : table.rows()) {
            double sides = row.moment().sides() == Sides.PER_SIDE ? 2 : 1;
            assertEquals(
                    row.moment().value().si(),
                    row.load().value().si() * row.loadArm().value().si() / sides,
                    1e-9);
        }
    }

    /** The bar keeps its distance from the nearer of thigh and shank: leg depth, gap and half its own thickness of 28 mm. */
    @Test
    void barKeepsItsClearanceFromTheLeg() {
        for (int lean = 5; lean <= 90; lean += 5) {
            for (int gap = 0; gap <= 6; gap += 3) {
                HeldPosture held = romanianDeadlift()
                        .barbell(kg(50))
                        .barClearance(cm(gap))
                        .torsoLean(deg(lean))
                        .by(INES)
                        .posture();
                assertEquals(Standing.BALANCED, held.standing());
                assertTrue(held.bothCuts().agree());
                double distance = Math.min(distance(held.layout(), HIP, KNEE), distance(held.layout(), KNEE, ANKLE));
                assertEquals(0.06 + gap / 100.0 + 0.014, distance, 1e-9, "lean " + lean + ", gap " + gap);
            }
        }
    }

    private static double distance(Layout layout, Joint from, Joint to) {
        double dx = layout.jointX(to) - layout.jointX(from);
        double dy = layout.jointY(to) - layout.jointY(from);
        double px = layout.gripX() - layout.jointX(from);
        double py = layout.gripY() - layout.jointY(from);
        double along = Math.max(0, Math.min(1, (px * dx + py * dy) / (dx * dx + dy * dy)));
        return Math.hypot(px - along * dx, py - along * dy);
    }

    @Test
    void barOutOfReachIsImpossibleAndSaysWhatToDo() {
        String message = assertThrows(
                        ImpossibleSetting.class,
                        () -> HINGE.torsoLean(deg(0))
                                .barAhead(cm(60))
                                .barbell(kg(1))
                                .by(INES)
                                .posture())
                .getMessage();
        assertTrue(message.contains("reach") && message.contains("set the bar nearer"), message);
    }

    @Test
    void placeOfTheBarCannotBeSetTwice() {
        assertThrows(
                IllegalArgumentException.class, () -> HINGE.plumbArms().by(INES).posture());
        assertThrows(
                IllegalArgumentException.class,
                () -> HINGE.with(Knobs.BAR_CLEARANCE, cm(1)).by(INES).posture());
    }

    @Test
    void valuesOutsideARangeAreRefusedWithValueAndRange() {
        String message = assertThrows(IllegalArgumentException.class, () -> HINGE.torsoLean(deg(400)))
                .getMessage();
        assertTrue(message.contains("400°") && message.contains("−10° to 95°"), message);
        assertThrows(IllegalArgumentException.class, () -> HINGE.with(Knobs.BAR_HEIGHT_ON_TRUNK, cm(2)));
    }

    @Test
    void muscleForceIsTheMomentOverTheMusclesArm() {
        LeverView view = HINGE.by(INES).posture().leverView(LOW_BACK);
        LeverView.Muscle erector = view.muscle().orElseThrow();
        assertEquals(0.06, erector.arm().value().si());
        assertEquals(view.moment().value().si() / 0.06, erector.force().value().si(), 1e-9);
        assertEquals(
                view.loadArm().value().si() / 0.06, erector.leverRatio().value().si(), 1e-12);
        assertEquals(view.moment().value().si() / 0.07, erector.force().low().si(), 1e-9);
        assertTrue(HINGE.by(INES).posture().leverView(HIP).notes().stream()
                .anyMatch(note -> note.contains("from memory")));
        assertTrue(HINGE.by(INES).posture().leverView(SHOULDER).action().contains("extension"));
    }

    @Test
    void figureShowsLoadArmsOfTheirSignedLengthAndTheGroundUnderThePressure() {
        HeldPosture held = HINGE.by(INES).posture();
        Sketch sketch = held.sketch(HIP, KNEE);
        var arms = sketch.shapes().stream()
                .filter(Sketch.LoadArm.class::isInstance)
                .map(Sketch.LoadArm.class::cast)
                .toList();
        assertEquals(2, arms.size());
        assertEquals(
                held.loadArm(HIP).value().si(),
                arms.get(0).to().x() - arms.get(0).from().x(),
                1e-12);
        assertEquals(
                held.loadArm(KNEE).value().si(),
                arms.get(1).from().x() - arms.get(1).to().x(),
                1e-12);
        var torso = sketch.handles().get(0);
        assertEquals("Torso lean", torso.name());
        assertTrue(torso.stops().size() > 10);
        assertEquals(held.layout().jointX(SHOULDER), torso.at().x());
    }

    @Test
    void bandOfTheLeanReachesEveryAnswer() {
        HeldPosture held = HINGE.torsoLean(deg(45).plusOrMinus(deg(5))).by(INES).posture();
        double low =
                HINGE.torsoLean(deg(40)).by(INES).posture().moment(HIP).value().si();
        double high =
                HINGE.torsoLean(deg(50)).by(INES).posture().moment(HIP).value().si();
        assertEquals(low, held.moment(HIP).low().si(), 1e-9);
        assertEquals(high, held.moment(HIP).high().si(), 1e-9);
        assertEquals(deg(40).si(), held.lean(Segment.TRUNK).low().si(), 1e-12);
        assertTrue(held.lean(Segment.THIGH).hasBand());
    }

    @Test
    void threeUncertainInputsAreTriedAtTheirCorners() {
        RomanianDeadlift sure = HINGE.barbell(kg(48)).barAhead(cm(2)).torsoLean(deg(40));
        double low = sure.by(INES).posture().moment(HIP).value().si();
        var moment = HINGE.barbell(kg(50).plusOrMinus(kg(2)))
                .barAhead(cm(3).plusOrMinus(cm(1)))
                .torsoLean(deg(45).plusOrMinus(deg(5)))
                .by(INES)
                .posture()
                .moment(HIP);
        assertEquals(low, moment.low().si(), 1e-9);
    }

    /** Frozen on 25 November 2026; the same on JDK 17 and 25, interpreted and compiled. A change needs a reason. */
    @Test
    void bitsStayAsTheyWere() {
        HeldPosture ahead = HINGE.by(INES).posture();
        HeldPosture beside = romanianDeadlift()
                .barbell(kg(50))
                .torsoLean(deg(45))
                .barClearance(cm(1))
                .by(INES)
                .posture();
        assertEquals(
                "0x1.d5abcf2389ea4p6",
                Double.toHexString(ahead.moment(HIP).value().si()));
        assertEquals(
                "0x1.5a7aac38b4943p7",
                Double.toHexString(ahead.moment(LOW_BACK).value().si()));
        assertEquals(
                "0x1.b972b74d3dea1p6",
                Double.toHexString(beside.moment(HIP).value().si()));
    }
}
