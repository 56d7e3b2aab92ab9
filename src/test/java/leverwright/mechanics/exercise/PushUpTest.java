package leverwright.mechanics.exercise;

import static leverwright.mechanics.body.Joint.ELBOW;
import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.SHOULDER;
import static leverwright.mechanics.body.Joint.WRIST;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.exercise.Exercises.pushUp;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.m;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.ratio;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.SegmentTable;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.numeric.RootFinder;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Sketch;
import org.junit.jupiter.api.Test;

class PushUpTest {
    private static final double G = 9.80665;
    private static final Lifter INES = lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));

    private static double share(PushUp exercise, Lifter lifter) {
        return exercise.shareOnHands(lifter).value().si();
    }

    private static double[] measured(String condition) throws IOException {
        try (InputStream in = PushUpTest.class.getResourceAsStream("/reference/pushup_load.csv")) {
            assertNotNull(in);
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            String[] cells = text.lines()
                    .filter(line -> line.startsWith("Mier 2014," + condition + ","))
                    .findFirst()
                    .orElseThrow()
                    .split(",");
            return new double[] {Double.parseDouble(cells[2]), Double.parseDouble(cells[3])};
        }
    }

    /**
     * Mier and others, International Journal of Exercise Science 7 (2014), static holds: mean and standard deviation of the
     * share of body mass on the hands. Fixed beforehand: hands under the shoulders, elbows straight or at 90°, pressure under
     * the middle of the grip and the ball of the foot, statures the means of ANSUR II 2012 (the study's were not read; the
     * share does not depend on mass), both segment tables, two standard deviations.
     */
    @Test
    void sharesOnTheHandsAgreeWithMeasuredOnes() throws IOException {
        for (Sex sex : Sex.values()) {
            double stature = sex == Sex.MALE ? 1.7562 : 1.6285;
            for (SegmentTable table : List.of(SegmentTable.DE_LEVA, SegmentTable.WINTER)) {
                Lifter lifter = lifter("Mean").of(sex, m(stature), kg(70)).segments(table);
                for (boolean up : List.of(true, false)) {
                    String row = (sex == Sex.MALE ? "men" : "women") + " standard " + (up ? "up" : "down") + " static";
                    double[] mier = measured(row);
                    double share = 100 * share(pushUp().elbowFlexion(deg(up ? 0 : 90)), lifter);
                    assertEquals(mier[0], share, 2 * mier[1], row + " by " + table.name());
                }
            }
        }
    }

    /** The sign of the change that the same study found: more on the hands in the low position, for both sexes. */
    @Test
    void theLowPositionLoadsTheHandsMore() {
        assertTrue(share(pushUp().elbowFlexion(deg(90)), INES) > share(pushUp().elbowFlexion(deg(0)), INES));
    }

    /**
     * OpenStax, College Physics, chapter 9, push-up problem: feet to hands 1.50 m, feet to mass centre 0.90 m: 147 N on each
     * hand, for the 50.0 kg that the answer implies at g = 9.80 m/s². Stature and the trunk's mass centre are chosen so that the
     * body has those two distances.
     */
    @Test
    void openStaxPushUp() {
        PushUp exercise = pushUp().elbowFlexion(deg(0));
        double stature = RootFinder.between("stature", "m", h -> span(exercise, body(h, 0.35)) - 1.5, 1.5, 2.5, 1e-12)
                .at();
        double centre = RootFinder.between(
                        "centre", "m", c -> centreOverSpan(exercise, body(stature, c)) - 0.6, 0.05, 0.5, 1e-12)
                .at();
        Lifter lifter = body(stature, centre);
        double both = exercise.by(lifter).posture().layout().loads().get(0).forceY();
        assertEquals(147, both / 2 * 9.80 / G, 0.5);
        assertEquals(0.600, share(exercise, lifter), 1e-9);
    }

    private static Lifter body(double stature, double trunkCentre) {
        return lifter("Textbook").of(Sex.MALE, m(stature), kg(50)).centre(Segment.TRUNK, m(trunkCentre));
    }

    private static double span(PushUp exercise, Lifter lifter) {
        Layout layout = exercise.by(lifter).posture().layout();
        return layout.loads().get(0).x() - layout.pressureX();
    }

    /** Mass centre ahead of the balls of the feet, over the distance of the hands, summed here from the places alone. */
    private static double centreOverSpan(PushUp exercise, Lifter lifter) {
        Layout layout = exercise.by(lifter).posture().layout();
        double moment = 0;
        for (Segment segment : Segment.values()) {
            moment += lifter.body().segment(segment).mass() * (layout.centreX(segment) - layout.pressureX());
        }
        return moment / lifter.body().mass() / span(exercise, lifter);
    }

    /** Elbow straight and hands under the shoulders: the wrist lies under the shoulder; the elbow's bend shortens the arm. */
    @Test
    void handsStayWhereStraightArmsPutThem() {
        Layout high = pushUp().elbowFlexion(deg(0)).by(INES).posture().layout();
        Layout low = pushUp().elbowFlexion(deg(90)).by(INES).posture().layout();
        assertEquals(high.jointX(SHOULDER), high.jointX(WRIST), 1e-12);
        assertEquals(0.03, high.jointY(WRIST), 1e-12);
        assertEquals(0.03, low.jointY(WRIST), 1e-12);
        assertEquals(high.jointX(WRIST) - high.pressureX(), low.jointX(WRIST) - low.pressureX(), 1e-12, "hands fixed");
        double upper = INES.body().segment(Segment.UPPER_ARM).length();
        double fore = INES.body().segment(Segment.FOREARM).length();
        double dx = low.jointX(SHOULDER) - low.jointX(WRIST);
        double dy = low.jointY(SHOULDER) - low.jointY(WRIST);
        assertEquals(Math.sqrt(upper * upper + fore * fore), Math.sqrt(dx * dx + dy * dy), 1e-12);
        assertTrue(low.jointX(ELBOW) < low.jointX(SHOULDER), "elbow towards the feet");
        assertTrue(low.jointY(SHOULDER) < high.jointY(SHOULDER));
    }

    /** By hand from the places: straight arms, so that the hand's push has the palm's place as its arm about the shoulder. */
    @Test
    void highPositionByHand() {
        HeldPosture held = pushUp().elbowFlexion(deg(0)).by(INES).posture();
        double push = share(pushUp().elbowFlexion(deg(0)), INES) * 71 * G / 2;
        double palm = 0.42 * INES.body().segment(Segment.HAND).length();
        double hand = 0.0056 * 71;
        double centre = 0.3427 * INES.body().segment(Segment.HAND).length();
        // the push under the palm would bend the hand further back, which wrist flexion holds
        double wrist = push * palm - hand * G * centre;
        assertEquals(wrist, held.flexionMoment(WRIST).value().si(), 1e-9);
        assertEquals(-90, Math.toDegrees(held.flexion(WRIST).value().si()), 1e-9, "bent back by a right angle");
        assertEquals(wrist, held.moment(SHOULDER).value().si(), 1e-9);
        assertEquals(wrist, held.moment(ELBOW).value().si(), 1e-9);
    }

    @Test
    void bothCutsAgreeWithContactsSolvedAnew() {
        for (double bend : new double[] {0, 45, 90, 120}) {
            for (double force : new double[] {-60, 0, 80}) {
                HeldPosture held = pushUp().elbowFlexion(deg(bend))
                        .handForce(newtons(force))
                        .handsAhead(cm(5))
                        .by(INES)
                        .posture();
                assertTrue(held.bothCuts().agree(), held.bothCuts().words());
            }
        }
    }

    /** The range of each result while friction holds: its ends are the values at the greatest hand force either way. */
    @Test
    void theFreeForceSpansEveryResultWhileFrictionHolds() {
        PushUp exercise = pushUp().friction(ratio(0.4));
        double most = exercise.greatestHandForce(INES).si();
        double hands = share(exercise, INES) * 71 * G;
        assertEquals(0.4 * (71 * G - hands), most, 1e-9, "the feet carry less and slide first");
        Answer<Moment> elbow =
                exercise.whileFrictionHolds(INES).by(INES).posture().moment(ELBOW);
        double one = exercise.handForce(newtons(most))
                .by(INES)
                .posture()
                .moment(ELBOW)
                .value()
                .si();
        double other = exercise.handForce(newtons(-most))
                .by(INES)
                .posture()
                .moment(ELBOW)
                .value()
                .si();
        assertTrue(elbow.hasBand());
        assertEquals(Math.min(one, other), elbow.low().si(), 1e-9);
        assertEquals(Math.max(one, other), elbow.high().si(), 1e-9);
        assertEquals((one + other) / 2, elbow.value().si(), 1e-9, "linear in the free force");
    }

    @Test
    void slidingAndTheFreeForceAreSaidBesideEveryResult() {
        double most = pushUp().greatestHandForce(INES).si();
        List<String> holds =
                pushUp().handForce(newtons(most)).by(INES).posture().notes();
        List<String> slides =
                pushUp().handForce(newtons(-1.01 * most)).by(INES).posture().notes();
        assertTrue(holds.stream().noneMatch(note -> note.contains("would slide")), holds.toString());
        assertTrue(slides.stream().anyMatch(note -> note.contains("would slide")), slides.toString());
        assertTrue(holds.stream().anyMatch(note -> note.startsWith("The horizontal force of the hands")));
    }

    /** The hands' horizontal force does not change what the hands carry: both contacts lie at one height. */
    @Test
    void theShareOnTheHandsDoesNotDependOnTheFreeForce() {
        assertEquals(share(pushUp(), INES), share(pushUp().handForce(newtons(100)), INES), 1e-15);
    }

    @Test
    void theFigureShowsHandsAndFeet() {
        HeldPosture held = pushUp().by(INES).posture();
        assertEquals(Standing.SUPPORTED, held.standing());
        assertTrue(held.sketch(ELBOW, HIP).shapes().size() > 15);
        assertTrue(held.sketch().shapes().stream()
                .filter(Sketch.Arrow.class::isInstance)
                .allMatch(arrow -> ((Sketch.Arrow) arrow).kind() == Sketch.ForceKind.REACTION));
        assertEquals(held.layout().pressureX(), held.pressure().value().si(), 1e-9);
    }

    @Test
    void handsOutOfReachAreRefused() {
        assertTrue(assertThrows(
                        IllegalArgumentException.class,
                        () -> pushUp().handsAhead(cm(40))
                                .elbowFlexion(deg(150))
                                .by(INES)
                                .posture())
                .getMessage()
                .contains("hands"));
        assertThrows(IllegalArgumentException.class, () -> pushUp().handsAhead(cm(90)));
        assertThrows(IllegalArgumentException.class, () -> pushUp().friction(ratio(-1)));
    }
}
