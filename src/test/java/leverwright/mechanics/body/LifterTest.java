package leverwright.mechanics.body;

import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.SegmentTable.WINTER;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.body.Sex.MALE;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.body.Body.Property;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import org.junit.jupiter.api.Test;

class LifterTest {
    private static final double EXACT = 1e-12;

    private static Lifter ines() {
        return lifter("Ines").of(FEMALE, cm(178), kg(71));
    }

    private static String refusal(org.junit.jupiter.api.function.Executable act) {
        return assertThrows(IllegalArgumentException.class, act).getMessage();
    }

    private static boolean says(Lifter lifter, Note.Kind kind, String part) {
        return lifter.notes().stream()
                .anyMatch(n -> n.kind() == kind && n.text().contains(part));
    }

    /** By hand: 71 kg, 1.78 m, Winter table 4.1 and Drillis and Contini. */
    @Test
    void winterSegmentsByHand() {
        Body body = ines().segments(WINTER).body();
        BodySegment thigh = body.segment(Segment.THIGH);
        assertEquals(14.2, thigh.mass(), EXACT);
        assertEquals(0.4361, thigh.length(), EXACT);
        assertEquals(0.433 * 0.4361, thigh.centre(), EXACT);
        assertEquals(14.2 * 0.323 * 0.323 * 0.4361 * 0.4361, thigh.inertia(), EXACT);
        BodySegment trunk = body.segment(Segment.TRUNK);
        assertEquals(0.578 * 71, trunk.mass(), EXACT);
        assertEquals(0.288 * 1.78, trunk.length(), EXACT);
        assertEquals(0.66 * 0.288 * 1.78, trunk.centre(), EXACT);
        assertEquals(0.246 * 1.78, body.segment(Segment.SHANK).length(), EXACT);
        assertEquals(0.186 * 1.78, body.segment(Segment.UPPER_ARM).length(), EXACT);
        assertEquals(0.146 * 1.78, body.segment(Segment.FOREARM).length(), EXACT);
        assertEquals(0.108 * 1.78, body.segment(Segment.HAND).length(), EXACT);
    }

    /** By hand from table 4 of de Leva 1996, women: trunk 42.57 % at 309.6 mm, head 6.68 % at 740.5 mm above the hips. */
    @Test
    void deLevaTrunkWithHeadByHand() {
        Body body = lifter("Mean").of(FEMALE, m(1.735), kg(61.9)).body();
        BodySegment trunk = body.segment(Segment.TRUNK);
        double trunkCentre = 497.9 * (1 - 0.3782);
        double headCentre = 614.8 + 243.7 * (1 - 0.4841);
        double centre = (42.57 * trunkCentre + 6.68 * headCentre) / 49.25;
        assertEquals(centre / 1000, trunk.centre(), 1e-12);
        assertEquals(0.36804, trunk.centre(), 1e-4);
        double r1 = 0.361 * 497.9;
        double r2 = 0.295 * 243.7;
        double inertia = 42.57 * (r1 * r1 + (trunkCentre - centre) * (trunkCentre - centre))
                + 6.68 * (r2 * r2 + (headCentre - centre) * (headCentre - centre));
        assertEquals(inertia / 49.25 * 1e-6 * trunk.mass(), trunk.inertia(), 1e-12);
    }

    @Test
    void thePartsAlwaysSumToTheBodyMass() {
        for (Lifter lifter : List.of(
                ines(),
                ines().segments(WINTER),
                lifter("Oda").of(MALE, cm(169), kg(62)),
                ines().mass(Segment.THIGH, kg(9)).mass(Segment.HAND, kg(0.5)))) {
            assertEquals(lifter.bodyMass().si(), lifter.body().mass(), 1e-12, lifter.toString());
        }
    }

    @Test
    void aMeasuredMassIsTakenFromTheTrunkAndSaid() {
        Lifter lifter = ines().segments(WINTER).mass(Segment.THIGH, kg(9));
        assertEquals(18, lifter.body().segment(Segment.THIGH).mass(), EXACT);
        assertEquals(
                0.578 * 71 - 2 * (9 - 7.1), lifter.body().segment(Segment.TRUNK).mass(), 1e-12);
        assertEquals(0.093 * 71, lifter.body().segment(Segment.SHANK).mass(), EXACT);
        assertTrue(says(lifter, Note.Kind.MEASURED, "takes up the difference"));
    }

    @Test
    void aGivenTrunkChangesTheSumAndSaysSo() {
        Lifter lifter = ines().segments(WINTER).mass(Segment.TRUNK, kg(45));
        assertEquals(45 + 0.422 * 71, lifter.body().mass(), 1e-12);
        assertTrue(says(lifter, Note.Kind.MEASURED, "sum to 74.962 kg; the stated body mass is 71 kg"));
    }

    @Test
    void aMeasuredLengthMovesCentreAndRadiusOfThatSegmentOnly() {
        Lifter plain = lifter("Oda").of(FEMALE, cm(169), kg(62));
        Lifter measured = plain.thigh(cm(44.5));
        BodySegment before = plain.body().segment(Segment.THIGH);
        BodySegment after = measured.body().segment(Segment.THIGH);
        assertEquals(0.445, after.length());
        assertEquals(before.centre() / before.length(), after.centre() / after.length(), EXACT);
        assertEquals(before.mass(), after.mass());
        assertEquals(plain.body().segment(Segment.SHANK), measured.body().segment(Segment.SHANK));
        assertEquals(
                ReadingStatus.GIVEN,
                measured.body().number(Segment.THIGH, Property.LENGTH).status());
        assertTrue(says(measured, Note.Kind.MEASURED, "differs by more than 15 %"));
    }

    @Test
    void aMeasuredCentreReplacesTheTables() {
        assertEquals(
                0.2,
                ines().centre(Segment.THIGH, cm(20))
                        .body()
                        .segment(Segment.THIGH)
                        .centre());
    }

    /** Winter's border: thorax and abdomen 0.355, head and neck 0.081, arms 0.100 of body mass. */
    @Test
    void massAboveTheLowBackByWinter() {
        Body body = ines().segments(WINTER).body();
        assertEquals(0.536 * 71, body.massAboveLowBack(), 1e-9);
        assertEquals(0.056 * 1.78, body.pelvis().length(), EXACT);
        assertEquals(0.056 * 1.78, body.place(Landmark.LOW_BACK_ABOVE_HIP).si(), EXACT);
        assertEquals(0.02, body.place(Landmark.LOW_BACK_ABOVE_HIP).error());
    }

    /** By hand, women: navel 181.5 mm, low back 0.056 × 1735 = 97.16 mm above the hips; the lower trunk in proportion. */
    @Test
    void massAboveTheLowBackByDeLeva() {
        Body body = lifter("Mean").of(FEMALE, m(1.735), kg(61.9)).body();
        double below = 12.47 * 97.16 / 181.5;
        double shareOfTrunk = below / 49.25;
        double trunk = body.segment(Segment.TRUNK).mass();
        assertEquals(shareOfTrunk * trunk, body.pelvis().mass(), 1e-9);
        double centre = (12.47 * (1 - 0.4920) * 181.5 - (12.47 - below) * (97.16 + 181.5) / 2) / below / 1000;
        assertEquals(centre, body.pelvis().centre(), 1e-9);
        assertEquals(0.5155, body.massAboveLowBack() / 61.9, 5e-4);
    }

    @Test
    void pelvisAndTheRestMakeTheTrunk() {
        for (Sex sex : Sex.values()) {
            for (SegmentTable table : List.of(SegmentTable.DE_LEVA, WINTER)) {
                Body body = lifter("A").of(sex, cm(172), kg(70)).segments(table).body();
                BodySegment trunk = body.segment(Segment.TRUNK);
                BodySegment low = body.pelvis();
                BodySegment up = body.trunkAboveLowBack();
                double upCentre = low.length() + up.centre();
                assertEquals(trunk.mass(), low.mass() + up.mass(), 1e-12);
                assertEquals(trunk.mass() * trunk.centre(), low.mass() * low.centre() + up.mass() * upCentre, 1e-12);
                double down = low.centre() - trunk.centre();
                double rise = upCentre - trunk.centre();
                assertEquals(
                        trunk.inertia(),
                        low.inertia() + low.mass() * down * down + up.inertia() + up.mass() * rise * rise,
                        1e-12);
                assertTrue(up.inertia() > 0);
                assertEquals(trunk.length(), low.length() + up.length(), 1e-12);
            }
        }
    }

    @Test
    void theAnkleIsAnInputWithABandAndMovesWithTheFoot() {
        Lifter lifter = ines();
        Length ankle = lifter.body().place(Landmark.ANKLE_FROM_HEEL);
        assertEquals(0.22 * lifter.body().segment(Segment.FOOT).length(), ankle.si(), EXACT);
        assertEquals(0.01, ankle.error());
        assertEquals(
                0.22 * 0.25,
                lifter.foot(cm(25)).body().place(Landmark.ANKLE_FROM_HEEL).si(),
                EXACT);
        assertEquals(
                0.06,
                lifter.ankleFromHeel(cm(6))
                        .body()
                        .place(Landmark.ANKLE_FROM_HEEL)
                        .si());
        assertTrue(says(lifter, Note.Kind.FROM_MEMORY, "ankle ahead of the heel"));
        assertFalse(says(lifter.ankleFromHeel(cm(6)), Note.Kind.FROM_MEMORY, "ankle ahead of the heel"));
    }

    @Test
    void notesFollowTheBody() {
        assertTrue(says(ines(), Note.Kind.OUT_OF_SAMPLE, "stature of Ines, 1.78 m"));
        Lifter oda = lifter("Oda").of(FEMALE, cm(169), kg(62));
        assertFalse(oda.notes().stream().anyMatch(n -> n.kind() == Note.Kind.OUT_OF_SAMPLE));
        assertTrue(says(oda.segments(WINTER), Note.Kind.OUT_OF_SAMPLE, "measured men only"));
        assertTrue(says(oda.segments(WINTER), Note.Kind.TABLE, "cadavers of a few old men"));
        assertTrue(says(oda.aged(16), Note.Kind.CAUTION, "under 18"));
        assertTrue(says(oda.with(Circumstance.PREGNANT), Note.Kind.CAUTION, "pregnant"));
    }

    @Test
    void everyNumberHasASourceAndAStatus() {
        for (SegmentTable table : List.of(SegmentTable.DE_LEVA, WINTER)) {
            List<SourcedValue> numbers = ines().segments(table).numbers();
            assertEquals(7 * 4 + 5 + 6, numbers.size());
            numbers.forEach(number -> assertFalse(number.source().isBlank(), number.toString()));
        }
        assertEquals(
                ReadingStatus.FROM_MEMORY,
                ines().segments(WINTER)
                        .body()
                        .number(Segment.THIGH, Property.LENGTH)
                        .status());
        assertEquals(
                ReadingStatus.DATA,
                ines().body().number(Segment.THIGH, Property.CENTRE).status());
    }

    @Test
    void errorsOfMeasuredNumbersAreListedAndCanBeMoved() {
        Lifter lifter = lifter("Oda")
                .of(FEMALE, cm(169).plusOrMinus(cm(1)), kg(62))
                .thigh(cm(44.5).plusOrMinus(cm(0.5)))
                .mass(Segment.SHANK, kg(3).plusOrMinus(kg(0.2)))
                .centre(Segment.FOOT, cm(11).plusOrMinus(cm(1)))
                .ankleFromHeel(cm(6).plusOrMinus(cm(1)));
        List<UncertainInput> inputs = lifter.uncertainInputs();
        assertEquals(
                List.of(
                        "stature",
                        "length of the thigh",
                        "mass of one shank",
                        "mass centre of the foot",
                        "ankle ahead of the heel"),
                inputs.stream().map(UncertainInput::name).toList());
        Lifter both = inputs.get(1).mover().move(inputs.get(0).mover().move(lifter, -1), 1);
        assertEquals(1.68, both.stature().si(), EXACT);
        assertEquals(0.45, both.body().segment(Segment.THIGH).length(), EXACT);
        assertEquals(6, both.body().segment(Segment.SHANK).mass(), EXACT);
        assertEquals(List.of(), ines().uncertainInputs());
    }

    @Test
    void absurdBodiesAreRefusedInOneMessage() {
        assertEquals(
                "stature of Goliath is 25.0 m; allowed: 0.5 to 2.8 m; give the height without shoes",
                refusal(() -> lifter("Goliath").of(MALE, m(25), kg(90))));
        assertTrue(refusal(() -> lifter("A").of(MALE, cm(-178), kg(90))).contains("allowed: 0.5 to 2.8 m"));
        assertTrue(refusal(() -> lifter("A").of(MALE, cm(0), kg(90))).contains("allowed"));
        assertTrue(
                refusal(() -> lifter("A").of(MALE, cm(178), kg(0))).contains("body mass of A is 0.0 kg; allowed: 20"));
        assertTrue(refusal(() -> lifter("A").of(MALE, cm(178), kg(1e9))).contains("allowed: 20.0 to 350.0 kg"));
        assertThrows(IllegalArgumentException.class, () -> lifter("A").of(MALE, Length.of(Double.NaN), kg(70)));
        assertThrows(
                IllegalArgumentException.class, () -> lifter("A").of(MALE, cm(178), Mass.of(Double.POSITIVE_INFINITY)));
        assertTrue(refusal(() -> lifter(" ").of(MALE, cm(178), kg(70))).contains("blank name"));
        assertTrue(refusal(() -> ines().thigh(cm(0))).contains("length of the thigh of Ines is 0.0 m; allowed: 0.01"));
        assertTrue(refusal(() -> ines().thigh(cm(200))).contains("allowed"));
        assertTrue(refusal(() -> ines().mass(Segment.THIGH, kg(0))).contains("greater than 0"));
        assertTrue(refusal(() -> ines().mass(Segment.THIGH, kg(35))).contains("masses are for one of a pair"));
        assertTrue(refusal(() -> ines().centre(Segment.THIGH, cm(60))).contains("from the hip"));
        assertTrue(refusal(() -> ines().ankleFromHeel(cm(40))).contains("foot's length"));
        assertTrue(refusal(() -> ines().lowBackAboveHip(cm(0))).contains("trunk with head's length"));
        assertTrue(refusal(() -> ines().aged(200)).contains("allowed: 0.0 to 120.0 years"));
    }
}
