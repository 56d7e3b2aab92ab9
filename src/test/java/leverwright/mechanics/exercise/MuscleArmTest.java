package leverwright.mechanics.exercise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.measure.Measures;
import org.junit.jupiter.api.Test;

/** The muscle arms against the tables that they were taken from. */
class MuscleArmTest {
    private static List<String[]> rows(String table) {
        var stream = Objects.requireNonNull(MuscleArmTest.class.getResourceAsStream("/reference/" + table + ".csv"));
        try (var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines().skip(1).map(line -> line.split(",")).toList();
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static Layout bent(Sex sex, Segment far, Segment near, double degrees) {
        Layout layout = new Layout(new Skeleton(Lifter.lifter("Any").of(sex, Measures.cm(175), Measures.kg(70))));
        layout.lean(near, 0);
        layout.lean(far, Measures.deg(degrees).si());
        return layout;
    }

    private static double arm(Layout layout, Joint joint, boolean positive) {
        return MuscleArm.of(layout, joint, positive).orElseThrow().arm().si();
    }

    /** PMC4662057, abstract: effective quadriceps arms at 10° and 50°, women and men. */
    @Test
    void quadricepsArmIsThatOfTheTableAtItsTwoAnglesAndHeldBeyond() {
        int seen = 0;
        for (String[] row : rows("knee_extensor_moment_arm")) {
            if (row[1].equals("effective quadriceps moment arm")) {
                Sex sex = row[0].contains("F)") ? Sex.FEMALE : Sex.MALE;
                double flexion = Double.parseDouble(row[2]);
                double arm = arm(bent(sex, Segment.SHANK, Segment.THIGH, flexion), Joint.KNEE, true);
                assertEquals(Double.parseDouble(row[3]) / 1000, arm, 1e-12);
                seen++;
            }
        }
        assertEquals(4, seen);
        Layout deep = bent(Sex.FEMALE, Segment.SHANK, Segment.THIGH, 110);
        assertEquals(0.0329, arm(deep, Joint.KNEE, true));
        assertTrue(MuscleArm.of(deep, Joint.KNEE, true).orElseThrow().remark().contains("extrapolation"));
    }

    /** Values in cm at 15° steps, computed elsewhere from the same published polynomials; printed with two decimals. */
    @Test
    void elbowArmsAreThoseOfThePolynomials() {
        for (String[] row : rows("elbow_moment_arm_values_cm")) {
            Layout layout = bent(Sex.MALE, Segment.FOREARM, Segment.UPPER_ARM, Double.parseDouble(row[0]));
            assertEquals(Double.parseDouble(row[2]), 100 * arm(layout, Joint.ELBOW, false), 0.00501);
            assertEquals(-Double.parseDouble(row[4]), 100 * arm(layout, Joint.ELBOW, true), 0.00501);
        }
    }

    /** Manal 2013, table 2: 18 readings by several methods; the arm's band must hold nearly all of them. */
    @Test
    void achillesArmAndItsBandSpanThePublishedMethods() {
        MuscleArm achilles = MuscleArm.of(bent(Sex.MALE, Segment.SHANK, Segment.FOOT, 0), Joint.ANKLE, true)
                .orElseThrow();
        long within = rows("achilles_moment_arm").stream()
                .mapToDouble(row -> Double.parseDouble(row[4]) / 1000)
                .filter(value ->
                        Math.abs(value - achilles.arm().si()) <= achilles.arm().error())
                .count();
        assertTrue(within >= 16, "within the band: " + within);
    }
}
